//! Wear of a paved road by one pass of an axle group, as equal standard axles.

use quantity::Force;

use super::pavement_life::{LifeError, Part, relative_life};
use super::strain::Strain;
use crate::ground::Estimate;
use crate::source::{Citation, Key, Standing};

/// Load equivalency of flexible pavements.
pub const AASHTO: Key = Key("aashto-1993-appendix-d");
/// Loads of axle groups that wear a road as one standard axle does.
pub const GROUP_LOADS: Key = Key("austroads-group-loads");

/// Why there is no factor.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum AxleFactorError {
    /// More axles than the equation knows.
    #[error("a group of {axles} axles; the equation knows 1, 2 and 3")]
    Axles {
        /// Axles given.
        axles: u8,
    },
    /// Load outside the published tables.
    #[error(
        "a load of {:.1} kip on a group of {axles} is outside the tables, 2 to {most} kip a group",
        load.as_kip()
    )]
    Load {
        /// Load on the whole group.
        load: Force,
        /// Axles given.
        axles: u8,
        /// Heaviest row, kip.
        most: f64,
    },
    /// Structural number outside the published tables.
    #[error("a structural number of {value} is outside the tables, 1 to 6 (inches)")]
    StructuralNumber {
        /// Number given.
        value: f64,
    },
    /// Serviceability outside the published tables.
    #[error("a terminal serviceability of {value} is outside the tables, 2.0 to 3.0")]
    Terminal {
        /// Serviceability given.
        value: f64,
    },
    /// A load that is none.
    #[error("a load of {load}; it must be above zero")]
    NoLoad {
        /// Load given.
        load: Force,
    },
}

/// Passes of an 18 kip single axle on duals that wear a flexible pavement as one pass of this group:
/// `((L + L₂) / 19)^4.79 · 10^(G/β₁₈ - G/β) / L₂^4.33`.
///
/// `load` is that of the whole group; the structural number is in inches. Where it is not known,
/// 5 with a terminal serviceability of 2.5 is usual.
///
/// # Validity
/// Groups on duals (single tires were not in the road test), 1 axle to 50 kip, 2 and 3 to 90 kip,
/// structural number 1 to 6, terminal serviceability 2.0 to 3.0. The equation knows no tire
/// pressure: see [`pressure_factor`].
///
/// # Errors
/// [`AxleFactorError`] outside that; the limits of the tables are from memory.
///
/// # Source
/// [`AASHTO`].
///
/// ```
/// use model::road::axle_factor::axle_factor;
/// use quantity::Force;
/// let lef = axle_factor(Force::from_kip(40.0), 2, 5.0, 2.5)?;
/// assert!((lef - 2.08).abs() < 0.005);
/// # Ok::<(), model::road::axle_factor::AxleFactorError>(())
/// ```
pub fn axle_factor(
    load: Force,
    axles: u8,
    structural_number: f64,
    terminal: f64,
) -> Result<f64, AxleFactorError> {
    if !(1..=3).contains(&axles) {
        return Err(AxleFactorError::Axles { axles });
    }
    let most = if axles == 1 { 50.0 } else { 90.0 };
    let l_x = load.as_kip();
    if !(2.0..=most).contains(&l_x) {
        return Err(AxleFactorError::Load { load, axles, most });
    }
    if !(1.0..=6.0).contains(&structural_number) {
        return Err(AxleFactorError::StructuralNumber { value: structural_number });
    }
    if !(2.0..=3.0).contains(&terminal) {
        return Err(AxleFactorError::Terminal { value: terminal });
    }
    let l_2 = f64::from(axles);
    let g = ((4.2 - terminal) / (4.2 - 1.5)).log10();
    let beta = |l_x: f64, l_2: f64| {
        0.40 + 0.081 * (l_x + l_2).powf(3.23)
            / ((structural_number + 1.0).powf(5.19) * l_2.powf(3.23))
    };
    let loads = ((l_x + l_2) / (18.0 + 1.0)).powf(4.79) / l_2.powf(4.33);
    Ok(loads * 10_f64.powf(g / beta(18.0, 1.0) - g / beta(l_x, l_2)))
}

/// Tires on each axle end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fitment {
    /// One.
    Single,
    /// Two.
    Dual,
}

/// The load of a group that wears a road as one standard axle (80 kN on duals) does, if the list
/// has the group.
///
/// # Source
/// [`GROUP_LOADS`], from memory.
#[must_use]
pub fn group_reference(axles: u8, fitment: Fitment) -> Option<Force> {
    let kn = match (axles, fitment) {
        (1, Fitment::Single) => 53.0,
        (1, Fitment::Dual) => 80.0,
        (2, Fitment::Single) => 90.0,
        (2, Fitment::Dual) => 135.0,
        (3, Fitment::Dual) => 181.0,
        (4, Fitment::Dual) => 221.0,
        _ => return None,
    };
    Some(Force::from_kn(kn))
}

/// Passes of a standard axle by the fourth power: `(L / L_ref)⁴`.
///
/// On steer axles it says several times what [`axle_factor`] says, which does not know single
/// tires: show both, and which is which.
///
/// # Validity
/// Groups of [`group_reference`]. The road test's own exponent lies between 4.0 and 4.5.
///
/// # Errors
/// [`AxleFactorError::NoLoad`], and [`AxleFactorError::Axles`] for a group that is not on the list.
///
/// # Source
/// [`GROUP_LOADS`], from memory.
pub fn fourth_power(
    load: Force,
    axles: u8,
    fitment: Fitment,
) -> Result<Estimate<f64>, AxleFactorError> {
    if load <= Force::ZERO {
        return Err(AxleFactorError::NoLoad { load });
    }
    let reference = group_reference(axles, fitment).ok_or(AxleFactorError::Axles { axles })?;
    let ratio = load / reference;
    let [value, other] = [ratio.powi(4), ratio.powf(4.5)];
    Ok(Estimate {
        value,
        low: value.min(other),
        high: value.max(other),
        extrapolated: false,
        citation: Citation::of(GROUP_LOADS, Standing::FromMemory),
    })
}

