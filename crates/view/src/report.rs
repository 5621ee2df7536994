//! What was written on paper, `airtide.report/1`.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A document that was written.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ReportDocument {
    /// `airtide.report/1`.
    pub schema: String,
    /// Kind of document, such as `driver-card`.
    pub kind: String,
    /// Haul.
    pub haul: String,
    /// Name of the issued plan; `null` for a draft.
    pub plan: Option<String>,
    /// Whether the plan must not be driven as it stands.
    pub breaks_a_limit: bool,
    /// File.
    pub file: String,
    /// Pages, where the form has any.
    pub pages: Option<usize>,
}
