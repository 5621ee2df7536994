//! `airtide ask`

use plan::Detail;
use plan::inverse::{CapAsked, InverseError, enough_supply, highest_cap, too_late};
use plan::now::CallError;
use study::{Named, NamedError, Planned, Threads, plan_hauls};
use survey::Survey;
use view::AskDocument;

use super::opened::{driven_by, open, tell_problems};
use super::road;
use crate::args::{AskArgs, CapArgs, GlobalArgs, Question};
use crate::outcome::{Failure, Outcome};
use crate::page;
use crate::progress::step;
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &AskArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let opened = open(&args.survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    if opened.errors().next().is_some() {
        tell_problems(&opened, &words, terminal)?;
    }
    road::survey_of(&opened)?;
    let (units, haul) = match &args.question {
        Question::Cap(asked) => (&asked.unit, &asked.haul),
        Question::Supply(asked) => (&asked.unit, &asked.haul),
        Question::Late(asked) => (&asked.unit, &asked.haul),
    };
    let survey = driven_by(&opened, units, haul.as_deref())?;
    let survey = survey.as_ref().ok_or_else(|| Failure::input(NamedError::NoneSound))?;
    let detail = Detail::default();
    let (document, good) = match &args.question {
        Question::Cap(asked) => cap(survey, asked)?,
        Question::Supply(asked) => {
            let one = planned(survey, asked.haul.as_deref(), &detail, &words)?;
            let number = asked.change;
            let found = step(&words.text("step-planning"), || {
                enough_supply(&one.haul, &one.plan, number, &detail, &Threads)
            })
            .map_err(refused)?;
            (AskDocument::supply(&one.haul, number, &found), found.fits_today)
        }
        Question::Late(asked) => {
            let one = planned(survey, asked.haul.as_deref(), &detail, &words)?;
            let found = too_late(&one.haul, &one.plan, asked.change, &detail).map_err(refused)?;
            (AskDocument::late(&one.haul, asked.change, &found), found.latest.is_some())
        }
    };
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&page::ask(&document, &words))?;
    }
    Ok(if good { Outcome::Done } else { Outcome::Problems })
}

/// The haul planned as `airtide plan` does, so that numbers of change points are the same.
fn planned(
    survey: &Survey,
    haul: Option<&str>,
    detail: &Detail,
    words: &Words,
) -> Result<Planned, Failure> {
    let haul = road::haul(survey, Named { haul, ..Named::default() })?;
    let planned =
        step(&words.text("step-planning"), || plan_hauls(survey, Some(&haul.name), detail))
            .map_err(Failure::input)?;
    planned
        .into_iter()
        .next()
        .ok_or_else(|| Failure::input(anyhow::anyhow!("haul '{}' could not be planned", haul.name)))
}

fn cap(survey: &Survey, args: &CapArgs) -> Result<(AskDocument, bool), Failure> {
    let haul = road::haul(survey, Named { haul: args.haul.as_deref(), ..Named::default() })?;
    let asked = CapAsked {
        channel: road::channel(&haul, &args.channel)?,
        load: road::load(&haul, &args.load)?,
        chains: args.chains.clone(),
        pressure: args.pressure,
        cap_step: survey.speed_cap_step,
    };
    let found = highest_cap(&haul, &asked).map_err(|error| match error {
        CallError::Plan(_) | CallError::NoRungs => Failure::input(error),
        other => Failure::call(other),
    })?;
    let good = found.approved.is_some() && !found.above_highest;
    Ok((AskDocument::cap(&haul, &asked, &found), good))
}

fn refused(error: InverseError) -> Failure {
    match error {
        InverseError::NoSuchChange { .. } | InverseError::Lowers { .. } => Failure::call(error),
        other => Failure::input(other),
    }
}
