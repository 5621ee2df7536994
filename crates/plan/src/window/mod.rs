//! The window of one cell: lowest and highest pressure, what governs each, and the value to set.

mod cell;
mod fixed;
mod limit;
mod load_share;
mod maximum;
mod minimum;
pub(crate) mod need;
mod site;
mod stack;
mod tire_load;

pub use cell::{Approval, Cell, CellId, Window};
pub use fixed::FixedGroup;
pub use limit::{Basis, Impossible, Limit, MaximumKind, MinimumKind};
pub use load_share::{WorstTire, worst_tire};
pub use need::Need;
pub use site::{RungUse, Site};
pub use stack::{Added, SetPoint, StackItem};

pub(crate) use cell::cell;
pub(crate) use fixed::fixed_groups;
