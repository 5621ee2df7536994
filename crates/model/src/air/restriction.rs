//! Flow of air through one restriction, by its sonic conductance and critical pressure ratio.

use quantity::{AbsolutePressure, Area, Length, MassFlow, SonicConductance, Temperature};

use super::reference_air::{RHO0, T0};
use crate::source::Key;

/// The flow law and its two characteristics.
pub const SOURCE: Key = Key("iso-6358-1");
/// Conductance of a smooth tube from bore and length.
pub const TUBE_SOURCE: Key = Key("cetop-tube");
/// Critical ratio of a short-tube orifice.
pub const ORIFICE_SOURCE: Key = Key("short-tube-orifice-2016");

/// Pressure ratio above which the flow law is linear, so that its slope stays finite.
pub(super) const BETA: f64 = 0.999;

/// Mass flow of choked ideal air, γ = 1.4, R = 287.05 J/(kg K), an area and pressure
/// unit: √(γ/R)·(2/(γ+1))^((γ+1)/(2(γ−1))).
const CHOKED: f64 = 0.040415;
/// Critical ratio that suits a short round hole.
const ORIFICE_B: f64 = 0.5;
/// Least length over bore of a tube.
const TUBE_LEAST_SLENDERNESS: f64 = 20.0;

/// Why a restriction cannot be made.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum RestrictionError {
    /// C is zero or negative.
    #[error("sonic conductance {0} must be above zero")]
    Conductance(SonicConductance),
    /// b is outside its range.
    #[error("critical pressure ratio {0} must be at least 0 and under 1")]
    CriticalRatio(f64),
    /// The orifice has no area.
    #[error("an orifice needs a bore above zero, not {0}")]
    OrificeBore(Length),
    /// The discharge coefficient is outside its range.
    #[error("discharge coefficient {0} must be above 0 and at most 1")]
    Discharge(f64),
    /// The tube is too short for the tube formula.
    #[error(
        "a tube of bore {bore} and length {length} is no longer than 20 bores; give its measured conductance, or treat it as an orifice"
    )]
    TubeTooShort {
        /// Bore.
        bore: Length,
        /// Length.
        length: Length,
    },
}

/// Why no flow can be told.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum FlowError {
    /// The upstream pressure is not above vacuum.
    #[error("upstream pressure {0} must be above zero")]
    Upstream(AbsolutePressure),
    /// The downstream pressure is below vacuum or above the upstream one.
    #[error("downstream pressure {p2} must lie between zero and the upstream {p1}")]
    Downstream {
        /// Upstream.
        p1: AbsolutePressure,
        /// Downstream.
        p2: AbsolutePressure,
    },
    /// The upstream air has no temperature.
    #[error("upstream temperature must be above absolute zero")]
    Temperature,
}

/// A restriction given by its ISO 6358 characteristics.
///
/// # Validity
/// Air as an ideal gas, no heat in the restriction, low speed at its ports.
///
/// # Source
/// `iso-6358-1`
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Restriction {
    c: SonicConductance,
    b: f64,
}

impl Restriction {
    /// A restriction with sonic conductance C and critical pressure ratio b.
    ///
    /// # Errors
    /// [`RestrictionError`] unless C > 0 and 0 ≤ b < 1.
    pub fn new(c: SonicConductance, b: f64) -> Result<Self, RestrictionError> {
        if c.as_m3_per_s_pa() <= 0.0 {
            return Err(RestrictionError::Conductance(c));
        }
        if !(0.0..1.0).contains(&b) {
            return Err(RestrictionError::CriticalRatio(b));
        }
        Ok(Self { c, b })
    }

    /// A round hole with a discharge coefficient: C from choked ideal flow, b = 0.5.
    ///
    /// # Validity
    /// Length under five bores; Cd about 0.65 (sharp edge, small drop) to 0.9 (rounded).
    ///
    /// # Errors
    /// [`RestrictionError`] for a bore of zero or Cd outside 0 to 1.
    ///
    /// # Source
    /// `short-tube-orifice-2016` for b; C follows from the ideal gas.
    pub fn from_orifice(bore: Length, discharge: f64) -> Result<Self, RestrictionError> {
        if bore.as_m() <= 0.0 {
            return Err(RestrictionError::OrificeBore(bore));
        }
        if !(discharge > 0.0 && discharge <= 1.0) {
            return Err(RestrictionError::Discharge(discharge));
        }
        let a = Area::from_m2(std::f64::consts::FRAC_PI_4 * bore.as_m() * bore.as_m());
        let c = discharge * a.as_m2() * CHOKED / (RHO0 * T0.sqrt());
        Self::new(SonicConductance::from_m3_per_s_pa(c), ORIFICE_B)
    }

