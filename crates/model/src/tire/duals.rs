//! Two tires side by side: spacing, the gap left at the bottom, and how well mates match.

use quantity::{ColdPressure, Length, Mass, PressureDifference};

use super::deflection::{DeflectionError, DeflectionLaw, LARGEST_SHARE};
use crate::source::{Citation, Key, Standing};

/// Minimum dual spacing of medium truck tires, and matching of mates.
pub const DUAL_SPACING: Key = Key("min-dual-spacing");
/// Growth of the sidewall bulge with deflection.
pub const BULGE: Key = Key("sidewall-bulge");

/// Sidewall bulge over deflection, [`BULGE_LOW`] to [`BULGE_HIGH`].
pub const BULGE_USUAL: f64 = 0.6;
/// Least bulge over deflection.
pub const BULGE_LOW: f64 = 0.5;
/// Most bulge over deflection.
pub const BULGE_HIGH: f64 = 0.8;

/// Most that the free diameters of mates may differ.
pub const MATE_DIAMETER: Length = Length::from_in(0.25);
/// Most that the pressures of mates may differ; from memory.
pub const MATE_PRESSURE: PressureDifference = PressureDifference::from_psi(5.0);
/// A predicted gap under this must be measured on the truck.
pub const MEASURE_UNDER: Length = Length::from_mm(10.0);

/// Size and least center-to-center spacing in inches, on the design rim.
const SPACING_TABLE: [(&str, f64); 22] = [
    ("9R17.5HC", 10.3),
    ("215/75R17.5", 9.3),
    ("245/70R17.5", 10.6),
    ("8R19.5", 9.1),
    ("225/70R19.5", 10.0),
    ("245/70R19.5", 11.0),
    ("265/70R19.5", 11.6),
    ("285/70R19.5", 12.5),
    ("305/70R19.5", 13.5),
    ("9R22.5", 10.3),
    ("10R22.5", 11.4),
    ("11R22.5", 12.5),
    ("12R22.5", 13.5),
    ("245/75R22.5", 11.0),
    ("255/70R22.5", 11.3),
    ("265/75R22.5", 11.6),
    ("275/70R22.5", 12.2),
    ("295/75R22.5", 13.2),
    ("295/80R22.5", 13.2),
    ("315/80R22.5", 13.8),
    ("11.00R24", 13.2),
    ("12.00R24", 14.1),
];

/// Why there is no spacing, gap or pressure.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum DualsError {
    /// The spacing does not even take the unloaded tires.
    #[error(
        "a spacing of {spacing} leaves less than the wanted gap of {least_gap} between unloaded tires \
         {section_width} wide; fit wider spacing or narrower tires"
    )]
    NoRoom {
        /// Center-to-center spacing.
        spacing: Length,
        /// Section width.
        section_width: Length,
        /// Gap wanted.
        least_gap: Length,
    },
    /// A bulge no tire has.
    #[error("a bulge of {bulge} of the deflection is outside 0.3 to 1")]
    Bulge {
        /// Bulge offered.
        bulge: f64,
    },
    /// The deflection law refused.
    #[error(transparent)]
    Deflection(#[from] DeflectionError),
}

/// Least center-to-center spacing of a dual.
#[derive(Debug, Clone, PartialEq)]
pub struct MinimumSpacing {
    /// The spacing.
    pub value: Length,
    /// Read in a table, or estimated from the section width.
    pub citation: Citation,
}

impl MinimumSpacing {
    /// The spacing a tire maker's sheet prints for a size on its design rim; `None` for sizes
    /// that are not in it.
    ///
    /// # Validity
    /// Without chains.
    ///
    /// # Source
    /// [`DUAL_SPACING`], read.
    pub fn of(size: &str) -> Option<Self> {
        let (listed, inches) = SPACING_TABLE.iter().find(|(listed, _)| *listed == size.trim())?;
        Some(Self {
            value: Length::from_in(*inches),
            citation: Citation::of(DUAL_SPACING, Standing::Read).at(*listed),
        })
    }

