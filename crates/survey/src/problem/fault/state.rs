//! Load states: lifted axles, raised bodies, loads nobody knows.

use quantity::Mass;

use crate::problem::Severity;

/// What is wrong with a load state.
#[derive(Debug, Clone, PartialEq)]
pub enum StateFault {
    /// Axles lifted on a group that cannot be lifted.
    NotLiftable {
        /// The group.
        group: String,
        /// Axles it has.
        axles: u32,
    },
    /// More axles down than there are.
    AxlesDown {
        /// The group.
        group: String,
        /// As written.
        down: u32,
        /// Axles it has.
        axles: u32,
    },
    /// A lifted group carries a load.
    LiftedCarries {
        /// The group.
        group: String,
        /// The load.
        load: Mass,
    },
    /// It stands in for itself, or for a state whose loads are not known either.
    StandsForUnknown {
        /// The state named.
        other: String,
    },
    /// A heavier state than the one that stands in is in the combination.
    HeavierThere {
        /// The state named.
        other: String,
        /// The heaviest.
        heaviest: String,
    },
    /// The haul is driven with the body raised.
    DrivenRaised {
        /// The state.
        load_state: String,
    },
}

impl StateFault {
    pub(in crate::problem) fn severity(&self) -> Severity {
        match self {
            Self::HeavierThere { .. } | Self::DrivenRaised { .. } => Severity::Warning,
            _ => Severity::Error,
        }
    }
}
