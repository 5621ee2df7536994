//! From a value in the reader's unit to a place on the page, and the ticks between.

use language::{Format, Round};
use plotters::coord::ranged1d::Ranged;
use plotters::coord::types::RangedCoordf64;

/// A linear scale.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Scale {
    values: (f64, f64),
    page: (f64, f64),
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
        let values = if low > high { (0.0, least) } else { (low, high.max(low + least)) };
        Self { values, page }
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

    /// About `count` round values with their digits.
    pub(crate) fn ticks(&self, count: usize, format: &Format) -> Vec<(f64, String)> {
        let range = RangedCoordf64::from(self.values.0..self.values.1);
        let values = range.key_points(count);
        let step = values.windows(2).map(|pair| pair[1] - pair[0]).fold(f64::INFINITY, f64::min);
        let decimals = (0u8..4)
            .find(|&decimals| {
                let shown = step * 10f64.powi(i32::from(decimals));
                !shown.is_finite() || (shown - shown.round()).abs() < 1e-6 * shown.max(1.0)
            })
            .unwrap_or(4);
        values
            .into_iter()
            .map(|value| (value, format.number(value, decimals, Round::Nearest)))
            .collect()
    }
}
