//! Issued plans: numbered, dated, hashed, frozen, assigned to units, and never edited.

mod document;
mod force;
mod freeze;
mod hash;
mod problem;
mod read;
mod stale;

pub use document::{InputFile, IssuedPlan};
pub use force::{InForce, in_force};
pub use freeze::{IssueError, IssueTerms, issue, registered};
pub use hash::Hash;
pub use problem::{IssuedFault, IssuedProblem, issued_problems};
pub use read::{Issued, issued};
pub use stale::{Change, FileChange, StaleCause, Staleness, stale};

/// The folder of a survey that holds them.
const FOLDER: &str = "plans";

/// The schema of the files written here.
const SCHEMA: &str = "airtide.issued/1";
