//! Air and heat while time passes: what the network does, and how warm the tires get.

use model::air::{AirEvent, ChannelOrder, Surroundings};
use model::tire::warm_up::time_constant;
use quantity::{ColdPressure, RotationalSpeed, Speed, Time, VolumeFlow};

use crate::{State, Stepper};

/// Tire temperatures move in most of an hour, so they are brought forward at this interval.
const HEAT_INTERVAL: f64 = 10.0; // s
/// While no channel works the reservoirs alone move, so they may wait this long.
const REST_INTERVAL: f64 = 10.0; // s

/// How the engine runs for a while, and what the brakes take meanwhile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct EngineRun {
    pub speed: RotationalSpeed,
    /// Share of rated power.
    pub load: f64,
    /// Free air taken by brakes and leaks, m³/s.
    pub draw: f64,
}

/// Time passed with no channel at work that the reservoirs have not been told of yet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Resting {
    time: f64,
    speed: RotationalSpeed,
    load: f64,
    drawn: f64,
}

impl Default for Resting {
    fn default() -> Self {
        Self { time: 0.0, speed: RotationalSpeed::ZERO, load: 0.0, drawn: 0.0 }
    }
}

impl Stepper<'_> {
    /// Lets the air system run for `dt`; ends early when the change ordered is complete.
    pub(crate) fn breathe(&self, state: &mut State, engine: EngineRun, dt: f64) -> f64 {
        let weather = &self.truck.weather;
        let around = Surroundings {
            engine_speed: engine.speed,
            engine_load: engine.load.clamp(0.0, 1.0),
            ambient: weather.ambient_pressure,
            temperature: weather.ambient,
            brake_draw: VolumeFlow::from_m3_per_s(engine.draw),
            tire_temperature: state.tire_temperature,
        };
        let mut elapsed = 0.0;
        while elapsed < dt {
            let left = Time::from_s(dt - elapsed);
            let advance = self.truck.network.advance(&mut state.air, &around, &state.orders, left);
            elapsed += advance.elapsed.as_s();
            match advance.event {
                None => return dt,
                Some(AirEvent::ChannelReached { channel }) => {
                    state.orders[channel] = ChannelOrder::Hold;
                    if self.is_complete(state) {
                        state.totals.changing_s += elapsed;
                        return elapsed;
                    }
                }
                Some(AirEvent::WheelValvesShut { channel }) if self.is_venting(state, channel) => {
                    // The line fell to the closing pressure: the tires keep what they hold.
                    state.orders[channel] = ChannelOrder::Hold;
                    state.totals.shut_early |= 1 << channel;
                    if self.is_complete(state) {
                        state.totals.changing_s += elapsed;
                        return elapsed;
                    }
                }
                Some(_) => {}
            }
        }
        dt
    }

    /// Takes the change as complete once no channel is at work.
    fn is_complete(&self, state: &mut State) -> bool {
        let all = &state.orders[..self.truck.channels];
        let complete = state.changing && all.iter().all(|order| *order == ChannelOrder::Hold);
        if complete {
            state.changing = false;
            state.held = state.ordered;
        }
        complete
    }

    fn is_venting(&self, state: &State, channel: usize) -> bool {
        match state.orders[channel] {
            ChannelOrder::Hold => false,
            ChannelOrder::Reach(target) => {
                state.tire_pressure(channel, self.truck.ambient()) > target
            }
        }
    }

    /// Notes time with no channel at work; the reservoirs are told of it in longer pieces.
    pub(crate) fn rest(&self, state: &mut State, engine: EngineRun, dt: f64) {
        if state.resting.time > 0.0 && state.resting.speed != engine.speed {
            self.catch_up(state);
        }
        let resting = &mut state.resting;
        resting.speed = engine.speed;
        resting.time += dt;
        resting.load += engine.load * dt;
        resting.drawn += engine.draw * dt;
        if resting.time >= REST_INTERVAL {
            self.catch_up(state);
        }
    }

    /// Brings the reservoirs forward to now.
    pub(crate) fn catch_up(&self, state: &mut State) {
        let Resting { time, speed, load, drawn } = std::mem::take(&mut state.resting);
        if time > 0.0 {
            let engine = EngineRun { speed, load: load / time, draw: drawn / time };
            self.breathe(state, engine, time);
        }
    }

    pub(crate) fn pass_time(&self, state: &mut State, dt: f64, ds: f64) {
        state.t += dt;
        if state.changing {
            state.totals.changing_s += dt;
        }
        state.unheated_s += dt;
        state.unheated_m += ds;
        if state.unheated_s >= HEAT_INTERVAL {
            self.warm_tires(state);
        }
    }

    fn warm_tires(&self, state: &mut State) {
        let weather = &self.truck.weather;
        let speed = Speed::from_m_per_s(state.unheated_m / state.unheated_s);
        let keep = (-state.unheated_s / time_constant().as_s()).exp();
        for channel in 0..self.truck.channels {
            let held = state.air.tire(channel, weather.reference);
            let pressure = ColdPressure::read_at_reference(held.to_gauge(weather.ambient_pressure));
            let warm_up = &self.truck.loaded[state.load_state].warm_up[channel];
            let steady = weather.ambient + warm_up.rise(pressure, speed).value;
            let off = state.tire_temperature[channel] - steady;
            state.tire_temperature[channel] = steady + off * keep;
        }
        state.unheated_s = 0.0;
        state.unheated_m = 0.0;
    }
}
