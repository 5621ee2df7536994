//! What bounds a pressure, and why.

use model::source::Citation;
use quantity::{ColdPressure, GaugePressure, Length, Mass, PressureDifference, Speed, Temperature};

/// What can set the lowest pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum MinimumKind {
    /// Load-inflation table or power law at the tire's rated speed.
    LoadTable,
    /// Restricted-speed table of the standards body.
    RestrictedSpeed,
    /// Rows the maker approved.
    MakerRow,
    /// Deflection suited to the speed cap.
    Deflection,
    /// Bead seated on the rim.
    Bead,
    /// Lowest pressure that a published table or practice reaches at the cap.
    LowestRow,
    /// Closing pressure of a self-closing wheel valve, at the coldest.
    WheelValve,
    /// Half of the molded maximum, under which a roadside check calls a tire flat.
    FlatRule,
    /// Roadside reading less the hot allowance.
    RoadsideHot,
    /// Gap between dual sidewalls.
    DualGap,
    /// Chains: the pressure for full speed.
    Chains,
    /// Turning on the spot.
    TurningScrub,
    /// Heat at the cap on the warmest day.
    Heat,
    /// Lowest pressure of a permit.
    Permit,
}

/// What can set the highest pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum MaximumKind {
    /// Molded on the sidewall.
    MoldedMaximum,
    /// Stamped on the rim or wheel.
    Rim,
    /// Highest pressure of a permit.
    Permit,
    /// The air supply reaches no higher.
    Supply,
    /// What the ground bears; advice, it never empties a window.
    Ground,
}

/// What a limit was worked out from, for the page that explains it.
#[derive(Debug, Clone, PartialEq)]
pub enum Basis {
    /// A load under a speed cap, with the allowance used.
    Load {
        /// Load on the worst tire.
        load: Mass,
        /// Speed covered.
        speed: Speed,
        /// Load allowance in percent.
        allowance_pct: f64,
        /// Pressure added by the row.
        addition: PressureDifference,
    },
    /// A deflection share of section height.
    Deflection {
        /// Load on the worst tire.
        load: Mass,
        /// Highest share.
        share: f64,
    },
    /// A pressure as read at a temperature.
    AsRead {
        /// The reading.
        reading: GaugePressure,
        /// Where it holds.
        temperature: Temperature,
    },
    /// A share of a stated pressure.
    ShareOf {
        /// The stated pressure.
        stated: ColdPressure,
        /// The share.
        share: f64,
    },
    /// A least gap between duals.
    Gap {
        /// The gap.
        least: Length,
        /// Center spacing.
        spacing: Length,
    },
    /// A highest air temperature in the tire.
    AirTemperature {
        /// The temperature.
        highest: Temperature,
        /// Ambient it was found at.
        ambient: Temperature,
    },
    /// A number the survey states.
    Stated,
}

/// A limit on one axle group of a channel.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit<Kind> {
    /// What kind.
    pub kind: Kind,
    /// The pressure, cold.
    pub pressure: ColdPressure,
    /// Index of the axle group it comes from.
    pub group: usize,
    /// Which of the group's tire models: 0 is the type's own, then the others fitted.
    pub tire: usize,
    /// What it was worked out from.
    pub basis: Basis,
    /// Source and standing.
    pub citation: Citation,
}

/// Why a cell cannot be run at any pressure.
#[derive(Debug, Clone, PartialEq)]
pub enum Impossible {
    /// More load than the tire may carry at this speed.
    Overloaded {
        /// Axle group.
        group: usize,
        /// Load on the worst tire.
        load: Mass,
        /// Most it may carry.
        highest: Mass,
        /// Speed cap.
        cap: Speed,
    },
    /// Cap above the speed symbol.
    TooFast {
        /// Axle group.
        group: usize,
        /// Speed cap.
        cap: Speed,
        /// Rated speed.
        rated: Speed,
    },
    /// Too hot at every pressure.
    TooHot {
        /// Axle group.
        group: usize,
        /// Highest air temperature allowed.
        highest: Temperature,
    },
    /// The dual sidewalls touch at every pressure.
    DualsTouch {
        /// Axle group.
        group: usize,
        /// Center spacing.
        spacing: Length,
    },
    /// No pressure gives the deflection wanted.
    NoDeflection {
        /// Axle group.
        group: usize,
        /// Highest share.
        share: f64,
    },
    /// The lowest lies above the highest.
    Empty {
        /// Lowest the controller may be set to, cold.
        lowest: ColdPressure,
        /// Highest, cold.
        highest: ColdPressure,
        /// What sets the highest.
        by: MaximumKind,
    },
    /// The fitment has no rating.
    NotRated {
        /// Axle group.
        group: usize,
    },
    /// A formula refused its numbers.
    Refused {
        /// Axle group.
        group: usize,
        /// What it said.
        reason: String,
    },
}
