//! Flags of `airtide approvals`.

use std::path::PathBuf;

use clap::Args;

/// Write what to ask the makers of the tires
///
/// One letter for each tire model that runs where nobody stands behind its pressure yet: loads,
/// speeds, road and time on each rung, rim, air, and the pressures wanted.
#[derive(Debug, Args)]
#[command(
    after_help = "Exit code 1 if the survey has an error; open requests alone leave it 0.\n\n\
                  Example:\n  airtide approvals my-fleet --csv to-fill.csv > letters.txt"
)]
pub struct ApprovalsArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// Only this haul
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Only this tire model
    #[arg(long, value_name = "NAME")]
    pub tire: Option<String>,
    /// Write the lines into this file too, with columns for the maker to fill
    #[arg(long, value_name = "FILE.csv")]
    pub csv: Option<PathBuf>,
    /// Write over the CSV file if it is there already
    #[arg(long, requires = "csv")]
    pub force: bool,
}
