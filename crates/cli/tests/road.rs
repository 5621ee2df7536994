//! The call from the road and the questions asked backwards, as they are typed.

mod common;

use std::time::{Duration, Instant};

use common::{Ran, airtide_in, edit, with_starter};
use serde_json::Value;
use tempfile::TempDir;

fn now(folder: &TempDir, flags: &[&str]) -> Ran {
    let call = ["now", "fleet", "--combination", "tractor-trailer"];
    airtide_in(folder.path(), &[&call, flags].concat())
}

fn with_demo(name: &str) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let ran = airtide_in(folder.path(), &["new", "fleet", "--demo", name]);
    assert_eq!(ran.code, 0, "{}", ran.err);
    folder
}

/// Readings that hold the road, on the steer tires too.
const HARD: [&str; 6] =
    ["--read", "steer=8.2bar", "--read", "drive=7.2bar", "--read", "trailer=7.2bar"];

fn hard<'a>(flags: &[&'a str]) -> Vec<&'a str> {
    [&HARD[..], &["--cold", "--with-unapproved"], flags].concat()
}

fn names(document: &Value, list: &str) -> Vec<String> {
    let list = document[list].as_array().unwrap();
    list.iter().map(|one| one["what"].as_str().unwrap().to_owned()).collect()
}

#[test]
fn regress_the_answers_as_they_are_read() {
    let folder = with_starter();
    let go = now(&folder, &hard(&["--load", "laden"]));
    assert_eq!(go.code, 0, "{}{}", go.out, go.err);
    insta::assert_snapshot!("go", go.out);
    let soft = ["--read", "drive=85kPa", "--read", "trailer=5.9bar/5.2bar", "--load", "laden"];
    let stop = now(&folder, &soft);
    assert_eq!(stop.code, 1, "{}", stop.err);
    insta::assert_snapshot!("stop", stop.out);
    let walk = now(&folder, &["--read", "drive=100psi", "--load", "empty", "--units", "us"]);
    assert_eq!(walk.code, 1, "{}", walk.err);
    insta::assert_snapshot!("walk", walk.out);
    let other = now(&folder, &hard(&["--load", "laden", "--trailer", "set-for:empty"]));
    assert_eq!(other.code, 1, "{}", other.err);
    insta::assert_snapshot!("other-load-state", other.out);
    let table = now(&folder, &["--table", "--cold", "--with-unapproved", "--units", "us"]);
    assert_eq!(table.code, 0, "{}", table.err);
    insta::assert_snapshot!("table", table.out);
}

#[test]
fn the_big_answer_comes_first() {
    let folder = with_starter();
    let first = |ran: Ran| ran.out.lines().next().unwrap().to_owned();
    assert!(first(now(&folder, &hard(&["--load", "laden"]))).starts_with("GO, NO FASTER THAN "));
    let soft = now(&folder, &["--read", "drive=1bar", "--load", "laden"]);
    assert_eq!(first(soft), "STOP");
}

#[test]
fn an_answer_comes_within_a_second() {
    let folder = with_starter();
    let begun = Instant::now();
    now(&folder, &hard(&["--load", "unknown"]));
    assert!(begun.elapsed() < Duration::from_secs(1), "{:?}", begun.elapsed());
}

#[test]
fn the_document_says_what_the_page_says() {
    let folder = with_starter();
    let flags = hard(&["--load", "unknown", "--ran-last-hour", "--trailer", "unknown", "--json"]);
    let document = now(&folder, &flags).json();
    assert_eq!(document["schema"], "airtide.now/1");
    assert_eq!(document["load_state"], "laden");
    let reasons = names(&document, "reasons");
    for reason in ["load-unknown", "ran-last-hour", "trailer-unknown", "unapproved-counted"] {
        assert!(reasons.iter().any(|one| one == reason), "{reason}: {reasons:?}");
    }
    let checks = names(&document, "checks");
    assert!(checks.contains(&"find-out-load".to_owned()), "{checks:?}");
    assert_eq!(document["groups"].as_array().unwrap().len(), 3);
    let table = now(&folder, &["--table", "--json"]).json();
    assert_eq!(table["schema"], "airtide.now-table/1");
    let columns = table["load_states"].as_array().unwrap().len();
    for row in table["rows"].as_array().unwrap() {
        assert_eq!(row["highest_speed_kmh"].as_array().unwrap().len(), columns);
    }
}

#[test]
fn the_table_says_what_a_call_says() {
    let folder = with_starter();
    let flags = ["--table", "--warm", "--with-unapproved", "--json"];
    let table = now(&folder, &flags).json();
    let mut checked = 0;
    for row in table["rows"].as_array().unwrap().iter().filter(|row| row["channel"] == "drive") {
        let read = format!("drive={}kPa", row["reading_kpa"]);
        let flags = ["--warm", "--with-unapproved", "--load", "laden", "--json", "--read", &read];
        let document = now(&folder, &flags).json();
        let groups = document["groups"].as_array().unwrap();
        let group = groups.iter().find(|group| group["channel"] == "drive").unwrap();
        let stops = group["verdict"] == "stop";
        let told = if stops { &Value::Null } else { &group["highest_speed_kmh"] };
        assert_eq!(*told, row["highest_speed_kmh"][1], "{read}");
        checked += 1;
    }
    assert!(checked > 3);
}

