//! The files of a survey as bytes, and how they are taken from a disk.

use std::collections::BTreeMap;
use std::fs;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use crate::problem::{Problem, ProblemKind};

/// Largest file that is read.
pub const LARGEST_FILE: u64 = 20 * 1024 * 1024;
/// Folders within folders that are looked into.
const DEEPEST: usize = 6;
/// Files that are looked at.
const MOST_FILES: usize = 10_000;

/// Relative path to bytes, with what could not be taken in.
///
/// ```
/// let mut folder = survey::Folder::default();
/// folder.insert("survey.toml", "name = 'Yard'");
/// assert_eq!(folder.text("survey.toml"), Some("name = 'Yard'"));
/// ```
#[derive(Debug, Clone, Default)]
pub struct Folder {
    files: BTreeMap<String, Vec<u8>>,
    refused: Vec<Problem>,
}

/// Why a folder could not be read at all.
#[derive(Debug, thiserror::Error)]
pub enum ReadError {
    /// There is nothing at the path.
    #[error("there is no folder '{}'; give the folder that holds survey.toml", .0.display())]
    Missing(PathBuf),
    /// The path is a file.
    #[error("'{}' is not a folder; give the folder that holds survey.toml", .0.display())]
    NotAFolder(PathBuf),
    /// The system refuses.
    #[error("'{}' cannot be read: {source}", path.display())]
    Refused {
        /// The folder.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// It holds more files than a survey would.
    #[error("'{}' holds more than {MOST_FILES} files; is it really a survey?", .0.display())]
    TooMany(PathBuf),
}

impl Folder {
    /// Puts in a file; `path` uses `/`.
    pub fn insert(&mut self, path: impl Into<String>, bytes: impl Into<Vec<u8>>) {
        self.files.insert(path.into(), bytes.into());
    }

    /// Paths with bytes, in order.
    pub fn files(&self) -> impl Iterator<Item = (&str, &[u8])> {
        self.files.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice()))
    }

    /// Bytes of a file.
    pub fn bytes(&self, path: &str) -> Option<&[u8]> {
        self.files.get(path).map(Vec::as_slice)
    }

    /// Text of a file, without a byte order mark; `None` too if it is not UTF-8.
    pub fn text(&self, path: &str) -> Option<&str> {
        let text = std::str::from_utf8(self.bytes(path)?).ok()?;
        Some(text.strip_prefix('\u{feff}').unwrap_or(text))
    }

    /// Files that were there and were not taken in.
    pub fn refused(&self) -> &[Problem] {
        &self.refused
    }

    /// Takes in a folder from the disk; hidden files are left alone.
    ///
    /// Files over [`LARGEST_FILE`] and links that lead out of the folder are refused one by one
    /// and reported by [`load`](crate::load).
    ///
    /// # Errors
    /// [`ReadError`] if the folder itself cannot be read.
    pub fn read(root: &Path) -> Result<Self, ReadError> {
        let refused = |source: io::Error| match source.kind() {
            io::ErrorKind::NotFound => ReadError::Missing(root.to_owned()),
            _ => ReadError::Refused { path: root.to_owned(), source },
        };
        if !fs::metadata(root).map_err(refused)?.is_dir() {
            return Err(ReadError::NotAFolder(root.to_owned()));
        }
        let inside = fs::canonicalize(root).map_err(refused)?;
        let mut folder = Self::default();
        folder.take(root, "", &inside, 0)?;
        Ok(folder)
    }

    fn take(&mut self, at: &Path, path: &str, root: &Path, depth: usize) -> Result<(), ReadError> {
        let listed = fs::read_dir(at).and_then(Iterator::collect::<io::Result<Vec<_>>>);
        let mut entries = match listed {
            Ok(entries) => entries,
            Err(source) if depth == 0 => {
                return Err(ReadError::Refused { path: at.to_owned(), source });
            }
            Err(error) => {
                self.refuse(path, ProblemKind::NotReadable { message: error.to_string() });
                return Ok(());
            }
        };
        entries.sort_by_key(fs::DirEntry::file_name);
        for entry in entries {
            let name = entry.file_name().to_string_lossy().into_owned();
            if name.starts_with('.') {
                continue;
            }
            let path = if path.is_empty() { name } else { format!("{path}/{name}") };
            if self.files.len() + self.refused.len() >= MOST_FILES {
                return Err(ReadError::TooMany(root.to_owned()));
            }
            self.take_entry(&entry.path(), &path, root, depth)?;
        }
        Ok(())
    }

    fn take_entry(
        &mut self,
        at: &Path,
        path: &str,
        root: &Path,
        depth: usize,
    ) -> Result<(), ReadError> {
        let real = match fs::canonicalize(at) {
            Ok(real) if real.starts_with(root) => real,
            Ok(_) => {
                self.refuse(path, ProblemKind::LinkLeaves);
                return Ok(());
            }
            Err(error) => {
                self.refuse(path, ProblemKind::NotReadable { message: error.to_string() });
                return Ok(());
            }
        };
        let metadata = match fs::metadata(&real) {
            Ok(metadata) => metadata,
            Err(error) => {
                self.refuse(path, ProblemKind::NotReadable { message: error.to_string() });
                return Ok(());
            }
        };
        if metadata.is_dir() {
            if depth < DEEPEST {
                self.take(at, path, root, depth + 1)?;
            }
        } else if metadata.is_file() {
            match bounded(&real, metadata.len()) {
                Ok(bytes) => self.insert(path, bytes),
                Err(kind) => self.refuse(path, kind),
            }
        }
        Ok(())
    }

    fn refuse(&mut self, path: &str, kind: ProblemKind) {
        self.refused.push(Problem::in_file(path, kind));
    }
}

/// Reads a file that may grow meanwhile, never past the limit.
fn bounded(path: &Path, bytes: u64) -> Result<Vec<u8>, ProblemKind> {
    let too_large = |bytes| ProblemKind::TooLarge { bytes, limit: LARGEST_FILE };
    if bytes > LARGEST_FILE {
        return Err(too_large(bytes));
    }
    let mut content = Vec::new();
    let read = fs::File::open(path)
        .and_then(|file| file.take(LARGEST_FILE + 1).read_to_end(&mut content))
        .map_err(|error| ProblemKind::NotReadable { message: error.to_string() })?;
    if read as u64 > LARGEST_FILE { Err(too_large(read as u64)) } else { Ok(content) }
}
