//! Entries of a register as they were written, out of TOML or a sheet.

use crate::convert::Loaded;
use crate::document::{Document, join};
use crate::file::{FittedWord, UnitFile, UnitsFile};
use crate::problem::{Problem, ProblemKind};

/// A text with its place in the register.
#[derive(Debug, Clone)]
pub(super) struct Written {
    pub text: String,
    pub place: Place,
}

/// Where in the register.
#[derive(Debug, Clone)]
pub(super) enum Place {
    /// A JSON pointer into the TOML file.
    Pointer(String),
    /// A row, from 1, and the heading of its column.
    Cell {
        /// Row.
        row: usize,
        /// Heading.
        heading: String,
    },
}

/// A measured value as written.
#[derive(Debug, Clone)]
pub(super) struct FittedEntry {
    pub what: FittedWord,
    pub channel: Option<Written>,
    pub share_pct: Written,
    pub date: Option<Written>,
}

/// A unit as written.
#[derive(Debug, Clone)]
pub(super) struct Entry {
    pub number: Written,
    pub vehicle: Written,
    pub pool: Option<Written>,
    pub addresses: Vec<Written>,
    /// Position with tire.
    pub tires: Vec<(Written, Written)>,
    /// Position with day of verification.
    pub sensors: Vec<(Written, Option<Written>)>,
    pub fitted: Vec<FittedEntry>,
}

/// A register with its entries.
#[derive(Debug, Clone)]
pub(crate) struct Register {
    /// Its file.
    pub path: String,
    /// The document of a TOML register.
    document: Option<Document>,
    pub(super) entries: Vec<Entry>,
}

impl Register {
    /// The register of a TOML file.
    pub fn of_toml(file: &Loaded<UnitsFile>) -> Self {
        let units = file.data.units.iter().enumerate();
        Self {
            path: file.document.path.clone(),
            document: Some(file.document.clone()),
            entries: units.map(|(index, unit)| entry(unit, &format!("/units/{index}"))).collect(),
        }
    }

    /// The register of a sheet.
    pub(super) fn of_sheet(path: &str, entries: Vec<Entry>) -> Self {
        Self { path: path.to_owned(), document: None, entries }
    }

    /// A problem with something written.
    pub(super) fn problem(&self, written: &Written, kind: ProblemKind) -> Problem {
        match (&written.place, &self.document) {
            (Place::Pointer(pointer), Some(document)) => document.problem(pointer, kind),
            (Place::Cell { row, heading }, _) => Problem {
                line: Some(*row),
                key: Some(heading.clone()),
                value: Some(written.text.clone()),
                ..Problem::in_file(&self.path, kind)
            },
            (Place::Pointer(_), None) => Problem::in_file(&self.path, kind),
        }
    }

    /// Line, from 1, of something written.
    pub(super) fn line(&self, written: &Written) -> Option<usize> {
        match &written.place {
            Place::Pointer(pointer) => self.document.as_ref()?.line(pointer),
            Place::Cell { row, .. } => Some(*row),
        }
    }
}

fn entry(unit: &UnitFile, at: &str) -> Entry {
    let written = |key: &str, text: &str| Written {
        text: text.to_owned(),
        place: Place::Pointer(format!("{at}/{key}")),
    };
    let under = |list: &str, index: usize, key: &str, text: &str| {
        written(&format!("{list}/{index}/{key}"), text)
    };
    let addresses = unit.source_addresses.iter().enumerate();
    let tires = unit.tires.iter().map(|(position, tire)| {
        let place = Place::Pointer(join(&format!("{at}/tires"), position));
        let position = Written { text: position.clone(), place: place.clone() };
        (position, Written { text: tire.clone(), place })
    });
    let sensors = unit.sensors.iter().enumerate().map(|(index, sensor)| {
        let verified = sensor.verified.as_ref();
        (
            under("sensors", index, "place", &sensor.place),
            verified.map(|day| under("sensors", index, "verified", day)),
        )
    });
    let fitted = unit.fitted.iter().enumerate().map(|(index, fitted)| FittedEntry {
        what: fitted.what,
        channel: fitted.channel.as_ref().map(|name| under("fitted", index, "channel", name)),
        share_pct: under("fitted", index, "share_pct", &fitted.share_pct.to_string()),
        date: Some(under("fitted", index, "date", &fitted.date)),
    });
    Entry {
        number: written("number", &unit.number),
        vehicle: written("type", &unit.r#type),
        pool: unit.pool.then(|| written("pool", "yes")),
        addresses: addresses
            .map(|(index, one)| written(&format!("source_addresses/{index}"), &one.to_string()))
            .collect(),
        tires: tires.collect(),
        sensors: sensors.collect(),
        fitted: fitted.collect(),
    }
}
