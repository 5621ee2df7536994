//! Tables of frames: comma, semicolon or tab between values, and a mapping that says which column holds
//! what.

use std::io::Read;

use super::Frames;
use super::batch::{Batch, Interfaces};
use super::clock::date_and_time;
use super::error::ReadError;
use super::hex;
use super::losses::{Loss, Place};
use super::open::Format;
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};

/// Frames of a batch.
const MOST: usize = 1 << 16;

/// Which column holds what, by its heading.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Columns {
    /// Seconds with a fraction, or a date and a time of day.
    pub time: String,
    /// Identifier in hexadecimal digits, with or without 0x.
    pub id: String,
    /// Bytes in hexadecimal digits; blanks do not matter.
    pub data: String,
    /// Whether the identifier has 29 bits: 1, true or x. Without it, more than 11 bits mean 29.
    pub extended: Option<String>,
    /// Name of the bus.
    pub bus: Option<String>,
}

impl Columns {
    /// Reads `time=Timestamp,id=ID,data=Data`; `extended=` and `bus=` may follow.
    ///
    /// ```
    /// use logs::read::table::Columns;
    /// let columns = Columns::parse("time=T,id=Id,data=Bytes,bus=Channel")?;
    /// assert_eq!(columns.bus.as_deref(), Some("Channel"));
    /// assert!(Columns::parse("time=T").is_err());
    /// # Ok::<(), String>(())
    /// ```
    ///
    /// # Errors
    /// Where a part is unknown, or time, id or data is missing.
    pub fn parse(text: &str) -> Result<Self, String> {
        let mut columns = Self::default();
        for part in text.split(',') {
            let (what, heading) = part.split_once('=').unwrap_or((part, ""));
            let heading = heading.trim().to_owned();
            match what.trim() {
                "time" => columns.time = heading,
                "id" => columns.id = heading,
                "data" => columns.data = heading,
                "extended" => columns.extended = Some(heading),
                "bus" => columns.bus = Some(heading),
                other => return Err(format!("'{other}' is none of time, id, data, extended, bus")),
            }
        }
        if [&columns.time, &columns.id, &columns.data].iter().any(|heading| heading.is_empty()) {
            return Err("name the columns of time, id and data".to_owned());
        }
        Ok(columns)
    }
}

/// Places of the columns.
struct Places {
    time: usize,
    id: usize,
    data: usize,
    extended: Option<usize>,
    bus: Option<usize>,
}

/// Frames of a table.
pub struct Table<R> {
    reader: csv::Reader<R>,
    places: Places,
    interfaces: Interfaces,
    name: String,
}

impl<R: Read + Send> Table<R> {
    /// A table; `head` is its beginning, for the mark between values.
    ///
    /// # Errors
    /// Where there is no mapping, or it names a column that is not there.
    pub fn open(
        name: &str,
        head: &[u8],
        input: R,
        columns: Option<&Columns>,
    ) -> Result<Self, ReadError> {
        let first = head.split(|byte| *byte == b'\n').next().unwrap_or_default();
        let count = |mark: u8| memchr::memchr_iter(mark, first).count();
        let mark = [b',', b';', b'\t'].into_iter().max_by_key(|mark| count(*mark)).unwrap_or(b',');
        let mut reader =
            csv::ReaderBuilder::new().delimiter(mark).flexible(true).from_reader(input);
        let broken = |problem: String| ReadError::format(name, Format::Csv, problem);
        let headings = reader.byte_headers().map_err(|error| broken(error.to_string()))?.clone();
        let named = || {
            let names =
                headings.iter().map(|heading| String::from_utf8_lossy(heading).into_owned());
            names.collect::<Vec<_>>().join(", ")
        };
        let Some(columns) = columns else {
            return Err(ReadError::NoMapping { name: name.to_owned(), columns: named() });
        };
        let find = |wanted: &str| {
            let same =
                |heading: &[u8]| heading.trim_ascii().eq_ignore_ascii_case(wanted.as_bytes());
            headings
                .iter()
                .position(same)
                .ok_or_else(|| broken(format!("it has no column '{wanted}'; it has: {}", named())))
        };
        let places = Places {
            time: find(&columns.time)?,
            id: find(&columns.id)?,
            data: find(&columns.data)?,
            extended: columns.extended.as_deref().map(find).transpose()?,
            bus: columns.bus.as_deref().map(find).transpose()?,
        };
        Ok(Self { reader, places, interfaces: Interfaces::default(), name: name.to_owned() })
    }

