//! The frames that every fixture holds, as `fixtures/make.py` wrote them down.

use std::path::Path;

use logs::{CanId, Data, Frame, Interface, Timestamp};

const START_NS: i64 = 1_700_000_000_000_000_000;

/// Bytes of a fixture.
pub fn fixture(name: &str) -> Vec<u8> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures").join(name);
    std::fs::read(path).unwrap()
}

/// The frames that were written.
pub fn frames() -> Vec<Frame> {
    csv::Reader::from_reader(&fixture("frames.csv")[..])
        .into_records()
        .map(|record| {
            let record = record.unwrap();
            let ms: i64 = record[0].parse().unwrap();
            let number = u32::from_str_radix(&record[2], 16).unwrap();
            let extended = &record[3] == "1";
            let id = if extended { CanId::extended(number) } else { CanId::standard(number) };
            let digits = &record[4];
            let byte = |at: usize| u8::from_str_radix(&digits[at..at + 2], 16).unwrap();
            let bytes: Vec<u8> = (0..digits.len()).step_by(2).map(byte).collect();
            Frame {
                time: Timestamp::from_ns(START_NS + ms * 1_000_000),
                interface: Interface(record[1].parse().unwrap()),
                id: id.unwrap(),
                data: Data::new(&bytes).unwrap(),
            }
        })
        .collect()
}
