//! Plans issued, listed, left behind by the survey, and broken.

mod common;

use std::fs;
use std::path::PathBuf;

use common::{Ran, airtide_in, edit};
use serde_json::Value;
use tempfile::TempDir;

fn with_rock() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let ran = airtide_in(folder.path(), &["new", "fleet", "--demo", "windfarm-rock"]);
    assert_eq!(ran.code, 0, "{}", ran.err);
    folder
}

fn run(folder: &TempDir, call: &str) -> Ran {
    airtide_in(folder.path(), &call.split(' ').collect::<Vec<_>>())
}

fn issue(folder: &TempDir, more: &str) -> Ran {
    run(folder, &format!("plan fleet --haul rock --issue {more}"))
}

fn issued(folder: &TempDir, more: &str) {
    let ran = issue(folder, more);
    assert_eq!(ran.code, 0, "{}", ran.err);
}

fn file(folder: &TempDir, id: &str) -> PathBuf {
    folder.path().join(format!("fleet/plans/{id}.json"))
}

fn files(folder: &TempDir) -> usize {
    fs::read_dir(folder.path().join("fleet/plans")).map_or(0, Iterator::count)
}

/// The first issued plan as listed for a day.
fn listed(folder: &TempDir, day: &str) -> Value {
    run(folder, &format!("plans fleet --date {day} --json")).json()["plans"][0].clone()
}

#[test]
fn an_issued_plan_holds_what_was_planned_and_the_next_has_the_next_number() {
    let folder = with_rock();
    let planned = run(&folder, "plan fleet --unit T-31,T-32 --json").json();
    let ran = issue(&folder, "--date 2025-11-25 --assign T-31,T-32 --json");
    assert_eq!(ran.code, 0, "{}", ran.err);
    assert_eq!(ran.out, fs::read_to_string(file(&folder, "rock-1")).unwrap());
    let document = ran.json();
    assert_eq!(document["schema"], "airtide.issued/1");
    assert_eq!(document["plan"], planned);
    assert_eq!(document["responsible"], "Tire pressure support, desk 2");
    assert_eq!(document["units"], serde_json::json!(["T-31", "T-32"]));
    let inputs = document["inputs"].as_array().unwrap();
    for path in
        ["hauls/rock.toml", "routes/quarry-to-turbines.gpx", "tires/trailer-385-letter-31.csv"]
    {
        assert!(inputs.iter().any(|input| input["path"] == path), "{path}");
    }
    let cells = document["plan"]["plans"][0]["ladder"].as_array().unwrap();
    for cell in cells.iter().filter(|cell| cell["approval"] == "needs approval") {
        assert_ne!(cell["driver"], "set");
    }
    issued(&folder, "--date 2025-11-26 --assign T-31");
    issued(&folder, "--date 2025-12-01 --number 7");
    issued(&folder, "--date 2025-12-01");
    for id in ["rock-2", "rock-7", "rock-8"] {
        assert!(file(&folder, id).exists(), "{id}");
    }
    assert_eq!(files(&folder), 4);
}

#[test]
fn the_same_inputs_and_day_give_the_same_bytes_on_any_number_of_threads() {
    let bytes = |threads: &str| {
        let folder = with_rock();
        let output = std::process::Command::new(env!("CARGO_BIN_EXE_airtide"))
            .args(["plan", "fleet", "--issue", "--date", "2025-11-25", "--assign", "T-31"])
            .current_dir(folder.path())
            .env("RAYON_NUM_THREADS", threads)
            .output()
            .unwrap();
        assert!(output.status.success());
        fs::read(file(&folder, "rock-1")).unwrap()
    };
    assert!(bytes("1") == bytes("5"));
}

#[test]
fn nothing_is_overwritten_and_wrong_calls_write_nothing() {
    let folder = with_rock();
    issued(&folder, "--date 2025-11-25 --assign T-31");
    let first = fs::read(file(&folder, "rock-1")).unwrap();
    for (more, said) in [
        ("--date 2025-11-26 --number 1", "the next free number is 2"),
        ("--date 2025-11-24", "plans/rock-1.json is dated 2025-11-25"),
        ("--date 2025-11-26 --number 0", "numbered from 1"),
        ("--date 2025-02-30", "not a day of the calendar"),
        ("--date 26.11.2025", "year-month-day"),
        ("--date 2025-11-26 --valid-from 2025-11-25", "not before its issue"),
        ("--date 2025-11-26 --valid-until 2025-11-25", "lies before the first"),
        ("--date 2025-11-26 --assign T-99", "T-31, T-32, T-33, T-34, S-71, S-72"),
        ("--number 2", "--date"),
    ] {
        let ran = issue(&folder, more);
        assert_eq!(ran.code, 2, "{more}: {}", ran.err);
        assert!(ran.err.contains(said), "{more}: {}", ran.err);
    }
    assert_eq!(run(&folder, "plan fleet --assign T-31").code, 2, "nothing is issued");
    // A number that a broken file holds is not free either.
    fs::write(file(&folder, "rock-2"), "{").unwrap();
    let ran = issue(&folder, "--date 2025-11-26 --number 2");
    assert_eq!(ran.code, 2, "{}", ran.err);
    assert_eq!(fs::read(file(&folder, "rock-1")).unwrap(), first);
    assert_eq!(files(&folder), 2);
}

