//! A case that proves nothing is refused.

use validation::case::CaseFile;
use validation::check::compare;

const CASE: &str = r#"
source = "ideal-gas-law"
locator = "definition"
standing = "read"
[[case]]
equation = "cold-warm-pressure"
level = "worked"
inputs = { pressure = "480 kPa", from_temperature = "20 C", to_temperature = "20 C", from_ambient = "100 kPa", to_ambient = "100 kPa" }
expected = { pressure = "480 kPa" }
tolerance = { relative = 1e-9, because = "nothing changes" }
"#;

fn problems(text: &str) -> Vec<String> {
    compare(&[CaseFile::parse("ideal-gas-law", text).expect("it parses")]).1
}

#[test]
fn a_sound_case_passes() {
    assert!(problems(CASE).is_empty());
}

#[test]
fn a_missed_number_fails() {
    assert!(
        problems(&CASE.replace("{ pressure = \"480 kPa\" }", "{ pressure = \"481 kPa\" }"))[0]
            .contains("misses")
    );
}

#[test]
fn an_unknown_equation_an_unused_input_and_a_wrong_unit_fail() {
    assert!(
        problems(&CASE.replace("cold-warm-pressure", "no-such"))[0].contains("unknown equation")
    );
    assert!(problems(&CASE.replace("inputs = {", "inputs = { extra = 1,"))[0].contains("extra"));
    let wrong_unit = CASE
        .replace("expected = { pressure = \"480 kPa\" }", "expected = { pressure = \"480 kg\" }");
    assert!(problems(&wrong_unit)[0].contains("no unit"));
}

#[test]
fn a_difference_that_is_gone_fails() {
    let text = CASE.replace("tolerance =", "differs_because = \"test\"\ntolerance =");
    assert!(problems(&text)[0].contains("no longer differs"));
}

#[test]
fn an_unknown_key_in_a_file_is_refused() {
    let text = CASE.replace("standing =", "author = \"x\"\nstanding =");
    assert!(CaseFile::parse("ideal-gas-law", &text).is_err());
    assert!(CaseFile::parse("another-name", CASE).is_err());
}
