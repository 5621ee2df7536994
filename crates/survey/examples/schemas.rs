//! Writes the JSON Schema of each kind of survey file into the folder given.
#![allow(clippy::print_stderr, reason = "a generator says what stops it")]

use std::path::PathBuf;
use std::process::ExitCode;

fn main() -> ExitCode {
    let Some(folder) = std::env::args_os().nth(1).map(PathBuf::from) else {
        eprintln!("usage: schemas FOLDER");
        return ExitCode::from(2);
    };
    for (name, schema) in survey::schema::all() {
        let file = folder.join(format!("{name}.json"));
        let written = std::fs::create_dir_all(&folder)
            .and_then(|()| std::fs::write(&file, format!("{schema:#}\n")));
        if let Err(error) = written {
            eprintln!("{}: {error}", file.display());
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}
