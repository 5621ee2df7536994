//! Documents for paper that the page offers.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A kind of document.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PaperKindView {
    /// Its name, as in `airtide report`.
    pub kind: String,
}

/// Every kind of document, and the forms this build writes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PapersDocument {
    /// `airtide.papers/1`.
    pub schema: String,
    /// Kinds, in the order of the work.
    pub papers: Vec<PaperKindView>,
    /// `html`, and `pdf` and `xlsx` where built in.
    pub formats: Vec<String>,
}
