//! Practice from a list of actions: what is printed, and what a wrong list gets.

mod common;

use std::fs;
use std::path::PathBuf;

use common::{airtide, airtide_in, with_starter};
use serde_json::Value;

fn demo(name: &str) -> String {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name);
    root.to_str().expect("a plain path").to_owned()
}

/// Rules found, in order of time.
fn rules(document: &Value) -> Vec<&str> {
    let findings = document["findings"].as_array().expect("a list");
    findings.iter().filter_map(|finding| finding["rule"].as_str()).collect()
}

/// Drives a list on a demo.
fn drive(name: &str, list: &str, more: &[&str]) -> common::Ran {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("drive.csv");
    fs::write(&file, list).expect("written");
    let demo = demo(name);
    let call = ["practice", &demo, "--drive", file.to_str().expect("a plain path")];
    airtide(&[&call[..], more].concat())
}

#[test]
fn the_plans_own_drive_keeps_the_plan_and_costs_nothing_more() {
    for name in ["ridge-logs", "windfarm-rock"] {
        let ran = airtide(&["practice", &demo(name), "--json"]);
        assert_eq!(ran.code, 0, "{}", ran.err);
        let document = ran.json();
        assert_eq!(document["schema"], "airtide.verdict/1");
        assert_eq!(rules(&document), Vec::<&str>::new());
        assert_eq!(document["driven"], document["planned"]);
        assert!(document["coverage"]["rows"].as_u64().expect("a count") > 1000);
    }
}

#[test]
fn a_page_names_the_finding_and_its_numbers_in_the_units_asked_for() {
    let list =
        "empty, start, raise, highway\nladen, start, lower, spur\nladen, start, speed, road\n";
    let ran = drive("ridge-logs", list, &["--units", "us"]);
    assert_eq!(ran.code, 1, "{}", ran.err);
    assert!(ran.out.contains("Over the cap for the pressure"), "{}", ran.out);
    assert!(ran.out.contains("mph") && ran.out.contains("Against the plan's own drive"));
    assert!(ran.out.lines().all(|line| line.chars().count() <= 100), "{}", ran.out);
    assert!(!ran.out.contains('['), "a text is missing: {}", ran.out);
}

#[test]
fn every_line_that_cannot_be_used_is_told_and_nothing_is_driven() {
    let list = "empty, start, raise, moon\nladen, 5km, fly, high\n";
    let ran = drive("ridge-logs", list, &[]);
    assert_eq!(ran.code, 1);
    assert!(ran.out.is_empty(), "{}", ran.out);
    assert!(ran.err.contains("drive.csv:1: there is no rung 'moon'; there are: "), "{}", ran.err);
    assert!(ran.err.contains("drive.csv:2: 'fly' is not known"), "{}", ran.err);
    assert!(ran.err.contains("2 lines of the drive cannot be used"), "{}", ran.err);
}

#[test]
fn a_list_that_is_not_there_and_a_surprise_nobody_knows_are_wrong_calls() {
    let folder = with_starter();
    let ran = airtide_in(folder.path(), &["practice", "fleet", "--drive", "none.csv"]);
    assert_eq!(ran.code, 2, "{}", ran.err);
    assert!(ran.err.contains("none.csv"), "{}", ran.err);
    let ran = airtide_in(folder.path(), &["practice", "fleet", "--surprise", "flood"]);
    assert_eq!(ran.code, 2, "{}", ran.err);
    assert!(ran.err.contains("slow-compressor"), "{}", ran.err);
}

#[test]
fn the_same_seed_brings_the_same_drive() {
    let call = ["practice", &demo("windfarm-rock"), "--surprise", "any", "--seed", "11", "--json"];
    assert_eq!(airtide(&call).out, airtide(&call).out);
}
