//! Floods: logs that only grow. What is kept stays bounded, and what is dropped is counted.
#![cfg(feature = "files")]

use std::fmt::Write as _;
use std::io::Write as _;

use logs::Definitions;
use logs::read::{Input, Log, Loss, Options, ReadError, Tally, read_all, read_bytes};

mod chance;

use chance::{Chance, peak_mb};

fn assert_bounded(most_mb: u64) {
    assert!(peak_mb().is_none_or(|mb| mb < most_mb), "{:?} MB at the peak", peak_mb());
}

#[test]
fn a_flood_of_random_identifiers_is_bounded_and_counted() {
    let mut chance = Chance(7);
    let mut text = String::new();
    let lines = 200_000;
    for at in 0..lines {
        let (id, data) = (chance.next() & 0x1FFF_FFFF, chance.next());
        writeln!(text, "(1700000000.{at:06}) can0 {id:08X}#{data:016X}").unwrap();
    }
    let told = read_bytes(text.into_bytes()).unwrap();
    assert_eq!((told.frames, told.losses.bad_records()), (lines, 0));
    assert!(told.losses.of(Loss::TooManySenders) > 100_000);
}

#[test]
fn a_flood_of_one_identifier_takes_no_more_memory_the_longer_it_is() {
    let mut file = tempfile::NamedTempFile::new().unwrap();
    let lines = 3_000_000_u64;
    let mut text = String::new();
    for at in 0..lines {
        writeln!(text, "({}.{:06}) can0 18FEF433#{at:016X}", at / 1000, at % 1000 * 1000).unwrap();
        if text.len() > 1 << 20 || at + 1 == lines {
            file.write_all(text.as_bytes()).unwrap();
            text.clear();
        }
    }
    let definitions = Definitions::default();
    let log = Log::open(file.path(), &Options::default()).unwrap();
    let length = log.length();
    let mut tally = Tally::default();
    // What is read ahead grows with the cores; two are enough to show that it ends there.
    let cores = rayon::ThreadPoolBuilder::new().num_threads(2).build().unwrap();
    let read = cores.install(|| {
        read_all(log, &definitions, |stretches| {
            tally.take(&stretches, &definitions);
            Ok::<_, ReadError>(())
        })
    });
    let (told, senders) = read.unwrap();
    assert_eq!((told.frames, told.losses.bad_records(), senders.all().len()), (lines, 0, 1));
    // Smaller than the file: a log is never held whole.
    assert!(length > 120 << 20, "{length}");
    assert_bounded(110);
}

#[test]
fn a_flood_of_announcements_never_kept_is_bounded_and_counted() {
    let mut text = String::new();
    let announced = 400_000_u64;
    for at in 0..announced {
        let (source, destination) = (at % 250, at / 250 % 250);
        // By turns the plain and the extended protocol, the latter of a megabyte each.
        let (id, data) = if at % 2 == 0 {
            (0x1CEC_0000, "10F90600FFEBFE00".to_owned())
        } else {
            (0x1CC8_0000, "1400001000EBFE00".to_owned())
        };
        let id = id | destination << 8 | source;
        writeln!(text, "({}.{:06}) can0 {id:08X}#{data}", at / 100_000, at % 100_000 * 10).unwrap();
    }
    let told = read_bytes(text.into_bytes()).unwrap();
    assert_eq!((told.frames, told.messages), (announced, 0));
    assert_eq!(told.losses.of(Loss::BrokenMessage), announced);
    assert_bounded(200);
}

#[test]
fn a_flood_of_messages_without_their_last_packet_is_bounded_and_counted() {
    let mut text = String::new();
    let announced = 20_000_u64;
    for at in 0..announced {
        let (source, second) = (at % 250, at / 250);
        let us = at % 250 * 1000;
        writeln!(text, "({second}.{us:06}) can0 1CECFF{source:02X}#20460010FFEBFE00").unwrap();
        for packet in 1..10 {
            let us = us + packet;
            writeln!(text, "({second}.{us:06}) can0 1CEBFF{source:02X}#{packet:02X}01020304050607")
                .unwrap();
        }
    }
    let told = read_bytes(text.into_bytes()).unwrap();
    assert_eq!((told.frames, told.messages), (announced * 10, 0));
    assert_eq!(told.losses.of(Loss::BrokenMessage), announced);
    assert_bounded(200);
}

