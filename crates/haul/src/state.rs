//! Where the truck is and what it holds: everything needed to go on from here.

use model::air::{AirState, ChannelOrder, MAX_CHANNELS};
use quantity::{AbsolutePressure, GaugePressure, Length, Speed, Temperature, Time, Volume};

use crate::Target;
use crate::breathing::Resting;

/// A state of the run; a copy of it resumes exactly here.
#[derive(Debug, Clone, PartialEq)]
#[expect(clippy::struct_field_names, reason = "a load state is called so in the trade")]
pub struct State {
    /// Travel distance, m, speed, m/s, and clock, s.
    pub(crate) s: f64,
    pub(crate) v: f64,
    pub(crate) t: f64,
    pub(crate) cell: usize,
    pub(crate) air: AirState,
    pub(crate) tire_temperature: [Temperature; MAX_CHANNELS],
    pub(crate) load_state: usize,
    /// Cells last complete, and cells ordered.
    pub(crate) held: Target,
    pub(crate) ordered: Target,
    pub(crate) changing: bool,
    pub(crate) orders: [ChannelOrder; MAX_CHANNELS],
    pub(crate) braking: bool,
    pub(crate) resting: Resting,
    /// Time and distance since the tire temperatures were last brought forward.
    pub(crate) unheated_s: f64,
    pub(crate) unheated_m: f64,
    pub(crate) totals: Totals,
}

/// Sums over the run so far.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Totals {
    pub(crate) fuel_m3: f64,
    pub(crate) changing_s: f64,
    pub(crate) standing_s: f64,
    pub(crate) over_cap_m: f64,
    /// Channels whose self-closing valves shut before a lowering was complete.
    pub(crate) shut_early: u16,
}

impl Totals {
    /// Fuel burnt.
    pub fn fuel(&self) -> Volume {
        Volume::from_m3(self.fuel_m3)
    }

    /// Time during which a change was under way.
    pub fn changing(&self) -> Time {
        Time::from_s(self.changing_s)
    }

    /// Whether a channel's self-closing valves shut before a lowering was complete.
    pub fn shut_early(&self, channel: usize) -> bool {
        self.shut_early >> channel & 1 == 1
    }

    /// Time standing.
    pub fn standing(&self) -> Time {
        Time::from_s(self.standing_s)
    }

    /// Distance driven above the cap of the pressure held, while slowing down to it.
    pub fn over_cap(&self) -> Length {
        Length::from_m(self.over_cap_m)
    }
}

impl State {
    /// Travel distance.
    pub fn travelled(&self) -> Length {
        Length::from_m(self.s)
    }

    /// Speed.
    pub fn speed(&self) -> Speed {
        Speed::from_m_per_s(self.v)
    }

    /// Clock since the start.
    pub fn clock(&self) -> Time {
        Time::from_s(self.t)
    }

    /// The air system.
    pub fn air(&self) -> &AirState {
        &self.air
    }

    /// Index of the load state.
    pub fn load_state(&self) -> usize {
        self.load_state
    }

    /// Cells last complete on every channel.
    pub fn held(&self) -> Target {
        self.held
    }

    /// Cells ordered.
    pub fn ordered(&self) -> Target {
        self.ordered
    }

    /// Whether a change is under way.
    pub fn is_changing(&self) -> bool {
        self.changing
    }

    /// Air temperature in the tires of a channel.
    pub fn tire_temperature(&self, channel: usize) -> Temperature {
        self.tire_temperature[channel]
    }

    /// Pressure of a channel's tires as a vented gauge reads it now.
    pub fn tire_pressure(&self, channel: usize, ambient: AbsolutePressure) -> GaugePressure {
        self.air.tire(channel, self.tire_temperature[channel]).to_gauge(ambient)
    }

    /// Service pressure now, as a vented gauge reads it.
    pub fn supply(&self, ambient: AbsolutePressure) -> GaugePressure {
        self.air.service().to_gauge(ambient)
    }

    /// Lowest service pressure since the start, or since extremes were forgotten.
    pub fn lowest_supply(&self) -> GaugePressure {
        self.air.lowest_service()
    }

    /// Longest unbroken compressor run since the start, or since extremes were forgotten.
    pub fn longest_loaded(&self) -> Time {
        self.air.duty().longest_loaded()
    }

    /// Starts the lowest supply and the longest compressor run afresh from here.
    pub fn forget_extremes(&mut self, ambient: AbsolutePressure) {
        self.air.forget_extremes(ambient);
    }

    /// Sums so far.
    pub fn totals(&self) -> &Totals {
        &self.totals
    }
}
