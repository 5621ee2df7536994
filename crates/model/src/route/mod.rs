//! A haul route: legs by chainage, elevation, and places along it.

use quantity::{ColdPressure, GaugePressure, Length, Mass, PressureDifference, Speed, Time};

use crate::date::Date;

mod ground;
pub mod profile;

pub use ground::{Aggregate, LegGround, SoilGiven, SoilGivenError, SoilStrength, soil_type};
pub use profile::Profile;

/// What the wheels run on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Surface {
    /// Asphalt or concrete.
    Paved,
    /// Thin seal over a granular base.
    Sealed,
    /// Maintained gravel or crushed rock.
    Gravel,
    /// Native soil, graded.
    Earth,
    /// Rock-fill or mat over peat or other very soft ground.
    SoftGround,
    /// Sand.
    Sand,
    /// Compact snow or ice.
    SnowOrIce,
}

/// Whose road it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Jurisdiction {
    /// A private road: no roadside rule.
    Private,
    /// A public road in the United States.
    UnitedStates,
    /// A public road elsewhere.
    PublicOther,
}

/// A pressure as an authority means it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StatedPressure {
    /// Of cold tires.
    Cold(ColdPressure),
    /// As a gauge reads it on the road, on cold or warm tires.
    AsRead(GaugePressure),
}

/// What an authority allows on a stretch.
#[derive(Debug, Clone, PartialEq)]
pub struct Permit {
    /// Number or title.
    pub number: String,
    /// Authority that gave it.
    pub authority: String,
    /// Lowest pressure.
    pub minimum: Option<StatedPressure>,
    /// Highest pressure.
    pub maximum: Option<StatedPressure>,
    /// How far a logged pressure may pass them and still count as kept.
    pub tolerance: Option<PressureDifference>,
    /// Highest speed.
    pub speed: Option<Speed>,
    /// Highest gross mass.
    pub gross_mass: Option<Mass>,
    /// Longest time between two logged pressures.
    pub evidence_interval: Option<Time>,
    /// Whether it counts on the day of the plan.
    pub in_force: bool,
    /// Last day it counts.
    pub expires: Option<Date>,
}

/// A stretch with one surface, strength, speed and rule.
#[derive(Debug, Clone, PartialEq)]
pub struct Leg {
    /// Name, such as `quarry spur`.
    pub name: String,
    /// Chainage where it begins.
    pub from: Length,
    /// Chainage where it ends.
    pub to: Length,
    /// Surface.
    pub surface: Surface,
    /// Rolling-resistance coefficient of the combination on it, at road pressure.
    pub rolling_resistance: f64,
    /// Speed limit, or the speed drivers keep on it.
    pub speed_limit: Speed,
    /// Crossfall, as a ratio.
    pub crossfall: f64,
    /// Radius of the tightest curve, where curves bind.
    pub curve_radius: Option<Length>,
    /// Whose road.
    pub jurisdiction: Jurisdiction,
    /// Index of the rung wanted here, if the survey names one.
    pub rung: Option<usize>,
    /// Highest tire pressure the ground bears while a change is under way (advice).
    pub ground_maximum: Option<ColdPressure>,
    /// Whether raising may be done while rolling on it.
    pub raising_allowed: bool,
    /// Terms of a permit that covers the leg.
    pub permit: Option<Permit>,
    /// What is known of the ground; `None` where nobody looked.
    pub ground: Option<LegGround>,
}

/// A place where a laden truck can stand.
#[derive(Debug, Clone, PartialEq)]
pub struct LayBy {
    /// Name.
    pub name: String,
    /// Chainage.
    pub at: Length,
    /// Direction of travel it can be used in: `None` for both, else whether chainage rises.
    pub forward_only: Option<bool>,
}

/// A named place or posted board along the route.
#[derive(Debug, Clone, PartialEq)]
pub struct Landmark {
    /// Name, or the text of the board.
    pub name: String,
    /// Chainage.
    pub at: Length,
}

/// A haul route.
#[derive(Debug, Clone, PartialEq)]
pub struct Route {
    /// Name.
    pub name: String,
    /// Legs in order of chainage, without gaps.
    pub legs: Vec<Leg>,
    /// Elevation along it.
    pub profile: Profile,
    /// Lay-bys in order.
    pub lay_bys: Vec<LayBy>,
    /// Landmarks in order.
    pub landmarks: Vec<Landmark>,
    /// Grade from which a descent counts as sustained, as a positive ratio.
    pub descent_grade: f64,
    /// Length from which it does.
    pub descent_length: Length,
    /// Distance before a sustained descent in which raising is not begun.
    pub descent_approach: Length,
}

impl Route {
    /// Length of the route.
    pub fn length(&self) -> Length {
        self.legs.last().map_or(Length::ZERO, |leg| leg.to)
    }
}
