//! What the page begins with.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The survey served, and what may be done with it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SiteDocument {
    /// `airtide.site/1`.
    pub schema: String,
    /// Program and version.
    pub program: String,
    /// Name of the survey; of its folder where it has none.
    pub survey: String,
    /// Whether nothing can be changed from this window.
    pub read_only: bool,
    /// What writes must send back in `x-airtide-token`.
    pub token: String,
    /// Language of the survey.
    pub language: String,
    /// Unit profile of the survey.
    pub units: String,
    /// Languages there are texts in.
    pub languages: Vec<String>,
    /// Step between speed caps.
    pub speed_cap_step_kmh: f64,
    /// Hauls that can be planned.
    pub hauls: Vec<HaulNameView>,
    /// Hauls that have errors.
    pub broken_hauls: Vec<String>,
    /// Person who answers for the numbers.
    pub responsible: String,
    /// Today.
    pub date: String,
    /// Code that lets the next device in, for the person at this computer; `null` for others.
    pub pairing_code: Option<String>,
}

/// A haul and what a caller needs to name.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct HaulNameView {
    /// Haul.
    pub name: String,
    /// Combination.
    pub combination: String,
    /// File of the combination in the survey.
    pub combination_file: String,
    /// Route.
    pub route: String,
    /// Fleet numbers of the units that run it.
    pub units: Vec<String>,
    /// Load states.
    pub load_states: Vec<String>,
    /// Air channels.
    pub channels: Vec<String>,
    /// Axle groups without an air channel.
    pub fixed_groups: Vec<String>,
    /// Nominal ambient.
    pub ambient_c: f64,
}

/// How each kind of number is shown in each unit profile.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct UnitsDocument {
    /// `airtide.units/1`.
    pub schema: String,
    /// One for each kind and profile.
    pub forms: Vec<UnitFormView>,
}

/// A kind of number in a unit profile.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct UnitFormView {
    /// `pressure`, `speed` and so on.
    pub kind: String,
    /// `si`, `us` or `metric-bar`.
    pub profile: String,
    /// Unit as printed.
    pub label: String,
    /// Digits after the decimal mark.
    pub decimals: u8,
    /// Shown = given × factor + offset, given in the unit of output keys.
    pub factor: f64,
    /// See `factor`.
    pub offset: f64,
}

/// Why a request was not answered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct ErrorDocument {
    /// `airtide.error/1`.
    pub schema: String,
    /// Which, such as `changed-meanwhile`.
    pub error: String,
    /// What is wrong and what to do, in one or two sentences.
    pub message: String,
}

impl ErrorDocument {
    /// Makes the document.
    pub fn new(error: &str, message: impl Into<String>) -> Self {
        Self {
            schema: "airtide.error/1".to_owned(),
            error: error.to_owned(),
            message: message.into(),
        }
    }
}
