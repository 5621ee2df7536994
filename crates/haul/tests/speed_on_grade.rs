//! Speed on a long constant grade against the steady root, a table and an outside root finder.

mod common;

use common::{HIGHWAY, Run, forward, laden, ramp, with_gross, without_caps};
use haul::{DrivingStyle, Envelope, Stepper, StepperError};
use model::haul_cycle::HaulCycle;
use model::motion::{RoadLoad, air_density};
use quantity::{AbsolutePressure, Density, GaugePressure, Length, Power, Speed};
use serde_json::Value;

const DENSITY: f64 = 1.2;

/// The haul at a gross mass, in air of 1.2 kg/m³, with no cap in the way.
fn haul(gross_t: f64) -> HaulCycle {
    let mut haul = without_caps(with_gross(gross_t));
    let one = AbsolutePressure::from_kpa(100.0);
    let thin = air_density(one, haul.weather.ambient).as_kg_per_m3();
    haul.weather.ambient_pressure = AbsolutePressure::from_kpa(100.0 * DENSITY / thin);
    haul
}

/// Speed after 60 km of one grade.
fn on_grade(gross_t: f64, rolling: f64, grade: f64, kmh: f64) -> Speed {
    let haul = haul(gross_t);
    let truck = common::truck(&haul);
    let course = forward(&ramp(63.0, grade, rolling, kmh), 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(HIGHWAY), 1, GaugePressure::from_psi(125.0)).unwrap();
    stepper.drive_to(&mut state, Length::from_km(60.0), &mut haul::NoRecord).unwrap();
    state.speed()
}

// Computed in our own notes for 63.5 t, 373 kW less 15 kW, efficiency 0.85, CdA 8 m², and cut off
// at 100 km/h: a regression level, not an outside number.
#[test]
fn regress_speed_on_grade_of_our_notes() {
    let rows = [
        (0.007, [100.0, 60.3, 36.8, 26.1, 20.2, 13.9]),
        (0.015, [89.2, 48.3, 31.7, 23.4, 18.5, 13.1]),
        (0.025, [64.1, 38.3, 26.9, 20.7, 16.8, 12.2]),
        (0.040, [42.8, 29.1, 21.9, 17.6, 14.7, 11.1]),
    ];
    for (rolling, speeds) in rows {
        for (grade, kmh) in [0.0, 0.02, 0.04, 0.06, 0.08, 0.12].into_iter().zip(speeds) {
            let found = on_grade(63.5, rolling, grade, 100.0).as_kmh();
            assert!((found - kmh).abs() < 0.06, "{rolling} {grade}: {found} not {kmh}");
        }
    }
}

// validation/scipy/speed_on_grade.py: the same cubic by the companion matrix of numpy.
#[test]
fn library_numpy_roots_give_the_same_steady_speed() {
    let text = include_str!("../../../validation/scipy/speed_on_grade.json");
    let document: Value = serde_json::from_str(text).unwrap();
    let powertrain = example::combination().powertrain;
    assert!(
        (document["engine_kw"].as_f64().unwrap() - powertrain.rated_power.as_kw()).abs() < 1e-9
    );
    let cases = document["cases"].as_array().unwrap();
    assert!(cases.len() > 80);
    for case in cases {
        let number = |key: &str| case[key].as_f64().unwrap();
        let (mass, rolling) = (number("mass_t"), number("rolling_resistance"));
        let (grade, speed) = (number("grade"), number("speed_m_per_s"));
        let load = RoadLoad {
            mass: quantity::Mass::from_t(mass),
            rolling_resistance: rolling,
            grade,
            drag_area: example::combination().drag_area,
            air_density: Density::from_kg_per_m3(DENSITY),
        };
        let root = load.steady_speed(Power::from_kw((373.0 - 15.0) * 0.85)).unwrap();
        assert!((root.as_m_per_s() / speed - 1.0).abs() < 1e-10, "{case}");
        let driven = on_grade(mass, rolling, grade, 299.0).as_m_per_s();
        assert!((driven / speed - 1.0).abs() < 1e-6, "{case}: {driven}");
    }
}

#[test]
fn a_climb_the_engine_cannot_make_names_its_chainage() {
    let mut haul = haul(63.5);
    haul.combination.powertrain.rated_power = Power::from_kw(110.0);
    let truck = common::truck(&haul);
    let legs = vec![example::leg("wall", 0.0, 4.0, model::route::Surface::Gravel, 50.0)];
    let route = common::route(legs, &[(0.0, 0.0), (2.5, 0.0), (4.0, 600.0)]);
    let course = forward(&route, 10.0);
    let error = Run::new(&truck, &course, laden(HIGHWAY)).drive(&mut haul::NoRecord).unwrap_err();
    let StepperError::Stalled { chainage, grade_pct } = error.clone() else {
        panic!("{error}");
    };
    assert!((2500.0..2600.0).contains(&chainage.as_m()), "{chainage}");
    assert!((grade_pct - 40.0).abs() < 1e-6);
    assert!(error.to_string().contains(&chainage.to_string()), "{error}");
}

#[test]
fn energy_at_a_steady_speed_is_force_times_road() {
    // 30 km at 50 km/h on the level: fuel is (F v / eta + accessories) t times the consumption.
    let haul = haul(36.0);
    let truck = common::truck(&haul);
    let course = forward(&ramp(40.0, 0.0, 0.02, 50.0), 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(HIGHWAY), 1, GaugePressure::from_psi(125.0)).unwrap();
    let mut none = haul::NoRecord;
    stepper.drive_to(&mut state, Length::from_km(5.0), &mut none).unwrap();
    let before = state.totals().fuel();
    stepper.drive_to(&mut state, Length::from_km(35.0), &mut none).unwrap();
    let v: f64 = 50.0 / 3.6;
    let force = 36_000.0 * 9.80665 * 0.02 + 0.5 * DENSITY * 8.0 * v * v;
    let kw = (force * v / 0.85 + 15e3) / 1e3;
    let liters = kw * (30.0 / 50.0) * 0.245;
    assert!(((state.totals().fuel() - before).as_l() / liters - 1.0).abs() < 1e-6);
}
