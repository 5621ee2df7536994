//! What the person at the wheel may do.

use quantity::{Speed, Time};

use crate::Target;

/// How fast to drive; the road's own limits, curves and what the engine gives always hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SpeedChoice {
    /// At the cap of the rung held, or of the lower one while a change is under way.
    KeepToCap,
    /// As fast as the road allows, whatever the tires hold.
    Road,
    /// At this speed where the road allows it.
    At(Speed),
}

/// One thing done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Action {
    /// Orders the pressures of a cell.
    Order(Target),
    /// Chooses a speed.
    Speed(SpeedChoice),
    /// Brakes to a stand, and stands.
    Stop,
    /// Moves off.
    Go,
}

/// An action with the second it was done in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Acted {
    /// Seconds since the practice began.
    pub second: u32,
    /// What was done.
    pub action: Action,
}

/// Why an action cannot be done.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ActionError {
    /// A rung or load state the ladder does not have.
    #[error("the ladder has no rung {rung} for load state {load_state}")]
    NoSuchCell {
        /// Index of the rung.
        rung: usize,
        /// Index of the load state.
        load_state: usize,
    },
    /// A speed that is none.
    #[error("a speed of {speed} cannot be driven; give one above zero, or stop")]
    NoSpeed {
        /// The speed.
        speed: Speed,
    },
    /// Moving off while loading.
    #[error("loading takes {left} more; nobody moves off under the loader")]
    Loading {
        /// Time left.
        left: Time,
    },
    /// The drive is over.
    #[error("the drive is over; start another")]
    Over,
}
