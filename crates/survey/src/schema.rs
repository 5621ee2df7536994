//! The JSON Schemas of the survey files, generated from the file structs.

use std::sync::LazyLock;

use jsonschema::Validator;
use schemars::JsonSchema;
use schemars::generate::SchemaSettings;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value, json};

use crate::document::units::Family;
use crate::file::{
    ApprovalFile, CombinationFile, HaulFile, PermitFile, RouteFile, SurveyFile, TireFile,
    UnitsFile, VehicleFile,
};

/// The published schema of every kind of file, with the name it is stored under.
///
/// They list every spelling of a quantity; the reader itself validates against the canonical
/// spelling after the change of units.
///
/// ```
/// let names: Vec<_> = survey::schema::all().into_iter().map(|(name, _)| name).collect();
/// assert_eq!(names[..6], ["survey", "tire", "vehicle", "combination", "route", "haul"]);
/// assert_eq!(names[6..], ["approval", "permit", "units"]);
/// ```
pub fn all() -> Vec<(&'static str, Value)> {
    vec![
        ("survey", published(canonical::<SurveyFile>())),
        ("tire", published(canonical::<TireFile>())),
        ("vehicle", published(canonical::<VehicleFile>())),
        ("combination", published(canonical::<CombinationFile>())),
        ("route", published(canonical::<RouteFile>())),
        ("haul", published(canonical::<HaulFile>())),
        ("approval", published(canonical::<ApprovalFile>())),
        ("permit", published(canonical::<PermitFile>())),
        ("units", published(canonical::<UnitsFile>())),
    ]
}

/// The published schemas as files: name and text.
pub fn files() -> Vec<(String, String)> {
    all()
        .into_iter()
        .map(|(name, schema)| (format!("{name}.json"), format!("{schema:#}\n")))
        .collect()
}

/// What a file is held against.
pub(crate) struct Checked {
    /// The schema in canonical spelling.
    pub canonical: Value,
    /// The same, ready to judge.
    pub validator: Validator,
}

/// A kind of file with its schema, made once.
pub(crate) trait SurveyFileKind: DeserializeOwned + JsonSchema {
    /// The schema.
    fn checked() -> &'static Checked;
}

macro_rules! checked_once {
    ($($file:ty),+) => { $(
        impl SurveyFileKind for $file {
            fn checked() -> &'static Checked {
                static CHECKED: LazyLock<Checked> = LazyLock::new(|| {
                    let canonical = canonical::<$file>();
                    let validator = jsonschema::validator_for(&canonical)
                        .expect("schemas are generated from the file structs and tested to compile");
                    Checked { canonical, validator }
                });
                &CHECKED
            }
        }
    )+ };
}
checked_once!(
    SurveyFile,
    TireFile,
    VehicleFile,
    CombinationFile,
    RouteFile,
    HaulFile,
    ApprovalFile,
    PermitFile,
    UnitsFile
);

/// The schema of a file in canonical spelling, without references.
fn canonical<T: JsonSchema>() -> Value {
    let generator =
        SchemaSettings::draft2020_12().with(|set| set.inline_subschemas = true).into_generator();
    let mut schema = generator.into_root_schema_for::<T>().to_value();
    simplify(&mut schema);
    schema
}

/// Does something to every schema in a schema, the inner ones first.
fn visit(schema: &mut Value, change: &mut impl FnMut(&mut Map<String, Value>)) {
    let Value::Object(map) = schema else { return };
    if let Some(Value::Object(properties)) = map.get_mut("properties") {
        for property in properties.values_mut() {
            visit(property, change);
        }
    }
    for keyword in ["items", "additionalProperties"] {
        if let Some(inner) = map.get_mut(keyword) {
            visit(inner, change);
        }
    }
    for keyword in ["anyOf", "oneOf", "allOf"] {
        if let Some(Value::Array(choices)) = map.get_mut(keyword) {
            for choice in choices {
                visit(choice, change);
            }
        }
    }
    change(map);
}

/// TOML has no null, and a documented enum reads better as a list of words.
fn simplify(schema: &mut Value) {
    visit(schema, &mut |map| {
        without_null(map);
        words(map);
        for noise in ["format", "default"] {
            map.shift_remove(noise);
        }
        if let Some(Value::String(title)) = map.get_mut("title")
            && let Some(stem) = title.strip_suffix("File")
        {
            *title = stem.to_owned();
        }
    });
}

