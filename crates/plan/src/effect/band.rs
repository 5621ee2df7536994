//! A number with its ends, and a number that could not be had.

/// Least, expected and most: an effect is never one number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band<T> {
    /// Least.
    pub low: T,
    /// Expected.
    pub middle: T,
    /// Most.
    pub high: T,
}

impl<T: Copy> Band<T> {
    /// A number that is as it is.
    pub const fn exact(value: T) -> Self {
        Self { low: value, middle: value, high: value }
    }

    /// Each of the three through a function that keeps their order.
    pub fn map<U>(self, keep_order: impl Fn(T) -> U) -> Band<U> {
        Band {
            low: keep_order(self.low),
            middle: keep_order(self.middle),
            high: keep_order(self.high),
        }
    }
}

impl Band<f64> {
    /// Three numbers in any order: the middle stays, the ends become the least and the most of all.
    pub fn spanning(middle: f64, ends: impl IntoIterator<Item = f64>) -> Self {
        ends.into_iter().fold(Self::exact(middle), |band, end| Self {
            low: band.low.min(end),
            high: band.high.max(end),
            ..band
        })
    }

    /// The band of a sum in which each part has a weight, over the sum of weights.
    pub fn weighted_mean(parts: &[(f64, Self)]) -> Option<Self> {
        let whole: f64 = parts.iter().map(|(weight, _)| weight).sum();
        let mean = |of: fn(&Self) -> f64| {
            parts.iter().map(|(weight, band)| weight * of(band)).sum::<f64>() / whole
        };
        (whole > 0.0).then(|| Self {
            low: mean(|band| band.low),
            middle: mean(|band| band.middle),
            high: mean(|band| band.high),
        })
    }
}

/// What the survey would have to give.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Input {
    /// Strength of the soil of the leg.
    Strength,
    /// Layers of the pavement of the leg.
    Layers,
    /// Grip measured on the leg.
    Grip,
    /// Spacing of the duals.
    DualSpacing,
    /// `[money]` of the haul.
    Money,
    /// Price of fuel.
    FuelPrice,
    /// Season days gained, with the margin of a trip.
    Season,
    /// Payload gained, with its rate.
    Payload,
    /// Tire cost saved.
    TireSaving,
    /// Repairs saved.
    RepairSaving,
    /// Upkeep of the road for a pass.
    RoadCost,
    /// Share of that upkeep saved.
    RoadSaving,
}

/// Why an effect was not assessed; it is never taken for none.
#[derive(Debug, Clone, PartialEq)]
pub enum NotAssessed {
    /// Something must be given first.
    Give(Input),
    /// The law does not hold here; its own words.
    OutOfRange(String),
    /// There is no such way to run on this haul: one rung only, or it cannot be driven.
    NoSuchWay,
}

impl NotAssessed {
    pub(super) fn refused(error: &impl std::fmt::Display) -> Self {
        Self::OutOfRange(error.to_string())
    }
}

/// An effect, or why there is none.
pub type Finding<T> = Result<T, NotAssessed>;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_band_spans_what_it_is_given_and_keeps_its_middle() {
        let band = Band::spanning(0.8, [1.0, 0.7]);
        assert_eq!(band, Band { low: 0.7, middle: 0.8, high: 1.0 });
        let mean = Band::weighted_mean(&[(3.0, band), (1.0, Band::exact(1.0))]).unwrap();
        assert!((mean.middle - 0.85).abs() < 1e-12 && mean.low < mean.high);
        assert_eq!(Band::weighted_mean(&[]), None);
    }
}
