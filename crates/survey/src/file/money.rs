//! `[money]` of a haul: what things cost and who pays. Any currency, the same for all keys.

use schemars::JsonSchema;
use serde::Deserialize;

/// Somebody who pays or gains.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum PayerWord {
    /// Who runs the trucks.
    Haulier,
    /// Who owns and keeps the road.
    RoadOwner,
    /// Who the load is for.
    Client,
}

/// What a haul costs and earns.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct MoneyFile {
    /// Name of the money.
    #[schemars(length(min = 1, max = 20))]
    pub currency: String,
    /// Price of the system, fitted, for one combination.
    #[schemars(range(min = 0, max = 1_000_000_000))]
    pub capex: f64,
    /// What it is worth at the end of its life.
    #[serde(default)]
    #[schemars(range(min = 0, max = 1_000_000_000))]
    pub salvage: f64,
    /// Years it lasts.
    #[schemars(range(min = 1, max = 40))]
    pub life_years: f64,
    /// Interest a year.
    #[schemars(range(min = 0, max = 100))]
    pub interest_pct: f64,
    /// Service, training and audit of the system in a year.
    #[schemars(range(min = 0, max = 1_000_000_000))]
    pub service_per_year: f64,
    /// Trips of this combination on this haul in a year.
    #[schemars(range(min = 1, max = 100_000))]
    pub trips_per_year: f64,
    /// An hour of the truck with its driver.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub truck_hour: f64,
    /// Fuel.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub fuel_price_per_l: Option<f64>,
    /// Tire cost saved in a year; below zero where tires cost more.
    #[schemars(range(min = -1_000_000_000, max = 1_000_000_000))]
    pub tire_saving_per_year: Option<f64>,
    /// Repairs saved in a year.
    #[schemars(range(min = -1_000_000_000, max = 1_000_000_000))]
    pub repair_saving_per_year: Option<f64>,
    /// Season gained.
    pub season: Option<SeasonFile>,
    /// Payload gained, where it is permitted.
    pub payload: Option<PayloadFile>,
    /// Upkeep of the road.
    pub road: Option<RoadFile>,
    /// Who pays what, where it is not the usual split.
    #[serde(default)]
    pub paid_by: PaidByFile,
}

/// Season gained by running when others may not.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct SeasonFile {
    /// Days gained in a year.
    #[schemars(range(min = 0, max = 366))]
    pub days_gained: f64,
    /// Money a trip leaves.
    #[schemars(range(min = -1_000_000, max = 1_000_000))]
    pub margin_per_trip: f64,
}

/// Payload gained.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct PayloadFile {
    /// More payload a trip.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub extra_kg: f64,
    /// Money for a metric ton on a trip.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub rate_per_t: f64,
}

/// Upkeep of the road.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct RoadFile {
    /// Grading and aggregate for one pass over one kilometer of unpaved road.
    #[schemars(range(min = 0, max = 1_000_000))]
    pub pass_cost_per_km: f64,
    /// Share of it that the plan saves, as you judge it: least.
    #[schemars(range(min = -100, max = 100))]
    pub saving_low_pct: Option<f64>,
    /// Expected.
    #[schemars(range(min = -100, max = 100))]
    pub saving_pct: Option<f64>,
    /// Most.
    #[schemars(range(min = -100, max = 100))]
    pub saving_high_pct: Option<f64>,
    /// Share of the saving that the road owner passes on to who pays for the system.
    #[schemars(range(min = 0, max = 100))]
    pub passed_on_pct: f64,
}

/// Who pays what; left out, the road is its owner's and all else the haulier's.
#[derive(Debug, Clone, Copy, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct PaidByFile {
    /// The system and its upkeep.
    pub system: Option<PayerWord>,
    /// Truck time.
    pub time: Option<PayerWord>,
    /// Fuel.
    pub fuel: Option<PayerWord>,
    /// Tires and repairs.
    pub truck: Option<PayerWord>,
    /// Season and payload gained.
    pub season: Option<PayerWord>,
    /// The road.
    pub road: Option<PayerWord>,
}
