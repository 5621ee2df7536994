//! Windows under a permit's readings, and of groups with lifted axles.

mod common;

use common::{DRIVE, EMPTY, HIGHWAY, LADEN, SPUR, cell, id, quiet};
use model::haul_cycle::HaulCycle;
use model::route::{Permit, StatedPressure};
use plan::window::{Basis, MaximumKind, MinimumKind, worst_tire};
use plan::{Caution, Detail, Plan};
use quantity::{ColdPressure, GaugePressure, Mass};

fn permitted(minimum: Option<StatedPressure>, maximum: Option<StatedPressure>) -> HaulCycle {
    let mut haul = quiet();
    for leg in &mut haul.route.legs {
        leg.permit = Some(Permit {
            number: "88".into(),
            authority: "road office".into(),
            minimum,
            maximum,
            tolerance: None,
            speed: None,
            gross_mass: None,
            evidence_interval: None,
            in_force: true,
            expires: None,
        });
    }
    haul
}

#[test]
fn a_lowest_reading_holds_on_the_coldest_tire() {
    let stated = |kpa| Some(StatedPressure::AsRead(GaugePressure::from_kpa(kpa)));
    let mut haul = permitted(stated(650.0), None);
    haul.weather.coldest = quantity::Temperature::from_celsius(-20.0);
    let window = cell(&haul, id(DRIVE, EMPTY, 0, SPUR)).window.unwrap();
    let limit = window.governing_minimum();
    assert_eq!(limit.kind, MinimumKind::Permit);
    // Charles's law by hand: read 650 at -20, the tire holds more at the reference temperature.
    let kelvin = |celsius: f64| celsius + 273.15;
    let ambient = haul.weather.ambient_pressure.as_kpa();
    let reference = haul.weather.reference.as_celsius();
    let cold = (650.0 + ambient) * kelvin(reference) / kelvin(-20.0) - ambient;
    assert!((limit.pressure.as_kpa() - cold).abs() < 0.01, "{:?} {cold}", limit.pressure);
}

#[test]
fn a_highest_reading_holds_on_the_warmest_tire() {
    let reading = GaugePressure::from_kpa(500.0);
    let haul = permitted(None, Some(StatedPressure::AsRead(reading)));
    let found = cell(&haul, id(DRIVE, EMPTY, 0, SPUR));
    let window = found.window.unwrap();
    let limit = window.maximum.iter().find(|one| one.kind == MaximumKind::Permit).unwrap();
    let wanted = Basis::AsRead { reading, temperature: found.warmest_tire };
    assert_eq!(limit.basis, wanted);
    assert!(limit.pressure.as_kpa() <= reading.as_kpa());
    let cold = permitted(None, Some(StatedPressure::Cold(ColdPressure::from_kpa(500.0))));
    let window = cell(&cold, id(DRIVE, EMPTY, 0, SPUR)).window.unwrap();
    let of_cold = window.maximum.iter().find(|one| one.kind == MaximumKind::Permit).unwrap();
    assert!(limit.pressure <= of_cold.pressure, "warm tires read more");
}

#[test]
fn axles_that_stay_down_carry_the_load_of_those_lifted() {
    let mut haul = quiet();
    let loads = |haul: &HaulCycle| {
        let combination = &haul.combination;
        worst_tire(1, &combination.groups[1], &combination.load_states[LADEN], 0.0).load
    };
    let both = loads(&haul);
    haul.combination.load_states[LADEN].axles_down[1] = 1;
    assert!((loads(&haul) / both - 2.0).abs() < 1e-12);
    haul.combination.load_states[LADEN].axles_down[1] = 0;
    assert_eq!(loads(&haul), Mass::ZERO);
}

#[test]
fn a_lifted_group_sets_no_limit_on_its_channel() {
    // Both groups on one channel: with the heavy one lifted the other alone decides.
    let mut haul = quiet();
    haul.combination.groups[2].channel = Some(DRIVE);
    let state = &mut haul.combination.load_states[LADEN];
    state.groups[2].mass = state.groups[1].mass * 1.2;
    let with = cell(&haul, id(DRIVE, LADEN, 0, HIGHWAY)).window.unwrap();
    assert_eq!(with.governing_minimum().group, 2);
    haul.combination.load_states[LADEN].axles_down[2] = 0;
    let without = cell(&haul, id(DRIVE, LADEN, 0, HIGHWAY)).window.unwrap();
    assert!(without.minimum.iter().all(|limit| limit.group == 1));
    assert!(without.governing_minimum().pressure < with.governing_minimum().pressure);
    // With nothing else on the channel the lifted tires still keep their bead.
    haul.combination.load_states[LADEN].axles_down[1] = 0;
    let alone = cell(&haul, id(DRIVE, LADEN, 0, HIGHWAY));
    assert!(alone.set.is_some());
}

#[test]
fn a_raised_body_and_unknown_loads_are_told() {
    let mut haul = quiet();
    let plan = |haul: &HaulCycle| Plan::of(haul, &Detail::default()).unwrap().cautions;
    let raised = Caution::BodyRaised { load_state: EMPTY };
    let treated = Caution::TreatedAs { load_state: EMPTY, other: LADEN };
    let before = plan(&haul);
    assert!(!before.contains(&raised) && !before.contains(&treated));
    haul.combination.load_states[EMPTY].body_raised = true;
    haul.combination.load_states[EMPTY].treat_as = Some(LADEN);
    let after = plan(&haul);
    assert!(after.contains(&raised) && after.contains(&treated));
}
