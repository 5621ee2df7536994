//! Permits that do not count, clash, or are broken by what the survey plans.

use model::date::Date;
use quantity::{Length, Mass, Speed};

use crate::problem::Severity;

/// What is wrong with an authority's permit.
#[derive(Debug, Clone, PartialEq)]
pub enum PermitFault {
    /// Its last day has passed.
    Expired {
        /// Last day it counted.
        on: Date,
    },
    /// It does not count yet.
    NotYet {
        /// First day it counts.
        from: Date,
    },
    /// Another permit covers the same stretch.
    Overlaps {
        /// File of the other.
        file: String,
        /// Its line.
        line: Option<usize>,
        /// Begin of the common stretch.
        from: Length,
        /// Its end.
        to: Length,
    },
    /// The lowest pressure is above the highest.
    PressuresCross,
    /// A leg's speed limit is above the permit's.
    SpeedAbove {
        /// The leg.
        leg: String,
        /// Its limit.
        limit: Speed,
        /// What the permit allows.
        allowed: Speed,
    },
    /// A load state is heavier than the permit allows.
    GrossAbove {
        /// Number of the permit.
        permit: String,
        /// The load state.
        load_state: String,
        /// Its gross mass.
        gross: Mass,
        /// What the permit allows.
        allowed: Mass,
    },
}

impl PermitFault {
    pub(in crate::problem) fn severity(&self) -> Severity {
        match self {
            Self::Overlaps { .. } | Self::PressuresCross | Self::GrossAbove { .. } => {
                Severity::Error
            }
            Self::Expired { .. } | Self::NotYet { .. } | Self::SpeedAbove { .. } => {
                Severity::Warning
            }
        }
    }
}
