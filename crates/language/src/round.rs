//! Rounding to the digits shown, on the side that does no harm.

/// Relative size of what float arithmetic may have added; far below what any gauge shows.
const FLOAT_NOISE: f64 = 1e-9;

/// On which side a shown number may differ from the one computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Round {
    /// Never below: minimum pressures, times to allow, leads.
    Up,
    /// Never above: maximum pressures, speed caps, distance that remains.
    Down,
    /// To the nearest: what harms nobody on either side.
    Nearest,
}

impl Round {
    /// Rounds to a number of decimals; a number that is whole but for float noise stays.
    ///
    /// # Validity
    /// Numbers whose shown digits fit a float: up to about 1e15 shown steps.
    ///
    /// ```
    /// use language::Round;
    /// assert_eq!(Round::Up.at(70.05, 0), 71.0);
    /// assert_eq!(Round::Up.at(85.000_000_000_1, 0), 85.0);
    /// assert_eq!(Round::Down.at(40.23, 1), 40.2);
    /// ```
    #[must_use]
    pub fn at(self, value: f64, decimals: u8) -> f64 {
        let scale = 10f64.powi(i32::from(decimals));
        let steps = value * scale;
        let nearest = steps.round();
        let whole = (steps - nearest).abs() <= FLOAT_NOISE * steps.abs();
        let rounded = match self {
            Self::Up if !whole => steps.ceil(),
            Self::Down if !whole => steps.floor(),
            _ => nearest,
        };
        // A number rounded to zero carries no sign.
        rounded / scale + 0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn float_noise_does_not_cost_a_step() {
        assert!((Round::Up.at(85.000_000_000_1 * (1.0 - 1e-10), 0) - 85.0).abs() < 1e-12);
        assert!((Round::Up.at(85.000_000_000_1, 0) - 85.0).abs() < 1e-12);
        assert!((Round::Down.at(84.999_999_999_9, 0) - 85.0).abs() < 1e-12);
        assert!((Round::Up.at(85.000_001, 0) - 86.0).abs() < 1e-12);
        assert!((Round::Down.at(84.999_999, 0) - 84.0).abs() < 1e-12);
    }

    #[test]
    fn zero_has_no_sign() {
        assert!(Round::Up.at(-0.3, 0).is_sign_positive());
        assert!(Round::Nearest.at(-0.3, 0).is_sign_positive());
    }

    proptest! {
        #[test]
        fn up_is_never_below_and_less_than_a_step_above(value in -1e6..1e6f64, decimals in 0u8..4) {
            let step = 10f64.powi(-i32::from(decimals));
            let shown = Round::Up.at(value, decimals);
            prop_assert!(shown >= value - 1.1e-9 * value.abs());
            prop_assert!(shown - value < step * (1.0 + 1e-6));
        }

        #[test]
        fn down_mirrors_up(value in -1e6..1e6f64, decimals in 0u8..4) {
            let mirrored = -Round::Up.at(-value, decimals);
            prop_assert!((Round::Down.at(value, decimals) - mirrored).abs() < 1e-9);
        }

        #[test]
        fn rounding_twice_changes_nothing(value in -1e6..1e6f64, decimals in 0u8..4) {
            for round in [Round::Up, Round::Down, Round::Nearest] {
                let once = round.at(value, decimals);
                prop_assert!((round.at(once, decimals) - once).abs() <= 1e-9 * once.abs());
            }
        }
    }
}
