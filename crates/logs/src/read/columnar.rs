//! Frames in the columns of a Parquet file, with a mapping that says which column holds what.
//!
//! Every engine that writes Parquet has its own types for the same thing, so a column is taken by what it
//! can mean: a time as a time stamp, as seconds or as text, an identifier as a number or as hexadecimal digits,
//! data as bytes or as digits.

use std::io::{self, BufReader, Read};
use std::sync::{Arc, Mutex};

use arrow_array::cast::AsArray;
use arrow_array::types::{
    Float32Type, Float64Type, Int8Type, Int16Type, Int32Type, Int64Type, TimestampMicrosecondType,
    TimestampMillisecondType, TimestampNanosecondType, UInt8Type, UInt16Type, UInt32Type,
    UInt64Type,
};
use arrow_array::{Array, ArrayRef, RecordBatch};
use arrow_schema::{DataType, TimeUnit};
use bytes::Bytes;
use parquet::arrow::ProjectionMask;
use parquet::arrow::arrow_reader::{
    ArrowReaderOptions, ParquetRecordBatchReader, ParquetRecordBatchReaderBuilder,
};
use parquet::basic::Compression;
use parquet::errors::{ParquetError, Result as ParquetResult};
use parquet::file::metadata::{ColumnChunkMetaData, RowGroupMetaData};
use parquet::file::reader::{ChunkReader, Length};

use super::Frames;
use super::batch::{Batch, Interfaces};
use super::digest::Sought;
use super::error::ReadError;
use super::guarded::guarded;
use super::losses::{Loss, Place};
use super::open::Format;
use super::table::{Columns, data_of_digits, is_yes, number_of_digits, time_of_text};
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};

/// Rows of a batch.
const ROWS: usize = 1 << 15;

/// Frames of a Parquet file.
pub struct Columnar {
    file: Chunks,
    /// `None` once there is nothing more to read.
    reader: Option<ParquetRecordBatchReader>,
    columns: Columns,
    interfaces: Interfaces,
    rows: u64,
}

impl Columnar {
    /// A file with its mapping.
    ///
    /// # Errors
    /// Where it does not open as Parquet, there is no mapping, or it names a column that is not there or
    /// that has no type for what it is to hold.
    pub(super) fn open(
        name: &str,
        file: Sought,
        columns: Option<&Columns>,
    ) -> Result<Self, ReadError> {
        let broken = |problem: String| ReadError::format(name, Format::Parquet, problem);
        let file = Chunks(Arc::new(Mutex::new(file)));
        // What another engine noted of its own types is left alone: the plain types are fewer.
        let options = ArrowReaderOptions::new().with_skip_arrow_metadata(true);
        let opened = guarded(|| {
            ParquetRecordBatchReaderBuilder::try_new_with_options(file.clone(), options)
        });
        let builder = opened.map_err(|problem| broken(format!("it does not open: {problem}")))?;
        let groups = builder.metadata().row_groups().iter();
        let parts = groups.flat_map(RowGroupMetaData::columns);
        let mut packings = parts.map(ColumnChunkMetaData::compression);
        let read = [Compression::UNCOMPRESSED, Compression::SNAPPY];
        if let Some(other) = packings.find(|packing| !read.contains(packing)) {
            return Err(broken(format!(
                "it is packed by {other}; write it with snappy or unpacked"
            )));
        }
        let schema = Arc::clone(builder.schema());
        let names = || {
            let names = schema.fields().iter().map(|field| field.name().clone());
            names.collect::<Vec<_>>().join(", ")
        };
        let Some(wanted) = columns else {
            return Err(ReadError::NoMapping { name: name.to_owned(), columns: names() });
        };
        let find = |heading: &String, what: &str, does: fn(&DataType) -> bool| {
            let same = |known: &str| known.trim().eq_ignore_ascii_case(heading);
            let field =
                schema.fields().iter().find(|field| same(field.name())).ok_or_else(|| {
                    broken(format!("it has no column '{heading}'; it has: {}", names()))
                })?;
            let kind = field.data_type();
            if does(kind) {
                return Ok(field.name().clone());
            }
            Err(broken(format!("column '{heading}' of type {kind} cannot be {what}")))
        };
        let columns = Columns {
            time: find(
                &wanted.time,
                "a time; store a time stamp, seconds as a floating number, or text",
                is_time,
            )?,
            id: find(
                &wanted.id,
                "an identifier; store a whole number or hexadecimal digits",
                is_id,
            )?,
            data: find(&wanted.data, "data; store bytes or hexadecimal digits", is_text_or_bytes)?,
            extended: wanted
                .extended
                .as_ref()
                .map(|heading| find(heading, "yes or no", is_flag))
                .transpose()?,
            bus: wanted
                .bus
                .as_ref()
                .map(|heading| find(heading, "the name of a bus", is_id))
                .transpose()?,
        };
        let used = [Some(&columns.time), Some(&columns.id), Some(&columns.data)];
        let used = used.into_iter().chain([columns.extended.as_ref(), columns.bus.as_ref()]);
        let roots: Vec<usize> =
            used.flatten().filter_map(|name| schema.index_of(name).ok()).collect();
        let mask = ProjectionMask::roots(builder.parquet_schema(), roots);
        let reader = guarded(|| builder.with_projection(mask).with_batch_size(ROWS).build())
            .map_err(|problem| broken(format!("its columns do not open: {problem}")))?;
        let interfaces = Interfaces::default();
        Ok(Self { file, reader: Some(reader), columns, interfaces, rows: 0 })
    }