fn without_null(map: &mut Map<String, Value>) {
    if let Some(Value::Array(types)) = map.get_mut("type") {
        types.retain(|one| one != "null");
        if let [only] = types.as_slice() {
            let only = only.clone();
            map.insert("type".to_owned(), only);
        }
    }
    if let Some(Value::Array(choices)) = map.get_mut("anyOf") {
        choices.retain(|choice| choice.get("type") != Some(&json!("null")));
        if let [Value::Object(only)] = choices.as_slice() {
            let only = only.clone();
            map.shift_remove("anyOf");
            for (key, value) in only {
                map.entry(key).or_insert(value);
            }
        }
    }
}

fn words(map: &mut Map<String, Value>) {
    let Some(Value::Array(choices)) = map.get("oneOf") else { return };
    let mut options = Vec::new();
    let mut meanings = Vec::new();
    for choice in choices {
        let Some(Value::String(word)) = choice.get("const") else { return };
        options.push(Value::String(word.clone()));
        let meaning = choice.get("description").and_then(Value::as_str).unwrap_or_default();
        meanings.push(format!("{word}: {meaning}"));
    }
    let mut description =
        map.get("description").and_then(Value::as_str).unwrap_or_default().to_owned();
    for meaning in meanings {
        description.push('\n');
        description.push_str(&meaning);
    }
    map.shift_remove("oneOf");
    map.insert("type".to_owned(), json!("string"));
    map.insert("enum".to_owned(), Value::Array(options));
    map.insert("description".to_owned(), Value::String(description));
}

/// A canonical schema with every other spelling of a quantity, its keywords in a fixed order.
fn published(mut schema: Value) -> Value {
    visit(&mut schema, &mut spell);
    visit(&mut schema, &mut in_order);
    schema
}

/// What a reader wants to know first comes first.
fn in_order(map: &mut Map<String, Value>) {
    const ORDER: [&str; 8] =
        ["$schema", "title", "description", "type", "enum", "minimum", "maximum", "properties"];
    let mut ordered = Map::new();
    for keyword in ORDER {
        if let Some(value) = map.shift_remove(keyword) {
            ordered.insert(keyword.to_owned(), value);
        }
    }
    ordered.append(map);
    *map = ordered;
}

fn spell(map: &mut Map<String, Value>) {
    let Some(Value::Object(properties)) = map.get("properties").cloned() else { return };
    let mut spelled = Map::new();
    let mut choices = Vec::new();
    let mut required = match map.get("required") {
        Some(Value::Array(required)) => required.clone(),
        _ => Vec::new(),
    };
    for (key, property) in &properties {
        spelled.insert(key.clone(), property.clone());
        let Some((family, stem)) = Family::of(key) else { continue };
        let mut names = vec![key.clone()];
        for (suffix, symbol) in family.others {
            let name = format!("{stem}{suffix}");
            if !properties.contains_key(&name) {
                spelled.insert(name.clone(), in_unit(property, family, symbol));
                names.push(name);
            }
        }
        if names.len() > 1 && required.contains(&json!(key)) {
            required.retain(|one| one != &json!(key));
            let each = names.iter().map(|name| json!({ "required": [name] })).collect();
            choices.push(json!({ "oneOf": Value::Array(each) }));
        } else if names.len() > 1 {
            // At most one spelling: no two of them together.
            for (index, first) in names.iter().enumerate() {
                for second in &names[index + 1..] {
                    choices.push(json!({ "not": { "required": [first, second] } }));
                }
            }
        }
    }
    map.insert("properties".to_owned(), Value::Object(spelled));
    if required.is_empty() {
        map.shift_remove("required");
    } else {
        map.insert("required".to_owned(), Value::Array(required));
    }
    if !choices.is_empty() {
        map.insert("allOf".to_owned(), Value::Array(choices));
    }
}

fn in_unit(property: &Value, family: &Family, symbol: &str) -> Value {
    let mut property = property.clone();
    if let Value::Object(map) = &mut property {
        if let Some(items) = map.get("items").map(|items| in_unit(items, family, symbol)) {
            map.insert("items".to_owned(), items);
        }
        for bound in ["minimum", "maximum"] {
            if let Some(limit) = map.get(bound).and_then(Value::as_f64)
                && let Some(converted) = family.written_in(limit, symbol)
            {
                map.insert(bound.to_owned(), json!(outward(converted, bound == "minimum")));
            }
        }
    }
    property
}

/// Six significant digits, away from the range, so that a bound typed in another unit still fits.
fn outward(value: f64, down: bool) -> f64 {
    if value == 0.0 {
        return 0.0;
    }
    #[expect(clippy::cast_possible_truncation, reason = "a decimal exponent is small")]
    let digits = 5 - value.abs().log10().floor() as i32;
    let scale = 10f64.powi(digits);
    let scaled = value * scale;
    let snapped = if (scaled - scaled.round()).abs() < 1e-6 {
        scaled.round()
    } else if down {
        scaled.floor()
    } else {
        scaled.ceil()
    };
    snapped / scale
}
