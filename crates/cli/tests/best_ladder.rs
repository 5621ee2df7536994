//! The best ladder: its cost is the sum of its terms, and each term moves with what it rests on.

mod common;

use common::{airtide_in, edit};
use serde_json::Value;
use tempfile::TempDir;

const HAUL: &str = "hauls/rock.toml";
const TERMS: [(&str, &str, &str, f64); 4] = [
    ("time_s", "truck_hour", "time", 3600.0),
    ("hard_kpa_km", "hard_kpa_km", "hard_road", 1.0),
    ("changes", "change", "changes", 1.0),
    ("compressor_s", "compressor_hour", "compressor", 3600.0),
];

fn rock() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let ran = airtide_in(folder.path(), &["new", "fleet", "--demo", "windfarm-rock"]);
    assert_eq!(ran.code, 0, "{}", ran.err);
    folder
}

fn plan(folder: &TempDir, flags: &[&str]) -> Value {
    let call = [&["plan", "fleet", "--best-ladder", "--json"], flags].concat();
    let ran = airtide_in(folder.path(), &call);
    ran.json()["plans"][0].clone()
}

/// The search of a fleet with edits, each of file, old and new text.
fn search(edits: &[(&str, &str, &str)]) -> Value {
    let folder = rock();
    for (file, from, to) in edits {
        edit(&folder, file, from, to);
    }
    plan(&folder, &[])["ladder_search"].clone()
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("no number: {value}"))
}

/// What the amounts of one search cost at the prices of another.
fn cost_at(amounts: &Value, prices: &Value) -> f64 {
    let of = |(term, price, _, per): (&str, &str, &str, f64)| {
        number(&amounts["terms"][term]) / per * number(&prices["prices"][price])
    };
    TERMS.into_iter().map(of).sum()
}

#[test]
fn the_document_has_the_search_and_its_cost_is_the_sum_of_its_terms() {
    let folder = rock();
    let plan = plan(&folder, &[]);
    let found = &plan["ladder_search"];
    for (term, price, cost, per) in TERMS {
        let amount = number(&found["terms"][term]) / per;
        let wanted = amount * number(&found["prices"][price]);
        assert!((number(&found["term_costs"][cost]) - wanted).abs() < 1e-9, "{term}");
        assert!(amount > 0.0, "{term}");
    }
    assert!((number(&found["cost"]) - cost_at(found, found)).abs() < 1e-9);
    assert_eq!(found["currency"], "coins");
    assert_eq!(found["gap"], 0.0);
    assert_eq!(found["rungs_asked"], 4);
    assert!(number(&found["rounds"]) >= 1.0);
    assert!(number(&found["one_fewer_cost"]) > number(&found["cost"]));
    assert!(number(&found["one_more_cost"]) <= number(&found["cost"]) + 1e-9);
    let caps: Vec<f64> =
        plan["rungs"].as_array().unwrap().iter().map(|rung| number(&rung["cap_kmh"])).collect();
    let tried: Vec<f64> = found["caps_tried_kmh"].as_array().unwrap().iter().map(number).collect();
    assert!(caps.iter().all(|cap| tried.iter().any(|one| (one - cap).abs() < 1e-6)));
    assert!(caps.iter().any(|cap| (cap - 65.0).abs() < 1e-6), "65 km/h is required: {caps:?}");
    assert_eq!(plan["rungs"][0]["name"], format!("{} km/h", caps[0].round()));
    let surveyed = airtide_in(folder.path(), &["plan", "fleet", "--json"]).json();
    assert!(surveyed["plans"][0]["ladder_search"].is_null());
}

#[test]
fn a_doubled_price_moves_its_term_and_no_better_ladder_was_there_before() {
    let before = search(&[]);
    let prices = [
        ("truck_hour = 95", "truck_hour = 190", "truck_hour"),
        ("hard_kpa_km = 0.004", "hard_kpa_km = 0.008", "hard_kpa_km"),
        ("change = 0.4", "change = 0.8", "change"),
        ("compressor_hour = 3", "compressor_hour = 6", "compressor_hour"),
    ];
    for (from, to, key) in prices {
        let after = search(&[(HAUL, from, to)]);
        let ratio = number(&after["prices"][key]) / number(&before["prices"][key]);
        assert!((ratio - 2.0).abs() < 1e-9, "{key}");
        // The ladder of before is still there to be chosen, and so was that of after.
        let (was, is) = (number(&before["cost"]), number(&after["cost"]));
        assert!(is > was, "{key}: {was} {is}");
        assert!(is <= cost_at(&before, &after) + 1e-9, "{key}");
        assert!(was <= cost_at(&after, &before) + 1e-9, "{key}");
        let (term, _, cost, _) = TERMS.into_iter().find(|term| term.1 == key).unwrap();
        assert!(
            number(&after["terms"][term]) <= number(&before["terms"][term]) + 1e-9,
            "a dearer {term} is not taken more of"
        );
        assert!(after["term_costs"][cost] != before["term_costs"][cost], "{key}");
    }
}

