//! `units.toml`: the register of trucks and trailers.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Deserialize;

/// The register of units.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct UnitsFile {
    /// Trucks and trailers.
    #[schemars(length(min = 1, max = 5000))]
    pub units: Vec<UnitFile>,
}

/// A truck or trailer with a fleet number.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct UnitFile {
    /// Fleet number.
    #[schemars(length(min = 1, max = 40))]
    pub number: String,
    /// Type: the name of a file in `vehicles/`, without `.toml`.
    pub r#type: String,
    /// Trailers: whether any truck may pull it.
    #[serde(default)]
    pub pool: bool,
    /// Source addresses of its devices on the vehicle's network.
    #[serde(default)]
    #[schemars(inner(range(min = 0, max = 253)))]
    pub source_addresses: Vec<u32>,
    /// Tires where they differ from the type's, keyed by axle group (`drive`) or position (`drive.2.left.inner`).
    #[serde(default)]
    pub tires: BTreeMap<String, String>,
    /// Pressure sensors.
    #[serde(default)]
    pub sensors: Vec<SensorFile>,
    /// Values measured on this unit.
    #[serde(default)]
    pub fitted: Vec<FittedFile>,
}

/// A pressure sensor.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct SensorFile {
    /// Axle group or position it measures.
    pub place: String,
    /// Day it was last held against a reference gauge; left out, never.
    pub verified: Option<String>,
}

/// What was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum FittedWord {
    /// Compressor delivery.
    Delivery,
    /// Conductance of a channel's lines, seals and valves.
    Conductance,
    /// Air volume of a channel's tires.
    TireVolume,
}

/// A value measured on a unit.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct FittedFile {
    /// What was measured.
    pub what: FittedWord,
    /// Air channel, for conductance and tire volume.
    pub channel: Option<String>,
    /// Measured value as a share of the type's.
    #[schemars(range(min = 10, max = 300))]
    pub share_pct: f64,
    /// Day of the measurement.
    pub date: String,
}
