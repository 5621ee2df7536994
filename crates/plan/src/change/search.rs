//! The latest place where a change may be ordered.

use haul::{CappedStretch, Course, StepperError, Target};
use model::haul_cycle::HaulCycle;
use quantity::Length;

use super::point::Refusal;
use super::run::{Approach, Attempt, Run};

/// How close the bisection goes.
const CLOSE: f64 = 1.0; // m

/// Starts guessed from the road that changes take, before the bracket is halved.
const GUESSES: u32 = 6;

/// A stretch on which a change may be ordered, and by whose end it must be complete.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Open {
    pub from: Length,
    pub to: Length,
}

/// What a search for the latest start found.
pub(super) enum Found {
    /// The latest start that is complete in time and permitted.
    Start(Box<Attempt>),
    /// Complete in time from here, but not permitted from anywhere.
    NotPermitted(Refusal),
    /// Complete in time from nowhere.
    TooShort,
}

/// Starts tried, evenly over a stretch, where the latest complete one is not permitted.
const TRIES: u32 = 12;

/// The latest start in the open stretches from which the change is complete in time and nothing
/// refuses it; stretches are tried from the last to the first.
///
/// An earlier start is complete earlier, so bisection over the whole simulation finds the latest
/// that is complete in time. What refuses a change need not grow with the start: there the
/// stretch is tried piece by piece, and bisection closes on the latest piece permitted.
pub(super) fn latest(
    run: &Run<'_>,
    approach: &Approach,
    to: Target,
    open: &[Open],
    caps: &dyn Fn(Length) -> Vec<CappedStretch>,
    refuses: &dyn Fn(&Attempt) -> Result<Option<Refusal>, StepperError>,
) -> Result<Found, StepperError> {
    let at = |start: Length| run.attempt(approach, start, to, &caps(start));
    let mut refusal = None;
    for stretch in open.iter().rev() {
        let in_time = |attempt: &Attempt| attempt.complete.is_some_and(|place| place <= stretch.to);
        let first = at(stretch.from)?;
        if !in_time(&first) {
            continue;
        }
        let last = bisect(&at, &first, stretch.to, &|attempt| Ok(in_time(attempt)))?;
        let Some(why) = refuses(&last)? else { return Ok(Found::Start(Box::new(last))) };
        refusal = Some(why);
        let good = |attempt: &Attempt| Ok(in_time(attempt) && refuses(attempt)?.is_none());
        for step in (0..TRIES).rev() {
            let share = f64::from(step) / f64::from(TRIES);
            let early = at(stretch.from + (last.start - stretch.from) * share)?;
            if good(&early)? {
                let late = stretch.from
                    + (last.start - stretch.from) * (f64::from(step + 1) / f64::from(TRIES));
                return Ok(Found::Start(Box::new(bisect(&at, &early, late, &good)?)));
            }
        }
    }
    Ok(refusal.map_or(Found::TooShort, Found::NotPermitted))
}

/// The latest good start between a good one and an end, closed on to [`CLOSE`].
///
/// The road a change takes differs little from start to start: as far as a change is complete before
/// the end or after it, so far later or earlier the next one starts. Where that leaves the bracket or
/// is not what refuses, the bracket is halved.
fn bisect(
    at: &dyn Fn(Length) -> Result<Attempt, StepperError>,
    first: &Attempt,
    end: Length,
    good: &dyn Fn(&Attempt) -> Result<bool, StepperError>,
) -> Result<Attempt, StepperError> {
    let close = Length::from_m(CLOSE);
    let spare = |attempt: &Attempt| attempt.complete.map(|place| end - place);
    let mut best = first.clone();
    let (mut early, mut late) = (first.start, end);
    // The first guess leaves a margin, for on most roads the change takes longer further on.
    let taken = first.complete.map_or(Length::ZERO, |place| place - first.start);
    let mut guess = Some(end - taken * 1.15);
    let mut guesses = 0;
    while late - early > close {
        let inside = guess.take().filter(|guess| *guess > early && *guess < late);
        let middle = inside.unwrap_or_else(|| early + (late - early) / 2.0);
        let attempt = at(middle)?;
        let spare = spare(&attempt);
        let is_good = good(&attempt)?;
        if is_good {
            early = middle;
            best = attempt;
        } else {
            late = middle;
        }
        guesses += 1;
        // A guess that no longer closes in is given up for halving.
        guess = spare.filter(|_| guesses < GUESSES).map(|spare| {
            let nearer = if is_good {
                spare.max(close * 0.9)
            } else {
                spare.min(Length::ZERO) - close * 0.5
            };
            middle + nearer
        });
    }
    Ok(best)
}

/// Where no raise may be under way: sustained descents with their approach, and legs that forbid it.
pub(super) fn closed_to_raising(haul: &HaulCycle, course: &Course) -> Vec<(Length, Length)> {
    let descents = course.descents().iter().map(|descent| (descent.closed_from, descent.foot));
    let forbidden = haul.route.legs.iter().filter(|leg| !leg.raising_allowed).map(|leg| {
        let (a, b) = (course.chainage(leg.from), course.chainage(leg.to));
        (a.min(b), a.max(b))
    });
    descents.chain(forbidden).collect()
}

/// What is left of a stretch when closed stretches are taken out of it.
pub(super) fn open_stretches(from: Length, to: Length, closed: &[(Length, Length)]) -> Vec<Open> {
    let long_enough = |stretch: &Open| stretch.to - stretch.from > Length::from_m(CLOSE);
    let mut open: Vec<Open> = Some(Open { from, to }).into_iter().filter(long_enough).collect();
    for &(a, b) in closed {
        open = open
            .into_iter()
            .flat_map(|stretch| {
                let before = Open { from: stretch.from, to: stretch.to.min(a) };
                let after = Open { from: stretch.from.max(b), to: stretch.to };
                [before, after]
            })
            .filter(long_enough)
            .collect();
    }
    open.sort_by(|a, b| a.from.total_cmp(&b.from));
    open.dedup();
    open
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn closed_stretches_are_cut_out() {
        let m = Length::from_m;
        let open =
            open_stretches(m(0.0), m(1000.0), &[(m(200.0), m(300.0)), (m(900.0), m(1200.0))]);
        let bounds: Vec<_> = open.iter().map(|o| (o.from.as_m(), o.to.as_m())).collect();
        assert_eq!(bounds, vec![(0.0, 200.0), (300.0, 900.0)]);
    }

    #[test]
    fn nothing_is_left_when_all_is_closed() {
        let m = Length::from_m;
        assert!(open_stretches(m(0.0), m(100.0), &[(m(0.0), m(500.0))]).is_empty());
        assert!(open_stretches(m(500.0), m(100.0), &[]).is_empty());
    }
}
