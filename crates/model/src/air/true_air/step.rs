//! Advancing the air in time.

use quantity::{AbsolutePressure, GaugePressure, Time};

use super::super::reference_air::{P0, T0};
use super::controller::Valve;
use super::line::{LineStep, flow};
use super::state::TrueState;
use super::{GAS_TO_WALL, GAS_TO_WALL_AT, TrueAir, TrueSurroundings};

/// Step while the controller is about something, s.
const BUSY_STEP: f64 = 0.05;
/// Step while it is not, s.
const QUIET_STEP: f64 = 0.25;
/// Ratio of the specific heats of air.
const GAMMA: f64 = 1.4;
/// A wheel valve opens this far above the pressure it closes at, Pa.
pub(super) const OPENS_ABOVE: f64 = 20e3;

/// How far an advance came.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrueAdvance {
    /// Time passed.
    pub elapsed: Time,
    /// Whether what was ordered became complete at that moment.
    pub completed: bool,
}

impl TrueAir {
    /// Advances by `dt`, or to the moment in which what was ordered is complete.
    ///
    /// # Panics
    /// If `around` has fewer walls than the truck has tires.
    pub fn advance(
        &self,
        state: &mut TrueState,
        around: &TrueSurroundings<'_>,
        dt: Time,
    ) -> TrueAdvance {
        let dt = dt.as_s();
        let mut elapsed = 0.0;
        self.take_surroundings(state, around);
        while elapsed < dt {
            let before = state.is_complete();
            let busy = state.jobs.iter().any(super::controller::Job::is_busy);
            let step = if busy { BUSY_STEP } else { QUIET_STEP };
            let h = step.min(dt - elapsed);
            self.step(state, around, h);
            elapsed += h;
            if !before && state.is_complete() {
                return TrueAdvance { elapsed: Time::from_s(elapsed), completed: true };
            }
        }
        TrueAdvance { elapsed: Time::from_s(dt), completed: false }
    }

    /// What the vessels hold stays; their pressures follow the weather and the load.
    fn take_surroundings(&self, state: &mut TrueState, around: &TrueSurroundings<'_>) {
        state.ambient = around.ambient.as_pa();
        state.reservoir_temperature = around.reservoir_temperature.as_kelvin();
        let line_warmth = P0 / T0 * around.temperature.as_kelvin();
        for (line, spec) in state.lines.iter_mut().zip(&self.channels) {
            line.pressure = line.held * line_warmth / spec.line_volume;
        }
        self.press(state, around);
    }

    fn press(&self, state: &mut TrueState, around: &TrueSurroundings<'_>) {
        let warmth = P0 / T0 * state.reservoir_temperature;
        state.service_pressure = state.service * warmth / self.service_volume;
        if let Some(volume) = self.reserve_volume {
            state.reserve_pressure = state.reserve * warmth / volume;
        }
        for (index, gas) in state.tires.iter_mut().enumerate() {
            gas.pressure =
                self.tires[index].pressure(gas.held, gas.temperature, around.squash[index]);
        }
    }

    fn step(&self, state: &mut TrueState, around: &TrueSurroundings<'_>, h: f64) {
        self.switch(state);
        let valves = self.work(state, h);
        self.feed_reservoirs(state, around, h);
        self.pass_lines(state, around, &valves, h);
        self.between_mates(state, h);
        self.leak_tires(state, h);
        for (index, gas) in state.tires.iter_mut().enumerate() {
            let vessel = &self.tires[index];
            let reference = vessel.volume * GAS_TO_WALL_AT.as_pa() / P0;
            let time = GAS_TO_WALL.as_s() * (gas.held / reference).max(0.05);
            let wall = around.walls[index].as_kelvin();
            gas.temperature = wall + (gas.temperature - wall) * (-h / time).exp();
        }
        self.press(state, around);
        state.clock += h;
        state.duty.pass(h, state.loading);
    }

    /// Governor, protection valve, brake gate and self-closing wheel valves.
    fn switch(&self, state: &mut TrueState) {
        let service = state.service();
        turn(&mut state.loading, service <= self.governor.cut_in, service >= self.governor.cut_out);
        let (shuts, opens) = self.protection;
        turn(&mut state.protection_open, service >= opens, service <= shuts);
        if let Some(gate) = self.gate {
            turn(&mut state.gate_open, service >= gate.resumes_at, service <= gate.stops_below);
        }
        for (index, channel) in self.channels.iter().enumerate() {
            let Some(closes_below) = channel.closes_below else { continue };
            let above = state.lines[index].pressure - state.ambient - closes_below;
            let released = state.jobs[index].releases();
            for &end in &channel.ends {
                let open = &mut state.ends_open[end];
                turn(open, above >= OPENS_ABOVE && !released, above <= 0.0 || released);
            }
        }
    }

