//! What softer tires do to the ride: the change in a quarter-truck, never an absolute value.

use std::f64::consts::PI;

use quantity::Mass;

use super::stiffness::Stiffness;
use crate::source::{Citation, Key, Standing};

/// Quarter-truck values of heavy vehicles.
pub const QUARTER_TRUCK: Key = Key("quarter-truck-cebon");
/// Frequency weighting of vertical whole-body vibration.
pub const WEIGHTING: Key = Key("iso-2631-1-weighting");
/// Roughness of roads over wave number.
pub const ROUGHNESS: Key = Key("iso-8608");
/// Seat vibration of log trucks at two pressures.
pub const LOG_TRUCKS: Key = Key("altunel-de-hoop-1998");

/// Road sections of the log-truck study on which higher pressure gave more seat vibration, of 15.
pub const SECTIONS_SMOOTHER: u32 = 10;
/// Road sections of that study in all.
pub const SECTIONS: u32 = 15;

const LOWEST_HZ: f64 = 0.1;
const HIGHEST_HZ: f64 = 50.0;
const STEPS: usize = 2000;

/// Springs of an axle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Suspension {
    /// Air springs, 0.3 MN/m a wheel end.
    Air,
    /// Steel springs, 1.0 MN/m a wheel end.
    Steel,
}

/// One wheel end with what it carries.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WheelEnd {
    /// Springs.
    pub suspension: Suspension,
    /// Mass above the springs.
    pub sprung: Mass,
    /// Mass below them: axle, hub, wheels.
    pub unsprung: Mass,
}

/// Why there is no change of ride.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum RideError {
    /// Masses that are no wheel end's.
    #[error(
        "{sprung} on springs over {unsprung} below them is outside 300 to 10000 kg over 100 to 2000 kg"
    )]
    Masses {
        /// Mass above the springs.
        sprung: Mass,
        /// Mass below them.
        unsprung: Mass,
    },
}

/// How the ride changes at the same speed on the same road, in percent.
#[derive(Debug, Clone, PartialEq)]
pub struct RideChange {
    /// Body vibration over the axle, weighted as people feel it.
    pub body_pct: f64,
    /// Dynamic part of the wheel load.
    pub wheel_load_pct: f64,
    /// Whether the stiffnesses lie outside what the quarter-truck was worked for.
    pub extrapolated: bool,
    /// Where it comes from.
    pub citation: Citation,
}

/// The change of body vibration and of dynamic wheel load when the tires of a wheel end go from
/// one stiffness to another; for a dual, give the sum of its two tires.
///
/// Take the slope of the load-deflection law
/// ([`tangent_stiffness`](super::deflection::DeflectionLaw::tangent_stiffness)), not the secant.
///
/// # Validity
/// Linear, point contact, no friction in the springs, no cab and no seat: read it as "about 5 to
/// 25 % less body vibration at the same speed, not on every section". In a log-truck study it
/// was so on 10 of 15 sections and the other way on 2. It is lost if the driver speeds up: vibration
/// goes with the square root of speed. Show no absolute value.
///
/// # Errors
/// [`RideError::Masses`] for masses that are no wheel end's.
///
/// # Source
/// [`QUARTER_TRUCK`] and [`ROUGHNESS`], from memory; [`WEIGHTING`], read; [`LOG_TRUCKS`], read.
///
/// ```
/// use model::tire::ride::{Suspension, WheelEnd, ride_change};
/// use model::tire::stiffness::Stiffness;
/// use quantity::Mass;
/// let kg = Mass::from_kg;
/// let end = WheelEnd { suspension: Suspension::Air, sprung: kg(3350.0), unsprung: kg(500.0) };
/// let change =
///     ride_change(end, Stiffness::from_n_per_mm(1910.0), Stiffness::from_n_per_mm(960.0))?;
/// assert!((change.body_pct + 24.0).abs() < 1.0);
/// # Ok::<(), model::tire::ride::RideError>(())
/// ```
pub fn ride_change(
    wheel_end: WheelEnd,
    from: Stiffness,
    to: Stiffness,
) -> Result<RideChange, RideError> {
    let WheelEnd { sprung, unsprung, .. } = wheel_end;
    if !(300.0..=10_000.0).contains(&sprung.as_kg())
        || !(100.0..=2000.0).contains(&unsprung.as_kg())
    {
        return Err(RideError::Masses { sprung, unsprung });
    }
    let (body_before, load_before) = levels(wheel_end, from);
    let (body_after, load_after) = levels(wheel_end, to);
    let pct = |before: f64, after: f64| 100.0 * (after / before - 1.0);
    let usual = |k: Stiffness| (700.0..=2500.0).contains(&k.as_n_per_mm());
    Ok(RideChange {
        body_pct: pct(body_before, body_after),
        wheel_load_pct: pct(load_before, load_after),
        extrapolated: !(usual(from) && usual(to)),
        citation: Citation::of(QUARTER_TRUCK, Standing::FromMemory)
            .at("quarter-truck, percent only"),
    })
}

