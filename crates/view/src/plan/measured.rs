//! What was measured on a unit.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::MeasuredOn;
use survey::Measured;

/// A value measured on a unit that makes its changes slower than those of its type.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MeasuredView {
    /// Fleet number.
    pub unit: String,
    /// What was measured: `delivery`, `conductance` or `tire-volume`.
    pub what: String,
    /// Air channel; `null` for the delivery of the compressor.
    pub channel: Option<String>,
    /// Measured value as a share of the type's.
    pub share_pct: f64,
    /// Day of the measurement.
    pub date: String,
    /// Whether the plan counts it; one made for the types does not.
    pub counted: bool,
}

impl From<&MeasuredOn> for MeasuredView {
    fn from(measured: &MeasuredOn) -> Self {
        let (what, channel) = match &measured.measured {
            Measured::Delivery => ("delivery", None),
            Measured::Conductance(channel) => ("conductance", Some(channel.clone())),
            Measured::TireVolume(channel) => ("tire-volume", Some(channel.clone())),
        };
        Self {
            unit: measured.unit.clone(),
            what: what.to_owned(),
            channel,
            share_pct: measured.ratio * 100.0,
            date: measured.date.to_string(),
            counted: measured.counted,
        }
    }
}