    /// Compressor, brakes, and the reserve tank behind the protection valve.
    fn feed_reservoirs(&self, state: &mut TrueState, around: &TrueSurroundings<'_>, h: f64) {
        let free = |flow: quantity::VolumeFlow| {
            let per_free = around.ambient.as_pa() / P0 * T0 / around.temperature.as_kelvin();
            flow.as_m3_per_s() * per_free
        };
        if state.loading {
            let back = AbsolutePressure::from_pa(state.service_pressure);
            let delivered = self.compressor.free_air_delivery(
                around.engine_speed,
                around.ambient,
                around.engine_load.clamp(0.0, 1.0),
                back,
            );
            let compressed = h * free(delivered);
            state.service += compressed;
            state.totals.compressed += compressed;
        }
        if state.service_pressure > state.ambient {
            let spare = (state.service_pressure - state.ambient) / state.service_pressure;
            let taken = h * free(around.brake_draw + self.brake_leak);
            let taken = taken.min(state.service * spare);
            state.service -= taken;
            state.totals.brakes += taken;
        }
        if self.reserve_volume.is_some() && state.protection_open {
            let temperature = state.reservoir_temperature;
            let passed = h * flow(
                &self.to_reserve,
                state.service_pressure,
                temperature,
                state.reserve_pressure,
            );
            state.service -= passed;
            state.reserve += passed;
        }
    }

    fn pass_lines(
        &self,
        state: &mut TrueState,
        around: &TrueSurroundings<'_>,
        valves: &[Valve],
        h: f64,
    ) {
        let filling = valves.iter().filter(|&&valve| valve == Valve::Fill).count();
        let line_temperature = around.temperature.as_kelvin();
        for (channel, &valve) in valves.iter().enumerate() {
            let supply =
                if state.has_reserve { state.reserve_pressure } else { state.service_pressure };
            let (pressure, passed) =
                LineStep { air: self, state, channel, valve, filling, supply, line_temperature, h }
                    .solve();
            let into: f64 = passed.into_tires.iter().sum();
            let line = &mut state.lines[channel];
            line.held += passed.from_supply - passed.vented - passed.leaked - into;
            line.pressure = pressure;
            if state.has_reserve {
                state.reserve -= passed.from_supply;
            } else {
                state.service -= passed.from_supply;
            }
            state.totals.vented += passed.vented;
            state.totals.leaked += passed.leaked;
            for (&tire, &air) in self.channels[channel].tires.iter().zip(&passed.into_tires) {
                state.tires[tire].take(air, line_temperature);
            }
        }
    }

    /// Mates of a dual are joined by their hoses even when the wheel end is shut.
    fn between_mates(&self, state: &mut TrueState, h: f64) {
        for (index, vessel) in self.tires.iter().enumerate() {
            let Some(mate) = vessel.mate.filter(|&mate| mate > index) else { continue };
            let (a, b) = (state.tires[index], state.tires[mate]);
            let (from, to, high, low) =
                if a.pressure > b.pressure { (index, mate, a, b) } else { (mate, index, b, a) };
            let air = h * flow(&self.between_mates, high.pressure, high.temperature, low.pressure);
            state.tires[from].take(-air, high.temperature);
            state.tires[to].take(air, high.temperature);
        }
    }

    fn leak_tires(&self, state: &mut TrueState, h: f64) {
        for (index, vessel) in self.tires.iter().enumerate() {
            let Some(hole) = &vessel.hole else { continue };
            let gas = &mut state.tires[index];
            let lost = h * flow(hole, gas.pressure, gas.temperature, state.ambient);
            gas.take(-lost, gas.temperature);
            state.totals.leaked += lost;
        }
    }

    /// Orders pressures on every channel, as the controller's gauge shall read them.
    ///
    /// # Panics
    /// If there are fewer pressures than channels.
    pub fn order(&self, state: &mut TrueState, targets: &[GaugePressure]) {
        for (channel, job) in state.jobs.iter_mut().enumerate() {
            job.order(targets[channel].as_kpa() * 1e3, state.clock);
        }
    }
}

impl super::state::Gas {
    /// Takes air in at a temperature, or lets it go where negative; the gas works as it moves.
    fn take(&mut self, air: f64, temperature: f64) {
        let held = (self.held + air).max(1e-9);
        let carried = if air > 0.0 { temperature } else { self.temperature };
        let heat = self.held * self.temperature + GAMMA * air * carried;
        self.temperature = (heat / held).clamp(120.0, 500.0);
        self.held = held;
    }
}

/// Turns a switch whose condition has come.
fn turn(on: &mut bool, turns_on: bool, turns_off: bool) {
    if *on && turns_off {
        *on = false;
    } else if !*on && turns_on {
        *on = true;
    }
}