/// Weighted body acceleration and dynamic wheel force on a road of unit roughness.
fn levels(wheel_end: WheelEnd, tires: Stiffness) -> (f64, f64) {
    let (mut body, mut load) = (0.0, 0.0);
    let df = (HIGHEST_HZ - LOWEST_HZ) / STEPS as f64;
    for i in 0..STEPS {
        let f = LOWEST_HZ + (i as f64 + 0.5) * df;
        let (acceleration_squared, force_squared) =
            response_squared(wheel_end, tires, 2.0 * PI * f);
        // Road displacement over time falls with f² (ISO 8608, exponent 2).
        let road = df / (f * f);
        body += acceleration_squared * w_k_squared(f) * road;
        load += force_squared * road;
    }
    (body.sqrt(), load.sqrt())
}

/// Squares of body acceleration and wheel force for a unit road wave of angular frequency w.
fn response_squared(wheel_end: WheelEnd, tires: Stiffness, w: f64) -> (f64, f64) {
    const C: f64 = 15e3; // N s/m
    let k_s = match wheel_end.suspension {
        Suspension::Air => 0.3e6,
        Suspension::Steel => 1.0e6,
    };
    let (m_s, m_u) = (wheel_end.sprung.as_kg(), wheel_end.unsprung.as_kg());
    let k_t = tires.as_n_per_mm() * 1e3;
    let spring = Complex { re: k_s, im: C * w };
    let body = Complex { re: k_s - m_s * w * w, im: C * w };
    let axle = Complex { re: k_s + k_t - m_u * w * w, im: C * w };
    let det = body.times(axle).minus(spring.times(spring));
    let x_s = spring.over(det).scaled(k_t);
    let x_u = body.over(det).scaled(k_t);
    let squeeze = Complex { re: 1.0, im: 0.0 }.minus(x_u);
    (w.powi(4) * x_s.size_squared(), k_t * k_t * squeeze.size_squared())
}

/// Square of the frequency weighting `W_k`, f in hertz.
fn w_k_squared(f: f64) -> f64 {
    let over = |corner: f64| f / corner;
    // s/ω is i f/f_c: real parts 1 - (f/f_c)², imaginary parts (f/f_c)/Q.
    let pole = |corner: f64, q: f64| {
        Complex { re: 1.0 - over(corner).powi(2), im: over(corner) / q }.size_squared()
    };
    let q = 0.5_f64.sqrt();
    let high_pass = over(0.4).powi(4) / pole(0.4, q);
    let low_pass = 1.0 / pole(100.0, q);
    let transition = (1.0 + over(12.5).powi(2)) / pole(12.5, 0.63);
    let step = pole(2.37, 0.91) / pole(3.35, 0.91) * (2.37_f64 / 3.35).powi(4);
    high_pass * low_pass * transition * step
}

#[derive(Clone, Copy)]
struct Complex {
    re: f64,
    im: f64,
}

impl Complex {
    fn times(self, other: Self) -> Self {
        Self {
            re: self.re * other.re - self.im * other.im,
            im: self.re * other.im + self.im * other.re,
        }
    }

