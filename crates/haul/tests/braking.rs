//! Braking in advance: every limit and cap known before is kept.

mod common;

use common::{HIGHWAY, laden, route};
use haul::{CappedStretch, Course, Direction, DrivingStyle, Envelope, Stepper};
use model::route::{Leg, Surface};
use proptest::prelude::*;
use quantity::{GaugePressure, Length, Speed};

#[derive(Debug, Clone)]
struct Piece {
    length_m: f64,
    kmh: f64,
    grade: f64,
    radius_m: Option<f64>,
}

fn piece() -> impl Strategy<Value = Piece> {
    (60.0..2500.0f64, 8.0..110.0f64, -0.09..0.04f64, proptest::option::of(20.0..400.0f64))
        .prop_map(|(length_m, kmh, grade, radius_m)| Piece { length_m, kmh, grade, radius_m })
}

fn build(pieces: &[Piece]) -> model::route::Route {
    let (mut km, mut height) = (0.0, 1000.0);
    let mut legs: Vec<Leg> = Vec::new();
    let mut profile = vec![(0.0, height)];
    for piece in pieces {
        let to = km + piece.length_m / 1000.0;
        let mut leg = example::leg("piece", km, to, Surface::Gravel, piece.kmh);
        leg.curve_radius = piece.radius_m.map(Length::from_m);
        legs.push(leg);
        km = to;
        height += piece.length_m * piece.grade;
        profile.push((km, height));
    }
    route(legs, &profile)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn no_limit_or_cap_known_before_is_ever_passed(
        pieces in proptest::collection::vec(piece(), 1..9),
        capped in proptest::collection::vec((0.0..1.0f64, 0.0..1.0f64, 10.0..60.0f64), 0..3),
        backward in any::<bool>(),
        cell in 3.0..40.0f64,
    ) {
        let haul = example::haul();
        let truck = common::truck(&haul);
        let style = DrivingStyle::default();
        let direction = if backward { Direction::Backward } else { Direction::Forward };
        let course = Course::new(&build(&pieces), direction, Length::from_m(cell), &style).unwrap();
        let length = course.length();
        let capped: Vec<CappedStretch> = capped
            .iter()
            .map(|&(a, b, kmh)| CappedStretch {
                from: length * a.min(b),
                to: length * a.max(b),
                cap: Speed::from_kmh(kmh),
            })
            .collect();
        let envelope = Envelope::new(&course, &capped, &style);
        let stepper = Stepper::new(&truck, &course, &envelope, style);
        let mut state = stepper.start(laden(HIGHWAY), 1, GaugePressure::from_psi(125.0)).unwrap();
        let top = truck.cap(HIGHWAY);
        let tiny = Length::from_m(1e-7);
        while state.travelled() < length - Length::from_m(1e-6) {
            stepper.step(&mut state, length).unwrap();
            let (here, v) = (state.travelled(), state.speed());
            let mut limit = top
                .min(course.speed_limit(here - tiny))
                .min(course.speed_limit((here + tiny).min(length)));
            for stretch in capped.iter().filter(|s| s.from <= here && here <= s.to) {
                limit = limit.min(stretch.cap);
            }
            prop_assert!(
                v.as_m_per_s() <= limit.as_m_per_s() + 1e-6,
                "{v} over {limit} at {here}"
            );
        }
        // The run ends standing.
        prop_assert!(state.speed().as_m_per_s() < 1e-6);
        prop_assert!((state.travelled() - length).abs().as_m() < 1e-6);
    }
}
