//! The invented haul bent to what one test needs.
#![allow(dead_code, missing_docs, reason = "each test file uses its own part of it")]

use std::sync::Arc;

use haul::{CyclePlan, Sample, Trace};
use model::haul_cycle::HaulCycle;
use model::route::{Jurisdiction, Leg, Profile, Surface};
use model::tire::{Fitment, MakerRow, MakerTable, Recommended, Tire};
use model::vehicle::{DualPair, GroupLoad};
use plan::window::{Limit, MinimumKind};
use plan::{Action, Cell, CellId, ChangePoint, Detail, Driven, Ladder, Plan, simulate};
use quantity::{ColdPressure, Length, Mass, PressureDifference, Speed, Time};

pub const EMPTY: usize = example::EMPTY;
pub const LADEN: usize = example::LADEN;
pub const SPUR: usize = 0;
pub const GRAVEL: usize = 1;
pub const HIGHWAY: usize = 2;
pub const DRIVE: usize = 0;
pub const TRAILER: usize = 1;

pub fn psi(value: f64) -> ColdPressure {
    ColdPressure::from_psi(value)
}

/// Changes the tire of every group.
pub fn tires(haul: &mut HaulCycle, change: impl Fn(&mut Tire)) {
    for group in &mut haul.combination.groups {
        let mut tire = Tire::clone(&group.tire);
        change(&mut tire);
        group.tire = Arc::new(tire);
    }
}

/// Changes the tire of one group.
pub fn tire_of(haul: &mut HaulCycle, group: usize, change: impl Fn(&mut Tire)) {
    let mut tire = Tire::clone(&haul.combination.groups[group].tire);
    change(&mut tire);
    haul.combination.groups[group].tire = Arc::new(tire);
}

/// Singles on drive and trailer, at this share of the dual load each tire carried.
pub fn singles(haul: &mut HaulCycle) {
    for group in &mut haul.combination.groups[1..] {
        group.fitment = Fitment::Single;
        group.dual = None;
    }
    // One tire in place of two: half the load, so that the tire sees what it saw.
    for state in &mut haul.combination.load_states {
        for load in &mut state.groups[1..] {
            load.mass = load.mass / 2.0;
        }
    }
}

/// Every share even, every weight exact, no crossfall: a tire carries its group's mean.
pub fn even(haul: &mut HaulCycle) {
    for state in &mut haul.combination.load_states {
        for load in &mut state.groups {
            *load = GroupLoad {
                heavier_side_share: 0.5,
                heavier_mate_share: 0.5,
                uncertainty: 0.0,
                ..*load
            };
        }
    }
    for leg in &mut haul.route.legs {
        leg.crossfall = 0.0;
    }
}

/// Sets what each tire of drive and trailer carries, empty and laden, all shares even.
pub fn tire_loads(haul: &mut HaulCycle, lb: f64) {
    even(haul);
    let combination = &mut haul.combination;
    for state in &mut combination.load_states {
        for (group, load) in combination.groups.iter().zip(&mut state.groups).skip(1) {
            load.mass = Mass::from_lb(lb) * f64::from(group.tires());
        }
    }
}

/// A tire so stiff, and a bead so low, that neither sets a pressure.
pub fn quiet() -> HaulCycle {
    let mut haul = example::haul();
    even(&mut haul);
    tires(&mut haul, |tire| {
        tire.static_loaded_radius = Some(Length::from_mm(503.0));
        tire.bead_minimum = Some(ColdPressure::from_kpa(20.0));
        tire.rolling_resistance = 0.004;
    });
    for group in &mut haul.combination.groups {
        if let Some(pair) = &mut group.dual {
            *pair = DualPair { spacing: Length::from_in(15.0), ..*pair };
        }
    }
    haul
}

pub fn jurisdiction(haul: &mut HaulCycle, whose: Jurisdiction) {
    for leg in &mut haul.route.legs {
        leg.jurisdiction = whose;
    }
}

