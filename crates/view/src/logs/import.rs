//! What an import wrote, `airtide.import/1`.

use logs::read::Losses;
use logs::store::Imported;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::LogFileView;

/// What an import wrote.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ImportDocument {
    /// `airtide.import/1`.
    pub schema: String,
    /// Fleet number of the unit.
    pub unit: String,
    /// Where its files are.
    pub folder: String,
    /// How many files.
    pub files: usize,
    /// Rows of native samples.
    pub rows: u64,
    /// Numbers that found no second of the grid: a clock that went back, or too many locations.
    pub off_grid: u64,
    /// Frames of all logs.
    pub frames: u64,
    /// Records that could not be read.
    pub bad_records: u64,
    /// Each log.
    pub logs: Vec<LogFileView>,
}

impl ImportDocument {
    /// What an import for a unit wrote.
    pub fn new(unit: &str, imported: &Imported) -> Self {
        let none = Losses::default();
        Self {
            schema: "airtide.import/1".to_owned(),
            unit: unit.to_owned(),
            folder: imported.folder.display().to_string(),
            files: imported.files,
            rows: imported.rows,
            off_grid: imported.off_grid,
            frames: imported.logs.iter().map(|told| told.frames).sum(),
            bad_records: imported.logs.iter().map(|told| told.losses.bad_records()).sum(),
            logs: imported.logs.iter().map(|told| LogFileView::new(told, &none)).collect(),
        }
    }
}
