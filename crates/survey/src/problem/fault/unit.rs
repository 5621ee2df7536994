//! The register of units: its columns, its numbers, its positions.

use crate::problem::Severity;

/// What is wrong with the register of units.
#[derive(Debug, Clone, PartialEq)]
pub enum UnitFault {
    /// There is more than one register.
    TwoRegisters {
        /// The one that is read.
        other: String,
    },
    /// A column is missing.
    NoColumn {
        /// What it is called.
        wanted: &'static str,
        /// Columns found.
        columns: Vec<String>,
    },
    /// A column that means nothing here.
    UnknownColumn {
        /// The column probably meant.
        nearest: Option<String>,
        /// Columns that would do.
        known: Vec<&'static str>,
    },
    /// The workbook has several sheets and none is called `units`.
    NoSheet {
        /// Sheets found.
        sheets: Vec<String>,
    },
    /// A cell that must not be empty.
    Empty,
    /// A fleet number used twice.
    NumberTwice {
        /// Line of the other.
        line: Option<usize>,
    },
    /// A fleet number that is also the name of a type.
    NumberIsType,
    /// No combination uses the unit or its type.
    InNoCombination {
        /// The type.
        vehicle: String,
    },
    /// A position that the type does not have.
    BadPosition {
        /// As written.
        position: String,
        /// What is wrong with it.
        reason: String,
        /// Positions that would do.
        known: Vec<String>,
    },
    /// A source address that no device has.
    NotAnAddress,
    /// Neither yes nor no.
    NotYesOrNo,
    /// A truck in the trailer pool.
    TruckInPool,
    /// A share that cannot be.
    NotAShare,
    /// Fitted values without the day they were measured.
    FittedWithoutDay,
    /// A fitted value for a channel, or without one where it needs one.
    FittedChannel {
        /// Whether one is needed.
        needed: bool,
    },
    /// An air channel the type does not have.
    NoSuchChannel {
        /// As written.
        channel: String,
        /// Those there are.
        known: Vec<String>,
    },
}

impl UnitFault {
    pub(in crate::problem) fn severity(&self) -> Severity {
        match self {
            Self::UnknownColumn { .. } | Self::InNoCombination { .. } => Severity::Warning,
            _ => Severity::Error,
        }
    }
}
