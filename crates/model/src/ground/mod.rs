//! What the ground does under wheels: stress, strength, go or no-go, pull, ruts, gravel, resistance.

pub mod adhesion;
pub mod bekker;
pub mod cone_index;
pub mod gravel;
pub mod gravel_thickness;
pub mod reduced_pressure_trials;
pub mod rolling_resistance;
pub mod rut_soil;
pub mod soil_class;
pub mod soil_grade;
pub mod soil_stress;
pub mod strength;
pub mod washboard;
pub mod wheel_pull;

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
