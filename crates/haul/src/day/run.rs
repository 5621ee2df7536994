//! The driver at work: driving on, calling changes, waiting.

use quantity::{Length, Time};

use super::on_truck::OnTruck;
use super::{DayError, DayEvent, Witness};
use crate::on_board::{Awaits, OnBoard};
use crate::{Call, Called, PhaseKind, State, Stepper, Target};

/// Longest a driver waits for a change or for air before he drives on all the same.
pub(super) const PATIENCE: Time = Time::from_min(45.0); // common practice, no source

impl<W: Witness> OnTruck<'_, W> {
    pub fn begin(&mut self, phase: PhaseKind, state: &State) {
        self.phase = phase;
        self.tell_event(state, DayEvent::Phase(phase));
    }

    /// Drives a run, calling changes as the driver does.
    pub fn run(
        &mut self,
        stepper: &Stepper<'_>,
        state: &mut State,
        calls: &[Called],
    ) -> Result<(), DayError> {
        let end = stepper.course.length();
        let mut calls: Vec<Called> = calls.to_vec();
        calls.sort_by(|a, b| a.at.total_cmp(&b.at));
        for called in calls.iter().filter(|called| called.at < end) {
            self.drive_to(stepper, state, called.at)?;
            let planned_at = self.chainage_of(called.planned.at);
            if called.call == Call::Forgotten {
                let to = called.planned.to;
                self.tell_event(state, DayEvent::Forgotten { to, planned_at });
                continue;
            }
            self.ask(stepper, state, called.planned.to, Some(planned_at), called.call);
            if called.planned.standing {
                self.wait(stepper, state, PATIENCE);
            }
        }
        self.drive_to(stepper, state, end)
    }

    fn drive_to(
        &mut self,
        stepper: &Stepper<'_>,
        state: &mut State,
        to: Length,
    ) -> Result<(), DayError> {
        while state.travelled() < to - Length::from_mm(1.0) {
            let changing = state.is_changing();
            stepper.step_on(state, to, self)?;
            self.tell_completion(changing, state);
        }
        Ok(())
    }

    pub fn ask(
        &mut self,
        stepper: &Stepper<'_>,
        state: &mut State,
        to: Target,
        planned_at: Option<Length>,
        call: Call,
    ) {
        if state.is_changing() {
            self.tell_event(state, DayEvent::GivenUp { to: state.ordered() });
        }
        self.tell_event(state, DayEvent::Asked { to, planned_at, call });
        stepper.order_on(state, to, self);
        self.tell_completion(true, state);
    }

    /// Waits for a change, piece by piece so that its end is told.
    pub fn wait(&mut self, stepper: &Stepper<'_>, state: &mut State, patience: Time) {
        if state.is_changing() && stepper.stand_on(state, (Awaits::Complete, patience), true, self)
        {
            self.tell_completion(true, state);
        }
    }

    /// Stands for a time, while a change may come to its end.
    pub fn stand(&mut self, stepper: &Stepper<'_>, state: &mut State, time: Time, high_idle: bool) {
        let begun = state.clock();
        if state.is_changing() && stepper.stand_on(state, (Awaits::Complete, time), high_idle, self)
        {
            self.tell_completion(true, state);
        }
        let left = time - (state.clock() - begun);
        stepper.stand_on(state, (Awaits::Nothing, left), high_idle, self);
    }

    fn tell_completion(&mut self, was_changing: bool, state: &State) {
        if was_changing && !state.is_changing() && self.is_complete() {
            self.tell_event(state, DayEvent::Complete { to: state.ordered() });
        }
    }
}
