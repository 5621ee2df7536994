//! One file a command: the call is checked, the work is asked for, the result is printed.

mod approvals;
mod ask;
mod calc;
mod check;
mod completions;
mod issue;
mod logs;
#[cfg(feature = "logs")]
mod make;
mod man;
mod new;
mod now;
mod opened;
mod plan;
mod plans;
mod practice;
mod report;
mod road;
mod schema;
mod serve;
mod simulate;

use crate::args::{Command, GlobalArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

/// Runs a command.
pub fn run(command: Command, global: &GlobalArgs, terminal: Terminal) -> Result<Outcome, Failure> {
    match command {
        Command::New(args) => new::run(&args, global, terminal),
        Command::Check(args) => check::run(&args, global, terminal),
        Command::Plan(args) if args.issue.issue => issue::run(args, global, terminal),
        Command::Plan(args) => plan::run(args, global, terminal),
        Command::Plans(args) => plans::run(&args, global, terminal),
        Command::Now(args) => now::run(&args, global, terminal),
        Command::Ask(args) => ask::run(&args, global, terminal),
        Command::Simulate(args) => simulate::run(args, global, terminal),
        Command::Practice(args) => practice::run(&args, global, terminal),
        Command::Approvals(args) => approvals::run(&args, global, terminal),
        Command::Report(args) => report::run(&args, global, terminal),
        Command::Calc(args) => calc::run(&args, global, terminal),
        Command::Logs(args) => logs::run(&args, global, terminal),
        Command::Serve(args) => serve::run(args, global, terminal),
        Command::Schema(args) => schema::run(&args, terminal),
        Command::Completions(args) => completions::run(&args, terminal),
        Command::Man(_) => man::run(terminal),
    }
}
