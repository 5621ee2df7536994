//! The plan document, `airtide.plan/1`.

mod build;
mod caution;
mod change;
mod cost;
mod effect;
mod ladder;
mod measured;
mod search;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

pub(crate) use ladder::{approval, group_name, impossible, maximum_name, minimum_name};

pub use caution::CautionView;
pub use change::{
    ChangePointView, ConsequenceView, CycleView, LadenOptionView, PhaseView, WayView,
};
pub use cost::{CostLineView, CostView, DecidesView, RivalCostView, RivalLineView};
pub use effect::{
    BandView, EffectSourceView, EffectTotalView, GradeView, GroupEffectView, GroupHeatView,
    LegEffectsView, LegWayView, MeansView, MissingInputView, NarrowsView, NotAssessedView,
    SoilSpreadView, SpreadView, StressPointView, StressProfileView, TrialView,
};
pub use ladder::{
    AxleGroupView, CellView, FixedGroupView, LimitView, MorningView, RungView, StackView,
};
pub use measured::MeasuredView;
pub use search::{LadderSearchView, PricesView, TermCostsView, TermsView};

/// The plans of the hauls of a survey.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlanDocument {
    /// `airtide.plan/1`.
    pub schema: String,
    /// One for each haul, in the order of the survey.
    pub plans: Vec<PlanView>,
}

/// The plan of one haul.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlanView {
    /// Haul.
    pub haul: String,
    /// Combination.
    pub combination: String,
    /// Route.
    pub route: String,
    /// Length of the route.
    pub route_km: f64,
    /// Which way the load goes: `forward` or `backward` along the chainage.
    pub laden_direction: String,
    /// Fleet numbers of the units it is made for; empty where it is made for the types.
    #[serde(default)]
    pub units: Vec<String>,
    /// What was measured on units and is slower than their types.
    #[serde(default)]
    pub measured: Vec<MeasuredView>,
    /// Load state of the run to loading.
    pub empty_state: String,
    /// Load state of the run from loading.
    pub laden_state: String,
    /// Whether the plan must not be driven as it stands.
    pub breaks_a_limit: bool,
    /// Temperature that cold pressures are named at.
    pub reference_temperature_c: f64,
    /// Coldest and warmest ambient the plan stands.
    pub coldest_c: f64,
    /// Warmest.
    pub warmest_c: f64,
    /// Unit the controller works in: `kPa`, `psi` or `bar`.
    pub controller_unit: String,
    /// Air channels.
    pub channels: Vec<String>,
    /// Axle groups.
    pub axle_groups: Vec<AxleGroupView>,
    /// Rungs, slowest first.
    pub rungs: Vec<RungView>,
    /// Cells by load state, chain state, rung and channel.
    pub ladder: Vec<CellView>,
    /// How the ladder was found; `null` where the survey gave it.
    pub ladder_search: Option<LadderSearchView>,
    /// Groups at a fixed pressure.
    pub fixed_groups: Vec<FixedGroupView>,
    /// Channels on the morning after, parked on the lowest rung.
    pub morning_after: Vec<MorningView>,
    /// Change points, empty run first, in the order of travel.
    pub change_points: Vec<ChangePointView>,
    /// Ways to go from the empty to the laden pressures; one is chosen.
    pub laden_change: Vec<LadenOptionView>,
    /// The cycle; `null` where the haul cannot be driven.
    pub cycle: Option<CycleView>,
    /// Effects by leg and run, against other ways to run.
    pub effects: Vec<LegEffectsView>,
    /// The same over the whole haul, by way, the plan first.
    #[serde(default)]
    pub effect_totals: Vec<EffectTotalView>,
    /// Stress over depth under the laden truck, on the leg where the plan changes the patch most.
    #[serde(default)]
    pub stress_profiles: Vec<StressProfileView>,
    /// Sources of the effects.
    #[serde(default)]
    pub effect_sources: Vec<EffectSourceView>,
    /// Trials on such ground, those that found nothing among them.
    #[serde(default)]
    pub trials: Vec<TrialView>,
    /// What the survey does not tell and an effect or a cost asks for.
    #[serde(default)]
    pub missing_inputs: Vec<MissingInputView>,
    /// Cost by payer, all together last; empty where the haul tells no money.
    pub cost: Vec<CostView>,
    /// What decides the cost of who buys the system, the most first.
    #[serde(default)]
    pub cost_decided_by: Vec<DecidesView>,
    /// Cost of other ways to run, against full pressure.
    #[serde(default)]
    pub cost_rivals: Vec<RivalCostView>,
    /// What people must be told.
    pub cautions: Vec<CautionView>,
}
