//! Letters to the makers of the tires, and the table to fill in.

mod common;

use common::{airtide_in, edit};
use serde_json::Value;
use tempfile::TempDir;

fn with_demo(name: &str) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let ran = airtide_in(folder.path(), &["new", "fleet", "--demo", name]);
    assert_eq!(ran.code, 0, "{}", ran.err);
    folder
}

fn json(folder: &TempDir, call: &[&str]) -> Value {
    airtide_in(folder.path(), &[call, &["--json"]].concat()).json()
}

fn lines(request: &Value) -> Vec<Value> {
    let hauls = request["hauls"].as_array().unwrap();
    hauls.iter().flat_map(|haul| haul["lines"].as_array().unwrap().clone()).collect()
}

#[test]
fn only_tires_without_their_makers_word_are_asked_for() {
    let folder = with_demo("ridge-logs");
    let document = json(&folder, &["approvals", "fleet"]);
    assert_eq!(document["schema"], "airtide.requests/1");
    let requests = document["requests"].as_array().unwrap();
    assert_eq!(requests.len(), 1, "the drive tires have an answer that counts");
    let request = &requests[0];
    assert_eq!(request["tire"], "trailer-11r22-5-g");
    assert_eq!(request["rim"], "8.25x22.5");
    assert_eq!(request["document_counts"], false);
    // Three groups, empty and laden, four rungs.
    assert_eq!(lines(request).len(), 24);
    assert_eq!(request["open_lines"], 18);
    edit(&folder, "approvals/trailer-trial.toml", "expires = 2024-11-30\n", "");
    let renewed = json(&folder, &["approvals", "fleet"]);
    let open = renewed["requests"].as_array().unwrap().iter().map(|one| &one["open_lines"]);
    let open: u64 = open.map(|open| open.as_u64().unwrap()).sum();
    assert!(open < 18, "an answer that counts again leaves less to ask: {open}");
    // The drive tires once theirs is given for another rim.
    edit(&folder, "approvals/drive-woods.toml", "8.25x24.5", "9.00x24.5");
    let lapsed = json(&folder, &["approvals", "fleet"]);
    let tires = lapsed["requests"].as_array().unwrap().iter().map(|one| &one["tire"]);
    assert!(tires.into_iter().any(|tire| tire == "drive-11r24-5-g"));
}

#[test]
fn lines_hold_what_the_plan_works_with() {
    let folder = with_demo("windfarm-rock");
    let plan = json(&folder, &["plan", "fleet"])["plans"][0].clone();
    let document = json(&folder, &["approvals", "fleet"]);
    let request = &document["requests"][0];
    let haul = &request["hauls"][0];
    assert_eq!(haul["distance_per_cycle_km"], 54.4);
    assert_eq!(haul["warmest_c"], plan["warmest_c"]);
    for line in lines(request) {
        let cells = plan["ladder"].as_array().unwrap();
        let same = |cell: &&Value| {
            cell["channel"] == "drive"
                && cell["load_state"] == line["load_state"]
                && cell["rung"] == line["rung"]
        };
        let cell = cells.iter().find(same).unwrap();
        assert_eq!(line["wanted_kpa"], cell["min_kpa"]);
        assert_eq!(line["held_kpa"], cell["pressure_kpa"]);
        assert_eq!(line["approval"], cell["approval"]);
        assert_eq!(line["load_kg"], cell["worst_tire_kg"], "one group on the channel");
    }
    // Each run is as long as the route.
    for state in ["empty", "laden"] {
        let of_state = lines(request).into_iter().filter(|line| line["load_state"] == state);
        let road: f64 = of_state.map(|line| line["distance_km"].as_f64().unwrap()).sum();
        assert!((road - 27.2).abs() < 1e-6, "{state}: {road}");
    }
}

#[test]
fn a_letter_names_what_a_maker_must_know_and_a_line_without_a_window() {
    let folder = with_demo("windfarm-rock");
    let letter = airtide_in(folder.path(), &["approvals", "fleet"]);
    assert_eq!(letter.code, 0, "{}", letter.err);
    for part in
        ["315/80R22.5", "load index 156", "not known to us yet", "54.40 km a cycle", "-14 °C"]
    {
        assert!(letter.out.contains(part), "{part}\n{}", letter.out);
    }
    assert!(letter.out.lines().all(|line| line.chars().count() <= 100), "{}", letter.out);
    assert!(!letter.out.contains("[request-") && !letter.out.contains("NaN"));
    // A permit under what the load asks for leaves no pressure.
    edit(&folder, "permits/thin-seal.toml", "kpa = 820", "kpa = 400");
    let refused = airtide_in(folder.path(), &["approvals", "fleet"]);
    assert!(refused.out.contains("no pressure is possible. What would you"), "{}", refused.out);
}

#[test]
fn the_table_has_a_line_for_each_and_is_never_written_over_unasked() {
    let folder = with_demo("ridge-logs");
    let call = ["approvals", "fleet", "--csv", "ask.csv"];
    let ran = airtide_in(folder.path(), &call);
    assert!(ran.err.contains("ask.csv"), "{}", ran.err);
    let text = std::fs::read_to_string(folder.path().join("ask.csv")).unwrap();
    let rows: Vec<Vec<&str>> = text.lines().map(|line| line.split(',').collect()).collect();
    assert_eq!(rows.len(), 25);
    assert!(rows.iter().all(|row| row.len() == rows[0].len()), "{text}");
    let column = |name: &str| rows[0].iter().position(|head| *head == name).unwrap();
    let request = &json(&folder, &["approvals", "fleet"])["requests"][0];
    for (row, line) in rows[1..].iter().zip(lines(request)) {
        let number = |name: &str| row[column(name)].parse::<f64>().unwrap();
        let of = |key: &str| line[key].as_f64().unwrap();
        assert!(number("load_lb") >= of("load_kg") / 0.453_592_37 - 1e-6, "{row:?}");
        assert!(number("wanted_psi") <= of("wanted_kpa") / 6.894_757 + 1e-6, "{row:?}");
        assert!(number("speed_mph") >= of("speed_kmh") / 1.609_344 - 1e-6, "{row:?}");
        assert_eq!(row[column("approved_psi")], "");
    }
    std::fs::write(folder.path().join("ask.csv"), "answered").unwrap();
    let again = airtide_in(folder.path(), &call);
    assert_eq!(again.code, 2);
    assert_eq!(std::fs::read_to_string(folder.path().join("ask.csv")).unwrap(), "answered");
    airtide_in(folder.path(), &[&call[..], &["--force"]].concat());
    assert_eq!(std::fs::read_to_string(folder.path().join("ask.csv")).unwrap(), text);
}

#[test]
fn one_tire_can_be_chosen_and_an_unknown_one_is_a_wrong_call() {
    let folder = with_demo("ridge-logs");
    let ran = airtide_in(folder.path(), &["approvals", "fleet", "--tire", "drive-11r24-5-g"]);
    assert_eq!(ran.code, 2);
    assert!(ran.err.contains("trailer-11r22-5-g"), "{}", ran.err);
    let ran = airtide_in(folder.path(), &["approvals", "fleet", "--tire", "trailer-11r22-5-g"]);
    assert_eq!(ran.code, 0, "{}", ran.err);
}
