//! Flows between the vessels at given pressures, and one step of the integration.

use super::super::reference_air::{P0, T0};
use super::super::restriction::shape_and_slope;
use super::Network;
use super::state::{AirState, bit};
use super::surroundings::Air;
use super::work::Work;

/// Pressures of the vessels at one moment; tires by slot, referred.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pressures<const N: usize> {
    pub(super) service: f64,
    pub(super) reserve: f64,
    pub(super) tires: [f64; N],
}

/// Flows in reference volume, m³/s; by slot, each in its own direction.
#[derive(Debug, Clone, Copy)]
pub(super) struct Flows<const N: usize> {
    pub(super) compressed: f64,
    pub(super) brakes: f64,
    /// Through the protection valve.
    pub(super) drawn: f64,
    /// Out of the supply into tires.
    pub(super) filling: f64,
    pub(super) channels: [f64; N],
}

/// One trial step.
#[derive(Debug, Clone, Copy)]
pub(super) struct Trial<const N: usize> {
    pub(super) end: Pressures<N>,
    pub(super) mean: Flows<N>,
    /// Rate of the service pressure at the start and near the end.
    pub(super) service_rates: (f64, f64),
    /// How far a rule of lower order would have come elsewhere, Pa.
    pub(super) doubt: f64,
}

/// The network with all that stays constant over one advance, room for `N` channels at work.
pub(super) struct Running<'a, const N: usize> {
    pub(super) network: &'a Network,
    pub(super) air: &'a Air,
    pub(super) work: &'a Work,
    pub(super) count: usize,
    pub(super) loading: bool,
    protection_open: bool,
    /// √(T0/T1) of flow out of the reservoirs.
    supply_root: f64,
    /// The channel in a slot.
    pub(super) channel: [usize; N],
    pub(super) filling: [bool; N],
    /// Tire temperature over the reference temperature.
    warmth: [f64; N],
    /// √(T0/T) of a slot's tires.
    root: [f64; N],
    /// Rise of a slot's referred pressure for a cubic meter, signed by direction.
    gain: [f64; N],
}

/// The pressure behind the protection valve over the service pressure, as solved last.
#[derive(Debug, Clone, Copy)]
pub(super) struct Manifold<const N: usize> {
    pub(super) ratio: f64,
    /// Ratios of tire to service pressure it was solved for.
    tires: [f64; N],
    /// How much each of them moves it.
    pull: [f64; N],
}

impl<const N: usize> Manifold<N> {
    pub(super) fn new(ratio: f64) -> Self {
        Self { ratio, tires: [0.0; N], pull: [0.0; N] }
    }

    /// Where it should be for other tire ratios, to first order.
    fn guess(&self, tires: &[f64; N]) -> f64 {
        let mut ratio = self.ratio;
        for (pull, (now, then)) in self.pull.iter().zip(tires.iter().zip(&self.tires)) {
            ratio += pull * (now - then);
        }
        ratio
    }
}

impl<'a, const N: usize> Running<'a, N> {
    pub(super) fn new(
        network: &'a Network,
        air: &'a Air,
        work: &'a Work,
        state: &AirState,
    ) -> Self {
        let mut running = Self {
            network,
            air,
            work,
            count: work.count.min(N),
            loading: state.loading,
            protection_open: state.protection_open,
            supply_root: (T0 / air.temperature).sqrt(),
            channel: [0; N],
            filling: [false; N],
            warmth: [1.0; N],
            root: [1.0; N],
            gain: [0.0; N],
        };
        for slot in 0..running.count {
            let channel = usize::from(work.channel[slot]);
            let filling = work.filling & bit(slot) != 0;
            running.channel[slot] = channel;
            running.filling[slot] = filling;
            running.warmth[slot] = work.warmth[slot];
            running.root[slot] = 1.0 / work.warmth[slot].sqrt();
            running.gain[slot] =
                if filling { P0 } else { -P0 } / network.channels[channel].tire_volume;
        }
        running
    }

