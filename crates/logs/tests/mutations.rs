//! Ten thousand seeded mutations of a file of each format, of a user's own groups and of messages in
//! packets: an error or counted losses, never a panic or a hang, and memory that stays bounded.
#![cfg(feature = "files")]

use std::collections::BTreeSet;
use std::path::Path;
use std::time::{Duration, Instant};

use logs::Definitions;
use logs::dbc::groups_of;
use logs::read::table::Columns;
use logs::read::{Input, Log, Loss, Options, ReadError, Tally, read_all, read_bytes};

mod chance;

use chance::{Chance, peak_mb};

const MUTATIONS: u64 = 10_000;

fn fixture(name: &str) -> Vec<u8> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures").join(name);
    std::fs::read(path).unwrap()
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

fn survives(name: &str, shorten: usize) {
    let mut whole = fixture(name);
    whole.truncate(shorten);
    survives_with(name, &whole, |bytes| read_bytes(bytes).is_ok_and(|told| told.frames > 0));
}

/// Mutates bytes and has them read; `read` tells whether anything came of it.
fn survives_with(name: &str, whole: &[u8], read: impl Fn(Vec<u8>) -> bool) {
    let reads = reads(name, |seed| mutated(whole, seed), read);
    // Enough mutants still hold something: the test would prove nothing on files refused at once. Of a
    // packed file one flipped bit can spoil all that follows.
    assert!(reads > MUTATIONS / 10, "{name}: only {reads}");
}

/// How many mutants were read.
fn reads(name: &str, mutant: impl Fn(u64) -> Vec<u8>, read: impl Fn(Vec<u8>) -> bool) -> u64 {
    let mut reads = 0;
    for seed in 0..MUTATIONS {
        let start = Instant::now();
        reads += u64::from(read(mutant(seed)));
        assert!(start.elapsed() < Duration::from_secs(10), "{name}: seed {seed} hangs");
    }
    assert!(peak_mb().is_none_or(|mb| mb < 600), "{name}: {:?} MB at the peak", peak_mb());
    reads
}

/// Lines of a bus on which three senders send messages of 20 and 1800 bytes in packets at the same
/// time, a second after one another: to all, to one, and by the extended protocol.
fn packets(rounds: u64) -> Vec<String> {
    let mut lines = Vec::new();
    let mut say = |ms: u64, id: u32, bytes: [u8; 8]| {
        let data = u64::from_be_bytes(bytes);
        lines.push(format!("({}.{:03}) can0 {id:08X}#{data:016X}\n", 1000 + ms / 1000, ms % 1000));
    };
    for round in 0..rounds {
        let ms = round * 2_000;
        // A byte tells its place, its sender and its round.
        let byte = |sender: usize, at: usize| {
            u8::try_from((at * 7 + sender + usize::try_from(round).unwrap() * 53) % 251).unwrap()
        };
        // The group is that of component identification: 65259, which no table decodes.
        say(ms, 0x1CEC_FF10, [32, 20, 0, 3, 0xFF, 0xEB, 0xFE, 0]);
        say(ms, 0x1CEC_2011, [16, 20, 0, 3, 3, 0xEB, 0xFE, 0]);
        say(ms, 0x1CEC_1120, [17, 3, 1, 0xFF, 0xFF, 0xEB, 0xFE, 0]);
        say(ms, 0x1CC8_2012, [20, 0x08, 0x07, 0, 0, 0xEB, 0xFE, 0]);
        for packet in 0..258 {
            let ms = ms + 1 + packet as u64;
            let data = |sender, size: usize| {
                std::array::from_fn(|at| match (at, packet * 7 + at - 1.min(at)) {
                    (0, _) => 0,
                    (_, at) if at < size => byte(sender, at),
                    _ => 0xFF,
                })
            };
            let numbered = |number: usize, mut bytes: [u8; 8]| {
                bytes[0] = u8::try_from(number).unwrap();
                bytes
            };
            if packet < 3 {
                say(ms, 0x1CEB_FF10, numbered(packet + 1, data(0x10, 20)));
                say(ms, 0x1CEB_2011, numbered(packet + 1, data(0x11, 20)));
            }
            // Offsets count whole packets before the run that follows.
            let run = packet / 255 * 255;
            if packet == run {
                let offset = u32::try_from(run).unwrap().to_le_bytes();
                say(ms, 0x1CC8_2012, [22, 255, offset[0], offset[1], offset[2], 0xEB, 0xFE, 0]);
            }
            say(ms, 0x1CC7_2012, numbered(packet - run + 1, data(0x12, 1800)));
        }
    }
    lines
}