    fn frame(&mut self, record: &csv::ByteRecord) -> Result<Frame, Loss> {
        let get = |at: usize| record.get(at).map(<[u8]>::trim_ascii).ok_or(Loss::Truncated);
        let time = time_of_text(get(self.places.time)?).ok_or(Loss::Malformed)?;
        let digits = get(self.places.id)?;
        let number = number_of_digits(digits).ok_or(Loss::Malformed)?;
        let extended = match self.places.extended {
            Some(at) => is_yes(get(at)?),
            None => number > 0x7FF,
        };
        let id = if extended { CanId::extended(number) } else { CanId::standard(number) };
        let data = data_of_digits(get(self.places.data)?).ok_or(Loss::Malformed)?;
        let bus = match self.places.bus {
            Some(at) => get(at)?.to_vec(),
            None => b"can0".to_vec(),
        };
        Ok(Frame {
            time,
            interface: self.interfaces.number(&bus).unwrap_or(Interface(254)),
            id: id.ok_or(Loss::Malformed)?,
            data,
        })
    }
}

/// Hexadecimal digits, with or without 0x.
pub(super) fn number_of_digits(digits: &[u8]) -> Option<u32> {
    hex::number(digits.strip_prefix(b"0x").or(digits.strip_prefix(b"0X")).unwrap_or(digits))
}

/// Whether a word says yes.
pub(super) const fn is_yes(word: &[u8]) -> bool {
    matches!(word, b"1" | b"x" | b"X" | b"true" | b"True" | b"TRUE")
}

/// Pairs of hexadecimal digits, blanks among them or not.
pub(super) fn data_of_digits(text: &[u8]) -> Option<Data> {
    let digits = text.iter().filter(|digit| !digit.is_ascii_whitespace());
    let digits: Vec<u8> = digits.copied().take(17).collect();
    if !digits.len().is_multiple_of(2) || digits.len() > 16 {
        return None;
    }
    let pairs = digits.chunks_exact(2).map(|pair| u8::try_from(hex::number(pair)?).ok());
    Data::new(&pairs.collect::<Option<Vec<u8>>>()?)
}

/// Seconds, or a date and a time of day parted by a blank or a T.
pub(super) fn time_of_text(text: &[u8]) -> Option<Timestamp> {
    if let Some(ns) = hex::seconds(text) {
        return Some(Timestamp::from_ns(ns));
    }
    let at = text.iter().position(|byte| matches!(byte, b' ' | b'T'))?;
    let clock = text[at + 1..].trim_ascii();
    date_and_time(&text[..at], clock.strip_suffix(b"Z").unwrap_or(clock))
}

impl<R: Read + Send> Frames for Table<R> {
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError> {
        let mut batch = Batch::default();
        let mut record = csv::ByteRecord::new();
        let mut any = false;
        while batch.frames.len() < MOST {
            match self.reader.read_byte_record(&mut record) {
                Ok(true) => {}
                Ok(false) => break,
                Err(error) => match error.into_kind() {
                    csv::ErrorKind::Io(error) => return Err(ReadError::io(&self.name, error)),
                    other => {
                        let problem = format!("{other:?}");
                        return Err(ReadError::format(&self.name, Format::Csv, problem));
                    }
                },
            }
            any = true;
            match self.frame(&record) {
                Ok(frame) => batch.frames.push(frame),
                Err(loss) => {
                    // Lines are those of the file: a batch starts no count of its own.
                    let line = record.position().map_or(0, csv::Position::line);
                    batch.losses.list(loss, Place::Line(line), record.as_slice());
                }
            }
        }
        batch.interfaces = self.interfaces.clone();
        Ok(any.then_some(batch))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mapping_reads_what_it_names_and_lists_what_does_not_fit() {
        let text = b"When;Bus;Ident;Bytes\n1700000000.5;can1;0x18FEF433;21 97\n\
            2023-11-14T22:13:20Z;can0;123;\nx;can0;123;00\n1;can0;123;0\n";
        let columns = Columns::parse("time=when,id=ident,data=bytes,bus=bus").unwrap();
        let mut table = Table::open("test", text, &text[..], Some(&columns)).unwrap();
        let batch = table.next_batch().unwrap().unwrap();
        assert_eq!(batch.frames.len(), 2);
        assert_eq!(batch.frames[0].id.to_string(), "18FEF433");
        assert_eq!(batch.frames[0].data.bytes(), [0x21, 0x97]);
        assert_eq!(batch.frames[1].time.as_us(), 1_700_000_000_000_000);
        assert!(!batch.frames[1].id.is_extended());
        let places: Vec<_> = batch.losses.listed().iter().map(|listed| listed.place).collect();
        assert_eq!(places, [Place::Line(4), Place::Line(5)]);
    }

    #[test]
    fn without_a_mapping_the_columns_are_told() {
        let text = b"a,b\n1,2\n";
        let error = Table::open("t.csv", text, &text[..], None).err().unwrap().to_string();
        assert!(error.contains("a, b"), "{error}");
    }
}
