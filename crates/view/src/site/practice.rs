//! Practice on the page: a drive begun or taken up again, and its steps.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{ActedView, PracticeDocument};

/// A drive to begin, or to take up again where it was.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DriveRequest {
    /// Haul.
    pub haul: String,
    /// `none`, `any`, or one surprise by its name.
    pub surprise: String,
    /// Seed of the surprises.
    pub seed: u64,
    /// A drive that the program no longer knows; `null` begins at the start.
    #[serde(default)]
    pub again: Option<AgainRequest>,
}

/// A drive played again up to where it was.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AgainRequest {
    /// Everything done, in order of time.
    pub acted: Vec<ActedView>,
    /// Time it had come to.
    pub time_s: f64,
}

/// A drive begun.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct DriveDocument {
    /// `airtide.drive/1`.
    pub schema: String,
    /// Names it in the steps.
    pub id: String,
    /// How it stands.
    pub drive: PracticeDocument,
}

/// Something done at the wheel.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ActionRequest {
    /// `order`, `speed`, `stop` or `go`.
    pub action: String,
    /// Rung ordered.
    #[serde(default)]
    pub rung: Option<String>,
    /// Load state whose pressures are ordered.
    #[serde(default)]
    pub load_state: Option<String>,
    /// `cap`, `road` or `chosen`.
    #[serde(default)]
    pub speed: Option<String>,
    /// Speed chosen.
    #[serde(default)]
    pub speed_kmh: Option<f64>,
}

impl From<&ActedView> for ActionRequest {
    fn from(acted: &ActedView) -> Self {
        Self {
            action: acted.action.clone(),
            rung: acted.rung.clone(),
            load_state: acted.load_state.clone(),
            speed: acted.speed.clone(),
            speed_kmh: acted.speed_kmh,
        }
    }
}

/// A step of a drive: something done, then time that passes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StepRequest {
    /// Drive.
    pub id: String,
    /// Done first; `null` for nothing.
    #[serde(default)]
    pub action: Option<ActionRequest>,
    /// Seconds that pass then.
    pub seconds: u32,
}

/// A drive to be judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct JudgeRequest {
    /// Drive.
    pub id: String,
}
