//! A register out of a sheet: columns found by their headings in the first row.

use super::entry::{Entry, FittedEntry, Place, Register, Written};
use crate::file::FittedWord;
use crate::problem::{Problem, ProblemKind, UnitFault, nearest};
use crate::sheet::{Cell, Sheet, read_sheets};

/// What a column holds.
#[derive(Debug, Clone, PartialEq)]
enum Column {
    Number,
    Type,
    Pool,
    Addresses,
    /// Tire at a position.
    Tire(String),
    /// Sensor at a position.
    Sensor(String),
    /// Measured value, with the channel it is of.
    Fitted(FittedWord, Option<String>),
    FittedDay,
}

/// Headings that are read; a position or a channel stands behind some of them.
const KNOWN: [&str; 9] = [
    "number",
    "type",
    "pool",
    "source addresses",
    "tire POSITION",
    "sensor POSITION",
    "fitted delivery",
    "fitted conductance CHANNEL",
    "fitted date",
];
const TIRE_VOLUME: &str = "fitted tire volume CHANNEL";

fn column(heading: &str) -> Option<Column> {
    let heading = heading.trim();
    let folded = heading.to_lowercase().replace('_', " ");
    let behind = |start: &str| {
        let rest = folded.starts_with(start).then(|| heading.get(start.len()..)).flatten()?;
        (!rest.trim().is_empty()).then(|| rest.trim().to_owned())
    };
    Some(match folded.as_str() {
        "number" | "fleet number" | "unit" => Column::Number,
        "type" | "vehicle" | "vehicle type" => Column::Type,
        "pool" => Column::Pool,
        "source addresses" | "source address" => Column::Addresses,
        "fitted delivery" => Column::Fitted(FittedWord::Delivery, None),
        "fitted date" => Column::FittedDay,
        _ => {
            if let Some(position) = behind("tire ") {
                Column::Tire(position)
            } else if let Some(position) = behind("sensor ") {
                Column::Sensor(position)
            } else if let Some(channel) = behind("fitted conductance ") {
                Column::Fitted(FittedWord::Conductance, Some(channel))
            } else {
                let channel = behind("fitted tire volume ")?;
                Column::Fitted(FittedWord::TireVolume, Some(channel))
            }
        }
    })
}

impl Register {
    /// Reads a register out of the bytes of a workbook or a table of text.
    pub fn read_sheet(path: &str, bytes: &[u8], problems: &mut Vec<Problem>) -> Option<Self> {
        let sheets = match read_sheets(bytes, path) {
            Ok(sheets) => sheets,
            Err(error) => {
                let kind = ProblemKind::ImportFailed { message: error.to_string() };
                problems.push(Problem::in_file(path, kind));
                return None;
            }
        };
        let called = |sheet: &&Sheet| sheet.name.trim().eq_ignore_ascii_case("units");
        let only = sheets.first().filter(|_| sheets.len() == 1);
        let Some(sheet) = only.or_else(|| sheets.iter().find(called)) else {
            let sheets = sheets.iter().map(|sheet| sheet.name.clone()).collect();
            let kind = ProblemKind::Unit(UnitFault::NoSheet { sheets });
            problems.push(Problem::in_file(path, kind));
            return None;
        };
        let blank = |row: &Vec<Cell>| row.iter().all(|cell| cell.text().is_empty());
        let Some(heading) = sheet.rows.iter().position(|row| !blank(row)) else {
            let message = format!("the sheet '{}' is empty", sheet.name);
            problems.push(Problem::in_file(path, ProblemKind::ImportFailed { message }));
            return None;
        };
        let columns = columns(path, heading + 1, &sheet.rows[heading], problems)?;
        let entries = (heading + 1..sheet.rows.len())
            .filter(|row| !blank(&sheet.rows[*row]))
            .map(|row| entry(row + 1, &sheet.rows[row], &columns))
            .collect();
        Some(Self::of_sheet(path, entries))
    }
}

/// The columns by their headings; `None` if number or type is missing.
fn columns(
    path: &str,
    row: usize,
    headings: &[Cell],
    problems: &mut Vec<Problem>,
) -> Option<Vec<(String, Option<Column>)>> {
    let texts: Vec<String> = headings.iter().map(Cell::text).collect();
    let tell = |problems: &mut Vec<Problem>, value: Option<&String>, fault| {
        problems.push(Problem {
            line: Some(row),
            value: value.cloned(),
            ..Problem::in_file(path, ProblemKind::Unit(fault))
        });
    };
    let found: Vec<(String, Option<Column>)> =
        texts.iter().map(|text| (text.clone(), column(text))).collect();
    for (text, _) in found.iter().filter(|(text, column)| !text.is_empty() && column.is_none()) {
        let known: Vec<&'static str> = KNOWN.into_iter().chain([TIRE_VOLUME]).collect();
        let nearest = nearest(text, &known);
        tell(problems, Some(text), UnitFault::UnknownColumn { nearest, known });
    }
    let mut whole = true;
    for (wanted, column) in [("number", Column::Number), ("type", Column::Type)] {
        if !found.iter().any(|(_, found)| found.as_ref() == Some(&column)) {
            let columns = texts.iter().filter(|text| !text.is_empty()).cloned().collect();
            tell(problems, None, UnitFault::NoColumn { wanted, columns });
            whole = false;
        }
    }
    whole.then_some(found)
}

fn entry(row: usize, cells: &[Cell], columns: &[(String, Option<Column>)]) -> Entry {
    let written = |text: String, heading: &str| Written {
        text,
        place: Place::Cell { row, heading: heading.to_owned() },
    };
    let empty = |heading: &str| written(String::new(), heading);
    let mut found = Entry {
        number: empty("number"),
        vehicle: empty("type"),
        pool: None,
        addresses: Vec::new(),
        tires: Vec::new(),
        sensors: Vec::new(),
        fitted: Vec::new(),
    };
    let mut measured = None;
    for ((heading, column), cell) in columns.iter().zip(cells) {
        let text = cell.text();
        let Some(column) = column.as_ref().filter(|_| !text.is_empty()) else { continue };
        let value = written(text.clone(), heading);
        match column {
            Column::Number => found.number = value,
            Column::Type => found.vehicle = value,
            Column::Pool => found.pool = Some(value),
            Column::Addresses => found.addresses.extend(
                text.split([' ', ',', ';'])
                    .filter(|part| !part.is_empty())
                    .map(|part| written(part.to_owned(), heading)),
            ),
            Column::Tire(position) => {
                found.tires.push((written(position.clone(), heading), value));
            }
            Column::Sensor(position) => {
                let there = matches!(text.to_lowercase().as_str(), "yes" | "x");
                let verified = (!there).then_some(value);
                found.sensors.push((written(position.clone(), heading), verified));
            }
            Column::Fitted(what, channel) => found.fitted.push(FittedEntry {
                what: *what,
                channel: channel.as_ref().map(|name| written(name.clone(), heading)),
                share_pct: value,
                date: None,
            }),
            Column::FittedDay => measured = Some(value),
        }
    }
    for fitted in &mut found.fitted {
        fitted.date.clone_from(&measured);
    }
    found
}
