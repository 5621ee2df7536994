//! Flags of `airtide logs`.

use clap::Args;
#[cfg(feature = "logs")]
use clap::Subcommand;

#[cfg(feature = "logs")]
use super::MakeArgs;

/// Work with logs of trucks: make some with known truth
#[cfg(feature = "logs")]
#[derive(Debug, Args)]
pub struct LogsArgs {
    /// What to do
    #[command(subcommand)]
    pub action: LogsAction,
}

/// What to do with logs.
#[cfg(feature = "logs")]
#[derive(Debug, Subcommand)]
pub enum LogsAction {
    Make(Box<MakeArgs>),
}

/// Work with logs of trucks (not in this build)
#[cfg(not(feature = "logs"))]
#[derive(Debug, Args)]
pub struct LogsArgs {
    /// Whatever the build with logs takes
    #[arg(trailing_var_arg = true, allow_hyphen_values = true, hide = true)]
    pub rest: Vec<std::ffi::OsString>,
}
