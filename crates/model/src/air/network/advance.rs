//! Advancing the network in time, up to the first thing that switches.

use quantity::Time;

use super::flows::{Flows, Manifold, Pressures, Running, Trial};
use super::locate::first_moment;
use super::state::{AirState, bit};
use super::surroundings::Air;
use super::work::{ChannelOrder, Work};
use super::{MAX_CHANNELS, Network, Surroundings};

/// Longest step while no channel works, s.
const IDLE_STEP: f64 = 4.0;
/// Shortest step, s: a vessel that fast is in balance anyway.
const SHORTEST_STEP: f64 = 1e-4;

/// Most channels at work for which the small, fast form of a step has room.
const FEW: usize = 4;
/// Largest doubt a step may leave, Pa.
const DOUBT: f64 = 4.0;

/// Something that switched.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirEvent {
    /// The channel's tires read their target.
    ChannelReached {
        /// Index of the channel.
        channel: usize,
    },
    /// The governor cut in.
    CompressorLoads,
    /// The governor cut out.
    CompressorUnloads,
    /// The protection valve opened.
    ProtectionOpens,
    /// The protection valve shut.
    ProtectionShuts,
    /// Service pressure fell to where the controller takes no more air for tires.
    GateStops,
    /// Service pressure rose to where the controller takes air again.
    GateResumes,
    /// Line pressure is too low for the channel's self-closing valves: nothing flows.
    WheelValvesShut {
        /// Index of the channel.
        channel: usize,
    },
    /// Line pressure has come back and the channel's self-closing valves open.
    WheelValvesOpen {
        /// Index of the channel.
        channel: usize,
    },
}

/// How far an advance came.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Advance {
    /// Time passed.
    pub elapsed: Time,
    /// What switched at that moment; `None` if the whole time passed.
    pub event: Option<AirEvent>,
}

/// Absolute pressures that bound the service reservoirs until something switches.
struct Watch {
    service_low: f64,
    service_high: f64,
    reserve_low: f64,
    reserve_high: f64,
}

impl Network {
    /// Advances by `dt`, or to the first event, whichever comes first.
    ///
    /// Orders of channels the network does not have are ignored. Several things that
    /// switch at once are told one by one, the later ones with no time elapsed.
    ///
    /// # Validity
    /// `dt` not negative; `engine_load` outside 0 to 1 is taken as the nearer end, and
    /// negative engine speed or brake draw as zero.
    pub fn advance(
        &self,
        state: &mut AirState,
        around: &Surroundings,
        orders: &[ChannelOrder; MAX_CHANNELS],
        dt: Time,
    ) -> Advance {
        let air = Air::of(self, around);
        state.bring_reservoirs_to(air.temperature);
        let dt = dt.as_s();
        let mut elapsed = 0.0;
        let mut work = Work::NONE;
        let event = match self.allot(state, &air, around, orders, &mut work) {
            Some(channel) => Some(AirEvent::ChannelReached { channel }),
            None => self.run(state, &air, &work, dt, &mut elapsed),
        };
        Advance { elapsed: Time::from_s(elapsed), event }
    }

    fn run(
        &self,
        state: &mut AirState,
        air: &Air,
        work: &Work,
        dt: f64,
        elapsed: &mut f64,
    ) -> Option<AirEvent> {
        let watch = self.watch(state, air, work);
        let mut longest = self.largest_step;
        loop {
            let event = self.due(state, air, work);
            if event.is_some() || *elapsed >= dt {
                return event;
            }
            let left = dt - *elapsed;
            let idle = if work.count == 0 { self.idle(state, air, &watch, left) } else { None };
            let step =
                match idle {
                    Some(step) => step,
                    None if work.count <= FEW => Running::<FEW>::new(self, air, work, state)
                        .advance(state, &watch, left, &mut longest),
                    None => Running::<MAX_CHANNELS>::new(self, air, work, state).advance(
                        state,
                        &watch,
                        left,
                        &mut longest,
                    ),
                };
            *elapsed = if step >= left { dt } else { *elapsed + step };
        }
    }

    fn watch(&self, state: &AirState, air: &Air, work: &Work) -> Watch {
        let mut watch = Watch {
            service_low: f64::NEG_INFINITY,
            service_high: f64::INFINITY,
            reserve_low: f64::NEG_INFINITY,
            reserve_high: f64::INFINITY,
        };
        let mut pair = |falls: bool, low: f64, high: f64| {
            if falls {
                watch.service_low = watch.service_low.max(low + air.ambient);
            } else {
                watch.service_high = watch.service_high.min(high + air.ambient);
            }
        };
        pair(!state.loading, self.governor.low, self.governor.high);
        pair(state.protection_open, self.protection.low, self.protection.high);
        if let Some(gate) = self.gate {
            pair(state.gate_open, gate.low, gate.high);
        }
        if self.reserve_volume.is_some() {
            watch.reserve_low = work.supply_low;
            watch.reserve_high = work.supply_high;
        } else {
            watch.service_low = watch.service_low.max(work.supply_low);
            watch.service_high = watch.service_high.min(work.supply_high);
        }
        watch
    }