    fn minus(self, other: Self) -> Self {
        Self { re: self.re - other.re, im: self.im - other.im }
    }

    fn scaled(self, factor: f64) -> Self {
        Self { re: self.re * factor, im: self.im * factor }
    }

    fn over(self, other: Self) -> Self {
        let conjugate = Self { re: other.re, im: -other.im };
        self.times(conjugate).scaled(1.0 / other.size_squared())
    }

    fn size_squared(self) -> f64 {
        self.re * self.re + self.im * self.im
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn wheel_end(suspension: Suspension) -> WheelEnd {
        WheelEnd { suspension, sprung: Mass::from_kg(3350.0), unsprung: Mass::from_kg(500.0) }
    }

    fn change(suspension: Suspension, from: f64, to: f64) -> RideChange {
        let k = Stiffness::from_n_per_mm;
        ride_change(wheel_end(suspension), k(from), k(to)).unwrap()
    }

    // ISO 2631-1 weighting ×1000 as recalled from its table, within 1.
    #[test]
    fn table_weighting() {
        for (f, thousandths) in [
            (0.5, 418.0),
            (1.0, 482.0),
            (2.0, 531.0),
            (3.15, 804.0),
            (4.0, 967.0),
            (5.0, 1039.0),
            (6.3, 1054.0),
            (8.0, 1036.0),
            (10.0, 988.0),
            (12.5, 902.0),
            (16.0, 769.0),
            (20.0, 636.0),
            (31.5, 405.0),
        ] {
            assert!((1000.0 * w_k_squared(f).sqrt() - thousandths).abs() < 1.0, "{f} Hz");
        }
    }

    // A quarter-truck written apart from this one: from 1.91 MN/m to 1.62, 1.27 and 0.96.
    #[test]
    fn worked_changes() {
        use Suspension::{Air, Steel};
        for (suspension, to, body, load) in [
            (Air, 1620.0, -6.0, -12.0),
            (Air, 1270.0, -15.0, -25.0),
            (Air, 960.0, -24.0, -36.0),
            (Steel, 1620.0, -4.0, -2.0),
            (Steel, 1270.0, -10.0, -4.0),
            (Steel, 960.0, -16.0, -4.0),
        ] {
            let found = change(suspension, 1910.0, to);
            assert!((found.body_pct - body).abs() < 1.0, "{found:?}");
            assert!((found.wheel_load_pct - load).abs() < 1.0, "{found:?}");
        }
    }

    #[test]
    fn no_wheel_end_is_refused_and_odd_stiffness_marked() {
        let k = Stiffness::from_n_per_mm(1500.0);
        let none = WheelEnd { sprung: Mass::ZERO, ..wheel_end(Suspension::Air) };
        assert!(ride_change(none, k, k).is_err());
        let heavy = WheelEnd { unsprung: Mass::from_t(9.0), ..wheel_end(Suspension::Air) };
        assert!(ride_change(heavy, k, k).is_err());
        assert!(change(Suspension::Air, 1910.0, 300.0).extrapolated);
        assert!(!change(Suspension::Air, 1910.0, 960.0).extrapolated);
    }

    proptest! {
        #[test]
        fn no_change_changes_nothing(k in 700.0..2500.0f64) {
            let found = change(Suspension::Air, k, k);
            prop_assert!(found.body_pct.abs() < 1e-9 && found.wheel_load_pct.abs() < 1e-9);
        }

        #[test]
        fn softer_tires_ride_softer(k in 800.0..2500.0f64, less in 0.5..0.99f64) {
            prop_assert!(change(Suspension::Air, k, k * less).body_pct < 0.0);
            prop_assert!(change(Suspension::Steel, k, k * less).body_pct < 0.0);
        }

        #[test]
        fn there_and_back_is_no_change(a in 700.0..2500.0f64, b in 700.0..2500.0f64) {
            let there = change(Suspension::Steel, a, b).body_pct / 100.0;
            let back = change(Suspension::Steel, b, a).body_pct / 100.0;
            prop_assert!(((1.0 + there) * (1.0 + back) - 1.0).abs() < 1e-9);
        }
    }
}
