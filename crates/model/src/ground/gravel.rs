//! Ruts in an aggregate-surfaced road, chiefly as the ratio between two tire pressures.

use quantity::{ColdPressure, Length, Mass};

use super::Estimate;
use super::strength::Cbr;
use crate::source::{Citation, Key, Standing};

/// Rut of an aggregate-surfaced road.
pub const AGGREGATE_RUT: Key = Key("barber-1978");
/// Traffic that reduced pressure carried on gravel, measured.
pub const MEASURED_GAIN: Key = Key("shalaby-reggin-2002");
/// One wheel that does to a depth what a dual does.
pub const EQUIVALENT_WHEEL: Key = Key("boyd-foster");

/// Largest gain of traffic at the same rut that measurements support.
pub const LARGEST_GAIN: f64 = 2.0;

const PRESSURE_EXPONENT: f64 = 0.5695;
const PASSES_EXPONENT: f64 = 0.2476;
/// Of the logarithm of the thickness in inches.
const THICKNESS_EXPONENT: f64 = 2.0020;

/// Why there is no rut.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum GravelError {
    /// No load or pressure.
    #[error(
        "a wheel of {load} at {pressure} makes no rut; give a load above zero and 50 to 1000 kPa"
    )]
    Wheel {
        /// Load offered.
        load: Mass,
        /// Pressure offered.
        pressure: ColdPressure,
    },
    /// Too thin for the equation.
    #[error("{thickness} of aggregate is outside the equation's 4 to 40 in (0.1 to 1 m)")]
    Thickness {
        /// Thickness offered.
        thickness: Length,
    },
    /// The surface must be stronger than what is below.
    #[error(
        "aggregate of CBR {} over soil of CBR {} is outside the equation: the aggregate must be the stronger",
        top.as_pct(), bottom.as_pct()
    )]
    Layers {
        /// CBR of the aggregate.
        top: Cbr,
        /// CBR of the soil.
        bottom: Cbr,
    },
    /// Passes outside the tests.
    #[error("{passes} passes are outside the equation's 1 to 100 000")]
    Passes {
        /// Passes offered.
        passes: f64,
    },
    /// A dual that is none.
    #[error(
        "a dual of {spacing} between centers with a gap of {gap} is none; both above zero, the gap smaller"
    )]
    Dual {
        /// Spacing offered.
        spacing: Length,
        /// Gap offered.
        gap: Length,
    },
}

/// An aggregate layer on soil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AggregateRoad {
    /// Thickness of the aggregate.
    pub thickness: Length,
    /// CBR of the aggregate.
    pub top: Cbr,
    /// CBR of the soil below.
    pub bottom: Cbr,
}

/// Rut after some passes of a wheel:
/// `RD = 0.1741 P^0.4704 t_p^0.5695 R^0.2476 / ((log t)^2.0020 C1^0.9335 C2^0.2848)`, kip, psi, in.
///
/// # Validity
/// Aggregate of 4 in and more, stronger than the soil; 1 to 100 000 passes. The depth means
/// something only once it is set against a rut seen on that road: use [`pressure_effect`].
///
/// # Errors
/// [`GravelError`] outside of that.
///
/// # Source
/// [`AGGREGATE_RUT`]; the whole equation is from memory.
///
/// ```
/// use model::ground::gravel::{AggregateRoad, rut};
/// use model::ground::strength::Cbr;
/// use quantity::{ColdPressure, Force, Length};
/// let road = AggregateRoad {
///     thickness: Length::from_in(10.0),
///     top: Cbr::from_pct(60.0)?,
///     bottom: Cbr::from_pct(5.0)?,
/// };
/// let depth =
///     rut(&road, Force::from_kip(9.0).as_mass(), ColdPressure::from_psi(80.0), 10_000.0)?;
/// assert!((depth.value.as_in() - 0.803).abs() < 0.001);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn rut(
    road: &AggregateRoad,
    wheel_load: Mass,
    pressure: ColdPressure,
    passes: f64,
) -> Result<Estimate<Length>, GravelError> {
    check_pressure(wheel_load, pressure)?;
    let &AggregateRoad { thickness, top, bottom } = road;
    let t = thickness.as_in();
    check_thickness(thickness)?;
    if top <= bottom {
        return Err(GravelError::Layers { top, bottom });
    }
    if !(1.0..=100_000.0).contains(&passes) {
        return Err(GravelError::Passes { passes });
    }
    let (p_k, t_p) = (wheel_load.weight().as_kip(), pressure.as_psi());
    let rd = 0.1741 * p_k.powf(0.4704) * t_p.powf(PRESSURE_EXPONENT) * passes.powf(PASSES_EXPONENT)
        / (t.log10().powf(THICKNESS_EXPONENT)
            * top.as_pct().powf(0.9335)
            * bottom.as_pct().powf(0.2848));
    let rd = Length::from_in(rd);
    Ok(Estimate {
        value: rd,
        // Not calibrated: no better than a factor of two either way, our judgement.
        low: rd * 0.5,
        high: rd * 2.0,
        extrapolated: t < 6.0 || p_k > 50.0,
        citation: Citation::of(AGGREGATE_RUT, Standing::FromMemory),
    })
}

