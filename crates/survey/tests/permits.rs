//! Permits of an authority, by stretch of a route.

mod quarry_edits;

use model::route::{Permit, StatedPressure};
use quarry_edits::*;
use survey::Folder;

const TERMS: &str = r#"number = "RA 88/2027"
authority = "County road office"
valid_from = 2027-01-01
expires = 2027-12-31
pressures = "cold"

[[stretches]]
route = "bench-to-plant"
from_km = 9.5
to_km = 20
minimum_pressure_kpa = 350
maximum_pressure_kpa = 600
tolerance_kpa = 35
speed_kmh = 70
gross_mass_t = 44
evidence_interval_s = 30
"#;

fn permitted() -> Folder {
    let mut folder = quarry();
    folder.insert(PERMIT, TERMS);
    folder
}

fn with(old: &str, new: &str) -> Folder {
    let mut folder = permitted();
    edit(&mut folder, PERMIT, old, new);
    folder
}

fn permits(folder: &Folder) -> Vec<(f64, f64, Option<Permit>)> {
    let survey = load(folder).0.unwrap();
    let legs = &survey.hauls[0].route.legs;
    legs.iter().map(|leg| (leg.from.as_km(), leg.to.as_km(), leg.permit.clone())).collect()
}

#[test]
fn legs_are_cut_where_terms_begin_and_end() {
    let legs = permits(&permitted());
    let bounds: Vec<(f64, f64, bool)> =
        legs.iter().map(|(from, to, permit)| (*from, *to, permit.is_some())).collect();
    let wanted = [(0.0, 1.2, false), (1.2, 9.5, false), (9.5, 20.0, true), (20.0, 31.0, false)];
    assert_eq!(bounds, wanted);
    let permit = legs[2].2.as_ref().unwrap();
    assert!(permit.in_force);
    assert_eq!(permit.number, "RA 88/2027");
    assert_eq!(permit.minimum, Some(StatedPressure::Cold(quantity::ColdPressure::from_kpa(350.0))));
    assert!((permit.gross_mass.unwrap().as_kg() - 44_000.0).abs() < 1e-6);
    assert!((permit.evidence_interval.unwrap().as_s() - 30.0).abs() < 1e-9);
    assert!((permit.tolerance.unwrap().as_kpa() - 35.0).abs() < 1e-9);
    let over = with("from_km = 9.5\nto_km = 20", "from_km = 0.4\nto_km = 2");
    let bounds: Vec<(f64, f64)> = permits(&over).iter().map(|leg| (leg.0, leg.1)).collect();
    assert_eq!(bounds, [(0.0, 0.4), (0.4, 1.2), (1.2, 2.0), (2.0, 9.5), (9.5, 31.0)]);
}

#[test]
fn pressures_are_cold_or_as_read() {
    let legs = permits(&with("\"cold\"", "\"as_read\""));
    let wanted = StatedPressure::AsRead(quantity::GaugePressure::from_kpa(600.0));
    assert_eq!(legs[2].2.as_ref().unwrap().maximum, Some(wanted));
}

#[test]
fn a_slower_permit_is_kept_and_told() {
    tells(&permitted(), "permits/county.toml:14:13: warning: the permit allows 70 km/h");
    let survey = load(&permitted()).0.unwrap();
    let limits: Vec<f64> =
        survey.hauls[0].route.legs.iter().map(|leg| leg.speed_limit.as_kmh().round()).collect();
    assert_eq!(limits, [25.0, 50.0, 70.0, 80.0]);
    assert!(problems(&with("speed_kmh = 70", "speed_kmh = 80")).is_empty());
}

#[test]
fn nothing_heavier_than_the_permit_is_hauled() {
    let folder = with("gross_mass_t = 44", "gross_mass_t = 40");
    tells(&folder, "hauls/aggregate.toml:6:15: 'laden' weighs 40800 kg");
    tells(&folder, "the permit RA 88/2027 allows 40000 kg");
    assert!(load(&folder).0.unwrap().hauls.is_empty());
}

#[test]
fn a_permit_out_of_its_days_is_told_and_binds_nothing() {
    let late = with("expires = 2027-12-31", "expires = 2027-02-28");
    tells(&late, "permits/county.toml:4:11: warning: this permit counted until 2027-02-28");
    assert!(!permits(&late)[2].2.as_ref().unwrap().in_force);
    let early = with("valid_from = 2027-01-01", "valid_from = 2027-04-01");
    tells(&early, "warning: this permit counts only from 2027-04-01");
    assert!(!permits(&early)[2].2.as_ref().unwrap().in_force);
    let survey = load(&early).0.unwrap();
    assert!((survey.hauls[0].route.legs[2].speed_limit.as_kmh() - 80.0).abs() < 1e-9);
    tells(&with("expires = 2027-12-31", "expires = 2026-12-31"), "lies before the first");
}

#[test]
fn one_permit_in_force_covers_a_stretch() {
    let mut folder = permitted();
    let second = TERMS.replace("from_km = 9.5", "from_km = 15").replace("to_km = 20", "to_km = 25");
    folder.insert("permits/district.toml", &*second);
    tells(
        &folder,
        "permits/district.toml:9:11: 15 km to 20 km is covered by permits/county.toml, line 9 too",
    );
    assert!(load(&folder).0.unwrap().hauls.is_empty());
    // One that is not in force stands back.
    folder.insert("permits/district.toml", second.replace("2027-12-31", "2027-01-31"));
    let legs = permits(&folder);
    assert!(legs.iter().any(|(from, _, permit)| {
        (*from - 15.0).abs() < 1e-9 && permit.as_ref().is_some_and(|permit| permit.in_force)
    }));
}

#[test]
fn stretches_lie_on_a_route_that_is_there() {
    tells(&with("route = \"bench-to-plant\"", "route = \"bench\""), "no such file in routes/");
    tells(&with("to_km = 20", "to_km = 40"), "40 km lies beyond the route, which is 31 km long");
    tells(&with("to_km = 20", "to_km = 8"), "ends before it begins");
    let crossed = with("minimum_pressure_kpa = 350", "minimum_pressure_kpa = 650");
    tells(&crossed, "the lowest pressure is above the highest");
}

#[test]
fn an_unreadable_permit_stops_the_hauls_it_may_cover() {
    let folder = with("pressures = \"cold\"\n", "");
    tells(&folder, "pressures is missing");
    assert!(load(&folder).0.unwrap().hauls.is_empty());
}
