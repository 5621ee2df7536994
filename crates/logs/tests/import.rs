//! Series in files: what goes in comes out, with its states, by a second look through the Parquet
//! reader.
#![cfg(feature = "store")]

use std::fmt::Write as _;
use std::fs::File;
use std::path::Path;

use arrow_array::RecordBatch;
use arrow_array::cast::AsArray;
use arrow_array::types::{Float32Type, TimestampMicrosecondType, UInt8Type, UInt32Type};
use logs::read::{Input, Log, Options};
use logs::store::{Choice, Import, ImportError, Imported};
use logs::{Definitions, SourceAddress};
use parquet::arrow::arrow_reader::ParquetRecordBatchReaderBuilder;

fn import(text: &str, sources: &[u8]) -> (tempfile::TempDir, Imported) {
    let folder = tempfile::tempdir().unwrap();
    let definitions = Definitions::default();
    let sources = sources.iter().map(|source| SourceAddress(*source)).collect();
    let mut import =
        Import::start(folder.path(), "T-12", &definitions, Choice { sources }).unwrap();
    let input = Input::memory(text.as_bytes().to_vec());
    import.log(Log::of("test", input, &Options::default()).unwrap()).unwrap();
    let imported = import.finish().unwrap();
    (folder, imported)
}

fn table(path: &Path) -> (RecordBatch, Vec<(String, String)>) {
    let builder = ParquetRecordBatchReaderBuilder::try_new(File::open(path).unwrap()).unwrap();
    let metadata = builder.metadata().file_metadata().key_value_metadata().unwrap().clone();
    let metadata = metadata.into_iter().filter_map(|one| Some((one.key, one.value?))).collect();
    let batches: Vec<RecordBatch> = builder.build().unwrap().map(Result::unwrap).collect();
    assert_eq!(batches.len(), 1);
    (batches[0].clone(), metadata)
}

fn floats(batch: &RecordBatch, name: &str) -> Vec<Option<f32>> {
    batch.column_by_name(name).unwrap().as_primitive::<Float32Type>().iter().collect()
}

fn bytes(batch: &RecordBatch, name: &str) -> Vec<u8> {
    batch.column_by_name(name).unwrap().as_primitive::<UInt8Type>().values().to_vec()
}

#[test]
fn worked_native_samples_keep_states_and_true_times() {
    // Tire condition: 604 kPa, not available, error; worked out by hand.
    let text = "(1700000000.250000) can0 18FEF433#21972027C132005F\n\
        (1700000010.500000) can0 18FEF433#21FFFFFFFFFFFFFF\n\
        (1700000020.750000) can0 18FEF433#21FEFEFEAAFEFEDF\n";
    let (_folder, imported) = import(text, &[]);
    assert_eq!((imported.rows, imported.off_grid), (3, 0));
    let path = imported.folder.join("native/65268_tire_condition/2023-11-14.parquet");
    let (batch, metadata) = table(&path);
    let times = batch.column(0).as_primitive::<TimestampMicrosecondType>().values().to_vec();
    assert_eq!(times, [1_700_000_000_250_000, 1_700_000_010_500_000, 1_700_000_020_750_000]);
    assert_eq!(floats(&batch, "tire_pressure"), [Some(604.0), None, None]);
    assert_eq!(bytes(&batch, "tire_pressure_q"), [0, 1, 2]);
    assert_eq!(bytes(&batch, "source_address"), [0x33; 3]);
    let get = |key: &str| metadata.iter().find(|(known, _)| known == key).unwrap().1.as_str();
    assert_eq!(get("airtide.unit"), "T-12");
    assert_eq!((get("airtide.schema"), get("airtide.time_base")), ("airtide.series/1", "epoch"));
    assert!(get("airtide.columns").contains("tire_pressure=241,kPa"));
    assert_eq!(get("airtide.inputs_sha256").len(), 64);
}