    /// What switches at this very state, with the switch made.
    fn due(&self, state: &mut AirState, air: &Air, work: &Work) -> Option<AirEvent> {
        let gauge = state.service - air.ambient;
        for slot in 0..work.count {
            let channel = usize::from(work.channel[slot]);
            let filling = work.filling & bit(slot) != 0;
            let (now, bound) = (state.tires[channel], work.bound[slot]);
            if (filling && now >= bound) || (!filling && now <= bound) {
                state.settled |= bit(channel);
                if work.stalls & bit(slot) == 0 {
                    return Some(AirEvent::ChannelReached { channel });
                }
                state.valves_shut |= bit(channel);
                return Some(AirEvent::WheelValvesShut { channel });
            }
        }
        if crossed(&mut state.loading, gauge <= self.governor.low, gauge >= self.governor.high) {
            return Some(if state.loading {
                AirEvent::CompressorLoads
            } else {
                AirEvent::CompressorUnloads
            });
        }
        let protection = self.protection;
        if crossed(&mut state.protection_open, gauge >= protection.high, gauge <= protection.low) {
            if state.protection_open {
                return Some(AirEvent::ProtectionOpens);
            }
            state.closures += 1;
            return Some(AirEvent::ProtectionShuts);
        }
        if let Some(gate) = self.gate
            && crossed(&mut state.gate_open, gauge >= gate.high, gauge <= gate.low)
        {
            return Some(if state.gate_open { AirEvent::GateResumes } else { AirEvent::GateStops });
        }
        self.wheel_valves_due(state, air, work)
    }

    fn wheel_valves_due(&self, state: &mut AirState, air: &Air, work: &Work) -> Option<AirEvent> {
        let supply = self.supply(state);
        if supply > work.supply_low && supply < work.supply_high {
            return None;
        }
        for (channel, spec) in self.channels.iter().enumerate() {
            let Some(closing) = &spec.closing else { continue };
            if state.asked[channel].is_nan() || state.settled & bit(channel) != 0 {
                continue;
            }
            let above = supply - air.ambient - closing.closes_below;
            let shut = state.valves_shut & bit(channel) != 0;
            if !shut && above <= 0.0 {
                state.valves_shut |= bit(channel);
                return Some(AirEvent::WheelValvesShut { channel });
            }
            if shut && above >= super::work::REOPENING_BAND {
                state.valves_shut &= !bit(channel);
                return Some(AirEvent::WheelValvesOpen { channel });
            }
        }
        None
    }

    /// One step of the service reservoirs alone; `None` if they feed the reserve tank.
    fn idle(&self, state: &mut AirState, air: &Air, watch: &Watch, left: f64) -> Option<f64> {
        let coupled = self.reserve_volume.is_some() && state.protection_open;
        if coupled && state.service > state.reserve {
            return None;
        }
        let start = state.service;
        let (efficiency, slope) =
            if state.loading { self.efficiency.at(start * air.per_inlet) } else { (0.0, 0.0) };
        let rate = (air.swept * efficiency - air.brakes) * air.service_gain;
        let decay = air.swept * slope * air.per_inlet * air.service_gain;
        // The rate is so nearly linear in pressure that its exponential needs three terms.
        let end = |h: f64| {
            let growth = decay * h;
            let p = start + rate * h * (1.0 + growth * (0.5 + growth * (1.0 / 6.0)));
            if p > air.ambient { p } else { p.max(start.min(air.ambient)) }
        };
        let mut h = left.min(IDLE_STEP);
        let mut p = end(h);
        if p <= watch.service_low || p >= watch.service_high {
            let excess = |p: f64| (watch.service_low - p).max(p - watch.service_high);
            h = first_moment(h, excess(start), excess(p), |t| excess(end(t)));
            p = end(h);
        }
        if coupled && p > state.reserve {
            return None;
        }
        state.service = p;
        let gained = (p - start) / air.service_gain;
        let (compressed, brakes) = if state.loading && p > air.ambient {
            (gained + air.brakes * h, air.brakes * h)
        } else {
            // Down at ambient the brakes get what the compressor gives.
            let compressed = air.swept * efficiency * h;
            (compressed, compressed - gained)
        };
        state.totals.compressed += compressed;
        state.totals.brakes += brakes;
        state.lowest = state.lowest.min(p - air.ambient);
        state.duty.pass(h, state.loading);
        Some(h)
    }
}

