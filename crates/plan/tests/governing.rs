//! Every kind of limit, once where it governs and once where it comes second.

mod common;

use std::collections::BTreeSet;

use common::{
    DRIVE, EMPTY, GRAVEL, HIGHWAY, LADEN, SPUR, cell, id, jurisdiction, maker, psi, singles, tires,
};
use model::haul_cycle::HaulCycle;
use model::route::{Jurisdiction, Permit, StatedPressure};
use model::vehicle::WheelValve;
use plan::CellId;
use plan::window::{Basis, MaximumKind, MinimumKind, MinimumKind as Kind};
use quantity::{ColdPressure, GaugePressure, Length, Speed, Temperature};

struct Row {
    kind: Kind,
    load_state: usize,
    chain_state: usize,
    rung: usize,
    make: fn(&mut HaulCycle),
}

/// A quiet haul whose tires have tables that reach down to nearly nothing.
fn quiet() -> HaulCycle {
    let mut haul = common::quiet();
    tires(&mut haul, |tire| tire.lowest_table_pressure = Some(psi(1.0)));
    haul
}

fn tables_end(haul: &mut HaulCycle) {
    tires(haul, |tire| tire.lowest_table_pressure = Some(psi(75.0)));
}

fn tables_end_nowhere(haul: &mut HaulCycle) {
    tires(haul, |tire| tire.lowest_table_pressure = None);
}

fn permitted(haul: &mut HaulCycle) {
    for leg in &mut haul.route.legs {
        leg.permit = Some(Permit {
            number: "7".into(),
            authority: "road office".into(),
            minimum: Some(StatedPressure::Cold(psi(86.0))),
            tolerance: None,
            evidence_interval: None,
            maximum: None,
            speed: None,
            gross_mass: None,
            in_force: true,
            expires: None,
        });
    }
}

fn soften(haul: &mut HaulCycle) {
    tires(haul, |tire| tire.static_loaded_radius = Some(Length::from_mm(490.0)));
}

fn bead(haul: &mut HaulCycle) {
    tires(haul, |tire| tire.bead_minimum = Some(psi(88.0)));
}

fn self_closing(haul: &mut HaulCycle) {
    for group in &mut haul.combination.groups[1..] {
        let closes_below = GaugePressure::from_psi(60.0);
        group.wheel_valve = Some(WheelValve::SelfClosing { closes_below });
    }
}

fn in_the_united_states(haul: &mut HaulCycle) {
    jurisdiction(haul, Jurisdiction::UnitedStates);
}

fn narrow_duals(haul: &mut HaulCycle) {
    for group in &mut haul.combination.groups {
        if let Some(pair) = &mut group.dual {
            pair.spacing = Length::from_mm(300.0);
            pair.least_gap = Length::from_mm(12.0);
        }
    }
}

fn turning(haul: &mut HaulCycle) {
    for group in &mut haul.combination.groups[1..] {
        group.scrub_minimum = Some(psi(85.0));
    }
}

fn hot(haul: &mut HaulCycle) {
    haul.weather.warmest = Temperature::from_celsius(50.0);
    tires(haul, |tire| tire.rolling_resistance = 0.0072);
}

fn makers_rows(haul: &mut HaulCycle) {
    tires(haul, maker(true, &[(3000.0, 65.0, 62.0), (5000.0, 65.0, 90.0)]));
}

fn nothing(_: &mut HaulCycle) {}

const fn row(
    kind: Kind,
    load_state: usize,
    chain_state: usize,
    rung: usize,
    make: fn(&mut HaulCycle),
) -> Row {
    Row { kind, load_state, chain_state, rung, make }
}

const ROWS: [Row; 21] = [
    row(Kind::LoadTable, LADEN, 0, HIGHWAY, nothing),
    row(Kind::LoadTable, EMPTY, 0, HIGHWAY, nothing),
    row(Kind::RestrictedSpeed, LADEN, 0, GRAVEL, nothing),
    row(Kind::RestrictedSpeed, LADEN, 0, SPUR, nothing),
    row(Kind::MakerRow, LADEN, 0, HIGHWAY, makers_rows),
    row(Kind::MakerRow, EMPTY, 1, GRAVEL, makers_rows),
    row(Kind::Deflection, LADEN, 0, HIGHWAY, soften),
    row(Kind::Deflection, LADEN, 0, GRAVEL, soften),
    row(Kind::Bead, EMPTY, 0, SPUR, bead),
    row(Kind::WheelValve, EMPTY, 0, SPUR, self_closing),
    row(Kind::WheelValve, EMPTY, 1, SPUR, self_closing),
    row(Kind::FlatRule, EMPTY, 0, GRAVEL, in_the_united_states),
    row(Kind::RoadsideHot, LADEN, 0, HIGHWAY, in_the_united_states),
    row(Kind::DualGap, LADEN, 0, SPUR, narrow_duals),
    row(Kind::Chains, LADEN, 1, SPUR, nothing),
    row(Kind::Chains, EMPTY, 1, GRAVEL, nothing),
    row(Kind::LowestRow, LADEN, 0, HIGHWAY, tables_end),
    row(Kind::LowestRow, EMPTY, 0, SPUR, tables_end_nowhere),
    row(Kind::Permit, LADEN, 0, GRAVEL, permitted),
    row(Kind::TurningScrub, EMPTY, 0, SPUR, turning),
    row(Kind::Heat, LADEN, 0, HIGHWAY, hot),
];

