//! Measurement data files against their writers: python-can 4.6.1 and asammdf 8.8.28 wrote the frames of
//! `fixtures/frames.csv`, or read back what was written by the layout (`fixtures/make_mdf.py`).
#![cfg(feature = "files")]

use logs::Frame;
use logs::read::mdf::Mdf;
use logs::read::{Batch, Format, Frames, Input, Loss, Place, read_bytes};
use sha2::{Digest, Sha256};

mod written;

use written::{fixture, frames as written};

fn all(bytes: Vec<u8>) -> Batch {
    let mut frames = Mdf::open("test", Input::memory(bytes)).unwrap();
    let mut whole = Batch::default();
    while let Some(batch) = frames.next_batch().unwrap() {
        whole.frames.extend(batch.frames);
        whole.losses.append(batch.losses, whole.lines);
        whole.interfaces = batch.interfaces;
    }
    whole
}

fn assert_same(read: &[Frame], written: &[Frame]) {
    assert_eq!(read.len(), written.len());
    for (read, written) in read.iter().zip(written) {
        // Times are doubles of seconds.
        assert!((read.time.ns_since(written.time)).abs() <= 1_000, "{read:?} for {written:?}");
        assert_eq!(
            (read.interface, read.id, read.data),
            (written.interface, written.id, written.data)
        );
    }
}

fn assert_whole(name: &str) -> Batch {
    let read = all(fixture(name));
    assert_eq!(read.losses.bad_records(), 0, "{:?}", read.losses);
    assert_same(&read.frames, &written());
    read
}

#[test]
fn measured_against_python_can() {
    let read = assert_whole("frames-written.mf4");
    let other =
        [Loss::Remote, Loss::ErrorFrame, Loss::FlexibleRate].map(|loss| read.losses.of(loss));
    assert_eq!(other, [2, 1, 1]);
}

#[test]
fn measured_against_asammdf_plain_deflated_and_by_columns() {
    for name in ["frames-plain.mf4", "frames-deflate.mf4", "frames-transposed.mf4"] {
        let read = assert_whole(name);
        assert_eq!(read.interfaces.names(), ["0", "1"]);
    }
}

#[test]
fn measured_against_asammdf_in_lists_of_packed_blocks() {
    assert_whole("frames-listed.mf4");
}

#[test]
fn data_apart_from_their_records_find_their_frames() {
    assert_whole("frames-apart.mf4");
}

#[test]
fn groups_mixed_in_one_data_group_are_told_apart() {
    let read = assert_whole("frames-mixed.mf4");
    assert_eq!(read.losses.of(Loss::Remote), 2);
}

#[test]
fn a_file_never_finished_is_read_as_far_as_it_goes() {
    let read = all(fixture("frames-unfinished.mf4"));
    // The last record was cut off by five bytes: its data came, its frame did not.
    assert_same(&read.frames, &written()[..199]);
    let first = &read.losses.listed()[0];
    assert_eq!((first.loss, first.place), (Loss::Truncated, Place::Byte(0)));
    assert!(first.excerpt.contains("never finished"), "{first:?}");
    assert_eq!(read.losses.bad_records(), 2, "{:?}", read.losses);
}

#[test]
fn the_hash_is_of_the_file_in_its_own_order() {
    for name in ["frames-apart.mf4", "frames-plain.mf4"] {
        let bytes = fixture(name);
        let hash = Sha256::digest(&bytes);
        let told = read_bytes(bytes).unwrap();
        let digit = |at: usize| u8::from_str_radix(&told.sha256[at..at + 2], 16).unwrap();
        let said: Vec<u8> = (0..told.sha256.len()).step_by(2).map(digit).collect();
        assert_eq!(said, hash.to_vec());
        assert_eq!((told.frames, told.format), (200, Format::Mdf4));
    }
}

#[test]
fn a_file_cut_off_keeps_what_was_whole_and_says_so() {
    let mut bytes = fixture("frames-mixed.mf4");
    bytes.truncate(bytes.len() - 100);
    let read = all(bytes);
    assert!((190..200).contains(&read.frames.len()), "{}", read.frames.len());
    assert_same(&read.frames, &written()[..read.frames.len()]);
    assert!(read.losses.of(Loss::Truncated) > 0);
}

