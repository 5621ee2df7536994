//! Both texts of candump: against the lines of the format's own documentation, against a second
//! reader, and a whole truck log where it lies.
#![cfg(feature = "files")]
#![allow(clippy::print_stderr, reason = "a test that is skipped says so")]

use std::path::Path;

use logs::read::{
    Input, Log, Loss, Options, Place, ReadError, Tally, Told, batch, candump, read_all,
};
use logs::{Definitions, Pgn, SourceAddress};

fn told(text: &[u8]) -> (Told, Tally) {
    let definitions = Definitions::default();
    let log = Log::of("test", Input::memory(text.to_vec()), &Options::default()).unwrap();
    let mut tally = Tally::default();
    let (told, _) = read_all(log, &definitions, |stretches| {
        tally.take(&stretches, &definitions);
        Ok::<_, ReadError>(())
    })
    .unwrap();
    (told, tally)
}

#[test]
fn table_of_lines_of_the_log_form() {
    // Examples of the can-utils documentation and of candump's own output.
    let text = b"(1436509052.249713) vcan0 044#2A366C2BBA\n\
        (1436509052.449847) vcan0 0F6#7ADFE07BD2\n\
        (1436509052.650004) vcan0 236#C3406B09F4C88036\n\
        (1436509053.850870) vcan0 0F6#R\n\
        (1436509053.950870) vcan0 0F6##1112233\n\
        (1436509054.051025) vcan1 1AC#7A3C5B1D9E2F4A60 R\n\
        (1436509054.251212) vcan1 20000080#0000000000000000\n\
        (1436509054.351212) vcan1 18FEF100#\n";
    let batch = candump::read_block(text, batch::Interfaces::default());
    assert_eq!((batch.frames.len(), batch.lines), (5, 8));
    assert_eq!(batch.frames[0].data.bytes(), [0x2A, 0x36, 0x6C, 0x2B, 0xBA]);
    assert_eq!(batch.frames[2].time.as_us(), 1_436_509_052_650_004);
    assert_eq!(batch.interfaces.names(), ["vcan0", "vcan1"]);
    assert_eq!(batch.frames[3].interface.0, 1);
    assert_eq!(batch.frames[4].data.length(), 0);
    for loss in [Loss::Remote, Loss::FlexibleRate, Loss::ErrorFrame] {
        assert_eq!(batch.losses.of(loss), 1, "{loss}");
    }
    assert_eq!(batch.losses.bad_records(), 0);
}

#[test]
fn table_of_lines_of_the_screen_form() {
    let text = b" (000.000000)  can0  18FCF200   [8]  E1 FF FF FF FF FF FF FF\n\
        (2026-03-01 10:00:00.123456)  can0  18FEF100   [3]  FF 64 36   '.d6'\n\
        (1.5)  can0  RX - -  123   [0]\n\
        (1.6)  can0  123   [0]  remote request\n\
        (1.7)  can0  123  [12]  00 11 22 33 44 55 66 77 88 99 AA BB\n";
    let batch = candump::read_block(text, batch::Interfaces::default());
    assert_eq!(batch.frames.len(), 3);
    assert_eq!(batch.frames[0].data.word(), 0xFFFF_FFFF_FFFF_FFE1);
    assert_eq!(batch.frames[1].time.as_us(), 1_772_359_200_123_456);
    assert_eq!(batch.frames[1].data.bytes(), [0xFF, 0x64, 0x36]);
    assert_eq!(batch.frames[2].id.to_string(), "123");
    assert_eq!((batch.losses.of(Loss::Remote), batch.losses.of(Loss::FlexibleRate)), (1, 1));
}

