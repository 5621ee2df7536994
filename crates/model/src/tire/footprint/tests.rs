use proptest::prelude::*;
use quantity::Force;

use super::*;
use crate::tire::fixture;

fn kpa(value: f64) -> ColdPressure {
    ColdPressure::from_kpa(value)
}

fn kn(value: f64) -> Mass {
    Force::from_kn(value).as_mass()
}

fn section() -> Section {
    Section::of(&fixture::tire_11r22_5()).unwrap()
}

fn of(load: f64, p: f64) -> Footprint {
    footprint_of(&fixture::tire_11r22_5(), ContactModel::RoadTruck, kn(load), kpa(p)).unwrap()
}

// van Vuuren 1974, line fit of prints of several commercial truck tires.
#[test]
fn table_truck_line() {
    for (p, observed) in [(350.0, 359.0), (500.0, 450.0), (720.0, 584.0), (1000.0, 755.0)] {
        let p_m = mean_contact_pressure(section(), ContactModel::RoadTruck, kpa(p)).unwrap();
        assert!((p_m.as_kpa() - observed).abs() < 1.0, "{p}: {p_m}");
    }
}

// TM 5-850-1 Table B-2, p. B-5: tandem military tractor, 5610 lb a tire at 80 psi on 82.5 in².
#[test]
fn table_army_highway_tire_within_four_percent() {
    let p_m =
        mean_contact_pressure(section(), ContactModel::RoadTruck, ColdPressure::from_psi(80.0));
    assert!((p_m.unwrap() / Stress::from_psi(68.0) - 1.0).abs() < 0.04);
}

// 11R22.5 by hand: load, pressure, area cm², length mm.
#[test]
fn worked_11r22_5() {
    for (load, p, area, length) in
        [(27.46, 720.0, 470.0, 267.0), (18.9, 758.0, 311.0, 177.0), (18.9, 310.0, 566.0, 322.0)]
    {
        let patch = of(load, p);
        assert!((patch.area.as_cm2() - area).abs() < 1.0, "{}", patch.area);
        assert!((patch.length.as_mm() - length).abs() < 1.0, "{}", patch.length);
        assert!(!patch.length_capped);
    }
}

#[test]
fn worked_overloaded_tire_runs_out_of_length() {
    let patch = of(27.46, 310.0);
    assert!(patch.length_capped && patch.extrapolated);
    assert!((patch.length.as_mm() - 449.0).abs() < 1.0);
    assert!((patch.mean_pressure.as_kpa() - 348.0).abs() < 1.0);
}

#[test]
fn worked_growth_is_a_band() {
    let growth = area_growth(section(), kpa(758.0), kpa(310.0)).unwrap();
    assert!((growth.low - 1.82).abs() < 0.01 && (growth.high - 2.33).abs() < 0.01);
    assert!((growth.expected - 1.82).abs() < 0.01);
    let half = area_growth(section(), ColdPressure::from_psi(100.0), ColdPressure::from_psi(50.0))
        .unwrap();
    assert!((half.low - 1.59).abs() < 0.01 && (half.high - 1.92).abs() < 0.02, "{half:?}");
}

// Implement makers' figures in the farm press: 800/45R26.5 at 160 kPa 163 kPa, 710/45R22.5 at
// 260 kPa 216 kPa.
#[test]
fn table_flotation_tires_press_with_their_pressure() {
    for (p, observed) in [(160.0, 163.0), (260.0, 216.0)] {
        let p_m = mean_contact_pressure(section(), ContactModel::Flotation, kpa(p)).unwrap();
        assert!((p_m.as_kpa() / observed - 1.0).abs() < 0.25);
    }
}

#[test]
fn what_leaves_no_patch_is_refused() {
    let try_of = |load, p, mm| {
        let delta = Length::from_mm(mm);
        footprint(section(), ContactModel::RoadTruck, kn(load), kpa(p), delta)
    };
    assert!(matches!(try_of(0.0, 500.0, 30.0), Err(FootprintError::Load { .. })));
    assert!(matches!(try_of(18.9, 20.0, 30.0), Err(FootprintError::Pressure { .. })));
    assert!(matches!(try_of(18.9, 1500.0, 30.0), Err(FootprintError::Pressure { .. })));
    assert!(matches!(try_of(18.9, 500.0, 0.0), Err(FootprintError::Deflection { .. })));
    assert!(matches!(try_of(18.9, 500.0, 150.0), Err(FootprintError::Deflection { .. })));
}

#[test]
fn dimensions_alone_land_near_the_data_sheet() {
    let delta = deflection_from_dimensions(section(), kn(18.9), kpa(720.0)).unwrap();
    assert!((delta.as_mm() / 23.9 - 1.0).abs() < 0.1, "{delta}");
}

#[test]
fn an_aspect_ratio_stands_for_the_rim() {
    let mm = Length::from_mm;
    let by_aspect = Section::with_aspect(mm(279.0), mm(1052.0), 240.25 / 2.79).unwrap();
    assert!((by_aspect.height() / section().height() - 1.0).abs() < 1e-9);
    assert!(Section::with_aspect(mm(279.0), mm(1052.0), f64::NAN).is_err());
    assert!(Section::with_aspect(mm(279.0), mm(1052.0), 200.0).is_err());
}

proptest! {
    #[test]
    fn more_pressure_gives_less_area(load in 8.0..25.0f64, p in 250.0..800.0f64, more in 5.0..90.0f64) {
        prop_assert!(of(load, p + more).area < of(load, p).area);
        prop_assert!(of(load, p + more).mean_pressure >= of(load, p).mean_pressure);
    }

    #[test]
    fn the_patch_carries_the_load(load in 8.0..25.0f64, p in 250.0..900.0f64) {
        let patch = of(load, p);
        prop_assert!((patch.mean_pressure.as_kpa() * patch.area.as_m2() - load).abs() < 1e-9);
        prop_assert!(patch.low < patch.area && patch.area < patch.high);
        prop_assert!(patch.lowest_pressure() < patch.highest_pressure());
        // An overloaded tire presses with its inflation pressure and more: the band must hold it.
        prop_assert!(patch.highest_pressure().as_kpa() >= p);
    }

    #[test]
    fn the_model_grows_within_the_band(from in 400.0..1000.0f64, to in 60.0..400.0f64) {
        let growth = area_growth(section(), kpa(from), kpa(to)).unwrap();
        prop_assert!(growth.low <= growth.expected + 1e-12);
        prop_assert!(growth.expected <= growth.high + 1e-12);
    }
}