#[test]
fn worked_grid_holds_last_lowest_highest_and_age() {
    // Wheel speed every 100 ms in two of eight seconds: 54.39 km/h is 0x3664, steps of 1/256.
    let mut text = String::new();
    for at in 0..10 {
        let raw = 0x3600 + at * 0x10;
        let [low, high, ..] = u32::to_le_bytes(raw);
        writeln!(text, "(1700000000.{at}00000) can0 18FEF100#FF{low:02X}{high:02X}FCFF6800CF")
            .unwrap();
    }
    text += "(1700000007.000000) can0 18FEF100#FF0036FCFF6800CF\n";
    let (_folder, imported) = import(&text, &[]);
    let (batch, _) = table(&imported.folder.join("grid/2023-11-14.parquet"));
    assert_eq!(batch.num_rows(), 8);
    let km_h = |raw: u16| Some(f32::from(raw) / 256.0);
    assert_eq!(floats(&batch, "wheel_speed")[0], km_h(0x3690));
    assert_eq!(floats(&batch, "wheel_speed_min")[0], km_h(0x3600));
    assert_eq!(floats(&batch, "wheel_speed_max")[0], km_h(0x3690));
    assert_eq!(bytes(&batch, "wheel_speed_q"), [0, 0, 0, 0, 3, 3, 3, 0]);
    assert_eq!(floats(&batch, "wheel_speed")[5], km_h(0x3690));
    // Never available in any row: no column at all.
    assert!(batch.column_by_name("cruise_set_speed_q").is_some());
    assert!(batch.column_by_name("tire_pressure_at_21").is_none());
}

#[test]
fn pressures_of_tires_say_how_they_came_to_be_and_how_old_they_are() {
    // A tire sensor at 0 and 5 s with an error between; the line sampled at 1 s.
    let text = "(1700000000.000000) can0 18FEF433#0064FFFFFFFFFFFF\n\
        (1700000001.000000) can0 18FE7A33#20032003FFFFFFFF\n\
        (1700000002.000000) can0 18FEF433#00FEFFFFFFFFFFFF\n\
        (1700000005.000000) can0 18FEF433#0064FFFFFFFFFFFF\n";
    let (_folder, imported) = import(text, &[]);
    let (batch, metadata) = table(&imported.folder.join("grid/2023-11-14.parquet"));
    let ages = |name: &str| -> Vec<Option<u32>> {
        batch.column_by_name(name).unwrap().as_primitive::<UInt32Type>().iter().collect()
    };
    let some = |seconds: &[u32]| seconds.iter().copied().map(Some).collect::<Vec<_>>();
    assert_eq!(ages("tire_pressure_at_00_age"), some(&[0, 1, 2, 3, 4, 0]));
    let line = ages("drive_channel_pressure_age");
    assert_eq!((line[0], &line[1..]), (None, &some(&[0, 1, 2, 3, 4])[..]));
    let told = metadata.iter().find(|(key, _)| key == "airtide.measured").unwrap().1.as_str();
    assert!(told.contains("tire_pressure_at_00=tire sensor"), "{told}");
    assert!(told.contains("drive_channel_pressure=line sampled"), "{told}");
}

#[test]
fn the_register_says_who_is_believed() {
    let text = "(1700000000.000000) can0 18FEF100#FF0010FCFF6800CF\n\
        (1700000000.100000) can0 18FEF100#FF0010FCFF6800CF\n\
        (1700000000.200000) can0 18FEF131#FF0020FCFF6800CF\n";
    for (sources, expected) in [(&[][..], 0x1000), (&[0x31][..], 0x2000), (&[0x77, 0x00], 0x1000)] {
        let (_folder, imported) = import(text, sources);
        let (batch, _) = table(&imported.folder.join("grid/2023-11-14.parquet"));
        assert_eq!(floats(&batch, "wheel_speed")[0], Some(expected as f32 / 256.0));
    }
}

#[test]
fn each_tire_and_each_day_is_on_its_own() {
    let text = "(1700006390.000000) can0 18FEF433#00642027C132005F\n\
        (1700006391.000000) can0 18FEF433#01652027C132005F\n\
        (1700006410.000000) can0 18FEF433#00662027C132005F\n";
    let (_folder, imported) = import(text, &[]);
    let (first, _) = table(&imported.folder.join("grid/2023-11-14.parquet"));
    let (second, _) = table(&imported.folder.join("grid/2023-11-15.parquet"));
    assert_eq!(floats(&first, "tire_pressure_at_00")[0], Some(400.0));
    assert_eq!(floats(&first, "tire_pressure_at_01"), [None, Some(404.0)]);
    assert_eq!(bytes(&first, "tire_pressure_at_01_q"), [4, 0]);
    assert_eq!(floats(&second, "tire_pressure_at_00"), [Some(408.0)]);
}

#[test]
fn nothing_is_overwritten_and_nothing_half_stays() {
    let folder = tempfile::tempdir().unwrap();
    let definitions = Definitions::default();
    let start = |unit: &str| Import::start(folder.path(), unit, &definitions, Choice::default());
    drop(start("T-1").unwrap());
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
    start("T-1").unwrap().finish().unwrap();
    assert!(matches!(start("T-1"), Err(ImportError::There { .. })));
    assert!(matches!(start("../x"), Err(ImportError::BadUnit { .. })));
}