#[test]
fn every_trailer_case_has_its_words() {
    let folder = with_starter();
    let cases = [
        ("none", None),
        ("unknown", Some("nobody knows the trailer")),
        ("left-low", Some("left on low pressure")),
        ("left-shut", Some("open every wheel end")),
        ("tires:drive", Some("the trailer has other tires")),
        ("set-for:empty", Some("still holds the pressures of empty")),
    ];
    for (trailer, words) in cases {
        let flags = ["--load", "laden", "--trailer", trailer, "--cold", "--with-unapproved"];
        let mut flags = [&flags[..], &HARD[..4]].concat();
        if trailer != "none" {
            flags.extend(&HARD[4..]);
        }
        let ran = now(&folder, &flags);
        assert!(ran.code < 2, "{trailer}: {}", ran.err);
        let page = ran.out.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
        assert!(words.is_none_or(|words| page.contains(words)), "{trailer}: {}", ran.out);
        assert!(!page.contains("[now-") && !page.contains("nan"), "{}", ran.out);
        assert!(ran.out.lines().all(|line| line.chars().count() <= 100), "{}", ran.out);
    }
}

#[test]
fn every_reason_and_check_has_words() {
    let texts = language::Texts::new("en").unwrap();
    let keys: Vec<&str> = texts.keys().collect();
    let sources = [
        ("reason", include_str!("../../view/src/now/reason.rs")),
        ("check", include_str!("../../view/src/now/check.rs")),
    ];
    for (kind, source) in sources {
        let code =
            source.lines().filter(|line| !line.contains("name(") && !line.contains("number("));
        let words: Vec<&str> = code.flat_map(|line| line.split('"').skip(1).step_by(2)).collect();
        assert!(words.len() > 10, "{words:?}");
        for word in words.into_iter().filter(|word| !word.starts_with("one short")) {
            assert!(keys.contains(&&*format!("now-{kind}-{word}")), "no words for {kind} {word}");
        }
    }
}

#[test]
fn a_slip_of_unit_is_told() {
    let folder = with_starter();
    let ran = now(&folder, &["--read", "drive=85kPa", "--load", "laden", "--json"]);
    let document = ran.json();
    let slip =
        document["reasons"].as_array().unwrap().iter().find(|one| one["what"] == "unit-slip");
    assert_eq!(slip.unwrap()["names"]["meant"], "psi");
    assert!(names(&document, "checks").contains(&"read-unit-again".to_owned()));
}

