//! The quarry survey with single places changed, and what is then told about it.

#![allow(dead_code, reason = "every test file uses its own part")]

use std::path::Path;

use model::date::Date;
use survey::{Folder, Problem, Survey};

pub const SURVEY: &str = "survey.toml";
pub const STEER_TIRE: &str = "tires/steer-11r22-5-h.toml";
pub const TIRE: &str = "tires/drive-11r22-5-g.toml";
pub const TRUCK: &str = "vehicles/tractor.toml";
pub const TRAILER: &str = "vehicles/tipper.toml";
pub const COMBINATION: &str = "combinations/tractor-tipper.toml";
pub const ROUTE: &str = "routes/bench-to-plant.toml";
pub const HAUL: &str = "hauls/aggregate.toml";

/// The day on which tests read surveys.
pub fn today() -> Date {
    Date::new(2027, 3, 1).unwrap()
}

/// The survey of a folder with all its problems.
pub fn load(folder: &Folder) -> (Option<Survey>, Vec<Problem>) {
    survey::load(folder, today())
}

/// The survey as it is.
pub fn quarry() -> Folder {
    Folder::read(Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/surveys/quarry"))).unwrap()
}

/// The survey with the first `old` of a file replaced.
pub fn edited(file: &str, old: &str, new: &str) -> Folder {
    let mut folder = quarry();
    edit(&mut folder, file, old, new);
    folder
}

/// Replaces the first `old` of a file, which must be there.
pub fn edit(folder: &mut Folder, file: &str, old: &str, new: &str) {
    let text = folder.text(file).unwrap().to_owned();
    assert!(text.contains(old), "{file} does not hold '{old}'");
    folder.insert(file, text.replacen(old, new, 1));
}

/// All problems of a folder.
pub fn problems(folder: &Folder) -> Vec<Problem> {
    load(folder).1
}

/// Line, from 1, of the first `text` in a file.
pub fn line_of(folder: &Folder, file: &str, text: &str) -> usize {
    let content = folder.text(file).unwrap();
    let at = content.find(text).unwrap_or_else(|| panic!("{file} does not hold '{text}'"));
    content[..at].matches('\n').count() + 1
}

/// The edit gives exactly one problem, on the line of the new text, that says `message` and
/// hints at `hint`; an error takes the haul away, a warning does not.
#[track_caller]
pub fn one_problem(file: &str, old: &str, new: &str, message: &str, hint: &str) -> Problem {
    let folder = edited(file, old, new);
    let (survey, problems) = load(&folder);
    let told: Vec<String> = problems.iter().map(ToString::to_string).collect();
    assert_eq!(problems.len(), 1, "wanted one problem, got:\n{}", told.join("\n"));
    let problem = problems.into_iter().next().unwrap();
    assert_eq!(problem.file, file, "{}", told[0]);
    let wanted = new.trim_start().lines().next().unwrap();
    assert_eq!(problem.line, Some(line_of(&folder, file, wanted)), "{}", told[0]);
    assert!(problem.message().contains(message), "{}", told[0]);
    assert!(problem.hint().unwrap_or_default().contains(hint), "{}", told[0]);
    let hauls = survey.map_or(0, |survey| survey.hauls.len());
    let wanted = usize::from(problem.severity == survey::Severity::Warning);
    assert_eq!(hauls, wanted, "{}", told[0]);
    problem
}

/// Some problem of the folder is told in these words.
#[track_caller]
pub fn tells(folder: &Folder, words: &str) {
    let told: Vec<String> = problems(folder).iter().map(ToString::to_string).collect();
    assert!(told.iter().any(|line| line.contains(words)), "'{words}' not in\n{}", told.join("\n"));
}
