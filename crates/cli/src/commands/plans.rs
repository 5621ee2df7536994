//! `airtide plans`

use study::{Opened, issued, issued_problems, registered, stale};
use survey::Severity;
use view::PlansDocument;

use super::opened::{open, open_as_of};
use crate::args::{GlobalArgs, PlansArgs};
use crate::outcome::{Failure, Outcome};
use crate::page;
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &PlansArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let opened = match args.date {
        Some(day) => open_as_of(&args.survey, day)?,
        None => open(&args.survey)?,
    };
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    let issued = issued(&opened.folder);
    let unit = args.unit.as_deref();
    let in_some_plan = |unit: &str| {
        issued.plans.iter().any(|plan| plan.units.iter().any(|assigned| assigned == unit))
    };
    if let Some(unit) = unit.filter(|unit| !in_some_plan(unit)) {
        check_registered(&opened, unit)?;
    }
    let problems = issued_problems(&opened, &issued);
    let staleness = stale(&opened, &issued.plans);
    let document = PlansDocument::new(&issued, &staleness, &problems, unit, opened.day)
        .map_err(|error| Failure::input(anyhow::anyhow!("the plan in force: {error}")))?;
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&page::plans(&document, &words))?;
        for problem in &problems {
            terminal.talk(&format!("{problem}\n"))?;
        }
    }
    let broken = problems.iter().any(|problem| problem.severity() == Severity::Error);
    let without = document.in_force.as_ref().is_some_and(|unit| unit.plan.is_none());
    Ok(if broken || without { Outcome::Problems } else { Outcome::Done })
}

fn check_registered(opened: &Opened, unit: &str) -> Result<(), Failure> {
    let Some(survey) = &opened.survey else {
        return Err(Failure::input(anyhow::anyhow!(
            "survey.toml has errors, so nobody knows the unit '{unit}'; see airtide check"
        )));
    };
    registered(survey, unit).map(|_| ()).map_err(Failure::call)
}
