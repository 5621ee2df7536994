//! Bearing ratio to expect of a soil class in a season, where nobody measured.

use super::Estimate;
use super::strength::Cbr;
use crate::source::{Citation, Key, Standing};

/// General range of CBR by class.
pub const CBR_BY_CLASS: Key = Key("cbr-by-uscs");
/// Design CBR by drainage.
pub const CBR_BY_DRAINAGE: Key = Key("look-2007");
/// Support of frost-susceptible soil over a year with thaw.
pub const THAW_SUPPORT: Key = Key("ufc-3-260-02");

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
