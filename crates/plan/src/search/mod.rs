//! The best ladder: which speed caps to store, and which of them each leg is run on.
//!
//! The road is cut into legs, the caps into steps; what each leg costs at each cap and each
//! change between two caps is worked out beforehand. On that discretised problem the answer is
//! exact: a subset of caps, shared by laden and empty, at least total cost. The winner is then
//! planned and simulated whole like any other ladder.

mod best;
mod discretise;
mod problem;
mod solve;

pub use best::{BestLadder, SearchError, Wanted, best_ladder};
pub use discretise::{Candidates, DiscretiseError, Discretised, discretise};
pub use problem::{LadderProblem, RunProblem, Terms, Weights};
pub use solve::{Ladders, Solution, solve};
