//! Native samples: a file a group and day, each row one message with its true time.

use std::path::Path;
use std::sync::Arc;

use arrow_array::{ArrayRef, TimestampMicrosecondArray, UInt8Array};
use arrow_schema::{DataType, Field, TimeUnit};

use super::column::{fields, numbers, qualities, raw_of_messages, raw_of_words};
use super::file::Target;
use super::import::ImportError;
use crate::frame::Timestamp;
use crate::read::clock::day_of;
use crate::read::{Lane, LongRow, Row};
use crate::series::Quality;
use crate::signal::Group;

/// Seconds of a day.
pub const DAY_S: i64 = 86_400;
/// Most days of a group; time stamps that jump over more are not of one truck's logs.
pub const MOST_DAYS: usize = 400;

/// The column of time, first in every file.
pub fn time_field() -> Field {
    Field::new("time", DataType::Timestamp(TimeUnit::Microsecond, Some("UTC".into())), false)
}

/// The array of a column of time.
pub fn times(times: Vec<i64>) -> ArrayRef {
    Arc::new(TimestampMicrosecondArray::from(times).with_timezone("UTC"))
}

/// Files of one group, one a day.
#[derive(Default)]
pub struct Native {
    days: Vec<(i64, Target)>,
    /// Rows written.
    pub rows: u64,
}

impl Native {
    /// Writes the rows of a stretch.
    pub fn take(&mut self, folder: &Path, group: &Group, lane: &Lane) -> Result<(), ImportError> {
        let mut rest = &lane.rows[..];
        while let Some(first) = rest.first() {
            let day = day_number(first.time);
            let run = rest.iter().take_while(|row| day_number(row.time) == day).count();
            let (part, after) = rest.split_at(run);
            self.write_rows(folder, group, day, part)?;
            rest = after;
        }
        let mut rest = &lane.long[..];
        while let Some(first) = rest.first() {
            let day = day_number(first.time);
            let run = rest.iter().take_while(|row| day_number(row.time) == day).count();
            let (part, after) = rest.split_at(run);
            self.write_messages(folder, group, day, part)?;
            rest = after;
        }
        Ok(())
    }

    /// The files, finished by the caller.
    pub fn into_files(self) -> Vec<Target> {
        self.days.into_iter().map(|(_, file)| file).collect()
    }

    fn write_rows(
        &mut self,
        folder: &Path,
        group: &Group,
        day: i64,
        rows: &[Row],
    ) -> Result<(), ImportError> {
        let mut columns = vec![
            times(rows.iter().map(|row| row.time.as_us()).collect()),
            bytes(rows.iter().map(|row| row.source.0)),
            bytes(rows.iter().map(|row| row.interface.0)),
        ];
        for signal in group.signals.iter() {
            let (raws, worth) = raw_of_words(signal, rows.iter().map(|row| (row.word, row.length)));
            columns.push(numbers(signal, &raws, |at| worth[at] == Quality::Value.byte()));
            columns.push(qualities(worth));
        }
        self.rows += rows.len() as u64;
        self.file(folder, group, day)?.write(columns)
    }

    fn write_messages(
        &mut self,
        folder: &Path,
        group: &Group,
        day: i64,
        rows: &[LongRow],
    ) -> Result<(), ImportError> {
        let mut columns = vec![
            times(rows.iter().map(|row| row.time.as_us()).collect()),
            bytes(rows.iter().map(|row| row.source.0)),
            bytes(rows.iter().map(|row| row.interface.0)),
        ];
        for signal in group.signals.iter() {
            let (raws, worth) = raw_of_messages(signal, rows.iter().map(|row| row.data.as_slice()));
            columns.push(numbers(signal, &raws, |at| worth[at] == Quality::Value.byte()));
            columns.push(qualities(worth));
        }
        self.rows += rows.len() as u64;
        self.file(folder, group, day)?.write(columns)
    }

    fn file(&mut self, folder: &Path, group: &Group, day: i64) -> Result<&mut Target, ImportError> {
        let at = match self.days.iter().position(|(known, _)| *known == day) {
            Some(at) => at,
            None if self.days.len() == MOST_DAYS => return Err(ImportError::TooManyDays),
            None => {
                // Rows of other days are not held in memory any longer.
                for (_, file) in &mut self.days {
                    file.flush()?;
                }
                let mut all = vec![
                    time_field(),
                    Field::new("source_address", DataType::UInt8, false),
                    Field::new("interface", DataType::UInt8, false),
                ];
                all.extend(group.signals.iter().flat_map(|signal| fields(&signal.name, signal)));
                let name = group.name.replace(|c: char| !c.is_alphanumeric(), "_");
                let name = format!("{}_{name}", group.pgn);
                let date = day_of(Timestamp::from_us(day * DAY_S * 1_000_000));
                let path = folder.join("native").join(name).join(format!("{date}.parquet"));
                self.days.push((day, Target::create(&path, all)?));
                self.days.len() - 1
            }
        };
        Ok(&mut self.days[at].1)
    }
}

/// Day since 1970 that a time lies in.
pub const fn day_number(time: Timestamp) -> i64 {
    time.second().div_euclid(DAY_S)
}

fn bytes(bytes: impl Iterator<Item = u8>) -> ArrayRef {
    Arc::new(UInt8Array::from_iter_values(bytes))
}