#[test]
fn a_plan_that_is_not_ready_is_refused() {
    let refused = |folder: &TempDir, call: &str, said: &str| {
        let ran = run(folder, call);
        assert_eq!(ran.code, 1, "{}", ran.err);
        assert!(ran.err.contains(said), "{}", ran.err);
        assert_eq!(files(folder), 0);
    };
    let call = "plan fleet --haul rock --issue --date 2025-11-25 --assign T-31";
    let errors = with_rock();
    edit(&errors, "routes/quarry-to-turbines.toml", "to_km", "to_k");
    refused(&errors, call, "cannot be planned until the problems above are mended");
    let nobody = with_rock();
    edit(&nobody, "survey.toml", "\"Tire pressure support, desk 2\"", "\" \"");
    refused(&nobody, call, "responsible");
    issued(&nobody, "--date 2025-11-25 --by Desk-3");
    let stranger = with_rock();
    let unit = "[[units]]\nnumber = \"X-1\"\ntype = \"grader\"\n";
    let register = stranger.path().join("fleet/units.toml");
    let text = fs::read_to_string(&register).unwrap() + unit;
    fs::write(register, text).unwrap();
    let grader = fs::read_to_string(stranger.path().join("fleet/vehicles/tractor.toml")).unwrap();
    fs::write(stranger.path().join("fleet/vehicles/grader.toml"), grader).unwrap();
    let call = "plan fleet --issue --date 2025-11-25 --assign T-31,X-1";
    let ran = run(&stranger, call);
    assert_eq!(ran.code, 2, "{}", ran.err);
    assert!(ran.err.contains("together with unit 'X-1', a grader"), "{}", ran.err);
    assert_eq!(files(&stranger), 0);
    let soft = with_rock();
    edit(&soft, "vehicles/tractor.toml", "fixed_pressure_kpa = ", "fixed_pressure_kpa = 400 # ");
    assert_eq!(run(&soft, "plan fleet --json").json()["plans"][0]["breaks_a_limit"], true);
    refused(&soft, "plan fleet --issue --date 2025-11-25 --assign T-31", "breaks a limit");
}

#[test]
fn a_changed_survey_leaves_a_plan_behind_and_the_file_is_named() {
    let folder = with_rock();
    issued(&folder, "--date 2025-11-25 --assign T-31");
    assert_eq!(listed(&folder, "2025-12-01")["stale"], false);
    assert_eq!(listed(&folder, "2025-12-01")["changed_files"], serde_json::json!([]));

    edit(&folder, "hauls/rock.toml", "cycles_a_day = 5", "cycles_a_day   =   5   # as before");
    let commented = listed(&folder, "2025-12-01");
    assert_eq!(commented["stale"], false);
    let change = serde_json::json!([{ "file": "hauls/rock.toml", "change": "comments only" }]);
    assert_eq!(commented["changed_files"], change);
    let check = run(&folder, "check fleet");
    assert_eq!(check.code, 0);
    assert!(check.out.contains("only comments or spacing: hauls/rock.toml"), "{}", check.out);

    // A sensor looked after since is in the register, and in no value of the haul.
    edit(&folder, "units.toml", "verified = 2025-10-22", "verified = 2025-10-23");
    let register = listed(&folder, "2025-12-01");
    assert_eq!(register["stale"], false, "{register}");
    let page = run(&folder, "plans fleet --date 2025-12-01");
    assert!(page.out.contains("nothing it rests"), "{}", page.out);

    edit(&folder, "hauls/rock.toml", "cycles_a_day   =   5", "cycles_a_day = 6");
    let stale = listed(&folder, "2025-12-01");
    assert_eq!((&stale["stale"], &stale["stale_cause"]), (&true.into(), &"values".into()));
    let check = run(&folder, "check fleet --json").json();
    let problems = check["problems"].as_array().unwrap();
    let of_plan = problems.iter().find(|one| one["file"] == "plans/rock-1.json").unwrap();
    assert_eq!(of_plan["severity"], "warning");
    assert!(of_plan["message"].as_str().unwrap().contains("hauls/rock.toml changed"), "{of_plan}");

    // Issued again, the newer plan is as the survey is, and the older no longer told.
    issued(&folder, "--date 2025-11-26 --assign T-31");
    let check = run(&folder, "check fleet --json").json();
    let problems = check["problems"].as_array().unwrap();
    assert!(problems.iter().all(|one| one["severity"] == "warning"));
    assert!(!problems.iter().any(|one| one["file"] == "plans/rock-1.json"), "{check}");
}

