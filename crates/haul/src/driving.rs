//! How a careful driver drives, where the survey does not say.

use model::source::{Citation, Key, Standing};

/// Habits of driving that no survey file states.
///
/// All of them are common practice without a source; the page of a plan says so.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DrivingStyle {
    /// Braking in advance, m/s².
    pub braking: f64,
    /// Highest acceleration, m/s².
    pub acceleration: f64,
    /// Side friction a loaded truck uses in a curve.
    pub side_friction: f64,
    /// Slowest speed on a climb before the truck counts as stalled, m/s.
    pub crawl: f64,
    /// Speed driven over the cap of the pressures held; 1 keeps to it.
    pub over_cap: f64,
}

impl Default for DrivingStyle {
    fn default() -> Self {
        Self { braking: 0.5, acceleration: 0.5, side_friction: 0.10, crawl: 0.5, over_cap: 1.0 }
    }
}

impl DrivingStyle {
    /// What these habits rest on.
    pub fn citation() -> Citation {
        Citation::of(Key("driving-habits"), Standing::CommonPractice)
    }
}
