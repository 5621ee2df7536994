//! The commissioning record: acceptance tests with their limits, what the register knows, and room
//! for what is measured.

mod acceptance;
mod register;
mod timing;

use language::{Kind, Round};
use view::PlanView;

use super::Material;
use super::mechanic::{Shown, before_work, signed, tick, which_truck, who_decides};
use crate::Words;
use crate::changes::{early, place};
use crate::document::{Block, Cell, Column, Document, Look, Table};
use crate::quantities::{chainage, stretch, temperature};

pub(super) use register::sensors;

/// What is written back into the register when the tests are passed.
const FIT: [&str; 4] = ["delivery", "conductance", "tire-volume", "sensors"];

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let (plan, setup) = (material.plan, material.setup);
    let shown = Shown::of(plan, words);
    let blocks = &mut document.blocks;
    blocks.push(Block::paragraph(words.text("commission-what")));
    blocks.push(before_work(words));
    blocks.push(which_truck(material, words));
    blocks.push(Block::blanks([
        (words.text("commission-ambient"), words.format.unit(Kind::Temperature)),
        (words.text("commission-reference-gauge"), ""),
    ]));
    blocks.push(Block::section(words.text("commission-register")));
    blocks.extend(register::blocks(setup, words));
    blocks.push(Block::section(words.text("commission-tests")));
    blocks.push(Block::paragraph(words.text("commission-cold-means")));
    blocks.push(Block::Table(acceptance::table(material, &shown, words)));
    blocks.push(Block::section(words.text("commission-times")));
    blocks.extend(timing::blocks(setup, &shown, words));
    blocks.push(Block::section(words.text("commission-route")));
    blocks.push(Block::paragraph(words.text("commission-route-how")));
    blocks.push(Block::Table(on_the_route(plan, words)));
    blocks.push(Block::section(words.text("commission-write-back")));
    blocks.push(Block::paragraph(words.text("commission-write-back-how")));
    blocks.push(Block::blanks(FIT.map(|what| {
        let unit = if what == "sensors" { "" } else { "%" };
        (words.text(&format!("commission-fit-{what}")), unit)
    })));
    blocks.push(who_decides(words));
    blocks.push(Block::Ticks {
        lines: ["commission-accepted", "commission-not-accepted"].map(|key| words.text(key)).into(),
    });
    blocks.push(signed(words));
    document.sources = acceptance::sources(words);
}

/// Every change point, with room for where the change was complete on the drive.
fn on_the_route(plan: &PlanView, words: Words<'_>) -> Table {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::figures(words.text("card-number")),
        Column::words(words.text("plan-load-state"), 3),
        Column::words(words.text("plan-place"), 5),
        Column::words(words.text("plan-from-to"), 5),
        Column::figures(words.with_unit("plan-done-by", Kind::Distance)),
        Column::figures(words.text("plan-lead")),
        Column::words(words.with_unit("commission-done-at", Kind::Distance), 3),
        Column::centered("☐", 1),
    ]);
    table.look = Look::Small;
    for (point, number) in plan.change_points.iter().zip(1usize..) {
        table.row(vec![
            Cell::text(number.to_string()),
            Cell::text(point.load_state.clone()),
            Cell::text(place(point, words)),
            Cell::text(format!("{} → {}", point.from_rung, point.to_rung)),
            Cell::bare(&chainage(format, point.reach_by_km, early(point))),
            Cell::amount(&stretch(format, point.lead_m, Round::Up)),
            Cell::default(),
            tick(),
        ]);
    }
    table
}

/// The warmest that the plan counts with in any tire that the haul drives.
pub(super) fn warmest(plan: &PlanView, words: Words<'_>) -> String {
    let driven = plan.ladder.iter().filter(|cell| cell.used).map(|cell| cell.warmest_tire_c);
    temperature(words.format, driven.fold(plan.warmest_c, f64::max)).to_string()
}
