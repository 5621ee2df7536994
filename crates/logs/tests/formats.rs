//! Each format against files of another writer: python-can 4.6.1 wrote the same frames into all of them
//! (`fixtures/make.py`), and `fixtures/frames.csv` holds what it wrote.
#![cfg(feature = "files")]

use std::path::Path;

use logs::read::{Batch, Frames, Loss, asc::Asc, blf::Blf, candump, pcap::Capture};
use logs::{CanId, Data, Frame, Interface, Timestamp};

const START_NS: i64 = 1_700_000_000_000_000_000;

fn fixture(name: &str) -> Vec<u8> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures").join(name);
    std::fs::read(path).unwrap()
}

/// The frames that were written.
fn written() -> Vec<Frame> {
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

fn all(mut frames: impl Frames) -> Batch {
    let mut whole = Batch::default();
    while let Some(batch) = frames.next_batch().unwrap() {
        whole.frames.extend(batch.frames);
        whole.losses.append(batch.losses, whole.lines);
        whole.interfaces = batch.interfaces;
    }
    whole
}

fn assert_same(read: &Batch) {
    assert_eq!(read.losses.bad_records(), 0, "{:?}", read.losses);
    let written = written();
    assert_eq!(read.frames.len(), written.len());
    for (read, written) in read.frames.iter().zip(&written) {
        // Writers keep microseconds or worse; python's times are doubles.
        assert!((read.time.ns_since(written.time)).abs() <= 1_000, "{read:?} for {written:?}");
        assert_eq!(
            (read.interface, read.id, read.data),
            (written.interface, written.id, written.data)
        );
    }
}

#[test]
fn measured_against_python_can_candump() {
    assert_same(&candump::read_block(&fixture("frames.log"), logs::read::Interfaces::default()));
}

#[test]
fn measured_against_python_can_asc() {
    assert_same(&all(Asc::of("frames.asc", &fixture("frames.asc")[..])));
}

#[test]
fn measured_against_python_can_blf() {
    let bytes = std::io::Cursor::new(fixture("frames.blf"));
    assert_same(&all(Blf::open("frames.blf", bytes).unwrap()));
}

/// A classic capture of the written frames, by the layout of link type 227.
fn capture(big_endian_header: bool) -> Vec<u8> {
    let word = |number: u32| {
        if big_endian_header { number.to_be_bytes() } else { number.to_le_bytes() }
    };
    let half = |number: u16| {
        if big_endian_header { number.to_be_bytes() } else { number.to_le_bytes() }
    };
    let mut bytes = word(0xA1B2_C3D4).to_vec();
    bytes.extend([half(2), half(4)].concat());
    bytes.extend([word(0), word(0), word(0xFFFF), word(227)].concat());
    for frame in written() {
        let us = frame.time.as_us();
        let length = u32::try_from(frame.data.length()).unwrap();
        bytes.extend(word(u32::try_from(us / 1_000_000).unwrap()));
        bytes.extend(word(u32::try_from(us % 1_000_000).unwrap()));
        bytes.extend([word(8 + length), word(8 + length)].concat());
        let flag = if frame.id.is_extended() { 0x8000_0000 } else { 0 };
        bytes.extend((frame.id.number() | flag).to_be_bytes());
        bytes.extend([u8::try_from(length).unwrap(), 0, 0, 0]);
        bytes.extend(frame.data.bytes());
    }
    bytes
}

#[test]
fn captures_of_either_byte_order_give_the_frames_back() {
    for big in [false, true] {
        let read = all(Capture::open("test", std::io::Cursor::new(capture(big))).unwrap());
        // A classic capture knows one bus.
        let one_bus = Batch {
            frames: read
                .frames
                .iter()
                .zip(written())
                .map(|(frame, written)| Frame { interface: written.interface, ..*frame })
                .collect(),
            ..read
        };
        assert_same(&one_bus);
    }
}

#[test]
fn a_capture_cut_off_keeps_what_was_whole() {
    let mut bytes = capture(false);
    bytes.truncate(bytes.len() - 5);
    let read = all(Capture::open("test", std::io::Cursor::new(bytes)).unwrap());
    assert_eq!((read.frames.len(), read.losses.of(Loss::Truncated)), (199, 1));
}

#[test]
fn a_binary_log_cut_off_says_so() {
    let mut bytes = fixture("frames.blf");
    bytes.truncate(bytes.len() - 100);
    let read = all(Blf::open("test", std::io::Cursor::new(bytes)).unwrap());
    assert!(read.losses.bad_records() > 0);
}
