//! A call from the road, as the page asks it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What the caller says.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct NowRequest {
    /// Fleet number.
    #[serde(default)]
    pub unit: Option<String>,
    /// Haul.
    #[serde(default)]
    pub haul: Option<String>,
    /// Load state; `null` where nobody knows.
    #[serde(default)]
    pub load_state: Option<String>,
    /// Whether the tires were cold: `cold`, `warm` or `not-known`.
    pub tires: String,
    /// Whether it ran in the last hour.
    #[serde(default)]
    pub ran_last_hour: bool,
    /// Air around the truck; the warmest of the survey if `null`.
    #[serde(default)]
    pub ambient_c: Option<f64>,
    /// What is coupled: `planned`, `none`, `unknown`, `left-low` or `left-shut`.
    #[serde(default)]
    pub trailer: Option<String>,
    /// What the gauge showed.
    pub readings: Vec<ReadingRequest>,
}

/// A reading.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadingRequest {
    /// Air channel, or axle group.
    pub of: String,
    /// Gauge reading.
    pub pressure_kpa: f64,
    /// Reading of the other tire of a dual.
    #[serde(default)]
    pub mate_kpa: Option<f64>,
    /// Unit it was typed in: `kPa`, `psi` or `bar`.
    #[serde(default)]
    pub typed_in: Option<String>,
}
