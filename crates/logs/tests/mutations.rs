//! Ten thousand seeded mutations of a file of each format, and a flood: an error or counted losses,
//! never a panic or a hang, and memory that stays bounded.
#![cfg(feature = "files")]

use std::fmt::Write as _;
use std::path::Path;
use std::time::{Duration, Instant};

use logs::read::{Loss, read_bytes};

const MUTATIONS: u64 = 10_000;

/// A generator of Marsaglia's family: the same bytes on every run.
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    fn below(&mut self, end: usize) -> usize {
        usize::try_from(self.next() % (end.max(1) as u64)).unwrap()
    }
}

fn mutated(whole: &[u8], seed: u64) -> Vec<u8> {
    let mut chance = Chance(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1);
    let mut bytes = whole.to_vec();
    for _ in 0..=chance.below(6) {
        let at = chance.below(bytes.len());
        match chance.below(6) {
            0 => bytes.truncate(at),
            1 if at < bytes.len() => bytes[at] = u8::try_from(chance.below(256)).unwrap(),
            2 if at < bytes.len() => bytes[at] ^= 1 << chance.below(8),
            3 => {
                let end = (at + chance.below(40)).min(bytes.len());
                bytes.drain(at..end);
            }
            4 => {
                let end = (at + chance.below(80)).min(bytes.len());
                let part = bytes[at..end].to_vec();
                let to = chance.below(bytes.len());
                bytes.splice(to..to, part);
            }
            _ => {
                // Lengths and offsets are often four bytes of ones.
                let end = (at + 4).min(bytes.len());
                bytes[at..end].fill(if chance.below(2) == 0 { 0xFF } else { 0 });
            }
        }
    }
    bytes
}

/// Most memory that this process ever held, where the system tells it.
fn peak_mb() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    Some(line.trim().strip_suffix(" kB")?.parse::<u64>().ok()? / 1024)
}

fn survives(name: &str, shorten: usize) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures").join(name);
    let mut whole = std::fs::read(path).unwrap();
    whole.truncate(shorten);
    let mut read = 0;
    for seed in 0..MUTATIONS {
        let start = Instant::now();
        if read_bytes(mutated(&whole, seed)).is_ok_and(|told| told.frames > 0) {
            read += 1;
        }
        assert!(start.elapsed() < Duration::from_secs(10), "{name}: seed {seed} hangs");
    }
    assert!(peak_mb().is_none_or(|mb| mb < 600), "{name}: {:?} MB at the peak", peak_mb());
    // Enough mutants still hold frames: the test would prove nothing on files refused at once. Of a
    // packed file one flipped bit can spoil all that follows.
    assert!(read > MUTATIONS / 10, "{name}: only {read}");
}

#[test]
fn candump_survives_mutations() {
    survives("frames.log", 2000);
}

#[test]
fn asc_survives_mutations() {
    survives("frames.asc", 2000);
}

#[test]
fn blf_survives_mutations() {
    survives("frames.blf", usize::MAX);
}

#[test]
fn captures_survive_mutations() {
    survives("frames.pcap", 2000);
}

#[test]
fn plain_measurement_files_survive_mutations() {
    survives("frames-plain.mf4", usize::MAX);
    survives("frames-mixed.mf4", usize::MAX);
}

#[test]
fn packed_measurement_files_survive_mutations() {
    survives("frames-deflate.mf4", usize::MAX);
    survives("frames-transposed.mf4", usize::MAX);
}

#[test]
fn measurement_files_of_lists_and_values_survive_mutations() {
    survives("frames-listed.mf4", usize::MAX);
    survives("frames-apart.mf4", usize::MAX);
    survives("frames-unfinished.mf4", usize::MAX);
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
fn files_that_are_no_logs_get_clear_errors() {
    let gzip_head = [0x1F, 0x8B, 8, 0, 0, 0, 0, 0, 0, 3, 0x2B];
    for (bytes, said) in [
        (&b""[..], "is empty"),
        (b"hello world\n", "no format read here"),
        (&[0; 300], "no format read here"),
        (&gzip_head, "does not unpack"),
        (b"LOGG", "ends inside its header"),
        (b"\xD4\xC3\xB2\xA1\x02\x00", "ends inside its header"),
    ] {
        let error = read_bytes(bytes.to_vec()).unwrap_err().to_string();
        assert!(error.contains(said), "{error}");
    }
}