#[test]
fn wrong_calls_say_what_there_is() {
    let folder = with_starter();
    let told = |flags: &[&str], words: &[&str]| {
        let ran = airtide_in(folder.path(), &[&["now", "fleet"], flags].concat());
        assert_eq!(ran.code, 2, "{flags:?}: {}{}", ran.out, ran.err);
        for word in words {
            assert!(ran.err.contains(word), "{flags:?} does not tell '{word}': {}", ran.err);
        }
    };
    let good = ["--load", "laden", "--read", "drive=6bar"];
    told(&good, &["--unit", "--combination"]);
    told(&[&good[..], &["--unit", "12"]].concat(), &["no register", "tractor-trailer"]);
    told(&[&good[..], &["--combination", "x"]].concat(), &["tractor-trailer"]);
    let of = |flags: &[&'static str]| -> Vec<&'static str> {
        [&["--combination", "tractor-trailer"], flags].concat()
    };
    told(&of(&["--load", "laden"]), &["--read"]);
    told(&of(&["--read", "drive=6bar"]), &["--load"]);
    told(&of(&["--load", "half", "--read", "drive=6bar"]), &["empty", "laden", "unknown"]);
    told(&of(&["--load", "laden", "--read", "middle=6bar"]), &["drive", "tractor.steer"]);
    told(&of(&["--load", "laden", "--read", "drive=85"]), &["no unit", "psi"]);
    told(&of(&["--load", "laden", "--read", "85psi"]), &["drive=85psi"]);
    told(&of(&["--load", "laden", "--read", "drive=-5psi"]), &["0 to 2000 kPa"]);
    told(&of(&["--load", "laden", "--read", "drive=6bar", "--cold", "--warm"]), &["--warm"]);
    told(&of(&["--load", "laden", "--read", "drive=6bar", "--trailer", "lost"]), &["left-shut"]);
    told(&of(&["--load", "laden", "--read", "drive=6bar", "--trailer", "tires:x"]), &["unknown"]);
    told(&of(&["--load", "laden", "--read", "drive=6bar", "--chains", "studs"]), &["no chains"]);
    told(&of(&["--load", "laden", "--read", "steer=8bar/8bar"]), &["single"]);
}

#[test]
fn a_unit_is_found_by_its_number_and_an_unknown_one_is_told_who_there_is() {
    let folder = with_demo("ridge-logs");
    let ask = |unit: &str| {
        let flags = ["now", "fleet", "--unit", unit, "--load", "laden", "--read", "drive=90psi"];
        airtide_in(folder.path(), &flags)
    };
    assert!(ask("418").code < 2);
    assert!(ask("L-7").code < 2, "a trailer will do too");
    let unknown = ask("4711");
    assert_eq!(unknown.code, 2);
    assert!(unknown.err.contains("418") && unknown.err.contains("422"), "{}", unknown.err);
}

#[test]
fn the_surveys_step_is_what_speeds_are_rounded_down_to() {
    let folder = with_starter();
    let speeds = |folder: &TempDir| -> Vec<f64> {
        let flags = ["--table", "--cold", "--with-unapproved", "--json"];
        let table = now(folder, &flags).json();
        let rows = table["rows"].as_array().unwrap().clone();
        rows.iter()
            .flat_map(|row| row["highest_speed_kmh"].as_array().unwrap().clone())
            .filter_map(|speed| speed.as_f64())
            .collect()
    };
    edit(&folder, "survey.toml", "speed_cap_step_kmh = 5", "speed_cap_step_kmh = 20");
    let rungs = [5.0, 30.0, 90.0];
    for speed in speeds(&folder) {
        let steps = speed / 20.0;
        let on_step = (steps - steps.round()).abs() < 1e-6;
        assert!(on_step || rungs.iter().any(|rung| (rung - speed).abs() < 1e-6), "{speed}");
    }
}

fn ask(folder: &TempDir, question: &[&str]) -> Ran {
    airtide_in(folder.path(), &[&["ask", "fleet"], question].concat())
}

#[test]
fn a_cap_is_what_the_plan_needs_that_pressure_for() {
    let folder = with_starter();
    let plan = airtide_in(folder.path(), &["plan", "fleet", "--json"]).json();
    let cells = plan["plans"][0]["ladder"].as_array().unwrap().clone();
    let caps = [("pit", 30.0), ("gravel", 60.0), ("road", 90.0)];
    for (rung, kmh) in caps {
        let cell = cells.iter().find(|cell| {
            cell["channel"] == "drive" && cell["load_state"] == "laden" && cell["rung"] == rung
        });
        let cell = cell.unwrap();
        // Mates that differ ask for more than the window alone.
        let stack = cell["stack"].as_array().unwrap().iter();
        let duals: f64 = stack
            .filter(|item| item["added_for"] == "duals")
            .map(|item| item["pressure_kpa"].as_f64().unwrap())
            .sum();
        let pressure = format!("{}kPa", cell["min_kpa"].as_f64().unwrap() + duals + 0.1);
        let question = ["cap", "--channel", "drive", "--load", "laden", "--pressure", &pressure];
        let document = ask(&folder, &[&question[..], &["--json"]].concat()).json();
        assert_eq!(document["schema"], "airtide.ask/1");
        let cap = document["cap"]["cap_kmh"].as_f64().unwrap();
        assert!(cap >= kmh - 1e-6, "{rung}: {document}");
    }
    let page =
        ask(&folder, &["cap", "--channel", "drive", "--load", "laden", "--pressure", "6bar"]);
    insta::assert_snapshot!("ask-cap", page.out);
}

#[test]
fn late_and_supply_are_answered_for_a_numbered_change() {
    let folder = with_starter();
    let plan = airtide_in(folder.path(), &["plan", "fleet", "--json"]).json();
    let points = plan["plans"][0]["change_points"].as_array().unwrap().clone();
    let raise = points.iter().position(|point| point["action"] == "raise").unwrap();
    let number = (raise + 1).to_string();
    let late = ask(&folder, &["late", "--change", &number]);
    assert!(late.code < 2, "{}", late.err);
    insta::assert_snapshot!("ask-late", late.out);
    let document = ask(&folder, &["late", "--change", &number, "--json"]).json();
    let latest = document["late"]["latest_km"].as_f64().unwrap();
    let planned = points[raise]["km"].as_f64().unwrap();
    assert!((latest - planned).abs() < 5.0, "{latest} against {planned}");
    let calls = document["late"]["calls"].as_array().unwrap();
    assert!(
        calls.len() > 1 && calls[1]["wrong_road_m"].as_f64() > calls[0]["wrong_road_m"].as_f64()
    );
    let supply = ask(&folder, &["supply", "--change", &number]);
    assert_eq!(supply.code, 0, "it fits today: {}{}", supply.out, supply.err);
    let wrong = ask(&folder, &["late", "--change", "99"]);
    assert_eq!(wrong.code, 2);
    assert!(wrong.err.contains(&points.len().to_string()), "{}", wrong.err);
    let wrong = ask(&folder, &["cap", "--channel", "x", "--load", "laden", "--pressure", "6bar"]);
    assert!(wrong.code == 2 && wrong.err.contains("drive"), "{}", wrong.err);
}
