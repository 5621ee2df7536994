//! What the reader says about keys, types, ranges, words and units.

mod quarry_edits;

use quarry_edits::*;
use survey::{ProblemKind, report};

#[test]
fn broken_toml_is_told_with_its_line() {
    one_problem(SURVEY, "altitude_m = 640", "altitude_m = ", "not valid TOML", "quotes");
    one_problem(SURVEY, "name = ", "name = Alder\nold = ", "not valid TOML", "quotes");
}

#[test]
fn numbers_that_are_none_are_refused() {
    let told = one_problem(
        SURVEY,
        "altitude_m = 640",
        "altitude_m = nan",
        "not a number that can be used",
        "measured",
    );
    assert_eq!(told.kind, ProblemKind::NotFinite);
    one_problem(SURVEY, "coldest_c = -12", "coldest_c = -inf", "coldest_c = -inf", "");
    one_problem(TIRE, "rated_pressure_psi = 105", "rated_pressure_psi = +inf", "not a number", "");
}

#[test]
fn unknown_keys_get_the_nearest_known_one() {
    one_problem(SURVEY, "altitude_m", "altitud_m", "unknown key altitud_m", "");
    let folder = edited(SURVEY, "humidity_pct = 60", "humidity_pct = 60\nhumidty_pct = 60");
    tells(&folder, "survey.toml:8:1: unknown key humidty_pct — did you mean humidity_pct?");
    one_problem(
        TRUCK,
        "driven = true",
        "drivn = true",
        "unknown key drivn",
        "did you mean driven?",
    );
}

#[test]
fn a_unit_of_another_kind_leads_to_the_right_key() {
    let folder = edited(TIRE, "diameter_mm = 1052", "diameter_kg = 1052");
    tells(&folder, "unknown key diameter_kg — did you mean diameter_mm?");
}

#[test]
fn missing_keys_say_what_they_are() {
    let folder = edited(SURVEY, "altitude_m = 640\n", "");
    tells(&folder, "altitude_m is missing — add it: altitude of the site");
    tells(&folder, "or altitude_ft");
}

#[test]
fn types_are_told_in_plain_words() {
    one_problem(
        SURVEY,
        "altitude_m = 640",
        "altitude_m = \"640\"",
        "is text, not a number",
        "without quotes",
    );
    one_problem(
        TRUCK,
        "steered = true",
        "steered = \"yes\"",
        "not true or false",
        "steered = true",
    );
    one_problem(TRUCK, "axles = 2", "axles = 2.5", "not a whole number", "");
}

#[test]
fn whole_numbers_may_be_written_with_a_point() {
    assert!(problems(&edited(TRUCK, "axles = 2", "axles = 2.0")).is_empty());
}

#[test]
fn words_may_differ_in_case_and_spaces() {
    let folder = edited(TRAILER, "\"tire_line\"", "\"Tire line\"");
    assert!(problems(&folder).is_empty());
    one_problem(
        ROUTE,
        "surface = \"earth\"",
        "surface = \"erth\"",
        "not one of the choices",
        "did you mean \"earth\"?",
    );
    one_problem(ROUTE, "surface = \"earth\"", "surface = \"x\"", "not one of", "choices: paved");
}

#[test]
fn psi_typed_as_kpa_is_recognized() {
    one_problem(
        TIRE,
        "rated_pressure_psi = 105",
        "rated_pressure_kpa = 105",
        "rated_pressure_kpa = 105 is outside 200 to 1200 kPa",
        "did you mean psi? write rated_pressure_psi = 105",
    );
    one_problem(
        TRUCK,
        "cut_in_kpa = 760",
        "cut_in_kpa = 110",
        "outside",
        "did you mean psi? write cut_in_psi = 110",
    );
    one_problem(
        TIRE,
        "pressure_kpa = 340",
        "pressure_kpa = 65",
        "means 65 kPa (9 psi), for a tire rated at 724 kPa (105 psi)",
        "did you mean psi? write pressure_psi = 65",
    );
    one_problem(
        TRUCK,
        "scrub_minimum_kpa = 200",
        "scrub_minimum_kpa = 60",
        "for a tire rated at",
        "write scrub_minimum_psi = 60",
    );
}

