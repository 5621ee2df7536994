//! Which problems stop a haul, and which only want to be looked at.

use super::{GroundFault, ProblemKind};

/// Whether a problem stops the haul it touches.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// The values cannot be used.
    Error,
    /// The values can be used, and somebody should look at them.
    Warning,
}

impl ProblemKind {
    /// Whether it stops the haul.
    pub fn severity(&self) -> Severity {
        match self {
            Self::UnreadFile { .. }
            | Self::ZeroLoad { liftable: true, .. }
            | Self::ChannelFeedsNothing { .. }
            | Self::AboveSpeedSymbol { limit_of_road: true, .. }
            | Self::GovernorTooLow { rated: true, .. }
            | Self::BiasOnChannel { .. }
            | Self::NominalOutside
            | Self::PressureInPsi { .. }
            | Self::ImportFinding { .. }
            | Self::SpeedInMilesAnHour { .. }
            | Self::Ground(GroundFault::AggregateWeaker)
            | Self::NoHauls => Severity::Warning,
            Self::Approval(fault) => fault.severity(),
            Self::Permit(fault) => fault.severity(),
            Self::Unit(fault) => fault.severity(),
            Self::State(fault) => fault.severity(),
            _ => Severity::Error,
        }
    }

    /// Line of the file concerned, where the kind itself knows it.
    pub(super) fn line(&self) -> Option<usize> {
        match self {
            Self::NotText { line, .. } => Some(*line),
            Self::ImportFinding { line, .. } => *line,
            _ => None,
        }
    }
}
