//! Samples in columns, free of any file format.
//!
//! A [`Series`] holds the native samples of one group of one sender with their true times; a [`Grid`]
//! holds one row a second with what each signal did in it.

use std::borrow::Cow;

use crate::frame::{Interface, Timestamp};
use crate::identifier::{Pgn, SourceAddress};
use crate::signal::{Spn, Unit};
use crate::value::Value;

pub use ::series::Quality;

impl From<Value> for Quality {
    fn from(value: Value) -> Self {
        match value {
            Value::Number(_) | Value::Code(_) | Value::Text(_) => Self::Value,
            Value::Absent => Self::Absent,
            Value::Error => Self::Error,
            Value::Reserved(_) => Self::Reserved,
        }
    }
}

/// How a pressure came to be known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Measured {
    /// A sensor in the tire.
    InTire,
    /// The line, sampled by the controller.
    InLine,
    /// Not measured: taken from what was set or commanded.
    Assumed,
}

/// What a column holds.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Channel {
    /// Number of the signal.
    pub spn: Spn,
    /// Its name in the table.
    pub name: Cow<'static, str>,
    /// Unit of the numbers.
    pub unit: Unit,
    /// Which tire or axle, raw as sent, for groups that say so.
    pub location: Option<u8>,
    /// How it came to be known, for pressures.
    pub measured: Option<Measured>,
}

/// A column of a series, a number and a quality for each time.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// What it holds.
    pub channel: Channel,
    /// Numbers; meaningless where the quality is not [`Quality::Value`] or [`Quality::Stale`].
    pub values: Vec<f64>,
    /// One for each number.
    pub quality: Vec<Quality>,
}

/// Native samples of one group of one sender, in order of time.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    /// Fleet number of the unit.
    pub unit: String,
    /// The bus.
    pub interface: Interface,
    /// The group.
    pub pgn: Pgn,
    /// The sender.
    pub source: SourceAddress,
    /// One for each row.
    pub times: Vec<Timestamp>,
    /// One for each signal; as long as `times`.
    pub columns: Vec<Column>,
}

/// A signal on the grid of seconds: what it did in each.
#[derive(Debug, Clone, PartialEq)]
pub struct GridColumn {
    /// What it holds.
    pub channel: Channel,
    /// The sender.
    pub source: SourceAddress,
    /// The last number of the second, or the one before it where the quality is stale.
    pub last: Vec<f64>,
    /// The lowest of the second.
    pub min: Vec<f64>,
    /// The highest of the second.
    pub max: Vec<f64>,
    /// What `last` is worth.
    pub quality: Vec<Quality>,
}

/// One row a second, from the first second of a log to its last.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// Fleet number of the unit.
    pub unit: String,
    /// The second of the first row.
    pub first_second: i64,
    /// How many rows.
    pub rows: usize,
    /// One for each signal, location and sender; each as long as `rows`.
    pub columns: Vec<GridColumn>,
}
