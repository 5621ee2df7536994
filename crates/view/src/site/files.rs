//! Survey files, read and saved value by value.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use survey::{Edit, Problem};

use crate::ProblemView;

/// The files of a survey.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FilesDocument {
    /// `airtide.files/1`.
    pub schema: String,
    /// SHA-256 over all of them: another one means that something changed.
    pub hash: String,
    /// Each, in order of path.
    pub files: Vec<FileView>,
}

/// One file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct FileView {
    /// Path in the survey.
    pub path: String,
    /// Name of its JSON Schema, such as `tire`; `null` for what is no survey file.
    pub kind: Option<String>,
    /// Bytes.
    pub bytes: usize,
    /// Errors in it.
    pub errors: usize,
    /// Warnings.
    pub warnings: usize,
}

/// One file with what is in it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FileDocument {
    /// `airtide.file/1`.
    pub schema: String,
    /// Path in the survey.
    pub path: String,
    /// Name of its JSON Schema.
    pub kind: Option<String>,
    /// SHA-256 of its bytes: what a save must name to be accepted.
    pub hash: String,
    /// Its text.
    pub text: String,
    /// Its values under the keys as written; `null` where it cannot be read.
    pub values: Option<Value>,
    /// What is wrong with it.
    pub problems: Vec<FileProblemView>,
}

/// A problem with its place in the values.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FileProblemView {
    /// The problem.
    #[serde(flatten)]
    pub problem: ProblemView,
    /// JSON pointer to the value it speaks of, or to what holds it.
    pub pointer: Option<String>,
}

impl FileProblemView {
    /// The problem with the text it stands in.
    pub fn new(problem: &Problem, text: &str) -> Self {
        let byte = problem.span.as_ref().map(|span| span.start);
        Self {
            problem: ProblemView::from(problem),
            pointer: byte.and_then(|byte| survey::pointer_at(text, byte)),
        }
    }
}

/// A file to be saved: either single values of it, or its whole text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FileSaveRequest {
    /// Path in the survey.
    pub path: String,
    /// Hash of the bytes it was edited from; `null` for a new file.
    pub base: Option<String>,
    /// Values to change, in order.
    #[serde(default)]
    pub edits: Vec<EditView>,
    /// The whole text instead.
    #[serde(default)]
    pub text: Option<String>,
}

/// One change.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "do", rename_all = "lowercase", deny_unknown_fields)]
pub enum EditView {
    /// Gives a key a value; the key may be new.
    Set {
        /// JSON pointer.
        pointer: String,
        /// The value.
        value: Value,
    },
    /// Takes a key, row or element out.
    Remove {
        /// JSON pointer.
        pointer: String,
    },
    /// Puts an element at the end of a list.
    Append {
        /// JSON pointer to the list.
        pointer: String,
        /// The element.
        value: Value,
    },
}

impl From<EditView> for Edit {
    fn from(edit: EditView) -> Self {
        match edit {
            EditView::Set { pointer, value } => Self::Set { pointer, value },
            EditView::Remove { pointer } => Self::Remove { pointer },
            EditView::Append { pointer, value } => Self::Append { pointer, value },
        }
    }
}
