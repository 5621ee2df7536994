//! `airtide completions`

use clap::CommandFactory;

use crate::args::{Cli, CompletionsArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

pub(super) fn run(args: &CompletionsArgs, terminal: Terminal) -> Result<Outcome, Failure> {
    let mut script = Vec::new();
    clap_complete::generate(args.shell, &mut Cli::command(), "airtide", &mut script);
    terminal.data(&String::from_utf8_lossy(&script))?;
    Ok(Outcome::Done)
}
