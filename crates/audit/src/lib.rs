//! Whether a drive kept the plan in force: rules over columns of one row a second.
//!
//! [`feed`] takes the next rows of a unit and hands every finding to a sink as soon as it is over;
//! [`State`] carries what the rules remember from row to row, so a log may come in pieces of any
//! size, day after day, with the same findings. Rules are in [`rules`], one file each; what they
//! hold a drive to are the [`Limits`] of a plan.
//!
//! A value that is absent, in error, stale or never sent is unknown. Unknown is never a pass: the
//! seconds a rule could not judge are counted in [`Coverage`]. Where only the temperature of the
//! tire air is unknown a pressure lies between two cold ones, and a rule speaks only where both
//! ends say the same.

mod columns;
mod coverage;
mod episode;
mod finding;
mod limits;
mod places;
mod rows;
pub mod rules;
mod state;

pub use columns::{ChannelColumns, Column, Columns, ColumnsError, LoadColumn};
pub use coverage::{Coverage, Judged};
pub use finding::{Evidence, Finding, Severity, Sink};
pub use limits::{
    CellLimit, ChangeLimit, ChangeTo, ClosedStretch, Hold, Limits, LimitsError, LimitsGiven,
    LoadLimit, RungLimit, Site, Tolerance,
};
pub use rules::{Memory, Rule};
pub use state::State;

/// Most air channels of a combination.
pub const MAX_CHANNELS: usize = 12;
/// Most rungs of a ladder.
pub const MAX_RUNGS: usize = 16;

/// Judges the next rows of a unit.
///
/// # Errors
/// [`ColumnsError`] for columns of unequal length, or not as many channels as the limits have;
/// nothing is judged then.
pub fn feed(
    state: &mut State,
    columns: &Columns<'_>,
    limits: &Limits,
    sink: &mut impl Sink,
) -> Result<(), ColumnsError> {
    state.feed(columns, limits, sink)
}

/// Ends the log: findings still open are handed over.
pub fn finish(state: &mut State, limits: &Limits, sink: &mut impl Sink) {
    state.finish(limits, sink);
}
