//! A survey: one folder of files about a fleet and its hauls, read into checked values.
//!
//! [`Folder`] maps paths to bytes, from a disk or from anywhere else; [`load`] gives the hauls
//! without errors and **all** problems at once, each with its file, line, value and what to do
//! about it. A file with errors makes only the hauls that use it unusable.

mod approval;
mod check;
mod convert;
mod document;
mod driven_by;
mod edit;
mod file;
mod folder;
mod load;
mod new;
mod problem;
mod register;
pub mod schema;
pub mod sheet;
pub mod track;
mod write;
mod written;

pub use approval::{Approval, Asked, AskedLoad};
pub use edit::{Edit, EditError, edited, pointer_at};
pub use folder::{Folder, LARGEST_FILE, ReadError};
pub use load::{HaulBasis, Imported, Survey, UnitProfile, load};
pub use new::{demos, write_demo, write_starter};
pub use problem::{
    ApprovalFault, Condition, DateFault, LadderFault, Ordered, PermitFault, Problem, ProblemKind,
    Reference, Severity, SizeFault, SpacingBasis, StateFault, UnitFault, UnitSlip, report,
};
pub use register::{FittedTire, FittedValue, Mate, Measured, Position, Sensor, Side, Unit, Wheel};
pub use write::{WriteError, create, readable, replace};
pub use written::written_values;
