//! The set-up sheet: everything a mechanic stores in the controller and looks at on the truck.

use language::{Kind, Round};
use quantity::{GaugePressure, PressureDifference};
use view::{PlanView, SetupView, WheelEndView};

use super::Material;
use super::driver::{Told, cell, chain_states, told};
use super::mechanic::{Shown, before_work, facts, signed, tick, which_truck, who_decides};
use crate::Words;
use crate::cells::load_states;
use crate::document::{Block, Cell, Column, Document, Group, Row, Table};
use crate::quantities::{cap, fine, lowest, time, time_left, to_set};

/// Air channels side by side, so that the figures stay apart.
const ACROSS: usize = 6;

/// What the survey does not tell of a controller, to be read in its manual.
const LOOK_UP: [&str; 6] =
    ["measures", "select", "overspeed", "restart", "low-supply", "lost-signal"];

/// Looked at when everything is stored.
const CHECKS: [&str; 6] = ["numbers", "unit", "fixed", "wheel-ends", "selected", "card"];

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let (plan, setup) = (material.plan, material.setup);
    let shown = Shown::of(plan, words);
    let blocks = &mut document.blocks;
    blocks.push(before_work(words));
    blocks.push(which_truck(material, words));
    blocks.push(Block::section(words.text("setup-controller")));
    if shown.differs {
        let units = [
            ("controller", &shown.own.unit(Kind::Pressure) as &dyn std::fmt::Display),
            ("reader", &words.format.unit(Kind::Pressure)),
        ];
        blocks.push(Block::strong(words.fill("setup-two-units", &units)));
    }
    let as_stated = ["setup-setting", "setup-as-stated"];
    blocks.push(Block::Table(facts(as_stated, controller(plan, setup, &shown, words), words)));
    blocks.push(Block::section(words.text("setup-pressures")));
    blocks.push(Block::paragraph(words.text("setup-pressures-how")));
    blocks.extend(pressures(plan, &shown, words));
    blocks.push(Block::section(words.text("setup-wheel-ends")));
    blocks.push(Block::Table(wheel_ends(setup, &shown, words)));
    blocks.push(Block::Points {
        lines: ["setup-self-closing", "setup-by-hand"].map(|key| words.text(key)).to_vec(),
    });
    blocks.extend(fixed(plan, words));
    blocks.push(Block::section(words.text("setup-air")));
    blocks.push(Block::Table(facts(as_stated, air(setup, &shown, words), words)));
    blocks.push(Block::section(words.text("setup-look-up")));
    blocks.push(Block::paragraph(words.text("setup-look-up-how")));
    blocks.push(Block::blanks(
        LOOK_UP.map(|what| (words.text(&format!("setup-look-up-{what}")), "")),
    ));
    blocks.push(Block::section(words.text("setup-checks")));
    blocks.push(Block::Ticks {
        lines: CHECKS.map(|check| words.text(&format!("setup-check-{check}"))).to_vec(),
    });
    blocks.push(who_decides(words));
    blocks.push(signed(words));
}

/// What the survey states of the controller, in its own unit first.
fn controller(
    plan: &PlanView,
    setup: &SetupView,
    shown: &Shown<'_>,
    words: Words<'_>,
) -> Vec<(String, Cell)> {
    let controller = &setup.controller;
    let difference = |kpa: f64| {
        shown.both(|format| {
            let value = PressureDifference::from_kpa(kpa);
            fine(format, Kind::Pressure, value, Round::Nearest)
        })
    };
    let told = |key: &str| Cell::text(words.text(key));
    let row = |key: &str, cell: Cell| (words.text(key), cell);
    let rungs = words.count("setup-rungs-of-this-plan", plan.rungs.len());
    vec![
        row("setup-unit", Cell::text(controller.unit.clone())),
        row("setup-step", difference(controller.step_kpa)),
        row("setup-deadband", difference(controller.deadband_kpa)),
        row("setup-gauge-error", difference(controller.gauge_error_kpa)),
        row("setup-gauge", told(&format!("setup-gauge-{}", controller.gauge))),
        row("setup-check-interval", time_cell(controller.check_interval_s, words)),
        row("setup-stored-rungs", Cell::text(format!("{} ({rungs})", controller.stored_rungs))),
        row("setup-brake-threshold", at_least(shown, controller.brake_threshold_kpa)),
        row("setup-brake-resume", at_least(shown, controller.brake_resume_kpa)),
        row(
            "setup-channels",
            told(if controller.channels_together {
                "setup-channels-together"
            } else {
                "setup-channels-in-turn"
            }),
        ),
        row(
            "setup-compressor-limit",
            Cell::amount(&time_left(words.format, controller.compressor_limit_s)),
        ),
    ]
}

fn time_cell(s: f64, words: Words<'_>) -> Cell {
    Cell::amount(&time(words.format, s))
}

/// A pressure that protects something: never shown below.
fn at_least(shown: &Shown<'_>, kpa: f64) -> Cell {
    shown.both(|format| format.pressure(GaugePressure::from_kpa(kpa), Round::Up))
}

