//! Brings a file to the form its schema speaks of: canonical units, canonical words, whole counts.

use serde_json::{Map, Value};

use super::units::Family;
use super::{Document, Place, join};
use crate::problem::{Problem, ProblemKind};

/// Rewrites `value` in the words and units of `schema`; places follow, so that messages still
/// speak of what the author wrote.
pub(crate) fn normalize(
    document: &mut Document,
    value: &mut Value,
    schema: &Value,
    problems: &mut Vec<Problem>,
) {
    walk(document, value, schema, "", problems);
}

fn walk(
    document: &mut Document,
    value: &mut Value,
    schema: &Value,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    match value {
        Value::Object(map) => {
            if let Some(Value::Object(properties)) = schema.get("properties") {
                for key in properties.keys() {
                    canonical_unit(document, map, properties, key, at, problems);
                }
            }
            for (key, member) in map {
                let known = schema.get("properties").and_then(|properties| properties.get(key));
                if let Some(schema) = known.or_else(|| schema.get("additionalProperties")) {
                    walk(document, member, schema, &join(at, key), problems);
                }
            }
        }
        Value::Array(values) => {
            if let Some(schema) = schema.get("items") {
                for (index, value) in values.iter_mut().enumerate() {
                    walk(document, value, schema, &join(at, &index.to_string()), problems);
                }
            }
        }
        Value::String(text) => {
            if let Some(word) = canonical_word(text, schema) {
                *text = word;
            }
        }
        Value::Number(number) => {
            if schema.get("type").and_then(Value::as_str) == Some("integer")
                && let Some(whole) = whole(number)
            {
                *value = whole.into();
            }
        }
        Value::Null | Value::Bool(_) => {}
    }
}

/// Moves a quantity written in another unit of its kind under its canonical key.
fn canonical_unit(
    document: &mut Document,
    map: &mut Map<String, Value>,
    properties: &Map<String, Value>,
    key: &str,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    let Some((family, stem)) = Family::of(key) else { return };
    for (suffix, symbol) in family.others {
        let written = format!("{stem}{suffix}");
        if properties.contains_key(&written) || !map.contains_key(&written) {
            continue;
        }
        let from = join(at, &written);
        let to = join(at, key);
        if map.contains_key(key) {
            map.remove(&written);
            let first = document.place(&to).written_key.clone();
            let kind = ProblemKind::TwoSpellings { first, second: written };
            problems.push(document.problem_with_key(&from, kind));
            continue;
        }
        let Some(value) = map.remove(&written) else { continue };
        let convert = |value: &Value| {
            value.as_f64().and_then(|number| family.to_canonical(number, symbol)).map(Value::from)
        };
        let canonical = match &value {
            Value::Array(list) => {
                let each = list.iter().map(|one| convert(one).unwrap_or_else(|| one.clone()));
                Some(each.collect())
            }
            one => convert(one),
        };
        let place = Place { unit: Some(symbol), ..document.place(&from).clone() };
        document.places.insert(to.clone(), place);
        for index in 0..value.as_array().map_or(0, Vec::len) {
            let element = document.place(&join(&from, &index.to_string())).clone();
            document.places.insert(join(&to, &index.to_string()), element);
        }
        if document.refused.contains(&from) {
            document.refused.insert(to);
        }
        map.insert(key.to_owned(), canonical.unwrap_or(value));
    }
}

/// The schema's spelling of a word that differs only in case, spaces, hyphens or underscores.
fn canonical_word(text: &str, schema: &Value) -> Option<String> {
    let options = schema.get("enum")?.as_array()?;
    let fold = |word: &str| word.trim().to_lowercase().replace([' ', '-'], "_");
    let folded = fold(text);
    options.iter().filter_map(Value::as_str).find(|word| fold(word) == folded).map(str::to_owned)
}

fn whole(number: &serde_json::Number) -> Option<i64> {
    const EXACT: f64 = 9_007_199_254_740_992.0;
    if number.is_i64() {
        return None;
    }
    let value = number.as_f64()?;
    #[expect(clippy::cast_possible_truncation, reason = "whole and within the exact range of f64")]
    (value.fract() == 0.0 && value.abs() < EXACT).then_some(value as i64)
}
