//! Finding the moment within a step at which something switches.

/// Moments nearer than this are the same, s.
const SAME_MOMENT: f64 = 1e-7;
/// Excess so small that the moment is found, Pa.
const SMALL_EXCESS: f64 = 1e-6;

/// The first moment in `0..=end` at which the excess is no longer negative, from its
/// values at both ends, by the Illinois form of the secant method. The moment returned
/// has been evaluated last and its excess is not negative.
pub(super) fn first_moment(
    end: f64,
    excess_at_start: f64,
    excess_at_end: f64,
    mut excess: impl FnMut(f64) -> f64,
) -> f64 {
    let (mut a, mut b) = (0.0, end);
    let (mut weight_a, mut weight_b) = (excess_at_start, excess_at_end);
    let mut true_b = excess_at_end;
    let mut last_below = None;
    while b - a > SAME_MOMENT && true_b > SMALL_EXCESS {
        let width = b - a;
        let secant = b - weight_b * width / (weight_b - weight_a);
        let moment = secant.clamp(a + 0.01 * width, b - 0.01 * width);
        let value = excess(moment);
        let below = value < 0.0;
        if below {
            (a, weight_a) = (moment, value);
            if last_below == Some(true) {
                weight_b *= 0.5;
            }
        } else {
            (b, weight_b, true_b) = (moment, value, value);
            if last_below == Some(false) {
                weight_a *= 0.5;
            }
        }
        last_below = Some(below);
    }
    b
}

#[cfg(test)]
mod tests {
    use super::first_moment;

    #[test]
    fn the_first_crossing_is_found_from_the_far_side() {
        let f = |t: f64| (t * t - 0.3).max(t - 0.9) * 1e5;
        let t = first_moment(1.0, f(0.0), f(1.0), f);
        assert!((t - 0.3f64.sqrt()).abs() < 1e-7);
        assert!(f(t) >= 0.0);
    }
}
