//! Flags of `airtide logs make`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};
use model::date::Date;
use quantity::{Length, Time};

/// Who drives.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum DriverFlag {
    /// Calls every change at its place and keeps to the caps.
    Good,
    /// Calls every change late and drives over the caps.
    Late,
    /// Leaves changes out, drives over the caps, and does not always wait after loading.
    Forgetful,
}

/// Make logs of a haul, with what truly happened in a file beside each
///
/// The haul is driven as planned by an invented driver, on physics that no plan and no rule holds:
/// every tire on its own, gas against tire wall, air in the lines, a controller that waits and reads,
/// weather, sensors that lag. What the truck's bus would say is written in the form of `candump -L`.
/// Nothing real is in it; the place of the vehicle number says so.
#[derive(Debug, Args)]
#[command(
    after_help = "Exit code 2 for a unit, fault or place that is not there, or a file that is.\n\n\
                  Examples:\n  \
                  airtide logs make my-fleet --out logs --driver late --late-by 2km\n  \
                  airtide logs make my-fleet --out logs --fault tire-leak@drive.1.left.outer=0.6mm,from=2h\n  \
                  airtide logs make --list-faults"
)]
pub struct MakeArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY", required_unless_present = "list_faults")]
    pub survey: Option<PathBuf>,
    /// Folder to write to; it is made if it is not there
    #[arg(long, value_name = "DIR", required_unless_present = "list_faults")]
    pub out: Option<PathBuf>,
    /// The haul, where the survey has several
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Fleet numbers of the trucks [default: the first of the register that drives the haul]
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',')]
    pub unit: Vec<String>,
    /// First day
    #[arg(long, value_name = "DATE", default_value = "2026-01-12")]
    pub date: Date,
    /// How many days
    #[arg(long, value_name = "N", default_value_t = 1, value_parser = clap::value_parser!(u32).range(1..=366))]
    pub days: u32,
    /// Time of day at which the shift starts, UTC
    #[arg(long, value_name = "TIME", default_value = "5h")]
    pub starts: Time,
    /// Cycles a day [default: as the haul says]
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u8).range(1..=60))]
    pub cycles: Option<u8>,
    /// Who drives
    #[arg(long, value_enum, default_value = "good")]
    pub driver: DriverFlag,
    /// How late the late driver calls, on average [default: 1.5km]
    #[arg(long, value_name = "DISTANCE")]
    pub late_by: Option<Length>,
    /// How many of a hundred changes the forgetful driver leaves out [default: 25]
    #[arg(long, value_name = "PERCENT", value_parser = clap::value_parser!(u8).range(0..=100))]
    pub forgets: Option<u8>,
    /// A fault, such as tire-leak@drive=1mm,from=2h,for=1h; may be given again
    #[arg(long = "fault", value_name = "FAULT")]
    pub faults: Vec<String>,
    /// Show every fault that can be asked for, and make nothing
    #[arg(long, conflicts_with_all = ["out", "faults"])]
    pub list_faults: bool,
    /// Seed of all draws: the same seed gives the same bytes
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub seed: u64,
}
