//! Flows between the vessels at given pressures, and one step of the integration.

use super::super::reference_air::P0;
use super::super::restriction::shape_and_slope;
use super::state::{AirState, bit};
use super::surroundings::Air;
use super::work::Work;
use super::{MAX_CHANNELS, Network};

/// Pressures of the vessels at one moment; tires by slot, referred.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pressures {
    pub(super) service: f64,
    pub(super) reserve: f64,
    pub(super) tires: [f64; MAX_CHANNELS],
}

/// Flows in reference volume, m³/s; by slot, each in its own direction.
#[derive(Debug, Clone, Copy)]
pub(super) struct Flows {
    pub(super) compressed: f64,
    pub(super) brakes: f64,
    /// Through the protection valve.
    pub(super) drawn: f64,
    /// Out of the supply into tires.
    pub(super) filling: f64,
    pub(super) channels: [f64; MAX_CHANNELS],
}

/// One trial step.
#[derive(Debug, Clone, Copy)]
pub(super) struct Trial {
    pub(super) end: Pressures,
    pub(super) mean: Flows,
    /// Rate of the service pressure at the start and near the end.
    pub(super) service_rates: (f64, f64),
    /// How far a rule of lower order would have come elsewhere, Pa.
    pub(super) doubt: f64,
}

/// The network with all that stays constant over one advance.
pub(super) struct Running<'a> {
    pub(super) network: &'a Network,
    pub(super) air: &'a Air,
    pub(super) work: &'a Work,
    pub(super) loading: bool,
    pub(super) protection_open: bool,
    /// Rise of a slot's referred pressure for a cubic meter, signed by direction.
    gain: [f64; MAX_CHANNELS],
    /// √(T0/T) of a slot's tires.
    root: [f64; MAX_CHANNELS],
}

impl<'a> Running<'a> {
    pub(super) fn new(
        network: &'a Network,
        air: &'a Air,
        work: &'a Work,
        state: &AirState,
    ) -> Self {
        let (mut gain, mut root) = ([0.0; MAX_CHANNELS], [0.0; MAX_CHANNELS]);
        for slot in 0..work.count {
            let sign = if work.filling & bit(slot) != 0 { 1.0 } else { -1.0 };
            gain[slot] = sign * P0 / network.channels[usize::from(work.channel[slot])].tire_volume;
            root[slot] = (1.0 / work.warmth[slot]).sqrt();
        }
        let (loading, protection_open) = (state.loading, state.protection_open);
        Self { network, air, work, loading, protection_open, gain, root }
    }

    pub(super) fn pressures(&self, state: &AirState) -> Pressures {
        let mut tires = [0.0; MAX_CHANNELS];
        for (slot, p) in tires.iter_mut().enumerate().take(self.work.count) {
            *p = state.tires[usize::from(self.work.channel[slot])];
        }
        Pressures { service: state.service, reserve: state.reserve, tires }
    }

    /// All flows at these pressures. `manifold` is the last ratio of the pressure behind
    /// the protection valve to the service pressure.
    pub(super) fn flows(&self, p: &Pressures, manifold: &mut f64) -> Flows {
        let (air, work) = (self.air, self.work);
        let mut flows = Flows {
            compressed: self.compressed(p.service),
            brakes: if p.service > air.ambient { air.brakes } else { 0.0 },
            drawn: 0.0,
            filling: 0.0,
            channels: [0.0; MAX_CHANNELS],
        };
        for slot in 0..work.count {
            if work.filling & bit(slot) == 0 {
                let read = p.tires[slot] * work.warmth[slot];
                let vent = &self.network.channels[usize::from(work.channel[slot])].vent;
                flows.channels[slot] = self.root[slot] * read * vent.at(air.ambient / read).0;
            }
        }
        if self.network.reserve_volume.is_some() {
            if work.filling != 0 {
                self.fill_from(p.reserve * air.supply_root, p.reserve, p, &mut flows);
            }
            if self.protection_open && p.service > p.reserve {
                let (c, b) = (self.network.protection_c, self.network.protection_b);
                let open = c * shape_and_slope(b, p.reserve / p.service).0;
                flows.drawn = air.supply_root * p.service * open;
            }
        } else if work.filling != 0 {
            self.fill_through_protection(p, manifold, &mut flows);
            flows.drawn = flows.filling;
        }
        flows
    }

    #[inline]
    pub(super) fn compressed(&self, service: f64) -> f64 {
        if self.loading {
            self.air.swept * self.network.efficiency.at(service / self.air.inlet)
        } else {
            0.0
        }
    }

    fn fill_from(&self, drive: f64, upstream: f64, p: &Pressures, flows: &mut Flows) {
        let work = self.work;
        for slot in 0..work.count {
            if work.filling & bit(slot) != 0 {
                let read = p.tires[slot] * work.warmth[slot];
                let fill = &self.network.channels[usize::from(work.channel[slot])].fill;
                let q = drive * fill.at(read / upstream).0;
                flows.channels[slot] = q;
                flows.filling += q;
            }
        }
    }

