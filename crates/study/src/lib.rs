//! Use cases: a survey opened, its hauls planned, a planned haul simulated, a plan issued.
//!
//! The parts below know nothing of each other; here they are joined, on as many threads
//! as there are, with results in the order of the survey whatever finishes first.

mod assess;
mod issue;
#[cfg(feature = "logs")]
pub mod make;
#[cfg(feature = "logs")]
mod on_route;
mod open;
mod planned_for;
mod planning;
pub mod practice;
mod requests;
mod road;
mod route_track;
mod search;
mod series;
mod simulation;
mod threads;
mod trial;

pub use assess::{Assessed, assess};
pub use issue::{
    Change, FileChange, Hash, InForce, InputFile, IssueError, IssueTerms, Issued, IssuedFault,
    IssuedPlan, IssuedProblem, StaleCause, Staleness, in_force, issue, issued, issued_problems,
    registered, stale,
};
#[cfg(feature = "logs")]
pub use on_route::{HaulRoute, OnRouteError};
pub use open::{OpenError, Opened};
pub use planned_for::{MeasuredOn, PlannedFor, driven_by, units_of};
pub use planning::{Planned, PlanningError, plan_hauls};
pub use requests::{ApprovalRequest, HaulLines, approval_requests};
pub use road::{Named, NamedError, haul_of, haul_with_rungs};
pub use route_track::route_track;
pub use search::{Searched, TermCosts, best_hauls};
pub use series::{Column, Series, SeriesError, Window};
pub use simulation::{Simulated, SimulationError, sample_cycles, simulate};
pub use threads::Threads;
pub use trial::{Called, MovedCall, Trial, Tried, WhatIf, WhatIfError, try_out};
