//! What a plan does, against other ways to run.

mod band;
mod depth;
mod leg;
mod missing;
mod total;
mod trial;

pub use band::{BandView, NotAssessedView};
pub use depth::{StressPointView, StressProfileView};
pub use leg::{
    GradeView, GroupEffectView, LegEffectsView, LegWayView, MeansView, NarrowsView, SoilSpreadView,
    SpreadView,
};
pub use missing::MissingInputView;
pub use total::{EffectSourceView, EffectTotalView, GroupHeatView};
pub use trial::TrialView;

pub(super) use band::Lacking;
pub(super) use depth::profile;
pub(super) use leg::{leg, way_name};
pub(super) use missing::missing;
pub(super) use total::{sources, total};
pub(super) use trial::trial;
