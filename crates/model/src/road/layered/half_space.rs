//! One uniform circle on one elastic half-space, anywhere below it, in closed form.

use std::f64::consts::PI;

use super::elliptic::cel;
use super::field::Field;
use super::wave::Medium;

/// The field of a unit vertical pressure on a circle of radius `a`, at radius `r` and depth `z`.
///
/// The integrals `a ∫ J₁(ka) J_n(kr) k^m e^(-kz) dk` are those of a loop, a disc and their
/// potentials: the solid angle of the disc for n = 0, m = 0, the rest by derivatives and by
/// Euler's rule for homogeneous functions.
///
/// # Validity
/// `a` above zero, `r` and `z` not below. On the edge itself (z = 0, r = a) the mean of both
/// sides.
///
/// # Source
/// `boussinesq-1885`; `eason-noble-sneddon-1955`.
pub fn under_circle(medium: &Medium, a: f64, r: f64, z: f64) -> Field {
    let i = Integrals::of(a, r, z);
    let nu = medium.poisson;
    let compliance = 1.0 / medium.double_shear;
    Field {
        vertical_stress: -(i.j10_0 + z * i.j10_1),
        shear_stress: -z * i.j11_1,
        settlement: compliance * (2.0 * (1.0 - nu) * i.j10_m1 + z * i.j10_0),
        horizontal_dilation: compliance * (z * i.j10_1 - (1.0 - 2.0 * nu) * i.j10_0),
        hoop_strain: compliance * (z * i.j11_0_by_r - (1.0 - 2.0 * nu) * i.j11_m1_by_r),
    }
}

/// `a ∫ J₁(ka) J_n(kr) k^m e^(-kz) dk`, named by n and m; those of J₁ that vanish on the axis
/// divided by r.
struct Integrals {
    j10_m1: f64,
    j10_0: f64,
    j10_1: f64,
    j11_m1_by_r: f64,
    j11_0_by_r: f64,
    j11_1: f64,
}

impl Integrals {
    fn of(a: f64, r: f64, z: f64) -> Self {
        if r < 1e-6 * a.hypot(z) { Self::on_axis(a, z) } else { Self::off_axis(a, r, z) }
    }

    fn on_axis(a: f64, z: f64) -> Self {
        let slant = a.hypot(z);
        let j10_0 = 1.0 - z / slant;
        let j10_1 = a * a / (slant * slant * slant);
        Self {
            j10_m1: slant - z,
            j10_0,
            j10_1,
            j11_m1_by_r: 0.5 * j10_0,
            j11_0_by_r: 0.5 * j10_1,
            j11_1: 0.0,
        }
    }

    fn off_axis(a: f64, r: f64, z: f64) -> Self {
        const EDGE: f64 = 1e-9;
        let at_edge = (r - a).abs() < EDGE * a;
        let (r, z) = if at_edge { (a, z.max(EDGE * a)) } else { (r, z) };
        let alpha = (a + r).hypot(z);
        let beta = (a - r).hypot(z);
        let kc = beta / alpha;
        let gamma = (a - r) / (a + r);
        let first = cel(kc, 1.0, 1.0, 1.0);
        let second = cel(kc, 1.0, 1.0, kc * kc);
        // The solid angle of a disc over a full turn, and the same with both radii exchanged.
        let (disc, exchanged) = if at_edge {
            let both = 0.5 - z * first / (PI * alpha);
            (both, both)
        } else {
            let inside = f64::from(u8::from(r < a));
            let turn = z / (PI * alpha);
            let p = gamma * gamma;
            (
                inside - turn * (1.0 + gamma) * cel(kc, p, 1.0, gamma),
                1.0 - inside - turn * (1.0 - gamma) * cel(kc, p, 1.0, -gamma),
            )
        };
        let j11_0 = 2.0 * a / (PI * alpha) * cel(kc, 1.0, -1.0, 1.0);
        let beta2 = beta * beta;
        Self {
            j10_m1: 2.0 * a * a * first / (PI * alpha) - r * j11_0 - z * disc,
            j10_0: disc,
            j10_1: (first + (a * a - r * r - z * z) / beta2 * second) / (PI * alpha),
            j11_m1_by_r: 0.5 * ((a / r).powi(2) * exchanged + disc - z * j11_0 / r),
            j11_0_by_r: j11_0 / r,
            j11_1: 2.0 * a * z / (PI * alpha * beta2) * cel(kc, 1.0, 1.0, -kc * kc),
        }
    }
}
