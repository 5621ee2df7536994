//! Writing files whole or not at all: under a temporary name, then renamed.

use std::fs;
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

/// Why a file was not written.
#[derive(Debug, thiserror::Error)]
pub enum WriteError {
    /// It is there already.
    #[error("'{}' is there already and was left as it is; choose another folder", .0.display())]
    Exists(PathBuf),
    /// There is no demo of this name.
    #[error("there is no demo '{name}'; there are: {}", .known.join(", "))]
    NoDemo {
        /// The name asked for.
        name: String,
        /// Names there are.
        known: Vec<String>,
    },
    /// The system refuses.
    #[error("'{}' cannot be written: {source}", path.display())]
    Refused {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
}

/// Writes a file that may be there already; its folder is made if need be.
///
/// # Errors
/// [`WriteError::Refused`] if the system does not let it; the old file is then untouched.
pub fn replace(path: &Path, bytes: &[u8]) -> Result<(), WriteError> {
    let refused = |source| WriteError::Refused { path: path.to_owned(), source };
    prepared(path, bytes)?.persist(path).map_err(|error| refused(error.error))?;
    Ok(())
}

/// Writes a file that must not be there yet; its folder is made if need be.
///
/// # Errors
/// [`WriteError::Exists`] if it is, even if it came meanwhile; [`WriteError::Refused`] if the
/// system does not let it.
pub fn create(path: &Path, bytes: &[u8]) -> Result<(), WriteError> {
    match prepared(path, bytes)?.persist_noclobber(path) {
        Ok(_) => Ok(()),
        Err(error) if error.error.kind() == io::ErrorKind::AlreadyExists => {
            Err(WriteError::Exists(path.to_owned()))
        }
        Err(error) => Err(WriteError::Refused { path: path.to_owned(), source: error.error }),
    }
}

fn prepared(path: &Path, bytes: &[u8]) -> Result<NamedTempFile, WriteError> {
    let refused = |source| WriteError::Refused { path: path.to_owned(), source };
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
    let folder = folder.unwrap_or(Path::new("."));
    fs::create_dir_all(folder).map_err(refused)?;
    let mut file = readable(folder).map_err(refused)?;
    file.write_all(bytes).map_err(refused)?;
    file.as_file().sync_all().map_err(refused)?;
    Ok(file)
}

/// A temporary file in a folder that others may read, as any file a person saves.
///
/// # Errors
/// What the system says.
#[cfg(unix)]
pub fn readable(folder: &Path) -> io::Result<NamedTempFile> {
    use std::os::unix::fs::PermissionsExt;
    tempfile::Builder::new().permissions(fs::Permissions::from_mode(0o666)).tempfile_in(folder)
}

/// A temporary file in a folder.
///
/// # Errors
/// What the system says.
#[cfg(not(unix))]
pub fn readable(folder: &Path) -> io::Result<NamedTempFile> {
    NamedTempFile::new_in(folder)
}
