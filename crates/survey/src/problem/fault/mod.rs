//! What can be wrong with the parts of a survey that have a file or a section of their own.

mod approval;
mod date;
mod ground;
mod ladder;
mod permit;
mod state;
mod unit;

pub use approval::ApprovalFault;
pub use date::DateFault;
pub use ground::GroundFault;
pub use ladder::LadderFault;
pub use permit::PermitFault;
pub use state::StateFault;
pub use unit::UnitFault;
