//! What must hold for any drive: pieces, lateness, and what is not known.

mod common;

use audit::{Rule, State};
use common::{Drive, Faults, drive, limits};
use proptest::prelude::*;
use series::Quality;

fn any_faults() -> impl Strategy<Value = Faults> {
    let part = |most: f64| prop_oneof![Just(0.0), 0.0..most];
    (part(3000.0), part(2500.0), part(30.0), part(300.0), part(40.0), part(400.0), any::<bool>())
        .prop_map(|(raise, lower, over, hurry, dawdle, loss, on_descent)| Faults {
            raise_late_m: raise,
            lower_late_m: lower,
            over_kmh: over,
            hurry_s: hurry,
            dawdle_min: dawdle,
            loss_kpa: loss,
            on_descent,
        })
}

fn seconds(drive: &Drive, rule: Rule) -> f64 {
    let (found, _) = drive.audit(&limits());
    found.iter().filter(|one| one.rule == rule).map(|one| one.lasted.as_s()).sum()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn cutting_the_rows_anywhere_gives_the_same_findings_and_coverage(
        faults in any_faults(),
        mut cuts in proptest::collection::vec(0_usize..6000, 0..6),
        holes in proptest::collection::vec((0_usize..6000, 1_usize..200), 0..5),
    ) {
        cuts.sort_unstable();
        let mut drive = drive(faults);
        for (at, rows) in holes {
            let end = (at + rows).min(drive.len());
            for row in at.min(end)..end {
                drive.quality[row] = Quality::Stale;
            }
        }
        let limits = limits();
        let (whole, one) = drive.audit(&limits);
        let (cut, pieces) = drive.audit_cut(&limits, &cuts);
        prop_assert_eq!(whole, cut);
        prop_assert_eq!(one.coverage(), pieces.coverage());
    }

    #[test]
    fn calling_later_never_makes_fewer_seconds_late(a in 0.0..3000.0f64, b in 0.0..3000.0f64) {
        let (sooner, later) = (a.min(b), a.max(b));
        let lowered = |m| Faults { lower_late_m: m, ..Faults::NONE };
        let raised = |m| Faults { raise_late_m: m, ..Faults::NONE };
        let of: [(Rule, &dyn Fn(f64) -> Faults); 2] =
            [(Rule::LoweredLate, &lowered), (Rule::RaisedLate, &raised)];
        for (rule, of) in of {
            let (less, more) = (seconds(&drive(of(sooner)), rule), seconds(&drive(of(later)), rule));
            // A position is read in places of ten meters: one second either way.
            prop_assert!(less <= more + 1.0, "{:?}: {} s at {}, {} s at {}", rule, less, sooner, more, later);
        }
    }

    #[test]
    fn what_is_not_known_is_counted_and_never_a_finding(faults in any_faults()) {
        let mut drive = drive(faults);
        drive.quality.fill(Quality::Absent);
        let (found, state) = drive.audit(&limits());
        prop_assert_eq!(found, vec![]);
        prop_assert!((state.coverage().unknown().as_s() - drive.len() as f64).abs() < 1e-9);
    }

    #[test]
    fn without_tire_temperatures_nothing_new_is_found(faults in any_faults()) {
        let mut drive = drive(faults);
        let (known, _) = drive.audit(&limits());
        drive.temperature_quality.fill(Quality::NeverSent);
        let (found, _) = drive.audit(&limits());
        // Tires that may just hold the slowest rung are over its cap instead of under every minimum.
        for rules in [
            &[Rule::OverCap, Rule::UnderMinimum][..],
            &[Rule::RaisedLate],
            &[Rule::MovedOffBeforeComplete],
        ] {
            let sum = |all: &[audit::Finding]| -> f64 {
                let of = all.iter().filter(|one| rules.contains(&one.rule));
                of.map(|one| one.lasted.as_s()).sum()
            };
            prop_assert!(sum(&found) <= sum(&known), "{:?}", rules);
        }
    }
}

#[test]
fn a_number_that_cannot_be_makes_its_row_bad_and_unknown() {
    let mut drive = drive(Faults::NONE);
    drive.kpa[0][100] = f64::NAN;
    drive.kmh[200] = 4000.0;
    drive.load[300] = 77;
    let (found, state) = drive.audit(&limits());
    assert_eq!(found, []);
    assert_eq!(state.coverage().bad_rows(), 3);
    assert!((state.coverage().unknown().as_s() - 3.0).abs() < 1e-9);
}

#[test]
fn columns_of_unequal_length_are_refused_whole() {
    let drive = drive(Faults::NONE);
    let mut state = State::default();
    let short = audit::Columns {
        chainage_km: audit::Column { values: &drive.km, quality: &drive.quality },
        speed_kmh: audit::Column { values: &drive.kmh[1..], quality: &drive.quality },
        load_state: audit::LoadColumn { values: &drive.load, quality: &drive.quality },
        channels: &[],
    };
    let limits = limits();
    let error = audit::feed(&mut state, &short, &limits, &mut Vec::new()).expect_err("no channels");
    assert_eq!(error.to_string(), "the columns hold 0 air channels, the plan has 2");
    let channel = audit::ChannelColumns { pressure_kpa: short.chainage_km, temperature_c: None };
    let uneven = audit::Columns { channels: &[channel, channel], ..short };
    let error = audit::feed(&mut state, &uneven, &limits, &mut Vec::new()).expect_err("uneven");
    assert!(error.to_string().starts_with("column 'speed' has"), "{error}");
    assert_eq!(state, State::default());
}

#[test]
fn tables_that_do_not_fit_each_other_are_refused() {
    let mut given = common::given();
    given.rungs.swap(0, 2);
    assert!(matches!(audit::Limits::new(given), Err(audit::LimitsError::Order { rung: 1 })));
    let mut given = common::given();
    given.load_states[1].cells.pop();
    assert!(matches!(audit::Limits::new(given), Err(audit::LimitsError::Cells { load_state: 1 })));
    let mut given = common::given();
    given.changes[0].to.pop();
    assert!(matches!(audit::Limits::new(given), Err(audit::LimitsError::Change { change: 0 })));
}
