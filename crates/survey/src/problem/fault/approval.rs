//! Approvals that do not count, or contradict each other.

use model::date::Date;
use quantity::{ColdPressure, Temperature};

use crate::problem::Severity;

/// What is wrong with a tire maker's approval.
#[derive(Debug, Clone, PartialEq)]
pub enum ApprovalFault {
    /// Its last day has passed.
    Expired {
        /// Last day it counted.
        on: Date,
    },
    /// It was given for another tire than the one fitted now.
    TireChanged {
        /// What it was given for.
        given: String,
        /// What is fitted.
        fitted: String,
    },
    /// It was given for another rim.
    RimChanged {
        /// What it was given for.
        given: String,
        /// What is fitted.
        fitted: String,
    },
    /// The tire's file does not say which rim is fitted.
    RimNotSaid {
        /// The rim of the approval.
        given: String,
    },
    /// Two rows for the same load, speed and fitment ask for different pressures.
    Contradicts {
        /// File of the other row.
        file: String,
        /// Its line.
        line: Option<usize>,
        /// Pressure of this row.
        here: ColdPressure,
        /// Pressure of the other row.
        there: ColdPressure,
    },
    /// The warmest day of the survey is warmer than what was asked about.
    AskedForCooler {
        /// Asked about.
        asked: Temperature,
        /// The survey's warmest.
        warmest: Temperature,
    },
}

impl ApprovalFault {
    pub(in crate::problem) fn severity(&self) -> Severity {
        match self {
            Self::Contradicts { .. } | Self::RimNotSaid { .. } => Severity::Error,
            _ => Severity::Warning,
        }
    }
}
