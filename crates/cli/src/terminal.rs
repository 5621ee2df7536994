//! Standard output for data, standard error for talk.

use std::io::{self, IsTerminal, Write};
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use anstream::AutoStream;
use anstyle::{AnsiColor, Style};
use clap::ColorChoice;
use indicatif::{ProgressBar, ProgressStyle};
use serde::Serialize;

/// Headings.
pub const HEADING: Style = Style::new().bold();
/// What is wrong; the words say so too.
pub const WRONG: Style = AnsiColor::Red.on_default().bold();
/// What to look at.
pub const LOOK: Style = AnsiColor::Yellow.on_default();

/// A step shorter than this shows no progress.
const QUIET: Duration = Duration::from_secs(1);

/// Where a command prints.
#[derive(Debug, Clone, Copy)]
pub struct Terminal {
    color: anstream::ColorChoice,
}

impl Terminal {
    /// With color always, never, or where the stream is a terminal and nothing forbids it.
    pub fn new(color: ColorChoice) -> Self {
        Self {
            color: match color {
                ColorChoice::Auto => anstream::ColorChoice::Auto,
                ColorChoice::Always => anstream::ColorChoice::Always,
                ColorChoice::Never => anstream::ColorChoice::Never,
            },
        }
    }

    /// Whether text on standard output is colored.
    pub fn colors_output(&self) -> bool {
        AutoStream::new(io::stdout(), self.color).current_choice() != anstream::ColorChoice::Never
    }

    /// Prints data.
    pub fn data(&self, text: &str) -> io::Result<()> {
        let mut stream = AutoStream::new(io::stdout(), self.color);
        stream.write_all(text.as_bytes())?;
        stream.flush()
    }

    /// Prints one JSON document as data.
    pub fn document(&self, document: &impl Serialize) -> io::Result<()> {
        let mut text = serde_json::to_string_pretty(document)?;
        text.push('\n');
        self.data(&text)
    }

    /// Prints talk.
    pub fn talk(&self, text: &str) -> io::Result<()> {
        let mut stream = AutoStream::new(io::stderr(), self.color);
        stream.write_all(text.as_bytes())?;
        stream.flush()
    }

    /// Prints one thing to know.
    pub fn note(&self, text: &str) -> io::Result<()> {
        self.talk(&format!("{LOOK}note:{LOOK:#} {text}\n"))
    }

    /// Prints why a command did not run to its end.
    pub fn error(&self, error: &anyhow::Error) -> io::Result<()> {
        let causes: Vec<String> = error.chain().map(ToString::to_string).collect();
        self.talk(&format!("{WRONG}error:{WRONG:#} {}\n", causes.join(": ")))
    }

    /// Does a step; one that lasts is shown on standard error if that is a terminal.
    pub fn step<T>(&self, what: &str, work: impl FnOnce() -> T) -> T {
        if !io::stderr().is_terminal() {
            return work();
        }
        thread::scope(|scope| {
            let (done, waits) = mpsc::channel::<()>();
            scope.spawn(move || {
                if waits.recv_timeout(QUIET) != Err(mpsc::RecvTimeoutError::Timeout) {
                    return;
                }
                let style = ProgressStyle::with_template("{spinner} {msg} {elapsed}")
                    .unwrap_or_else(|_| ProgressStyle::default_spinner());
                let bar =
                    ProgressBar::new_spinner().with_style(style).with_message(what.to_owned());
                bar.enable_steady_tick(Duration::from_millis(120));
                // Ends with the step, whether it sent something or went away.
                waits.recv().unwrap_or(());
                bar.finish_and_clear();
            });
            let result = work();
            drop(done);
            result
        })
    }
}
