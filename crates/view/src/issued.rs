//! Issued plans: the frozen document typed, and the list of them, `airtide.plans/1`.

use model::date::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::{Change, InForce, Issued, IssuedPlan, IssuedProblem, StaleCause, Staleness, in_force};

use crate::{PlanDocument, ProblemView};

/// An issued plan with its plan document.
pub type FrozenPlan = IssuedPlan<PlanDocument>;

/// Reads the plan document of an issued plan.
///
/// # Errors
/// What the reader says where it is no plan document of this number.
pub fn frozen(plan: &IssuedPlan) -> Result<FrozenPlan, serde_json::Error> {
    serde_json::from_value(serde_json::to_value(plan)?)
}

/// The issued plans of a survey.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlansDocument {
    /// `airtide.plans/1`.
    pub schema: String,
    /// The day that `in_force_for` and `stale` are told for.
    pub date: String,
    /// All of them, by haul and number; with a unit asked for, those assigned to it.
    pub plans: Vec<IssuedPlanView>,
    /// What the unit asked for drives by; `null` without a unit.
    pub in_force: Option<InForceView>,
    /// What is wrong with issued plans.
    pub problems: Vec<ProblemView>,
}

/// One issued plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct IssuedPlanView {
    /// Name of its file without folder and ending.
    pub id: String,
    /// Number among the plans of its haul.
    pub number: u32,
    /// Day of issue.
    pub date: String,
    /// Person who answers for it.
    pub responsible: String,
    /// Haul.
    pub haul: String,
    /// Combination.
    pub combination: String,
    /// Units it is assigned to.
    pub units: Vec<String>,
    /// First day.
    pub valid_from: String,
    /// Last day; `null` until another is issued.
    pub valid_until: Option<String>,
    /// Units that drive by it on the day asked about.
    pub in_force_for: Vec<String>,
    /// Whether the survey has left it behind.
    pub stale: bool,
    /// Why: `values`, `cannot tell` or `approval or permit lapsed`.
    pub stale_cause: Option<String>,
    /// Files that are not as they were, even where that changes nothing for the plan.
    pub changed_files: Vec<StaleFileView>,
}

/// A survey file that is not as it was when a plan was issued.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct StaleFileView {
    /// Path in the survey.
    pub file: String,
    /// `changed`, `comments only`, `added` or `removed`.
    pub change: String,
}

/// What one unit drives by.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct InForceView {
    /// Its fleet number.
    pub unit: String,
    /// The plan, if there is exactly one; its document where it can be read.
    pub plan: Option<FrozenPlan>,
    /// Names of two plans that both claim the unit; none drives by either until that is settled.
    pub disputed: Vec<String>,
}

impl PlansDocument {
    /// Makes the document for a day, and for one unit if asked.
    ///
    /// # Errors
    /// What the reader says where the plan in force holds no plan document of this number.
    pub fn new(
        issued: &Issued,
        staleness: &[Staleness],
        problems: &[IssuedProblem],
        unit: Option<&str>,
        day: Date,
    ) -> Result<Self, serde_json::Error> {
        let plans = &issued.plans;
        let asked = |plan: &IssuedPlan| {
            unit.is_none_or(|unit| plan.units.iter().any(|assigned| assigned == unit))
        };
        Ok(Self {
            schema: "airtide.plans/1".to_owned(),
            date: day.to_string(),
            plans: plans
                .iter()
                .zip(staleness)
                .filter(|(plan, _)| asked(plan))
                .map(|(plan, staleness)| plan_view(plan, staleness, plans, day))
                .collect(),
            in_force: unit.map(|unit| in_force_view(plans, unit, day)).transpose()?,
            problems: problems.iter().map(ProblemView::from).collect(),
        })
    }
}

fn plan_view(
    plan: &IssuedPlan,
    staleness: &Staleness,
    plans: &[IssuedPlan],
    day: Date,
) -> IssuedPlanView {
    let holds = |unit: &&String| in_force(plans, unit, day).holds(plan);
    IssuedPlanView {
        id: plan.id.clone(),
        number: plan.number,
        date: plan.date.to_string(),
        responsible: plan.responsible.clone(),
        haul: plan.haul.clone(),
        combination: plan.combination.clone(),
        units: plan.units.clone(),
        valid_from: plan.valid_from.to_string(),
        valid_until: plan.valid_until.map(|day| day.to_string()),
        in_force_for: plan.units.iter().filter(holds).cloned().collect(),
        stale: staleness.cause.is_some(),
        stale_cause: staleness.cause.map(|cause| cause_name(cause).to_owned()),
        changed_files: staleness
            .changes
            .iter()
            .map(|file| StaleFileView {
                file: file.path.clone(),
                change: change_name(file.change).to_owned(),
            })
            .collect(),
    }
}

fn cause_name(cause: StaleCause) -> &'static str {
    match cause {
        StaleCause::Values => "values",
        StaleCause::CannotTell => "cannot tell",
        StaleCause::BasisLapsed => "approval or permit lapsed",
    }
}

fn change_name(change: Change) -> &'static str {
    match change {
        Change::Changed => "changed",
        Change::CommentsOnly => "comments only",
        Change::Added => "added",
        Change::Removed => "removed",
    }
}

fn in_force_view(
    plans: &[IssuedPlan],
    unit: &str,
    day: Date,
) -> Result<InForceView, serde_json::Error> {
    let (plan, disputed) = match in_force(plans, unit, day) {
        InForce::None => (None, Vec::new()),
        InForce::One(plan) => (Some(frozen(plan)?), Vec::new()),
        InForce::Two(one, other) => (None, vec![one.id.clone(), other.id.clone()]),
    };
    Ok(InForceView { unit: unit.to_owned(), plan, disputed })
}
