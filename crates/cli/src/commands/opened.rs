//! What every command on a survey does first.

use std::path::Path;

use model::date::Date;
use quantity::Time;
use study::Opened;
use survey::Problem;

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
