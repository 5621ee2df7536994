//! Practice: a person drives the haul, in steps of a second, and the real stepper answers.
//!
//! The person chooses a speed, orders pressures, stops and moves off. What happens depends only on
//! the haul, the surprises and the list of [`Acted`] actions, so a drive can be played again from them
//! to the last digit. Nothing here judges; each second leaves a [`Sample`](crate::Sample) behind for
//! whoever does.

mod action;
mod drive;
mod seen;
mod surprise;
#[cfg(test)]
mod tests;

pub use action::{Acted, Action, ActionError, SpeedChoice};
pub use drive::{Event, Happened, Practice, PracticeError, Stage};
pub use surprise::Surprise;
