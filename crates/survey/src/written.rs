//! What a file of a survey says, apart from comments, spacing and the order of keys.

use serde_json::Value;

use crate::document::Document;
use crate::load::is_toml;

/// The values of a TOML file as written; `None` for other files and for what is no TOML.
///
/// ```
/// let values = |text: &str| survey::written_values("survey.toml", text.as_bytes());
/// assert_eq!(values("a = 1 # gross\nb = 2"), values("b=2\na=1"));
/// assert_ne!(values("a = 1"), values("a = 2"));
/// assert_eq!(survey::written_values("units.csv", b"number"), None);
/// ```
pub fn written_values(path: &str, bytes: &[u8]) -> Option<Value> {
    if !is_toml(path) {
        return None;
    }
    let mut problems = Vec::new();
    let (_, values) = Document::read(path, bytes, &mut problems)?;
    problems.is_empty().then_some(values)
}
