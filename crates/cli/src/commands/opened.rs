//! What every command on a survey does first.

use std::path::Path;

use model::date::Date;
use quantity::Time;
use study::{NamedError, Opened};
use survey::{Problem, Survey};

use crate::outcome::Failure;
use crate::terminal::Terminal;
use crate::words::Words;

/// Reads a survey; a path that is no folder is a wrong call.
pub(super) fn open(path: &Path) -> Result<Opened, Failure> {
    Opened::read(path).map_err(Failure::call)
}

/// The same as it stands on a day.
pub(super) fn open_as_of(path: &Path, day: Date) -> Result<Opened, Failure> {
    Opened::read_as_of(path, day).map_err(Failure::call)
}

/// The survey as units drive it, where it is sound enough to be read.
///
/// A unit that is not there, or has no place in the haul asked for, is a wrong call.
pub(super) fn driven_by(
    opened: &Opened,
    units: &[String],
    haul: Option<&str>,
) -> Result<Option<Survey>, Failure> {
    let Some(survey) = &opened.survey else { return Ok(None) };
    let driven = study::driven_by(survey, units).map_err(Failure::call)?;
    let has = |survey: &Survey, name: &str| survey.hauls.iter().any(|haul| haul.name == name);
    match haul {
        Some(wanted) if has(survey, wanted) && !has(&driven, wanted) => {
            let known = driven.hauls.iter().map(|haul| haul.name.clone()).collect();
            Err(Failure::call(NamedError::NoPlace {
                units: units.to_vec(),
                haul: wanted.to_owned(),
                known,
            }))
        }
        _ => Ok(Some(driven)),
    }
}

/// Tells the problems of a survey on standard error, one line each, with their count.
pub(super) fn tell_problems(
    opened: &Opened,
    words: &Words,
    terminal: Terminal,
) -> Result<(), Failure> {
    if opened.problems.is_empty() {
        return Ok(());
    }
    let mut text = String::new();
    for problem in &opened.problems {
        text.push_str(&one_line(problem, opened));
    }
    terminal.talk(&text)?;
    terminal.talk(&format!("{}\n", counted(opened, words)))?;
    Ok(())
}

/// A problem in one line; one with the survey as a whole names its folder.
pub(super) fn one_line(problem: &Problem, opened: &Opened) -> String {
    if problem.file.is_empty() {
        format!("{}{problem}\n", opened.path.display())
    } else {
        format!("{problem}\n")
    }
}

/// `2 errors, 1 warning`.
pub(super) fn counted(opened: &Opened, words: &Words) -> String {
    let errors = opened.errors().count();
    counts(errors, opened.problems.len() - errors, words)
}

pub(super) fn counts(errors: usize, warnings: usize, words: &Words) -> String {
    format!("{}, {}", words.count("check-errors", errors), words.count("check-warnings", warnings))
}

/// A time step of the call.
pub(super) fn every(every: Time) -> Result<Time, Failure> {
    if every.as_s() >= 0.1 {
        Ok(every)
    } else {
        Err(Failure::call(anyhow::anyhow!(
            "--every {} s is too short; give 0.1s or more",
            every.as_s()
        )))
    }
}

/// A file to write that is there already makes a wrong call, unless it is forced.
pub(super) fn refuse_to_overwrite(file: &Path, force: bool) -> Result<(), Failure> {
    if file.symlink_metadata().is_ok() && !force {
        return Err(Failure::call(anyhow::anyhow!(
            "'{}' is there already and was left as it is; give another name, or --force to write \
             over it",
            file.display()
        )));
    }
    Ok(())
}
