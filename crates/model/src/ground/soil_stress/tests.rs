use proptest::prelude::*;
use quantity::Force;

use super::*;

fn m(value: f64) -> Length {
    Length::from_m(value)
}

fn kn(value: f64) -> Mass {
    Force::from_kn(value).as_mass()
}

fn unit() -> Contact {
    Contact::new(Stress::from_kpa(1.0), m(1.0)).unwrap()
}

fn nu(value: f64) -> Concentration {
    Concentration::new(value).unwrap()
}

// Spangler 1951, influence on the axis of a circle, elastic half-space.
#[test]
fn table_spangler_on_the_axis() {
    for (z, share) in [
        (0.5, 0.911),
        (1.0, 0.646),
        (1.5, 0.424),
        (2.0, 0.284),
        (2.5, 0.200),
        (3.0, 0.146),
        (4.0, 0.087),
        (5.0, 0.057),
        (10.0, 0.015),
    ] {
        let ours = unit().on_axis(m(z), Concentration::ELASTIC).unwrap().as_kpa();
        assert!((ours - share).abs() < 0.0006, "{z}: {ours}");
    }
}

// The same source, below the edge of the circle.
#[test]
fn table_spangler_below_the_edge() {
    for (z, share) in [(0.5, 0.418), (1.0, 0.335), (2.0, 0.194)] {
        let ours = unit().beside(m(1.0), m(z), Concentration::ELASTIC).unwrap().as_kpa();
        assert!((ours / share - 1.0).abs() < 0.02, "{z}: {ours}");
    }
}

// Geotechnical text: 0.4775 Q/z² on the axis, 0.0844 Q/z² one depth aside.
#[test]
fn table_point_load_influence() {
    for (r, share) in [(0.0, 0.4775), (1.0, 0.0844)] {
        let ours = under_point(kn(1.0), m(r), m(1.0), Concentration::ELASTIC).unwrap();
        assert!((ours.as_kpa() - share).abs() < 0.0001, "{ours}");
    }
}

// 11R22.5, 18.9 kN, ν 5: kPa at 0.05 to 1 m, worked by hand.
#[test]
fn worked_profile_of_a_truck_tire() {
    let depths: Vec<_> = [0.05, 0.10, 0.15, 0.20, 0.30, 0.50, 0.70, 1.00].map(m).into();
    for (q, expected) in [
        (607.4, [596.0, 499.0, 363.0, 258.0, 140.0, 56.0, 30.0, 15.0]),
        (334.1, [332.0, 309.0, 257.0, 202.0, 122.0, 53.0, 29.0, 15.0]),
    ] {
        let contact = Contact::under(kn(18.9), Stress::from_kpa(q)).unwrap();
        let found = profile(contact, &depths, Concentration::of(SoilState::Normal)).unwrap();
        for (at, kpa) in found.iter().zip(expected) {
            assert!((at.stress.as_kpa() - kpa).abs() < 0.8, "{at:?} {kpa}");
        }
    }
}

// A dual 317.5 mm apart, ν 4: under the gap and under one tire, integrated numerically.
#[test]
fn worked_dual() {
    for (q, rows) in [
        (607.4, [(0.1, 111.0, 455.0), (0.2, 152.0, 226.0), (0.3, 125.0, 130.0), (0.5, 70.0, 63.0)]),
        (334.1, [(0.1, 164.0, 293.0), (0.2, 157.0, 185.0), (0.3, 121.0, 118.0), (0.5, 68.0, 61.0)]),
    ] {
        let contact = Contact::under(kn(18.9), Stress::from_kpa(q)).unwrap();
        for (z, gap, tire) in rows {
            let found = contact.dual(m(0.3175), m(z), Concentration::of(SoilState::Firm)).unwrap();
            assert!((found.mid_gap.as_kpa() / gap - 1.0).abs() < 0.02, "{z} {found:?}");
            assert!((found.under_tire.as_kpa() / tire - 1.0).abs() < 0.02, "{z} {found:?}");
        }
    }
}

#[test]
fn nothing_pressed_is_refused() {
    assert!(Contact::new(Stress::ZERO, m(0.1)).is_err());
    assert!(Contact::under(kn(0.0), Stress::from_kpa(600.0)).is_err());
    assert!(Contact::under(kn(10.0), Stress::ZERO).is_err());
    assert!(unit().on_axis(m(0.0), Concentration::ELASTIC).is_err());
    assert!(unit().beside(m(0.5), m(-1.0), Concentration::ELASTIC).is_err());
    assert!(unit().dual(m(0.0), m(1.0), Concentration::ELASTIC).is_err());
    assert!(under_point(kn(0.0), m(0.0), m(1.0), Concentration::ELASTIC).is_err());
    assert!(Concentration::new(9.0).is_err());
    assert!(Concentration::new(f64::NAN).is_err());
}

proptest! {
    #[test]
    fn stress_falls_with_depth_and_never_exceeds_the_contact(z in 0.05..5.0f64, deeper in 0.01..2.0f64, n in 3.0..6.0f64) {
        let at = |z| unit().on_axis(m(z), nu(n)).unwrap().as_kpa();
        prop_assert!(at(z + deeper) < at(z));
        prop_assert!(at(z) < 1.0);
    }

    #[test]
    fn softer_ground_gathers_the_stress(z in 0.1..5.0f64, n in 3.0..5.0f64, more in 0.1..1.0f64) {
        let at = |n| unit().on_axis(m(z), nu(n)).unwrap();
        prop_assert!(at(n + more) > at(n));
    }

    #[test]
    fn beside_the_axis_meets_the_axis(z in 0.05..5.0f64, n in 3.0..6.0f64) {
        let axis = unit().on_axis(m(z), nu(n)).unwrap().as_kpa();
        let beside = unit().beside(m(0.0), m(z), nu(n)).unwrap().as_kpa();
        prop_assert!((axis - beside).abs() < 1e-12);
    }

    #[test]
    fn stress_falls_away_from_the_axis(z in 0.1..3.0f64, r in 0.0..3.0f64, more in 0.01..1.0f64) {
        let at = |r| unit().beside(m(r), m(z), nu(4.0)).unwrap().as_kpa();
        prop_assert!(at(r + more) < at(r) + 1e-4);
    }

    #[test]
    fn the_inside_and_outside_integrals_meet_at_the_edge(z in 0.05..3.0f64, n in 3.0..6.0f64) {
        let at = |r| unit().beside(m(r), m(z), nu(n)).unwrap().as_kpa();
        prop_assert!((at(1.0 - 1e-6) - at(1.0 + 1e-6)).abs() < 5e-3);
    }

    #[test]
    fn far_away_a_patch_is_a_point(z in 8.0..30.0f64, r in 0.0..10.0f64, n in 3.0..6.0f64) {
        let patch = unit().beside(m(r), m(z), nu(n)).unwrap().as_kpa();
        let point = under_point(kn(PI), m(r), m(z), nu(n)).unwrap().as_kpa();
        prop_assert!((patch / point - 1.0).abs() < 0.03);
    }

    #[test]
    fn a_dual_brought_together_is_one_tire_of_twice_the_pressure(z in 0.1..3.0f64) {
        let one = unit().on_axis(m(z), nu(4.0)).unwrap().as_kpa();
        let two = unit().dual(m(1e-9), m(z), nu(4.0)).unwrap();
        prop_assert!((two.under_tire.as_kpa() - 2.0 * one).abs() < 1e-6);
        prop_assert!((two.mid_gap.as_kpa() - 2.0 * one).abs() < 1e-6);
    }
}
