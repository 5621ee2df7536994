//! A new survey is sound, says so in its own comments, and overwrites nothing.

mod quarry_edits;

use quarry_edits::load;
use std::fs;

use survey::{Folder, WriteError, write_demo, write_starter};

#[test]
fn the_starter_is_a_sound_survey() {
    let disk = tempfile::tempdir().unwrap();
    let written = write_starter(disk.path()).unwrap();
    let (survey, problems) = load(&Folder::read(disk.path()).unwrap());
    assert!(problems.is_empty(), "{problems:#?}");
    assert_eq!(survey.unwrap().hauls.len(), 1);
    assert!(written.iter().all(|path| path.is_file()));
}

#[test]
fn every_file_points_at_a_schema_that_is_there() {
    let disk = tempfile::tempdir().unwrap();
    for path in write_starter(disk.path()).unwrap() {
        if path.extension().unwrap() != "toml" {
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        let link = text.lines().next().unwrap().strip_prefix("#:schema ").unwrap();
        assert!(path.parent().unwrap().join(link).is_file(), "{}: {link}", path.display());
    }
}

/// The commented lines are examples: uncommented one by one, each is a key that is known.
#[test]
fn commented_keys_are_known_ones() {
    let disk = tempfile::tempdir().unwrap();
    write_starter(disk.path()).unwrap();
    let folder = Folder::read(disk.path()).unwrap();
    let mut tried = 0;
    for (path, bytes) in folder.files().filter(|(path, _)| !path.starts_with("schemas/")) {
        let text = std::str::from_utf8(bytes).unwrap();
        for (index, line) in text.lines().enumerate() {
            let Some(key) = line.strip_prefix("# ").filter(|rest| is_entry(rest)) else { continue };
            let changed: Vec<&str> = text
                .lines()
                .enumerate()
                .map(|(at, line)| if at == index { key } else { line })
                .collect();
            let mut folder = folder.clone();
            folder.insert(path, changed.join("\n"));
            let (_, problems) = load(&folder);
            let told: Vec<String> = problems.iter().map(ToString::to_string).collect();
            let unknown =
                told.iter().any(|line| line.contains("unknown key") && line.starts_with(path));
            let inside_a_commented_table = inside_comment(text, index);
            assert!(!unknown || inside_a_commented_table, "{path}: {key}\n{}", told.join("\n"));
            tried += 1;
        }
    }
    assert!(tried > 10);
}

fn is_entry(text: &str) -> bool {
    text.split_once(" = ").is_some_and(|(key, _)| {
        key.chars().all(|character| {
            character.is_ascii_lowercase() || character.is_ascii_digit() || character == '_'
        })
    })
}

/// Whether a commented `[table]` stands between the line and the last live line above it.
fn inside_comment(text: &str, index: usize) -> bool {
    let above: Vec<&str> = text.lines().take(index).collect();
    above.iter().rev().take_while(|line| line.starts_with('#')).any(|line| line.starts_with("# ["))
}

#[test]
fn nothing_is_overwritten() {
    let disk = tempfile::tempdir().unwrap();
    fs::create_dir(disk.path().join("tires")).unwrap();
    fs::write(disk.path().join("tires/drive.toml"), "mine").unwrap();
    let refused = write_starter(disk.path());
    assert!(matches!(refused, Err(WriteError::Exists(path)) if path.ends_with("tires/drive.toml")));
    assert_eq!(fs::read_to_string(disk.path().join("tires/drive.toml")).unwrap(), "mine");
    assert!(!disk.path().join("survey.toml").exists());
}

#[test]
fn a_second_start_in_the_same_folder_is_refused() {
    let disk = tempfile::tempdir().unwrap();
    write_starter(disk.path()).unwrap();
    assert!(matches!(write_starter(disk.path()), Err(WriteError::Exists(_))));
}

#[test]
fn an_unknown_demo_is_told_with_those_there_are() {
    let disk = tempfile::tempdir().unwrap();
    let refused = write_demo("nowhere", disk.path()).unwrap_err();
    assert!(refused.to_string().starts_with("there is no demo 'nowhere'"));
    assert_eq!(fs::read_dir(disk.path()).unwrap().count(), 0);
}

#[test]
fn every_demo_is_a_sound_survey() {
    for name in survey::demos() {
        let disk = tempfile::tempdir().unwrap();
        write_demo(name, disk.path()).unwrap();
        let (survey, problems) = load(&Folder::read(disk.path()).unwrap());
        let errors: Vec<String> = problems
            .iter()
            .filter(|problem| problem.severity == survey::Severity::Error)
            .map(ToString::to_string)
            .collect();
        assert!(errors.is_empty(), "{name}:\n{}", errors.join("\n"));
        assert!(!survey.unwrap().hauls.is_empty(), "{name}");
    }
}
