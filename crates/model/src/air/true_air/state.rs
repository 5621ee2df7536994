//! The air at one moment, tire by tire.

use quantity::{GaugePressure, Temperature, Time, Volume};

use super::super::reference_air::{P0, T0};
use super::super::{Duty, NetworkError};
use super::controller::Job;
use super::{SEALED_AT, TrueAir, TrueSurroundings};

/// Gas in a tire: how much, in reference volume, and how warm, K.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Gas {
    pub held: f64,
    pub temperature: f64,
    /// Pressure at the end of the last step, Pa.
    pub pressure: f64,
}

/// Air in a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Line {
    pub held: f64,
    pub pressure: f64,
}

/// Air that has passed since the start, as volumes in the reference atmosphere.
///
/// What all vessels hold has grown by compressed − brakes − vented − leaked.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct TrueTotals {
    pub(super) compressed: f64,
    pub(super) brakes: f64,
    pub(super) vented: f64,
    pub(super) leaked: f64,
}

impl TrueTotals {
    /// Air the compressor has delivered.
    pub const fn compressed(&self) -> Volume {
        Volume::from_m3(self.compressed)
    }

    /// Air that brakes, and leaks on their side, have taken.
    pub const fn brakes(&self) -> Volume {
        Volume::from_m3(self.brakes)
    }

    /// Air let out through the exhausts of the channels.
    pub const fn vented(&self) -> Volume {
        Volume::from_m3(self.vented)
    }

    /// Air lost through holes in tires and lines.
    pub const fn leaked(&self) -> Volume {
        Volume::from_m3(self.leaked)
    }
}

/// The air at one moment, and what the controller is about.
#[derive(Debug, Clone, PartialEq)]
#[expect(clippy::struct_excessive_bools, reason = "independent switches, each its own valve")]
pub struct TrueState {
    pub(super) service: f64,
    pub(super) reserve: f64,
    pub(super) reservoir_temperature: f64,
    pub(super) ambient: f64,
    pub(super) service_pressure: f64,
    pub(super) reserve_pressure: f64,
    pub(super) has_reserve: bool,
    pub(super) loading: bool,
    pub(super) protection_open: bool,
    pub(super) gate_open: bool,
    pub(super) lines: Vec<Line>,
    /// Wheel ends whose own valve stands open.
    pub(super) ends_open: Vec<bool>,
    pub(super) tires: Vec<Gas>,
    pub(super) jobs: Vec<Job>,
    pub(super) clock: f64,
    pub(super) duty: Duty,
    pub(super) totals: TrueTotals,
}

impl TrueState {
    /// Pressure of the service reservoirs, above ambient.
    pub fn service(&self) -> GaugePressure {
        GaugePressure::from_kpa((self.service_pressure - self.ambient) * 1e-3)
    }

    /// Pressure of the reserve tank, if one is fitted, above ambient.
    pub fn reserve(&self) -> Option<GaugePressure> {
        let above = (self.reserve_pressure - self.ambient) * 1e-3;
        self.has_reserve.then(|| GaugePressure::from_kpa(above))
    }

    /// Pressure of a channel's line, above ambient.
    ///
    /// # Panics
    /// If there is no such channel.
    pub fn line(&self, channel: usize) -> GaugePressure {
        GaugePressure::from_kpa((self.lines[channel].pressure - self.ambient) * 1e-3)
    }

    /// Pressure in a tire, above ambient.
    ///
    /// # Panics
    /// If there is no such tire.
    pub fn tire(&self, tire: usize) -> GaugePressure {
        GaugePressure::from_kpa((self.tires[tire].pressure - self.ambient) * 1e-3)
    }

    /// Temperature of the gas in a tire.
    ///
    /// # Panics
    /// If there is no such tire.
    pub fn gas_temperature(&self, tire: usize) -> Temperature {
        Temperature::from_kelvin(self.tires[tire].temperature)
    }

    /// What the controller's gauge last read on a channel, with the age of the reading; `None`
    /// before the first.
    ///
    /// # Panics
    /// If there is no such channel.
    pub fn reading(&self, channel: usize) -> Option<(GaugePressure, Time)> {
        let (pressure, at) = self.jobs[channel].reading?;
        Some((GaugePressure::from_kpa(pressure * 1e-3), Time::from_s(self.clock - at)))
    }