    /// A smooth tube.
    ///
    /// # Validity
    /// Length over 20 bores; ±10 % (it lies 10 to 11 % under adiabatic pipe flow with
    /// smooth-pipe friction).
    ///
    /// # Errors
    /// [`RestrictionError::TubeTooShort`] outside that range.
    ///
    /// # Source
    /// `cetop-tube`, from memory.
    pub fn tube(bore: Length, length: Length) -> Result<Self, RestrictionError> {
        let (d, l) = (bore.as_m(), length.as_m());
        if d <= 0.0 || l <= TUBE_LEAST_SLENDERNESS * d {
            return Err(RestrictionError::TubeTooShort { bore, length });
        }
        let c = 0.029 * d * d / (l / d.powf(1.25) + 510.0).sqrt();
        let b = 474.0 * c / (d * d);
        Self::new(SonicConductance::from_m3_per_s_pa(c), b)
    }

    /// Sonic conductance C.
    pub const fn c(self) -> SonicConductance {
        self.c
    }

    /// Critical pressure ratio b.
    pub const fn b(self) -> f64 {
        self.b
    }

    /// `n` of these side by side.
    ///
    /// # Errors
    /// [`RestrictionError::Conductance`] for `n` = 0.
    pub fn in_parallel(self, n: u32) -> Result<Self, RestrictionError> {
        Self::new(self.c * f64::from(n), self.b)
    }

    /// A restriction of known numbers, for constants of this module.
    pub(super) const fn of_numbers(c: SonicConductance, b: f64) -> Self {
        Self { c, b }
    }

    /// The same with its conductance times a factor above zero.
    pub(super) fn scaled(self, factor: f64) -> Self {
        Self { c: self.c * factor, b: self.b }
    }

    /// Mass flow from `p1` at temperature `t1` to `p2`.
    ///
    /// Above a pressure ratio of 0.999 the law is linear, so that its slope stays finite.
    ///
    /// # Errors
    /// [`FlowError`] for pressures that make no flow in this direction.
    ///
    /// # Source
    /// `iso-6358-1`
    ///
    /// ```
    /// use model::air::Restriction;
    /// use quantity::{AbsolutePressure, SonicConductance, Temperature};
    /// let valve = Restriction::new(SonicConductance::from_dm3_per_s_bar(2.0), 0.3)?;
    /// let flow = valve.mass_flow(
    ///     AbsolutePressure::from_bar(9.5),
    ///     Temperature::from_celsius(20.0),
    ///     AbsolutePressure::from_bar(5.5),
    /// )?;
    /// assert!((flow.as_kg_per_s() - 0.020650).abs() < 5e-7);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn mass_flow(
        self,
        p1: AbsolutePressure,
        t1: Temperature,
        p2: AbsolutePressure,
    ) -> Result<MassFlow, FlowError> {
        mass_flow(p1, t1, p2, |r| self.c.as_m3_per_s_pa() * shape(self.b, r))
    }
}

/// Checks the pressures and turns a conductance at a pressure ratio into mass flow.
pub(super) fn mass_flow(
    p1: AbsolutePressure,
    t1: Temperature,
    p2: AbsolutePressure,
    conductance_at: impl FnOnce(f64) -> f64,
) -> Result<MassFlow, FlowError> {
    if p1.as_pa() <= 0.0 {
        return Err(FlowError::Upstream(p1));
    }
    if p2.as_pa() < 0.0 || p2 > p1 {
        return Err(FlowError::Downstream { p1, p2 });
    }
    if t1.as_kelvin() <= 0.0 {
        return Err(FlowError::Temperature);
    }
    let c = conductance_at(p2.ratio_to(p1));
    Ok(MassFlow::from_kg_per_s(c * RHO0 * p1.as_pa() * (T0 / t1.as_kelvin()).sqrt()))
}

/// Flow at pressure ratio `r` over choked flow.
pub(super) fn shape(b: f64, r: f64) -> f64 {
    if r > BETA { ellipse(b, BETA) * (1.0 - r) / (1.0 - BETA) } else { ellipse(b, r) }
}

/// [`shape`] with its slope against `r`.
#[inline]
pub(super) fn shape_and_slope(b: f64, r: f64) -> (f64, f64) {
    if r > BETA {
        let slope = -ellipse(b, BETA) / (1.0 - BETA);
        return (slope * (r - 1.0), slope);
    }
    if r <= b {
        return (1.0, 0.0);
    }
    let x = (r - b) / (1.0 - b);
    let phi = (1.0 - x * x).sqrt();
    (phi, -x / (phi * (1.0 - b)))
}