    pub(super) fn pressures(&self, state: &AirState) -> Pressures<N> {
        let mut tires = [0.0; N];
        for (tire, channel) in tires.iter_mut().zip(self.channel).take(self.count) {
            *tire = state.tires[channel];
        }
        Pressures { service: state.service, reserve: state.reserve, tires }
    }

    /// All flows at these pressures; `manifold` is where the last solution stood.
    pub(super) fn flows(&self, p: &Pressures<N>, manifold: &mut Manifold<N>) -> Flows<N> {
        let air = self.air;
        let mut flows = Flows {
            compressed: if self.loading {
                air.swept * self.network.efficiency.at(p.service * air.per_inlet).0
            } else {
                0.0
            },
            brakes: if p.service > air.ambient { air.brakes } else { 0.0 },
            drawn: 0.0,
            filling: 0.0,
            channels: [0.0; N],
        };
        for slot in 0..self.count {
            if !self.filling[slot] {
                let read = p.tires[slot] * self.warmth[slot];
                let open = self.network.channels[self.channel[slot]].vent.at(air.ambient / read).0;
                flows.channels[slot] = self.root[slot] * read * open;
            }
        }
        if self.network.reserve_volume.is_some() {
            self.fill_from_reserve(p, &mut flows);
            if self.protection_open && p.service > p.reserve {
                let (c, b) = (self.network.protection_c, self.network.protection_b);
                let open = c * shape_and_slope(b, p.reserve / p.service).0;
                flows.drawn = self.supply_root * p.service * open;
            }
        } else if self.work.filling != 0 {
            self.fill_through_protection(p, manifold, &mut flows);
            flows.drawn = flows.filling;
        }
        flows
    }

    fn fill_from_reserve(&self, p: &Pressures<N>, flows: &mut Flows<N>) {
        let drive = self.supply_root * p.reserve;
        let inverse = 1.0 / p.reserve;
        for slot in 0..self.count {
            if self.filling[slot] {
                let r = p.tires[slot] * self.warmth[slot] * inverse;
                flows.channels[slot] =
                    drive * self.network.channels[self.channel[slot]].fill.at(r).0;
                flows.filling += flows.channels[slot];
            }
        }
    }

    /// Solves the pressure behind the protection valve, where its flow is the sum of the
    /// channels'. Newton's method from the last ratio, kept between bounds; the last
    /// correction, being small, is made in the flows themselves.
    fn fill_through_protection(
        &self,
        p: &Pressures<N>,
        manifold: &mut Manifold<N>,
        flows: &mut Flows<N>,
    ) {
        const SMALL_CORRECTION: f64 = 3e-4;
        let (c, b) = (self.network.protection_c, self.network.protection_b);
        let mut tires = [0.0; N];
        let (mut low, mut high) = (f64::INFINITY, 1.0);
        let inverse = 1.0 / p.service;
        for (slot, tire) in tires.iter_mut().enumerate().take(self.count) {
            if self.filling[slot] {
                *tire = p.tires[slot] * self.warmth[slot] * inverse;
                low = low.min(*tire);
            }
        }
        if low >= high {
            return;
        }
        let guess = manifold.guess(&tires);
        let mut m = if guess > low && guess < high { guess } else { 0.5 * (low + high) };
        let (mut slopes, mut pull) = ([0.0; N], [0.0; N]);
        while high - low > 1e-12 {
            let (phi, phi_slope) = shape_and_slope(b, m);
            let (mut sum, mut sum_slope) = (0.0, 0.0);
            let inverse = 1.0 / m;
            for slot in 0..self.count {
                if self.filling[slot] {
                    let r = tires[slot] * inverse;
                    let (open, open_slope) = self.network.channels[self.channel[slot]].fill.at(r);
                    flows.channels[slot] = m * open;
                    slopes[slot] = open - r * open_slope;
                    pull[slot] = -open_slope;
                    sum += flows.channels[slot];
                    sum_slope += slopes[slot];
                }
            }
            let excess = c * phi - sum;
            let per_excess = 1.0 / (sum_slope - c * phi_slope);
            let step = excess * per_excess;
            if excess.abs() <= SMALL_CORRECTION * sum && step.abs() < SMALL_CORRECTION {
                m += step;
                for (flow, slope) in flows.channels.iter_mut().zip(slopes) {
                    *flow += slope * step;
                }
                *manifold = Manifold { ratio: m, tires, pull: pull.map(|p| p * per_excess) };
                break;
            }
            if excess > 0.0 {
                low = m;
            } else {
                high = m;
            }
            let newton = m + step;
            m = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
        }
        let drive = self.supply_root * p.service;
        for slot in 0..self.count {
            if self.filling[slot] {
                flows.channels[slot] *= drive;
                flows.filling += flows.channels[slot];
            }
        }
    }

