//! `airtide logs show`

use std::path::PathBuf;

use logs::Definitions;
use logs::dbc::groups_of;
use logs::read::senders::Senders;
use logs::read::{Log, Options, ReadError, Tally, Timing, read_all};
use view::{LogFileView, LogsDocument};

use crate::args::{GlobalArgs, LogTiming, ShowArgs};
use crate::outcome::{Failure, Outcome};
use crate::page;
use crate::progress;
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &ShowArgs,
    global: &GlobalArgs,
    words: &Words,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let definitions = definitions(&args.dbc, words, terminal)?;
    let options = Options { timing: timing(args.timing), columns: args.columns.clone() };
    let mut tally = Tally::default();
    let mut senders = Senders::default();
    let mut files = Vec::new();
    let mut unread = Vec::new();
    for path in &args.logs {
        let name = path.display().to_string();
        let reading = words.fill("logs-reading", &[("file", &name)]);
        let before = tally.losses.clone();
        let told = progress::of_log(&reading, |watch| {
            let log = Log::open(path, &options)?;
            watch(log.length(), log.progress());
            read_all(log, &definitions, |stretches| {
                tally.take(&stretches, &definitions);
                Ok::<_, ReadError>(())
            })
        });
        match told {
            Ok((told, seen)) => {
                let decoding = tally.losses.since(&before);
                files.push(LogFileView::new(&told, &decoding));
                // Buses are numbered by file; counts by group and sender are the same for all.
                senders.append(&seen, &[], &definitions);
            }
            Err(error) => unread.push(error),
        }
    }
    let failed = unread.len();
    let mut unread = unread.into_iter();
    if files.is_empty() {
        let first = unread.next().map_or_else(|| anyhow::anyhow!("no log"), anyhow::Error::new);
        for error in unread {
            terminal.error(&anyhow::Error::new(error))?;
        }
        return Err(Failure::input(first));
    }
    for error in unread {
        terminal.error(&anyhow::Error::new(error))?;
    }
    let keep = args.keep_identification;
    let document = LogsDocument::new(files, &tally, &senders, &definitions, keep);
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&page::logs(&document, words))?;
        if !keep && !tally.identification.is_empty() {
            terminal.note(&words.text("logs-stripped"))?;
        }
    }
    let clean = document.bad_records == 0 && failed == 0;
    Ok(if clean { Outcome::Done } else { Outcome::Problems })
}

pub(super) const fn timing(timing: LogTiming) -> Timing {
    match timing {
        LogTiming::AsWritten => Timing::AsWritten,
        LogTiming::SinceLast => Timing::SinceLast,
    }
}

/// The table of this program with the user's own files.
pub(super) fn definitions(
    files: &[PathBuf],
    words: &Words,
    terminal: Terminal,
) -> Result<Definitions, Failure> {
    let mut definitions = Definitions::default();
    for path in files {
        let name = path.display();
        let bytes = std::fs::read(path).map_err(|error| {
            Failure::input(anyhow::Error::new(error).context(format!("{name} cannot be read")))
        })?;
        let own = groups_of(&String::from_utf8_lossy(&bytes)).map_err(|error| {
            Failure::input(anyhow::Error::new(error).context(format!("{name} cannot be used")))
        })?;
        for left in &own.left_out {
            terminal.note(&words.fill("logs-left-out", &[("file", &name), ("what", left)]))?;
        }
        definitions = definitions.with(own.groups);
    }
    Ok(definitions)
}
