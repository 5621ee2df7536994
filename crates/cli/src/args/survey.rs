//! Flags of the commands that work on a survey.

use std::path::PathBuf;

use clap::builder::PossibleValuesParser;
use clap::{ArgGroup, Args};
use quantity::Time;

use super::IssueArgs;

/// Write a survey to start from
///
/// Without --demo it is a small complete survey with comments, of invented names. Nothing that
/// is there already is overwritten.
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide new my-fleet")]
pub struct NewArgs {
    /// Folder to write into; it is made if it is not there
    #[arg(value_name = "DIR")]
    pub folder: PathBuf,
    /// Start from a copy of a demo instead
    #[arg(long, value_name = "NAME", value_parser = PossibleValuesParser::new(survey::demos()))]
    pub demo: Option<String>,
}

/// Show every problem of a survey, with the line it stands on and what to do
#[derive(Debug, Args)]
#[command(after_help = "Exit code 1 if there is an error; a warning alone leaves it 0.\n\n\
                  Example:\n  airtide check my-fleet")]
pub struct CheckArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// One line a problem, as `file:line:column`, for editors
    #[arg(long)]
    pub brief: bool,
}

/// Work out windows, ladder, change points, cycle, effects and cost of the hauls of a survey
///
/// Prints one page a haul, and the problems of the survey on standard error. A haul that rests on
/// a file with errors is left out; the others are planned.
#[derive(Debug, Args)]
#[command(group = ArgGroup::new("charts").args(["chart", "effects_chart"]).multiple(true))]
#[command(after_help = "Exit code 1 if a plan breaks a limit or the survey has an error.\n\n\
                  Example:\n  airtide plan my-fleet --haul aggregate --chart haul.svg")]
pub struct PlanArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// Only this haul
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Plan for these units, by fleet number: their tires, and what was measured on their air
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',', conflicts_with = "issue")]
    pub unit: Vec<String>,
    /// Show every cell, also those that this haul does not drive, and the full account of each number
    #[arg(long, conflicts_with = "json")]
    pub full: bool,
    /// Search the best ladder with the prices of the haul's ladder section, instead of taking the survey's
    #[arg(long)]
    pub best_ladder: bool,
    /// How many rungs the best ladder may have [default: as the haul's ladder section says]
    #[arg(long, value_name = "N", requires = "best_ladder", value_parser = clap::value_parser!(u8).range(1..=16))]
    pub rungs: Option<u8>,
    /// Draw the run along the route into this file (SVG)
    #[arg(long, value_name = "FILE.svg")]
    pub chart: Option<PathBuf>,
    /// Time between two points of the chart
    #[arg(long, value_name = "TIME", default_value = "2s", requires = "chart")]
    pub every: Time,
    /// Draw what the plan changes, bars and stress over depth, into this file (SVG)
    #[arg(long, value_name = "FILE.svg")]
    pub effects_chart: Option<PathBuf>,
    /// Write over a chart file if it is there already
    #[arg(long, requires = "charts")]
    pub force: bool,
    /// Flags of issuing.
    #[command(flatten)]
    pub issue: IssueArgs,
}

/// Drive the hauls of a survey by their plan and print the run in time
///
/// Prints CSV with one line a moment; with --json the document a chart is drawn from.
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide simulate my-fleet --haul aggregate --every 5s > run.csv"
)]
pub struct SimulateArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// Only this haul
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Driven by these units, by fleet number: their tires, and what was measured on their air
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',')]
    pub unit: Vec<String>,
    /// Time between two lines
    #[arg(long, value_name = "TIME", default_value = "1s")]
    pub every: Time,
    /// Instead, drive this many whole cycles, each with its own truck and day: one line a cycle
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=1_000_000))]
    pub samples: Option<u32>,
}