/// What a change of pressure does to an aggregate road under the same load.
#[derive(Debug, Clone, PartialEq)]
pub struct PressureEffect {
    /// Rut after the same passes, over that before.
    pub rut_ratio: f64,
    /// Passes to the same rut, over those before.
    pub passes_ratio: f64,
    /// Whether the gain was cut to what measurements support.
    pub capped: bool,
    /// The rut ratio the equation alone gives.
    pub uncapped_rut_ratio: f64,
    /// The ratio of passes the equation alone gives.
    pub uncapped_passes_ratio: f64,
    /// Where it comes from.
    pub citation: Citation,
}

/// The effect of going from one pressure to another: rut `∝ p^0.5695`, passes to the same rut `∝ p^-2.300`,
/// a gain of passes cut at [`LARGEST_GAIN`] and the rut with it.
///
/// # Validity
/// 50 to 1000 kPa, same load, same road. The cut is on gains only.
///
/// # Errors
/// [`GravelError::Wheel`] for a pressure outside 50 to 1000 kPa.
///
/// # Source
/// [`AGGREGATE_RUT`], from memory; [`MEASURED_GAIN`], read in an abstract.
pub fn pressure_effect(
    from: ColdPressure,
    to: ColdPressure,
) -> Result<PressureEffect, GravelError> {
    for pressure in [from, to] {
        check_pressure(Mass::from_kg(1.0), pressure)?;
    }
    let by_equation = to.ratio_to(from).powf(PRESSURE_EXPONENT);
    let passes = by_equation.powf(-1.0 / PASSES_EXPONENT);
    let capped = passes > LARGEST_GAIN;
    let passes_ratio = passes.min(LARGEST_GAIN);
    let (key, standing) = if capped {
        (MEASURED_GAIN, Standing::Read)
    } else {
        (AGGREGATE_RUT, Standing::FromMemory)
    };
    Ok(PressureEffect {
        rut_ratio: passes_ratio.powf(-PASSES_EXPONENT),
        passes_ratio,
        capped,
        uncapped_rut_ratio: by_equation,
        uncapped_passes_ratio: passes,
        citation: Citation::of(key, standing),
    })
}

/// The thickness that keeps the rut the same when the pressure changes: `log t ∝ p^0.2845`.
///
/// # Validity
/// Aggregate of 4 to 40 in before and after; 50 to 1000 kPa.
///
/// # Errors
/// [`GravelError`] outside of that.
///
/// # Source
/// [`AGGREGATE_RUT`], from memory; trials reported 20 to 30 % less at reduced pressure.
pub fn thickness_for_same_rut(
    thickness: Length,
    from: ColdPressure,
    to: ColdPressure,
) -> Result<Length, GravelError> {
    for pressure in [from, to] {
        check_pressure(Mass::from_kg(1.0), pressure)?;
    }
    check_thickness(thickness)?;
    let ratio = to.ratio_to(from).powf(PRESSURE_EXPONENT / THICKNESS_EXPONENT);
    let other = Length::from_in(thickness.as_in().powf(ratio));
    check_thickness(other)?;
    Ok(other)
}

