//! Flags of issued plans.

use std::path::PathBuf;

use clap::Args;
use model::date::Date;

/// Flags of `airtide plan --issue`.
#[derive(Debug, Clone, Args)]
#[command(next_help_heading = "Issuing")]
pub struct IssueArgs {
    /// Freeze the plan under a number, dated and hashed, into plans/ of the survey
    #[arg(long, requires = "date", conflicts_with_all = ["chart", "effects_chart", "full"])]
    pub issue: bool,
    /// Day of issue, such as 2027-03-01
    #[arg(long, value_name = "DATE", requires = "issue")]
    pub date: Option<Date>,
    /// Number of the plan [default: one more than the last of the haul]
    #[arg(long, value_name = "N", requires = "issue")]
    pub number: Option<u32>,
    /// Fleet numbers of the units that are to drive by it; it is planned for them
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',', requires = "issue")]
    pub assign: Vec<String>,
    /// Person who answers for it [default: the survey's]
    #[arg(long, value_name = "NAME", requires = "issue")]
    pub by: Option<String>,
    /// First day it holds [default: the day of issue]
    #[arg(long, value_name = "DATE", requires = "issue")]
    pub valid_from: Option<Date>,
    /// Last day it holds [default: until another is issued]
    #[arg(long, value_name = "DATE", requires = "issue")]
    pub valid_until: Option<Date>,
}

/// List the issued plans of a survey, and what a unit drives by on a day
///
/// Tells for each plan its days, its units, for which of them it is in force, and whether the
/// survey has changed since in a way that leaves it behind.
#[derive(Debug, Args)]
#[command(
    after_help = "Exit code 1 if an issued file is broken, a unit has two plans, or the unit asked \
                  about has none.\n\n\
                  Example:\n  airtide plans my-fleet --unit 101 --date 2027-03-01"
)]
pub struct PlansArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// Only plans of this unit, and the one it drives by
    #[arg(long, value_name = "NUMBER")]
    pub unit: Option<String>,
    /// Told for this day [default: today]
    #[arg(long, value_name = "DATE")]
    pub date: Option<Date>,
}
