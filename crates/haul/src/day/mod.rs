//! A day of hauls as it truly went, for somebody who listens.
//!
//! The stepper drives, a [`Driver`](crate::Driver) decides, and the air is
//! [`TrueAir`](model::air::TrueAir) under the day's weather, with faults that come and go. What is told
//! to the [`Witness`] is the truth; what instruments make of it is not decided here.

mod drive;
mod on_truck;
mod run;
#[cfg(test)]
mod tests;

use model::air::{AirFault, AirFaultError, TrueState};
use quantity::{
    AbsolutePressure, Length, RotationalSpeed, Speed, Temperature, TemperatureDifference, Time,
    Volume,
};

use crate::{Call, PhaseKind, StepperError, Target};

pub use drive::{Day, DayEnd};

/// A fault of the truck that changes what truly happens.
#[derive(Debug, Clone, PartialEq)]
pub enum TrueFault {
    /// Of the air system.
    Air(AirFault),
    /// A dragging brake or a bad bearing: the walls of these tires get this much warmer while rolling.
    HotWheel {
        /// Indices of the tires.
        tires: Vec<usize>,
        /// By how much, in the long run.
        rise: TemperatureDifference,
    },
}

/// A fault with the time in which it is there.
#[derive(Debug, Clone, PartialEq)]
pub struct TimedFault {
    /// What.
    pub fault: TrueFault,
    /// From when, by the clock of the day.
    pub from: Time,
    /// Until when; `None` to the end.
    pub until: Option<Time>,
    /// Only while the air is colder than this, as a frozen valve is.
    pub only_below: Option<Temperature>,
}

/// The truck at one moment.
#[derive(Debug, Clone, Copy)]
pub struct Moment<'a> {
    /// Clock of the day.
    pub clock: Time,
    /// Which cycle of the day, from 0.
    pub cycle: usize,
    /// Part of the cycle.
    pub phase: PhaseKind,
    /// Chainage along the route.
    pub chainage: Length,
    /// Whether it travels with rising chainage.
    pub forward: bool,
    /// Speed.
    pub speed: Speed,
    /// Engine speed.
    pub engine_speed: RotationalSpeed,
    /// Share of rated power.
    pub engine_load: f64,
    /// Fuel burnt so far.
    pub fuel: Volume,
    /// Whether the service brakes are on.
    pub braking: bool,
    /// Index of the load state.
    pub load_state: usize,
    /// Cells ordered.
    pub ordered: Target,
    /// Whether a change is under way.
    pub changing: bool,
    /// The air.
    pub air: &'a TrueState,
    /// Walls of the tires.
    pub walls: &'a [Temperature],
    /// Temperature of the air outside.
    pub ambient: Temperature,
    /// Pressure of the air outside.
    pub ambient_pressure: AbsolutePressure,
    /// Elevation of the road.
    pub elevation: Length,
    /// Distance driven so far.
    pub odometer: Length,
}

/// What happens at a moment.
#[derive(Debug, Clone, PartialEq)]
pub enum DayEvent {
    /// A part of the cycle begins.
    Phase(PhaseKind),
    /// A change is asked for.
    Asked {
        /// What is ordered.
        to: Target,
        /// Where the plan asks for it; `None` for changes ordered where the truck stands.
        planned_at: Option<Length>,
        /// What the driver made of it.
        call: Call,
    },
    /// A planned change is passed without being called.
    Forgotten {
        /// What should have been ordered.
        to: Target,
        /// Where, as a chainage.
        planned_at: Length,
    },
    /// What was asked for is complete on every channel.
    Complete {
        /// What was ordered.
        to: Target,
    },
    /// The driver has waited long enough, or another change is asked for: it never was complete.
    GivenUp {
        /// What was ordered.
        to: Target,
    },
    /// A fault begins, by its place in the list of the day.
    FaultBegins(usize),
    /// A fault ends.
    FaultEnds(usize),
}

/// Somebody who listens to a day.
pub trait Witness {
    /// A moment; no two are more than a second apart.
    fn moment(&mut self, moment: &Moment<'_>);

    /// Something happens, at the time and chainage of the last moment.
    fn event(&mut self, clock: Time, chainage: Length, event: DayEvent);
}

/// Why a day cannot be driven.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum DayError {
    /// The truck cannot go on.
    #[error(transparent)]
    Stepper(#[from] StepperError),
    /// The air cannot start.
    #[error(transparent)]
    Air(#[from] model::air::NetworkError),
    /// A fault cannot be.
    #[error(transparent)]
    Fault(#[from] AirFaultError),
}
