//! Holds a normalized file against its schema and words every error for its author.

use jsonschema::error::{TypeKind, ValidationErrorKind};
use serde_json::Value;

use super::units::Family;
use super::{Document, join};
use crate::problem::{Problem, ProblemKind, UnitSlip, nearest};
use crate::schema::Checked;

/// What became of a validation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Validation {
    /// It fits.
    Sound,
    /// It has only unknown keys, which were taken out: the rest can be judged.
    Readable,
    /// It cannot be read.
    Broken,
}

/// Validates `value`, takes out unknown keys, and reports every error.
pub(crate) fn validate(
    document: &Document,
    value: &mut Value,
    checked: &Checked,
    problems: &mut Vec<Problem>,
) -> Validation {
    let schema = &checked.canonical;
    let mut verdict = Validation::Sound;
    let mut unknown = Vec::new();
    // Keys that a misspelled one was meant to be: they are not missing as well.
    let mut meant = Vec::new();
    let mut missing = Vec::new();
    for error in checked.validator.iter_errors(value) {
        let at = error.instance_path().to_string();
        if document.refused.contains(&at) {
            verdict = Validation::Broken;
            continue;
        }
        if let ValidationErrorKind::AdditionalProperties { unexpected } = error.kind() {
            let known = keys(schema_at(schema, &at));
            for key in unexpected {
                let kind = unknown_key(key, &known);
                if let ProblemKind::UnknownKey { nearest: Some(nearest), .. } = &kind {
                    meant.push(join(&at, nearest));
                }
                problems.push(document.problem_with_key(&join(&at, key), kind));
                unknown.push((at.clone(), key.clone()));
            }
            if verdict == Validation::Sound {
                verdict = Validation::Readable;
            }
            continue;
        }
        verdict = Validation::Broken;
        let problem = worded(document, &at, error.instance(), error.kind(), schema);
        match &problem.kind {
            ProblemKind::MissingKey { key, .. } => missing.push((join(&at, key), problem)),
            _ => problems.push(problem),
        }
    }
    problems.extend(
        missing.into_iter().filter(|(key, _)| !meant.contains(key)).map(|(_, problem)| problem),
    );
    for (at, key) in unknown {
        if let Some(Value::Object(map)) = value.pointer_mut(&at) {
            map.remove(&key);
        }
    }
    verdict
}

fn worded(
    document: &Document,
    at: &str,
    instance: &Value,
    kind: &ValidationErrorKind,
    schema: &Value,
) -> Problem {
    let kind = match kind {
        ValidationErrorKind::Required { property } => {
            let key = property.as_str().unwrap_or_default().to_owned();
            let pointer = join(at, &key);
            let description = schema_at(schema, &pointer)
                .and_then(|schema| schema.get("description"))
                .and_then(Value::as_str)
                .unwrap_or_default()
                .to_owned();
            let other_units = Family::of(&key).map_or_else(Vec::new, |(family, stem)| {
                family.others.iter().map(|(suffix, _)| format!("{stem}{suffix}")).collect()
            });
            ProblemKind::MissingKey { key, description, other_units }
        }
        ValidationErrorKind::Type { kind } => ProblemKind::WrongType {
            wanted: match kind {
                TypeKind::Single(one) => one.to_string(),
                TypeKind::Multiple(set) => {
                    set.iter().map(|one| one.to_string()).collect::<Vec<_>>().join(" or ")
                }
            },
            found: type_word(instance),
        },
        ValidationErrorKind::Minimum { .. }
        | ValidationErrorKind::Maximum { .. }
        | ValidationErrorKind::ExclusiveMinimum { .. }
        | ValidationErrorKind::ExclusiveMaximum { .. } => {
            out_of_range(document, at, instance, schema_at(schema, at).unwrap_or(&Value::Null))
        }
        ValidationErrorKind::Enum { options } => {
            let options: Vec<String> = options
                .as_array()
                .map(|all| all.iter().filter_map(Value::as_str).map(str::to_owned).collect())
                .unwrap_or_default();
            match instance.as_str() {
                Some(text) => ProblemKind::NotOneOf { nearest: nearest(text, &options), options },
                None => ProblemKind::WrongType {
                    wanted: "string".to_owned(),
                    found: type_word(instance),
                },
            }
        }
        ValidationErrorKind::MinItems { limit } => ProblemKind::TooFew { least: *limit },
        ValidationErrorKind::MaxItems { limit } => ProblemKind::TooMany { most: *limit },
        ValidationErrorKind::MinLength { limit } => ProblemKind::TextTooShort { least: *limit },
        ValidationErrorKind::MaxLength { limit } => ProblemKind::TextTooLong { most: *limit },
        other => ProblemKind::Unreadable { message: format!("it breaks '{}'", other.keyword()) },
    };
    document.problem(at, kind)
}

