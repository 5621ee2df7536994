//! Writes the JSON Schemas of the survey files into the folder it is given.

use std::path::PathBuf;
use std::process::ExitCode;

fn main() -> ExitCode {
    let Some(folder) = std::env::args_os().nth(1).map(PathBuf::from) else {
        return told("name the folder to write into");
    };
    for (name, text) in survey::schema::files() {
        if let Err(error) = survey::replace(&folder.join(name), text.as_bytes()) {
            return told(&error.to_string());
        }
    }
    ExitCode::SUCCESS
}

#[expect(clippy::print_stderr, reason = "this is a command")]
fn told(problem: &str) -> ExitCode {
    eprintln!("{problem}");
    ExitCode::from(2)
}
