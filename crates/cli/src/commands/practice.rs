//! `airtide practice`

use std::path::{Path, PathBuf};

use plan::Detail;
use study::Planned;
use study::practice::{Script, Session, read_script};
use view::VerdictDocument;

use super::opened::{open, tell_problems};
use super::plan::{Ladder, planned};
use crate::args::{GlobalArgs, PracticeArgs};
use crate::outcome::{Failure, Outcome};
use crate::page;
use crate::progress::step;
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &PracticeArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let text = args.drive.as_deref().map(read).transpose()?;
    let opened = open(&args.survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    // The nominal change points are enough to practise on, and are there at once.
    let detail = Detail { samples: 0, ..Detail::default() };
    let haul = args.haul.as_deref();
    let all = planned(opened.survey.as_ref(), haul, Ladder::Surveyed, &detail, &words, terminal)?;
    let one = match &all[..] {
        [] => return Ok(Outcome::Problems),
        [one] => one,
        several => {
            let names: Vec<&str> = several.iter().map(|one| one.haul.name.as_str()).collect();
            return Err(Failure::call(anyhow::anyhow!(
                "one practice drives one haul; choose with --haul: {}",
                names.join(", ")
            )));
        }
    };
    let Some(script) = script(text, one, &words, terminal)? else { return Ok(Outcome::Problems) };
    let driven = step(&words.text("step-practising"), || -> Result<_, Failure> {
        let mut session =
            Session::start(one, &detail, args.surprise, args.seed).map_err(Failure::input)?;
        session.drive(&script).map_err(Failure::input)?;
        let verdict = session.verdict().map_err(Failure::input)?;
        Ok(VerdictDocument::new(&session, &verdict))
    })?;
    if global.json {
        terminal.document(&driven)?;
    } else {
        terminal.data(&page::verdict(&driven, &words))?;
    }
    let kept = driven.findings.is_empty() && driven.driven.arrived;
    Ok(if kept { Outcome::Done } else { Outcome::Problems })
}

fn read(file: &Path) -> Result<(PathBuf, String), Failure> {
    let text = std::fs::read_to_string(file).map_err(|error| {
        let why = format!("the drive '{}' cannot be read", file.display());
        Failure::Call(anyhow::Error::new(error).context(why))
    })?;
    Ok((file.to_owned(), text))
}

/// The drive asked for; `None` where its file has problems, and those are told.
fn script(
    text: Option<(PathBuf, String)>,
    planned: &Planned,
    words: &Words,
    terminal: Terminal,
) -> Result<Option<Script>, Failure> {
    let Some((file, text)) = text else {
        let driven = planned.plan.driven.as_ref().map_err(|why| Failure::input(why.clone()))?;
        return Ok(Some(Script::of_plan(driven)));
    };
    match read_script(&text, &planned.haul) {
        Ok(script) => Ok(Some(script)),
        Err(problems) => {
            for problem in &problems {
                terminal.talk(&format!(
                    "{}:{}: {}\n",
                    file.display(),
                    problem.line,
                    problem.what
                ))?;
            }
            terminal.talk(&format!("{}\n", words.count("practice-problems", problems.len())))?;
            Ok(None)
        }
    }
}