/// Flips a switch whose condition has come; tells whether it did.
fn crossed(on: &mut bool, turns_on: bool, turns_off: bool) -> bool {
    let flips = if *on { turns_off } else { turns_on };
    *on ^= flips;
    flips
}

impl<const N: usize> Running<'_, N> {
    /// One step, no longer than `left`, cut short where something switches.
    fn advance(&self, state: &mut AirState, watch: &Watch, left: f64, longest: &mut f64) -> f64 {
        let start = self.pressures(state);
        let mut manifold = Manifold::new(state.manifold);
        let k1 = self.flows(&start, &mut manifold);
        let mut h = longest.min(left);
        let mut trial = self.step(&start, &k1, h, &mut manifold);
        let mut halved = false;
        while trial.doubt > DOUBT && h > SHORTEST_STEP {
            halved = true;
            h *= 0.5;
            trial = self.step(&start, &k1, h, &mut manifold);
        }
        if halved {
            *longest = h;
        } else if h >= *longest {
            *longest = (2.0 * h).min(self.network.largest_step);
        }
        let at_start = self.excess(&start, watch);
        let at = |t: f64| self.step(&start, &k1, t, &mut manifold.clone());
        let located = |end: f64, at_end: f64| {
            first_moment(end, at_start, at_end, |t| self.excess(&at(t).end, watch))
        };
        let mut moment = None;
        let turn = turning_point(start.service, &trial, h);
        if let Some((t, _)) = turn {
            let at_turn = self.excess(&at(t).end, watch);
            if at_turn >= 0.0 {
                moment = Some(located(t, at_turn));
            }
        }
        let at_end = self.excess(&trial.end, watch);
        if moment.is_none() && at_end >= 0.0 {
            moment = Some(located(h, at_end));
        }
        match moment {
            Some(t) => {
                h = t;
                trial = at(t);
            }
            None => {
                if let Some((_, service)) = turn {
                    state.lowest = state.lowest.min(service - self.air.ambient);
                }
            }
        }
        state.manifold = manifold.ratio;
        self.book(state, &trial, h);
        h
    }

    /// How far the pressures are beyond their bounds, Pa; negative while within all.
    fn excess(&self, p: &Pressures<N>, watch: &Watch) -> f64 {
        let mut excess = (watch.service_low - p.service).max(p.service - watch.service_high);
        excess = excess.max((watch.reserve_low - p.reserve).max(p.reserve - watch.reserve_high));
        for slot in 0..self.count {
            let over = p.tires[slot] - self.work.bound[slot];
            excess = excess.max(if self.filling[slot] { over } else { -over });
        }
        excess
    }

    fn book(&self, state: &mut AirState, trial: &Trial<N>, h: f64) {
        let Flows { compressed, brakes, filling, channels, .. } = trial.mean;
        state.service = trial.end.service;
        state.reserve = trial.end.reserve;
        for (slot, flow) in channels.iter().enumerate().take(self.count) {
            state.tires[self.channel[slot]] = trial.end.tires[slot];
            if !self.filling[slot] {
                state.totals.vented += h * flow;
            }
        }
        state.totals.compressed += h * compressed;
        state.totals.brakes += h * brakes;
        state.totals.into_tires += h * filling;
        state.lowest = state.lowest.min(trial.end.service - self.air.ambient);
        state.duty.pass(h, self.loading);
    }
}

/// Where the service pressure turns within the step and what it is there, by the cubic
/// through both ends: so a dip and its recovery are not stepped over.
fn turning_point<const N: usize>(start: f64, trial: &Trial<N>, h: f64) -> Option<(f64, f64)> {
    let (m0, m1) = trial.service_rates;
    if m0 * m1 >= 0.0 {
        return None;
    }
    let rise = (trial.end.service - start) / h;
    // Slope of the cubic over t = time/h: m0 + 2ct + 3dt².
    let (c, d) = (3.0 * rise - 2.0 * m0 - m1, m0 + m1 - 2.0 * rise);
    let root = (c * c - 3.0 * m0 * d).max(0.0).sqrt();
    // The root of the slope that lies between its opposite signs, without cancellation.
    let t = m0 / (-c + if m0 < 0.0 { -root } else { root });
    let t = t.clamp(0.0, 1.0);
    Some((t * h, start + h * t * (m0 + t * (c + t * d))))
}
