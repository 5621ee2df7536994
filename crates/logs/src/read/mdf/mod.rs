//! Measurement data format of version 4 with frames of a CAN bus.
//!
//! A file is a tree of blocks that point to one another. Its data groups hold the records of one channel
//! group, or of several mixed, each with the number of its group before it; the records may lie in one
//! block, in lists of blocks, and packed. Signals that are no bus frames are left alone.
//!
//! # Source
//! `mdf4-layout`

mod block;
mod channels;
mod data;
mod field;
mod frames;
mod record;
mod stream;
mod values;

pub use frames::Mdf;
