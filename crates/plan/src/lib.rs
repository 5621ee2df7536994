//! Decisions: the window of every cell, the ladder, where the driver must call for a change.
//!
//! Nothing here knows a file, a unit to show or a language: results are values, and what
//! must be said to people is an enum with its numbers. Each number keeps what decided it.

pub mod caution;
pub mod change;
pub mod cost;
pub mod cycles;
mod drive;
mod driver;
pub mod effect;
pub mod hold;
pub mod inverse;
pub mod ladder;
pub mod morning;
pub mod now;
pub mod request;
pub mod search;
pub mod sections;
pub mod window;
mod workers;
pub mod yard;

pub use haul::chance;

use haul::DrivingStyle;
use model::haul_cycle::HaulCycle;
use model::tire::cold_warm::ConditionsError;
use quantity::Length;

pub use caution::Caution;
pub use change::{Action, ChangePoint, Consequence, LadenChoice, LadenOption, Stop, Way, WayTaken};
pub use change::{ChangeSpread, Sampled};
pub use drive::{Driven, NotDriven, simulate};
pub use driver::DriverShows;
pub use ladder::Ladder;
pub use morning::MorningAfter;
pub use window::{Approval, Cell, CellId, FixedGroup, Window};
pub use workers::{OneByOne, Workers};

/// How finely a plan is worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Detail {
    /// Longest cell of the road.
    pub cell: Length,
    /// Driving habits assumed.
    pub style: DrivingStyle,
    /// Samples of a change; none leaves only the nominal change.
    pub samples: usize,
}

impl Default for Detail {
    fn default() -> Self {
        Self { cell: Length::from_m(10.0), style: DrivingStyle::default(), samples: 128 }
    }
}

/// Why there is no plan at all.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum PlanError {
    /// Weather outside the gas law's range.
    #[error(transparent)]
    Weather(#[from] ConditionsError),
}

/// A plan for one haul.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// Every cell with its window.
    pub ladder: Ladder,
    /// Groups at a fixed pressure.
    pub fixed: Vec<FixedGroup>,
    /// The morning after.
    pub morning: Vec<MorningAfter>,
    /// Change points and cycle, or why the haul cannot be driven.
    pub driven: Result<Driven, NotDriven>,
    /// What people must be told.
    pub cautions: Vec<Caution>,
}

impl Plan {
    /// Works out the plan of a haul.
    ///
    /// # Errors
    /// [`PlanError`] for weather outside the range of the gas law. Everything else that
    /// cannot be done is part of the plan, with its reason.
    pub fn of(haul: &HaulCycle, detail: &Detail) -> Result<Self, PlanError> {
        Self::with_workers(haul, detail, &OneByOne)
    }

    /// The same, with samples worked by somebody else; the result is the same to the last digit.
    ///
    /// # Errors
    /// As [`Self::of`].
    pub fn with_workers(
        haul: &HaulCycle,
        detail: &Detail,
        workers: &dyn Workers,
    ) -> Result<Self, PlanError> {
        let (ladder, fixed) = Ladder::of(haul)?;
        let morning = morning::after(haul, &ladder)?;
        let driven = drive::drive(haul, &ladder, detail, workers);
        let cautions = caution::gather(haul, &ladder, &fixed, &morning, &driven);
        Ok(Self { ladder, fixed, morning, driven, cautions })
    }

    /// Whether a limit is broken or a lead does not fit: the plan is not ready to be driven.
    pub fn breaks_a_limit(&self) -> bool {
        self.cautions.iter().any(Caution::breaks_a_limit)
    }
}
