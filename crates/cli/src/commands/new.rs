//! `airtide new`

use serde::Serialize;
use survey::{WriteError, write_demo, write_starter};

use crate::args::{GlobalArgs, NewArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;
use crate::words::Words;

/// What was written.
#[derive(Debug, Serialize)]
struct NewDocument {
    schema: &'static str,
    folder: String,
    files: Vec<String>,
}

pub(super) fn run(
    args: &NewArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let words = Words::of_call(global)?;
    let written = match &args.demo {
        Some(name) => write_demo(name, &args.folder),
        None => write_starter(&args.folder),
    }
    .map_err(|error| match error {
        WriteError::NoDemo { .. } => Failure::call(error),
        WriteError::Exists(_) | WriteError::Refused { .. } => Failure::input(error),
    })?;
    let folder = args.folder.display().to_string();
    let files: Vec<String> = written.iter().map(|path| path.display().to_string()).collect();
    if global.json {
        terminal.document(&NewDocument { schema: "airtide.new/1", folder, files })?;
    } else {
        terminal.data(&(files.join("\n") + "\n"))?;
        terminal.talk(&format!("{}\n", words.fill("new-next", &[("folder", &folder)])))?;
    }
    Ok(Outcome::Done)
}
