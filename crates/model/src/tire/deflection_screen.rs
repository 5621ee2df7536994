//! How far a tire may be pressed in under a speed cap, as a screen beside the load tables.

use quantity::Speed;

use super::deflection::DeflectionLaw;
use crate::source::{Citation, Key, Standing};

/// Deflection levels of forest engineering practice.
pub const DEFLECTION_PRACTICE: Key = Key("deflection-practice");

/// Highest deflection the screen lets pass.
#[derive(Debug, Clone, PartialEq)]
pub struct DeflectionLimit {
    /// Share of the section height.
    pub share: f64,
    /// Whether the limit is the tire's own deflection at its rated point, which is higher
    /// than the screen's.
    pub by_rated_point: bool,
    /// Where it comes from.
    pub citation: Citation,
}

/// The highest share of the section height under a speed cap: 20 % up to 40 km/h, 16 % up to
/// 60 km/h, 13 % faster.
///
/// # Validity
/// Truck radials. It may raise a minimum pressure but approves none.
///
/// # Source
/// [`DEFLECTION_PRACTICE`], from memory.
///
/// ```
/// use model::tire::deflection_screen::highest_share;
/// use quantity::Speed;
/// assert!((highest_share(Speed::from_kmh(40.0)).share - 0.20).abs() < 1e-12);
/// assert!((highest_share(Speed::from_mph(25.0)).share - 0.20).abs() < 1e-12);
/// ```
pub fn highest_share(cap: Speed) -> DeflectionLimit {
    let (share, locator) = if cap <= Speed::from_mph(25.0) {
        (0.20, "up to 25 mph (40 km/h)")
    } else if cap <= Speed::from_kmh(60.0) {
        (0.16, "up to 60 km/h")
    } else {
        (0.13, "unrestricted")
    };
    DeflectionLimit {
        share,
        by_rated_point: false,
        citation: Citation::of(DEFLECTION_PRACTICE, Standing::FromMemory).at(locator),
    }
}

/// The same for one tire: never under the deflection it has at its own rated point, which its
/// maker allows at full speed.
///
/// # Source
/// [`DEFLECTION_PRACTICE`], or the anchor of the tire's law.
pub fn highest_share_for(law: &DeflectionLaw, cap: Speed) -> DeflectionLimit {
    let limit = highest_share(cap);
    if law.rated_share() > limit.share {
        DeflectionLimit {
            share: law.rated_share(),
            by_rated_point: true,
            citation: law.anchor().clone(),
        }
    } else {
        limit
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::{ColdPressure, Force};

    use super::*;
    use crate::tire::fixture;

    // USDA Forest Service summary (27 Oct 1987): 45 psi loaded at no more than 25 mph. At a
    // legal tandem's 18.9 kN a tire 11R22.5 then has 19 %, which 40 km/h lets pass.
    #[test]
    fn table_forest_practice_passes_at_its_speed_only() {
        let law = DeflectionLaw::of(&fixture::tire_11r22_5()).unwrap();
        let share = law
            .deflection(Force::from_kn(18.9).as_mass(), ColdPressure::from_psi(45.0))
            .unwrap()
            .share_of_section_height;
        assert!(share < highest_share_for(&law, Speed::from_kmh(40.0)).share);
        assert!(share > highest_share_for(&law, Speed::from_kmh(60.0)).share);
    }

    #[test]
    fn the_rated_point_always_passes() {
        let tire = fixture::tire_11r22_5();
        let law = DeflectionLaw::of(&tire).unwrap();
        let limit = highest_share_for(&law, Speed::from_kmh(100.0));
        assert!(limit.by_rated_point);
        assert!((limit.share - 33.0 / 240.25).abs() < 1e-9);
        assert!(!highest_share_for(&law, Speed::from_kmh(50.0)).by_rated_point);
    }

    proptest! {
        #[test]
        fn more_speed_never_allows_more(a in 0.0..120.0f64, b in 0.0..120.0f64) {
            let at = |kmh| highest_share(Speed::from_kmh(kmh)).share;
            prop_assert!(at(a.min(b)) >= at(a.max(b)));
        }
    }
}
