//! `airtide calc`

use crate::args::{CalcArgs, GlobalArgs};
use crate::calc;
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &CalcArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let words = Words::of_call(global)?;
    let answer = calc::answer(&args.topic, &words)?;
    if global.json {
        terminal.document(&answer.document(&words))?;
    } else {
        terminal.data(&answer.page(&words))?;
    }
    Ok(Outcome::Done)
}
