//! Frames in Parquet: files of another writer, pyarrow 26.0 (`fixtures/make_parquet.py`), and ten thousand
//! seeded mutations of them.
#![cfg(feature = "store")]

mod written;

use logs::Definitions;
use logs::read::table::Columns;
use logs::read::{Input, Log, Loss, Options, Place, ReadError, Told, read_all};
use written::{fixture, frames};

const TYPED: &str = "time=When,id=identifier,data=Bytes,extended=Long,bus=Bus";
const TEXT: &str = "time=time,id=id,data=data,extended=extended,bus=bus";

fn options(columns: &str) -> Options {
    Options { columns: Some(Columns::parse(columns).unwrap()), ..Options::default() }
}

/// What a log told, with its rows: time, bus, sender, bytes.
type Rows = Vec<(i64, u8, u8, Vec<u8>)>;

fn read(bytes: Vec<u8>, columns: &str) -> Result<(Told, Rows), ReadError> {
    let definitions = Definitions::default();
    let log = Log::of("test", Input::memory(bytes), &options(columns))?;
    let mut rows = Rows::new();
    let (told, _) = read_all(log, &definitions, |stretches| {
        for row in stretches.iter().flat_map(|one| &one.sorted.lanes).flat_map(|lane| &lane.rows) {
            let data = row.word.to_le_bytes()[..usize::from(row.length)].to_vec();
            rows.push((row.time.as_us(), row.interface.0, row.source.0, data));
        }
        Ok::<_, ReadError>(())
    })?;
    rows.sort();
    Ok((told, rows))
}

/// The same rows from what was written down beside.
fn expected() -> Rows {
    let definitions = Definitions::default();
    let known = |frame: &&logs::Frame| {
        let parts = logs::Identifier::split(frame.id);
        parts.is_some_and(|parts| definitions.find(parts.pgn).is_some())
    };
    let frames = frames();
    let mut rows: Rows = (frames.iter().filter(known))
        .map(|frame| {
            let [source, ..] = frame.id.number().to_le_bytes();
            (frame.time.as_us(), frame.interface.0, source, frame.data.bytes().to_vec())
        })
        .collect();
    rows.sort();
    rows
}

#[test]
fn measured_against_pyarrow_columns_of_types_and_of_text() {
    for (name, columns) in [("frames.parquet", TYPED), ("frames-text.parquet", TEXT)] {
        let (told, rows) = read(fixture(name), columns).unwrap();
        assert_eq!((told.frames, told.losses.bad_records()), (200, 0), "{name}");
        assert_eq!(told.interfaces.names().len(), 2);
        let expected = expected();
        assert!(expected.len() > 100);
        assert_eq!(rows.len(), expected.len());
        for (read, written) in rows.iter().zip(&expected) {
            // Seconds in a floating number keep a quarter of a microsecond.
            assert!((read.0 - written.0).abs() <= 1, "{read:?} for {written:?}");
            assert_eq!((read.1, read.2, &read.3), (written.1, written.2, &written.3));
        }
    }
}

#[test]
fn the_hash_is_of_the_whole_file() {
    use sha2::Digest as _;
    let bytes = fixture("frames.parquet");
    let hash = sha2::Sha256::digest(&bytes);
    let digits = hash.iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}"));
    assert_eq!(read(bytes, TYPED).unwrap().0.sha256, digits);
}

#[test]
fn a_mapping_that_does_not_fit_gets_a_word_of_what_to_do() {
    let open =
        |columns: &Options| match Log::of("t", Input::memory(fixture("frames.parquet")), columns) {
            Err(error) => error.to_string(),
            Ok(_) => String::new(),
        };
    assert!(open(&Options::default()).contains("When, Bus, Identifier, Long, Bytes, Direction"));
    let missing = open(&options("time=Clock,id=Identifier,data=Bytes"));
    assert!(missing.contains("no column 'Clock'; it has: When, Bus"), "{missing}");
    let wrong = open(&options("time=Identifier,id=Identifier,data=Bytes"));
    assert!(wrong.contains("column 'Identifier' of type UInt32 cannot be a time"), "{wrong}");
    let wrong = open(&options("time=When,id=Identifier,data=Long"));
    assert!(wrong.contains("column 'Long' of type Boolean cannot be data"), "{wrong}");
}

#[test]
fn rows_that_make_no_frame_are_listed_by_row() {
    // Names of directions are no data: every row is lost, and the first hundred are listed.
    let (told, _) =
        read(fixture("frames.parquet"), "time=When,id=Identifier,data=Direction").unwrap();
    assert_eq!((told.frames, told.losses.of(Loss::Malformed)), (0, 200));
    assert_eq!(told.losses.listed()[1].place, Place::Line(2));
}

#[test]
fn a_file_cut_off_does_not_open() {
    let mut bytes = fixture("frames.parquet");
    bytes.truncate(bytes.len() - 9);
    let error = read(bytes, TYPED).unwrap_err().to_string();
    assert!(error.contains("does not open"), "{error}");
}

#[test]
fn parquet_survives_mutations() {
    for (name, columns) in [("frames.parquet", TYPED), ("frames-text.parquet", TEXT)] {
        let whole = fixture(name);
        let (mut some, mut lost) = (0, 0);
        let mut chance = 0x9E37_79B9_7F4A_7C15_u64;
        let mut below = |end: usize| {
            chance ^= chance << 13;
            chance ^= chance >> 7;
            chance ^= chance << 17;
            usize::try_from(chance % (end as u64)).unwrap()
        };
        for _ in 0..10_000 {
            let mut bytes = whole.clone();
            for _ in 0..=below(3) {
                let at = below(bytes.len() - 4);
                match below(4) {
                    0 => bytes[at] = u8::try_from(below(256)).unwrap(),
                    1 => bytes[at] ^= 1 << below(8),
                    2 => bytes[at..at + 4].fill(0xFF),
                    _ => {
                        let to = below(bytes.len() - 4);
                        bytes.copy_within(at..at + 4, to);
                    }
                }
            }
            if let Ok((told, _)) = read(bytes, columns) {
                some += u32::from(told.frames > 0);
                lost += u32::from(told.losses.bad_records() > 0);
            }
        }
        // Enough mutants still hold frames, and enough were seen to be broken.
        assert!(some > 1000 && lost > 100, "{name}: {some} with frames, {lost} with losses");
    }
}
