//! Flags of `airtide now` and `airtide ask`.

use std::path::PathBuf;

use clap::{Args, Subcommand};
use quantity::{ColdPressure, GaugePressure, Temperature};

/// How fast this truck may go now, how far, stop or go, and what to check
///
/// Readings are those of a gauge by hand. What is not known counts against going: tires of which
/// nobody says that they are cold count as warm, a load nobody knows as the heavier.
#[derive(Debug, Args)]
#[command(
    after_help = "Readings: an air channel or an axle group, and what the gauge shows; the two \
                  tires of a dual with a stroke between them. Several for one group: the softest \
                  counts.\n\nExit code 0 if it may go as planned, 1 if it must stop or something \
                  must be mended first.\n\nExamples:\n  \
                  airtide now my-fleet --unit 12 --load laden --read drive=85psi --read \
                  trailer=82psi/80psi --warm\n  \
                  airtide now my-fleet --combination tractor-trailer --table"
)]
pub struct NowArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// Fleet number of the truck or of one of its trailers
    #[arg(long, value_name = "NUMBER")]
    pub unit: Option<String>,
    /// Combination, where the survey has no register of units
    #[arg(long, value_name = "NAME")]
    pub combination: Option<String>,
    /// Haul, where more than one fits
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Load: empty, laden, another load state by name, or unknown
    #[arg(long, value_name = "STATE", required_unless_present = "table")]
    pub load: Option<String>,
    /// What the gauge shows, such as drive=85psi or trailer=5.9bar/5.7bar
    #[arg(long = "read", value_name = "WHO=PRESSURE", value_parser = read_flag)]
    #[arg(required_unless_present = "table")]
    pub readings: Vec<ReadFlag>,
    /// How warm the tires are.
    #[command(flatten)]
    pub tires: TiresArgs,
    /// Temperature of the air around the truck [default: the warmest of the survey]
    #[arg(long, value_name = "TEMPERATURE", allow_hyphen_values = true)]
    pub ambient: Option<Temperature>,
    /// Chain state [default: the usual one of the load state]
    #[arg(long, value_name = "STATE")]
    pub chains: Option<String>,
    /// What is coupled: planned, none, unknown, left-low, left-shut, tires:MODEL, or set-for:STATE
    /// where the controller still holds the pressures of another load state
    #[arg(long, value_name = "WHAT", default_value = "planned", value_parser = trailer_flag)]
    pub trailer: TrailerFlag,
    /// Count pressures that nobody approved too: for the specialist, never for the driver
    #[arg(long)]
    pub with_unapproved: bool,
    /// Print the highest speed over readings instead, as a table for a card
    #[arg(long, conflicts_with_all = ["load", "readings"])]
    pub table: bool,
}

/// How warm the tires are; none of these is not known, which counts as warm.
#[derive(Debug, Clone, Copy, Args)]
pub struct TiresArgs {
    /// The tires were cold: standing for three hours, or moved a mile at most
    #[arg(long, conflicts_with = "warm")]
    pub cold: bool,
    /// The tires were warm
    #[arg(long)]
    pub warm: bool,
    /// The truck ran in the last hour: no tire is cold, whatever was said
    #[arg(long)]
    pub ran_last_hour: bool,
}

/// A reading as typed.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadFlag {
    /// Air channel or axle group.
    pub who: String,
    /// What the gauge shows.
    pub one: GaugePressure,
    /// The other tire of a dual.
    pub mate: Option<GaugePressure>,
    /// Unit of the first.
    pub unit: String,
}

fn read_flag(text: &str) -> Result<ReadFlag, String> {
    let (who, pressures) = text.split_once('=').ok_or_else(|| {
        format!("'{text}' is not a reading; write one like drive=85psi or drive=85psi/83psi")
    })?;
    let (one, mate) = match pressures.split_once('/') {
        Some((one, mate)) => (one, Some(mate)),
        None => (pressures, None),
    };
    let unit = one.trim().trim_start_matches(|c: char| c.is_ascii_digit() || "+-.eE".contains(c));
    let read = |text: &str| text.parse::<GaugePressure>().map_err(|error| error.to_string());
    Ok(ReadFlag {
        who: who.trim().to_owned(),
        one: read(one)?,
        mate: mate.map(read).transpose()?,
        unit: unit.trim().to_owned(),
    })
}

