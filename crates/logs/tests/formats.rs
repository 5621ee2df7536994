//! Each format against files of another writer: python-can 4.6.1 wrote the same frames into all of them
//! (`fixtures/make.py`), and `fixtures/frames.csv` holds what it wrote.
#![cfg(feature = "files")]

use logs::read::{Batch, Frames, Loss, asc::Asc, blf::Blf, candump, pcap::Capture};
use logs::{Frame, Interface};

mod written;

use written::{fixture, frames as written};

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

/// A capture of the next generation by its layout: a section, two interfaces, one in microseconds
/// and one in nanoseconds (option 9), and a packet a frame.
fn next_generation() -> Vec<u8> {
    let block = |kind: u32, body: &[u8]| {
        let length = u32::try_from(12 + body.len()).unwrap().to_le_bytes();
        [&kind.to_le_bytes()[..], &length, body, &length].concat()
    };
    let section = [&0x1A2B_3C4D_u32.to_le_bytes()[..], &[1, 0, 0, 0], &[0xFF; 8]].concat();
    let interface = |digits: u8| {
        let options = [9, 0, 1, 0, digits, 0, 0, 0, 0, 0, 0, 0];
        [&227_u16.to_le_bytes()[..], &[0, 0], &0xFFFF_u32.to_le_bytes(), &options].concat()
    };
    let mut bytes = block(0x0A0D_0D0A, &section);
    bytes.extend(block(1, &interface(6)));
    bytes.extend(block(1, &interface(9)));
    for frame in written() {
        let us = u64::try_from(frame.time.as_us()).unwrap();
        let ticks = if frame.interface == Interface(0) { us } else { us * 1000 };
        let high = u32::try_from(ticks >> 32).unwrap();
        let low = u32::try_from(ticks & 0xFFFF_FFFF).unwrap();
        let flag = if frame.id.is_extended() { 0x8000_0000 } else { 0 };
        let mut packet = (frame.id.number() | flag).to_be_bytes().to_vec();
        packet.extend([u8::try_from(frame.data.length()).unwrap(), 0, 0, 0]);
        packet.extend(frame.data.bytes());
        let length = u32::try_from(packet.len()).unwrap();
        packet.resize(packet.len().next_multiple_of(4), 0);
        let head = [u32::from(frame.interface.0), high, low, length, length];
        let mut body: Vec<u8> = head.iter().flat_map(|number| number.to_le_bytes()).collect();
        body.extend(packet);
        bytes.extend(block(6, &body));
    }
    bytes
}

#[test]
fn a_capture_of_two_interfaces_keeps_them_and_their_clocks_apart() {
    let read = all(Capture::open("test", std::io::Cursor::new(next_generation())).unwrap());
    assert_same(&read);
    let buses: std::collections::BTreeSet<_> =
        read.frames.iter().map(|frame| frame.interface).collect();
    assert_eq!(buses.len(), 2);
}

#[test]
fn a_capture_of_the_next_generation_survives_ten_thousand_flipped_bytes() {
    let whole = next_generation();
    let mut kept = 0;
    let mut chance = 0x9E37_79B9_7F4A_7C15_u64;
    for _ in 0..10_000 {
        let mut bytes = whole[..2000].to_vec();
        for _ in 0..3 {
            chance ^= chance << 13;
            chance ^= chance >> 7;
            chance ^= chance << 17;
            let at = usize::try_from(chance % bytes.len() as u64).unwrap();
            bytes[at] = u8::try_from(chance >> 56).unwrap();
        }
        if logs::read::read_bytes(bytes).is_ok_and(|told| told.frames > 0) {
            kept += 1;
        }
    }
    assert!(kept > 1000, "only {kept}");
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
