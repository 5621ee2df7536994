//! Rungs of the ladder: speed caps with the pressures that go with them.

use quantity::{ColdPressure, Length, Speed, Time};

use crate::route::Surface;

/// Longest time and distance a very low rung may be run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HoldLimit {
    /// Longest time.
    pub time: Time,
    /// Longest distance.
    pub distance: Length,
}

/// One rung of the ladder.
#[derive(Debug, Clone, PartialEq)]
pub struct Rung {
    /// Name the user gave it.
    pub name: String,
    /// Highest speed allowed on it.
    pub cap: Speed,
    /// Hold limit, where one applies.
    pub hold: Option<HoldLimit>,
    /// Surfaces this rung is meant for, unless a leg names another rung.
    pub surfaces: Vec<Surface>,
}

/// A cell whose pressure the survey fixes.
#[derive(Debug, Clone, PartialEq)]
pub struct HandSetCell {
    /// Index of the air channel.
    pub channel: usize,
    /// Index of the load state.
    pub load_state: usize,
    /// Index of the rung.
    pub rung: usize,
    /// The pressure wanted, cold.
    pub pressure: ColdPressure,
}