fn unknown_key(key: &str, known: &[String]) -> ProblemKind {
    // A known stem with a foreign suffix is a unit that does not belong to the kind.
    let stem_of = |text: &str| Family::of(text).map(|(_, stem)| stem.to_owned());
    let same_stem = known.iter().find(|one| {
        stem_of(one).is_some_and(|stem| {
            !stem.is_empty() && (key == stem || key.starts_with(&format!("{stem}_")))
        })
    });
    let nearest = same_stem.cloned().or_else(|| nearest(key, known));
    ProblemKind::UnknownKey { key: key.to_owned(), nearest, known: known.to_vec() }
}

fn out_of_range(document: &Document, at: &str, instance: &Value, schema: &Value) -> ProblemKind {
    let bound = |name: &str| schema.get(name).and_then(Value::as_f64);
    let (low, high) = (bound("minimum"), bound("maximum"));
    let value = instance.as_f64().unwrap_or_default();
    // An element of a list has the unit of the list's key.
    let owner = match at.rsplit_once('/') {
        Some((list, step)) if step.parse::<usize>().is_ok() => list,
        _ => at,
    };
    let key = owner.rsplit('/').next().unwrap_or_default();
    let place = document.place(owner);
    let Some((family, stem)) = Family::of(key) else {
        return ProblemKind::OutOfRange { low, high, unit: String::new(), slip: None };
    };
    let symbol = place.unit.unwrap_or(family.symbol);
    let written = family.written_in(value, symbol).unwrap_or(value);
    let within =
        |number: f64| low.is_none_or(|low| number >= low) && high.is_none_or(|high| number <= high);
    let slip = std::iter::once((family.suffix, family.symbol))
        .chain(family.others.iter().copied())
        .filter(|(_, other)| *other != symbol)
        .find(|(_, other)| {
            let meant = if *other == family.symbol {
                Some(written)
            } else {
                family.to_canonical(written, other)
            };
            meant.is_some_and(within)
        })
        .map(|(suffix, unit)| UnitSlip {
            unit: unit.to_owned(),
            key: format!("{stem}{suffix}"),
            value: written,
        });
    let show = |bound: Option<f64>| bound.and_then(|bound| family.written_in(bound, symbol));
    ProblemKind::OutOfRange { low: show(low), high: show(high), unit: symbol.to_owned(), slip }
}

/// The part of a schema that speaks of an instance pointer.
fn schema_at<'a>(schema: &'a Value, pointer: &str) -> Option<&'a Value> {
    pointer.split('/').skip(1).try_fold(schema, |schema, step| {
        let step = step.replace("~1", "/").replace("~0", "~");
        schema
            .get("properties")
            .and_then(|properties| properties.get(&step))
            .or_else(|| schema.get("items"))
            .or_else(|| schema.get("additionalProperties"))
    })
}

fn keys(schema: Option<&Value>) -> Vec<String> {
    schema
        .and_then(|schema| schema.get("properties"))
        .and_then(Value::as_object)
        .map(|properties| properties.keys().cloned().collect())
        .unwrap_or_default()
}

fn type_word(value: &Value) -> String {
    match value {
        Value::Null => "nothing",
        Value::Bool(_) => "true or false",
        Value::Number(_) => "number",
        Value::String(_) => "string",
        Value::Array(_) => "list",
        Value::Object(_) => "table",
    }
    .to_owned()
}
