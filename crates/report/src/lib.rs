//! Charts of results, as SVG.
//!
//! Nothing here decides or computes anything but units, rounding and where a line or a
//! word goes on the paper.

mod strip;
mod svg;

pub use strip::{ChartError, run_strip};
