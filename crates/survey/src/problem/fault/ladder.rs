//! What a search for the best ladder is asked.

use quantity::Speed;

/// What is wrong with a wish for a ladder.
#[derive(Debug, Clone, PartialEq)]
pub enum LadderFault {
    /// More caps are fixed than rungs wanted.
    TooManyFixed {
        /// Fixed caps.
        fixed: usize,
        /// Rungs wanted.
        rungs: u32,
    },
    /// A fixed cap lies under the lowest.
    FixedUnderLowest {
        /// The cap.
        cap: Speed,
        /// The lowest.
        lowest: Speed,
    },
}
