//! `airtide plan --issue`

use plan::Detail;
use study::{IssueTerms, IssuedFault, IssuedPlan, issue, issued, issued_problems};
use view::{PlanDocument, PlanView};

use super::opened::{driven_by, open_as_of, tell_problems};
use super::plan::{Ladder, planned};
use crate::args::{GlobalArgs, PlanArgs};
use crate::outcome::{Failure, Outcome};
use crate::page::{self, Extent};
use crate::terminal::Terminal;
use crate::words::Words;

/// What an issued plan says made it.
const PROGRAM: &str = concat!("airtide ", env!("CARGO_PKG_VERSION"));

pub(super) fn run(
    args: PlanArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let wanted = args.issue;
    let date = wanted.date.ok_or_else(|| {
        Failure::call(anyhow::anyhow!("--issue wants the day of issue in --date"))
    })?;
    let terms = IssueTerms {
        date,
        number: wanted.number,
        units: wanted.assign,
        responsible: wanted.by,
        valid_from: wanted.valid_from.unwrap_or(date),
        valid_until: wanted.valid_until,
        program: PROGRAM.to_owned(),
    };
    let opened = open_as_of(&args.survey, terms.valid_from)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    let ladder =
        if args.best_ladder { Ladder::Best(args.rungs.map(usize::from)) } else { Ladder::Surveyed };
    let detail = Detail::default();
    // Planned for those who are to drive by it: their tires, and the slowest air measured on them.
    let survey = driven_by(&opened, &terms.units, args.haul.as_deref())?;
    let planned =
        planned(survey.as_ref(), args.haul.as_deref(), ladder, &detail, &words, terminal)?;
    let one = match planned.as_slice() {
        [] => return Ok(Outcome::Problems),
        [one] => one,
        several => {
            let names: Vec<&str> = several.iter().map(|one| one.haul.name.as_str()).collect();
            return Err(Failure::call(anyhow::anyhow!(
                "one issued plan holds one haul; choose with --haul: {}",
                names.join(", ")
            )));
        }
    };
    let document = PlanDocument::new(std::slice::from_ref(one));
    let frozen = serde_json::to_value(&document).map_err(Failure::input)?;
    let plan = issue(&opened, one, frozen, &terms).map_err(|error| {
        if error.is_wrong_call() { Failure::call(error) } else { Failure::input(error) }
    })?;
    plan.write(&args.survey).map_err(Failure::input)?;
    if global.json {
        terminal.data(&plan.text())?;
    } else {
        let pages = document.plans.iter().map(|plan| page::plan(plan, Extent::Driven, &words));
        terminal.data(&pages.collect::<Vec<_>>().join("\n\n"))?;
    }
    terminal.talk(&told(&plan, &document.plans, &words))?;
    tell_rivals(&plan, &args.survey, terminal)?;
    Ok(Outcome::Done)
}

/// What was issued, to whom, and what drivers will not see.
fn told(plan: &IssuedPlan, plans: &[PlanView], words: &Words) -> String {
    let mut lines =
        vec![words.fill("issued-written", &[("plan", &plan.id), ("file", &plan.file())])];
    let (units, from) = (plan.units.join(", "), plan.valid_from);
    lines.push(match plan.valid_until {
        _ if plan.units.is_empty() => words.text("issued-no-units"),
        None => words.fill("issued-units", &[("units", &units), ("from", &from)]),
        Some(until) => {
            words.fill("issued-until", &[("units", &units), ("from", &from), ("until", &until)])
        }
    });
    let cells = plans.iter().flat_map(|plan| &plan.ladder);
    let unapproved = cells.filter(|cell| cell.approval == "needs approval").count();
    if unapproved > 0 {
        lines.push(words.count("issued-unapproved", unapproved));
    }
    lines.join("\n") + "\n"
}

/// Another haul's plan of the same day for the same unit is told at once.
fn tell_rivals(
    plan: &IssuedPlan,
    survey: &std::path::Path,
    terminal: Terminal,
) -> Result<(), Failure> {
    let opened = open_as_of(survey, plan.valid_from)?;
    for problem in issued_problems(&opened, &issued(&opened.folder)) {
        let of_plan = match &problem.fault {
            IssuedFault::TwoInForce { other, .. } => {
                problem.file == plan.file() || *other == plan.file()
            }
            _ => false,
        };
        if of_plan {
            terminal.talk(&format!("{problem}\n"))?;
        }
    }
    Ok(())
}
