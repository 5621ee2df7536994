//! Results as documents: the one place where output keys exist.
//!
//! Every key carries its unit, every document its `schema` with a number. Within a number
//! keys are only added. Words for people are not here: kinds are short identifiers that
//! `language` knows the words for.

mod cycles;
mod issued;
mod plan;
mod problems;
mod requests;
mod run;

pub use cycles::{CycleSpreadView, SampledCycleView, TenthsView};
pub use issued::{FrozenPlan, InForceView, IssuedPlanView, PlansDocument, StaleFileView, frozen};
pub use plan::{
    AxleGroupView, CautionView, CellView, ChangePointView, ConsequenceView, CycleView,
    FixedGroupView, LadderSearchView, LadenOptionView, LimitView, MorningView, PhaseView,
    PlanDocument, PlanView, PricesView, RungView, StackView, TermCostsView, TermsView, WayView,
};
pub use problems::{CheckDocument, ProblemView};
pub use requests::{AskedHaulView, AskedLineView, RequestView, RequestsDocument};
pub use run::{LegView, MarkView, RunView, SampleView, run_view};
