//! `hauls/*.toml`: a combination on a route, and how the cycle is run.

use schemars::JsonSchema;
use serde::Deserialize;

/// Which way the load goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum LadenDirectionWord {
    /// From chainage zero to the end.
    Forward,
    /// From the end to chainage zero.
    Backward,
}

/// A combination on a route.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct HaulFile {
    /// Name of a file in `combinations/`, without `.toml`.
    pub combination: String,
    /// Name of a file in `routes/`, without `.toml`.
    pub route: String,
    /// Which way the load goes along the route's chainage.
    pub laden_direction: LadenDirectionWord,
    /// Load state on the way to loading.
    pub empty_state: String,
    /// Load state on the way from loading.
    pub laden_state: String,
    /// Cycles a day.
    #[schemars(range(min = 0.1, max = 100))]
    pub cycles_a_day: f64,
    /// Loading.
    pub loading: StandingFile,
    /// Unloading.
    pub unloading: StandingFile,
    /// What the shift starts with.
    pub shift_start: ShiftStartFile,
    /// Weather of this haul where it differs from `survey.toml`.
    pub weather: Option<WeatherFile>,
}

/// Loading or unloading.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct StandingFile {
    /// How long it takes.
    #[schemars(range(min = 0, max = 600))]
    pub time_min: f64,
    /// Whether the engine runs at high idle meanwhile; otherwise at idle.
    pub high_idle: bool,
    /// Whether tires may be changed while the load comes on or off: only with a standing row of the tire maker.
    pub change_meanwhile: bool,
}

/// What the shift starts with.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ShiftStartFile {
    /// Reservoir pressure found.
    #[schemars(range(min = 0, max = 1400))]
    pub supply_kpa: f64,
    /// Rung the tires were parked on.
    pub parked_rung: String,
}

/// Weather of one haul; keys left out come from `survey.toml`.
#[derive(Debug, Clone, Copy, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct WeatherFile {
    /// Coldest air.
    #[schemars(range(min = -60, max = 50))]
    pub coldest_c: Option<f64>,
    /// Warmest air.
    #[schemars(range(min = -40, max = 60))]
    pub warmest_c: Option<f64>,
    /// Air of an ordinary day.
    #[schemars(range(min = -60, max = 60))]
    pub nominal_c: Option<f64>,
    /// Altitude.
    #[schemars(range(min = -430, max = 6000))]
    pub altitude_m: Option<f64>,
    /// Relative humidity, in percent.
    #[schemars(range(min = 0, max = 100))]
    pub humidity_pct: Option<f64>,
}
