//! `hauls/*.toml`: a combination on a route, and how the cycle is run.

use schemars::JsonSchema;
use serde::Deserialize;

use super::MoneyFile;

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
    /// What a search for the best ladder needs.
    pub ladder: Option<LadderFile>,
    /// What things cost and who pays.
    pub money: Option<MoneyFile>,
    /// How trucks and runs differ; keys left out take usual widths.
    pub spread: Option<SpreadFile>,
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
    /// Rung the tires were parked on; left out where the combination has no rungs.
    pub parked_rung: Option<String>,
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

/// What a search for the best ladder needs; money is in any currency, the same for all keys.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LadderFile {
    /// How many rungs at most.
    #[schemars(range(min = 1, max = 16))]
    pub rungs: u32,
    /// Lowest speed cap to try.
    #[schemars(range(min = 3, max = 140))]
    pub lowest_cap_kmh: f64,
    /// Speed caps that must be among the rungs.
    #[serde(default)]
    #[schemars(length(max = 16), inner(range(min = 3, max = 140)))]
    pub fixed_caps_kmh: Vec<f64>,
    /// Money for an hour of the truck with its driver.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub truck_hour: f64,
    /// Money for a kilometer driven one kilopascal above what the ground wants.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub hard_kpa_km: f64,
    /// Money for one change of pressure.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub change: f64,
    /// Money for an hour of loaded compressor.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub compressor_hour: f64,
    /// Name of the money.
    #[schemars(length(min = 1, max = 20))]
    pub currency: String,
}

/// How trucks and runs differ, one standard deviation each.
#[derive(Debug, Clone, Copy, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct SpreadFile {
    /// Truck to truck.
    #[serde(default)]
    pub truck: TruckSpreadFile,
    /// Run to run.
    #[serde(default)]
    pub run: RunSpreadFile,
    /// Seed of the draws.
    #[schemars(range(min = 0, max = 9_007_199_254_740_991_u64))]
    pub seed: Option<u64>,
}

/// How trucks differ.
#[derive(Debug, Clone, Copy, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[expect(clippy::struct_field_names, reason = "keys carry their unit")]
pub(crate) struct TruckSpreadFile {
    /// Compressor delivery.
    #[schemars(range(min = 0, max = 30))]
    pub delivery_pct: Option<f64>,
    /// Conductance of lines, seals and valves.
    #[schemars(range(min = 0, max = 30))]
    pub conductance_pct: Option<f64>,
    /// Air volume of the tires.
    #[schemars(range(min = 0, max = 30))]
    pub tire_volume_pct: Option<f64>,
}

/// How runs of one truck differ.
#[derive(Debug, Clone, Copy, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct RunSpreadFile {
    /// Ambient temperature, as a difference.
    #[schemars(range(min = 0, max = 25))]
    pub ambient_c: Option<f64>,
    /// Engine speed while pulling.
    #[schemars(range(min = 0, max = 30))]
    pub engine_speed_pct: Option<f64>,
    /// Road speed.
    #[schemars(range(min = 0, max = 30))]
    pub road_speed_pct: Option<f64>,
    /// How far past the place the driver acts.
    #[schemars(range(min = 0, max = 1000))]
    pub reaction_m: Option<f64>,
    /// Tire pressure found when a change begins.
    #[schemars(range(min = 0, max = 100))]
    pub held_pressure_kpa: Option<f64>,
}
