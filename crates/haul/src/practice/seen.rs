//! What whoever drives can see.

use quantity::{GaugePressure, Length, Speed, Time};

use super::{Acted, Happened, Practice, SpeedChoice, Stage};
use crate::{Course, Sample, State};

impl Practice {
    /// Where in the haul it is.
    pub fn stage(&self) -> Stage {
        self.stage
    }

    /// Whether nothing more will happen.
    pub fn is_over(&self) -> bool {
        matches!(self.stage, Stage::Arrived | Stage::Stuck)
    }

    /// Seconds since it began.
    pub fn second(&self) -> u32 {
        self.second
    }

    /// Where the truck is and what it holds.
    pub fn state(&self) -> &State {
        &self.state
    }

    /// Chainage.
    pub fn chainage(&self) -> Length {
        self.courses[self.course_index()].chainage(self.state.travelled())
    }

    /// Speed cap of the rung held, or of the lower one while a change is under way.
    pub fn cap(&self) -> Speed {
        let ordered = self.caps[self.state.ordered.rung];
        let held = self.caps[self.state.held.rung];
        Speed::from_m_per_s(if self.state.changing { ordered.min(held) } else { ordered })
    }

    /// Speed chosen.
    pub fn choice(&self) -> SpeedChoice {
        self.choice
    }

    /// Pressure of a channel's tires as a vented gauge reads it.
    pub fn tire_pressure(&self, channel: usize) -> GaugePressure {
        self.state.tire_pressure(channel, self.truck.ambient())
    }

    /// Service pressure.
    pub fn supply(&self) -> GaugePressure {
        self.state.supply(self.truck.ambient())
    }

    /// Loading time left.
    pub fn loading_left(&self) -> Time {
        self.loading_left
    }

    /// Whether the driver has the truck stand, or something is in the way.
    pub fn is_held_up(&self) -> bool {
        self.stopping || self.blocked.is_some()
    }

    /// Road it takes to come to a stand from here.
    pub fn stopping_distance(&self) -> Length {
        Length::from_m(self.state.v * self.state.v / (2.0 * self.style.braking))
    }

    /// The run under the wheels, in the direction of travel.
    pub fn course(&self) -> &Course {
        &self.courses[self.course_index()]
    }

    /// Number of air channels.
    pub fn channels(&self) -> usize {
        self.truck.channels()
    }

    /// Everything done, in order: with the haul and the surprises it makes this drive again.
    pub fn acted(&self) -> &[Acted] {
        &self.acted
    }

    /// Everything that happened, in order.
    pub fn happened(&self) -> &[Happened] {
        &self.happened
    }

    /// One sample a second.
    pub fn samples(&self) -> &[Sample] {
        &self.samples.0
    }
}
