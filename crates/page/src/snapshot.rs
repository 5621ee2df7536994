//! The survey as it stands on the disk, read again when something changed.

use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError, RwLock};
use std::time::{Duration, Instant};

use study::{OpenError, Opened};
use survey::Folder;

use crate::hash;

/// A survey as it was at one moment.
#[derive(Debug)]
pub struct Snapshot {
    /// Files, checked values and problems.
    pub opened: Opened,
    /// Hash of all its bytes.
    pub hash: String,
}

/// How long a look at the disk holds; between slider moves nobody edits a file.
const FRESH: Duration = Duration::from_millis(400);

#[derive(Debug)]
struct Latest {
    snapshot: Arc<Snapshot>,
    looked: Instant,
}

/// The latest snapshot.
#[derive(Debug)]
pub struct Snapshots {
    path: PathBuf,
    latest: RwLock<Latest>,
}

impl Snapshots {
    pub fn open(path: &Path) -> Result<Self, OpenError> {
        let snapshot = Arc::new(read(path)?);
        let latest = RwLock::new(Latest { snapshot, looked: Instant::now() });
        Ok(Self { path: path.to_owned(), latest })
    }

    /// The survey as it stood at most a moment ago. Reads the disk: call it off the event loop.
    pub fn current(&self) -> Result<Arc<Snapshot>, OpenError> {
        {
            let latest = self.latest.read().unwrap_or_else(PoisonError::into_inner);
            if latest.looked.elapsed() < FRESH {
                return Ok(Arc::clone(&latest.snapshot));
            }
        }
        self.renewed()
    }

    /// The survey as it stands now.
    pub fn renewed(&self) -> Result<Arc<Snapshot>, OpenError> {
        let folder = Folder::read(&self.path)?;
        let hash = hash::of_folder(&folder);
        let mut latest = self.latest.write().unwrap_or_else(PoisonError::into_inner);
        if latest.snapshot.hash != hash {
            latest.snapshot = Arc::new(read(&self.path)?);
        }
        latest.looked = Instant::now();
        Ok(Arc::clone(&latest.snapshot))
    }
}

fn read(path: &Path) -> Result<Snapshot, OpenError> {
    let opened = Opened::read(path)?;
    let hash = hash::of_folder(&opened.folder);
    Ok(Snapshot { opened, hash })
}
