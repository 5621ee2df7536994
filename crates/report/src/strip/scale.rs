//! From a value in the reader's unit to a place on the page, and the ticks between.

use language::{Format, Round};
use plotters::coord::ranged1d::Ranged;
use plotters::coord::types::RangedCoordf64;

const LEAST_TICKS: usize = 3;

/// A linear scale.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Scale {
    values: (f64, f64),
    page: (f64, f64),
    /// Whether there is nothing to show on it, so that its numbers would mean nothing.
    empty: bool,
}

impl Scale {
    /// A scale on which all values lie; a range without extent is widened by `least`.
    pub(crate) fn over(
        values: impl IntoIterator<Item = f64>,
        least: f64,
        page: (f64, f64),
    ) -> Self {
        let (low, high) = values
            .into_iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| (l.min(v), h.max(v)));
        let empty = low > high;
        let values = if empty { (0.0, least) } else { (low, high.max(low + least)) };
        Self { values, page, empty }
    }

    /// The same with a part of its extent added at both ends.
    pub(crate) fn with_air(self, below: f64, above: f64) -> Self {
        let (low, high) = self.values;
        let extent = high - low;
        Self { values: (low - below * extent, high + above * extent), ..self }
    }

    pub(crate) fn at(&self, value: f64) -> f64 {
        let share = (value - self.values.0) / (self.values.1 - self.values.0);
        self.page.0 + share.clamp(0.0, 1.0) * (self.page.1 - self.page.0)
    }

    /// About `count` round values with their digits; none on an empty scale.
    pub(crate) fn ticks(&self, count: usize, format: &Format) -> Vec<(f64, String)> {
        if self.empty {
            return Vec::new();
        }
        let range = RangedCoordf64::from(self.values.0..self.values.1);
        // Asked for few, the library may find one or none.
        let values = (count..=2 * count)
            .map(|most| range.key_points(most))
            .find(|values| values.len() >= LEAST_TICKS)
            .unwrap_or_else(|| range.key_points(2 * count));
        let step = values.windows(2).map(|pair| pair[1] - pair[0]).fold(f64::INFINITY, f64::min);
        let decimals = (0u8..4)
            .find(|&decimals| {
                let shown = step * 10f64.powi(i32::from(decimals));
                !shown.is_finite() || (shown - shown.round()).abs() < 1e-6 * shown.max(1.0)
            })
            .unwrap_or(4);
        values
            .into_iter()
            .map(|value| (value, format.plain(value, decimals, Round::Nearest)))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use language::UnitProfile;

    use super::*;

    fn digits(scale: Scale, count: usize) -> Vec<String> {
        let format = Format::new(UnitProfile::Si, "en").unwrap();
        scale.ticks(count, &format).into_iter().map(|(_, digits)| digits).collect()
    }

    #[test]
    fn ticks_are_round_and_keep_the_decimals_they_need() {
        let scale = |low, high| Scale::over([low, high], 0.1, (0.0, 100.0));
        assert_eq!(digits(scale(0.0, 40.0), 5), ["0", "10", "20", "30", "40"]);
        assert_eq!(digits(scale(0.0, 1.0), 5), ["0.0", "0.5", "1.0"]);
        assert!(digits(scale(1574.0, 2297.0), 4).len() >= 3);
        assert!(digits(Scale::over([], 1.0, (0.0, 100.0)), 4).is_empty());
    }

    #[test]
    fn a_value_lies_on_the_page_in_proportion() {
        let scale = Scale::over([10.0, 30.0], 1.0, (200.0, 100.0));
        assert!((scale.at(10.0) - 200.0).abs() < 1e-9);
        assert!((scale.at(15.0) - 175.0).abs() < 1e-9);
        let single = Scale::over([5.0], 2.0, (0.0, 100.0));
        assert!((single.at(6.0) - 50.0).abs() < 1e-9);
    }
}
