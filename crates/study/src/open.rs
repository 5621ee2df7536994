//! A survey read from the disk.

use std::path::{Path, PathBuf};

use model::date::Date;
use survey::{Folder, Problem, ReadError, Severity, Survey};

/// A survey with everything that is wrong with it.
#[derive(Debug)]
pub struct Opened {
    /// Where it lies.
    pub path: PathBuf,
    /// The day that decides which approvals and permits count.
    pub day: Date,
    /// Its files.
    pub folder: Folder,
    /// Its checked values; `None` if `survey.toml` itself is unusable.
    pub survey: Option<Survey>,
    /// Every problem, in order of file and line.
    pub problems: Vec<Problem>,
}

/// Why a survey could not be opened at all.
#[derive(Debug, thiserror::Error)]
pub enum OpenError {
    /// The folder could not be read.
    #[error(transparent)]
    Read(#[from] ReadError),
}

impl Opened {
    /// Reads and checks the survey in a folder, as of today by the clock of this computer.
    ///
    /// # Errors
    /// [`OpenError`] if the folder cannot be read; problems of its contents are in the value.
    pub fn read(path: &Path) -> Result<Self, OpenError> {
        Self::read_as_of(path, today())
    }

    /// Reads and checks the survey in a folder as it stands on a day.
    ///
    /// # Errors
    /// [`OpenError`] if the folder cannot be read; problems of its contents are in the value.
    pub fn read_as_of(path: &Path, day: Date) -> Result<Self, OpenError> {
        let folder = Folder::read(path)?;
        let (survey, problems) = survey::load(&folder, day);
        Ok(Self { path: path.to_owned(), day, folder, survey, problems })
    }

    /// Problems that keep something from being used.
    pub fn errors(&self) -> impl Iterator<Item = &Problem> {
        self.problems.iter().filter(|problem| problem.severity == Severity::Error)
    }
}

/// Today where this computer stands.
fn today() -> Date {
    let today = jiff::Zoned::now().date();
    let part = |number: i8| number.unsigned_abs();
    Date::new(today.year(), part(today.month()), part(today.day()))
        .expect("a calendar gives days that exist")
}