#[test]
fn bad_lines_are_counted_and_listed_with_their_place() {
    let text = b"(1.000000) can0 18FEF100#FF6436FCFF6800CF\n\
        (1.000000) can0 18FEF100#FF6436FCFF680\n\
        garbage\n\
        \n\
        (1.100000) can0 FFFFFFFFF#00\n\
        (1.200000) can0 18FEF1";
    let (told, _) = told(text);
    assert_eq!((told.frames, told.losses.bad_records()), (1, 4));
    let places: Vec<_> = told.losses.listed().iter().map(|listed| listed.place).collect();
    assert_eq!(places, [Place::Line(2), Place::Line(3), Place::Line(5), Place::Line(6)]);
    assert_eq!(told.losses.listed()[0].loss, Loss::Truncated);
}

#[test]
fn clock_steps_gaps_and_duplicates_are_told() {
    let text = b"(10.000000) can0 18FEF100#FF6436FCFF6800CF\n\
        (10.000000) can0 18FEF100#FF6436FCFF6800CF\n\
        (9.000000) can0 18FEF100#FF6436FCFF6800CF\n\
        (60.000000) can0 18FEF100#FF6436FCFF6800CF\n";
    let (told, _) = told(text);
    assert_eq!((told.frames, told.losses.of(Loss::Duplicate)), (4, 1));
    assert_eq!((told.clock.steps_back, told.clock.gaps), (1, 1));
    assert_eq!(told.clock.span_ns(), 51_000_000_000);
}

#[test]
fn the_usual_line_and_any_line_read_the_same() {
    // The fast way reads only lines with ten digits of seconds; a blank before makes a line unusual.
    let line = |at: u32| {
        format!(
            "({}.{:06}) can{} {:08X}#{:016X}\n",
            1_700_000_000 + at / 7,
            at * 991 % 1_000_000,
            at % 3,
            0x0CF0_0400 + at,
            u64::from(at) * 0x0123_4567_89AB
        )
    };
    let usual: String = (0..5000).map(line).collect();
    let unusual: String = (0..5000).flat_map(|at| [" ".to_owned(), line(at)]).collect();
    let [fast, slow] = [usual, unusual]
        .map(|text| candump::read_block(text.as_bytes(), batch::Interfaces::default()));
    assert_eq!(fast.frames.len(), 5000);
    assert_eq!(fast.frames, slow.frames);
}

#[test]
fn measured_truck_log_reads_whole() {
    let Some(path) = std::env::var_os("AIRTIDE_TRUCK_LOG") else {
        eprintln!("skipped: AIRTIDE_TRUCK_LOG does not name the open research-truck log");
        return;
    };
    let definitions = Definitions::default();
    let log = Log::open(Path::new(&path), &Options::default()).unwrap();
    let mut tally = Tally::default();
    let (told, senders) = read_all(log, &definitions, |stretches| {
        tally.take(&stretches, &definitions);
        Ok::<_, ReadError>(())
    })
    .unwrap();
    // Counts of an independent parser of the same file.
    assert_eq!((told.frames, told.losses.bad_records()), (19_957, 0));
    assert_eq!(senders.all().len(), 90);
    let groups = tally.groups(&senders, &definitions);
    let get = |pgn, source| &groups[&(Pgn::new(pgn).unwrap(), SourceAddress(source))];
    // Service air 800 to 808 kPa, 23 to 55 km/h, 1147 to 1786 rpm, and a message of 14 bytes.
    let air = definitions.find(Pgn::new(65198).unwrap()).unwrap();
    let at = definitions.groups()[air].signals.iter().position(|s| s.spn.0 == 1087).unwrap();
    let [low, high, _] = get(65198, 0x31).signals[at].range.unwrap();
    assert!(low >= 800.0 && high <= 808.0, "{low} to {high}");
    let engine = definitions.find(Pgn::new(61444).unwrap()).unwrap();
    let at = definitions.groups()[engine].signals.iter().position(|s| s.spn.0 == 190).unwrap();
    let [low, high, _] = get(61444, 0).signals[at].range.unwrap();
    assert_eq!((low.floor(), high.floor()), (1147.0, 1786.0));
    assert_eq!(get(65226, 0).bytes, 14);
    assert!(tally.codes.iter().any(|(source, code)| source.0 == 0 && code.spn == 5357));
}