/// A maker's document for the fitment of the drive group.
pub fn maker(approved: bool, rows: &[(f64, f64, f64)]) -> impl Fn(&mut Tire) {
    let rows: Vec<MakerRow> = [Fitment::Single, Fitment::Dual]
        .into_iter()
        .flat_map(|fitment| {
            rows.iter().map(move |&(lb, mph, psi)| MakerRow {
                fitment,
                load: Mass::from_lb(lb),
                speed: Speed::from_mph(mph),
                pressure: ColdPressure::from_psi(psi),
                hold_distance: None,
            })
        })
        .collect();
    move |tire| {
        tire.maker_table = Some(MakerTable {
            document: "letter 12".into(),
            approved,
            lapsed: None,
            recommended: Recommended::Row,
            rows: rows.clone(),
        });
    }
}

pub fn id(channel: usize, load_state: usize, chain_state: usize, rung: usize) -> CellId {
    CellId { channel, load_state, chain_state, rung }
}

pub fn cell(haul: &HaulCycle, id: CellId) -> Cell {
    let (ladder, _) = Ladder::of(haul).expect("weather in range");
    ladder.cell(id).expect("there is such a cell").clone()
}

pub fn limit(cell: &Cell, kind: MinimumKind) -> &Limit<MinimumKind> {
    cell.window
        .as_ref()
        .expect("a window")
        .minimum
        .iter()
        .find(|limit| limit.kind == kind)
        .unwrap_or_else(|| panic!("no {kind:?} in {cell:?}"))
}

pub fn close(a: PressureDifference, kpa: f64) -> bool {
    a.as_kpa().abs() < kpa
}

/// A route of these legs (name, from km, to km, surface, km/h) on a profile of (km, m).
pub fn route(
    haul: &mut HaulCycle,
    legs: &[(&str, f64, f64, Surface, f64)],
    profile: &[(f64, f64)],
) {
    haul.route.legs = legs
        .iter()
        .map(|&(name, from, to, surface, kmh)| example::leg(name, from, to, surface, kmh))
        .collect::<Vec<Leg>>();
    let points = profile.iter().map(|&(km, m)| (Length::from_km(km), Length::from_m(m))).collect();
    haul.route.profile = Profile::new(points).expect("rising");
    haul.route.lay_bys.clear();
}

/// Gravel and then highway on a profile, loaded where the gravel begins.
pub fn two_legs(gravel_km: f64, profile: &[(f64, f64)]) -> HaulCycle {
    let mut haul = example::haul();
    let legs = [
        ("gravel", 0.0, gravel_km, Surface::Gravel, 40.0),
        ("highway", gravel_km, gravel_km + 15.0, Surface::Paved, 85.0),
    ];
    route(&mut haul, &legs, profile);
    haul
}

pub fn level(gravel_km: f64) -> HaulCycle {
    two_legs(gravel_km, &[(0.0, 0.0), (100.0, 0.0)])
}

/// Every change as it goes nominally, without the spread of trucks and days.
pub fn nominal() -> Detail {
    Detail { samples: 0, ..Detail::default() }
}

pub fn planned(haul: &HaulCycle) -> (Plan, Driven) {
    sampled(haul, 0)
}

pub fn sampled(haul: &HaulCycle, samples: usize) -> (Plan, Driven) {
    let detail = Detail { samples, ..Detail::default() };
    let plan = Plan::of(haul, &detail).expect("weather in range");
    let driven = plan.driven.clone().unwrap_or_else(|why| panic!("{why}"));
    (plan, driven)
}

/// The first raise of the laden run.
pub fn raise(driven: &Driven) -> &ChangePoint {
    driven
        .points
        .iter()
        .find(|point| point.load_state == LADEN && point.action == Action::Raise)
        .expect("a raise")
}

/// Every step of the cycle driven as planned.
pub fn trace(haul: &HaulCycle, plan: &Plan, cycle: &CyclePlan) -> Vec<Sample> {
    let mut trace = Trace::every(Time::ZERO);
    simulate(haul, &plan.ladder, cycle, &nominal(), &mut trace).expect("it drives");
    trace.samples().to_vec()
}

/// Travel distance at which the change to a rung was complete on the laden run.
pub fn complete(samples: &[Sample], rung: usize) -> Length {
    let mut laden = samples.iter().filter(|s| s.load_state == LADEN && s.rung == rung);
    assert!(laden.by_ref().any(|sample| sample.changing && sample.speed.as_kmh() > 0.0));
    laden.find(|sample| !sample.changing).expect("complete at last").travelled
}
