//! Trials of lower pressure on such ground, those that found nothing among them.

use model::road::trials::{Effect, Extent, Found, Ground, Trial};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What one trial found: low pressure over high, all else as it was.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrialView {
    /// What was compared, such as `rutting`.
    pub effect: String,
    /// Under what the tires ran, such as `aggregate`.
    pub ground: String,
    /// `between`, `up-to`, `less` or `no-difference`.
    pub found: String,
    /// Least ratio told.
    pub low_ratio: Option<f64>,
    /// Most.
    pub high_ratio: Option<f64>,
    /// Source key.
    pub source: String,
    /// `abstract` or `news`: how much of the report was read.
    pub extent_read: String,
}

pub(in crate::plan) fn trial(trial: &Trial) -> TrialView {
    let (found, low_ratio, high_ratio) = match trial.found {
        Found::Between(low, high) => ("between", Some(low), Some(high)),
        Found::UpTo(high) => ("up-to", None, Some(high)),
        Found::Less => ("less", None, None),
        Found::NoDifference => ("no-difference", None, None),
    };
    TrialView {
        effect: effect(trial.effect).to_owned(),
        ground: ground(trial.ground).to_owned(),
        found: found.to_owned(),
        low_ratio,
        high_ratio,
        source: trial.source.to_string(),
        extent_read: match trial.extent {
            Extent::Abstract => "abstract",
            Extent::News => "news",
        }
        .to_owned(),
    }
}

fn effect(effect: Effect) -> &'static str {
    match effect {
        Effect::TrafficToFailure => "traffic-to-failure",
        Effect::AsphaltStrain => "asphalt-strain",
        Effect::AsphaltLife => "asphalt-life",
        Effect::Rutting => "rutting",
        Effect::AggregateThickness => "aggregate-thickness",
        Effect::Maintenance => "maintenance",
        Effect::Sediment => "sediment",
        Effect::DeepStress => "deep-stress",
    }
}

fn ground(ground: Ground) -> &'static str {
    match ground {
        Ground::Asphalt => "asphalt",
        Ground::AsphaltOnPeat => "asphalt-on-peat",
        Ground::ThawedPavement => "thawed-pavement",
        Ground::ThinMembrane => "thin-membrane",
        Ground::Aggregate => "aggregate",
        Ground::DryStrongGravel => "dry-strong-gravel",
        Ground::Subsoil => "subsoil",
    }
}
