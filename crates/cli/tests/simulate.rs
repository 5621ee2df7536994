//! The run in time as CSV and as a document.

mod common;

use common::{airtide_in, with_starter};

#[test]
fn the_table_names_units_and_agrees_with_the_document() {
    let folder = with_starter();
    let call = ["simulate", "fleet", "--every", "20s"];
    let table = airtide_in(folder.path(), &call);
    let document = airtide_in(folder.path(), &[&call[..], &["--json"]].concat()).json();
    assert_eq!(document["schema"], "airtide.run/1");
    let mut lines = table.out.lines();
    let header: Vec<&str> = lines.next().unwrap().split(',').collect();
    for column in ["haul", "time_s", "km", "speed_kmh", "supply_kpa", "drive_tire_kpa"] {
        assert!(header.contains(&column), "{header:?}");
    }
    let at = |name: &str| header.iter().position(|one| *one == name).unwrap();
    let samples = document["samples"].as_array().unwrap();
    let rows: Vec<Vec<&str>> = lines.map(|line| line.split(',').collect()).collect();
    assert_eq!(rows.len(), samples.len());
    for (row, sample) in rows.iter().zip(samples) {
        assert_eq!(row.len(), header.len());
        let number = |name: &str| row[at(name)].parse::<f64>().unwrap();
        assert!((number("time_s") - sample["time_s"].as_f64().unwrap()).abs() <= 0.005 + 1e-9);
        assert!((number("speed_kmh") - sample["speed_kmh"].as_f64().unwrap()).abs() <= 0.00501);
        assert!(
            (number("drive_tire_kpa") - sample["tire_kpa"][0].as_f64().unwrap()).abs() < 0.0051
        );
    }
}

#[test]
fn a_time_step_of_nothing_is_a_wrong_call() {
    let folder = with_starter();
    for every in ["0s", "-1s", "1", "1psi"] {
        let ran = airtide_in(folder.path(), &["simulate", "fleet", &format!("--every={every}")]);
        assert_eq!(ran.code, 2, "{every}: {}", ran.err);
        assert!(ran.out.is_empty());
    }
}