#[test]
fn bar_and_inches_and_kilometers_an_hour_are_recognized() {
    one_problem(
        TRUCK,
        "cut_in_kpa = 760",
        "cut_in_kpa = 7.6",
        "outside",
        "did you mean bar? write cut_in_bar = 7.6",
    );
    one_problem(
        TIRE,
        "diameter_mm = 1052",
        "diameter_mm = 41.4",
        "outside 500 to 4100 mm",
        "did you mean in? write diameter_in = 41.4",
    );
    one_problem(
        ROUTE,
        "speed_limit_kmh = 80",
        "speed_limit_mph = 100",
        "outside",
        "did you mean km/h? write speed_limit_kmh = 100",
    );
}

#[test]
fn a_range_is_told_in_the_unit_written() {
    one_problem(
        TIRE,
        "rated_pressure_psi = 105",
        "rated_pressure_psi = 500",
        "outside 29.0075 to 174.0453 psi",
        "",
    );
}

#[test]
fn pounds_typed_as_kilograms_are_recognized() {
    one_problem(
        TIRE,
        "rated_load_single_lb = 6175",
        "rated_load_single_kg = 6175",
        "where about 2800 kg",
        "did you mean lb? write rated_load_single_lb = 6175",
    );
    let folder = edited(COMBINATION, "mass_kg = 15400", "mass_kg = 34000");
    tells(&folder, "did you mean lb? write mass_lb = 34000");
}

#[test]
fn two_spellings_of_one_quantity_contradict() {
    one_problem(
        TIRE,
        "diameter_mm = 1052",
        "diameter_in = 41.4\ndiameter_mm = 1052",
        "diameter_in says again what diameter_mm says",
        "keep diameter_mm or diameter_in",
    );
}

#[test]
fn all_problems_come_at_once_and_in_order() {
    let mut folder = edited(SURVEY, "humidity_pct = 60", "humidity_pct = 600");
    edit(&mut folder, SURVEY, "altitude_m = 640", "altitude_m = inf");
    edit(&mut folder, TIRE, "body = \"TRA\"", "body = \"TRB\"");
    edit(&mut folder, ROUTE, "to_km = 9.5", "to_km = 9.4");
    let (survey, problems) = load(&folder);
    assert!(survey.is_none());
    let files: Vec<(&str, Option<usize>)> =
        problems.iter().map(|problem| (problem.file.as_str(), problem.line)).collect();
    assert_eq!(
        files,
        [(ROUTE, Some(34)), (SURVEY, Some(6)), (SURVEY, Some(7)), (TIRE, Some(4))],
        "{problems:#?}"
    );
}

#[test]
fn an_unknown_key_does_not_hide_what_else_is_wrong_in_its_file() {
    let mut folder = edited(TIRE, "body = \"TRA\"", "body = \"TRA\"\ncolor = \"black\"");
    edit(&mut folder, TIRE, "static_loaded_radius_mm = 493", "static_loaded_radius_mm = 530");
    let told = problems(&folder);
    assert_eq!(told.len(), 2, "{told:#?}");
}

#[test]
fn a_report_shows_the_line_and_points_at_the_value() {
    let folder = edited(TIRE, "rated_pressure_psi = 105", "rated_pressure_kpa = 105");
    let text = report(&problems(&folder), &folder, false);
    assert!(text.contains("rated_pressure_kpa = 105"), "{text}");
    assert!(text.contains(&format!("{TIRE}:7:22")), "{text}");
    assert!(text.contains("did you mean psi?"), "{text}");
}

#[test]
fn columns_count_characters_not_bytes() {
    let folder = edited(SURVEY, "name = \"Alder", "name = \"Größe\"\nunit = \"Alder");
    let told = problems(&folder);
    assert_eq!((told[0].line, told[0].column), (Some(3), Some(1)), "{told:#?}");
    let folder = edited(
        COMBINATION,
        "\"tractor.steer\" = { mass_kg = 4900,",
        "\"tractor.steer\" = { \"größe\" = 1, mass_kg = 0.0,",
    );
    tells(&folder, "unknown key größe");
}
