//! Every published number, by what it is worth.

use validation::case::{CaseFile, Level};
use validation::table::count;
use validation::{case_files, check};

fn all_hold(level: Level) {
    let mut files: Vec<CaseFile> = case_files().expect("the case files read");
    for file in &mut files {
        file.cases.retain(|case| case.level == level);
    }
    let (_, problems) = check::compare(&files);
    assert!(problems.is_empty(), "\n{}", problems.join("\n"));
}

#[test]
fn measured_numbers_are_met() {
    all_hold(Level::Measured);
}

#[test]
fn table_numbers_are_met() {
    all_hold(Level::Table);
}

#[test]
fn worked_examples_are_met() {
    all_hold(Level::Worked);
}

#[test]
fn library_results_are_met() {
    all_hold(Level::Library);
}

#[test]
fn regress_numbers_stand() {
    all_hold(Level::Regress);
}

#[test]
fn enough_equations_are_held_against_the_world_outside() {
    let (comparisons, _) = check::compare(&case_files().expect("the case files read"));
    let count = count(&comparisons);
    assert!(count.equations >= 25, "{count:?}");
    assert!(count.checks >= 60, "{count:?}");
}
