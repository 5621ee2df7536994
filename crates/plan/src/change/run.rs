//! One run of the haul made ready for searching: course, sections, states to resume from.

use haul::{
    CappedStretch, Course, DrivingStyle, Envelope, NoRecord, PlannedChange, State, Stepper,
    StepperError, Target, Truck,
};
use quantity::{GaugePressure, Length, Time};

use crate::sections::Section;

/// Everything about one run that does not change while its change points are sought.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Run<'a> {
    pub truck: &'a Truck,
    pub course: &'a Course,
    /// The same run in longer cells, for samples.
    pub coarse: &'a Course,
    pub sections: &'a [Section],
    pub style: DrivingStyle,
    /// Pressures of this load state are the ones wanted.
    pub load_state: usize,
}

/// Spacing of the states kept for resuming.
const KEEP_EVERY: f64 = 500.0; // m
/// Road within which the truck can slow down from any speed to any cap.
const SLOWING_ROAD: f64 = 1500.0; // m

/// States along the run before a change, close enough to resume near any start.
pub(crate) struct Approach {
    states: Vec<State>,
}

/// How a change went when ordered at one place.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Attempt {
    pub start: Length,
    /// Travel distance where it was complete; `None` if not before the run's end.
    pub complete: Option<Length>,
    pub time: Time,
    pub lowest_supply: GaugePressure,
    pub longest_loaded: Time,
    /// State when it was complete, or at the end of the run.
    pub end: State,
}

impl Run<'_> {
    pub fn target(&self, rung: usize) -> Target {
        Target { rung, load_state: self.load_state }
    }

    pub fn envelope(&self, caps: &[CappedStretch]) -> Envelope {
        Envelope::new(self.course, caps, &self.style)
    }

    /// Drives from `from` to `to` without a change, keeping states on the way.
    pub fn approach(
        &self,
        from: &State,
        to: Length,
        caps: &[CappedStretch],
    ) -> Result<Approach, StepperError> {
        let envelope = self.envelope(caps);
        let stepper = Stepper::new(self.truck, self.course, &envelope, self.style);
        let mut state = from.clone();
        let mut states = vec![state.clone()];
        while state.travelled() < to - Length::from_mm(1.0) {
            let next = (state.travelled() + Length::from_m(KEEP_EVERY)).min(to);
            stepper.drive_to(&mut state, next, &mut NoRecord)?;
            states.push(state.clone());
        }
        Ok(Approach { states })
    }

    /// The state in which the truck comes to `start`.
    pub fn arrive(
        &self,
        approach: &Approach,
        start: Length,
        caps: &[CappedStretch],
    ) -> Result<State, StepperError> {
        let envelope = self.envelope(caps);
        let stepper = Stepper::new(self.truck, self.course, &envelope, self.style);
        let mut state = approach.before(start - Length::from_m(SLOWING_ROAD)).clone();
        stepper.drive_to(&mut state, start, &mut NoRecord)?;
        Ok(state)
    }

    /// Orders a change at `start`, having resumed from the approach, and drives until it is
    /// complete or the run ends.
    pub fn attempt(
        &self,
        approach: &Approach,
        start: Length,
        to: Target,
        caps: &[CappedStretch],
    ) -> Result<Attempt, StepperError> {
        let envelope = self.envelope(caps);
        let stepper = Stepper::new(self.truck, self.course, &envelope, self.style);
        let mut state = self.arrive(approach, start, caps)?;
        state.forget_extremes(self.truck.ambient());
        let begun = state.clock();
        stepper.order(&mut state, to);
        let end = self.course.length();
        while state.is_changing() && state.travelled() < end - Length::from_mm(1.0) {
            stepper.step(&mut state, end)?;
        }
        Ok(Attempt {
            start,
            complete: (!state.is_changing()).then(|| state.travelled()),
            time: state.clock() - begun,
            lowest_supply: state.lowest_supply(),
            longest_loaded: state.longest_loaded(),
            end: state,
        })
    }

    /// Clock at a place, driving on from a state under the caps of a schedule.
    pub fn clock_at(
        &self,
        from: &State,
        place: Length,
        caps: &[CappedStretch],
    ) -> Result<State, StepperError> {
        let envelope = self.envelope(caps);
        let stepper = Stepper::new(self.truck, self.course, &envelope, self.style);
        let mut state = from.clone();
        stepper.drive_to(&mut state, place, &mut NoRecord)?;
        Ok(state)
    }

    /// Caps that hold from a known place: from each lowering on to the end of its section.
    pub fn caps_of(&self, changes: &[PlannedChange]) -> Vec<CappedStretch> {
        let mut caps = Vec::new();
        let mut held = self.sections.first().map(|section| section.rung);
        for change in changes {
            let cap = self.truck.cap(change.to.rung);
            if held.is_none_or(|rung| cap < self.truck.cap(rung)) {
                let to = self
                    .sections
                    .iter()
                    .find(|section| section.rung == change.to.rung && section.to > change.at)
                    .map_or(self.course.length(), |section| section.to);
                caps.push(CappedStretch { from: change.at, to, cap });
            }
            held = Some(change.to.rung);
        }
        caps
    }
}

impl Approach {
    /// The last state kept at or before a place.
    pub fn before(&self, place: Length) -> &State {
        let index = self.states.partition_point(|state| state.travelled() <= place);
        &self.states[index.saturating_sub(1)]
    }

    /// The state at its end.
    pub fn last(&self) -> &State {
        &self.states[self.states.len() - 1]
    }
}