    fn take(&mut self, rows: &RecordBatch, batch: &mut Batch) -> Option<()> {
        let column = |name: &str| rows.column_by_name(name);
        let time = column(&self.columns.time)?;
        let id = column(&self.columns.id)?;
        let data = column(&self.columns.data)?;
        let extended = self.columns.extended.as_deref().map(column);
        let bus = self.columns.bus.as_deref().map(column);
        for row in 0..rows.num_rows() {
            let frame = || {
                let number = id_at(id, row)?;
                let long = match extended {
                    Some(flags) => flag_at(flags?, row)?,
                    None => number > 0x7FF,
                };
                let id = if long { CanId::extended(number) } else { CanId::standard(number) };
                let name = match bus {
                    Some(names) => name_at(names?, row)?,
                    None => b"can0".to_vec(),
                };
                Some((time_at(time, row)?, id?, data_at(data, row)?, name))
            };
            if let Some((time, id, data, name)) = frame() {
                let interface = self.interfaces.number(&name).unwrap_or(Interface(254));
                batch.frames.push(Frame { time, interface, id, data });
            } else {
                let place = Place::Line(self.rows + row as u64 + 1);
                batch.losses.list(Loss::Malformed, place, b"a row that makes no frame");
            }
        }
        self.rows += rows.num_rows() as u64;
        Some(())
    }
}

impl Frames for Columnar {
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError> {
        let Some(reader) = &mut self.reader else { return Ok(None) };
        let mut batch = Batch::default();
        match guarded(|| reader.next().transpose()) {
            Ok(Some(rows)) => {
                if self.take(&rows, &mut batch).is_none() {
                    batch.losses.count(Loss::Corrupt);
                }
            }
            Ok(None) => self.reader = None,
            Err(problem) => {
                let place = Place::Line(self.rows + 1);
                batch.losses.list(Loss::Corrupt, place, problem.as_bytes());
                self.reader = None;
            }
        }
        if self.reader.is_none()
            && let Ok(mut file) = self.file.0.lock()
        {
            file.finish().map_err(|error| ReadError::io("the end of the file", error))?;
        }
        batch.interfaces = self.interfaces.clone();
        Ok(Some(batch))
    }
}

const fn is_text_or_bytes(kind: &DataType) -> bool {
    matches!(kind, DataType::Utf8 | DataType::Binary | DataType::FixedSizeBinary(_))
}

fn is_id(kind: &DataType) -> bool {
    kind.is_integer() || matches!(kind, DataType::Utf8 | DataType::Binary)
}

fn is_time(kind: &DataType) -> bool {
    kind.is_floating() && !matches!(kind, DataType::Float16)
        || matches!(kind, DataType::Timestamp(_, _) | DataType::Utf8 | DataType::Binary)
}

fn is_flag(kind: &DataType) -> bool {
    matches!(kind, DataType::Boolean) || is_id(kind)
}

/// Text, or bytes that may be text.
fn text_at(column: &ArrayRef, row: usize) -> Option<&[u8]> {
    if column.is_null(row) {
        return None;
    }
    match column.data_type() {
        DataType::Utf8 => Some(column.as_string::<i32>().value(row).as_bytes()),
        DataType::Binary => Some(column.as_binary::<i32>().value(row)),
        DataType::FixedSizeBinary(_) => Some(column.as_fixed_size_binary().value(row)),
        _ => None,
    }
}

/// A whole number that is not negative.
fn whole_at(column: &ArrayRef, row: usize) -> Option<u64> {
    if column.is_null(row) {
        return None;
    }
    let number = match column.data_type() {
        DataType::UInt64 => return Some(column.as_primitive::<UInt64Type>().value(row)),
        DataType::Int8 => i64::from(column.as_primitive::<Int8Type>().value(row)),
        DataType::Int16 => i64::from(column.as_primitive::<Int16Type>().value(row)),
        DataType::Int32 => i64::from(column.as_primitive::<Int32Type>().value(row)),
        DataType::Int64 => column.as_primitive::<Int64Type>().value(row),
        DataType::UInt8 => i64::from(column.as_primitive::<UInt8Type>().value(row)),
        DataType::UInt16 => i64::from(column.as_primitive::<UInt16Type>().value(row)),
        DataType::UInt32 => i64::from(column.as_primitive::<UInt32Type>().value(row)),
        _ => return None,
    };
    u64::try_from(number).ok()
}

