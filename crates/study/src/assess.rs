//! What a plan does and what it costs, worked out when somebody asks.

use plan::Detail;
use plan::cost::Costs;
use plan::effect::{Effects, Finding};

use crate::Planned;
use crate::threads::Threads;

/// Effects of a plan, and its cost where the haul tells money.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessed {
    /// Effects on ground, road, tires and people, against other ways to run.
    pub effects: Effects,
    /// Cost by payer, or what must be told first.
    pub costs: Finding<Costs>,
}

/// Works out effects and cost of a plan, on all threads.
///
/// Planning does without: a call from the road or a simulation never asks for them.
pub fn assess(planned: &Planned, detail: &Detail) -> Assessed {
    let effects = Effects::of(&planned.haul, &planned.plan, detail, &Threads);
    let costs = Costs::of(&planned.haul, &effects);
    Assessed { effects, costs }
}
