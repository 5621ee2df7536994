//! Bearing ratio to expect of a soil class in a season, where nobody measured.

use quantity::Stress;

use super::Estimate;
use super::strength::Cbr;
use crate::source::{Citation, Key, Standing};

/// General range of CBR by class.
pub const CBR_BY_CLASS: Key = Key("cbr-by-uscs");
/// Design CBR by drainage.
pub const CBR_BY_DRAINAGE: Key = Key("look-2007");
/// Support of frost-susceptible soil over a year with thaw.
pub const THAW_SUPPORT: Key = Key("ufc-3-260-02");

/// Rating cone index over moisture by class.
pub const MOISTURE_LINES: Key = Key("ci-rci-moisture");

/// Class of the unified soil classification.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[allow(missing_docs, reason = "the letters are the classification's own")]
pub enum SoilClass {
    Gw,
    Gp,
    Gm,
    Gc,
    Sw,
    Sp,
    Sm,
    Sc,
    Ml,
    Cl,
    Ol,
    Mh,
    Ch,
    Oh,
}

/// How wet the ground is over the time asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Season {
    /// Drained.
    Drained,
    /// Poorly drained, wet.
    Wet,
    /// Thawing after frost.
    Thaw,
}

/// The CBR to expect of a class in a season: an estimate to begin with, to be replaced by a measurement.
///
/// # Validity
/// Ranges of the trade, wide. The thaw value stands for the whole year with its thaw: at the
/// worst weeks expect less. `None` where no number was read for the class in that season.
///
/// # Source
/// [`CBR_BY_CLASS`] and [`CBR_BY_DRAINAGE`], read, CH and OH drained from memory; [`THAW_SUPPORT`],
/// whose frost group of a class is from memory.
pub fn expected_cbr(class: SoilClass, season: Season) -> Option<Estimate<Cbr>> {
    let (low, high, key, standing) = match season {
        Season::Drained => drained(class),
        Season::Wet => wet(class)?,
        Season::Thaw => thaw(class)?,
    };
    Some(Estimate {
        // The middle on the scale on which strength doubles.
        value: Cbr::clamped((low * high).sqrt()),
        low: Cbr::clamped(low),
        high: Cbr::clamped(high),
        extrapolated: false,
        citation: Citation::of(key, standing).at("estimated from the class"),
    })
}

/// Rating cone index to expect of a class at a moisture: `ln RCI = c1 - c2 ln w`, w in percent of
/// the dry weight, psi, and no higher than the cone index by the same form.
///
/// # Validity
/// Only to fill in a field before anyone has measured. Moisture of 15 to 40 % is where the lines
/// were drawn as far as we know; outside it is marked. `None` for classes without usable lines.
///
/// # Source
/// [`MOISTURE_LINES`]: coefficients read, the form and the order of columns from memory.
pub fn expected_rating_cone_index(class: SoilClass, moisture_pct: f64) -> Option<Estimate<Stress>> {
    use SoilClass::{Ch, Cl, Mh, Ml, Oh, Ol, Sc, Sm};
    if !(5.0..=100.0).contains(&moisture_pct) {
        return None;
    }
    // Cone index first; the printed slope for CH gives none and is taken for a misprint.
    let (ci, rci) = match class {
        Sm => (Some((8.749, 1.1949)), (12.542, 2.955)),
        Sc => (Some((9.056, 1.3566)), (12.542, 2.955)),
        Ml => (Some((10.225, 1.565)), (11.936, 2.407)),
        Cl => (Some((10.998, 1.848)), (15.506, 3.530)),
        Ol => (Some((10.977, 1.754)), (17.399, 3.584)),
        Mh => (Some((12.321, 2.044)), (23.641, 5.191)),
        Oh => (Some((13.046, 2.172)), (12.189, 1.942)),
        Ch => (None, (13.686, 2.705)),
        _ => return None,
    };
    let line = |(c1, c2): (f64, f64)| (c1 - c2 * moisture_pct.ln()).exp();
    let psi = ci.map_or(line(rci), |ci| line(rci).min(line(ci)));
    let value = Stress::from_psi(psi);
    Some(Estimate {
        value,
        // No scatter was read: half and double, our judgement.
        low: value * 0.5,
        high: value * 2.0,
        extrapolated: !(15.0..=40.0).contains(&moisture_pct),
        citation: Citation::of(MOISTURE_LINES, Standing::FromMemory)
            .at("estimated from class and moisture"),
    })
}

type Range = (f64, f64, Key, Standing);

fn drained(class: SoilClass) -> Range {
    use SoilClass::{Ch, Cl, Gc, Gm, Gp, Gw, Mh, Ml, Oh, Ol, Sc, Sm, Sp, Sw};
    let (low, high) = match class {
        Gw => (40.0, 80.0),
        Gp => (30.0, 60.0),
        Gm => (20.0, 60.0),
        Gc | Sw => (20.0, 40.0),
        Sm | Sp => (10.0, 40.0),
        Sc => (5.0, 20.0),
        // Printed as "or less"; the low ends are the wet values, and 2 for organic soil, ours.
        Ml => (5.0, 15.0),
        Cl | Ch => (3.0, 15.0),
        Mh => (3.0, 10.0),
        Ol | Oh => (2.0, 5.0),
    };
    let standing = if matches!(class, Ch | Oh) { Standing::FromMemory } else { Standing::Read };
    (low, high, CBR_BY_CLASS, standing)
}