    #[inline]
    fn service_rate(&self, flows: &Flows<N>) -> f64 {
        (flows.compressed - flows.brakes - flows.drawn) * self.air.service_gain
    }

    #[inline]
    fn reserve_rate(&self, flows: &Flows<N>) -> f64 {
        (flows.drawn - flows.filling) * self.air.reserve_gain
    }

    #[inline]
    fn moved(&self, p: &Pressures<N>, flows: &Flows<N>, h: f64) -> Pressures<N> {
        let mut tires = p.tires;
        for (tire, (gain, flow)) in tires.iter_mut().zip(self.gain.iter().zip(&flows.channels)) {
            *tire += h * gain * flow;
        }
        Pressures {
            service: p.service + h * self.service_rate(flows),
            reserve: p.reserve + h * self.reserve_rate(flows),
            tires,
        }
    }

    /// Fastest change of pressure that these flows make, without its sign.
    #[inline]
    fn steepest(&self, flows: &Flows<N>) -> f64 {
        let tires = flows.channels.iter().zip(&self.gain).map(|(q, gain)| (q * gain).abs());
        tires.fold(self.service_rate(flows).abs().max(self.reserve_rate(flows).abs()), f64::max)
    }

    /// One step of the classical fourth-order Runge–Kutta method from flows `k1`.
    pub(super) fn step(
        &self,
        p: &Pressures<N>,
        k1: &Flows<N>,
        h: f64,
        manifold: &mut Manifold<N>,
    ) -> Trial<N> {
        let k2 = self.flows(&self.moved(p, k1, 0.5 * h), manifold);
        let k3 = self.flows(&self.moved(p, &k2, 0.5 * h), manifold);
        let k4 = self.flows(&self.moved(p, &k3, h), manifold);
        let stages = [k1, &k2, &k3, &k4];
        let mean = combine(stages, |[a, b, c, d]| (a + 2.0 * (b + c) + d) / 6.0);
        // Two differences that both vanish with the square of the step: what the middle
        // stages alone would give, and how far they disagree.
        let doubt = self
            .steepest(&combine(stages, |[a, b, c, d]| (a - b - c + d) / 6.0))
            .max(self.steepest(&combine(stages, |[_, b, c, _]| (c - b) / 6.0)));
        Trial {
            end: self.moved(p, &mean, h),
            mean,
            service_rates: (self.service_rate(k1), self.service_rate(&k4)),
            doubt: h * doubt,
        }
    }
}

/// The same combination of four stages for every flow.
#[inline]
fn combine<const N: usize>(stages: [&Flows<N>; 4], rule: impl Fn([f64; 4]) -> f64) -> Flows<N> {
    Flows {
        compressed: rule(stages.map(|k| k.compressed)),
        brakes: rule(stages.map(|k| k.brakes)),
        drawn: rule(stages.map(|k| k.drawn)),
        filling: rule(stages.map(|k| k.filling)),
        channels: std::array::from_fn(|slot| rule(stages.map(|k| k.channels[slot]))),
    }
}
