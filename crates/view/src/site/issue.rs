//! A plan to be issued.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What an issued plan needs besides the plan; the answer is the list of issued plans.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct IssueRequest {
    /// Haul.
    pub haul: String,
    /// Day of issue, such as `2027-03-01`.
    pub date: String,
    /// Fleet numbers of the units that are to drive by it.
    pub units: Vec<String>,
    /// Person who answers for it; the survey's if `null`.
    pub responsible: Option<String>,
    /// First day; the day of issue if `null`.
    pub valid_from: Option<String>,
    /// Last day, if there is one.
    pub valid_until: Option<String>,
}
