//! What is not about one survey: new, schema, completions, manual, help.

mod common;

use common::{airtide, airtide_in};

#[test]
fn new_overwrites_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let fleet = folder.path().join("fleet");
    std::fs::create_dir(&fleet).unwrap();
    std::fs::write(fleet.join("survey.toml"), "mine").unwrap();
    let ran = airtide_in(folder.path(), &["new", "fleet"]);
    assert_eq!(ran.code, 1);
    assert!(ran.err.contains("survey.toml"), "{}", ran.err);
    assert_eq!(std::fs::read_to_string(fleet.join("survey.toml")).unwrap(), "mine");
    assert_eq!(std::fs::read_dir(&fleet).unwrap().count(), 1);
}

#[test]
fn every_demo_can_be_written_and_has_no_error() {
    let folder = tempfile::tempdir().unwrap();
    let demos = survey::demos();
    assert!(!demos.is_empty());
    for demo in demos {
        let made = airtide_in(folder.path(), &["new", demo, "--demo", demo, "--json"]);
        assert_eq!(made.code, 0, "{}", made.err);
        assert_eq!(made.json()["schema"], "airtide.new/1");
        let checked = airtide_in(folder.path(), &["check", demo]);
        assert_eq!(checked.code, 0, "{}{}", checked.out, checked.err);
    }
    let unknown = airtide_in(folder.path(), &["new", "x", "--demo", "no-such"]);
    assert_eq!(unknown.code, 2);
    assert!(unknown.err.contains(survey::demos()[0]), "{}", unknown.err);
}

#[test]
fn the_plan_schema_describes_the_plan_document() {
    let schema = airtide(&["schema", "plan"]).json();
    let properties = &schema["properties"];
    assert!(properties.get("plans").is_some() && properties.get("schema").is_some());
    let all = airtide(&["schema"]).json();
    assert_eq!(all["plan"], schema);
    for name in
        ["survey", "tire", "vehicle", "combination", "route", "haul", "check", "run", "calc"]
    {
        assert!(all[name].is_object(), "{name}");
    }
    let unknown = airtide(&["schema", "page"]);
    assert_eq!(unknown.code, 2);
    assert!(unknown.err.contains("combination"), "{}", unknown.err);
}

#[test]
fn completions_and_manual_name_every_command() {
    let completions = airtide(&["completions", "bash"]).out;
    let manual = airtide(&["man"]).out;
    for command in ["new", "check", "plan", "simulate", "calc", "schema"] {
        assert!(completions.contains(command), "{command}");
        assert!(
            manual.contains(&format!(".SH \"AIRTIDE {}\"", command.to_uppercase())),
            "{command}"
        );
    }
    assert!(manual.contains("grade"));
}

#[test]
fn every_command_helps_with_an_example() {
    for command in [
        "new",
        "check",
        "plan",
        "simulate",
        "calc",
        "schema",
        "completions",
        "man",
        "calc tire-load",
        "calc deflection",
        "calc cold-pressure",
        "calc tkph",
        "calc flow",
        "calc fill-time",
        "calc vent-time",
        "calc grade-speed",
    ] {
        let mut call: Vec<&str> = command.split(' ').collect();
        call.push("--help");
        let ran = airtide(&call);
        assert_eq!(ran.code, 0);
        assert!(ran.out.contains("Example:\n  airtide "), "{command}: {}", ran.out);
    }
}

#[test]
fn the_examples_of_calc_work() {
    for topic in [
        "tire-load",
        "deflection",
        "cold-pressure",
        "tkph",
        "flow",
        "fill-time",
        "vent-time",
        "grade-speed",
    ] {
        let help = airtide(&["calc", topic, "-h"]).out;
        let (_, example) = help.split_once("Example:").unwrap();
        let words: Vec<&str> = example.split_whitespace().skip(1).collect();
        let ran = airtide(&words);
        assert_eq!(ran.code, 0, "{topic}: {}", ran.err);
    }
}

#[test]
fn a_call_without_a_command_or_with_an_unknown_one_is_wrong() {
    assert_eq!(airtide(&[]).code, 2);
    assert_eq!(airtide(&["audit-everything"]).code, 2);
    assert_eq!(airtide(&["check", ".", "--units", "imperial"]).code, 2);
    assert_eq!(airtide(&["--version"]).code, 0);
}
