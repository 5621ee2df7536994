//! Truck logs: foreign bytes to frames, frames to signals, signals to series.
//!
//! A [`Frame`] is what one line of any log says. Its identifier splits into priority, group, source
//! and destination ([`identifier`]); the [`table`] says where each signal stands in a group; a
//! [`Value`] keeps apart what was measured, what was not available, an error and a
//! reserved code. A [`series`] holds the samples of one group of one sender in columns.
//!
//! The program only reads vehicles: nothing here sends to a bus.

#[cfg(feature = "files")]
pub mod dbc;
pub mod definitions;
pub mod encode;
pub mod frame;
pub mod identifier;
pub mod measured;
#[cfg(feature = "files")]
pub mod read;
pub mod series;
pub mod signal;
#[cfg(feature = "store")]
pub mod store;
pub mod table;
pub mod trouble;
pub mod value;
pub mod write;

pub use definitions::Definitions;
pub use frame::{CanId, Data, Frame, Interface, Timestamp};
pub use identifier::{Identifier, Pgn, SourceAddress};
pub use signal::{Group, Signal};
pub use value::Value;