fn ask(row: &Row) -> CellId {
    id(DRIVE, row.load_state, row.chain_state, row.rung)
}

#[test]
fn every_kind_of_minimum_governs_where_it_is_made_to_single_and_dual() {
    let (mut kinds, mut states) = (BTreeSet::new(), BTreeSet::new());
    for single in [false, true] {
        for row in &ROWS {
            if single && row.kind == Kind::DualGap {
                continue;
            }
            let mut haul = quiet();
            (row.make)(&mut haul);
            if single {
                singles(&mut haul);
            }
            let found = cell(&haul, ask(row));
            let window =
                found.window.unwrap_or_else(|| panic!("{:?}: {:?}", row.kind, found.impossible));
            let governing = window.governing_minimum();
            let all: Vec<_> =
                window.minimum.iter().map(|l| (l.kind, l.pressure.as_psi())).collect();
            assert_eq!(governing.kind, row.kind, "single {single}: {all:?}");
            assert!(governing.pressure > ColdPressure::ZERO);
            kinds.insert(row.kind);
            states.insert((row.load_state, row.chain_state));
        }
    }
    assert_eq!(kinds.len(), 14, "{kinds:?}");
    assert_eq!(states.len(), 4, "{states:?}");
}

#[test]
fn every_kind_of_minimum_is_told_as_runner_up_when_another_lies_over_it() {
    for single in [false, true] {
        for row in &ROWS {
            if single && row.kind == Kind::DualGap {
                continue;
            }
            let mut haul = quiet();
            (row.make)(&mut haul);
            if single {
                singles(&mut haul);
            }
            let lowest = cell(&haul, ask(row)).window.unwrap().governing_minimum().pressure;
            let over = lowest + quantity::PressureDifference::from_psi(1.0);
            let by = if row.kind == Kind::TurningScrub {
                tires(&mut haul, |tire| tire.bead_minimum = Some(over));
                Kind::Bead
            } else {
                for group in &mut haul.combination.groups[1..] {
                    group.scrub_minimum = Some(over);
                }
                Kind::TurningScrub
            };
            let window = cell(&haul, ask(row)).window.unwrap();
            assert_eq!(window.governing_minimum().kind, by);
            let second = window.minimum_runner_up().unwrap();
            assert_eq!(second.kind, row.kind, "single {single}");
            assert!((second.pressure - lowest).abs().as_kpa() < 1e-9);
        }
    }
}

/// The numbers behind a few of the kinds, worked out here by hand.
#[test]
fn worked_levels_of_the_kinds_that_have_a_closed_form() {
    let haul = quiet();
    // 34000 lb on eight tires, 5840 lb at 105 psi, exponent 0.7.
    let table = 105.0 * (4250.0_f64 / 5840.0).powf(1.0 / 0.7);
    let at = |haul: &HaulCycle, kind, load_state, chain_state, rung| {
        let found = cell(haul, id(DRIVE, load_state, chain_state, rung));
        common::limit(&found, kind).pressure.as_psi()
    };
    assert!((at(&haul, Kind::LoadTable, LADEN, 0, HIGHWAY) - table).abs() < 1e-6);
    assert!((at(&haul, Kind::Chains, LADEN, 1, SPUR) - table).abs() < 1e-6);
    // +16 % at 31 to 40 mph, no added pressure; it covers the spur's 25 mph too.
    let restricted = 105.0 * (4250.0_f64 / 5840.0 / 1.16).powf(1.0 / 0.7);
    assert!((at(&haul, Kind::RestrictedSpeed, LADEN, 0, GRAVEL) - restricted).abs() < 1e-6);
    assert!((at(&haul, Kind::RestrictedSpeed, LADEN, 0, SPUR) - restricted).abs() < 1e-6);

    let mut us = quiet();
    in_the_united_states(&mut us);
    // Half of 105 psi on a morning of -15 °C, carried to 20 °C at 97.77 kPa.
    let reading = 52.5 * 6.894757;
    let flat = ((reading + 97.77) * 293.15 / 258.15 - 97.77) / 6.894757;
    assert!((at(&us, Kind::FlatRule, EMPTY, 0, GRAVEL) - flat).abs() < 1e-4);

    let mut valve = quiet();
    self_closing(&mut valve);
    let reading = 60.0 * 6.894757;
    let open = ((reading + 97.77) * 293.15 / 258.15 - 97.77) / 6.894757;
    assert!((at(&valve, Kind::WheelValve, EMPTY, 0, SPUR) - open).abs() < 1e-4);

    let mut rows = quiet();
    makers_rows(&mut rows);
    // 4250 lb between rows of 3000 lb at 62 psi and 5000 lb at 90 psi.
    let between = 62.0 + (90.0 - 62.0) * 1250.0 / 2000.0;
    assert!((at(&rows, Kind::MakerRow, LADEN, 0, HIGHWAY) - between).abs() < 1e-6);
}

