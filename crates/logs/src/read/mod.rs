//! Reading logs: one file a format, all of them giving frames; then one way for all.
//!
//! A log is read in stretches. A stretch is parsed and its frames are sorted by group on all cores, then
//! the stretches are put in order again: interfaces numbered, multi-packet messages put together,
//! counts summed. Whoever asked gets them one after the other while the next are being read, so that
//! memory stays bounded however long the log is.

pub mod asc;
pub mod batch;
pub mod blf;
pub mod blocks;
pub mod candump;
pub mod clock;
#[cfg(feature = "store")]
pub mod columnar;
mod digest;
mod error;
#[cfg(feature = "store")]
mod guarded;
pub mod hex;
mod input;
pub mod log;
pub mod losses;
pub mod mdf;
pub mod open;
pub mod pcap;
pub mod rows;
pub mod senders;
pub mod stretch;
pub mod table;
pub mod tally;
pub mod transport;

pub use batch::{Batch, Interfaces};
pub use error::ReadError;
pub use input::Input;
pub use log::{Log, Options, Timing};
pub use losses::{Loss, Losses, Place};
pub use open::{Format, format_of};
pub use rows::{Clock, Lane, LongRow, Row, Sorted};
pub use stretch::{Stretch, Told, read_all, read_bytes};
pub use tally::{GroupTally, SignalTally, Tally};
pub use transport::{Message, Transport};

/// Frames of a format that is read from its beginning to its end.
pub trait Frames: Send {
    /// The next stretch; `None` after the last.
    ///
    /// # Errors
    /// Where the file cannot be read on at all; a record that cannot be read is a loss of the batch.
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError>;
}
