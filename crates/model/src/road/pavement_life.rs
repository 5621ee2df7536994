//! Life of a pavement against the strain in it: ratios first, and always as a band.

use quantity::Stress;

use super::strain::Strain;
use crate::ground::Estimate;
use crate::source::{Citation, Key, Standing};

/// Fatigue of asphalt, exponent 3.291.
pub const ASPHALT_INSTITUTE: Key = Key("asphalt-institute-ms-1");
/// Fatigue of asphalt, exponent 5, and rutting of the subgrade.
pub const US_ARMY: Key = Key("tm-5-822-13");

/// Which part of the pavement wears out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// Fatigue of the asphalt, by the tensile strain at its bottom.
    Asphalt,
    /// Rutting of the subgrade, by the compressive strain at its top.
    Subgrade,
}

/// Why there is no life.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LifeError {
    /// No strain that wears.
    #[error(
        "a strain of {strain} wears nothing in these laws; they want tension in the asphalt or \
         compression of the subgrade, as a number above zero"
    )]
    Strain {
        /// Strain given.
        strain: Strain,
    },
    /// Stiffness of no asphalt.
    #[error("a modulus of {modulus} is no asphalt's; the laws hold for 500 to 20 000 MPa")]
    Modulus {
        /// Modulus given.
        modulus: Stress,
    },
}

/// How many times longer the pavement lives at one strain than at a reference:
/// `(ε_ref / ε)^n`.
///
/// Asphalt: n is 3.291 or 5, and the value is the 3.291 one, the smaller gain. Subgrade: n is
/// 4.477 or 7.102 (1/0.1408), the value likewise. Tire pressure hardly changes the strain of the
/// subgrade, so a gain there comes from load or from a stronger ground only.
///
/// # Validity
/// Strains of the same pavement by the same method. A uniform contact circle overstates what
/// pressure does.
///
/// # Errors
/// [`LifeError::Strain`] unless both are above zero (for the subgrade: as compression).
///
/// # Source
/// [`ASPHALT_INSTITUTE`] (its subgrade exponent from memory), [`US_ARMY`].
///
/// ```
/// use model::road::pavement_life::{Part, relative_life};
/// use model::road::strain::Strain;
/// let [at_690, at_345] = [368.0, 248.7].map(Strain::from_microstrain);
/// let life = relative_life(Part::Asphalt, at_690, at_345)?;
/// assert!((life.value - 3.6).abs() < 0.1 && (life.high - 7.1).abs() < 0.1);
/// # Ok::<(), model::road::pavement_life::LifeError>(())
/// ```
pub fn relative_life(
    part: Part,
    reference: Strain,
    strain: Strain,
) -> Result<Estimate<f64>, LifeError> {
    let (exponents, standing) = match part {
        Part::Asphalt => ([3.291, 5.0], Standing::Read),
        Part::Subgrade => ([4.477, 1.0 / 0.1408], Standing::FromMemory),
    };
    let ratio = wearing(reference)? / wearing(strain)?;
    let [value, other] = exponents.map(|n| ratio.powf(n));
    Ok(Estimate {
        value,
        low: value.min(other),
        high: value.max(other),
        extrapolated: false,
        citation: Citation::of(ASPHALT_INSTITUTE, standing),
    })
}

/// Passes an asphalt layer bears at a tensile strain: the Asphalt Institute's line
/// (`0.0796 ε^-3.291 E^-0.854`, E in psi, standard mix) and the US Army's
/// (`log N = -5 log ε - 2.665 log(E/14.22) - 0.392`) as ends; the value is the smaller.
///
/// # Validity
/// Repetitions in the one, coverages in the other; moduli of asphalt. For orders of magnitude:
/// use [`relative_life`] for comparisons.
///
/// # Errors
/// [`LifeError`] for a strain that is not tensile or a modulus of no asphalt.
///
/// # Source
/// [`ASPHALT_INSTITUTE`], its factor from memory; [`US_ARMY`], chapter 5.
pub fn asphalt_passes(strain: Strain, modulus: Stress) -> Result<Estimate<f64>, LifeError> {
    if !(500.0..=20000.0).contains(&modulus.as_mpa()) {
        return Err(LifeError::Modulus { modulus });
    }
    let epsilon = wearing(strain)?;
    let e = modulus.as_psi();
    let institute = 18.4 * 0.004325 * epsilon.powf(-3.291) * e.powf(-0.854);
    let army = 10_f64.powf(-5.0 * epsilon.log10() - 2.665 * (e / 14.22).log10() - 0.392);
    Ok(band(institute, army))
}

