//! What the plan asks at a place, looked up instead of searched for.

use quantity::Length;

use crate::{LimitsError, LimitsGiven};

/// No change asks anything here.
pub(crate) const NO_CHANGE: u16 = u16::MAX;
/// Length of a place.
const STEP_M: f64 = 10.0;
/// Longest route, m.
const LONGEST_M: f64 = 5e6;

/// What a place asks for in one load state.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Place {
    /// Index of the change that must be complete here.
    pub change: u16,
    /// Whether nothing may be filled here.
    pub closed: bool,
}

/// The route in places of ten meters, load state by load state.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Places {
    places: Vec<Place>,
    each: usize,
}

impl Places {
    pub fn new(given: &LimitsGiven) -> Result<Self, LimitsError> {
        if given.route.as_m() > LONGEST_M {
            return Err(LimitsError::TooLong { length: given.route });
        }
        let each = index(given.route.as_m().max(0.0)) + 1;
        let nothing = Place { change: NO_CHANGE, closed: false };
        let mut places = vec![nothing; each * given.load_states.len()];
        let margin = given.tolerance.place;
        let mut mark = |load_state: usize, a: Length, b: Length, what: &dyn Fn(&mut Place)| {
            // Both ends draw in by the tolerance of a position.
            let (from, to) = (a.min(b) + margin, a.max(b) - margin);
            for (at, place) in places[load_state * each..][..each].iter_mut().enumerate() {
                let middle = Length::from_m((at as f64 + 0.5) * STEP_M);
                if middle >= from && middle <= to {
                    what(place);
                }
            }
        };
        for (number, change) in given.changes.iter().enumerate() {
            let number = u16::try_from(number).unwrap_or(NO_CHANGE);
            mark(change.load_state, change.reach_by, change.until, &|place| place.change = number);
        }
        for closed in &given.closed {
            mark(closed.load_state, closed.from, closed.to, &|place| place.closed = true);
        }
        Ok(Self { places, each })
    }

    /// The place at a chainage; off the route nothing is asked.
    #[inline]
    pub fn at(&self, load_state: usize, km: f64) -> Place {
        let m = km * 1000.0;
        let off = Place { change: NO_CHANGE, closed: false };
        if !(0.0..LONGEST_M).contains(&m) {
            return off;
        }
        let at = index(m);
        if at >= self.each { off } else { self.places[load_state * self.each + at] }
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "lengths are checked to lie between zero and the longest route"
)]
fn index(m: f64) -> usize {
    (m / STEP_M) as usize
}