    /// An estimate for sizes the sheet lacks: 1.14 times the section width of inch sizes,
    /// 1.125 times that of metric ones.
    ///
    /// # Validity
    /// Within 1 % of 20 of the sheet's 21 sizes whose width was recalled; 245/70R17.5 is printed 3 % less.
    ///
    /// # Source
    /// [`DUAL_SPACING`]; the ratio rests on section widths from memory.
    pub fn estimated(section_width: Length, metric: bool) -> Self {
        let ratio = if metric { 1.125 } else { 1.14 };
        Self {
            value: section_width * ratio,
            citation: Citation::of(DUAL_SPACING, Standing::FromMemory)
                .at("estimated from the section width"),
        }
    }

    /// The same on a rim wider than the design rim: 0.1 in for each 0.25 in.
    ///
    /// # Source
    /// [`DUAL_SPACING`]; the 0.25 in is from memory.
    #[must_use]
    pub fn on_rim_wider_by(self, wider: Length) -> Self {
        Self { value: self.value + wider * (0.10 / 0.25), ..self }
    }
}

/// Gap between the sidewalls of a dual at the bottom; below zero they touch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// With [`BULGE_USUAL`].
    pub expected: Length,
    /// With [`BULGE_HIGH`].
    pub low: Length,
    /// With [`BULGE_LOW`].
    pub high: Length,
}

/// The gap left between equal tires: `spacing - (S + k_b δ)`.
///
/// # Validity
/// Mates at the same pressure and load, no chains. The bulge is an estimate: measure the gap
/// at the lowest pressure and full load where less than [`MEASURE_UNDER`] is left.
///
/// # Source
/// [`BULGE`], from memory.
///
/// ```
/// use model::tire::duals::gap;
/// use quantity::Length;
/// let mm = Length::from_mm;
/// let left = gap(mm(317.5), mm(279.0), mm(45.5));
/// assert!((left.expected.as_mm() - 11.2).abs() < 0.1);
/// ```
pub fn gap(spacing: Length, section_width: Length, deflection: Length) -> Gap {
    let left = |k_b: f64| spacing - (section_width + deflection * k_b);
    Gap { expected: left(BULGE_USUAL), low: left(BULGE_HIGH), high: left(BULGE_LOW) }
}

/// A pressure that keeps a gap.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GapPressure {
    /// Lowest cold inflation pressure.
    pub pressure: ColdPressure,
    /// Deflection as a share of the section height at that pressure.
    pub share_of_section_height: f64,
    /// Whether the deflection law was extrapolated.
    pub extrapolated: bool,
}

/// Where a dual stands and what it must keep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DualFit {
    /// Center-to-center spacing.
    pub spacing: Length,
    /// Section width, unloaded.
    pub section_width: Length,
    /// Least gap wanted.
    pub least_gap: Length,
    /// Bulge over deflection, such as [`BULGE_USUAL`].
    pub bulge: f64,
}

/// The lowest cold pressure at which a dual keeps its gap under a load on each tire.
///
/// # Validity
/// As [`gap`] and [`DeflectionLaw::pressure_for`]; where the gap would allow more than 45 % of
/// the section height, the pressure for 45 % is given.
///
/// # Errors
/// [`DualsError`]: no room even unloaded, a bulge outside 0.3 to 1, or a load the law refuses.
///
/// # Source
/// [`BULGE`], from memory.
pub fn lowest_pressure(
    law: &DeflectionLaw,
    fit: DualFit,
    load: Mass,
) -> Result<GapPressure, DualsError> {
    let DualFit { spacing, section_width, least_gap, bulge } = fit;
    if !(0.3..=1.0).contains(&bulge) {
        return Err(DualsError::Bulge { bulge });
    }
    let room = spacing - section_width - least_gap;
    if room <= Length::ZERO {
        return Err(DualsError::NoRoom { spacing, section_width, least_gap });
    }
    let share = (room / bulge / law.section_height()).min(LARGEST_SHARE);
    let found = law.pressure_for(load, share)?;
    Ok(GapPressure {
        pressure: found.pressure,
        share_of_section_height: share,
        extrapolated: found.extrapolated,
    })
}

