//! A log that was opened: its format known, its frames not yet read.

use std::io::{self, Read, Seek, SeekFrom};
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::AtomicU64;

use flate2::read::MultiGzDecoder;

use super::Frames;
use super::asc::Asc;
use super::blf::Blf;
use super::blocks::Blocks;
#[cfg(feature = "store")]
use super::columnar::Columnar;
use super::digest::Digested;
use super::error::ReadError;
use super::input::Input;
use super::mdf::Mdf;
use super::open::{Format, HEAD, format_of};
use super::pcap::Capture;
use super::table::{Columns, Table};

/// How the time stamps of a text are meant.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum Timing {
    /// As written: since the epoch or since the start, or as the header says.
    #[default]
    AsWritten,
    /// Each since the line before.
    SinceLast,
}

/// What the user says about the logs.
#[derive(Debug, Clone, Default)]
pub struct Options {
    /// How the time stamps of a text are meant.
    pub timing: Timing,
    /// Which columns of a table hold what.
    pub columns: Option<Columns>,
}

/// Where the frames of a log come from.
pub(super) enum Source {
    /// Lines that stand alone, read on several cores.
    Lines(Blocks<Box<dyn Read + Send>>, Timing),
    /// Anything else, one batch after the other.
    Frames(Box<dyn Frames>),
}

/// A log that was opened.
pub struct Log {
    pub(super) name: String,
    pub(super) format: Format,
    pub(super) source: Source,
    pub(super) digest: Digested,
    /// Bytes of the file.
    pub(super) length: u64,
}

impl Log {
    /// Opens a file.
    ///
    /// # Errors
    /// Where it cannot be read, is empty, or is of no format read here.
    pub fn open(path: &Path, options: &Options) -> Result<Self, ReadError> {
        Self::of(&path.display().to_string(), Input::open(path)?, options)
    }

    /// A log whose bytes are there.
    ///
    /// # Errors
    /// As [`Log::open`].
    pub fn of(name: &str, mut input: Input, options: &Options) -> Result<Self, ReadError> {
        let io = |error| ReadError::io(name, error);
        let length = input.length();
        let head = head(&mut input).map_err(io)?;
        if head.is_empty() {
            return Err(ReadError::Empty { name: name.to_owned() });
        }
        input.seek(SeekFrom::Start(0)).map_err(io)?;
        if head.starts_with(&[0x1F, 0x8B]) {
            return Self::unpacked(name, input, length, options);
        }
        let format = format_of(&head).ok_or_else(|| unknown(name, &head))?;
        let digest = Digested::default();
        let source = source(name, &head, format, input, &digest, options)?;
        Ok(Self { name: name.to_owned(), format, source, digest, length })
    }

    /// A text packed by gzip.
    fn unpacked(
        name: &str,
        mut input: Input,
        length: u64,
        options: &Options,
    ) -> Result<Self, ReadError> {
        let packed = |error| ReadError::Packed { name: name.to_owned(), error };
        let head = head(&mut MultiGzDecoder::new(&mut input));
        let head = head.map_err(packed)?;
        if head.is_empty() {
            return Err(ReadError::Empty { name: name.to_owned() });
        }
        input.seek(SeekFrom::Start(0)).map_err(|error| ReadError::io(name, error))?;
        let format = format_of(&head).ok_or_else(|| unknown(name, &head))?;
        let digest = Digested::default();
        let stream = MultiGzDecoder::new(digest.watch(input));
        let source = text(name, &head, format, Box::new(stream), options)?;
        Ok(Self { name: name.to_owned(), format, source, digest, length })
    }

    /// What the file is.
    pub const fn format(&self) -> Format {
        self.format
    }

    /// Bytes of the file.
    pub const fn length(&self) -> u64 {
        self.length
    }

    /// Watches how far the reading is.
    pub fn progress(&self) -> Arc<AtomicU64> {
        Arc::clone(&self.digest.read)
    }
}

fn unknown(name: &str, head: &[u8]) -> ReadError {
    let head = String::from_utf8_lossy(&head[..head.len().min(16)]).escape_debug().to_string();
    ReadError::Unknown { name: name.to_owned(), head }
}

/// The first bytes.
fn head(input: &mut impl Read) -> io::Result<Vec<u8>> {
    let mut head = Vec::new();
    let read = input.take(HEAD as u64).read_to_end(&mut head);
    // A packed file may break off early and still begin well.
    if head.is_empty() { read.map(|_| head) } else { Ok(head) }
}

fn source(
    name: &str,
    head: &[u8],
    format: Format,
    input: Input,
    digest: &Digested,
    options: &Options,
) -> Result<Source, ReadError> {
    match format {
        Format::Candump | Format::Asc | Format::Csv => {
            text(name, head, format, Box::new(digest.watch(input)), options)
        }
        Format::Pcap => Ok(Source::Frames(Box::new(Capture::open(name, digest.watch(input))?))),
        Format::Blf => Ok(Source::Frames(Box::new(Blf::open(name, digest.watch(input))?))),
        Format::Mdf4 => Ok(Source::Frames(Box::new(Mdf::follow(name, digest.follow(input))?))),
        #[cfg(feature = "store")]
        Format::Parquet => {
            let columns = options.columns.as_ref();
            let frames = Columnar::open(name, digest.follow(input), columns)?;
            Ok(Source::Frames(Box::new(frames)))
        }
        #[cfg(not(feature = "store"))]
        Format::Parquet => {
            let problem =
                "this build does not read it; export the frames as candump, ASC, BLF, MDF4 or CSV";
            Err(ReadError::format(name, format, problem))
        }
    }
}

/// A source of text.
fn text(
    name: &str,
    head: &[u8],
    format: Format,
    stream: Box<dyn Read + Send>,
    options: &Options,
) -> Result<Source, ReadError> {
    match format {
        Format::Candump => Ok(Source::Lines(Blocks::of(stream), options.timing)),
        Format::Asc => Ok(Source::Frames(Box::new(Asc::of(name, stream)))),
        Format::Csv => {
            let table = Table::open(name, head, stream, options.columns.as_ref())?;
            Ok(Source::Frames(Box::new(table)))
        }
        _ => {
            let problem = "packed by gzip only texts are read; unpack it first";
            Err(ReadError::format(name, format, problem))
        }
    }
}
