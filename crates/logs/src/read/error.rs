//! Why a log cannot be read at all.

use std::io;

use super::open::Format;

/// Why a log cannot be read at all. A bad record in it is a loss, not an error.
#[derive(Debug, thiserror::Error)]
pub enum ReadError {
    /// It cannot be opened or read on.
    #[error("{name} cannot be read: {error}")]
    Io {
        /// The file.
        name: String,
        /// What the system says.
        error: io::Error,
    },
    /// It is a folder.
    #[error("{name} is a folder; name the log files in it")]
    Folder {
        /// The folder.
        name: String,
    },
    /// It holds nothing.
    #[error("{name} is empty")]
    Empty {
        /// The file.
        name: String,
    },
    /// Its content is of no format that is read here.
    #[error(
        "{name} begins with \"{head}\", which is no format read here; export it as one of: candump, \
         ASC, BLF, MDF4 with CAN frames, PCAP with SocketCAN frames, CSV, Parquet with a row a frame"
    )]
    Unknown {
        /// The file.
        name: String,
        /// Its first bytes.
        head: String,
    },
    /// The packing around the log is broken from its beginning on.
    #[error("{name} is packed as gzip and does not unpack: {error}")]
    Packed {
        /// The file.
        name: String,
        /// What the unpacking says.
        error: io::Error,
    },
    /// A part that everything else hangs on is missing or broken.
    #[error("{name} is read as {format}, but {problem}")]
    Format {
        /// The file.
        name: String,
        /// What it begins like.
        format: Format,
        /// What is wrong.
        problem: String,
    },
    /// A table without a mapping.
    #[error(
        "{name} is a table with the columns {columns}; say which hold what, for example --columns \
         time=Timestamp,id=ID,data=Data"
    )]
    NoMapping {
        /// The file.
        name: String,
        /// Its columns.
        columns: String,
    },
}

impl ReadError {
    /// A broken part, by format.
    pub(crate) fn format(name: &str, format: Format, problem: impl Into<String>) -> Self {
        Self::Format { name: name.to_owned(), format, problem: problem.into() }
    }

    /// A failed reading.
    pub(crate) fn io(name: &str, error: io::Error) -> Self {
        Self::Io { name: name.to_owned(), error }
    }
}
