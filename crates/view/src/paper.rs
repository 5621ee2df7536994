//! What documents for paper are made from: a plan with its route, gauge table and set-up.

use model::haul_cycle::HaulCycle;
use plan::Detail;
use plan::now::{Call, Load, Trailer, Warmth, card};
use plan::yard::yard_changes;
use quantity::PressureDifference;
use study::{
    IssuedPlan, Opened, Planned, PlanningError, approval_requests, driven_by, haul_with_rungs,
    plan_hauls, stale, units_of,
};
use survey::Survey;

use crate::{
    NowTableDocument, PlanView, RequestsDocument, RouteView, SetupView, SubjectView, frozen,
};

/// Under which number a plan was issued.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperIssue {
    /// Name of the plan: haul and number.
    pub id: String,
    /// Day of issue.
    pub date: String,
    /// Units it is assigned to.
    pub units: Vec<String>,
}

/// What a document needs beyond the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PaperWants {
    /// Steps that a gauge in the reader's unit shows.
    pub gauge_step: PressureDifference,
    /// Whether changes in the yard are simulated.
    pub yard_changes: bool,
    /// Whether what there is to ask the tire makers is gathered.
    pub requests: bool,
}

/// Everything a document may need.
#[derive(Debug, Clone, PartialEq)]
pub struct PaperMaterial {
    /// The plan.
    pub plan: PlanView,
    /// Its number and day; `None` for a draft.
    pub issue: Option<PaperIssue>,
    /// Person who answers for it.
    pub responsible: String,
    /// The route.
    pub route: RouteView,
    /// Highest speeds over gauge readings.
    pub gauge: NowTableDocument,
    /// What is fitted.
    pub setup: SetupView,
    /// What to ask the tire makers.
    pub requests: Option<RequestsDocument>,
}

/// Why there is nothing to make a document from.
#[derive(Debug, thiserror::Error)]
pub enum PaperMaterialError {
    /// The survey changed since the plan was issued.
    #[error(
        "plan {id} was left behind by the survey ({changed}); issue the haul again, and print that"
    )]
    LeftBehind {
        /// The plan.
        id: String,
        /// What changed.
        changed: String,
    },
    /// An issued plan that cannot be read.
    #[error("plan {id} cannot be read: {why}")]
    Unreadable {
        /// The plan.
        id: String,
        /// Why.
        why: String,
    },
    /// The haul cannot be planned.
    #[error(transparent)]
    Planning(#[from] PlanningError),
    /// Units that cannot drive it.
    #[error(transparent)]
    Units(#[from] study::NamedError),
    /// The gauge table cannot be made.
    #[error(transparent)]
    Gauge(#[from] plan::now::CallError),
    /// Changes in the yard cannot be simulated.
    #[error("changes in the yard: {0}")]
    Yard(String),
}

impl PaperMaterial {
    /// Of the plan as the survey stands: a draft.
    ///
    /// # Errors
    /// [`PaperMaterialError`] where the haul gives no table or no changes.
    pub fn of_draft(
        survey: &Survey,
        planned: &Planned,
        wants: PaperWants,
    ) -> Result<Self, PaperMaterialError> {
        let one = std::slice::from_ref(planned);
        let requests = || RequestsDocument::new(survey, &approval_requests(survey, one));
        Ok(Self {
            plan: PlanView::from(planned),
            issue: None,
            responsible: survey.responsible.clone(),
            route: RouteView::from(&planned.haul),
            gauge: gauge(&planned.haul, survey, wants.gauge_step)?,
            setup: setup(&planned.haul, survey, &[], wants)?,
            requests: wants.requests.then(requests),
        })
    }

    /// Of an issued plan. Route, gauge table and set-up come from the survey, which must not have
    /// left it behind.
    ///
    /// # Errors
    /// [`PaperMaterialError`] for a plan left behind or broken.
    pub fn of_issued(
        opened: &Opened,
        survey: &Survey,
        plan: &IssuedPlan,
        wants: PaperWants,
    ) -> Result<Self, PaperMaterialError> {
        let standing = stale(opened, std::slice::from_ref(plan));
        if let Some(standing) = standing.first().filter(|standing| standing.cause.is_some()) {
            let files: Vec<&str> = standing.changes.iter().map(|file| &*file.path).collect();
            let none = files.is_empty();
            let changed = if none { "an approval or permit".to_owned() } else { files.join(", ") };
            return Err(PaperMaterialError::LeftBehind { id: plan.id.clone(), changed });
        }
        let unreadable = |why: String| PaperMaterialError::Unreadable { id: plan.id.clone(), why };
        let found = frozen(plan).map_err(|error| unreadable(error.to_string()))?;
        let view = found.plan.plans.into_iter().next();
        let haul = haul_with_rungs(survey, &plan.haul)?;
        let requests = || -> Result<RequestsDocument, PlanningError> {
            let detail = Detail { samples: 0, ..Detail::default() };
            let planned = plan_hauls(survey, Some(&plan.haul), &detail)?;
            Ok(RequestsDocument::new(survey, &approval_requests(survey, &planned)))
        };
        Ok(Self {
            plan: view.ok_or_else(|| unreadable("it holds no plan document".to_owned()))?,
            issue: Some(PaperIssue {
                id: plan.id.clone(),
                date: plan.date.to_string(),
                units: plan.units.clone(),
            }),
            responsible: plan.responsible.clone(),
            route: RouteView::from(&haul),
            gauge: gauge(&haul, survey, wants.gauge_step)?,
            setup: setup(&haul, survey, &plan.units, wants)?,
            requests: wants.requests.then(requests).transpose()?,
        })
    }
}

/// What is fitted; changes in the yard are simulated where a record asks for their times.
fn setup(
    haul: &HaulCycle,
    survey: &Survey,
    assigned: &[String],
    wants: PaperWants,
) -> Result<SetupView, PaperMaterialError> {
    let units = units_of(survey, &haul.name, assigned);
    if !wants.yard_changes {
        return Ok(SetupView::new(haul, &units, &[]));
    }
    // Units have the air that was measured on them, not that of their types.
    let driven = driven_by(survey, assigned)?;
    let haul = &haul_with_rungs(&driven, &haul.name)?;
    let (ladder, _) = plan::Ladder::of(haul).map_err(|why| yard(&why))?;
    let changes = yard_changes(haul, &ladder, &Detail::default()).map_err(|why| yard(&why))?;
    Ok(SetupView::new(haul, &units, &changes))
}

fn yard(why: &dyn std::fmt::Display) -> PaperMaterialError {
    PaperMaterialError::Yard(why.to_string())
}

/// Highest speeds over gauge readings, for tires of which nobody knows how warm they are.
fn gauge(
    haul: &HaulCycle,
    survey: &Survey,
    step: PressureDifference,
) -> Result<NowTableDocument, PaperMaterialError> {
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
    let rows = card(haul, &call, Warmth::NotKnown, step)?;
    let subject = SubjectView {
        unit: None,
        haul: haul.name.clone(),
        combination: haul.combination.name.clone(),
        chain_state: None,
        with_unapproved: false,
    };
    Ok(NowTableDocument::new(haul, subject, "not-known", &rows))
}
