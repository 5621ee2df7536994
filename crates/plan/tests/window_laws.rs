//! What holds for every window, whatever the load and the cap.

mod common;

use common::{DRIVE, EMPTY, LADEN, id, jurisdiction, singles, tires};
use model::haul_cycle::HaulCycle;
use model::route::Jurisdiction;
use plan::Ladder;
use proptest::prelude::*;
use quantity::{Mass, PressureDifference, Speed};

const RUNG: usize = 2;

#[derive(Debug, Clone, Copy)]
#[expect(clippy::struct_excessive_bools, reason = "independent traits of a combination")]
struct Kind {
    single: bool,
    metric: bool,
    united_states: bool,
    soft: bool,
}

fn kinds() -> impl Strategy<Value = Kind> {
    (any::<bool>(), any::<bool>(), any::<bool>(), any::<bool>()).prop_map(
        |(single, metric, united_states, soft)| Kind {
            single: single || metric,
            metric,
            united_states,
            soft,
        },
    )
}

/// The invented haul with this much on every tire of drive and trailer, all on one cap.
fn haul(kind: Kind, lb: f64, cap_mph: f64) -> HaulCycle {
    let mut haul = example::haul();
    if kind.metric {
        tires(&mut haul, |tire| *tire = example::metric_single());
    }
    if kind.soft {
        tires(&mut haul, |tire| {
            tire.static_loaded_radius =
                tire.static_loaded_radius.map(|r| r - quantity::Length::from_mm(6.0));
        });
    }
    if kind.single {
        singles(&mut haul);
    }
    if kind.united_states {
        jurisdiction(&mut haul, Jurisdiction::UnitedStates);
    }
    let combination = &mut haul.combination;
    for state in &mut combination.load_states {
        for (group, load) in combination.groups.iter().zip(&mut state.groups).skip(1) {
            load.mass = Mass::from_lb(lb) * f64::from(group.tires());
        }
    }
    combination.rungs[RUNG].cap = Speed::from_mph(cap_mph);
    haul
}

/// Lowest and set pressure in kPa by load state; nothing where it is not possible.
fn pressures(haul: &HaulCycle, load_state: usize, chain_state: usize) -> Option<(f64, f64, f64)> {
    let (ladder, _) = Ladder::of(haul).unwrap();
    let cell = ladder.cell(id(DRIVE, load_state, chain_state, RUNG)).unwrap();
    let lowest = cell.window.as_ref()?.governing_minimum().pressure.as_kpa();
    let set = cell.set.as_ref()?;
    Some((lowest, set.cold.as_kpa(), set.as_controller_reads.as_kpa()))
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 200,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn more_load_never_needs_less_pressure_and_is_never_easier(
        kind in kinds(),
        lb in 300.0..6500.0f64,
        more in 1.0..2500.0f64,
        cap in 3.0..64.0f64,
        chains in 0usize..2,
    ) {
        let light = pressures(&haul(kind, lb, cap), LADEN, chains);
        let heavy = pressures(&haul(kind, lb + more, cap), LADEN, chains);
        match (light, heavy) {
            (Some(light), Some(heavy)) => {
                prop_assert!(heavy.0 >= light.0 - 1e-6, "{light:?} {heavy:?}");
                // As the controller is set: never lower for the heavier.
                prop_assert!(heavy.2 >= light.2 - 1e-6, "{light:?} {heavy:?}");
            }
            (None, Some(_)) => prop_assert!(false, "only the heavier is possible"),
            _ => {}
        }
    }

    #[test]
    fn a_lower_cap_never_needs_more_pressure(
        kind in kinds(),
        lb in 300.0..6500.0f64,
        cap in 3.0..60.0f64,
        faster in 0.1..40.0f64,
        chains in 0usize..2,
    ) {
        let slow = pressures(&haul(kind, lb, cap), EMPTY, chains);
        let fast = pressures(&haul(kind, lb, (cap + faster).min(66.0)), EMPTY, chains);
        match (slow, fast) {
            (Some(slow), Some(fast)) => {
                prop_assert!(slow.0 <= fast.0 + 1e-6, "{slow:?} {fast:?}");
                prop_assert!(slow.2 <= fast.2 + 1e-6, "{slow:?} {fast:?}");
            }
            (None, Some(_)) => prop_assert!(false, "only the faster is possible"),
            _ => {}
        }
    }

    #[test]
    fn the_set_value_lies_in_its_window_and_its_stack_closes(
        kind in kinds(),
        lb in 300.0..7000.0f64,
        cap in 3.0..66.0f64,
        mismatch_mm in 0.0..13.0f64,
        step_kpa in 0.5..50.0f64,
    ) {
        let mut haul = haul(kind, lb, cap);
        haul.combination.controller.step = PressureDifference::from_kpa(step_kpa);
        for group in &mut haul.combination.groups {
            if let Some(pair) = &mut group.dual {
                pair.diameter_difference = quantity::Length::from_mm(mismatch_mm);
            }
        }
        let (ladder, _) = Ladder::of(&haul).unwrap();
        for cell in ladder.cells() {
            let (Some(set), Some(window)) = (&cell.set, &cell.window) else {
                prop_assert!(cell.impossible.is_some(), "no value and no reason");
                continue;
            };
            prop_assert!(cell.impossible.is_none());
            let lowest = window.governing_minimum().pressure;
            prop_assert!(set.cold >= lowest);
            prop_assert!(set.vented.as_kpa()
                <= haul.combination.supply.governor.cut_in.as_kpa() + 1e-6);
            let added: f64 = set.stack.iter().map(|item| item.amount.as_kpa()).sum();
            prop_assert!((set.as_controller_reads.as_kpa() - lowest.as_kpa() - added).abs() < 1e-5);
        }
    }
}
