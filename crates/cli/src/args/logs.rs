//! Flags of `airtide logs`.

#[cfg(feature = "logs")]
pub use with_logs::{ImportArgs, LogTiming, LogsAction, LogsArgs, ShowArgs};

/// Read foreign logs; this build is without that part
#[cfg(not(feature = "logs"))]
#[derive(Debug, clap::Args)]
pub struct LogsArgs {
    /// What would be done.
    #[arg(trailing_var_arg = true, allow_hyphen_values = true, hide = true)]
    pub rest: Vec<String>,
}

#[cfg(feature = "logs")]
mod with_logs {
    use std::path::PathBuf;

    use clap::{Args, Subcommand, ValueEnum};
    use logs::read::table::Columns;

    use crate::args::MakeArgs;

    /// Read what the vehicles recorded
    ///
    /// Formats are told by content: candump (log and screen form, also packed by gzip), ASC, BLF, MDF4
    /// with CAN frames, PCAP with `SocketCAN` frames, CSV and Parquet with --columns. The program only reads: it sends nothing
    /// to a bus.
    #[derive(Debug, Args)]
    pub struct LogsArgs {
        /// What to do.
        #[command(subcommand)]
        pub action: LogsAction,
    }

    /// What to do with logs.
    #[derive(Debug, Subcommand)]
    pub enum LogsAction {
        Show(ShowArgs),
        Import(ImportArgs),
        Make(Box<MakeArgs>),
    }

    /// How time stamps of a text are meant.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, Default, ValueEnum)]
    pub enum LogTiming {
        /// Since 1970, or since the start of the log
        #[default]
        AsWritten,
        /// Each since the line before
        SinceLast,
    }

    /// Show what logs hold: groups, senders, signals, trouble codes, and what could not be read
    #[derive(Debug, Args)]
    #[command(after_help = "Exit code 1 if a record could not be read.\n\nExample:\n  \
                      airtide logs show truck.log")]
    pub struct ShowArgs {
        /// The logs
        #[arg(value_name = "LOG", required = true)]
        pub logs: Vec<PathBuf>,
        /// Show the vehicle identification number too
        #[arg(long)]
        pub keep_identification: bool,
        /// Read what the vehicles' own files say of groups too; a group of the table is replaced
        #[arg(long, value_name = "DBC")]
        pub dbc: Vec<PathBuf>,
        /// Columns of a table, such as time=Timestamp,id=ID,data=Data; extended= and bus= may follow
        #[arg(long, value_name = "COLUMNS", value_parser = Columns::parse)]
        pub columns: Option<Columns>,
        /// How the time stamps of a text are meant
        #[arg(long, value_name = "HOW", default_value = "as-written")]
        pub timing: LogTiming,
    }

    /// Write the logs of a unit as columns: native samples and one row a second
    ///
    /// Writes Parquet files below DIR/UNIT, described in docs/series.md. Nothing that is there already is
    /// overwritten. Vehicle identification is not written.
    #[derive(Debug, Args)]
    #[command(after_help = "Exit code 1 if a record could not be read.\n\nExample:\n  \
                      airtide logs import monday.log tuesday.log --unit 12 --out series")]
    pub struct ImportArgs {
        /// The logs of one unit, in order of time
        #[arg(value_name = "LOG", required = true)]
        pub logs: Vec<PathBuf>,
        /// Fleet number of the unit
        #[arg(long, value_name = "UNIT")]
        pub unit: String,
        /// Folder to write into; it is made if it is not there
        #[arg(long, value_name = "DIR")]
        pub out: PathBuf,
        /// Survey whose register says which source addresses the unit has
        #[arg(long, value_name = "SURVEY")]
        pub survey: Option<PathBuf>,
        /// Haul of the survey: positions become places on its route, and the wheel speed is held against it
        #[arg(long, value_name = "HAUL", requires = "survey")]
        pub haul: Option<String>,
        /// Source address to believe where several send the same signal; the first goes first
        #[arg(long, value_name = "ADDRESS", value_parser = address, conflicts_with = "survey")]
        pub source: Vec<u8>,
        /// Read what the vehicles' own files say of groups too; a group of the table is replaced
        #[arg(long, value_name = "DBC")]
        pub dbc: Vec<PathBuf>,
        /// Columns of a table, such as time=Timestamp,id=ID,data=Data; extended= and bus= may follow
        #[arg(long, value_name = "COLUMNS", value_parser = Columns::parse)]
        pub columns: Option<Columns>,
        /// How the time stamps of a text are meant
        #[arg(long, value_name = "HOW", default_value = "as-written")]
        pub timing: LogTiming,
    }

    fn address(text: &str) -> Result<u8, String> {
        let number = match text.strip_prefix("0x") {
            Some(digits) => u8::from_str_radix(digits, 16).ok(),
            None => text.parse().ok(),
        };
        number
            .filter(|number| *number < 254)
            .ok_or_else(|| "give a source address from 0 to 253, decimal or with 0x".to_owned())
    }
}