/// What is coupled, as typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum TrailerFlag {
    /// The planned trailers.
    Planned,
    /// None.
    None,
    /// Nobody knows.
    Unknown,
    /// Left on low pressure.
    LeftLow,
    /// Left with wheel ends shut.
    LeftShut,
    /// Tires of another model.
    Tires(String),
    /// The controller holds another load state.
    SetFor(String),
}

fn trailer_flag(text: &str) -> Result<TrailerFlag, String> {
    match text.split_once(':') {
        Some(("tires", model)) if !model.is_empty() => Ok(TrailerFlag::Tires(model.to_owned())),
        Some(("set-for", state)) if !state.is_empty() => Ok(TrailerFlag::SetFor(state.to_owned())),
        _ => match text {
            "planned" => Ok(TrailerFlag::Planned),
            "none" => Ok(TrailerFlag::None),
            "unknown" => Ok(TrailerFlag::Unknown),
            "left-low" => Ok(TrailerFlag::LeftLow),
            "left-shut" => Ok(TrailerFlag::LeftShut),
            _ => Err(format!(
                "'{text}' is none of: planned, none, unknown, left-low, left-shut, tires:MODEL, \
                 set-for:STATE"
            )),
        },
    }
}

/// Ask the plan backwards: which supply, which cap, how late
#[derive(Debug, Args)]
#[command(after_help = "Examples:\n  airtide ask my-fleet supply --change 3\n  \
                  airtide ask my-fleet cap --channel drive --load laden --pressure 75psi\n  \
                  airtide ask my-fleet late --change 3")]
pub struct AskArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// The question.
    #[command(subcommand)]
    pub question: Question,
}

/// The questions.
#[derive(Debug, Subcommand)]
pub enum Question {
    Supply(ChangeArgs),
    Cap(CapArgs),
    Late(LateArgs),
}

/// Which compressor, or which reserve tank, would make a raise fit
///
/// Each means alone, everything else as it is; the haul is planned anew for each supply tried.
#[derive(Debug, Args)]
#[command(after_help = "Exit code 1 if the change does not fit today.")]
pub struct ChangeArgs {
    /// Haul, where the survey has more than one
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Units that drive, by fleet number: their tires, and what was measured on their air
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',')]
    pub unit: Vec<String>,
    /// Number of the change point on the plan page
    #[arg(long, value_name = "NUMBER")]
    pub change: usize,
}

/// How late is too late for a change, and what each further kilometer costs
///
/// Nominal: one truck, one day. What the plan keeps in hand for nine of ten is shown beside it.
#[derive(Debug, Args)]
#[command(after_help = "Exit code 1 if no call is in time.")]
pub struct LateArgs {
    /// Haul, where the survey has more than one
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Units that drive, by fleet number: their tires, and what was measured on their air
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',')]
    pub unit: Vec<String>,
    /// Number of the change point on the plan page
    #[arg(long, value_name = "NUMBER")]
    pub change: usize,
}

/// Which speed cap a pressure allows
#[derive(Debug, Args)]
#[command(after_help = "Exit code 1 if nobody stands behind any speed at this pressure.")]
pub struct CapArgs {
    /// Haul, where the survey has more than one
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Units that drive, by fleet number: their tires, and what was measured on their air
    #[arg(long, value_name = "NUMBERS", value_delimiter = ',')]
    pub unit: Vec<String>,
    /// Air channel
    #[arg(long, value_name = "NAME")]
    pub channel: String,
    /// Load: empty, laden, another load state by name, or unknown
    #[arg(long, value_name = "STATE")]
    pub load: String,
    /// Pressure the tires hold, cold
    #[arg(long, value_name = "PRESSURE")]
    pub pressure: ColdPressure,
    /// Chain state [default: the usual one of the load state]
    #[arg(long, value_name = "STATE")]
    pub chains: Option<String>,
}
