//! Tire air warms toward the steady rise of its load and speed.

mod common;

use common::{HIGHWAY, LADEN, forward, laden, ramp};
use haul::{DrivingStyle, Envelope, NoRecord, Stepper};
use model::tire::warm_up::{WarmUp, time_constant};
use quantity::{ColdPressure, GaugePressure, Length, Mass, Speed};

// The time constant of 50 min is an engineering value worked out from a standard warm-up of
// 180 min (tire-heat-balance); the level is the model's own steady rise.
#[test]
fn tires_warm_to_the_steady_rise_with_the_time_constant_of_the_heat_balance() {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let kmh = 60.0;
    let course = forward(&ramp(420.0, 0.0, 0.01, kmh), 20.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(HIGHWAY), LADEN, GaugePressure::from_psi(125.0)).unwrap();
    stepper.drive_to(&mut state, Length::from_km(10.0), &mut NoRecord).unwrap();

    // Filled to 88 psi at the ambient temperature, that is this much at the reference.
    let (ambient, weather) = (haul.weather.ambient_pressure.as_kpa(), haul.weather);
    let filled = GaugePressure::from_psi(88.0).as_kpa() + ambient;
    let cold = filled * weather.reference.as_kelvin() / weather.ambient.as_kelvin() - ambient;
    let tire = example::us_dual();
    let mean = Mass::from_lb(34_000.0 / 8.0);
    let rise = WarmUp::new(&tire, mean).unwrap();
    let speed = Speed::from_kmh(kmh);
    let steady = rise.rise(ColdPressure::from_kpa(cold), speed).value.as_kelvin();
    assert!((10.0..40.0).contains(&steady), "{steady} K");

    let over =
        |state: &haul::State| state.tire_temperature(0).as_kelvin() - weather.ambient.as_kelvin();
    let before = over(&state);
    let begun = state.clock();
    let road = Length::from_km(kmh * time_constant().as_h());
    let to = state.travelled() + road;
    stepper.drive_to(&mut state, to, &mut NoRecord).unwrap();
    assert!((state.clock() - begun - time_constant()).abs().as_s() < 1e-3);
    let expected = steady + (before - steady) * (-1.0f64).exp();
    // Temperatures are brought forward every 10 s of 50 min.
    assert!((over(&state) - expected).abs() < 0.05, "{} not {expected}", over(&state));
    stepper.drive_to(&mut state, Length::from_km(410.0), &mut NoRecord).unwrap();
    assert!((over(&state) - steady).abs() < 0.02, "{} not {steady}", over(&state));
}

#[test]
fn standing_tires_cool_to_ambient_and_the_pressure_read_follows_the_gas_law() {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let course = forward(&haul.route, 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(HIGHWAY), LADEN, GaugePressure::from_psi(125.0)).unwrap();
    stepper.drive_to(&mut state, Length::from_km(40.0), &mut NoRecord).unwrap();
    let ambient = haul.weather.ambient_pressure;
    let warm = state.tire_pressure(0, ambient).as_kpa() + ambient.as_kpa();
    let law = (GaugePressure::from_psi(88.0).as_kpa() + ambient.as_kpa())
        * state.tire_temperature(0).as_kelvin()
        / haul.weather.ambient.as_kelvin();
    assert!((warm - law).abs() < 1e-6, "no air has moved");
    assert!(state.tire_temperature(0) > haul.weather.ambient);
    let hours = haul::StandUntil::Passed(quantity::Time::from_h(10.0));
    stepper.stand(&mut state, hours, false, &mut NoRecord).unwrap();
    let cooled = state.tire_temperature(0).as_celsius() - haul.weather.ambient.as_celsius();
    assert!(cooled.abs() < 0.01, "{cooled} K left");
}
