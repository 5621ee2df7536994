//! What is served, to whom, and what they may do.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread::available_parallelism;

use tokio::sync::Semaphore;

use crate::guard::pairing::Pairing;
use crate::hash;
use crate::snapshot::Snapshots;

/// Who besides this computer may look.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Share {
    /// Nobody.
    #[default]
    No,
    /// Paired devices on the local network, to read only.
    ReadOnly,
    /// Paired devices on the local network, to read and write.
    Edit,
}

/// What to serve.
#[derive(Debug, Clone, Default)]
pub struct SiteOptions {
    /// Folder of the survey.
    pub survey: PathBuf,
    /// Who besides this computer may look.
    pub share: Share,
    /// Whether this computer may only read, too.
    pub read_only: bool,
    /// Series to show besides the simulated runs.
    pub series: Vec<PathBuf>,
    /// Names and addresses under which a browser may ask, besides loopback, such as `10.0.0.5`.
    pub hosts: Vec<String>,
}

/// Why a site cannot be served.
#[derive(Debug, thiserror::Error)]
pub enum SiteError {
    /// There is no survey to open.
    #[error(transparent)]
    Open(#[from] study::OpenError),
    /// The system gives no random numbers.
    #[error("this system gives no random numbers for the token of the page: {0}")]
    NoChance(getrandom::Error),
}

/// The state of the page.
#[derive(Debug)]
pub struct Site {
    pub(crate) options: SiteOptions,
    pub(crate) token: String,
    pub(crate) snapshots: Snapshots,
    pub(crate) pairing: Pairing,
    /// Plans that may be worked out at once.
    pub(crate) planners: Arc<Semaphore>,
    /// Longer work: simulations and tables read.
    pub(crate) workers: Arc<Semaphore>,
    pub(crate) series: crate::api::series::Shelf,
    pub(crate) drives: crate::api::practice::Drives,
    saving: Mutex<()>,
}

impl Site {
    /// Opens the survey; problems of its contents do not keep the page from opening.
    ///
    /// # Errors
    /// [`SiteError`] for a folder that cannot be read.
    pub fn new(options: SiteOptions) -> Result<Self, SiteError> {
        let snapshots = Snapshots::open(&options.survey)?;
        let cores = available_parallelism().map_or(2, usize::from);
        Ok(Self {
            token: random_text(32).map_err(SiteError::NoChance)?,
            pairing: Pairing::new().map_err(SiteError::NoChance)?,
            snapshots,
            planners: Arc::new(Semaphore::new(cores)),
            workers: Arc::new(Semaphore::new(cores)),
            series: crate::api::series::Shelf::default(),
            drives: crate::api::practice::Drives::default(),
            saving: Mutex::new(()),
            options,
        })
    }

    /// The code that pairs the next device; a new one after each use. Shown to the person at this
    /// computer, never logged.
    pub fn pairing_code(&self) -> String {
        self.pairing.code()
    }

    /// Folder of the survey.
    pub fn survey(&self) -> &Path {
        &self.options.survey
    }

    /// Holds off other saves: what is compared and what is written are one step.
    pub(crate) fn saving(&self) -> MutexGuard<'_, ()> {
        self.saving.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// Random bytes as hexadecimal digits.
pub(crate) fn random_text(bytes: usize) -> Result<String, getrandom::Error> {
    let mut random = vec![0; bytes];
    getrandom::fill(&mut random)?;
    Ok(hash::text(&random))
}
