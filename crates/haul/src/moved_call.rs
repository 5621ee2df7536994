//! The same cycle with one change called somewhere else.

use quantity::Length;

use crate::{CappedStretch, CyclePlan, PlannedChange};

/// Which of the two runs of a cycle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RunOf {
    /// The run to loading.
    Empty,
    /// The run from loading.
    Laden,
}

/// How near two travel distances of one plan are for them to be one place.
const SAME_PLACE: Length = Length::from_mm(1.0);

impl CyclePlan {
    /// Changes of a run.
    pub fn changes(&self, run: RunOf) -> &[PlannedChange] {
        match run {
            RunOf::Empty => &self.empty,
            RunOf::Laden => &self.laden,
        }
    }

    /// The plan with the change at travel distance `at` of a run called at `to` instead.
    ///
    /// A lower cap holds from where its lowering is called. A change stays between the one before
    /// it and the one after it: nobody calls them in another order.
    #[must_use]
    pub fn called_elsewhere(&self, run: RunOf, at: Length, to: Length) -> Self {
        let mut plan = self.clone();
        let (changes, caps) = match run {
            RunOf::Empty => (&mut plan.empty, &mut plan.empty_caps),
            RunOf::Laden => (&mut plan.laden, &mut plan.laden_caps),
        };
        let here = |place: Length| (place - at).abs() < SAME_PLACE;
        let before =
            changes.iter().map(|change| change.at).filter(|&other| other < at && !here(other));
        let after =
            changes.iter().map(|change| change.at).filter(|&other| other > at && !here(other));
        let lowest = before.fold(Length::ZERO, Length::max);
        let to = after.fold(to, Length::min).max(lowest);
        for change in changes.iter_mut().filter(|change| here(change.at)) {
            change.at = to;
        }
        for cap in caps.iter_mut().filter(|cap| here(cap.from)) {
            *cap = CappedStretch { from: to.min(cap.to), ..*cap };
        }
        plan
    }
}
