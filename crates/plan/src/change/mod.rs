//! Where the driver must start each change, and what else could be done.

mod laden;
mod late;
mod options;
mod point;
mod run;
mod search;
mod spread;
mod sure;
mod walk;

pub(crate) use laden::choose as choose_laden_change;
pub use laden::{LadenChoice, LadenOption};
pub use point::{Action, ChangePoint, Consequence, Refusal, Stop, Way, WayTaken};
pub(crate) use run::Run;
pub(crate) use spread::draw;
pub use spread::{ChangeSpread, Sampled};
pub use walk::KeptLow;
pub(crate) use walk::{Sampling, walk};