#[inline]
fn ellipse(b: f64, r: f64) -> f64 {
    if r <= b {
        return 1.0;
    }
    let x = (r - b) / (1.0 - b);
    (1.0 - x * x).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn part(c: f64, b: f64) -> Restriction {
        Restriction::new(SonicConductance::from_dm3_per_s_bar(c), b).unwrap()
    }

    fn flow(r: Restriction, p1: f64, p2: f64) -> f64 {
        r.mass_flow(
            AbsolutePressure::from_bar(p1),
            Temperature::from_kelvin(T0),
            AbsolutePressure::from_bar(p2),
        )
        .unwrap()
        .as_kg_per_s()
    }

    // Worked from the flow law by hand: C 2.0, b 0.3, 9.5 bar upstream.
    #[test]
    fn worked_flow_through_one_valve() {
        for (p2, q) in [(2.0, 0.022515), (5.5, 0.020650), (7.5, 0.016096), (9.0, 0.008565)] {
            assert!((flow(part(2.0, 0.3), 9.5, p2) - q).abs() < 6e-7, "at {p2} bar");
        }
    }

    // C = 0.1992·Cd·A[mm²].
    #[test]
    fn worked_orifice_of_four_millimeters() {
        let hole = Restriction::from_orifice(Length::from_mm(4.0), 0.8).unwrap();
        assert!((hole.c().as_dm3_per_s_bar() - 2.0025).abs() < 2e-4);
        let hole = Restriction::from_orifice(Length::from_mm(8.0), 0.65).unwrap();
        assert!((hole.c().as_dm3_per_s_bar() - 6.508).abs() < 1e-3);
    }

    // Tube formula, to the digits of the table; Fanno flow of the same tube beside it.
    #[test]
    fn worked_tube_conductance_lies_a_tenth_under_pipe_flow() {
        for (bore, length, c, b) in [
            (4.32, 0.5, 1.745, 0.443),
            (4.32, 5.0, 0.764, 0.194),
            (6.38, 1.0, 3.618, 0.421),
            (6.38, 15.0, 1.256, 0.146),
            (8.0, 8.0, 2.99, 0.221),
            (9.56, 8.0, 4.695, 0.244),
            (9.56, 20.0, 3.123, 0.162),
            (10.0, 2.0, 8.58, 0.407),
        ] {
            let tube = Restriction::tube(Length::from_mm(bore), Length::from_m(length)).unwrap();
            assert!((tube.c().as_dm3_per_s_bar() - c).abs() < 6e-4, "{bore} x {length}");
            assert!((tube.b() - b).abs() < 6e-4, "{bore} x {length}");
        }
        for (bore, length, fanno) in [
            (6.38, 5.0, 2.32),
            (9.56, 1.0, 10.25),
            (9.56, 5.0, 6.34),
            (9.56, 10.0, 4.76),
            (12.7, 10.0, 9.69),
        ] {
            let tube = Restriction::tube(Length::from_mm(bore), Length::from_m(length)).unwrap();
            let ratio = tube.c().as_dm3_per_s_bar() / fanno;
            assert!((0.88..0.91).contains(&ratio), "{bore} x {length}: {ratio}");
        }
    }

    #[test]
    fn what_is_out_of_range_is_refused() {
        let c = SonicConductance::from_dm3_per_s_bar(1.0);
        assert!(Restriction::new(SonicConductance::ZERO, 0.3).is_err());
        assert!(Restriction::new(c, 1.0).is_err());
        assert!(Restriction::new(c, -0.1).is_err());
        assert!(Restriction::new(c, f64::NAN).is_err());
        assert!(Restriction::tube(Length::from_mm(10.0), Length::from_m(0.2)).is_err());
        assert!(Restriction::from_orifice(Length::from_mm(2.0), 1.2).is_err());
        let t = Temperature::from_kelvin(T0);
        let (low, high) = (AbsolutePressure::from_bar(2.0), AbsolutePressure::from_bar(3.0));
        assert!(matches!(
            part(1.0, 0.3).mass_flow(low, t, high),
            Err(FlowError::Downstream { .. })
        ));
    }

    proptest! {
        #[test]
        fn flow_falls_as_the_pressure_ratio_rises(
            c in 0.1..10.0f64, b in 0.0..0.95f64, r in 0.0..1.0f64, step in 1e-6..0.1f64,
        ) {
            let (near, far) = (r, (r + step).min(1.0));
            prop_assert!(flow(part(c, b), 8.0, 8.0 * near) >= flow(part(c, b), 8.0, 8.0 * far));
        }

        #[test]
        fn slope_is_the_slope(b in 0.0..0.9f64, r in 0.0..0.9985f64) {
            prop_assume!((r - b).abs() > 1e-4);
            let h = 1e-7;
            let rise = (shape(b, r + h) - shape(b, r - h)) / (2.0 * h);
            prop_assert!((shape_and_slope(b, r).1 - rise).abs() < 1e-4 * rise.abs().max(1.0));
        }
    }
}