    /// Solves the pressure behind the protection valve, where its flow is the sum of the
    /// channels'. Newton's method from the last ratio, kept between bounds; the last
    /// correction, being small, is made in the flows themselves.
    fn fill_through_protection(&self, p: &Pressures, manifold: &mut f64, flows: &mut Flows) {
        const SMALL_CORRECTION: f64 = 3e-4;
        let (network, work) = (self.network, self.work);
        let mut softest = f64::INFINITY;
        for slot in 0..work.count {
            if work.filling & bit(slot) != 0 {
                softest = softest.min(p.tires[slot] * work.warmth[slot]);
            }
        }
        let (mut low, mut high) = (softest / p.service, 1.0);
        if low >= high {
            return;
        }
        let mut m =
            if *manifold > low && *manifold < high { *manifold } else { 0.5 * (low + high) };
        let mut slopes = [0.0; MAX_CHANNELS];
        for _ in 0..60 {
            let (phi, phi_slope) = shape_and_slope(network.protection_b, m);
            let (mut sum, mut sum_slope) = (0.0, 0.0);
            for (slot, slope) in slopes.iter_mut().enumerate().take(work.count) {
                if work.filling & bit(slot) != 0 {
                    let r = p.tires[slot] * work.warmth[slot] / (p.service * m);
                    let fill = &network.channels[usize::from(work.channel[slot])].fill;
                    let (g, g_slope) = fill.at(r);
                    flows.channels[slot] = m * g;
                    *slope = g - r * g_slope;
                    sum += flows.channels[slot];
                    sum_slope += *slope;
                }
            }
            let excess = network.protection_c * phi - sum;
            let step = -excess / (network.protection_c * phi_slope - sum_slope);
            if excess.abs() <= SMALL_CORRECTION * sum && step.abs() < SMALL_CORRECTION {
                m += step;
                for (flow, slope) in flows.channels.iter_mut().zip(&slopes).take(work.count) {
                    *flow += slope * step;
                }
                break;
            }
            if excess > 0.0 {
                low = m;
            } else {
                high = m;
            }
            let newton = m + step;
            let next = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
            if high - low < 1e-12 {
                break;
            }
            m = next;
        }
        *manifold = m;
        let drive = self.air.supply_root * p.service;
        for slot in 0..work.count {
            if work.filling & bit(slot) != 0 {
                flows.channels[slot] *= drive;
                flows.filling += flows.channels[slot];
            }
        }
    }

    fn service_rate(&self, flows: &Flows) -> f64 {
        (flows.compressed - flows.brakes - flows.drawn) * self.air.service_gain
    }

    fn reserve_rate(&self, flows: &Flows) -> f64 {
        (flows.drawn - flows.filling) * self.air.reserve_gain
    }

    fn moved(&self, p: &Pressures, flows: &Flows, h: f64) -> Pressures {
        let mut tires = p.tires;
        for (slot, tire) in tires.iter_mut().enumerate().take(self.work.count) {
            *tire += h * self.gain[slot] * flows.channels[slot];
        }
        Pressures {
            service: p.service + h * self.service_rate(flows),
            reserve: p.reserve + h * self.reserve_rate(flows),
            tires,
        }
    }

    /// Largest difference, as a rate of pressure, between the step's mean flow and the
    /// one its two middle stages alone would give.
    fn doubt(&self, [k1, k2, k3, k4]: [&Flows; 4]) -> f64 {
        let of = |rate: &dyn Fn(&Flows) -> f64| {
            ((rate(k1) - rate(k2) - rate(k3) + rate(k4)) / 6.0).abs()
        };
        let mut largest = of(&|k| self.service_rate(k)).max(of(&|k| self.reserve_rate(k)));
        for slot in 0..self.work.count {
            largest = largest.max(of(&|k| self.gain[slot] * k.channels[slot]));
        }
        largest
    }

    /// One step of the classical fourth-order Runge–Kutta method from flows `k1`.
    pub(super) fn step(&self, p: &Pressures, k1: &Flows, h: f64, manifold: &mut f64) -> Trial {
        let k2 = self.flows(&self.moved(p, k1, 0.5 * h), manifold);
        let k3 = self.flows(&self.moved(p, &k2, 0.5 * h), manifold);
        let k4 = self.flows(&self.moved(p, &k3, h), manifold);
        let weighted = |a: f64, b: f64, c: f64, d: f64| (a + 2.0 * (b + c) + d) / 6.0;
        let mut mean = Flows {
            compressed: weighted(k1.compressed, k2.compressed, k3.compressed, k4.compressed),
            brakes: weighted(k1.brakes, k2.brakes, k3.brakes, k4.brakes),
            drawn: weighted(k1.drawn, k2.drawn, k3.drawn, k4.drawn),
            filling: weighted(k1.filling, k2.filling, k3.filling, k4.filling),
            channels: [0.0; MAX_CHANNELS],
        };
        for slot in 0..self.work.count {
            let of = |k: &Flows| k.channels[slot];
            mean.channels[slot] = weighted(of(k1), of(&k2), of(&k3), of(&k4));
        }
        Trial {
            end: self.moved(p, &mean, h),
            mean,
            service_rates: (self.service_rate(k1), self.service_rate(&k4)),
            doubt: h * self.doubt([k1, &k2, &k3, &k4]),
        }
    }
}
