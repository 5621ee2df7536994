//! Problems of a survey, and folders that hold none.

mod common;

use common::{airtide_in, edit, with_starter};

#[test]
fn a_sound_survey_exits_0() {
    let folder = with_starter();
    let ran = airtide_in(folder.path(), &["check", "fleet"]);
    assert_eq!((ran.code, ran.out.as_str()), (0, ""), "{}", ran.err);
    assert!(ran.err.contains("no errors"), "{}", ran.err);
    assert!(ran.err.contains("stone"), "{}", ran.err);
}

#[test]
fn regress_every_problem_is_shown_with_its_line() {
    let folder = with_starter();
    edit(&folder, "hauls/stone.toml", "tractor-trailer", "tractor-trailor");
    edit(&folder, "survey.toml", "altitude_m", "altitud_m");
    let ran = airtide_in(folder.path(), &["check", "fleet"]);
    assert_eq!(ran.code, 1);
    insta::assert_snapshot!("problems", ran.out);
    let brief = airtide_in(folder.path(), &["check", "fleet", "--brief"]);
    insta::assert_snapshot!("problems-brief", brief.out);
    let document = airtide_in(folder.path(), &["check", "fleet", "--json"]);
    assert_eq!(document.code, 1);
    let document = document.json();
    assert_eq!(document["schema"], "airtide.check/1");
    let problems = document["problems"].as_array().unwrap();
    let errors = problems.iter().filter(|one| one["severity"] == "error").count();
    assert_eq!(document["errors"], errors);
    assert!(errors >= 2);
    assert_eq!(brief.out.lines().count(), problems.len());
    assert!(problems.iter().any(|one| one["file"] == "hauls/stone.toml" && one["line"].is_u64()));
}

#[test]
fn a_missing_folder_or_a_file_is_a_wrong_call() {
    let folder = with_starter();
    for command in ["check", "plan", "simulate"] {
        for path in ["nowhere", "fleet/survey.toml"] {
            let ran = airtide_in(folder.path(), &[command, path]);
            assert_eq!(ran.code, 2, "{}", ran.err);
            assert!(ran.err.contains("survey.toml"), "{}", ran.err);
            assert!(ran.out.is_empty());
        }
    }
}

#[test]
fn an_empty_folder_is_told_with_what_to_do() {
    let folder = tempfile::tempdir().unwrap();
    for command in ["check", "plan", "simulate"] {
        let ran = airtide_in(folder.path(), &[command, "."]);
        assert_eq!(ran.code, 1, "{}", ran.err);
        let said = ran.out + &ran.err;
        assert!(said.contains("there is no survey here"), "{said}");
        assert!(said.contains("airtide new"), "{said}");
        assert!(!said.starts_with(':'), "{said}");
    }
}

#[test]
fn garbage_is_told_file_by_file() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("survey.toml"), [0xff, 0xfe, 0x00, 0x80]).unwrap();
    std::fs::create_dir(folder.path().join("tires")).unwrap();
    std::fs::write(folder.path().join("tires/a.toml"), "= = [[").unwrap();
    for command in ["check", "plan"] {
        let ran = airtide_in(folder.path(), &[command, ".", "--color", "never"]);
        assert_eq!(ran.code, 1, "{}", ran.err);
        let said = ran.out + &ran.err;
        assert!(said.contains("survey.toml:1"), "{said}");
        assert!(said.contains("tires/a.toml:1"), "{said}");
    }
}