#[test]
fn each_amount_moves_with_what_it_rests_on() {
    let amounts = |edits: &[(&str, &str, &str)]| {
        let found = search(edits);
        TERMS.map(|(term, ..)| number(&found["terms"][term]))
    };
    let [time, hard, changes, compressor] = amounts(&[]);
    let route = "routes/quarry-to-turbines.toml";
    let [slow, ..] = amounts(&[(route, "speed_limit_kmh = 40", "speed_limit_kmh = 30")]);
    assert!(slow > time + 60.0, "{slow} {time}");
    let [_, soft, ..] = amounts(&[(route, "ground_maximum_kpa = 500", "ground_maximum_kpa = 450")]);
    assert!(soft > hard * 1.5, "{soft} {hard}");
    let [_, _, dear, _] = amounts(&[(HAUL, "change = 0.4", "change = 400")]);
    assert!(dear < changes, "{dear} {changes}");
    let small = ("vehicles/tractor.toml", "displacement_cm3 = 636", "displacement_cm3 = 450");
    let [.., long] = amounts(&[small]);
    assert!(long > compressor * 1.2, "{long} {compressor}");
}

#[test]
fn more_rungs_never_cost_more_and_too_many_are_a_wrong_call() {
    let folder = rock();
    let costs: Vec<f64> = ["2", "3", "4", "5"]
        .map(|rungs| number(&plan(&folder, &["--rungs", rungs])["ladder_search"]["cost"]))
        .to_vec();
    assert!(costs.windows(2).all(|pair| pair[1] <= pair[0] + 1e-9), "{costs:?}");
    assert!(costs[0] > costs[3], "{costs:?}");
    let ran = airtide_in(folder.path(), &["plan", "fleet", "--best-ladder", "--rungs", "6"]);
    assert_eq!(ran.code, 2);
    assert!(ran.err.contains("stores 5 rungs, 6 were asked for"), "{}", ran.err);
    let ran = airtide_in(folder.path(), &["plan", "fleet", "--rungs", "3"]);
    assert_eq!(ran.code, 2);
}

#[test]
fn a_haul_without_prices_says_so() {
    let folder = common::with_starter();
    let ran = airtide_in(folder.path(), &["plan", "fleet", "--best-ladder"]);
    assert_eq!(ran.code, 1);
    assert!(ran.err.contains("hauls/stone.toml") && ran.err.contains("[ladder]"), "{}", ran.err);
}

#[test]
fn a_combination_without_rungs_gets_the_best_ladder_unasked() {
    let folder = rock();
    let path = folder.path().join("fleet/combinations/tractor-tipper.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let (before, _) = text.split_once("[[rungs]]").unwrap();
    std::fs::write(&path, before).unwrap();
    edit(&folder, HAUL, "parked_rung = \"sealed road\"\n", "");
    let ran = airtide_in(folder.path(), &["plan", "fleet", "--json"]);
    let plan = &ran.json()["plans"][0];
    assert!(plan["ladder_search"].is_object(), "{}", ran.err);
    assert!(!plan["change_points"].as_array().unwrap().is_empty());
}

#[test]
fn the_page_prints_each_term_with_amount_price_and_cost() {
    let folder = rock();
    let page = airtide_in(folder.path(), &["plan", "fleet", "--best-ladder"]).out;
    let found = &plan(&folder, &[])["ladder_search"];
    let (_, section) = page.split_once("\nWhy this ladder\n").unwrap();
    let (section, _) = section.split_once("\n\n").unwrap();
    for (name, cost) in [
        ("driving and waiting", &found["term_costs"]["time"]),
        ("harder than the ground wants", &found["term_costs"]["hard_road"]),
        ("changes", &found["term_costs"]["changes"]),
        ("loaded compressor", &found["term_costs"]["compressor"]),
        ("in all", &found["cost"]),
    ] {
        let line = section.lines().find(|line| line.trim_start().starts_with(name)).unwrap();
        assert!(line.ends_with(&format!(" {:.2}", number(cost))), "{line} {cost}");
    }
    assert!(section.contains("95 an hour") && section.contains("0.004 a kPa km"), "{section}");
    assert!(section.contains("Gap 0"), "{section}");
}
