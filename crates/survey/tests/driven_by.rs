//! A haul as certain units drive it.

mod quarry_edits;

use model::haul_cycle::HaulCycle;
use quarry_edits::*;
use survey::{Folder, Survey, Unit};

const STEER: &str = "steer-11r22-5-h";
const DRIVE: &str = "drive-11r22-5-g";

/// Two tractors and a trailer: T-101 is slow and has a steer tire at one drive position.
const UNITS: &str = r#"[[units]]
number = "T-101"
type = "tractor"
tires = { "drive.2.left.inner" = "steer-11r22-5-h" }
fitted = [
    { what = "delivery", share_pct = 91, date = 2027-02-11 },
    { what = "delivery", share_pct = 80, date = 2026-02-11 },
    { what = "conductance", channel = "drive", share_pct = 87.5, date = 2027-02-11 },
]

[[units]]
number = "T-102"
type = "tractor"
fitted = [
    { what = "delivery", share_pct = 105, date = 2027-02-11 },
    { what = "tire_volume", channel = "drive", share_pct = 110, date = 2027-02-11 },
]

[[units]]
number = "P-7"
type = "tipper"
pool = true
"#;

fn survey() -> Survey {
    let mut folder: Folder = quarry();
    folder.insert("units.toml", UNITS);
    let (survey, problems) = load(&folder);
    assert!(problems.is_empty(), "{problems:#?}");
    survey.unwrap()
}

fn by(survey: &Survey, numbers: &[&str]) -> Survey {
    let units: Vec<&Unit> =
        survey.fleet.iter().filter(|unit| numbers.contains(&unit.number.as_str())).collect();
    survey.driven_by(&units)
}

fn drive_tires(haul: &HaulCycle) -> Vec<String> {
    haul.combination.groups[1].tire_models().map(|tire| tire.name.clone()).collect()
}

fn air(haul: &HaulCycle) -> [f64; 3] {
    let drive = haul.combination.channels.iter().find(|channel| channel.name == "drive").unwrap();
    let supply = haul.combination.supply.measured_delivery;
    [supply, drive.measured.conductance, drive.measured.tire_volume]
}

/// Ratios as they were written.
fn same(found: [f64; 3], written: [f64; 3]) {
    for (found, written) in found.iter().zip(written) {
        assert!((found - written).abs() < 1e-12, "{found} for {written}");
    }
}

#[test]
fn a_type_has_the_tires_of_all_its_units_and_no_measured_air() {
    let survey = survey();
    assert_eq!(drive_tires(&survey.hauls[0]), [DRIVE, STEER]);
    same(air(&survey.hauls[0]), [1.0, 1.0, 1.0]);
}

#[test]
fn a_unit_has_its_own_tires_and_the_last_measured_of_its_air() {
    let survey = survey();
    let slow = by(&survey, &["T-101"]);
    assert_eq!(slow.driven_by, ["T-101"]);
    assert_eq!(drive_tires(&slow.hauls[0]), [DRIVE, STEER]);
    same(air(&slow.hauls[0]), [0.91, 0.875, 1.0]);
    let other = by(&survey, &["T-102"]);
    assert_eq!(drive_tires(&other.hauls[0]), [DRIVE]);
    same(air(&other.hauls[0]), [1.05, 1.0, 1.1]);
    // Another tractor's tires are not those of the trailer: it stays as its type.
    let trailer = &survey.hauls[0].combination.groups[2].tire.name;
    assert_eq!(&other.hauls[0].combination.groups[2].tire.name, trailer);
}

#[test]
fn of_several_units_the_slowest_counts_and_one_not_measured_is_as_its_type() {
    let survey = survey();
    let both = by(&survey, &["T-101", "T-102", "P-7"]);
    same(air(&both.hauls[0]), [0.91, 0.875, 1.1]);
    assert_eq!(drive_tires(&both.hauls[0]), [DRIVE, STEER]);
}

#[test]
fn narrowing_once_more_changes_nothing() {
    let survey = survey();
    let once = by(&survey, &["T-101"]);
    assert_eq!(by(&once, &["T-101"]).hauls, once.hauls);
}

#[test]
fn a_unit_without_a_place_leaves_no_haul() {
    let mut folder = quarry();
    let spare = "[[units]]\nnumber = \"X-1\"\ntype = \"spare\"\n";
    folder.insert("units.toml", format!("{UNITS}\n{spare}"));
    let truck = folder.text(TRUCK).unwrap().to_owned();
    folder.insert("vehicles/spare.toml", truck);
    let (survey, problems) = load(&folder);
    assert!(problems.iter().any(|one| one.message().contains("no combination")), "{problems:#?}");
    let survey = survey.unwrap();
    assert!(by(&survey, &["X-1"]).hauls.is_empty());
    assert_eq!(by(&survey, &["T-102"]).hauls.len(), survey.hauls.len());
}

#[test]
fn a_combination_that_names_a_unit_has_its_air_whoever_is_asked_for() {
    let mut folder = quarry();
    folder.insert("units.toml", UNITS);
    let text = folder.text(COMBINATION).unwrap().replace("tractor", "T-101");
    folder.insert(COMBINATION, text);
    let (survey, _) = load(&folder);
    same(air(&survey.unwrap().hauls[0]), [0.91, 0.875, 1.0]);
}
