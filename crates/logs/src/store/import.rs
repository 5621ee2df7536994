//! Logs of one unit to its files: native samples and the grid of seconds.

use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::SCHEMA;
use super::file::Target;
use super::grid::{GroupGrid, drop_before, earliest, write_day};
use super::native::{DAY_S, MOST_DAYS, Native, day_number};
use super::route::{OnRoute, RouteTold};
use crate::definitions::Definitions;
use crate::frame::Timestamp;
use crate::identifier::SourceAddress;
use crate::measured::Measured;
use crate::read::{Log, Loss, ReadError, Stretch, Told, read_all};

/// Who is believed where several send the same signal.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Choice {
    /// Addresses of the unit's register, the first goes first; where it names none that had a value,
    /// the sender with most values.
    pub sources: Vec<SourceAddress>,
}

/// Why logs could not be imported.
#[derive(Debug, thiserror::Error)]
pub enum ImportError {
    /// A log cannot be read.
    #[error(transparent)]
    Read(#[from] ReadError),
    /// A file cannot be written.
    #[error("{path} cannot be written: {error}")]
    Io {
        /// The file or folder.
        path: String,
        /// What the system says.
        error: io::Error,
    },
    /// A file cannot be written as Parquet.
    #[error("{path} cannot be written: {problem}")]
    Parquet {
        /// The file.
        path: String,
        /// What the writer says.
        problem: String,
    },
    /// There is something already.
    #[error("{path} is there already; name another folder, or move it away")]
    There {
        /// The folder.
        path: String,
    },
    /// A fleet number that makes no folder.
    #[error("'{unit}' does not do as the name of a folder; use letters, digits, - and _")]
    BadUnit {
        /// The fleet number.
        unit: String,
    },
    /// Time stamps that no truck's logs have.
    #[error("the time stamps jump over more than 400 days; import the logs in parts")]
    TooManyDays,
}

impl ImportError {
    pub(super) fn io(path: &Path, error: io::Error) -> Self {
        Self::Io { path: path.display().to_string(), error }
    }

    pub(super) fn parquet(path: &Path, error: &parquet::errors::ParquetError) -> Self {
        Self::Parquet { path: path.display().to_string(), problem: error.to_string() }
    }
}

/// What an import wrote.
#[derive(Debug, Clone, PartialEq)]
pub struct Imported {
    /// Folder of the unit.
    pub folder: PathBuf,
    /// What each log told.
    pub logs: Vec<Told>,
    /// Files written.
    pub files: usize,
    /// Rows of native samples.
    pub rows: u64,
    /// Numbers that found no second: too many locations, or a clock that went back.
    pub off_grid: u64,
    /// What the drive did on the route, where one was given.
    pub route: Option<RouteTold>,
}

/// An import under way.
pub struct Import<'a> {
    definitions: &'a Definitions,
    choice: Choice,
    unit: String,
    folder: PathBuf,
    part: PathBuf,
    native: Vec<Native>,
    grids: Vec<GroupGrid>,
    days: Vec<(Target, Vec<String>, Vec<String>)>,
    day: Option<i64>,
    written: BTreeSet<i64>,
    /// Seconds of a day whose file was closed.
    late: u64,
    logs: Vec<Told>,
    on_route: Option<OnRoute<'a>>,
    route: RouteTold,
}

impl<'a> Import<'a> {
    /// An import for a unit into its own folder below `out`, which must not be there.
    ///
    /// # Errors
    /// Where the folder is there, or the fleet number makes no folder.
    pub fn start(
        out: &Path,
        unit: &str,
        definitions: &'a Definitions,
        choice: Choice,
    ) -> Result<Self, ImportError> {
        let plain = |c: char| c.is_alphanumeric() || c == '-' || c == '_';
        if unit.is_empty() || !unit.chars().all(plain) {
            return Err(ImportError::BadUnit { unit: unit.to_owned() });
        }
        let folder = out.join(unit);
        if folder.exists() {
            return Err(ImportError::There { path: folder.display().to_string() });
        }
        let part = out.join(format!(".{unit}.part"));
        if part.exists() {
            return Err(ImportError::There { path: part.display().to_string() });
        }
        std::fs::create_dir_all(&part).map_err(|error| ImportError::io(&part, error))?;
        let groups = definitions.groups().len();
        Ok(Self {
            definitions,
            choice,
            unit: unit.to_owned(),
            folder,
            part,
            native: (0..groups).map(|_| Native::default()).collect(),
            grids: (0..groups).map(|_| GroupGrid::default()).collect(),
            days: Vec::new(),
            day: None,
            written: BTreeSet::new(),
            late: 0,
            logs: Vec::new(),
            on_route: None,
            route: RouteTold::default(),
        })
    }

    /// The same with the places of the unit on a route in its grid.
    #[must_use]
    pub fn on_route(mut self, on_route: OnRoute<'a>) -> Self {
        self.on_route = Some(on_route);
        self
    }

    /// Takes a log; logs are given in order of time.
    ///
    /// # Errors
    /// Where it cannot be read on, or a file cannot be written.
    pub fn log(&mut self, log: Log) -> Result<(), ImportError> {
        let definitions = self.definitions;
        let (told, _) = read_all(log, definitions, |stretches| self.take(&stretches))?;
        self.logs.push(told);
        Ok(())
    }

