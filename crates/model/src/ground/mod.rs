//! What the ground does under wheels: stress, strength, go or no-go, pull, ruts, gravel, resistance.

pub mod soil_stress;

use crate::source::Citation;

/// A number with the span that is credible, and what it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate<T> {
    /// The number to use.
    pub value: T,
    /// Low end.
    pub low: T,
    /// High end.
    pub high: T,
    /// Whether it was asked outside where its source holds.
    pub extrapolated: bool,
    /// Where it comes from.
    pub citation: Citation,
}