// 49 CFR 393.75, table 1: 15 psi off a warm reading at 41 to 55 mph on a tire rated over 4000 lb.
#[test]
fn worked_a_warm_tire_at_the_roadside_still_passes_less_the_allowance() {
    let mut haul = quiet();
    in_the_united_states(&mut haul);
    let found = cell(&haul, id(DRIVE, LADEN, 0, HIGHWAY));
    let hot = common::limit(&found, Kind::RoadsideHot);
    let table = common::limit(&found, Kind::LoadTable).pressure;
    let Basis::AsRead { reading, .. } = hot.basis else { panic!("{hot:?}") };
    assert!((reading.as_psi() - 15.0 - table.as_psi()).abs() < 1e-6, "{reading} {table}");
    // No allowance, so no such limit, at 35 mph.
    let gravel = cell(&haul, id(DRIVE, LADEN, 0, GRAVEL)).window.unwrap();
    assert!(gravel.minimum.iter().all(|limit| limit.kind != Kind::RoadsideHot));
}

#[test]
fn every_kind_of_maximum_governs_and_comes_second_and_ground_only_advises() {
    let ground = psi(40.0);
    let make = |molded: f64, rim: f64, cut_in: f64| {
        let mut haul = quiet();
        tires(&mut haul, |tire| {
            tire.molded_maximum = psi(molded);
            tire.rim.maximum_pressure = psi(rim);
        });
        haul.combination.supply.governor.cut_in = GaugePressure::from_psi(cut_in);
        haul.combination.supply.governor.cut_out = GaugePressure::from_psi(cut_in + 25.0);
        haul.route.legs[2].ground_maximum = Some(ground);
        haul
    };
    let cases = [
        (make(105.0, 120.0, 150.0), MaximumKind::MoldedMaximum, MaximumKind::Rim),
        (make(130.0, 120.0, 180.0), MaximumKind::Rim, MaximumKind::MoldedMaximum),
        (make(110.0, 120.0, 100.0), MaximumKind::Supply, MaximumKind::MoldedMaximum),
        (make(110.0, 130.0, 140.0), MaximumKind::MoldedMaximum, MaximumKind::Supply),
        (make(120.0, 108.0, 112.0), MaximumKind::Supply, MaximumKind::Rim),
    ];
    for single in [false, true] {
        for (haul, governing, second) in &cases {
            let mut haul = haul.clone();
            if single {
                singles(&mut haul);
            }
            let found = cell(&haul, id(DRIVE, EMPTY, 0, HIGHWAY));
            let window = found.window.unwrap();
            assert_eq!(window.governing_maximum().kind, *governing);
            let binding: Vec<_> =
                window.maximum.iter().filter(|limit| limit.kind != MaximumKind::Ground).collect();
            assert_eq!(binding[1].kind, *second);
            assert!(binding[0].pressure <= binding[1].pressure);
            // Ground first in the list, yet it does not govern and empties no window.
            assert_eq!(window.maximum[0].kind, MaximumKind::Ground);
            assert_eq!(window.ground_advice().unwrap().pressure, ground);
            assert!(found.set.is_some());
            let laden = cell(&haul, id(DRIVE, LADEN, 0, HIGHWAY));
            if let Some(set) = laden.set {
                assert!(set.cold > ground, "the ground would like less than the load allows");
            }
        }
    }
}

#[test]
fn a_slower_cap_uses_the_row_of_a_faster_one_when_that_asks_for_less() {
    let mut haul = quiet();
    haul.combination.rungs[SPUR].cap = Speed::from_mph(10.0);
    let found = cell(&haul, id(DRIVE, LADEN, 0, SPUR));
    let limit = common::limit(&found, MinimumKind::RestrictedSpeed);
    let Basis::Load { speed, allowance_pct, .. } = limit.basis else { panic!("{limit:?}") };
    assert!((speed.as_mph() - 40.0).abs() < 1e-9 && (allowance_pct - 16.0).abs() < 1e-9);
}
