//! A planned haul driven with everything recorded.

use haul::{Cycle, Trace};
use plan::cycles::CycleSpread;
use plan::{Detail, NotDriven};
use quantity::Time;

use crate::Planned;
use crate::threads::Threads;

/// A haul as driven, sample by sample.
#[derive(Debug, Clone)]
pub struct Simulated {
    /// The parts of the cycle.
    pub cycle: Cycle,
    /// The samples.
    pub trace: Trace,
}

/// Why a haul could not be simulated.
#[derive(Debug, thiserror::Error)]
pub enum SimulationError {
    /// The plan itself says why.
    #[error("haul '{haul}' cannot be driven: {why}")]
    NotDriven {
        /// The haul.
        haul: String,
        /// The plan's reason.
        why: NotDriven,
    },
}

/// Drives a planned haul many times, each with its own truck and day, on all threads.
///
/// # Errors
/// [`SimulationError`] where the plan could not be driven.
pub fn sample_cycles(
    planned: &Planned,
    samples: usize,
    detail: &Detail,
) -> Result<CycleSpread, SimulationError> {
    let failed =
        |why: NotDriven| SimulationError::NotDriven { haul: planned.haul.name.clone(), why };
    let driven = planned.plan.driven.as_ref().map_err(|why| failed(why.clone()))?;
    plan::cycles::sample_cycles(
        &planned.haul,
        &planned.plan.ladder,
        driven,
        detail,
        samples,
        &Threads,
    )
    .map_err(failed)
}

/// Drives a planned haul again, keeping a sample every so often.
///
/// # Errors
/// [`SimulationError`] where the plan could not be driven.
pub fn simulate(
    planned: &Planned,
    every: Time,
    detail: &Detail,
) -> Result<Simulated, SimulationError> {
    let failed =
        |why: NotDriven| SimulationError::NotDriven { haul: planned.haul.name.clone(), why };
    let driven = planned.plan.driven.as_ref().map_err(|why| failed(why.clone()))?;
    let mut trace = Trace::every(every);
    let cycle =
        plan::simulate(&planned.haul, &planned.plan.ladder, &driven.plan, detail, &mut trace)
            .map_err(failed)?;
    Ok(Simulated { cycle, trace })
}
