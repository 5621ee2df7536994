//! The command line as typed: flags and help texts, nothing checked beyond their form.

mod approvals;
mod calc;
mod issue;
mod logs;
#[cfg(feature = "logs")]
mod make;
mod practice;
mod report;
mod road;
mod serve;
mod survey;

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, ColorChoice, Parser, Subcommand};
use language::UnitProfile;

pub use approvals::ApprovalsArgs;
pub use calc::{
    AxleFactorArgs, CalcArgs, ColdPressureArgs, ConeIndexArgs, DeflectionArgs, FillTimeArgs,
    FlowArgs, FootprintArgs, FrameArgs, GradeSpeedArgs, GravelRutArgs, GravelThicknessArgs,
    LoadRule, PavementStrainArgs, SoilKind, SoilStressArgs, StrengthArgs, TireKind, TireLoadArgs,
    TkphArgs, Topic, VentTimeArgs, WheelFitment, WheelPullArgs,
};
pub use issue::{IssueArgs, PlansArgs};
pub use logs::LogsArgs;
#[cfg(feature = "logs")]
pub use logs::{ImportArgs, LogTiming, LogsAction, ShowArgs};
#[cfg(feature = "logs")]
pub use make::{DriverFlag, MakeArgs};
pub use practice::PracticeArgs;
pub use report::{PaperFormat, ReportArgs};
pub use road::{AskArgs, CapArgs, NowArgs, Question, ReadFlag, TrailerFlag};
pub use serve::ServeArgs;
pub use survey::{CheckArgs, NewArgs, PlanArgs, SimulateArgs};

/// Plans on-board variable tire pressure for heavy-haul fleets, offline.
///
/// Values carry their unit: 85psi, 5.9bar, 40mph, "11 t". Data goes to standard output, talk and
/// progress to standard error. Exit code 0: done; 1: the input has problems or a limit is broken;
/// 2: the call is wrong.
#[derive(Debug, Parser)]
#[command(name = "airtide", version, max_term_width = 100, disable_help_subcommand = true)]
pub struct Cli {
    /// Flags of every command.
    #[command(flatten)]
    pub global: GlobalArgs,
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

/// Flags of every command.
#[derive(Debug, Clone, Args)]
#[command(next_help_heading = "Everywhere")]
pub struct GlobalArgs {
    /// Print one JSON document instead of text; its keys carry the units
    #[arg(long, global = true)]
    pub json: bool,
    /// Units to show [default: the survey's; for calc: si]
    #[arg(long, global = true, value_name = "PROFILE", value_parser = profile())]
    pub units: Option<UnitProfile>,
    /// Language of texts and numbers, such as en or en-CA [default: the survey's; else en]
    #[arg(long, global = true, value_name = "TAG")]
    pub language: Option<String>,
    /// Color in texts
    #[arg(long, global = true, value_name = "WHEN", default_value = "auto")]
    pub color: ColorChoice,
}

fn profile() -> impl TypedValueParser<Value = UnitProfile> {
    PossibleValuesParser::new(UnitProfile::ALL.map(UnitProfile::name))
        .try_map(|name| name.parse::<UnitProfile>())
}

/// The commands.
#[derive(Debug, Subcommand)]
pub enum Command {
    New(NewArgs),
    Check(CheckArgs),
    Plan(PlanArgs),
    Plans(PlansArgs),
    Now(NowArgs),
    Ask(AskArgs),
    Simulate(SimulateArgs),
    Practice(PracticeArgs),
    Approvals(ApprovalsArgs),
    Report(ReportArgs),
    Calc(CalcArgs),
    Logs(LogsArgs),
    Serve(ServeArgs),
    Schema(SchemaArgs),
    Completions(CompletionsArgs),
    Man(ManArgs),
}

/// Print the JSON Schemas of survey files and of output documents
///
/// Editors that read the `#:schema` line of a survey file use the first kind; programs that read
/// what airtide prints use the second.
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide schema plan > plan-schema.json")]
pub struct SchemaArgs {
    /// One schema, such as tire or plan; without it, all of them in one document by name
    pub name: Option<String>,
}

/// Print the completions of a shell
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide completions bash > ~/.local/share/bash-completion/completions/airtide"
)]
pub struct CompletionsArgs {
    /// The shell
    pub shell: clap_complete::Shell,
}

/// Print the manual as a man page
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide man > airtide.1")]
pub struct ManArgs {}

#[cfg(test)]
mod tests {
    use super::*;
    use clap::CommandFactory;

    #[test]
    fn the_definition_holds_together() {
        Cli::command().debug_assert();
    }
}
