//! The published schemas say of a file what the reader says.

mod quarry_edits;

use quarry_edits::*;
use serde_json::Value;

/// A TOML text as JSON, in the units its author wrote.
fn json(text: &str) -> Value {
    let document: toml_edit::DocumentMut = text.parse().unwrap();
    toml_edit::de::from_document::<Value>(document).unwrap()
}

fn schema(name: &str) -> jsonschema::Validator {
    let schemas = survey::schema::all();
    let (_, schema) = schemas.iter().find(|(known, _)| *known == name).unwrap();
    jsonschema::draft202012::meta::validate(schema).unwrap();
    jsonschema::validator_for(schema).unwrap()
}

const FILES: [(&str, &str); 8] = [
    ("survey", SURVEY),
    ("tire", STEER_TIRE),
    ("tire", TIRE),
    ("vehicle", TRUCK),
    ("vehicle", TRAILER),
    ("combination", COMBINATION),
    ("route", ROUTE),
    ("haul", HAUL),
];

#[test]
fn sound_files_fit_in_whatever_units() {
    let folder = quarry();
    for (name, file) in FILES {
        let value = json(folder.text(file).unwrap());
        let errors: Vec<String> =
            schema(name).iter_errors(&value).map(|error| error.to_string()).collect();
        assert!(errors.is_empty(), "{file}: {}", errors.join("\n"));
    }
}

#[test]
fn approvals_permits_and_registers_fit_as_they_are_read() {
    let approval = r#"
        tire = "drive"
        number = "L-14"
        answered_by = "the maker"
        date = "2026-05-04"
        recommended_pressure = "table"
        given_for = { designation = "11R22.5", service_description = "144/142 L", rim = "8.25x22.5" }
        asked = { warmest_f = 100, hold_h = 0.5, loads = [{ fitment = "dual", load_lb = 4400, speed_mph = 20 }] }
        rows = [{ fitment = "dual", load_lb = 4400, speed_mph = 20, pressure_psi = 48 }]"#;
    let permit = r#"
        number = "88"
        authority = "the county"
        valid_from = "2027-01-01"
        pressures = "as_read"
        stretches = [{ route = "a", from_mi = 2, to_mi = 9, maximum_pressure_psi = 80, gross_mass_lb = 90000, evidence_interval_min = 1 }]"#;
    let units = r#"
        units = [{ number = "T-1", type = "tractor", tires = { "drive.1.left.inner" = "other" }, source_addresses = [11] }]"#;
    for (name, text) in [("approval", approval), ("permit", permit), ("units", units)] {
        let value = json(text);
        let errors: Vec<String> =
            schema(name).iter_errors(&value).map(|error| error.to_string()).collect();
        assert!(errors.is_empty(), "{name}: {}", errors.join("\n"));
    }
    assert!(!schema("units").is_valid(&json(&units.replace("11", "254"))));
    assert!(!schema("permit").is_valid(&json(&permit.replace("\"as_read\"", "\"warm\""))));
    assert!(
        !schema("approval")
            .is_valid(&json(&approval.replace("warmest_f = 100", "warmest_f = 160")))
    );
}

#[test]
fn limits_hold_in_every_unit() {
    let fits = |name: &str, file: &str, old: &str, new: &str| {
        let folder = edited(file, old, new);
        schema(name).is_valid(&json(folder.text(file).unwrap()))
    };
    let old = "rated_pressure_psi = 105";
    assert!(fits("tire", TIRE, old, "rated_pressure_bar = 7.2"));
    assert!(!fits("tire", TIRE, old, "rated_pressure_kpa = 105"));
    assert!(!fits("tire", TIRE, old, "rated_pressure_psi = 720"));
    assert!(!fits("tire", TIRE, old, "rated_pressure_psi = 105\nrated_pressure_kpa = 720"));
    assert!(!fits("tire", TIRE, old, "rated_pressure_mm = 105"));
    assert!(!fits("tire", TIRE, old, ""));
    assert!(fits("survey", SURVEY, "coldest_c = -12", "coldest_f = -22"));
    assert!(!fits("survey", SURVEY, "coldest_c = -12", "coldest_f = -200"));
}

#[test]
fn stored_schemas_are_those_of_the_code() {
    let stored = concat!(env!("CARGO_MANIFEST_DIR"), "/../../schemas");
    for (name, text) in survey::schema::files() {
        let path = std::path::Path::new(stored).join(&name);
        let found = std::fs::read_to_string(&path).unwrap_or_default();
        assert!(found == text, "schemas/{name} is old: run `cargo xtask generate`");
    }
}
