//! The bytes of a log: a file, or memory.

use std::fs::File;
use std::io::{self, Cursor, Read, Seek, SeekFrom};
use std::path::Path;

use super::error::ReadError;

/// The bytes of a log.
#[derive(Debug)]
pub enum Input {
    /// A file.
    File(File),
    /// Bytes already there.
    Memory(Cursor<Vec<u8>>),
}

impl Input {
    /// Opens a file.
    ///
    /// # Errors
    /// Where it is not there, not allowed, or a folder.
    pub fn open(path: &Path) -> Result<Self, ReadError> {
        let name = path.display().to_string();
        let file = File::open(path).map_err(|error| ReadError::io(&name, error))?;
        match file.metadata() {
            Ok(metadata) if metadata.is_dir() => Err(ReadError::Folder { name }),
            Ok(_) => Ok(Self::File(file)),
            Err(error) => Err(ReadError::io(&name, error)),
        }
    }

    /// Bytes already there.
    pub const fn memory(bytes: Vec<u8>) -> Self {
        Self::Memory(Cursor::new(bytes))
    }

    /// How many bytes; zero where that is not known.
    pub fn length(&self) -> u64 {
        match self {
            Self::File(file) => file.metadata().map_or(0, |metadata| metadata.len()),
            Self::Memory(cursor) => cursor.get_ref().len() as u64,
        }
    }
}

impl Read for Input {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        match self {
            Self::File(file) => file.read(buffer),
            Self::Memory(cursor) => cursor.read(buffer),
        }
    }
}

impl Seek for Input {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        match self {
            Self::File(file) => file.seek(to),
            Self::Memory(cursor) => cursor.seek(to),
        }
    }
}
