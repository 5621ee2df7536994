//! `airtide calc`

use report::refusal::in_units;

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
    let answer =
        calc::answer(&args.topic, &words).map_err(|failure| in_their_units(failure, &words))?;
    if global.json {
        terminal.document(&answer.document(&words))?;
    } else {
        terminal.data(&answer.page(&words))?;
    }
    Ok(Outcome::Done)
}

/// What an equation says where it has no answer, its numbers in the units of the reader.
fn in_their_units(failure: Failure, words: &Words) -> Failure {
    match failure {
        Failure::Input(error) => {
            Failure::input(anyhow::Error::msg(in_units(&format!("{error:#}"), &words.format)))
        }
        other => other,
    }
}
