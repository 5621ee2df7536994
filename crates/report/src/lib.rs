//! Charts and documents of results.
//!
//! Nothing here decides or computes anything but units, rounding and where a line or a
//! word goes on the paper.

pub mod bands;
pub mod cautions;
pub mod cells;
pub mod changes;
pub mod decided;
pub mod document;
pub mod effect_words;
mod effects;
pub mod html;
pub mod paper;
pub mod quantities;
pub mod refusal;
pub mod rolls_easiest;
mod strip;
mod svg;
mod words;
#[cfg(feature = "xlsx")]
pub mod xlsx;

pub use effects::effects_chart;
pub use strip::{ChartError, run_strip};
pub use words::Words;
