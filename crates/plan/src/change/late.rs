//! The driver who calls late, or never.

use haul::CappedStretch;
use quantity::{Length, Time};

use super::point::{Action, Consequence};
use super::run::{Approach, Attempt};
use super::walk::{Change, WalkError};

/// Road behind a change over which times are compared.
const RUN_OUT: f64 = 2000.0; // m

/// What calling `by` later than planned does.
pub(super) fn late(
    change: &Change<'_>,
    approach: &Approach,
    planned: &Attempt,
    by: Length,
    base: &[CappedStretch],
) -> Result<Option<Consequence>, WalkError> {
    let run = change.run;
    let start = planned.start + by;
    if start >= run.course.length() {
        return Ok(None);
    }
    let caps = change.caps_from(base, start);
    let attempt = run.attempt(approach, start, run.target(change.into.rung), &caps)?;
    let end = run.course.length();
    let complete = attempt.complete.unwrap_or(end);
    let compare_at =
        (complete.max(planned.complete.unwrap_or(end)) + Length::from_m(RUN_OUT)).min(end);
    let late_state = run.clock_at(&attempt.end, compare_at, &caps)?;
    let planned_caps = change.caps_from(base, planned.start);
    let planned_state = run.clock_at(&planned.end, compare_at, &planned_caps)?;
    Ok(Some(Consequence {
        time_lost: late_state.clock() - planned_state.clock(),
        wrong_road: (complete - change.into.from).max(Length::ZERO),
        on_descent: change.on_descent(&attempt),
    }))
}

/// What never calling it does, to the end of the section it was meant for.
pub(super) fn never(
    change: &Change<'_>,
    approach: &Approach,
    planned: &Attempt,
    base: &[CappedStretch],
) -> Result<Option<Consequence>, WalkError> {
    let run = change.run;
    let end = change.into.to;
    let planned_caps = change.caps_from(base, planned.start);
    if planned.end.travelled() >= end {
        return Ok(None);
    }
    let planned_state = run.clock_at(&planned.end, end, &planned_caps)?;
    let never_state = run.clock_at(approach.last(), end, base)?;
    let time_lost = match change.action() {
        Action::Raise => never_state.clock() - planned_state.clock(),
        // Hard tires on weak road do not show on the clock; the ground pays.
        Action::Lower => Time::ZERO,
    };
    Ok(Some(Consequence { time_lost, wrong_road: end - change.into.from, on_descent: false }))
}
