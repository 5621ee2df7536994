//! How deep wheels sink into soft soil, at the first pass and after many.

use quantity::Length;

use super::Estimate;
use super::wheel_pull::SoilWheel;
use crate::source::{Citation, Key, Standing};

/// Sinkage of the first wheel.
pub const FIRST_PASS: Key = Key("maclaurin-1990");
/// Growth of the rut with passes.
pub const PASSES: Key = Key("freitag-1965");

/// How firm the ground is, for the growth of ruts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Firmness {
    /// Loose or soft.
    Loose,
    /// As usual.
    Average,
    /// Firm.
    Firm,
}

impl Firmness {
    /// Lowest, usual and highest exponent a of `z_n = z_1 n^(1/a)`.
    const fn exponents(self) -> [f64; 3] {
        match self {
            Self::Loose => [2.0, 2.5, 3.0],
            Self::Average => [3.0, 3.5, 4.0],
            Self::Firm => [4.0, 4.5, 5.0],
        }
    }
}

/// Why there is no rut.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum RutSoilError {
    /// No pass.
    #[error("{passes} wheel passes make no rut; give one or more: axles in the track times trips")]
    Passes {
        /// Passes offered.
        passes: f64,
    },
}

/// Depth of the rut that a first wheel leaves: `z_1 = 0.224 d/N_M^1.25`.
///
/// # Validity
/// Clay and other fine-grained soil, by its rating cone index; its range is not known to us, so
/// it is marked where the wheel sinks more than a tenth of its diameter.
///
/// # Source
/// [`FIRST_PASS`], from memory.
pub fn first_pass(wheel: &SoilWheel) -> Estimate<Length> {
    let z = wheel.diameter() * (0.224 / wheel.maclaurin_numeric().powf(1.25));
    Estimate {
        value: z,
        low: z,
        high: z,
        extrapolated: z > wheel.diameter() * 0.1,
        citation: Citation::of(FIRST_PASS, Standing::FromMemory),
    }
}

/// Depth of the rut after some wheel passes in the same track: `z_n = z_1 n^(1/a)`.
///
/// Passes are those of wheels: axles in the track times trips.
///
/// # Validity
/// The span is that of the exponent alone. On grassland measured ruts grew faster, on peat slower. As a
/// ratio between two pressures it is sounder than as a depth: the passes cancel.
///
/// # Errors
/// [`RutSoilError::Passes`] for less than one pass.
///
/// # Source
/// [`FIRST_PASS`], [`PASSES`], from memory.
///
/// ```
/// use model::ground::rut_soil::{Firmness, rut};
/// use model::ground::wheel_pull::SoilWheel;
/// use quantity::{Force, Length, Stress};
/// let m = Length::from_m;
/// let load = Force::from_kn(20.0).as_mass();
/// let wheel = SoilWheel::new(load, Stress::from_kpa(900.0), m(0.279), m(1.05), 0.10)?;
/// let after_ten = rut(&wheel, 10.0, Firmness::Average)?;
/// assert!((after_ten.high.as_mm() - 96.0).abs() < 1.0);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn rut(
    wheel: &SoilWheel,
    passes: f64,
    firmness: Firmness,
) -> Result<Estimate<Length>, RutSoilError> {
    if !(passes.is_finite() && passes >= 1.0) {
        return Err(RutSoilError::Passes { passes });
    }
    let first = first_pass(wheel);
    let [fast, usual, slow] = firmness.exponents().map(|a| first.value * passes.powf(1.0 / a));
    Ok(Estimate {
        value: usual,
        low: slow,
        high: fast,
        extrapolated: first.extrapolated || passes > 1000.0,
        citation: Citation::of(PASSES, Standing::FromMemory),
    })
}