#[test]
fn files_that_come_and_go_are_told() {
    let folder = with_rock();
    issued(&folder, "--date 2025-11-25 --assign T-31");
    let permit = folder.path().join("fleet/permits/thin-seal.toml");
    let text = fs::read_to_string(&permit).unwrap();
    fs::remove_file(&permit).unwrap();
    fs::write(folder.path().join("fleet/permits/renewed.toml"), &text).unwrap();
    let changes = listed(&folder, "2025-12-01")["changed_files"].clone();
    let told = serde_json::json!([
        { "file": "permits/renewed.toml", "change": "added" },
        { "file": "permits/thin-seal.toml", "change": "removed" },
    ]);
    assert_eq!(changes, told);
    edit(&folder, "hauls/rock.toml", "combination", "combinatio");
    let unknown = listed(&folder, "2025-12-01");
    assert_eq!(unknown["stale_cause"], "cannot tell");
}

#[test]
fn a_permit_that_ends_leaves_a_plan_behind_without_any_edit() {
    let folder = with_rock();
    let key = "valid_from = 2025-11-01";
    edit(&folder, "permits/thin-seal.toml", key, &format!("{key}\nexpires = 2027-03-31"));
    let ran = issue(&folder, "--date 2025-11-25 --assign T-31 --valid-until 2027-05-01");
    assert_eq!(ran.code, 1, "{}", ran.err);
    assert!(ran.err.contains("begins or ends after 2025-11-25"), "{}", ran.err);
    issued(&folder, "--date 2025-11-25 --assign T-31");
    assert_eq!(listed(&folder, "2027-03-31")["stale"], false);
    let lapsed = listed(&folder, "2027-04-01");
    assert_eq!(lapsed["stale_cause"], "approval or permit lapsed");
}

#[test]
fn a_tampered_file_is_an_error_and_no_plan() {
    let folder = with_rock();
    issued(&folder, "--date 2025-11-25 --assign T-31");
    edit(&folder, "plans/rock-1.json", "\"driver\": \"dash\"", "\"driver\": \"set\"");
    let check = run(&folder, "check fleet");
    assert_eq!(check.code, 1);
    assert!(check.out.contains("plans/rock-1.json: this issued plan was edited"), "{}", check.out);
    assert!(check.out.contains("restore the file"), "{}", check.out);
    let unit = run(&folder, "plans fleet --unit T-31 --date 2025-12-01");
    assert_eq!(unit.code, 1);
    assert!(unit.err.contains("was edited"), "{}", unit.err);
    assert!(unit.out.contains("No plan is assigned to unit T-31"), "{}", unit.out);
}

#[test]
fn a_unit_is_told_what_it_drives_by() {
    let folder = with_rock();
    assert_eq!(run(&folder, "plans fleet").code, 0);
    issued(&folder, "--date 2025-11-25 --assign T-31,T-32");
    let ran = run(&folder, "plans fleet --unit T-32 --date 2025-12-01");
    assert_eq!(ran.code, 0, "{}", ran.err);
    assert!(ran.out.contains("Unit T-32 drives by rock-1 on 2025-12-01"), "{}", ran.out);
    assert!(ran.out.contains("floating road"), "{}", ran.out);
    assert!(ran.out.lines().all(|line| line.chars().count() <= 100), "{}", ran.out);
    assert_eq!(run(&folder, "plans fleet --unit T-32 --date 2025-11-24").code, 1, "not begun");
    assert_eq!(run(&folder, "plans fleet --unit T-33 --date 2025-12-01").code, 1, "has none");
    let stranger = run(&folder, "plans fleet --unit T-99");
    assert_eq!(stranger.code, 2);
    assert!(stranger.err.contains("T-31, T-32"), "{}", stranger.err);
}

#[test]
fn two_hauls_that_claim_a_unit_on_one_day_are_told_by_name() {
    let folder = with_rock();
    let hauls = folder.path().join("fleet/hauls");
    fs::copy(hauls.join("rock.toml"), hauls.join("night.toml")).unwrap();
    issued(&folder, "--date 2025-11-25 --assign T-31");
    let ran = run(&folder, "plan fleet --issue --date 2025-11-25 --assign T-31");
    assert_eq!(ran.code, 2, "one plan, one haul");
    assert!(ran.err.contains("night, rock"), "{}", ran.err);
    let ran = run(&folder, "plan fleet --haul night --issue --date 2025-11-25 --assign T-31");
    assert_eq!(ran.code, 0, "{}", ran.err);
    assert!(ran.err.contains("two plans in force"), "told at once: {}", ran.err);
    let check = run(&folder, "check fleet");
    assert_eq!(check.code, 1);
    for said in ["plans/night-1.json", "plans/rock-1.json", "unit T-31 has two plans"] {
        assert!(check.out.contains(said), "{}", check.out);
    }
    let unit = run(&folder, "plans fleet --unit T-31 --date 2025-12-01 --json");
    assert_eq!(unit.code, 1);
    assert_eq!(unit.json()["in_force"]["disputed"], serde_json::json!(["night-1", "rock-1"]));
    issued(&folder, "--date 2025-11-26 --assign T-31");
    let unit = run(&folder, "plans fleet --unit T-31 --date 2025-12-01 --json").json();
    assert_eq!(unit["in_force"]["plan"]["id"], "rock-2");
}
