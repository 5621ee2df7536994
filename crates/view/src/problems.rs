//! What is wrong with a survey.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::IssuedProblem;
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
    /// All of them, in order of file and line; issued plans last.
    pub problems: Vec<ProblemView>,
}

fn severity(severity: Severity) -> String {
    match severity {
        Severity::Error => "error",
        Severity::Warning => "warning",
    }
    .to_owned()
}

impl From<&IssuedProblem> for ProblemView {
    fn from(problem: &IssuedProblem) -> Self {
        Self {
            severity: severity(problem.severity()),
            file: problem.file.clone(),
            line: problem.line(),
            column: None,
            key: None,
            value: None,
            message: problem.fault.message(),
            hint: problem.fault.hint(),
        }
    }
}

impl From<&Problem> for ProblemView {
    fn from(problem: &Problem) -> Self {
        Self {
            severity: severity(problem.severity),
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
    /// Makes the document: problems of the survey's files, then those of its issued plans.
    pub fn new(problems: &[Problem], issued: &[IssuedProblem]) -> Self {
        let of_files = problems.iter().map(ProblemView::from);
        let problems: Vec<_> = of_files.chain(issued.iter().map(ProblemView::from)).collect();
        let errors = problems.iter().filter(|problem| problem.severity == "error").count();
        Self {
            schema: "airtide.check/1".to_owned(),
            errors,
            warnings: problems.len() - errors,
            problems,
        }
    }
}