/// A table for each load state and chain state, every rung in it, the fastest first.
fn pressures(plan: &PlanView, shown: &Shown<'_>, words: Words<'_>) -> Vec<Block> {
    let mut blocks = Vec::new();
    let (mut road, mut nothing) = (false, false);
    for load_state in load_states(plan) {
        for chain_state in chain_states(plan, load_state) {
            for channels in plan.channels.chunks(ACROSS) {
                let mut table = empty(load_state, chain_state, channels, shown, words);
                for rung in plan.rungs.iter().rev() {
                    let mut cells = vec![
                        Cell::text(rung.name.clone()),
                        Cell::bare(&cap(words.format, rung.cap_kmh)),
                    ];
                    for channel in channels {
                        let told = told(cell(plan, channel, load_state, chain_state, &rung.name));
                        road |= matches!(told, Told::Road(_));
                        nothing |= told == Told::Nothing;
                        cells.push(stored(&told, shown, words));
                    }
                    cells.push(tick());
                    table.rows.push(Row { cells, strong: false });
                }
                blocks.push(Block::Table(table));
            }
        }
    }
    let mut notes = Vec::new();
    notes.extend(road.then(|| words.text("card-road-mark")));
    notes.extend(nothing.then(|| words.text("setup-dash-mark")));
    if !notes.is_empty() {
        blocks.push(Block::Points { lines: notes });
    }
    blocks
}

fn empty(
    load_state: &str,
    chain_state: &str,
    channels: &[String],
    shown: &Shown<'_>,
    words: Words<'_>,
) -> Table {
    let mut columns = vec![
        Column::words(words.text("plan-rung"), 3),
        Column::centered(words.with_unit("plan-cap", Kind::Speed), 2),
    ];
    columns.extend(channels.iter().map(|channel| Column::centered(channel.clone(), 2)));
    columns.push(Column::centered(words.text("setup-stored"), 1));
    let mut table = Table::new(columns);
    table.caption = format!("{load_state}, {chain_state}");
    let head = words.fill("setup-set", &[("unit", &shown.unit())]);
    table.groups = vec![
        Group { head: String::new(), span: 2 },
        Group { head, span: channels.len() },
        Group { head: String::new(), span: 1 },
    ];
    table
}

fn stored(told: &Told, shown: &Shown<'_>, words: Words<'_>) -> Cell {
    match told {
        Told::Set(kpa) => shown.stacked(|format| to_set(format, *kpa), ""),
        Told::Road(kpa) => shown.stacked(|format| to_set(format, *kpa), "*"),
        Told::Nothing => Cell::text(words.text("unit-none")),
    }
}

fn wheel_ends(setup: &SetupView, shown: &Shown<'_>, words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::words(words.text("plan-axle-group"), 4),
        Column::words(words.text("plan-channel-brief"), 3),
        Column::words(words.text("plan-tires"), 3),
        Column::words(words.text("setup-valve"), 4),
        Column::centered(words.text("setup-closes-below"), 3),
        Column::words(words.text("mechanic-found"), 2),
        Column::centered("☐", 1),
    ]);
    for end in &setup.wheel_ends {
        let fitment = words.text(if end.fitment == "dual" { "plan-dual" } else { "plan-single" });
        let none = || words.text("unit-none");
        table.row(vec![
            Cell::text(end.axle_group.clone()),
            Cell::text(end.channel.clone().unwrap_or_else(none)),
            Cell::text(format!("{} {fitment}", end.wheel_ends * end.tires_per_end)),
            Cell::text(valve(end, words)),
            end.closes_below_kpa.map_or_else(|| Cell::text(none()), |kpa| at_least(shown, kpa)),
            Cell::default(),
            tick(),
        ]);
    }
    table
}

fn valve(end: &WheelEndView, words: Words<'_>) -> String {
    let valve = words.text(&format!("setup-valve-{}", end.valve));
    if end.shut == 0 {
        return valve;
    }
    format!("{valve}\n{}", words.count("setup-shut", end.shut as usize))
}

/// Groups without an air channel: what they hold, cold.
fn fixed(plan: &PlanView, words: Words<'_>) -> Option<Block> {
    let mut groups: Vec<String> = Vec::new();
    for group in &plan.fixed_groups {
        let told = format!("{} {}", group.axle_group, lowest(words.format, group.pressure_kpa));
        if !groups.contains(&told) {
            groups.push(told);
        }
    }
    let told = || words.fill("card-fixed", &[("groups", &groups.join(", "))]);
    (!groups.is_empty()).then(|| Block::strong(told()))
}

fn air(setup: &SetupView, shown: &Shown<'_>, words: Words<'_>) -> Vec<(String, Cell)> {
    let supply = &setup.supply;
    let row = |key: &str, kpa: f64| (words.text(key), at_least(shown, kpa));
    let volume = |l: f64| {
        Cell::amount(&words.format.air_volume(quantity::Volume::from_l(l), Round::Nearest))
    };
    vec![
        row("setup-cut-in", supply.cut_in_kpa),
        row("setup-cut-out", supply.cut_out_kpa),
        row("setup-protection-opens", supply.opens_kpa),
        row("setup-protection-shuts", supply.shuts_kpa),
        (words.text("setup-service-volume"), volume(supply.service_l)),
        (
            words.text("setup-reserve-volume"),
            supply.reserve_l.map_or_else(|| Cell::text(words.text("setup-no-reserve")), volume),
        ),
    ]
}
