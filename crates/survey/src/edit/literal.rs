//! Values as TOML text.

use serde_json::{Map, Value};

/// A value on one line; `None` for what TOML cannot write.
pub(super) fn inline(value: &Value) -> Option<String> {
    match value {
        Value::Null => None,
        Value::Bool(flag) => Some(flag.to_string()),
        Value::Number(number) => {
            let float = number.as_f64().filter(|float| float.is_finite())?;
            // An integer stays one; a float keeps its shortest digits.
            Some(number.as_i64().map_or_else(
                || toml_edit::Value::from(float).to_string(),
                |whole| whole.to_string(),
            ))
        }
        Value::String(text) => Some(toml_edit::Value::from(text.as_str()).to_string()),
        Value::Array(values) => {
            let written: Option<Vec<String>> = values.iter().map(inline).collect();
            Some(format!("[{}]", written?.join(", ")))
        }
        Value::Object(map) if map.is_empty() => Some("{}".to_owned()),
        Value::Object(map) => Some(format!("{{ {} }}", pairs(map)?.join(", "))),
    }
}

/// A key, quoted where it must be.
pub(super) fn key_text(key: &str) -> String {
    toml_edit::Key::new(key).to_string()
}

/// A row of a list of tables under its heading.
pub(super) fn table(heading: &str, row: &Map<String, Value>) -> Option<String> {
    let mut lines = vec![format!("[[{heading}]]")];
    lines.extend(pairs(row)?);
    Some(lines.join("\n"))
}

fn pairs(map: &Map<String, Value>) -> Option<Vec<String>> {
    map.iter().map(|(key, value)| Some(format!("{} = {}", key_text(key), inline(value)?))).collect()
}
