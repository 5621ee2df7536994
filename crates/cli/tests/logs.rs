//! `airtide calc frame`, and `airtide logs` where it is built in.

mod common;

use common::airtide;

#[test]
fn worked_frame_of_air_supply() {
    // A real frame: service air 800 and 808 kPa, the rest not available.
    let data = "FF FF 64 65 FF FF FF FF";
    let document = airtide(&["calc", "frame", "--id", "18FEAE31", "--data", data, "--json"]).json();
    let results = &document["results"];
    assert_eq!(
        (results["pgn"].as_u64(), results["source_address"].as_u64()),
        (Some(65198), Some(49))
    );
    let signals = results["signals"].as_array().unwrap();
    let of = |spn: u64| signals.iter().find(|signal| signal["spn"] == spn).unwrap();
    assert_eq!(of(1087)["value"].as_f64(), Some(800.0));
    assert_eq!((of(1088)["value"].as_f64(), of(1088)["unit"].as_str()), (Some(808.0), Some("kPa")));
    assert_eq!((of(46)["state"].as_str(), of(46)["value"].is_null()), (Some("absent"), true));
}

#[test]
fn a_frame_that_is_none_is_refused() {
    for (id, data) in [
        ("3FFFFFFF", "00"),
        ("18FEAE31", "FFF"),
        ("xyz", "00"),
        ("18FEAE31", "00 11 22 33 44 55 66 77 88"),
    ] {
        let answer = airtide(&["calc", "frame", "--id", id, "--data", data]);
        assert_eq!(answer.code, 2, "{id} {data}");
    }
}

#[cfg(feature = "logs")]
#[test]
fn logs_are_shown_by_content_and_imported_once() {
    let fixtures = concat!(env!("CARGO_MANIFEST_DIR"), "/../logs/tests/fixtures/");
    for name in ["frames.log", "frames.asc", "frames.blf", "frames.pcap"] {
        let document = airtide(&["logs", "show", &format!("{fixtures}{name}"), "--json"]).json();
        let (frames, bad) = (document["frames"].as_u64(), document["bad_records"].as_u64());
        assert_eq!((frames, bad), (Some(200), Some(0)), "{name}");
    }
    let folder = tempfile::tempdir().unwrap();
    let log = format!("{fixtures}frames.log");
    let call = ["logs", "import", &log, "--unit", "12", "--out", "series"];
    let first = common::airtide_in(folder.path(), &call);
    assert_eq!(first.code, 0, "{}", first.err);
    assert!(folder.path().join("series/12/grid/2023-11-14.parquet").is_file());
    assert_eq!(common::airtide_in(folder.path(), &call).code, 1);
    assert_eq!(airtide(&["logs", "show", "no-such.log"]).code, 1);
}

#[cfg(not(feature = "logs"))]
#[test]
fn a_build_without_logs_says_which_has_them() {
    let answer = airtide(&["logs", "show", "some.log"]);
    assert_eq!(answer.code, 2);
    assert!(answer.err.contains("--features logs"), "{}", answer.err);
}
