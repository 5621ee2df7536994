//! Published numbers against the equations of `model`.
//!
//! `cases/` holds a file for each source: where in it a number stands, how it was obtained,
//! what to put in, what came out there, and how near we must come, with the reason.
//! [`equations`] ties an equation's id to the function under test. A case fails when its
//! equation is unknown, when it gives an input nobody asks for, and when its number is
//! missed; where a source is known to differ, the case says so and fails if it stops differing.

pub mod air_cases;
pub mod case;
pub mod check;
pub mod equations;
pub mod inputs;
pub mod outputs;
pub mod table;

use std::path::Path;

use case::CaseFile;

/// Why a case could not be compared.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum CaseError {
    /// The case file is not as it must be.
    #[error("{file}: {what}")]
    File {
        /// Its name.
        file: String,
        /// What is wrong.
        what: String,
    },
    /// An input is missing or not what the equation wants.
    #[error("input '{name}': {what}")]
    Input {
        /// Its name.
        name: String,
        /// What is wrong.
        what: String,
    },
    /// The function under test refused.
    #[error("refused: {0}")]
    Refused(String),
}

impl CaseError {
    /// A refusal of the function under test.
    pub fn refused(error: impl std::fmt::Display) -> Self {
        Self::Refused(error.to_string())
    }
}

/// Every case file of this package, by name.
///
/// # Errors
/// [`CaseError::File`] for the first that does not read.
pub fn case_files() -> Result<Vec<CaseFile>, CaseError> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("cases");
    let unreadable = |error: std::io::Error| CaseError::File {
        file: "cases".to_owned(),
        what: error.to_string(),
    };
    let mut paths = Vec::new();
    for entry in std::fs::read_dir(&folder).map_err(unreadable)? {
        paths.push(entry.map_err(unreadable)?.path());
    }
    paths.sort();
    paths
        .iter()
        .map(|path| {
            let text = std::fs::read_to_string(path).map_err(unreadable)?;
            let name = path.file_stem().unwrap_or_default().to_string_lossy();
            CaseFile::parse(&name, &text)
        })
        .collect()
}
