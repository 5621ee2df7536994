//! `approvals/*.toml`: what the tire maker was asked about a tire model, and what was answered.

use schemars::JsonSchema;
use serde::Deserialize;

use super::{FitmentWord, MakerRowFile};

/// What the maker means by the recommended pressure of a tire in service.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum RecommendedWord {
    /// The pressure of the row for the load and speed run.
    Row,
    /// The pressure of the ordinary table for the load, whatever the speed.
    Table,
}

/// A tire maker's answer for one tire model.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ApprovalFile {
    /// Tire model: the name of a file in `tires/`, without `.toml`.
    pub tire: String,
    /// Number of the answer, as the maker gave it.
    #[schemars(length(min = 1, max = 80))]
    pub number: String,
    /// Who answered.
    #[schemars(length(min = 1, max = 120))]
    pub answered_by: String,
    /// Day of the answer, such as 2027-03-01.
    pub date: String,
    /// Last day it counts, where the maker set one.
    pub expires: Option<String>,
    /// What counts as the recommended pressure of a tire in service.
    pub recommended_pressure: RecommendedWord,
    /// What the answer was given for; another tire or rim needs a new one.
    pub given_for: GivenForFile,
    /// What was asked.
    pub asked: AskedFile,
    /// What was answered: load, speed and pressure.
    #[schemars(length(min = 1, max = 400))]
    pub rows: Vec<MakerRowFile>,
}

/// The tire and rim that an answer was given for.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct GivenForFile {
    /// Size as molded, such as `11R22.5`.
    #[schemars(length(min = 3, max = 30))]
    pub designation: String,
    /// Load index single/dual and speed symbol as molded, such as `146/143 L`.
    #[schemars(length(min = 3, max = 20))]
    pub service_description: String,
    /// Rim, as stamped, such as `8.25x22.5`.
    #[schemars(length(min = 2, max = 30))]
    pub rim: String,
}

/// What the maker was asked.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskedFile {
    /// Warmest air the tires run in.
    #[schemars(range(min = -40, max = 60))]
    pub warmest_c: f64,
    /// Distance of a whole cycle.
    #[schemars(range(min = 0.1, max = 2000))]
    pub distance_per_cycle_km: Option<f64>,
    /// Longest time at a time on the lowest pressure.
    #[schemars(range(min = 0.5, max = 1440))]
    pub hold_min: Option<f64>,
    /// Loads and speeds asked about.
    #[schemars(length(min = 1, max = 100))]
    pub loads: Vec<AskedLoadFile>,
}

/// A load and a speed asked about.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskedLoadFile {
    /// Single or dual.
    pub fitment: FitmentWord,
    /// Load on one tire.
    #[schemars(range(min = 100, max = 70_000))]
    pub load_kg: f64,
    /// Highest speed.
    #[schemars(range(min = 0, max = 160))]
    pub speed_kmh: f64,
    /// Distance at this load and speed in a cycle.
    #[schemars(range(min = 0.05, max = 2000))]
    pub distance_km: Option<f64>,
}
