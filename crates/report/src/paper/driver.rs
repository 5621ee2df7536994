//! What paper for drivers shows of a plan: driven rungs, and never an unapproved number.

use language::{Amount, Format, Kind, UnitProfile};
use view::{CellView, PlanView, RungView};

use crate::Words;
use crate::cells::uses_rung;
use crate::document::Cell;
use crate::quantities::to_set;

/// Rungs that the haul drives, the fastest first: up the page is up the ladder.
pub(super) fn rungs(plan: &PlanView) -> Vec<&RungView> {
    plan.rungs.iter().rev().filter(|rung| uses_rung(plan, &rung.name)).collect()
}

/// The rung of road pressure: the fastest there is.
pub(super) fn road_rung(plan: &PlanView) -> Option<&RungView> {
    plan.rungs.last()
}

/// Load states that the haul drives, in the order of travel.
pub(super) fn load_states(plan: &PlanView) -> Vec<&str> {
    if plan.empty_state == plan.laden_state {
        vec![&plan.laden_state]
    } else {
        vec![&plan.empty_state, &plan.laden_state]
    }
}

/// Chain states of a load state, the usual one first.
pub(super) fn chain_states<'a>(plan: &'a PlanView, load_state: &str) -> Vec<&'a str> {
    let mut found: Vec<&str> = Vec::new();
    for cell in plan.ladder.iter().filter(|cell| cell.load_state == load_state) {
        if !found.contains(&cell.chain_state.as_str()) {
            found.push(&cell.chain_state);
        }
    }
    found
}

/// A cell of the ladder.
pub(super) fn cell<'a>(
    plan: &'a PlanView,
    channel: &str,
    load_state: &str,
    chain_state: &str,
    rung: &str,
) -> Option<&'a CellView> {
    plan.ladder.iter().find(|cell| {
        (&*cell.channel, &*cell.load_state, &*cell.chain_state, &*cell.rung)
            == (channel, load_state, chain_state, rung)
    })
}

/// What a driver may be told of a cell: its approved value, road pressure in its place, or nothing.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Told {
    /// The cell's own approved value.
    Set(f64),
    /// Road pressure stands in.
    Road(f64),
    /// Nobody stands behind a pressure there.
    Nothing,
}

/// What a driver may be told of a cell; what is not known is nothing.
pub(super) fn told(cell: Option<&CellView>) -> Told {
    let Some(cell) = cell else { return Told::Nothing };
    match (cell.driver.as_str(), cell.driver_set_kpa) {
        ("set", Some(kpa)) => Told::Set(kpa),
        ("road pressure", Some(kpa)) => Told::Road(kpa),
        _ => Told::Nothing,
    }
}

/// The form of the numbers that the controller shows, where its unit is not the reader's.
pub(super) fn controller_format(plan: &PlanView, words: Words<'_>) -> Option<Format> {
    let profile = match plan.controller_unit.as_str() {
        "psi" => UnitProfile::Us,
        "bar" => UnitProfile::MetricBar,
        _ => UnitProfile::Si,
    };
    let same = words.format.unit(Kind::Pressure) == plan.controller_unit;
    (!same).then(|| words.format.in_profile(profile))
}

/// The figure of a cell on the card: in the reader's unit, and under it as the controller shows it.
pub(super) fn figure(told: &Told, own: Option<&Format>, words: Words<'_>) -> Cell {
    let (kpa, mark) = match told {
        Told::Set(kpa) => (*kpa, ""),
        Told::Road(kpa) => (*kpa, "*"),
        Told::Nothing => return Cell::text(words.text("unit-none")),
    };
    let amount: Amount = to_set(words.format, kpa);
    let mut cell = Cell::bare(&amount);
    cell.text.push_str(mark);
    if let Some(own) = own {
        cell.text = format!("{}\n({})", cell.text, to_set(own, kpa).number);
    }
    cell
}