/// Whether the free diameters of mates are near enough.
///
/// # Source
/// [`DUAL_SPACING`], read: 1/4 in; an older rule lets 1/2 in pass from 9.00 sections.
pub fn diameters_match(difference: Length) -> bool {
    difference.abs() <= MATE_DIAMETER
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::Force;

    use super::*;
    use crate::tire::fixture;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn law() -> DeflectionLaw {
        DeflectionLaw::of(&fixture::tire_11r22_5()).unwrap()
    }

    fn fit(least_gap: f64) -> DualFit {
        DualFit {
            spacing: mm(317.5),
            section_width: mm(279.0),
            least_gap: mm(least_gap),
            bulge: BULGE_USUAL,
        }
    }

    // Tire maker's medium-truck sheet, February 2011.
    #[test]
    fn table_minimum_spacing() {
        for (size, inches) in [("11R22.5", 12.5), ("315/80R22.5", 13.8), ("12.00R24", 14.1)] {
            let found = MinimumSpacing::of(size).unwrap();
            assert!((found.value.as_in() - inches).abs() < 1e-9);
            assert_eq!(found.citation.standing, Standing::Read);
        }
        assert_eq!(MinimumSpacing::of("425/65R22.5"), None);
    }

    #[test]
    fn table_estimates_agree_within_one_percent() {
        for (size, width, metric) in [
            ("11R22.5", 279.0, false),
            ("12.00R24", 313.0, false),
            ("295/80R22.5", 298.0, true),
            ("255/70R22.5", 255.0, true),
        ] {
            let read = MinimumSpacing::of(size).unwrap().value;
            let estimate = MinimumSpacing::estimated(mm(width), metric).value;
            assert!((estimate / read - 1.0).abs() < 0.01, "{size}");
        }
    }

    #[test]
    fn a_wider_rim_needs_more_spacing() {
        let wider = MinimumSpacing::of("11R22.5").unwrap().on_rim_wider_by(Length::from_in(0.75));
        assert!((wider.value.as_in() - 12.8).abs() < 1e-9);
    }

    // 11R22.5 on 317.5 mm: gaps worked by hand.
    #[test]
    fn worked_gaps() {
        for (delta, expected, low, high) in [
            (23.0, 24.7, 20.1, 27.0),
            (33.0, 18.7, 12.1, 22.0),
            (45.5, 11.2, 2.1, 15.75),
            (55.0, 5.5, -5.5, 11.0),
        ] {
            let left = gap(mm(317.5), mm(279.0), mm(delta));
            assert!((left.expected.as_mm() - expected).abs() < 0.05);
            assert!((left.low.as_mm() - low).abs() < 0.05);
            assert!((left.high.as_mm() - high).abs() < 0.05);
        }
    }

    #[test]
    fn no_room_is_said() {
        let load = Force::from_kn(18.9).as_mass();
        assert!(matches!(lowest_pressure(&law(), fit(40.0), load), Err(DualsError::NoRoom { .. })));
        let odd = DualFit { bulge: 2.0, ..fit(10.0) };
        assert!(matches!(lowest_pressure(&law(), odd, load), Err(DualsError::Bulge { .. })));
    }

    #[test]
    fn mates_a_quarter_inch_apart_still_match() {
        assert!(diameters_match(Length::from_in(0.25)));
        assert!(diameters_match(Length::from_in(-0.2)));
        assert!(!diameters_match(mm(7.0)));
    }

    proptest! {
        #[test]
        fn the_lowest_pressure_leaves_the_gap(least in 5.0..30.0f64, load in 12.0..25.0f64) {
            let load = Force::from_kn(load).as_mass();
            let found = lowest_pressure(&law(), fit(least), load).unwrap();
            prop_assume!(found.pressure > ColdPressure::ZERO);
            let delta = law().deflection(load, found.pressure).unwrap().value;
            let left = gap(mm(317.5), mm(279.0), delta).expected;
            prop_assert!(left.as_mm() >= least - 1e-6);
            if found.share_of_section_height < LARGEST_SHARE {
                prop_assert!((left.as_mm() - least).abs() < 1e-6);
            }
        }

        #[test]
        fn more_deflection_leaves_less_gap(delta in 0.0..80.0f64, more in 0.1..10.0f64) {
            let at = |d| gap(mm(317.5), mm(279.0), mm(d)).expected;
            prop_assert!(at(delta + more) < at(delta));
        }

        #[test]
        fn a_wider_gap_needs_more_pressure(least in 1.0..30.0f64, more in 0.1..5.0f64) {
            let load = Force::from_kn(22.0).as_mass();
            let at = |gap| lowest_pressure(&law(), fit(gap), load).unwrap().pressure;
            prop_assert!(at(least + more) >= at(least));
        }
    }
}
