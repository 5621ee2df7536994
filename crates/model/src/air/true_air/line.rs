//! The pressure in a line while air passes through it.
//!
//! A line is so small beside its tires that it comes to balance within a hundredth of a second; its
//! pressure at the end of a step is therefore solved for, with the flows that pressure makes.

use super::super::SeriesCurve;
use super::super::reference_air::{P0, T0};
use super::TrueAir;
use super::controller::Valve;
use super::state::TrueState;

/// What passed a line in one step, in reference volume.
#[derive(Debug, Clone, Default)]
pub(super) struct Passed {
    pub from_supply: f64,
    pub vented: f64,
    pub leaked: f64,
    /// Into each tire of the channel, in the order of its list; out of it where negative.
    pub into_tires: Vec<f64>,
}

/// A channel's line in one step.
pub(super) struct LineStep<'a> {
    pub air: &'a TrueAir,
    pub state: &'a TrueState,
    pub channel: usize,
    pub valve: Valve,
    /// Channels that fill at once.
    pub filling: usize,
    pub supply: f64,
    pub line_temperature: f64,
    pub h: f64,
}

/// Flow in reference volume, m³/s.
pub(super) fn flow(curve: &SeriesCurve, p1: f64, t1: f64, p2: f64) -> f64 {
    if p1 <= p2 { 0.0 } else { p1 * curve.at(p2 / p1).0 * (T0 / t1).sqrt() }
}

impl LineStep<'_> {
    /// Solves the pressure at the end of the step; gives it with what passed.
    pub fn solve(&self) -> (f64, Passed) {
        let spec = &self.air.channels[self.channel];
        let start = self.state.lines[self.channel];
        let mut low = start.pressure.min(self.state.ambient);
        let mut high = start.pressure.max(self.state.ambient).max(self.supply);
        for &tire in &spec.tires {
            low = low.min(self.state.tires[tire].pressure);
            high = high.max(self.state.tires[tire].pressure);
        }
        let per_pa = spec.line_volume / P0 * T0 / self.line_temperature;
        // Air missing at the end if the line stood at p: rising with p.
        let off = |p: f64| p * per_pa - start.held - self.h * self.net(p);
        let (mut off_low, mut off_high) = (off(low), off(high));
        let mut p = start.pressure;
        // False position that halves a stale end (Illinois), within the bounds it keeps.
        for _ in 0..60 {
            if high - low <= 0.5 {
                break;
            }
            p = high - off_high * (high - low) / (off_high - off_low);
            if !(p > low && p < high) {
                p = 0.5 * (low + high);
            }
            let here = off(p);
            if here > 0.0 {
                high = p;
                off_high = here;
                off_low *= 0.5;
            } else {
                low = p;
                off_low = here;
                off_high *= 0.5;
            }
            if here.abs() <= per_pa * 0.5 {
                break;
            }
        }
        (p, self.passed(p))
    }

    fn net(&self, p: f64) -> f64 {
        let spec = &self.air.channels[self.channel];
        let tires: f64 = spec.tires.iter().map(|&tire| self.into(tire, p)).sum();
        self.drawn(p) - self.vented(p) - self.leaked(p) - tires
    }

    fn passed(&self, p: f64) -> Passed {
        let spec = &self.air.channels[self.channel];
        Passed {
            from_supply: self.h * self.drawn(p),
            vented: self.h * self.vented(p),
            leaked: self.h * self.leaked(p),
            into_tires: spec.tires.iter().map(|&tire| self.h * self.into(tire, p)).collect(),
        }
    }

    fn drawn(&self, p: f64) -> f64 {
        let spec = &self.air.channels[self.channel];
        if self.valve != Valve::Fill || spec.fill_stuck_shut || self.supply <= 0.0 {
            return 0.0;
        }
        let curve = &spec.fill[self.filling.clamp(1, spec.fill.len()) - 1];
        flow(curve, self.supply, self.state.reservoir_temperature, p)
    }

    fn vented(&self, p: f64) -> f64 {
        let spec = &self.air.channels[self.channel];
        let told = matches!(self.valve, Valve::Vent | Valve::Release);
        if (told && !spec.exhaust_stuck_shut) || spec.exhaust_stuck_open {
            flow(&spec.vent, p, self.line_temperature, self.state.ambient)
        } else {
            0.0
        }
    }

    fn leaked(&self, p: f64) -> f64 {
        let hole = self.air.channels[self.channel].hole.as_ref();
        hole.map_or(0.0, |hole| flow(hole, p, self.line_temperature, self.state.ambient))
    }

    fn into(&self, tire: usize, p: f64) -> f64 {
        let vessel = &self.air.tires[tire];
        let (Some(feed), Some(end)) = (&vessel.feed, vessel.end) else { return 0.0 };
        if self.air.ends[end] || !self.state.ends_open[end] {
            return 0.0;
        }
        let gas = &self.state.tires[tire];
        if p > gas.pressure {
            flow(feed, p, self.line_temperature, gas.pressure)
        } else {
            -flow(feed, gas.pressure, gas.temperature, p)
        }
    }
}