#[test]
fn a_flood_of_trouble_codes_is_bounded_and_counted() {
    let mut chance = Chance(11);
    let mut text = String::new();
    for at in 0..200_000 {
        let (source, code) = (chance.below(250), chance.next() & 0xFFFF_FFFF);
        let us = at % 1000 * 1000;
        writeln!(text, "({}.{us:06}) can0 18FECA{source:02X}#04FF{code:08X}FFFF", at / 1000)
            .unwrap();
    }
    let definitions = Definitions::default();
    let log = Log::of("codes", Input::memory(text.into_bytes()), &Options::default()).unwrap();
    let mut tally = Tally::default();
    let read = read_all(log, &definitions, |stretches| {
        tally.take(&stretches, &definitions);
        Ok::<_, ReadError>(())
    });
    assert_eq!(read.unwrap().0.frames, 200_000);
    assert_eq!(tally.codes.len(), 4096);
    assert!(tally.losses.of(Loss::TooManyCodes) > 190_000, "{:?}", tally.losses);
    assert_bounded(200);
}

/// A block of a measurement file: name, links, what it says. Gives where it begins.
fn block(file: &mut Vec<u8>, name: [u8; 2], links: &[u64], body: &[u8]) -> u64 {
    let at = file.len() as u64;
    let length = (24 + 8 * links.len() + body.len()) as u64;
    file.extend([b'#', b'#', name[0], name[1], 0, 0, 0, 0]);
    file.extend(length.to_le_bytes());
    file.extend((links.len() as u64).to_le_bytes());
    file.extend(links.iter().flat_map(|link| link.to_le_bytes()));
    file.extend(body);
    at
}

/// A measurement file of so many groups, each with a packed block of 16 MB of zeros: frames of 16 bytes.
fn groups_of_zeros(groups: u32) -> Vec<u8> {
    let zeros = 1_u64 << 24;
    let mut packer = flate2::write::ZlibEncoder::new(Vec::new(), flate2::Compression::fast());
    packer.write_all(&vec![0; 1 << 24]).unwrap();
    let packed = packer.finish().unwrap();
    let mut file = b"MDF     4.10    by hand ".to_vec();
    file.resize(64, 0);
    file[28] = 0x9A;
    file[29] = 0x01;
    let header = block(&mut file, *b"HD", &[0; 6], &[0; 32]);
    let mut next = 0;
    for _ in 0..groups {
        let body: Vec<u8> = [
            &b"DT\0\0\0\0\0\0"[..],
            &zeros.to_le_bytes(),
            &(packed.len() as u64).to_le_bytes(),
            &packed,
        ]
        .concat();
        let data = block(&mut file, *b"DZ", &[], &body);
        let mut channel = 0;
        let parts = [
            ("CAN_DataFrame.DataBytes\0", [0, 0, 10, 0], 8_u32, 64_u32),
            ("CAN_DataFrame.ID\0", [0, 0, 0, 0], 4, 32),
            ("t\0", [2, 1, 0, 0], 0, 32),
        ];
        for (name, kind, byte, bits) in parts {
            let name = block(&mut file, *b"TX", &[], name.as_bytes());
            let place = [byte.to_le_bytes(), bits.to_le_bytes()].concat();
            let body = [&kind[..], &place, &[0; 56]].concat();
            channel = block(&mut file, *b"CN", &[channel, 0, name, 0, 0, 0, 0, 0], &body);
        }
        let count = (zeros / 16).to_le_bytes();
        let sizes = [16_u32.to_le_bytes(), [0; 4]].concat();
        let body = [&[0; 8][..], &count, &[0; 8], &sizes].concat();
        let group = block(&mut file, *b"CG", &[0, channel, 0, 0, 0, 0], &body);
        next = block(&mut file, *b"DG", &[next, group, data, 0], &[0; 8]);
    }
    let link = usize::try_from(header).unwrap() + 24;
    file[link..link + 8].copy_from_slice(&next.to_le_bytes());
    file
}

#[test]
fn packed_groups_that_hold_too_much_at_once_are_refused() {
    let told = read_bytes(groups_of_zeros(2)).unwrap();
    assert_eq!((told.frames, told.losses.bad_records()), (2 << 20, 0));
    let error = read_bytes(groups_of_zeros(40)).unwrap_err().to_string();
    assert!(error.contains("hold more than 268435456 bytes at the same time"), "{error}");
    assert_bounded(450);
}
