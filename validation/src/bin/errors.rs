//! Writes `errors.md` into the folder given.
#![allow(clippy::print_stderr, reason = "a generator says what stops it")]

use std::process::ExitCode;

use validation::{case_files, check, table};

fn main() -> ExitCode {
    let Some(folder) = std::env::args_os().nth(1) else {
        eprintln!("usage: errors FOLDER");
        return ExitCode::from(2);
    };
    let files = match case_files() {
        Ok(files) => files,
        Err(error) => {
            eprintln!("{error}");
            return ExitCode::FAILURE;
        }
    };
    let (comparisons, problems) = check::compare(&files);
    for problem in &problems {
        eprintln!("{problem}");
    }
    let page = std::path::Path::new(&folder).join("errors.md");
    if let Err(error) = std::fs::write(&page, table::page(&comparisons)) {
        eprintln!("{}: {error}", page.display());
        return ExitCode::FAILURE;
    }
    if problems.is_empty() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
