//! Flags of `airtide practice`.

use std::path::PathBuf;

use clap::Args;
use study::practice::SurpriseWish;

/// Drive a planned haul from a list of actions, and have the drive judged and priced
///
/// The list is a table of lines `run, at, do, what`. Runs are empty and laden. A place is start, a chainage
/// such as 12.4km, or a time after moving off such as 35min. What is done: raise or lower to a rung; speed
/// to cap, road or a number; stop until complete or for a time; go now. Before each run the truck waits
/// until what was ordered is complete, unless told to go now. Without --drive the plan's own drive is judged.
#[derive(Debug, Args)]
#[command(after_help = "Exit code 1 if there is a finding, or the truck does not arrive.\n\n\
                  Example of a drive:\n  laden, start, lower, pit\n  laden, 2.1km, raise, sealed road\n  \
                  laden, 9km, stop, 5min\n\n\
                  Example:\n  airtide practice my-fleet --haul aggregate --drive monday.csv --surprise any --seed 7")]
pub struct PracticeArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// The haul; needed where the survey has several
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// The list of actions
    #[arg(long, value_name = "FILE")]
    pub drive: Option<PathBuf>,
    /// What goes otherwise than planned: none, any, or its name
    #[arg(long, value_name = "NAME", default_value = "none")]
    pub surprise: SurpriseWish,
    /// Seed of the surprise: the same seed brings the same one
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub seed: u64,
}
