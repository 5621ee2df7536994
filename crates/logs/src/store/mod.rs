//! Series in files for other programs: Parquet, one way for all.
//!
//! `docs/series.md` describes the files to whoever reads them with another engine. Everything is
//! written in a folder with a name of its own and moved to its place when it is whole.

mod column;
mod file;
mod grid;
mod import;
mod native;
mod route;

pub use import::{Choice, Import, ImportError, Imported};
pub use route::{Fix, OnRoute, Place, RouteTold};

/// Number of the layout of the files.
pub const SCHEMA: &str = "airtide.series/1";
