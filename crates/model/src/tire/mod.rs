//! A tire model: its ratings, sizes and limits as the maker states them.

pub mod air_volume;
pub mod cold_warm;
pub mod deflection;
pub mod deflection_screen;
pub mod designation;
pub mod duals;
pub mod footprint;
pub mod load_index;
pub mod load_inflation;
pub mod low_speed;
pub mod maker_table;
pub mod r54;
pub mod ride;
pub mod roadside;
pub mod speed_symbol;
pub mod stiffness;
pub mod tkph;
pub mod warm_up;

#[cfg(test)]
pub(crate) mod fixture;

use crate::date::Date;
use quantity::{ColdPressure, Length, Mass, Speed, Volume};

/// How many tires stand at one wheel end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Fitment {
    /// One tire at each end of the axle.
    Single,
    /// Two tires side by side.
    Dual,
}

/// The body whose rules the tire is rated by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum StandardsBody {
    /// The Tire and Rim Association (US).
    Tra,
    /// The European Tyre and Rim Technical Organisation.
    Etrto,
}

/// Which column of the TRA restricted-speed table a size belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SizeClass {
    /// Inch sizes such as 11R22.5 and 12.00R24.
    Conventional,
    /// Metric and wide-base sizes such as 315/80R22.5 and 425/65R22.5.
    MetricOrWide,
}

/// Casing construction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Construction {
    /// Radial ply.
    Radial,
    /// Bias (diagonal) ply.
    Bias,
}

/// Whether the tire needs an inner tube.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum AirRetention {
    /// The tire holds its own air.
    Tubeless,
    /// The air is in a tube.
    TubeType,
}

/// A load and the cold pressure that carries it at the tire's rated speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatedPoint {
    /// Load on one tire.
    pub load: Mass,
    /// Cold inflation pressure.
    pub pressure: ColdPressure,
}

/// One row of the maker's load-inflation-speed document.
#[derive(Debug, Clone, PartialEq)]
pub struct MakerRow {
    /// Single or dual.
    pub fitment: Fitment,
    /// Load on one tire.
    pub load: Mass,
    /// Highest speed the row covers.
    pub speed: Speed,
    /// Cold inflation pressure.
    pub pressure: ColdPressure,
    /// Longest distance the row may be run at a time, where the maker limits it.
    pub hold_distance: Option<Length>,
}

/// Why an approval no longer counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lapse {
    /// Its last day has passed.
    Expired {
        /// Last day it counted.
        on: Date,
    },
    /// The tire is not the one that was asked about.
    TireChanged,
    /// The rim is not the one that was asked about.
    RimChanged,
}

/// What the maker means by the recommended pressure of a tire in service.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Recommended {
    /// The pressure of the row for the load and speed run.
    Row,
    /// The pressure of the ordinary table for the load, whatever the speed.
    Table,
}

/// The maker's document, with its rows.
#[derive(Debug, Clone, PartialEq)]
pub struct MakerTable {
    /// Number or title and date of the document.
    pub document: String,
    /// Whether the maker approved the rows for this fleet; rows that are not approved only advise.
    pub approved: bool,
    /// Why an approval that was once given no longer counts.
    pub lapsed: Option<Lapse>,
    /// What counts as the recommended pressure when a wheel is serviced.
    pub recommended: Recommended,
    /// The rows, in the order of the document.
    pub rows: Vec<MakerRow>,
}

/// The rim the tire is mounted on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rim {
    /// Highest cold pressure stamped on the rim or wheel.
    pub maximum_pressure: ColdPressure,
    /// Highest load stamped on the rim or wheel.
    pub maximum_load: Mass,
}

/// A tire model as fitted to a fleet.
#[derive(Debug, Clone, PartialEq)]
pub struct Tire {
    /// What the survey calls it.
    pub name: String,
    /// Size as molded, such as `11R22.5`.
    pub size: String,
    /// Standards body.
    pub body: StandardsBody,
    /// Column of the TRA restricted-speed table.
    pub size_class: SizeClass,
    /// Casing.
    pub construction: Construction,
    /// Tube or tubeless.
    pub air_retention: AirRetention,
    /// Rated point of a single tire.
    pub single: RatedPoint,
    /// Rated point of each tire of a dual, if it may be fitted so.
    pub dual: Option<RatedPoint>,
    /// Load index of the single rating.
    pub load_index: u16,
    /// Speed of the speed symbol.
    pub rated_speed: Speed,
    /// Letters of the speed symbol, as molded.
    pub speed_symbol: String,
    /// Overall diameter, new.
    pub diameter: Length,
    /// Section width on the rim fitted.
    pub section_width: Length,
    /// Bead-seat diameter of the rim.
    pub rim_diameter: Length,
    /// Static loaded radius at the single rated point; `None` falls back on the stiffness formula.
    pub static_loaded_radius: Option<Length>,
    /// Highest cold pressure molded on the sidewall.
    pub molded_maximum: ColdPressure,
    /// The rim.
    pub rim: Rim,
    /// Air volume of one tire.
    pub air_volume: Volume,
    /// Lowest pressure of the ordinary load-inflation table for this size, where known.
    pub lowest_table_pressure: Option<ColdPressure>,
    /// Lowest pressure at which the maker holds the bead seated, where stated.
    pub bead_minimum: Option<ColdPressure>,
    /// The maker's rows, where there are any.
    pub maker_table: Option<MakerTable>,
    /// Rolling-resistance coefficient on a hard road at the single rated point.
    pub rolling_resistance: f64,
}

impl Tire {
    /// Rated point for a fitment; `None` where the tire has no dual rating.
    pub fn rated(&self, fitment: Fitment) -> Option<RatedPoint> {
        match fitment {
            Fitment::Single => Some(self.single),
            Fitment::Dual => self.dual,
        }
    }

    /// Section height from bead seat to tread, new.
    pub fn section_height(&self) -> Length {
        (self.diameter - self.rim_diameter) / 2.0
    }
}