    fn take(&mut self, stretches: &[Stretch]) -> Result<(), ImportError> {
        let part = &self.part;
        let groups = self.definitions.groups();
        let natives = self.native.par_iter_mut().zip(&mut self.grids);
        natives.zip(groups).enumerate().try_for_each(|(at, ((native, grid), group))| {
            for stretch in stretches {
                let lane = &stretch.sorted.lanes[at];
                native.take(part, group, lane)?;
                grid.take(group, lane);
            }
            Ok::<_, ImportError>(())
        })?;
        let latest = stretches.iter().filter_map(|stretch| stretch.sorted.clock.last).max();
        if let Some(day) = latest.map(day_number) {
            if self.day.is_some_and(|before| day > before) {
                self.write_grid(day * DAY_S)?;
            }
            self.day = self.day.max(Some(day));
        }
        Ok(())
    }

    /// Writes the grid of all seconds before `end`, day by day.
    fn write_grid(&mut self, end: i64) -> Result<(), ImportError> {
        while let Some(first) = earliest(&self.grids).filter(|first| *first < end) {
            let day = first.div_euclid(DAY_S);
            let end_of_day = (day + 1) * DAY_S;
            if !self.written.insert(day) {
                self.late += drop_before(&mut self.grids, end_of_day);
                continue;
            }
            if self.written.len() > MOST_DAYS {
                return Err(ImportError::TooManyDays);
            }
            let (part, grids) = (&self.part, &mut self.grids);
            let on_route = self.on_route.as_ref();
            let written =
                write_day(part, grids, self.definitions, &self.choice, on_route, end_of_day)?;
            if let Some(day) = written {
                self.route.append(&day.route);
                self.days.push((day.file, day.notes, day.measured));
            }
        }
        Ok(())
    }

    /// Ends the files and moves them to their place.
    ///
    /// # Errors
    /// Where a file cannot be written.
    pub fn finish(mut self) -> Result<Imported, ImportError> {
        self.write_grid(i64::MAX)?;
        let general = self.metadata();
        let rows = self.native.iter().map(|native| native.rows).sum();
        let mut files = 0;
        for (native, group) in
            std::mem::take(&mut self.native).into_iter().zip(self.definitions.groups())
        {
            let columns = group
                .signals
                .iter()
                .map(|signal| format!("{}={},{}", signal.name, signal.spn, signal.unit.sign()));
            let columns = columns.collect::<Vec<_>>().join(";");
            let measured = group.signals.iter().filter_map(|signal| {
                Some(format!("{}={}", signal.name, Measured::of(signal.spn)?))
            });
            let measured = measured.collect::<Vec<_>>().join(";");
            for file in native.into_files() {
                let mut metadata = general.clone();
                metadata.push(("pgn", group.pgn.to_string()));
                metadata.push(("columns", columns.clone()));
                metadata.push(("measured", measured.clone()));
                file.finish(&metadata)?;
                files += 1;
            }
        }
        for (file, notes, measured) in std::mem::take(&mut self.days) {
            let mut metadata = general.clone();
            metadata.push(("grid_s", "1".to_owned()));
            metadata.push(("columns", notes.join(";")));
            metadata.push(("measured", measured.join(";")));
            file.finish(&metadata)?;
            files += 1;
        }
        std::fs::rename(&self.part, &self.folder)
            .map_err(|error| ImportError::io(&self.folder, error))?;
        let off_grid = self.late + self.grids.iter().map(|grid| grid.lost).sum::<u64>();
        let (folder, logs) = (self.folder.clone(), std::mem::take(&mut self.logs));
        let route = self.on_route.is_some().then(|| std::mem::take(&mut self.route));
        Ok(Imported { folder, logs, files, rows, off_grid, route })
    }

    /// What every file says of itself.
    fn metadata(&self) -> Vec<(&'static str, String)> {
        let losses = Loss::ALL.into_iter().filter_map(|loss| {
            let count: u64 = self.logs.iter().map(|told| told.losses.of(loss)).sum();
            (count > 0).then(|| format!("{loss}={count}"))
        });
        let steps: u64 = self.logs.iter().map(|told| told.clock.steps_back).sum();
        let inputs = self.logs.iter().map(|told| told.sha256.clone());
        vec![
            ("schema", SCHEMA.to_owned()),
            ("unit", self.unit.clone()),
            ("sort_key", "time".to_owned()),
            ("time_base", time_base(&self.logs).to_owned()),
            ("clock_steps_back", steps.to_string()),
            ("decoder", env!("CARGO_PKG_VERSION").to_owned()),
            ("inputs_sha256", inputs.collect::<Vec<_>>().join(";")),
            ("losses", losses.collect::<Vec<_>>().join(";")),
        ]
    }
}

impl Drop for Import<'_> {
    /// A broken import leaves nothing behind.
    fn drop(&mut self) {
        if self.part.exists() {
            std::fs::remove_dir_all(&self.part).unwrap_or(());
        }
    }
}

/// `epoch` where the first stamp lies after 1990, else `start`.
fn time_base(logs: &[Told]) -> &'static str {
    const YEAR_1990: Timestamp = Timestamp::from_us(631_152_000_000_000);
    let first = logs.iter().filter_map(|told| told.clock.first).min();
    if first.is_some_and(|first| first >= YEAR_1990) { "epoch" } else { "start" }
}