fn id_at(column: &ArrayRef, row: usize) -> Option<u32> {
    if column.data_type().is_integer() {
        return whole_at(column, row).and_then(|number| u32::try_from(number).ok());
    }
    number_of_digits(text_at(column, row)?.trim_ascii())
}

fn flag_at(column: &ArrayRef, row: usize) -> Option<bool> {
    match column.data_type() {
        DataType::Boolean => column.is_valid(row).then(|| column.as_boolean().value(row)),
        kind if kind.is_integer() => whole_at(column, row).map(|number| number != 0),
        _ => text_at(column, row).map(|text| is_yes(text.trim_ascii())),
    }
}

fn name_at(column: &ArrayRef, row: usize) -> Option<Vec<u8>> {
    match whole_at(column, row) {
        Some(number) => Some(number.to_string().into_bytes()),
        None => text_at(column, row).map(<[u8]>::to_vec),
    }
}

/// Bytes as they are; in a column of text they are digits.
fn data_at(column: &ArrayRef, row: usize) -> Option<Data> {
    let bytes = text_at(column, row)?;
    if matches!(column.data_type(), DataType::Utf8) {
        data_of_digits(bytes)
    } else {
        Data::new(bytes)
    }
}

fn time_at(column: &ArrayRef, row: usize) -> Option<Timestamp> {
    if column.is_null(row) {
        return None;
    }
    let ns = match column.data_type() {
        DataType::Timestamp(TimeUnit::Nanosecond, _) => {
            column.as_primitive::<TimestampNanosecondType>().value(row)
        }
        DataType::Timestamp(TimeUnit::Microsecond, _) => {
            column.as_primitive::<TimestampMicrosecondType>().value(row).checked_mul(1_000)?
        }
        DataType::Timestamp(TimeUnit::Millisecond, _) => {
            column.as_primitive::<TimestampMillisecondType>().value(row).checked_mul(1_000_000)?
        }
        DataType::Float64 => nanoseconds(column.as_primitive::<Float64Type>().value(row))?,
        DataType::Float32 => {
            nanoseconds(f64::from(column.as_primitive::<Float32Type>().value(row)))?
        }
        _ => return time_of_text(text_at(column, row)?.trim_ascii()),
    };
    Some(Timestamp::from_ns(ns))
}

/// Seconds of a floating number in nanoseconds, whole and fraction apart for the sake of the digits.
#[allow(clippy::cast_possible_truncation, reason = "the range is looked at")]
fn nanoseconds(seconds: f64) -> Option<i64> {
    const MOST_S: f64 = 9.0e9;
    if !(-MOST_S..=MOST_S).contains(&seconds) {
        return None;
    }
    let fraction = ((seconds - seconds.floor()) * 1e9).round() as i64;
    (seconds.floor() as i64).checked_mul(1_000_000_000)?.checked_add(fraction)
}

/// The bytes of the file, read here and there by a library that wants to share them.
#[derive(Clone)]
struct Chunks(Arc<Mutex<Sought>>);

impl Chunks {
    fn bytes_at(&self, at: u64, many: usize) -> io::Result<Vec<u8>> {
        let mut file = self.0.lock().map_err(|_| io::Error::other("the file is given up"))?;
        file.bytes_at(at, many)
    }
}

impl Length for Chunks {
    fn len(&self) -> u64 {
        self.0.lock().map_or(0, |file| file.length())
    }
}

impl ChunkReader for Chunks {
    type T = BufReader<Onward>;

    fn get_read(&self, start: u64) -> ParquetResult<Self::T> {
        Ok(BufReader::new(Onward { file: self.clone(), at: start }))
    }

    fn get_bytes(&self, start: u64, length: usize) -> ParquetResult<Bytes> {
        let bytes = self.bytes_at(start, length)?;
        if bytes.len() < length {
            return Err(ParquetError::EOF(format!(
                "the file ends within {length} bytes from {start} on"
            )));
        }
        Ok(bytes.into())
    }
}

/// The bytes from a place on.
struct Onward {
    file: Chunks,
    at: u64,
}

impl Read for Onward {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        let bytes = self.file.bytes_at(self.at, buffer.len())?;
        buffer[..bytes.len()].copy_from_slice(&bytes);
        self.at += bytes.len() as u64;
        Ok(bytes.len())
    }
}
