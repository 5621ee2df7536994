//! `airtide logs`

use crate::args::{GlobalArgs, LogsArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

#[cfg(feature = "logs")]
pub(super) fn run(
    args: &LogsArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    match &args.action {
        crate::args::LogsAction::Make(args) => super::make::run(args, global, terminal),
    }
}

#[cfg(not(feature = "logs"))]
pub(super) fn run(_: &LogsArgs, _: &GlobalArgs, _: Terminal) -> Result<Outcome, Failure> {
    Err(Failure::call(anyhow::anyhow!(
        "logs are not in this build of airtide; take the full one, or build with --features logs"
    )))
}
