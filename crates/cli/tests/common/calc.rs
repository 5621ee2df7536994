//! Asking for one equation.

use serde_json::Value;

use super::{Ran, airtide};

/// Runs a call written as one line.
pub fn ask(call: &str) -> Ran {
    airtide(&call.split_whitespace().collect::<Vec<_>>())
}

/// The document of an answer.
pub fn results(call: &str) -> Value {
    let ran = ask(&format!("calc {call} --json"));
    assert_eq!(ran.code, 0, "{}", ran.err);
    let document = ran.json();
    assert_eq!(document["schema"], "airtide.calc/1");
    assert_eq!(document["topic"], call.split(' ').next().unwrap());
    for key in ["inputs", "results", "source", "standing", "validity", "warnings"] {
        assert!(document.get(key).is_some(), "no {key}");
    }
    assert!(!document["source"].as_str().unwrap().is_empty());
    document
}

/// Checks a number of the answer.
pub fn near(document: &Value, key: &str, expected: f64, within: f64) {
    let found = document["results"][key].as_f64().unwrap_or_else(|| panic!("no {key}: {document}"));
    assert!((found - expected).abs() <= within, "{key}: {found} against {expected}");
}
