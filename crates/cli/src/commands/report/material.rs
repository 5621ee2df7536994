//! What a document is made from: the plan of the survey as it stands, or an issued one.

use model::haul_cycle::HaulCycle;
use plan::Detail;
use plan::now::{Call, Load, Trailer, Warmth, card};
use plan::yard::yard_changes;
use report::paper::{Issue, Kind, Material};
use study::{
    IssuedPlan, Named, NamedError, Opened, approval_requests, driven_by, haul_of, issued,
    plan_hauls, stale, units_of,
};
use survey::Survey;
use view::{
    NowTableDocument, PlanDocument, PlanView, RequestsDocument, RouteView, SetupView, SubjectView,
    frozen,
};

use crate::args::ReportArgs;
use crate::commands::now::gauge_step;
use crate::commands::plan::{Ladder, planned};
use crate::commands::road;
use crate::outcome::Failure;
use crate::terminal::Terminal;
use crate::words::Words;

/// Everything a document may need.
pub(super) struct Gathered {
    pub(super) plan: PlanView,
    pub(super) issue: Option<Issue>,
    responsible: String,
    route: RouteView,
    gauge: NowTableDocument,
    setup: SetupView,
    requests: Option<RequestsDocument>,
}

impl Gathered {
    pub(super) fn material(&self) -> Material<'_> {
        Material {
            plan: &self.plan,
            issue: self.issue.as_ref(),
            responsible: &self.responsible,
            route: &self.route,
            gauge: &self.gauge,
            setup: &self.setup,
            requests: self.requests.as_ref(),
        }
    }
}

/// Gathers it; none where errors of the survey leave nothing to plan, and that is said.
pub(super) fn gather(
    args: &ReportArgs,
    opened: &Opened,
    words: &Words,
    terminal: Terminal,
) -> Result<Option<Gathered>, Failure> {
    let survey = road::survey_of(opened)?;
    let named = Named { haul: args.haul.as_deref(), ..Named::default() };
    let name = &haul_of(survey, named)
        .map_err(|error| match error {
            NamedError::NoneSound => Failure::input(error),
            other => Failure::call(other),
        })?
        .name;
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
        return draft(args.kind, opened, survey, name, words, terminal);
    };
    let plan = of_haul.find(|plan| plan.number == number).ok_or_else(|| {
        let known = match numbers() {
            none if none.is_empty() => words.text("unit-none"),
            numbers => numbers,
        };
        Failure::call(anyhow::anyhow!("haul '{name}' has no issued plan {number}; issued: {known}"))
    })?;
    from_issued(args.kind, plan, opened, survey, words).map(Some)
}

fn draft(
    kind: Kind,
    opened: &Opened,
    survey: &Survey,
    name: &str,
    words: &Words,
    terminal: Terminal,
) -> Result<Option<Gathered>, Failure> {
    let detail = Detail::default();
    let planned =
        planned(opened.survey.as_ref(), Some(name), Ladder::Surveyed, &detail, words, terminal)?;
    let Some(one) = planned.first() else { return Ok(None) };
    let plan = PlanDocument::new(&planned[..1]).plans.remove(0);
    let requests = (kind == Kind::ApprovalRequest)
        .then(|| RequestsDocument::new(survey, &approval_requests(survey, &planned[..1])));
    Ok(Some(Gathered {
        setup: setup(kind, &one.haul, survey, &[])?,
        requests,
        plan,
        issue: None,
        responsible: survey.responsible.clone(),
        route: RouteView::from(&one.haul),
        gauge: gauge(&one.haul, survey, words)?,
    }))
}

/// An issued plan. Route and gauge table come from the survey, which must not have left it behind.
fn from_issued(
    kind: Kind,
    plan: &IssuedPlan,
    opened: &Opened,
    survey: &Survey,
    words: &Words,
) -> Result<Gathered, Failure> {
    let standing = stale(opened, std::slice::from_ref(plan));
    if let Some(standing) = standing.first().filter(|standing| standing.cause.is_some()) {
        let files: Vec<&str> = standing.changes.iter().map(|file| &*file.path).collect();
        return Err(Failure::input(anyhow::anyhow!(
            "plan {} was left behind by the survey ({}); issue the haul again, and print that",
            plan.id,
            if files.is_empty() { "an approval or permit".to_owned() } else { files.join(", ") }
        )));
    }
    let frozen = frozen(plan).map_err(|error| {
        Failure::input(anyhow::anyhow!("plan {} cannot be read: {error}", plan.id))
    })?;
    let view = frozen.plan.plans.into_iter().next().ok_or_else(|| {
        Failure::input(anyhow::anyhow!("plan {} holds no plan document", plan.id))
    })?;
    let named = Named { haul: Some(&plan.haul), ..Named::default() };
    let haul = road::haul(survey, named)?;
    let requests = match kind {
        Kind::ApprovalRequest => Some(requests(survey, &plan.haul)?),
        _ => None,
    };
    Ok(Gathered {
        setup: setup(kind, &haul, survey, &plan.units)?,
        requests,
        plan: view,
        issue: Some(Issue {
            id: plan.id.clone(),
            date: plan.date.to_string(),
            units: plan.units.clone(),
        }),
        responsible: plan.responsible.clone(),
        route: RouteView::from(&haul),
        gauge: gauge(&haul, survey, words)?,
    })
}

/// What is fitted; changes in the yard are simulated where a record asks for their times.
fn setup(
    kind: Kind,
    haul: &HaulCycle,
    survey: &Survey,
    assigned: &[String],
) -> Result<SetupView, Failure> {
    let units = units_of(survey, &haul.name, assigned);
    if kind != Kind::CommissioningRecord {
        return Ok(SetupView::new(haul, &units, &[]));
    }
    // Units have the air that was measured on them, not that of their types.
    let driven = driven_by(survey, assigned).map_err(Failure::input)?;
    let haul = &road::haul(&driven, Named { haul: Some(&haul.name), ..Named::default() })?;
    let (ladder, _) = plan::Ladder::of(haul).map_err(Failure::input)?;
    let changes = yard_changes(haul, &ladder, &Detail::default()).map_err(Failure::input)?;
    Ok(SetupView::new(haul, &units, &changes))
}

/// What an issued plan leaves to ask; it rests on the survey as it still stands.
fn requests(survey: &Survey, haul: &str) -> Result<RequestsDocument, Failure> {
    let detail = Detail { samples: 0, ..Detail::default() };
    let planned = plan_hauls(survey, Some(haul), &detail).map_err(Failure::input)?;
    Ok(RequestsDocument::new(survey, &approval_requests(survey, &planned)))
}

/// Highest speeds over gauge readings, for tires of which nobody knows how warm they are.
fn gauge(haul: &HaulCycle, survey: &Survey, words: &Words) -> Result<NowTableDocument, Failure> {
    let call = Call {
        load: Load::Unknown,
        chains: None,
        readings: Vec::new(),
        ran_last_hour: false,
        ambient: None,
        trailer: Trailer::AsPlanned,
        with_unapproved: false,
        cap_step: survey.speed_cap_step,
    };
    let rows = card(haul, &call, Warmth::NotKnown, gauge_step(words)).map_err(Failure::input)?;
    let subject = SubjectView {
        unit: None,
        haul: haul.name.clone(),
        combination: haul.combination.name.clone(),
        chain_state: None,
        with_unapproved: false,
    };
    Ok(NowTableDocument::new(haul, subject, "not-known", &rows))
}