fn wet(class: SoilClass) -> Option<Range> {
    use SoilClass::{Ch, Cl, Gc, Gm, Gp, Gw, Mh, Ml, Oh, Ol, Sc, Sm, Sp, Sw};
    let (low, high) = match class {
        Gw | Gp => (20.0, 20.0),
        Gm | Gc | Sw | Sp => (15.0, 15.0),
        Sm | Sc => (7.0, 7.0),
        Ml => (5.0, 5.0),
        Cl => (3.0, 3.0),
        // Printed as under 3; the low end is ours.
        Mh | Ch => (2.0, 3.0),
        Ol | Oh => return None,
    };
    Some((low, high, CBR_BY_DRAINAGE, Standing::Read))
}

fn thaw(class: SoilClass) -> Option<Range> {
    use SoilClass::{Ch, Cl, Gc, Gm, Gp, Gw, Mh, Ml, Oh, Ol, Sc, Sm, Sp, Sw};
    let index = match class {
        Gm | Gc => 9.0,
        Sm => 6.5,
        Sc | Ml | Mh | Cl | Ch => 3.5,
        Gw | Gp | Sw | Sp | Ol | Oh => return None,
    };
    // The index by frost group was read; which class falls in which group is recalled.
    Some((index, index, THAW_SUPPORT, Standing::FromMemory))
}

#[cfg(test)]
mod tests {
    use super::*;

    // General ranges, and Look 2007, Table 13.9; UFC 3-260-02, Table 3-5.
    #[test]
    fn table_rows() {
        let of = |class, season| expected_cbr(class, season).unwrap();
        assert!((of(SoilClass::Gc, Season::Drained).low.as_pct() - 20.0).abs() < 1e-9);
        assert!((of(SoilClass::Sc, Season::Wet).value.as_pct() - 7.0).abs() < 1e-9);
        assert!((of(SoilClass::Cl, Season::Thaw).value.as_pct() - 3.5).abs() < 1e-9);
    }

    // Lines of ERDC/CRREL SR-04-1, Table 5.2.1, worked by hand at 20, 25 and 30 %.
    #[test]
    fn worked_rating_cone_index_over_moisture() {
        for (class, psi) in [
            (SoilClass::Sm, [40.0, 21.0, 12.0]),
            (SoilClass::Ml, [113.0, 66.0, 42.0]),
            (SoilClass::Cl, [139.0, 63.0, 33.0]),
            (SoilClass::Ch, [266.0, 145.0, 89.0]),
        ] {
            for (moisture, expected) in [20.0, 25.0, 30.0].into_iter().zip(psi) {
                let ours = expected_rating_cone_index(class, moisture).unwrap().value.as_psi();
                assert!((ours - expected).abs() < 0.6, "{class:?} {moisture}: {ours}");
            }
        }
        // Never above the cone index itself.
        let capped = expected_rating_cone_index(SoilClass::Mh, 25.0).unwrap().value.as_psi();
        assert!((capped - 312.0).abs() < 1.0, "{capped}");
    }

    #[test]
    fn moisture_without_a_line_has_none_and_odd_moisture_is_marked() {
        assert_eq!(expected_rating_cone_index(SoilClass::Gw, 25.0), None);
        assert_eq!(expected_rating_cone_index(SoilClass::Cl, 0.0), None);
        assert_eq!(expected_rating_cone_index(SoilClass::Cl, f64::NAN), None);
        assert!(expected_rating_cone_index(SoilClass::Cl, 60.0).unwrap().extrapolated);
    }

    #[test]
    fn a_class_without_a_number_has_none() {
        assert_eq!(expected_cbr(SoilClass::Ol, Season::Thaw), None);
        assert_eq!(expected_cbr(SoilClass::Gw, Season::Thaw), None);
    }

    #[test]
    fn wet_is_never_stronger_than_drained() {
        use SoilClass::{Ch, Cl, Gc, Gm, Gp, Gw, Mh, Ml, Sc, Sm, Sp, Sw};
        for class in [Gw, Gp, Gm, Gc, Sw, Sp, Sm, Sc, Ml, Cl, Mh, Ch] {
            let dry = expected_cbr(class, Season::Drained).unwrap();
            let wet = expected_cbr(class, Season::Wet).unwrap();
            assert!(wet.value <= dry.value, "{class:?}");
            assert!(dry.low <= dry.value && dry.value <= dry.high);
        }
    }

    #[test]
    fn recalled_ranges_say_so() {
        let standing = |class| expected_cbr(class, Season::Drained).unwrap().citation.standing;
        assert_eq!(standing(SoilClass::Ch), Standing::FromMemory);
        assert_eq!(standing(SoilClass::Gw), Standing::Read);
    }
}
