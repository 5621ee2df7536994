//! `permits/*.toml`: an authority's terms, by stretch of a route.

use schemars::JsonSchema;
use serde::Deserialize;

/// How an authority means its pressures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum PressuresWord {
    /// Of cold tires.
    Cold,
    /// As a gauge reads them on the road.
    AsRead,
}

/// An authority's permit.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct PermitFile {
    /// Number or title.
    #[schemars(length(min = 1, max = 80))]
    pub number: String,
    /// Authority that gave it.
    #[schemars(length(min = 1, max = 120))]
    pub authority: String,
    /// First day it counts, such as 2027-03-01.
    pub valid_from: String,
    /// Last day it counts.
    pub expires: Option<String>,
    /// Whether its pressures are those of cold tires or as read on the road.
    pub pressures: PressuresWord,
    /// Stretches with their terms.
    #[schemars(length(min = 1, max = 100))]
    pub stretches: Vec<StretchFile>,
}

/// Terms on one stretch of a route.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct StretchFile {
    /// Route: the name of a file in `routes/`, without `.toml`.
    pub route: String,
    /// Chainage where it begins.
    #[schemars(range(min = 0, max = 2000))]
    pub from_km: f64,
    /// Chainage where it ends.
    #[schemars(range(min = 0, max = 2000))]
    pub to_km: f64,
    /// Lowest pressure allowed.
    #[schemars(range(min = 50, max = 1300))]
    pub minimum_pressure_kpa: Option<f64>,
    /// Highest pressure allowed.
    #[schemars(range(min = 50, max = 1300))]
    pub maximum_pressure_kpa: Option<f64>,
    /// How far a logged pressure may pass them and still count as kept.
    #[schemars(range(min = 0, max = 200))]
    pub tolerance_kpa: Option<f64>,
    /// Highest speed.
    #[schemars(range(min = 3, max = 140))]
    pub speed_kmh: Option<f64>,
    /// Highest gross mass.
    #[schemars(range(min = 1000, max = 1_000_000))]
    pub gross_mass_kg: Option<f64>,
    /// Longest time between two logged pressures.
    #[schemars(range(min = 1, max = 86_400))]
    pub evidence_interval_s: Option<f64>,
}