/// The single wheel that does at a depth what a dual does: one tire's load to half the gap, both tires' from twice
/// the spacing, straight between on log scales.
///
/// # Validity
/// Equal tires at the same pressure.
///
/// # Errors
/// [`GravelError::Dual`] or [`GravelError::Thickness`] for a dual or depth that is none.
///
/// # Source
/// [`EQUIVALENT_WHEEL`], from memory.
pub fn equivalent_wheel_load(
    tire_load: Mass,
    spacing: Length,
    gap: Length,
    depth: Length,
) -> Result<Mass, GravelError> {
    if gap <= Length::ZERO || spacing <= gap {
        return Err(GravelError::Dual { spacing, gap });
    }
    if depth <= Length::ZERO {
        return Err(GravelError::Thickness { thickness: depth });
    }
    let (shallow, deep) = (gap / 2.0, spacing * 2.0);
    let way = ((depth / shallow).ln() / (deep / shallow).ln()).clamp(0.0, 1.0);
    Ok(tire_load * 2.0_f64.powf(way))
}

fn check_thickness(thickness: Length) -> Result<(), GravelError> {
    if (4.0..=40.0).contains(&thickness.as_in()) {
        Ok(())
    } else {
        Err(GravelError::Thickness { thickness })
    }
}

fn check_pressure(load: Mass, pressure: ColdPressure) -> Result<(), GravelError> {
    if load > Mass::ZERO && (50.0..=1000.0).contains(&pressure.as_kpa()) {
        Ok(())
    } else {
        Err(GravelError::Wheel { load, pressure })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::Force;

    use super::*;

    fn psi(value: f64) -> ColdPressure {
        ColdPressure::from_psi(value)
    }

    fn road(inches: f64, top: f64, bottom: f64) -> AggregateRoad {
        AggregateRoad {
            thickness: Length::from_in(inches),
            top: Cbr::from_pct(top).unwrap(),
            bottom: Cbr::from_pct(bottom).unwrap(),
        }
    }

    fn rut_in(road: AggregateRoad, kip: f64, p: f64, passes: f64) -> f64 {
        rut(&road, Force::from_kip(kip).as_mass(), psi(p), passes).unwrap().value.as_in()
    }

    // The equation worked apart from this code: psi, passes, thickness in, CBR over 10, rut in.
    #[test]
    fn worked_grid() {
        assert!((rut_in(road(10.0, 60.0, 5.0), 9.0, 80.0, 10_000.0) - 0.803).abs() < 0.0006);
        for (p, passes, t, depth) in [
            (110.0, 100.0, 6.0, 0.418),
            (30.0, 1000.0, 8.0, 0.262),
            (50.0, 10_000.0, 6.0, 0.834),
            (100.0, 10_000.0, 10.0, 0.749),
        ] {
            assert!((rut_in(road(t, 60.0, 10.0), 9.0, p, passes) - depth).abs() < 0.0006);
        }
    }

    #[test]
    fn worked_ratios_of_the_equation() {
        for (p, rut, passes) in
            [(110.0, 1.056, 0.80), (90.0, 0.942, 1.27), (70.0, 0.816, 2.27), (50.0, 0.674, 4.92)]
        {
            let found = pressure_effect(psi(100.0), psi(p)).unwrap();
            assert!((found.uncapped_rut_ratio - rut).abs() < 0.0006, "{found:?}");
            assert!((found.uncapped_passes_ratio - passes).abs() < 0.006, "{found:?}");
        }
    }

    // 8 in at 100 psi; 80, 60 and 40 psi by hand. Trials (Steward 1994) reported 20 to 30 % less.
    #[test]
    fn worked_thickness_for_the_same_rut() {
        let of = |p| thickness_for_same_rut(Length::from_in(8.0), psi(100.0), psi(p));
        for (p, inches) in [(80.0, 7.04), (60.0, 6.04), (40.0, 4.96)] {
            assert!((of(p).unwrap().as_in() - inches).abs() < 0.006);
        }
        assert!(of(8.0).is_err() && of(15.0).is_err());
        assert!(thickness_for_same_rut(Length::from_in(2.0), psi(100.0), psi(50.0)).is_err());
    }

    // Shalaby & Reggin 2002: less rut up to twice the traffic on a gravel road, no more.
    #[test]
    fn measured_gain_is_the_most_that_is_claimed() {
        let far = pressure_effect(psi(100.0), psi(50.0)).unwrap();
        assert!(far.capped && (far.passes_ratio - 2.0).abs() < 1e-12);
        assert!((far.rut_ratio - 0.842).abs() < 0.001);
        let near = pressure_effect(psi(100.0), psi(90.0)).unwrap();
        assert!(!near.capped && (near.rut_ratio - near.uncapped_rut_ratio).abs() < 1e-12);
        let worse = pressure_effect(psi(50.0), psi(100.0)).unwrap();
        assert!(!worse.capped && worse.rut_ratio > 1.4);
    }

    // 4.5 kip a tire, 13.5 in apart, 4.5 in of gap.
    #[test]
    fn worked_equivalent_wheel() {
        for (depth, kip) in [(6.0, 5.92), (10.0, 6.82), (15.0, 7.64), (1.0, 4.5), (40.0, 9.0)] {
            let load = equivalent_wheel_load(
                Force::from_kip(4.5).as_mass(),
                Length::from_in(13.5),
                Length::from_in(4.5),
                Length::from_in(depth),
            );
            assert!((load.unwrap().weight().as_kip() - kip).abs() < 0.005);
        }
    }

    #[test]
    fn outside_the_equation_is_refused() {
        let load = Mass::from_kg(4000.0);
        let good = road(8.0, 60.0, 5.0);
        assert!(rut(&good, Mass::ZERO, psi(80.0), 100.0).is_err());
        assert!(rut(&good, load, psi(2.0), 100.0).is_err());
        assert!(rut(&good, load, psi(80.0), 0.0).is_err());
        assert!(rut(&road(2.0, 60.0, 5.0), load, psi(80.0), 100.0).is_err());
        assert!(rut(&road(8.0, 5.0, 60.0), load, psi(80.0), 100.0).is_err());
        assert!(rut(&road(5.0, 60.0, 5.0), load, psi(80.0), 100.0).unwrap().extrapolated);
        assert!(pressure_effect(psi(100.0), psi(0.0)).is_err());
        let mm = Length::from_mm;
        assert!(equivalent_wheel_load(load, mm(300.0), mm(400.0), mm(200.0)).is_err());
        assert!(equivalent_wheel_load(load, mm(340.0), mm(60.0), mm(0.0)).is_err());
    }

    proptest! {
        #[test]
        fn ruts_follow_load_pressure_passes_and_strength(p in 30.0..110.0f64, kip in 2.0..12.0f64, n in 10.0..50_000.0f64, t in 5.0..20.0f64) {
            let base = rut_in(road(t, 60.0, 5.0), kip, p, n);
            prop_assert!(rut_in(road(t, 60.0, 5.0), kip, p + 1.0, n) > base);
            prop_assert!(rut_in(road(t, 60.0, 5.0), kip + 0.1, p, n) > base);
            prop_assert!(rut_in(road(t, 60.0, 5.0), kip, p, n + 10.0) > base);
            prop_assert!(rut_in(road(t + 0.5, 60.0, 5.0), kip, p, n) < base);
            prop_assert!(rut_in(road(t, 70.0, 5.0), kip, p, n) < base);
            prop_assert!(rut_in(road(t, 60.0, 6.0), kip, p, n) < base);
        }

        #[test]
        fn the_ratio_is_that_of_two_ruts(from in 30.0..110.0f64, to in 30.0..110.0f64) {
            let found = pressure_effect(psi(from), psi(to)).unwrap();
            let two = rut_in(road(8.0, 60.0, 5.0), 9.0, to, 1000.0) / rut_in(road(8.0, 60.0, 5.0), 9.0, from, 1000.0);
            prop_assert!((found.uncapped_rut_ratio - two).abs() < 1e-9);
            prop_assert!(found.passes_ratio <= LARGEST_GAIN);
            prop_assert!(found.rut_ratio >= found.uncapped_rut_ratio - 1e-12);
        }
    }
}
