//! The call from the road: what the answer must and must not do.

use plan::now::{
    Answer, Call, CallError, Gauged, Load, Reading, Trailer, Verdict, WALKING_PACE, Warmth, Whose,
    answer,
};
use proptest::prelude::*;
use quantity::{GaugePressure, Speed};

const LADEN: usize = example::LADEN;

fn reading(channel: usize, psi: f64, warmth: Warmth) -> Reading {
    let gauged = Gauged::One(GaugePressure::from_psi(psi));
    Reading { whose: Whose::Channel(channel), gauged, warmth, typed_in: None }
}

fn call(readings: Vec<Reading>) -> Call {
    Call {
        load: Load::State(LADEN),
        chains: None,
        readings,
        ran_last_hour: false,
        ambient: None,
        trailer: Trailer::AsPlanned,
        with_unapproved: true,
        cap_step: Speed::from_mph(1.0),
    }
}

fn ask(call: &Call) -> Answer {
    answer(&example::haul(), call).unwrap()
}

fn speed(call: &Call) -> Speed {
    let answer = ask(call);
    if answer.verdict == Verdict::Stop { Speed::ZERO } else { answer.speed.unwrap_or(Speed::ZERO) }
}

fn both(psi: f64, warmth: Warmth) -> Call {
    call(vec![reading(0, psi, warmth), reading(1, psi, warmth)])
}

#[test]
fn road_pressure_goes_and_a_soft_tire_stops() {
    assert_eq!(ask(&both(104.0, Warmth::Cold)).verdict, Verdict::Go);
    let soft = ask(&both(20.0, Warmth::Cold));
    assert_eq!(soft.verdict, Verdict::Stop);
    assert!(!soft.all_checks().is_empty() && soft.all_reasons().count() > 0);
}

#[test]
fn what_is_not_gauged_is_never_taken_for_good() {
    let known = both(104.0, Warmth::Cold);
    let missing = call(vec![reading(0, 104.0, Warmth::Cold)]);
    assert!(speed(&missing) <= WALKING_PACE);
    assert!(speed(&missing) < speed(&known));
    let unknown_load = Call { load: Load::Unknown, ..known.clone() };
    assert!(speed(&unknown_load) <= speed(&known));
    let empty = Call { load: Load::State(example::EMPTY), ..known.clone() };
    assert!(speed(&unknown_load) <= speed(&empty));
}

#[test]
fn pressures_nobody_approved_do_not_count_for_a_driver() {
    for psi in [60.0, 80.0, 104.0] {
        let specialist = both(psi, Warmth::Cold);
        let driver = Call { with_unapproved: false, ..specialist.clone() };
        assert!(speed(&driver) <= speed(&specialist), "{psi} psi");
    }
}

#[test]
fn no_trailer_case_allows_more_than_the_planned_trailer() {
    let planned = both(90.0, Warmth::Cold);
    for trailer in [Trailer::Unknown, Trailer::LeftLow, Trailer::LeftShut] {
        let other = Call { trailer: trailer.clone(), ..planned.clone() };
        let found = ask(&other);
        assert!(speed(&other) <= speed(&planned), "{trailer:?}");
        assert!(!found.all_checks().is_empty(), "{trailer:?} leaves something to check");
    }
    let selected = Trailer::OtherLoadStateSelected(example::EMPTY);
    let other = ask(&Call { trailer: selected, ..planned });
    assert!(!other.set_for.is_empty(), "what was set stands against what is needed");
}

#[test]
fn calls_that_do_not_fit_the_combination_are_refused() {
    let haul = example::haul();
    let nowhere = call(vec![reading(9, 90.0, Warmth::Cold)]);
    assert!(matches!(answer(&haul, &nowhere), Err(CallError::NoSuchPlace { .. })));
    let absurd = call(vec![reading(0, 900.0, Warmth::Cold)]);
    assert!(matches!(answer(&haul, &absurd), Err(CallError::NotAReading { .. })));
    let no_step = Call { cap_step: Speed::ZERO, ..both(90.0, Warmth::Cold) };
    assert!(matches!(answer(&haul, &no_step), Err(CallError::NoStep { .. })));
    let no_state = Call { load: Load::State(7), ..both(90.0, Warmth::Cold) };
    assert!(matches!(answer(&haul, &no_state), Err(CallError::NoSuchLoadState { .. })));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_higher_reading_never_lowers_the_speed_inside_the_window(
        low in 5.0_f64..95.0,
        more in 0.0_f64..8.0,
    ) {
        let (soft, hard) = (both(low, Warmth::Cold), both(low + more, Warmth::Cold));
        prop_assert!(speed(&hard) >= speed(&soft), "{} then {}", speed(&soft), speed(&hard));
    }

    #[test]
    fn a_warm_reading_never_allows_more_than_the_same_cold_one(psi in 5.0_f64..104.0) {
        let cold = speed(&both(psi, Warmth::Cold));
        prop_assert!(speed(&both(psi, Warmth::Warm)) <= cold);
        prop_assert!(speed(&both(psi, Warmth::NotKnown)) <= cold);
    }
}