/// Passes a subgrade bears at a compressive strain: the Asphalt Institute's
/// `1.365e-9 ε^-4.477` and the US Army's `log N = (-log ε - 2.408) / 0.1408` as ends; the value is
/// the smaller.
///
/// # Validity
/// As [`asphalt_passes`].
///
/// # Errors
/// [`LifeError::Strain`] for a strain that is not above zero, compression counted so.
///
/// # Source
/// [`ASPHALT_INSTITUTE`] from memory; [`US_ARMY`], equation 5-4.
pub fn subgrade_passes(strain: Strain) -> Result<Estimate<f64>, LifeError> {
    let epsilon = wearing(strain)?;
    let institute = 1.365e-9 * epsilon.powf(-4.477);
    let army = 10_f64.powf((-epsilon.log10() - 2.408) / 0.1408);
    Ok(band(institute, army))
}

fn wearing(strain: Strain) -> Result<f64, LifeError> {
    if strain > Strain::ZERO { Ok(strain.as_ratio()) } else { Err(LifeError::Strain { strain }) }
}

fn band(institute: f64, army: f64) -> Estimate<f64> {
    let low = institute.min(army);
    let (key, standing) = if army <= institute {
        (US_ARMY, Standing::Read)
    } else {
        (ASPHALT_INSTITUTE, Standing::FromMemory)
    };
    Estimate {
        value: low,
        low,
        high: institute.max(army),
        extrapolated: false,
        citation: Citation::of(key, standing),
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    // The equations as read, evaluated by another program: 435 000 psi.
    #[test]
    fn regress_passes() {
        let asphalt = |ue: f64| {
            asphalt_passes(Strain::from_microstrain(ue), Stress::from_psi(435e3)).unwrap()
        };
        for (ue, institute, army) in
            [(200.0, 1.8e6, 1.4e6), (300.0, 478e3, 185e3), (400.0, 185e3, 44e3)]
        {
            let found = asphalt(ue);
            assert!((found.high / institute - 1.0).abs() < 0.03, "{ue}: {}", found.high);
            assert!((found.low / army - 1.0).abs() < 0.03, "{ue}: {}", found.low);
            assert_eq!(found.citation.key, US_ARMY);
        }
        for (ue, army) in [(500.0, 2.2e6), (800.0, 78e3)] {
            let found = subgrade_passes(Strain::from_microstrain(ue)).unwrap();
            let ours = [found.low, found.high];
            assert!(ours.iter().any(|n| (n / army - 1.0).abs() < 0.03), "{ue}: {ours:?}");
        }
    }

    // Manitoba, 2009: 15 to 20 % less strain at half the pressure in the thaw; by these laws 1.7
    // to 2.1 times the life, or 2.3 to 3.1.
    #[test]
    fn measured_strain_as_a_band_of_life() {
        for (share, low, high) in [(0.85, 1.7, 2.3), (0.80, 2.1, 3.1)] {
            let strain = Strain::from_microstrain(400.0 * share);
            let life =
                relative_life(Part::Asphalt, Strain::from_microstrain(400.0), strain).unwrap();
            assert!((life.low - low).abs() < 0.06 && (life.high - high).abs() < 0.06, "{life:?}");
            assert!(life.value.total_cmp(&life.low).is_eq());
        }
    }

    #[test]
    fn what_wears_nothing_is_refused() {
        let [none, some] = [0.0, 100.0].map(Strain::from_microstrain);
        assert!(relative_life(Part::Asphalt, none, some).is_err());
        assert!(relative_life(Part::Subgrade, some, -some).is_err());
        assert!(subgrade_passes(none).is_err());
        let soft = Stress::from_mpa(100.0);
        assert!(matches!(asphalt_passes(some, soft), Err(LifeError::Modulus { .. })));
    }

    proptest! {
        #[test]
        fn the_band_holds_its_value_and_turns_round(
            one in 10.0..2000.0_f64, other in 10.0..2000.0_f64,
        ) {
            let [a, b] = [one, other].map(Strain::from_microstrain);
            for part in [Part::Asphalt, Part::Subgrade] {
                let there = relative_life(part, a, b).unwrap();
                let back = relative_life(part, b, a).unwrap();
                prop_assert!(there.low <= there.value && there.value <= there.high);
                prop_assert!((there.value * back.value - 1.0).abs() < 1e-9);
            }
        }
    }
}
