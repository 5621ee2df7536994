//! Sentences about the search for a ladder.

use super::number::speed;
use crate::problem::LadderFault;

pub(super) fn message(fault: &LadderFault) -> String {
    match fault {
        LadderFault::TooManyFixed { fixed, rungs } => {
            format!("{fixed} speed caps are fixed, but only {rungs} rungs are wanted")
        }
        LadderFault::FixedUnderLowest { cap, lowest } => {
            format!("the fixed cap {} is under the lowest to try, {}", speed(*cap), speed(*lowest))
        }
    }
}

pub(super) fn hint(fault: &LadderFault) -> &'static str {
    match fault {
        LadderFault::TooManyFixed { .. } => "fix fewer caps, or want more rungs",
        LadderFault::FixedUnderLowest { .. } => "lower lowest_cap_kmh, or take the cap out",
    }
}
