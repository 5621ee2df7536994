//! Practice: a planned haul driven by a person, judged by the rules of the audit, and priced.
//!
//! [`Session`] is the drive under way; it is plain data, may be sent between threads and copied.
//! [`Script`] is a driver on paper: a list of actions at places or times.

mod columns;
mod limits;
mod read;
mod script;
mod session;
mod surprises;
mod verdict;

pub use limits::{NoLimits, limits_of};
pub use read::{ScriptProblem, read_script};
pub use script::{Do, Script, ScriptItem, StopUntil, When};
pub use session::{Session, SessionError};
pub use surprises::{NoSuchSurprise, SurpriseKind, SurpriseWish};
pub use verdict::{PriceItem, PriceLine, Tally, Verdict};