/// How many times the passes a softer tire may make for the same rut: the ratio of the first
/// ruts to the power a.
///
/// # Validity
/// As [`rut`]; the usual exponent of the firmness.
///
/// # Source
/// [`FIRST_PASS`], [`PASSES`], from memory.
pub fn passes_to_same_rut(
    before: &SoilWheel,
    after: &SoilWheel,
    firmness: Firmness,
) -> Estimate<f64> {
    let ratio = first_pass(before).value / first_pass(after).value;
    let [a, b, c] = firmness.exponents().map(|a| ratio.powf(a));
    Estimate {
        value: b,
        low: a.min(c),
        high: a.max(c),
        extrapolated: first_pass(before).extrapolated || first_pass(after).extrapolated,
        citation: Citation::of(PASSES, Standing::FromMemory),
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::{Force, Stress};

    use super::*;

    fn wheel(ci: f64, ratio: f64) -> SoilWheel {
        let m = Length::from_m;
        let load = Force::from_kn(20.0).as_mass();
        SoilWheel::new(load, Stress::from_kpa(ci), m(0.279), m(1.05), ratio)
            .unwrap()
            .with_section_height(m(0.24))
            .unwrap()
    }

    // 900 kPa, 20 kN: first pass, and with a = 3 after 10 and 50 wheel passes, mm; by hand.
    #[test]
    fn worked_ruts() {
        for (ratio, first, ten, fifty) in
            [(0.10, 44.0, 96.0, 164.0), (0.18, 33.0, 71.0, 122.0), (0.26, 28.0, 59.0, 102.0)]
        {
            let wheel = wheel(900.0, ratio);
            let mm = |passes| rut(&wheel, passes, Firmness::Average).unwrap().high.as_mm();
            assert!((first_pass(&wheel).value.as_mm() - first).abs() < 0.6);
            assert!((mm(10.0) - ten).abs() < 0.8 && (mm(50.0) - fifty).abs() < 0.8);
        }
    }

    #[test]
    fn worked_doubled_deflection_lowers_every_rut_by_twenty_nine_percent() {
        let (hard, soft) = (wheel(900.0, 0.10), wheel(900.0, 0.20));
        assert!((first_pass(&soft).value / first_pass(&hard).value - 0.5_f64.sqrt()).abs() < 1e-9);
        let more = passes_to_same_rut(&hard, &soft, Firmness::Average);
        assert!((more.low - 2.83).abs() < 0.01, "{more:?}");
    }

    #[test]
    fn no_pass_is_refused_and_deep_sinkage_marked() {
        assert!(rut(&wheel(900.0, 0.1), 0.0, Firmness::Loose).is_err());
        assert!(rut(&wheel(900.0, 0.1), f64::NAN, Firmness::Loose).is_err());
        assert!(first_pass(&wheel(300.0, 0.1)).extrapolated);
        assert!(!first_pass(&wheel(900.0, 0.1)).extrapolated);
    }

    proptest! {
        #[test]
        fn ruts_grow_with_passes_and_shrink_with_strength(ci in 300.0..2500.0f64, n in 1.0..500.0f64) {
            let at = |ci, n| rut(&wheel(ci, 0.15), n, Firmness::Average).unwrap().value;
            prop_assert!(at(ci, n + 1.0) > at(ci, n));
            prop_assert!(at(ci + 50.0, n) < at(ci, n));
        }

        #[test]
        fn the_ratio_of_two_pressures_does_not_depend_on_passes(ci in 300.0..2500.0f64, n in 1.0..500.0f64) {
            let at = |ratio, n| rut(&wheel(ci, ratio), n, Firmness::Firm).unwrap().value;
            let (first, later) = (at(0.2, 1.0) / at(0.1, 1.0), at(0.2, n) / at(0.1, n));
            prop_assert!((first - later).abs() < 1e-9);
        }

        #[test]
        fn softer_ground_ruts_faster(n in 2.0..500.0f64) {
            let at = |firmness| rut(&wheel(900.0, 0.15), n, firmness).unwrap();
            prop_assert!(at(Firmness::Loose).value > at(Firmness::Average).value);
            prop_assert!(at(Firmness::Average).value > at(Firmness::Firm).value);
        }
    }
}
