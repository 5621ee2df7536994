//! Flags of `airtide report`.

use std::path::PathBuf;

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, ValueEnum};
use report::document::Sheet;
use report::paper::Kind;

/// Write a document to hand over: paper for the driver, the workshop, the manager, the authority
///
/// Without --plan the plan of the survey as it stands, marked as a draft on every page; with it an
/// issued plan, under its number and day. A pressure that nobody approved is never printed for a
/// driver.
#[derive(Debug, Args)]
#[command(
    after_help = "Exit code 1 if the plan breaks a limit, or an issued one was left behind by the \
                  survey.\n\nExamples:\n  \
                  airtide report my-fleet driver-card --haul aggregate --plan 3 -o card.pdf\n  \
                  airtide report my-fleet driver-card --language fi --units si -o kortti.html"
)]
pub struct ReportArgs {
    /// Folder that holds survey.toml
    #[arg(value_name = "SURVEY")]
    pub survey: PathBuf,
    /// Which document
    #[arg(value_name = "KIND", value_parser = kind())]
    pub kind: Kind,
    /// Haul, where the survey has more than one
    #[arg(long, value_name = "NAME")]
    pub haul: Option<String>,
    /// Number of an issued plan of the haul
    #[arg(long, value_name = "N")]
    pub plan: Option<u32>,
    /// Size of the paper [default: letter or a4, for a card half of it, by language and units]
    #[arg(long, value_name = "SIZE", value_parser = sheet())]
    pub paper: Option<Sheet>,
    /// Form of the file [default: by the ending of FILE, else pdf]
    #[arg(long, value_name = "FORMAT")]
    pub format: Option<PaperFormat>,
    /// File to write [default: standard output]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,
    /// Write over the file if it is there already
    #[arg(long, requires = "output")]
    pub force: bool,
}

/// Form of a document.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum PaperFormat {
    /// PDF, to print
    Pdf,
    /// One HTML page that stands alone
    Html,
    /// A workbook with real numbers
    Xlsx,
}

fn kind() -> impl TypedValueParser<Value = Kind> {
    PossibleValuesParser::new(Kind::ALL.map(Kind::name)).try_map(|name| name.parse::<Kind>())
}

fn sheet() -> impl TypedValueParser<Value = Sheet> {
    PossibleValuesParser::new(Sheet::ALL.map(Sheet::name)).try_map(|name| name.parse::<Sheet>())
}
