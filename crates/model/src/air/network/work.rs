//! Which channels work now, and up to where.

use quantity::GaugePressure;

use super::super::reference_air::{P0, T0};
use super::super::restriction::Restriction;
use super::state::{AirState, bit};
use super::surroundings::Air;
use super::{Channel, ClosingValve, MAX_CHANNELS, Network, Surroundings};

/// A tire this near its target counts as there, Pa.
const REACHED: f64 = 0.5;
/// A wheel valve that shut for want of supply opens again this far above its closing
/// pressure, Pa; only so that the numbers do not chatter.
pub(super) const REOPENING_BAND: f64 = 20e3;

/// What a channel is told to do.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ChannelOrder {
    /// Keep the air as it is.
    Hold,
    /// Bring the tires to this pressure, as read at their temperature now.
    Reach(GaugePressure),
}

/// The channels at work, in the order of their numbers: slot by slot.
#[derive(Debug)]
pub(super) struct Work {
    pub(super) count: usize,
    pub(super) filling: u16,
    pub(super) channel: [u8; MAX_CHANNELS],
    /// Referred pressure at which the channel is done, or its valves shut.
    pub(super) bound: [f64; MAX_CHANNELS],
    /// Tire temperature over the reference temperature.
    pub(super) warmth: [f64; MAX_CHANNELS],
    /// Slots whose bound is the shutting of wheel valves.
    pub(super) stalls: u16,
    /// Supply pressures at which wheel valves shut or open, absolute.
    pub(super) supply_low: f64,
    pub(super) supply_high: f64,
}

impl Work {
    pub(super) const NONE: Self = Self {
        count: 0,
        filling: 0,
        channel: [0; MAX_CHANNELS],
        bound: [0.0; MAX_CHANNELS],
        warmth: [0.0; MAX_CHANNELS],
        stalls: 0,
        supply_low: f64::NEG_INFINITY,
        supply_high: f64::INFINITY,
    };
}

impl Network {
    /// Tire air may be drawn now.
    pub(super) fn supply_open(&self, state: &AirState) -> bool {
        state.gate_open && (state.protection_open || self.reserve_volume.is_some())
    }

    /// Finds the channels at work; returns one that stands at its target already.
    pub(super) fn allot(
        &self,
        state: &mut AirState,
        air: &Air,
        around: &Surroundings,
        orders: &[ChannelOrder; MAX_CHANNELS],
        work: &mut Work,
    ) -> Option<usize> {
        let supply_open = self.supply_open(state);
        let mut another = self.together;
        let mut first = true;
        for (k, channel) in self.channels.iter().enumerate() {
            let ChannelOrder::Reach(target) = orders[k] else {
                if !state.asked[k].is_nan() {
                    state.forget(k);
                }
                continue;
            };
            let target = target.as_kpa() * 1e3;
            #[expect(
                clippy::float_cmp,
                reason = "an order stays the same until its number changes"
            )]
            if state.asked[k] != target {
                state.forget(k);
                state.asked[k] = target;
            }
            if state.settled & bit(k) != 0 || !(first || another) {
                continue;
            }
            first = false;
            another = self.together;
            let warmth = around.tire_temperature[k].as_kelvin() / T0;
            let missing = target + air.ambient - state.tires[k] * warmth;
            if missing.abs() <= REACHED {
                state.settled |= bit(k);
                return Some(k);
            }
            let filling = missing > 0.0;
            if let Some(closing) = &channel.closing
                && !self.line_open(state, air, work, k, channel, closing, supply_open, filling)
            {
                continue;
            }
            if filling && !supply_open {
                continue;
            }
            let slot = work.count;
            work.count += 1;
            #[expect(clippy::cast_possible_truncation, reason = "at most 16 channels")]
            {
                work.channel[slot] = k as u8;
            }
            work.warmth[slot] = warmth;
            let mut bound = target + air.ambient;
            if filling {
                work.filling |= bit(slot);
            } else if let Some(closing) = &channel.closing {
                let stall = closing.stalls_at(air.ambient);
                if stall > bound {
                    bound = stall;
                    work.stalls |= bit(slot);
                }
            }
            work.bound[slot] = bound / warmth;
        }
        None
    }

    /// Whether self-closing valves stand open, their line filled first if it can be.
    #[expect(
        clippy::too_many_arguments,
        reason = "one place of the channel loop, split off for length"
    )]
    fn line_open(
        &self,
        state: &mut AirState,
        air: &Air,
        work: &mut Work,
        k: usize,
        channel: &Channel,
        closing: &ClosingValve,
        supply_open: bool,
        filling: bool,
    ) -> bool {
        let closes_at = closing.closes_below + air.ambient;
        let filled = state.line_filled & bit(k) != 0;
        if filled && !filling {
            return true;
        }
        if !supply_open {
            return false;
        }
        if state.valves_shut & bit(k) != 0 {
            work.supply_high = work.supply_high.min(closes_at + REOPENING_BAND);
            return false;
        }
        work.supply_low = work.supply_low.max(closes_at);
        if self.supply(state) <= closes_at {
            return false;
        }
        if !filled {
            self.fill_line(state, air, channel.line_volume);
            state.line_filled |= bit(k);
        }
        true
    }

    /// Pressure the tire circuit draws from.
    pub(super) fn supply(&self, state: &AirState) -> f64 {
        if self.reserve_volume.is_some() { state.reserve } else { state.service }
    }

    /// Shares supply air with an empty line at once; the line lets it go after the change.
    fn fill_line(&self, state: &mut AirState, air: &Air, line: f64) {
        let (vessel, volume) = match self.reserve_volume {
            Some(volume) => (&mut state.reserve, volume),
            None => (&mut state.service, self.service_volume),
        };
        let shared = (*vessel * volume + air.ambient * line) / (volume + line);
        state.totals.lines += (*vessel - shared) * volume / P0 * (T0 / air.temperature);
        *vessel = shared;
    }
}

impl AirState {
    fn forget(&mut self, k: usize) {
        let kept = !bit(k);
        self.asked[k] = f64::NAN;
        self.settled &= kept;
        self.line_filled &= kept;
        self.valves_shut &= kept;
    }
}

impl ClosingValve {
    /// Absolute tire pressure at which the line, while venting, falls to the closing pressure.
    fn stalls_at(&self, ambient: f64) -> f64 {
        let line = self.closes_below + ambient;
        let q = line * self.rest.at(ambient / line).0;
        self.valve.map_or(line, |valve| upstream(valve, q, line))
    }
}

/// Upstream pressure that drives `q` (over √(T0/T)) through a restriction to `p2`.
fn upstream(restriction: Restriction, q: f64, p2: f64) -> f64 {
    let (c, b) = (restriction.c().as_m3_per_s_pa(), restriction.b());
    let choked = q / c;
    if p2 <= b * choked {
        return choked;
    }
    let g = choked * (1.0 - b);
    let sum = p2 * p2 + g * g;
    sum / (b * p2 + (b * b * p2 * p2 + (1.0 - 2.0 * b) * sum).max(0.0).sqrt())
}
