//! Results as a reader gets them: pages for a terminal of 100 columns, tables for programs.

mod ask;
mod csv;
#[cfg(feature = "logs")]
mod logs;
#[cfg(feature = "logs")]
mod make;
mod now;
mod plan;
mod plans;
use report::quantities;
mod requests;
mod sheet;
mod text;
mod verdict;

#[cfg(feature = "logs")]
pub use self::logs::{imported, logs};
pub use ask::ask;
pub use csv::{csv_of, csv_of_cycles};
#[cfg(feature = "logs")]
pub use make::{fault_list, made_logs};
pub use now::{now, now_table};
pub use plan::{Extent, plan};
pub use plans::plans;
pub use report::quantities::{cone_index, fine};
pub use requests::{csv_of_requests, letters};
pub use text::{labelled, line, paragraph, unreviewed};
pub use verdict::verdict;