/// What a load factor is to be multiplied by for asphalt fatigue at another tire pressure:
/// `(ε / ε_ref)^n`, with both exponents of [`relative_life`] as the ends.
///
/// For rutting of the subgrade the factor is 1: load rules there.
///
/// # Validity
/// Asphalt fatigue only; strains of the same load on the same pavement.
///
/// # Errors
/// [`LifeError`] for strains that are not tensile.
///
/// # Source
/// As [`relative_life`].
pub fn pressure_factor(reference: Strain, strain: Strain) -> Result<Estimate<f64>, LifeError> {
    let life = relative_life(Part::Asphalt, reference, strain)?;
    Ok(Estimate {
        value: 1.0 / life.value,
        low: 1.0 / life.high,
        high: 1.0 / life.low,
        extrapolated: life.extrapolated,
        citation: life.citation,
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn lef(kip: f64, axles: u8, sn: f64, pt: f64) -> f64 {
        axle_factor(Force::from_kip(kip), axles, sn, pt).unwrap()
    }

    // AASHTO Guide 1993, Tables D.4 (p. D-6) and D.5 (p. D-7), as printed.
    #[test]
    fn table_rows_to_their_last_digit() {
        assert!((lef(30.0, 1, 3.0, 2.5) - 7.9).abs() < 0.05);
        assert!((lef(40.0, 2, 5.0, 2.5) - 2.08).abs() < 0.005);
        assert!((lef(18.0, 1, 4.0, 2.0) - 1.0).abs() < 1e-12);
    }

    // A worked answer in a course: 76 kip on two axles, 24.87; its intermediates are rounded.
    #[test]
    fn worked_answer_of_a_course() {
        assert!((lef(76.0, 2, 4.0, 2.5) / 24.87 - 1.0).abs() < 1e-3);
    }

    // Computed once by another program from the same equation.
    #[test]
    fn regress_grid() {
        for (kip, axles, sn, pt, theirs) in [
            (6.0, 1, 2.0, 2.5, 0.0174),
            (24.0, 1, 4.0, 2.5, 2.8932),
            (34.0, 2, 3.0, 2.5, 1.1114),
            (54.0, 3, 6.0, 2.0, 1.6576),
            (60.0, 3, 3.0, 2.5, 2.4778),
        ] {
            assert!((lef(kip, axles, sn, pt) - theirs).abs() < 6e-5, "{kip} kip");
        }
    }

    // A 6.5 t steer axle, a 17 t tandem and a 24 t tridem on duals: 2.1, 2.3, 2.9.
    #[test]
    fn regress_fourth_power() {
        let t = |tonnes: f64, axles, fitment| {
            let load = quantity::Mass::from_t(tonnes).weight();
            fourth_power(load, axles, fitment).unwrap().value
        };
        assert!((t(6.5, 1, Fitment::Single) - 2.1).abs() < 0.05);
        assert!((t(17.0, 2, Fitment::Dual) - 2.3).abs() < 0.05);
        assert!((t(24.0, 3, Fitment::Dual) - 2.9).abs() < 0.05);
    }

    #[test]
    fn lower_strain_wears_less_by_a_band() {
        let [reference, strain] = [368.0, 248.7].map(Strain::from_microstrain);
        let factor = pressure_factor(reference, strain).unwrap();
        assert!((1.0 / factor.value - 3.63).abs() < 0.01);
        assert!(factor.low < factor.value && factor.value <= factor.high && factor.high < 1.0);
    }

    #[test]
    fn what_the_tables_do_not_hold_is_refused() {
        let ask = |kip: f64, axles, sn, pt| axle_factor(Force::from_kip(kip), axles, sn, pt);
        assert!(matches!(ask(18.0, 4, 3.0, 2.5), Err(AxleFactorError::Axles { axles: 4 })));
        assert!(matches!(ask(60.0, 1, 3.0, 2.5), Err(AxleFactorError::Load { .. })));
        assert!(matches!(ask(18.0, 1, 0.5, 2.5), Err(AxleFactorError::StructuralNumber { .. })));
        assert!(matches!(ask(18.0, 1, 3.0, f64::NAN), Err(AxleFactorError::Terminal { .. })));
        let nothing = fourth_power(Force::ZERO, 1, Fitment::Dual);
        assert!(matches!(nothing, Err(AxleFactorError::NoLoad { .. })));
        let triple = fourth_power(Force::from_kn(100.0), 3, Fitment::Single);
        assert!(matches!(triple, Err(AxleFactorError::Axles { axles: 3 })));
    }

    proptest! {
        #[test]
        fn more_load_wears_more(
            kip in 2.0..49.0_f64, more in 0.01..1.0_f64, axles in 1..=3_u8,
            sn in 1.0..6.0_f64, pt in 2.0..3.0_f64,
        ) {
            prop_assert!(lef(kip + more, axles, sn, pt) > lef(kip, axles, sn, pt));
        }

        #[test]
        fn the_same_load_on_more_axles_wears_less(kip in 10.0..50.0_f64, sn in 1.0..6.0_f64) {
            prop_assert!(lef(kip, 2, sn, 2.5) < lef(kip, 1, sn, 2.5));
            prop_assert!(lef(kip, 3, sn, 2.5) < lef(kip, 2, sn, 2.5));
        }
    }
}
