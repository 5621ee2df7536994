//! How the survey cuts a route into legs changes nothing.

mod common;

use common::{GRAVEL, HIGHWAY, Run, SPUR, forward, laden};
use haul::{Course, Direction, DrivingStyle, Schedule, State, Stepper};
use model::route::Route;
use proptest::prelude::*;
use quantity::{GaugePressure, Length};

fn split(route: &Route, leg: usize, share: f64) -> Route {
    let mut route = route.clone();
    let whole = route.legs[leg].clone();
    let at = whole.from + (whole.to - whole.from) * share;
    route.legs[leg].to = at;
    let mut rest = whole;
    rest.name = format!("{}, second part", rest.name);
    rest.from = at;
    route.legs.insert(leg + 1, rest);
    route
}

fn drive(route: &Route, direction: Direction) -> State {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let style = DrivingStyle::default();
    let course = Course::new(route, direction, Length::from_m(10.0), &style).unwrap();
    Run::new(&truck, &course, laden(SPUR))
        .change(2.9, laden(GRAVEL))
        .change(15.0, laden(HIGHWAY))
        .end()
}

/// Every number of a state with all its digits; a number that is not there (NaN) equals itself.
fn digits(state: &State) -> String {
    format!("{state:?}")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn splitting_a_leg_changes_nothing_to_the_last_digit(
        leg in 0usize..3,
        share in 1e-6..1.0f64,
        backward in any::<bool>(),
    ) {
        let direction = if backward { Direction::Backward } else { Direction::Forward };
        let route = example::route();
        prop_assume!(share < 1.0);
        prop_assert_eq!(
            digits(&drive(&route, direction)),
            digits(&drive(&split(&route, leg, share), direction))
        );
    }
}

#[test]
fn a_copied_state_resumes_as_if_it_had_never_been_copied() {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let course = forward(&haul.route, 10.0);
    let style = DrivingStyle::default();
    let envelope = haul::Envelope::new(&course, &[], &style);
    let stepper = Stepper::new(&truck, &course, &envelope, style);
    let mut through = stepper.start(laden(SPUR), 1, GaugePressure::from_psi(125.0)).unwrap();
    let mut none = haul::NoRecord;
    for (km, rung) in [(2.9, GRAVEL), (15.0, HIGHWAY)] {
        stepper.drive_to(&mut through, Length::from_km(km), &mut none).unwrap();
        stepper.order(&mut through, laden(rung));
    }
    // In the middle of the second change.
    stepper.drive_to(&mut through, Length::from_km(15.5), &mut none).unwrap();
    assert!(through.is_changing());
    let mut copy = through.clone();
    stepper.run(&mut through, &mut Schedule::default(), &mut none).unwrap();
    stepper.run(&mut copy, &mut Schedule::default(), &mut none).unwrap();
    assert_eq!(digits(&through), digits(&copy));
}

#[test]
fn stopping_to_look_at_the_state_moves_no_event() {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let course = forward(&haul.route, 10.0);
    let run = Run::new(&truck, &course, laden(SPUR))
        .change(2.9, laden(GRAVEL))
        .change(15.0, laden(HIGHWAY));
    let (watched, unwatched) = (run.trace(), run.end());
    let last = watched.samples().last().unwrap();
    assert!((last.time - unwatched.clock()).abs().as_s() < 0.01);
    assert!((last.fuel - unwatched.totals().fuel()).abs().as_l() < 1e-3);
}
