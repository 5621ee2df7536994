//! Bands in a cell of a table: low, middle and high, or one number where it is exact.

use language::{Format, Round};
use view::BandView;

/// A band, its ends rounded outward.
pub fn band(of: &BandView, number: impl Fn(f64, Round) -> String) -> String {
    let middle = number(of.middle, Round::Nearest);
    let (low, high) = (number(of.low, Round::Down), number(of.high, Round::Up));
    if (of.high - of.low).abs() <= 1e-9 * of.high.abs().max(1.0) {
        return middle;
    }
    // Between numbers below zero a bare dash would read as a sign.
    let dash = if of.low < 0.0 { " – " } else { "–" };
    [low, middle, high].join(dash)
}

/// A band of a ratio.
pub fn ratio(of: &BandView, format: &Format) -> String {
    band(of, |value, round| format.number(value, 2, round))
}

/// A band of a percentage, in whole percent.
pub fn percent(of: &BandView, format: &Format) -> String {
    band(of, |value, round| format.number(value, 0, round))
}
