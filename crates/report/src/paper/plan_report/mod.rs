//! The plan report: for whoever answers for the haul and pays for it.

mod changes;
mod cost;
mod decided;
mod effects;
mod sources;
mod windows;

use language::Round;
use quantity::Time;
use view::PlanView;

use super::Material;
use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Document, Table};
use crate::quantities::{at_hand, chainage, fuel, temperature, time};

pub(super) use sources::of_limits;
pub(super) use windows::ladder as window_tables;

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let plan = material.plan;
    let blocks = &mut document.blocks;
    blocks.push(Block::section(words.text("planreport-what")));
    blocks.push(Block::paragraph(words.text("planreport-why")));
    blocks.push(Block::Table(facts(plan, words)));
    blocks.push(Block::section(words.text("plan-ladder")));
    blocks.push(Block::paragraph(words.text("plan-ladder-how")));
    blocks.extend(windows::ladder(plan, words));
    blocks.push(Block::section(words.text("plan-change-points")));
    blocks.extend(changes::blocks(plan, words));
    blocks.extend(cycle(plan, words));
    blocks.push(Block::section(words.text("plan-effects")));
    blocks.extend(effects::blocks(plan, words));
    blocks.push(Block::section(words.text("plan-cost")));
    blocks.extend(cost::blocks(plan, words));
    blocks.push(Block::section(words.text("plan-cautions")));
    blocks.push(Block::Caution(Caution {
        title: String::new(),
        lines: crate::cautions::told(plan, words),
        grave: false,
    }));
    blocks.push(Block::section(words.text("plan-what-decided")));
    blocks.extend(decided::blocks(plan, words));
    document.sources = of_limits(plan, words);
    document.sources.extend(sources::of_effects(plan, words));
}

fn facts(plan: &PlanView, words: Words<'_>) -> Table {
    let format = words.format;
    let temperatures = words.fill(
        "plan-temperatures",
        &[
            ("reference", &temperature(format, plan.reference_temperature_c)),
            ("coldest", &temperature(format, plan.coldest_c)),
            ("warmest", &temperature(format, plan.warmest_c)),
        ],
    );
    let route = words.fill(
        &format!("plan-route-{}", plan.laden_direction),
        &[("route", &plan.route), ("length", &chainage(format, plan.route_km, Round::Nearest))],
    );
    let controller = words.fill("plan-controller-unit", &[("unit", &plan.controller_unit)]);
    let mut table =
        Table::new(vec![Column::words(String::new(), 1), Column::words(String::new(), 3)]);
    for (key, fact) in [
        ("plan-combination", plan.combination.clone()),
        ("plan-route", route),
        ("plan-cold-named-at", temperatures),
        ("plan-controller", controller),
    ] {
        table.row(vec![Cell::text(words.text(key)), Cell::text(fact)]);
    }
    table
}

/// What a cycle takes.
fn cycle(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    let Some(cycle) = &plan.cycle else { return Vec::new() };
    let format = words.format;
    let mut table = Table::new(vec![
        Column::words(words.text("plan-cycle"), 3),
        Column::figures(String::new()),
    ]);
    for (key, amount) in [
        ("plan-cycle-time", time(format, cycle.time_s)),
        ("plan-cycle-time-added", time(format, cycle.time_added_s)),
        ("plan-cycle-waited", time(format, cycle.waited_s)),
        ("plan-cycle-fuel", fuel(format, cycle.fuel_l)),
        ("plan-compressor-loaded", time(format, cycle.compressor_loaded_s)),
        ("plan-lowest-supply", at_hand(format, cycle.lowest_supply_kpa)),
    ] {
        table.row(vec![Cell::text(words.text(key)), Cell::amount(&amount)]);
    }
    let mut phases = Table::new(vec![
        Column::words(words.text("plan-part"), 3),
        Column::figures(words.text("plan-time")),
        Column::figures(words.text("plan-waited")),
        Column::figures(words.text("plan-fuel")),
    ]);
    for phase in &cycle.phases {
        let name = words.text(&format!("plan-phase-{}", phase.phase.replace(' ', "-")));
        phases.row(vec![
            Cell::text(name),
            Cell::amount(&format.minutes(Time::from_s(phase.time_s), Round::Up)),
            Cell::amount(&format.minutes(Time::from_s(phase.waited_s), Round::Up)),
            Cell::amount(&fuel(format, phase.fuel_l)),
        ]);
    }
    vec![Block::section(words.text("plan-cycle")), Block::Table(table), Block::Table(phases)]
}