#[test]
fn a_broken_packed_block_loses_its_own_frames_only() {
    let mut bytes = fixture("frames-listed.mf4");
    // The second packed block: a byte in the middle of what is packed.
    let blocks = blocks(&bytes, *b"##DZ");
    bytes[blocks[1] + 60] ^= 0xFF;
    let read = all(bytes);
    assert_eq!(read.losses.of(Loss::Corrupt), 1, "{:?}", read.losses);
    let place = Place::Byte(blocks[1] as u64);
    assert_eq!(read.losses.listed()[0].place, place);
    let whole = written();
    assert!(read.frames.len() > 100 && read.frames.len() < whole.len(), "{}", read.frames.len());
    assert!(read.frames.iter().all(|frame| whole.iter().any(|written| {
        (written.id, written.data, written.interface) == (frame.id, frame.data, frame.interface)
    })));
}

#[test]
fn files_without_frames_say_what_they_hold_and_what_to_do() {
    let error = |bytes: Vec<u8>| read_bytes(bytes).unwrap_err().to_string();
    let said = error(fixture("signals.mf4"));
    assert!(said.contains("2 groups of signals (such as Speed, Pressure)"), "{said}");
    assert!(said.contains("export the bus itself"), "{said}");
    let mut old = fixture("frames-plain.mf4");
    old[28..30].copy_from_slice(&330_u16.to_le_bytes());
    assert!(error(old).contains("version 3.30"));
    assert!(error(b"MDF     ".to_vec()).contains("ends inside its header"));
}

/// Where blocks of a name begin.
fn blocks(bytes: &[u8], name: [u8; 4]) -> Vec<usize> {
    bytes.windows(4).enumerate().filter(|(_, four)| *four == name).map(|(at, _)| at).collect()
}

#[test]
fn blocks_of_values_are_read_as_records_where_there_are_no_marks_of_validity() {
    let mut bytes = fixture("frames-plain.mf4");
    for at in blocks(&bytes, *b"##DT") {
        bytes[at + 3] = b'V';
    }
    assert_same(&all(bytes.clone()).frames, &written());
    // Six links and thirty-two bytes of what a group says before: one byte of marks a record.
    for at in blocks(&bytes, *b"##CG") {
        bytes[at + 24 + 48 + 28] = 1;
    }
    let said = read_bytes(bytes).unwrap_err().to_string();
    assert!(said.contains("marks of validity are stored apart"), "{said}");
}

#[test]
fn other_ways_of_storing_are_refused_with_what_to_do() {
    let mut bytes = fixture("frames-deflate.mf4");
    let at = blocks(&bytes, *b"##DZ")[0];
    bytes[at + 26] = 2;
    let said = read_bytes(bytes).unwrap_err().to_string();
    assert!(said.contains("number 2") && said.contains("packed by deflate"), "{said}");
    let mut bytes = fixture("frames-plain.mf4");
    let at = blocks(&bytes, *b"##CG")[0];
    bytes[at + 24 + 48 + 16] |= 8;
    let said = read_bytes(bytes).unwrap_err().to_string();
    assert!(said.contains("column by column; save it again by records"), "{said}");
}

#[test]
fn a_group_by_linear_time_in_whole_numbers_is_exact() {
    let read = all(fixture("frames-mixed.mf4"));
    for (read, written) in read.frames.iter().zip(&written()) {
        assert_eq!(read.time, written.time);
    }
}

#[test]
fn a_packed_block_too_large_is_refused_with_its_place() {
    let mut bytes = fixture("frames-deflate.mf4");
    let at = blocks(&bytes, *b"##DZ")[0];
    bytes[at + 32..at + 40].copy_from_slice(&(1_u64 << 30).to_le_bytes());
    let said = read_bytes(bytes).unwrap_err().to_string();
    assert!(said.contains(&format!("at byte {at} unpacks to 1073741824 bytes")), "{said}");
    assert!(said.contains("4 MB or less"), "{said}");
}
