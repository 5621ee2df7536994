//! Flags of `airtide serve`.

use std::path::PathBuf;

use clap::Args;

/// Open the survey as a page in the browser of this computer
///
/// The page plans by hand and eye: files as forms, the run as a strip, what-if, the call from the
/// road, long series. It listens to this computer alone; nothing is fetched from anywhere.
/// It runs until Ctrl+C.
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  airtide serve mill\n  airtide serve mill --share    a tablet beside you may look, after typing the code shown"
)]
pub struct ServeArgs {
    /// Folder of the survey
    pub survey: PathBuf,
    /// Port; 0 takes a free one
    #[arg(long, default_value_t = 8731)]
    pub port: u16,
    /// Let devices on the local network look, each after typing a code shown here; not encrypted
    #[arg(long)]
    pub share: bool,
    /// With --share: let them write, too
    #[arg(long, requires = "share")]
    pub share_edit: bool,
    /// Name or address of this computer as those devices write it [default: asked of the system]
    #[arg(long, requires = "share", value_name = "NAME")]
    pub host: Vec<String>,
    /// Keep every window from writing
    #[arg(long)]
    pub read_only: bool,
    /// A table of numbers (CSV, first column `time_s`) to show among the series; may be repeated
    #[arg(long, value_name = "FILE")]
    pub series: Vec<PathBuf>,
}
