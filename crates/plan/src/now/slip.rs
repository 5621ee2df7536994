//! A number of one unit given as another.

use quantity::{ColdPressure, GaugePressure, Unit};

/// Which unit was given, and which makes sense of the number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Slip {
    /// Unit given.
    pub typed: &'static str,
    /// Unit that was probably meant.
    pub meant: &'static str,
}

/// A reading this far outside what a group is ever set to is looked at twice.
const SOFT: f64 = 0.6;
const HARD: f64 = 1.3;

/// The unit probably meant, where a reading lies far outside the band of a group and the same
/// number in another unit lies inside it.
///
/// # Validity
/// Our own rule of thumb: under 0.6 of the lowest or over 1.3 of the highest is far outside.
pub(super) fn slip(
    reading: GaugePressure,
    typed: &str,
    (lowest, highest): (ColdPressure, ColdPressure),
) -> Option<Slip> {
    let inside = |reading: GaugePressure| {
        (lowest.as_kpa() * SOFT..=highest.as_kpa() * HARD).contains(&reading.as_kpa())
    };
    let typed = GaugePressure::SYMBOLS.iter().copied().find(|symbol| *symbol == typed)?;
    let number = reading.in_unit(typed)?;
    if inside(reading) {
        return None;
    }
    let others = GaugePressure::SYMBOLS.iter().copied().filter(|symbol| *symbol != typed);
    others
        .filter_map(|meant| Some((meant, GaugePressure::from_unit(number, meant)?.ok()?)))
        .find(|(_, reading)| inside(*reading))
        .map(|(meant, _)| Slip { typed, meant })
}

#[cfg(test)]
mod tests {
    use super::*;

    const BAND: (ColdPressure, ColdPressure) =
        (ColdPressure::from_psi(40.0), ColdPressure::from_psi(105.0));

    #[test]
    fn a_number_of_another_unit_is_seen() {
        let seen = slip(GaugePressure::from_kpa(85.0), "kPa", BAND);
        assert_eq!(seen, Some(Slip { typed: "kPa", meant: "psi" }));
        let seen = slip(GaugePressure::from_psi(5.9), "psi", BAND);
        assert_eq!(seen, Some(Slip { typed: "psi", meant: "bar" }));
        let seen = slip(GaugePressure::from_psi(586.0), "psi", BAND);
        assert_eq!(seen, Some(Slip { typed: "psi", meant: "kPa" }));
    }

    #[test]
    fn a_soft_tire_is_not_a_slip() {
        assert_eq!(slip(GaugePressure::from_psi(20.0), "psi", BAND), None);
        assert_eq!(slip(GaugePressure::from_psi(85.0), "psi", BAND), None);
        assert_eq!(slip(GaugePressure::from_kpa(0.0), "kPa", BAND), None);
    }
}