    /// Whether the controller works on a channel or checks it.
    ///
    /// # Panics
    /// If there is no such channel.
    pub fn is_busy(&self, channel: usize) -> bool {
        self.jobs[channel].is_busy()
    }

    /// Whether the controller has given a channel up: it did what it was told and nothing came of it.
    ///
    /// # Panics
    /// If there is no such channel.
    pub fn gave_up(&self, channel: usize) -> bool {
        self.jobs[channel].gave_up
    }

    /// Whether every channel has reached what was last ordered.
    pub fn is_complete(&self) -> bool {
        self.jobs.iter().all(Job::is_complete)
    }

    /// Whether the governor has the compressor loading.
    pub const fn compressor_loading(&self) -> bool {
        self.loading
    }

    /// How long the compressor has been loaded.
    pub const fn duty(&self) -> Duty {
        self.duty
    }

    /// What has passed since the start.
    pub const fn totals(&self) -> TrueTotals {
        self.totals
    }
}

impl TrueAir {
    /// The truck at rest: reservoirs at a pressure, each tire at its own, gas as warm as its wall,
    /// every line that self-closing valves leave alone empty.
    ///
    /// # Errors
    /// [`NetworkError`] for pressures under ambient or not one for each tire.
    ///
    /// # Panics
    /// If `around` has fewer walls than the truck has tires.
    pub fn start(
        &self,
        supply: GaugePressure,
        tires: &[GaugePressure],
        around: &TrueSurroundings<'_>,
    ) -> Result<TrueState, NetworkError> {
        if tires.len() != self.tires.len() {
            let (given, wanted) = (tires.len(), self.tires.len());
            return Err(NetworkError::TireCount { given, wanted });
        }
        let absolute = |what, pressure: GaugePressure| {
            if pressure.as_kpa() < 0.0 {
                return Err(NetworkError::UnderAmbient { what, pressure });
            }
            Ok(pressure.to_absolute(around.ambient).as_pa())
        };
        let supply_pressure = absolute("service reservoir", supply)?;
        let warm = around.reservoir_temperature.as_kelvin();
        let per_volume = supply_pressure / P0 * T0 / warm;
        let gas = tires
            .iter()
            .enumerate()
            .map(|(index, &pressure)| {
                let temperature = around.walls[index].as_kelvin();
                let pressure = absolute("tire", pressure)?;
                let held = self.tires[index].held(pressure, temperature, around.squash[index]);
                Ok(Gas { held, temperature, pressure })
            })
            .collect::<Result<Vec<_>, NetworkError>>()?;
        let lines = self
            .channels
            .iter()
            .map(|channel| {
                let open = channel.tires.first().filter(|_| channel.closes_below.is_none());
                let pressure = open.map_or(around.ambient.as_pa(), |&tire| gas[tire].pressure);
                let held =
                    channel.line_volume * pressure / P0 * T0 / around.temperature.as_kelvin();
                Line { held, pressure }
            })
            .collect();
        let ends_open = self.ends_at_rest();
        Ok(TrueState {
            service: self.service_volume * per_volume,
            reserve: self.reserve_volume.map_or(0.0, |volume| volume * per_volume),
            reservoir_temperature: warm,
            ambient: around.ambient.as_pa(),
            service_pressure: supply_pressure,
            reserve_pressure: if self.reserve_volume.is_some() { supply_pressure } else { 0.0 },
            has_reserve: self.reserve_volume.is_some(),
            loading: supply <= self.governor.cut_in,
            protection_open: supply >= self.protection.1,
            gate_open: self.gate.is_none_or(|gate| supply >= gate.resumes_at),
            lines,
            ends_open,
            tires: gas,
            jobs: vec![Job::default(); self.channels.len()],
            clock: 0.0,
            duty: Duty::NONE,
            totals: TrueTotals::default(),
        })
    }

    /// Ends that are open while nothing is done: those shut by hand excepted, all but self-closing.
    fn ends_at_rest(&self) -> Vec<bool> {
        let mut open = vec![false; self.ends.len()];
        for channel in &self.channels {
            for &end in &channel.ends {
                open[end] = channel.closes_below.is_none();
            }
        }
        open
    }

    /// What the controller's gauge reads on a channel's line now, Pa.
    pub(super) fn gauge(&self, state: &TrueState, channel: usize) -> f64 {
        let spec = &self.channels[channel];
        let zero = if spec.sealed_gauge { SEALED_AT } else { state.ambient };
        state.lines[channel].pressure - zero + spec.gauge_off
    }
}
