//! The stepper on air that is not the plan's.

use quantity::{GaugePressure, Length, Time};

use crate::breathing::EngineRun;
use crate::{State, Stepper, StepperError, Target};

/// What the air on board answers to the stepper.
pub(crate) trait OnBoard {
    /// Pressures are ordered on every channel.
    fn order(&mut self, state: &State, to: Target);

    /// Lets time pass, at most to the moment in which the change ordered is complete.
    fn pass(&mut self, state: &State, engine: EngineRun, dt: f64) -> Passed;

    /// Tells where the truck came to in that time.
    fn came_to(&mut self, state: &State, engine: EngineRun, elapsed: f64);

    /// Whether what was ordered is complete.
    fn is_complete(&self) -> bool;

    /// Pressure of the service reservoirs.
    fn supply(&self) -> GaugePressure;
}

/// Time that passed, and whether the change was complete at its end.
pub(crate) struct Passed {
    pub elapsed: f64,
    pub completed: bool,
}

/// What a standing truck waits for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Awaits {
    Nothing,
    Complete,
    Supply(GaugePressure),
}

/// Longest piece of time between two looks at the air, s.
const LONGEST: f64 = 0.5;
/// Longest piece of road, m, so that a slow truck is looked at as often.
const SHORTEST_PIECE: f64 = 0.3;

impl Stepper<'_> {
    /// Orders the pressures of a cell.
    pub(crate) fn order_on(&self, state: &mut State, to: Target, air: &mut impl OnBoard) {
        if state.changing && self.truck.caps[state.ordered.rung] < self.truck.caps[state.held.rung]
        {
            state.held = state.ordered;
        }
        state.ordered = to;
        air.order(state, to);
        state.changing = !air.is_complete();
        if !state.changing {
            state.held = to;
        }
    }

    /// Drives one short piece of road, at most to `to`.
    pub(crate) fn step_on(
        &self,
        state: &mut State,
        to: Length,
        air: &mut impl OnBoard,
    ) -> Result<(), StepperError> {
        let reach = (state.v * LONGEST).max(SHORTEST_PIECE);
        let piece = self.piece(state, to.as_m().min(state.s + reach))?;
        let passed = air.pass(state, piece.engine, piece.dt);
        self.go(state, &piece, passed.elapsed);
        settle(state, &passed);
        air.came_to(state, piece.engine, passed.elapsed);
        Ok(())
    }

    /// Stands until something is so, or a time is over; tells whether it came to be so.
    pub(crate) fn stand_on(
        &self,
        state: &mut State,
        (awaits, at_most): (Awaits, Time),
        high_idle: bool,
        air: &mut impl OnBoard,
    ) -> bool {
        let truck = self.truck;
        state.v = 0.0;
        let speed = if high_idle { truck.high_idle } else { truck.idle };
        let engine = EngineRun { speed, load: 0.0, draw: truck.leakage };
        let begun = state.t;
        loop {
            let so = match awaits {
                Awaits::Nothing => false,
                Awaits::Complete => !state.changing,
                Awaits::Supply(wanted) => air.supply() >= wanted,
            };
            let left = at_most.as_s() - (state.t - begun);
            if so || left <= 1e-9 {
                return so;
            }
            let passed = air.pass(state, engine, left.min(LONGEST));
            state.totals.fuel_m3 += truck.idle_fuel * passed.elapsed;
            state.totals.standing_s += passed.elapsed;
            settle(state, &passed);
            air.came_to(state, engine, passed.elapsed);
        }
    }
}

fn settle(state: &mut State, passed: &Passed) {
    state.t += passed.elapsed;
    if state.changing {
        state.totals.changing_s += passed.elapsed;
    }
    if passed.completed {
        state.changing = false;
        state.held = state.ordered;
    }
}
