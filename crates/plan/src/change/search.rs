//! The latest place where a change may be ordered.

use haul::{CappedStretch, Course, StepperError, Target};
use model::haul_cycle::HaulCycle;
use quantity::Length;

use super::run::{Approach, Attempt, Run};

/// How close the bisection goes.
const CLOSE: f64 = 1.0; // m

/// A stretch on which a change may be ordered, and by whose end it must be complete.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Open {
    pub from: Length,
    pub to: Length,
}

/// The latest start in the open stretches from which the change is complete in time and
/// `permits` agrees; stretches are tried from the last to the first.
///
/// An earlier start leaves more time for everything, so bisection over the whole simulation
/// finds the latest one.
pub(super) fn latest(
    run: &Run<'_>,
    approach: &Approach,
    to: Target,
    open: &[Open],
    caps: &dyn Fn(Length) -> Vec<CappedStretch>,
    permits: &dyn Fn(&Attempt) -> Result<bool, StepperError>,
) -> Result<Option<Attempt>, StepperError> {
    let good = |attempt: &Attempt, end: Length| -> Result<bool, StepperError> {
        Ok(attempt.complete.is_some_and(|place| place <= end) && permits(attempt)?)
    };
    for stretch in open.iter().rev() {
        let at = |start: Length| run.attempt(approach, start, to, &caps(start));
        let mut best = at(stretch.from)?;
        if !good(&best, stretch.to)? {
            continue;
        }
        let (mut early, mut late) = (stretch.from, stretch.to);
        // The first guess is the road the change took, which usually closes the bracket at once.
        let taken = best.complete.map_or(Length::ZERO, |place| place - best.start);
        let mut guess = (stretch.to - taken * 1.15).max(early);
        while late - early > Length::from_m(CLOSE) {
            let middle =
                if guess > early && guess < late { guess } else { early + (late - early) / 2.0 };
            guess = Length::ZERO;
            let attempt = at(middle)?;
            if good(&attempt, stretch.to)? {
                early = middle;
                best = attempt;
            } else {
                late = middle;
            }
        }
        return Ok(Some(best));
    }
    Ok(None)
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
