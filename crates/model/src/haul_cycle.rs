//! A combination on a route: how the cycle is run, and in what weather.

use quantity::{AbsolutePressure, GaugePressure, Temperature, Time};

use crate::route::Route;
use crate::vehicle::Combination;

/// Which way the load goes along the route.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LadenDirection {
    /// From chainage zero to the end: loads at zero.
    Forward,
    /// From the end to chainage zero: loads at the end.
    Backward,
}

/// Loading or unloading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// How long it takes.
    pub time: Time,
    /// Whether the engine runs at high idle meanwhile; otherwise at idle.
    pub high_idle: bool,
    /// Whether tires may be changed while the load comes on (the maker gave a standing row).
    pub change_while_loading: bool,
}

/// Temperatures the plan must stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weather {
    /// Reference temperature of cold pressures.
    pub reference: Temperature,
    /// Coldest credible ambient.
    pub coldest: Temperature,
    /// Warmest credible ambient.
    pub warmest: Temperature,
    /// Ambient for the nominal run.
    pub ambient: Temperature,
    /// Ambient pressure at the site, from altitude.
    pub ambient_pressure: AbsolutePressure,
    /// Relative humidity for the water the compressor takes in, 0 to 1.
    pub humidity: f64,
}

/// Start of the shift.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShiftStart {
    /// Reservoir pressure found.
    pub supply: GaugePressure,
    /// Index of the rung the tires were parked on.
    pub parked_rung: usize,
}

/// A combination on a route.
#[derive(Debug, Clone, PartialEq)]
pub struct HaulCycle {
    /// Name in the survey.
    pub name: String,
    /// The combination.
    pub combination: Combination,
    /// The route.
    pub route: Route,
    /// Direction of the laden run.
    pub laden_direction: LadenDirection,
    /// Index of the load state on the way to loading.
    pub empty_state: usize,
    /// Index of the load state on the way from loading.
    pub laden_state: usize,
    /// Loading.
    pub loading: Standing,
    /// Unloading.
    pub unloading: Standing,
    /// Cycles a day.
    pub cycles_per_day: f64,
    /// Start of shift.
    pub shift_start: ShiftStart,
    /// Weather.
    pub weather: Weather,
}
