//! While pressures change: caps, brakes first, drivers who are late.

mod common;

use common::{GRAVEL, HIGHWAY, LADEN, Run, SPUR, completions, forward, laden, ramp};
use haul::{DrivingStyle, Envelope, Late, PlannedChange, Schedule, StandUntil, Stepper, Target};
use haul::{NoRecord, Trace};
use quantity::{GaugePressure, Length, PressureDifference, Time};

fn changes() -> Vec<PlannedChange> {
    let change =
        |km, rung| PlannedChange { at: Length::from_km(km), to: laden(rung), standing: false };
    vec![change(2.9, GRAVEL), change(15.0, HIGHWAY)]
}

fn drive(schedule: Schedule) -> (haul::State, Trace) {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let course = forward(&haul.route, 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(SPUR), LADEN, GaugePressure::from_psi(125.0)).unwrap();
    let (mut schedule, mut trace) = (schedule, Trace::every(Time::ZERO));
    stepper.run(&mut state, &mut schedule, &mut trace).unwrap();
    (state, trace)
}

#[test]
fn a_driver_late_by_a_kilometer_is_complete_about_a_kilometer_late() {
    let (on_time, planned) = drive(Schedule::new(changes()));
    let (late, delayed) = drive(Late::schedule(&changes(), 1, Some(Length::from_km(1.0))));
    let (planned, delayed) = (completions(&planned), completions(&delayed));
    assert_eq!((planned.len(), delayed.len()), (2, 2));
    assert!((delayed[0].1 - planned[0].1).abs().as_m() < 1.0, "the first change is untouched");
    let later = (delayed[1].1 - planned[1].1).as_km();
    assert!((0.8..1.2).contains(&later), "{later} km later");
    // Both are complete before the highway, so the clock hardly tells them apart.
    assert!((late.clock() - on_time.clock()).abs().as_s() < 10.0);
}

#[test]
fn a_change_never_called_leaves_the_truck_under_the_old_cap() {
    let haul = example::haul();
    let cap = haul.combination.rungs[GRAVEL].cap;
    let (on_time, _) = drive(Schedule::new(changes()));
    let (never, trace) = drive(Late::schedule(&changes(), 1, None));
    assert_eq!(never.held(), laden(GRAVEL));
    assert!(trace.samples().iter().all(|sample| sample.speed <= cap + cap * 1e-9));
    // 22 km of highway at 35 mph in place of up to 60 mph (85 km/h posted).
    let lost = (never.clock() - on_time.clock()).as_min();
    assert!((6.0..12.0).contains(&lost), "{lost} min");
}

#[test]
fn the_cap_is_the_lower_of_the_two_until_every_channel_is_there() {
    let haul = example::haul();
    let cap = |rung: usize| haul.combination.rungs[rung].cap;
    let (_, trace) = drive(Schedule::new(changes()));
    let mut raising = 0;
    for sample in trace.samples().iter().filter(|sample| sample.changing) {
        let lower = if sample.rung == GRAVEL { SPUR } else { GRAVEL };
        assert_eq!(sample.cap, cap(lower), "at {}", sample.chainage);
        assert!(sample.speed <= cap(lower) + cap(lower) * 1e-9);
        raising += 1;
    }
    assert!(raising > 20);

    // Lowering: the lower cap holds from the first moment, and the truck slows down to it.
    let course = forward(&ramp(12.0, 0.0, 0.01, 90.0), 10.0);
    let truck = common::truck(&haul);
    let run = Run::new(&truck, &course, laden(HIGHWAY)).change(6.0, laden(SPUR));
    let trace = run.trace();
    let ordered = Length::from_km(6.0);
    let first = trace.samples().iter().find(|sample| sample.travelled > ordered).unwrap();
    assert!(first.changing && first.cap == cap(SPUR) && first.speed > cap(SPUR));
    let slowed = trace.samples().iter().find(|s| s.travelled > Length::from_m(6700.0)).unwrap();
    assert!(slowed.speed <= cap(SPUR) + cap(SPUR) * 1e-9);
    assert!(run.end().totals().over_cap() > Length::from_m(100.0));
}

#[test]
fn a_change_given_up_on_the_way_keeps_the_cap_of_the_softer_tires() {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let course = forward(&ramp(30.0, 0.0, 0.01, 90.0), 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(HIGHWAY), LADEN, GaugePressure::from_psi(125.0)).unwrap();
    stepper.drive_to(&mut state, Length::from_km(4.0), &mut NoRecord).unwrap();
    stepper.order(&mut state, laden(SPUR));
    stepper.drive_to(&mut state, Length::from_km(5.0), &mut NoRecord).unwrap();
    assert!(state.is_changing(), "still on the way down");
    stepper.order(&mut state, laden(HIGHWAY));
    assert!(state.is_changing());
    let mut trace = Trace::every(Time::ZERO);
    stepper.drive_to(&mut state, Length::from_km(28.0), &mut trace).unwrap();
    let (on_the_way, there): (Vec<haul::Sample>, Vec<_>) =
        trace.samples().iter().copied().partition(|sample| sample.changing);
    assert!(on_the_way.len() > 3);
    assert!(on_the_way.iter().all(|sample| sample.cap == truck.cap(SPUR)));
    assert!(there.iter().all(|sample| sample.cap == truck.cap(HIGHWAY)));
}

#[test]
fn filling_tires_never_takes_the_brakes_under_their_gate() {
    // Standing, and rolling on the level where nobody brakes: only tires draw on the reservoirs.
    let haul = example::haul();
    let gate = haul.combination.controller.brake_threshold;
    let truck = common::truck(&haul);
    let course = forward(&ramp(40.0, 0.0, 0.01, 40.0), 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let empty = Target { rung: SPUR, load_state: 0 };
    for standing in [true, false] {
        let supply = GaugePressure::from_psi(125.0);
        let mut state = stepper.start(empty, LADEN, supply).unwrap();
        stepper.drive_to(&mut state, Length::from_km(2.0), &mut NoRecord).unwrap();
        stepper.order(&mut state, laden(HIGHWAY));
        let mut trace = Trace::every(Time::ZERO);
        if standing {
            stepper.stand(&mut state, StandUntil::Complete, true, &mut trace).unwrap();
        } else {
            stepper.drive_to(&mut state, Length::from_km(38.0), &mut trace).unwrap();
        }
        assert!(!state.is_changing());
        let lowest = state.lowest_supply();
        assert!(lowest >= gate - PressureDifference::from_kpa(1e-3), "{lowest} under {gate}");
        assert!(
            lowest < gate + PressureDifference::from_psi(2.0),
            "so big a raise leans on the gate"
        );
    }
}

#[test]
fn tires_set_to_a_pressure_the_supply_cannot_reach_are_an_error_and_not_a_wait_for_ever() {
    let mut haul = example::haul();
    haul.combination.supply.governor.cut_in = GaugePressure::from_psi(104.0);
    let set = haul::SetPressures::new(2, 2, 3, |_, _, rung| {
        GaugePressure::from_psi(if rung == HIGHWAY { 140.0 } else { 60.0 })
    });
    let truck = haul::Truck::new(&haul, set).unwrap();
    let course = forward(&haul.route, 10.0);
    let style = DrivingStyle::default();
    let envelope = Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut state = stepper.start(laden(SPUR), LADEN, GaugePressure::from_psi(125.0)).unwrap();
    stepper.order(&mut state, laden(HIGHWAY));
    let error = stepper.stand(&mut state, StandUntil::Complete, true, &mut NoRecord).unwrap_err();
    assert!(matches!(error, haul::StepperError::NeverComplete { .. }), "{error}");
}
