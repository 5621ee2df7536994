//! What a document is made from: the plan of the survey as it stands, or an issued one.

use plan::Detail;
use report::paper::Kind;
use study::{Named, NamedError, Opened, haul_of, issued};
use survey::Survey;
use view::{PaperMaterial, PaperWants};

use crate::args::ReportArgs;
use crate::commands::now::gauge_step;
use crate::commands::plan::{Ladder, planned};
use crate::commands::road;
use crate::outcome::Failure;
use crate::terminal::Terminal;
use crate::words::Words;

/// Gathers it; none where errors of the survey leave nothing to plan, and that is said.
pub(super) fn gather(
    args: &ReportArgs,
    opened: &Opened,
    words: &Words,
    terminal: Terminal,
) -> Result<Option<PaperMaterial>, Failure> {
    let survey = road::survey_of(opened)?;
    let named = Named { haul: args.haul.as_deref(), ..Named::default() };
    let name = &haul_of(survey, named)
        .map_err(|error| match error {
            NamedError::NoneSound => Failure::input(error),
            other => Failure::call(other),
        })?
        .name;
    let wants = PaperWants {
        gauge_step: gauge_step(words),
        yard_changes: args.kind == Kind::CommissioningRecord,
        requests: args.kind == Kind::ApprovalRequest,
    };
    let issued = issued(&opened.folder);
    let mut of_haul = issued.plans.iter().filter(|plan| plan.haul == *name);
    let numbers = || {
        let plans = issued.plans.iter().filter(|plan| plan.haul == *name);
        plans.map(|plan| plan.number.to_string()).collect::<Vec<_>>().join(", ")
    };
    let Some(number) = args.plan else {
        let told = match numbers() {
            none if none.is_empty() => words.text("paper-draft-note-none"),
            numbers => words.fill("paper-draft-note", &[("plans", &numbers)]),
        };
        terminal.note(&told)?;
        return draft(wants, opened, survey, name, words, terminal);
    };
    let plan = of_haul.find(|plan| plan.number == number).ok_or_else(|| {
        let known = match numbers() {
            none if none.is_empty() => words.text("unit-none"),
            numbers => numbers,
        };
        Failure::call(anyhow::anyhow!("haul '{name}' has no issued plan {number}; issued: {known}"))
    })?;
    PaperMaterial::of_issued(opened, survey, plan, wants).map(Some).map_err(Failure::input)
}

fn draft(
    wants: PaperWants,
    opened: &Opened,
    survey: &Survey,
    name: &str,
    words: &Words,
    terminal: Terminal,
) -> Result<Option<PaperMaterial>, Failure> {
    let detail = Detail::default();
    let planned =
        planned(opened.survey.as_ref(), Some(name), Ladder::Surveyed, &detail, words, terminal)?;
    let Some(one) = planned.first() else { return Ok(None) };
    PaperMaterial::of_draft(survey, one, wants).map(Some).map_err(Failure::input)
}
