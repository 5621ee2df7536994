//! What is wrong with a survey.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use survey::{Problem, Severity};

/// One problem.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct ProblemView {
    /// `error` or `warning`.
    pub severity: String,
    /// File in the survey.
    pub file: String,
    /// Line, from 1.
    pub line: Option<usize>,
    /// Column, from 1.
    pub column: Option<usize>,
    /// Key in the file.
    pub key: Option<String>,
    /// Value as written.
    pub value: Option<String>,
    /// What is wrong.
    pub message: String,
    /// What to do.
    pub hint: Option<String>,
}

/// Every problem of a survey.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct CheckDocument {
    /// `airtide.check/1`.
    pub schema: String,
    /// Problems that keep something from being used.
    pub errors: usize,
    /// Problems that only need a look.
    pub warnings: usize,
    /// All of them, in order of file and line.
    pub problems: Vec<ProblemView>,
}

impl From<&Problem> for ProblemView {
    fn from(problem: &Problem) -> Self {
        Self {
            severity: match problem.severity {
                Severity::Error => "error",
                Severity::Warning => "warning",
            }
            .to_owned(),
            file: problem.file.clone(),
            line: problem.line,
            column: problem.column,
            key: problem.key.clone(),
            value: problem.value.clone(),
            message: problem.message(),
            hint: problem.hint(),
        }
    }
}

impl CheckDocument {
    /// Makes the document.
    pub fn new(problems: &[Problem]) -> Self {
        let errors = problems.iter().filter(|p| p.severity == Severity::Error).count();
        Self {
            schema: "airtide.check/1".to_owned(),
            errors,
            warnings: problems.len() - errors,
            problems: problems.iter().map(ProblemView::from).collect(),
        }
    }
}
