//! Standard output for data, standard error for talk.

use std::io::{self, Write};

use anstream::AutoStream;
use anstyle::{AnsiColor, Style};
use clap::ColorChoice;
use serde::Serialize;

/// Headings.
pub const HEADING: Style = Style::new().bold();
/// What is wrong; the words say so too.
pub const WRONG: Style = AnsiColor::Red.on_default().bold();
/// What to look at.
pub const LOOK: Style = AnsiColor::Yellow.on_default();

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
    pub fn colors_output(self) -> bool {
        AutoStream::new(io::stdout(), self.color).current_choice() != anstream::ColorChoice::Never
    }

    /// Prints data.
    pub fn data(self, text: &str) -> io::Result<()> {
        let mut stream = AutoStream::new(io::stdout(), self.color);
        stream.write_all(text.as_bytes())?;
        stream.flush()
    }

    /// Hands over a file as data.
    pub fn bytes(bytes: &[u8]) -> io::Result<()> {
        let mut stream = io::stdout().lock();
        stream.write_all(bytes)?;
        stream.flush()
    }

    /// Prints one JSON document as data.
    pub fn document(self, document: &impl Serialize) -> io::Result<()> {
        let mut text = serde_json::to_string_pretty(document)?;
        text.push('\n');
        self.data(&text)
    }

    /// Prints talk.
    pub fn talk(self, text: &str) -> io::Result<()> {
        let mut stream = AutoStream::new(io::stderr(), self.color);
        stream.write_all(text.as_bytes())?;
        stream.flush()
    }

    /// Prints one thing to know.
    pub fn note(self, text: &str) -> io::Result<()> {
        self.talk(&format!("{LOOK}note:{LOOK:#} {text}\n"))
    }

    /// Prints why a command did not run to its end.
    pub fn error(self, error: &anyhow::Error) -> io::Result<()> {
        let causes: Vec<String> = error.chain().map(ToString::to_string).collect();
        self.talk(&format!("{WRONG}error:{WRONG:#} {}\n", causes.join(": ")))
    }
}
