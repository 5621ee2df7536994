//! The plan asked backwards: which air, which cap, how late.
//!
//! Every answer can be put into the haul and planned again; the tests do.

mod cap;
mod late;
mod supply;

pub use cap::{CapAnswer, CapAsked, highest_cap};
pub use late::{LateAnswer, LateCall, too_late};
pub use supply::{Judged, MOST_AIR, MOST_RESERVE, SupplyAnswer, enough_supply};

use crate::change::ChangePoint;
use crate::{NotDriven, Plan, PlanError};

/// Why there is no answer.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum InverseError {
    /// The haul cannot be planned.
    #[error(transparent)]
    Plan(#[from] PlanError),
    /// The haul cannot be driven, so it has no changes.
    #[error("the haul cannot be driven: {0}")]
    NotDriven(#[from] NotDriven),
    /// A change that is not there.
    #[error("there is no change point {number}; the plan has {known}")]
    NoSuchChange {
        /// Number asked for, from 1.
        number: usize,
        /// How many there are.
        known: usize,
    },
    /// A change that is a lowering, where only a raise is meant.
    #[error("change point {number} lowers the pressure; more supply does not make that faster")]
    Lowers {
        /// Number asked for, from 1.
        number: usize,
    },
}

/// A change point by its number on the plan page, from 1.
fn change_point(plan: &Plan, number: usize) -> Result<&ChangePoint, InverseError> {
    let driven = plan.driven.as_ref().map_err(Clone::clone)?;
    let known = driven.points.len();
    let index = number.checked_sub(1).filter(|&index| index < known);
    index.map(|index| &driven.points[index]).ok_or(InverseError::NoSuchChange { number, known })
}

/// The change of another plan that goes to the same cells at the same place.
fn same_change<'a>(plan: &'a Plan, of: &ChangePoint) -> Option<&'a ChangePoint> {
    let near = quantity::Length::from_m(1.0);
    plan.driven.as_ref().ok()?.points.iter().find(|point| {
        (point.load_state, point.to) == (of.load_state, of.to)
            && (point.reach_by - of.reach_by).abs() < near
    })
}