/// The messages that became whole.
fn messages(text: &str) -> Vec<Vec<u8>> {
    let input = Input::memory(text.as_bytes().to_vec());
    let log = Log::of("packets", input, &Options::default()).unwrap();
    let mut whole = Vec::new();
    let read = read_all(log, &Definitions::default(), |stretches| {
        let other = stretches.into_iter().flat_map(|stretch| stretch.other);
        whole.extend(other.map(|message| message.data));
        Ok::<_, ReadError>(())
    });
    read.unwrap();
    whole
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
fn tables_survive_mutations() {
    let columns = Columns::parse("time=time_ms,id=id,data=data,extended=extended,bus=channel");
    let options = Options { columns: Some(columns.unwrap()), ..Options::default() };
    let mut whole = fixture("frames.csv");
    whole.truncate(2000);
    survives_with("frames.csv", &whole, |bytes| {
        let log = Log::of("bytes", Input::memory(bytes), &options);
        let told = log.and_then(|log| read_all(log, &Definitions::default(), |_| Ok(())));
        told.is_ok_and(|(told, _)| told.frames > 0)
    });
}

/// Groups of a user's own: either byte order, signs, a switch, a number, values by name.
const DBC: &str = "VERSION \"\"\n\nNS_ :\n\nBS_:\n\nBU_: ECU\n\n\
    BO_ 2566844672 CCVS: 8 ECU\n \
    SG_ Speed : 8|16@1+ (0.00390625,0) [0|250] \"km/h\" ECU\n \
    SG_ Slope : 24|8@1- (0.5,0) [-64|63] \"mV\" ECU\n\n\
    BO_ 2565866547 Tires: 8 ECU\n \
    SG_ Which M : 0|8@1+ (1,0) [0|255] \"\" ECU\n \
    SG_ Pressure m18 : 15|16@0+ (4,0) [0|1000] \"kPa\" ECU\n \
    SG_ Heat m34 : 23|16@0- (0.03125,-273) [-273|1735] \"degC\" ECU\n\n\
    CM_ SG_ 2566844672 Speed \"of the wheels\";\n\
    BA_DEF_ SG_ \"SPN\" INT 0 524287;\nBA_DEF_DEF_ \"SPN\" 0;\n\
    BA_ \"SPN\" SG_ 2566844672 Speed 84;\n\
    VAL_ 2565866547 Which 18 \"left\" 34 \"right\" ;\n";

/// Reads a user's own groups, and decodes frames by them.
fn decodes(dbc: &[u8]) -> bool {
    let Ok(own) = groups_of(&String::from_utf8_lossy(dbc)) else { return false };
    let definitions = Definitions::default().with(own.groups);
    let log = fixture("frames.log")[..2000].to_vec();
    let log = Log::of("log", Input::memory(log), &Options::default()).unwrap();
    let mut tally = Tally::default();
    let told = read_all(log, &definitions, |stretches| {
        tally.take(&stretches, &definitions);
        Ok::<_, ReadError>(())
    });
    told.is_ok_and(|(told, _)| told.frames > 0)
}

#[test]
fn groups_of_the_users_own_survive_mutations_and_so_do_the_frames_they_decode() {
    assert!(decodes(DBC.as_bytes()));
    // The text is strict: most mutants are refused.
    let read = reads("a DBC file", |seed| mutated(DBC.as_bytes(), seed), |dbc| decodes(&dbc));
    assert!(read > 100, "only {read}");
}

#[test]
fn groups_of_the_users_own_survive_other_numbers() {
    let digits: Vec<usize> =
        (0..DBC.len()).filter(|at| DBC.as_bytes()[*at].is_ascii_digit()).collect();
    let mutant = |seed: u64| {
        let mut chance = Chance(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1);
        let mut bytes = DBC.as_bytes().to_vec();
        for _ in 0..=chance.below(5) {
            let digit = b'0' + u8::try_from(chance.below(10)).unwrap();
            bytes[digits[chance.below(digits.len())]] = digit;
        }
        // One number far too long now and then.
        if chance.below(4) == 0 {
            let at = digits[chance.below(digits.len())];
            bytes.splice(at..at, b"9".repeat(chance.below(30)));
        }
        bytes
    };
    let read = reads("a DBC file", mutant, |dbc| decodes(&dbc));
    assert!(read > MUTATIONS / 3, "only {read}");
}

#[test]
fn messages_in_packets_survive_mutations() {
    let whole = packets(6).concat();
    let told = read_bytes(whole.clone().into_bytes()).unwrap();
    assert_eq!((told.messages, told.losses.of(Loss::BrokenMessage)), (18, 0));
    survives_with("packets", whole.as_bytes(), |bytes| {
        read_bytes(bytes).is_ok_and(|told| told.messages > 0)
    });
}

#[test]
fn packets_lost_or_said_twice_never_make_a_message_that_was_not_sent() {
    let lines = packets(6);
    let sent: BTreeSet<Vec<u8>> = messages(&lines.concat()).into_iter().collect();
    assert_eq!(sent.len(), 18);
    let (mut came, mut broken) = (0, 0);
    for seed in 1..=2_000 {
        let mut chance = Chance(u64::wrapping_mul(seed, 0x9E37_79B9_7F4A_7C15));
        let heard: String = lines
            .iter()
            .map(|line| match chance.below(20) {
                0 => String::new(),
                1 => line.repeat(2),
                _ => line.clone(),
            })
            .collect();
        let whole = messages(&heard);
        came += whole.len();
        broken += usize::from(whole.len() < sent.len());
        for message in whole {
            assert!(sent.contains(&message), "seed {seed}: {message:02X?}");
        }
    }
    assert!(came > 10_000 && broken > 1_000, "{came} {broken}");
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
