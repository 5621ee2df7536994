//! Each rule finds its own fault in a made drive, and nothing else.

mod common;

use audit::{Evidence, Finding, Rule, Severity};
use common::{Faults, drive, limits};
use quantity::Length;

fn found(faults: Faults) -> Vec<Finding> {
    drive(faults).audit(&limits()).0
}

fn rules(found: &[Finding]) -> Vec<Rule> {
    found.iter().map(|finding| finding.rule).collect()
}

#[test]
fn a_drive_by_the_plan_has_no_finding_and_nothing_unknown() {
    let (found, state) = drive(Faults::NONE).audit(&limits());
    assert_eq!(found, []);
    assert!(state.coverage().rows() > 3000);
    assert_eq!(state.coverage().unknown().as_s().to_bits(), 0);
    assert_eq!(state.coverage().bad_rows(), 0);
}

#[test]
fn a_late_lowering_is_found_on_each_section_that_wanted_it() {
    let found = found(Faults { lower_late_m: 1000.0, ..Faults::NONE });
    assert_eq!(rules(&found), [Rule::LoweredLate; 2]);
    // Called 1 km late, at 80 km/h and cap 40 behind: 20 s to 2 min of hard tires.
    let from = found[0].from.expect("the place is known");
    assert!((from - Length::from_km(10.0)).abs() < Length::from_m(60.0), "{from}");
    assert!(matches!(found[0].evidence, Evidence::Above { change: 2, .. }));
    assert_eq!(found[0].load_state, usize::from(common::EMPTY));
}

#[test]
fn a_late_raise_is_found_though_the_driver_keeps_to_the_cap() {
    let found = found(Faults { raise_late_m: 2200.0, ..Faults::NONE });
    let late: Vec<_> = found.iter().filter(|one| one.rule == Rule::RaisedLate).collect();
    assert_eq!(late.len(), 2);
    // The raise on gravel, called behind the place, also lies on the descent.
    assert!(found.iter().all(|one| [Rule::RaisedLate, Rule::RaisedOnDescent].contains(&one.rule)));
    assert!(matches!(late[1].evidence, Evidence::Below { rung: 2, .. }));
}

#[test]
fn speed_above_the_cap_of_what_the_tires_hold_is_found() {
    let found = found(Faults { over_kmh: 12.0, ..Faults::NONE });
    assert_eq!(rules(&found), [Rule::OverCap]);
    let Evidence::Over { rung: 2, speed, cap } = found[0].evidence else { panic!("{found:?}") };
    assert!((speed.as_kmh() - 92.0).abs() < 1e-9 && (cap.as_kmh() - 80.0).abs() < 1e-9);
    // 2 km at 92 km/h.
    assert!((found[0].distance.as_km() - 2.0).abs() < 0.05, "{}", found[0].distance);
    assert!((found[0].lasted.as_s() - 2.0 / 92.0 * 3600.0).abs() < 2.0);
}

#[test]
fn a_speed_within_the_tolerance_is_not() {
    assert_eq!(found(Faults { over_kmh: 2.0, ..Faults::NONE }), []);
}

#[test]
fn rolling_under_every_minimum_is_found_and_at_eighty_percent_a_danger() {
    let lost = 630.0 - 340.0;
    let one = found(Faults { loss_kpa: lost, ..Faults::NONE });
    let of: Vec<_> = one.iter().filter(|one| one.rule == Rule::UnderMinimum).collect();
    assert_eq!(of.len(), 1, "{one:?}");
    assert_eq!(of[0].severity, Severity::Limit);
    let Evidence::Below { channel: 0, rung: 0, pressure, limit } = of[0].evidence else {
        panic!("{one:?}")
    };
    assert!((pressure.as_kpa() - 340.0).abs() < 1e-6 && (limit.as_kpa() - 350.0).abs() < 1e-6);
    // 29 CFR 1910.177(f)(2): 80 percent or less. 0.8 x 350 kPa = 280 kPa.
    for (kpa, severity) in [(281.0, Severity::Limit), (280.0, Severity::Danger)] {
        let found = found(Faults { loss_kpa: 630.0 - kpa, ..Faults::NONE });
        let worst = found.iter().find(|one| one.rule == Rule::UnderMinimum);
        assert_eq!(worst.map(|one| one.severity), Some(severity), "{kpa}");
    }
}

#[test]
fn a_stay_beyond_the_hold_limit_is_found() {
    let found = found(Faults { dawdle_min: 25.0, ..Faults::NONE });
    assert_eq!(rules(&found), [Rule::HeldTooLong]);
    let Evidence::Held { rung: 0, time, limit, .. } = found[0].evidence else {
        panic!("{found:?}")
    };
    assert!(time > limit.time.expect("a time is set"));
}

#[test]
fn moving_off_before_the_laden_pressures_is_one_finding_and_a_danger() {
    let found = found(Faults { hurry_s: 250.0, ..Faults::NONE });
    assert_eq!(rules(&found), [Rule::MovedOffBeforeComplete]);
    let Evidence::Below { rung: 0, pressure, .. } = found[0].evidence else { panic!("{found:?}") };
    assert!(pressure.as_kpa() < 280.0);
    assert_eq!(found[0].severity, Severity::Danger);
}

#[test]
fn filling_on_a_descent_is_found() {
    let found = found(Faults { on_descent: true, ..Faults::NONE });
    assert_eq!(rules(&found), [Rule::RaisedLate, Rule::RaisedOnDescent]);
    let filled = &found[1];
    assert!((filled.from.expect("known").as_km() - 6.3).abs() < 0.15, "{filled:?}");
    let Evidence::Rose { by, limit, .. } = filled.evidence else { panic!("{found:?}") };
    assert!(by >= limit);
    assert_eq!(filled.severity, Severity::Danger);
}
