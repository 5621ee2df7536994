//! Long series, listed; their windows come as bytes.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Series there are.
///
/// A window of one is a row of little-endian numbers: base time in seconds (f64), base sample
/// (u32), buckets n (u32), columns m (u32), zero (u32); then n sample offsets (u32) and n time
/// offsets in seconds (f32); then for each column n lowest and n highest values (f32).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SeriesDocument {
    /// `airtide.series/1`.
    pub schema: String,
    /// Each.
    pub series: Vec<SeriesView>,
}

/// One series.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SeriesView {
    /// What to ask for it by.
    pub id: String,
    /// Haul or file.
    pub name: String,
    /// Samples.
    pub samples: usize,
    /// First time.
    pub from_s: f64,
    /// Last time.
    pub to_s: f64,
    /// Columns, each with its unit as a suffix.
    pub columns: Vec<String>,
    /// Why it cannot be shown; then it has no columns.
    pub problem: Option<String>,
}
