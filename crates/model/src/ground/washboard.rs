//! Whether empty legs are likely to corrugate an aggregate road.

use crate::source::{Citation, Key, Standing};

/// The screen, ours.
pub const SCREEN: Key = Key("washboard-screen");
/// Washboard under unloaded trucks at high pressure.
pub const UNLOADED_TRUCKS: Key = Key("grau-1991");

/// Least deflection of the empty tire over that of the laden one; under it the leg is flagged.
pub const LEAST_OVER_LADEN: f64 = 2.0 / 3.0;

/// Why there is no flag.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("a deflection of {ratio:.3} of the section height is outside 0.005 to 0.45")]
pub struct WashboardError {
    /// Ratio offered.
    pub ratio: f64,
}

/// What the screen says of an empty leg on aggregate.
#[derive(Debug, Clone, PartialEq)]
pub struct Washboard {
    /// Whether washboard is likely: lower the empty pressure.
    pub likely: bool,
    /// Deflection of the empty tire over that of the laden one.
    pub empty_over_laden: f64,
    /// Where the screen comes from.
    pub citation: Citation,
}

/// Flags an empty leg whose tires are pressed in less than two thirds of what they are laden.
///
/// # Validity
/// Aggregate surfaces, most of all on grades. A screen of ours: severe washboard was seen under unloaded trucks at
/// 100 psi and not at 39 psi, but no pressure from which it begins was published.
///
/// # Errors
/// [`WashboardError`] for a deflection that is none.
///
/// # Source
/// [`SCREEN`]; [`UNLOADED_TRUCKS`] for what was seen.
pub fn empty_leg(laden_ratio: f64, empty_ratio: f64) -> Result<Washboard, WashboardError> {
    for ratio in [laden_ratio, empty_ratio] {
        if !(0.005..=0.45).contains(&ratio) {
            return Err(WashboardError { ratio });
        }
    }
    let empty_over_laden = empty_ratio / laden_ratio;
    Ok(Washboard {
        likely: empty_over_laden < LEAST_OVER_LADEN,
        empty_over_laden,
        citation: Citation::of(SCREEN, Standing::CommonPractice),
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::{ColdPressure, Force};

    use super::*;
    use crate::tire::deflection::DeflectionLaw;
    use crate::tire::fixture;

    // Grau 1991 (abstract): unloaded trucks, severe washboard at 100 psi against 39 psi. An 11R22.5
    // carries 7.1 kN empty, and is pressed in 14 % laden.
    #[test]
    fn table_unloaded_trucks_at_two_pressures() {
        let law = DeflectionLaw::of(&fixture::tire_11r22_5()).unwrap();
        let empty = |psi| {
            let load = Force::from_kn(7.1).as_mass();
            law.deflection(load, ColdPressure::from_psi(psi)).unwrap().share_of_section_height
        };
        assert!(empty_leg(0.10, empty(100.0)).unwrap().likely);
        assert!(!empty_leg(0.10, empty(39.0)).unwrap().likely);
    }

    #[test]
    fn no_deflection_is_refused() {
        assert!(empty_leg(0.0, 0.1).is_err());
        assert!(empty_leg(0.1, f64::NAN).is_err());
    }

    proptest! {
        #[test]
        fn an_empty_tire_pressed_in_as_the_laden_one_is_never_flagged(ratio in 0.05..0.4f64) {
            prop_assert!(!empty_leg(ratio, ratio).unwrap().likely);
        }
    }
}
