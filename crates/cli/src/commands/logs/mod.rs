//! `airtide logs`

#[cfg(feature = "logs")]
mod import;
#[cfg(feature = "logs")]
mod show;

use crate::args::{GlobalArgs, LogsArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;
use crate::words::Words;

#[cfg(feature = "logs")]
pub(super) fn run(
    args: &LogsArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    use crate::args::LogsAction;
    let words = Words::of_call(global)?;
    match &args.action {
        LogsAction::Show(args) => show::run(args, global, &words, terminal),
        LogsAction::Make(args) => super::make::run(args, global, terminal),
        LogsAction::Import(args) => import::run(args, global, &words, terminal),
    }
}

#[cfg(not(feature = "logs"))]
pub(super) fn run(
    _args: &LogsArgs,
    global: &GlobalArgs,
    _terminal: Terminal,
) -> Result<Outcome, Failure> {
    let words = Words::of_call(global)?;
    Err(Failure::call(anyhow::anyhow!(words.text("logs-without-part"))))
}
