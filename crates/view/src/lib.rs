//! Results as documents: the one place where output keys exist.
//!
//! Every key carries its unit, every document its `schema` with a number. Within a number
//! keys are only added. Words for people are not here: kinds are short identifiers that
//! `language` knows the words for.

mod ask;
mod cycles;
mod finding;
mod issued;
#[cfg(feature = "logs")]
mod logs;
mod now;
mod paper;
mod plan;
mod practice;
mod problems;
mod report;
mod requests;
mod route;
mod run;
mod setup;
mod site;
#[cfg(feature = "logs")]
mod truth;

#[cfg(feature = "logs")]
pub use crate::logs::{
    BadRecordView, IdentificationView, ImportDocument, ImportRouteView, LogFileView, LogGroupView,
    LogSignalView, LogsDocument, LossView, TroubleCodeView,
};
pub use ask::{
    AnswerView, AskDocument, AskedChangeView, CapView, LateCallView, LateView, SupplyView,
};
pub use cycles::{CycleSpreadView, SampledCycleView, TenthsView};
pub use finding::{CoverageView, EvidenceView, FindingView, RuleCoverageView};
pub use issued::{FrozenPlan, InForceView, IssuedPlanView, PlansDocument, StaleFileView, frozen};
pub use now::{
    GroupAnswerView, HowFarView, NowDocument, NowRowView, NowTableDocument, SaidView, SetForView,
    SubjectView,
};
pub use paper::{PaperIssue, PaperMaterial, PaperMaterialError, PaperWants};
pub use plan::{
    AxleGroupView, BandView, CautionView, CellView, ChangePointView, ConsequenceView, CostLineView,
    CostView, CycleView, DecidesView, EffectSourceView, EffectTotalView, FixedGroupView, GradeView,
    GroupEffectView, GroupHeatView, LadderSearchView, LadenOptionView, LegEffectsView, LegWayView,
    LimitView, MeansView, MeasuredView, MissingInputView, MorningView, NarrowsView,
    NotAssessedView, PhaseView, PlanDocument, PlanView, PricesView, RivalCostView, RivalLineView,
    RungView, SoilSpreadView, SpreadView, StackView, StressPointView, StressProfileView,
    TermCostsView, TermsView, TrialView, WayView,
};
pub use practice::{
    ActedView, EventView, PracticeDocument, PriceLineView, TallyView, VerdictDocument,
};
pub use problems::{CheckDocument, ProblemView};
pub use report::ReportDocument;
pub use requests::{AskedHaulView, AskedLineView, RequestView, RequestsDocument};
pub use route::{LegView, MarkView, PermitView, RouteView};
pub use run::{RunView, SampleView, run_view};
pub use setup::{
    AirSupplyView, ControllerView, FittedView, SensorView, SetupView, UnitView, WheelEndView,
    YardChangeView, YardChannelView,
};
pub use site::{
    ActionRequest, AgainRequest, CalledView, ColumnsView, DriveDocument, DriveRequest, EditView,
    ErrorDocument, FileDocument, FileProblemView, FileSaveRequest, FileView, FilesDocument,
    HandSetRequest, HaulNameView, IssueRequest, JudgeRequest, MapDocument, MapPointView,
    MovedRequest, NowRequest, PaperKindView, PapersDocument, ReadingRequest, SeriesDocument,
    SeriesView, SiteDocument, StepRequest, StripView, TrialDocument, TrialRequest, UnitFormView,
    UnitsDocument, WhatIfRequest,
};
#[cfg(feature = "logs")]
pub use truth::{
    ClockStepView, MadeLogView, MadeLogsDocument, SpanView, TruthChangeView, TruthDocument,
    TruthFaultView, TruthPhaseView, TruthTireView, TruthValuesView,
};
