//! The service list: what to inspect how often.

use super::Material;
use super::commissioning::sensors;
use super::mechanic::{Shown, before_work, signed, tick, who_decides};
use crate::Words;
use crate::document::{Block, Cell, Column, Document, Look, Row, Table};
use crate::quantities::lowest;

/// Intervals with what is looked at; all of it common practice, no source, and the list says so.
const INTERVALS: [(&str, &[&str]); 7] = [
    ("daily", &["walk", "hiss", "stones", "display", "drain", "lamp"]),
    ("weekly", &["gauge"]),
    ("monthly", &["overnight", "chafe", "seals", "caps", "logs"]),
    ("quarterly", &["timing", "brake-leak", "reference", "dryer-look"]),
    ("yearly", &["dryer", "swivel-hoses", "shut-offs", "weigh", "approvals", "refresher"]),
    ("autumn", &["water", "winter-weigh", "cold-timing"]),
    ("event", &["wheel", "nuts", "swap", "parked", "loss", "tire-model"]),
];

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let setup = material.setup;
    let blocks = &mut document.blocks;
    blocks.push(Block::paragraph(words.text("service-what")));
    blocks.push(Block::strong(words.text("service-standing")));
    blocks.push(before_work(words));
    for (interval, items) in INTERVALS {
        blocks.push(Block::section(words.text(&format!("service-{interval}"))));
        blocks.push(Block::Table(table(items, words)));
    }
    blocks.push(Block::section(words.text("service-this-fleet")));
    blocks.push(Block::Points { lines: of_this_fleet(material, words) });
    blocks.push(Block::section(words.text("service-sensors")));
    blocks.push(sensors(setup, words));
    blocks.push(who_decides(words));
    blocks.push(signed(words));
}

fn table(items: &[&str], words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::words(words.text("service-look-at"), 9),
        Column::words(words.text("mechanic-found"), 4),
        Column::centered("☐", 1),
    ]);
    table.look = Look::Small;
    for item in items {
        table.rows.push(Row {
            cells: vec![
                Cell::text(words.text(&format!("service-item-{item}"))),
                Cell::default(),
                tick(),
            ],
            strong: false,
        });
    }
    table
}

/// What this fleet's own parts ask for.
fn of_this_fleet(material: &Material<'_>, words: Words<'_>) -> Vec<String> {
    let (plan, setup) = (material.plan, material.setup);
    let shown = Shown::of(plan, words);
    let mut lines = Vec::new();
    for end in &setup.wheel_ends {
        let group: &dyn std::fmt::Display = &end.axle_group;
        match (end.valve.as_str(), end.closes_below_kpa) {
            ("self-closing", Some(kpa)) => {
                let closes = shown.both(|format| lowest(format, kpa)).text;
                lines.push(words.fill("service-closes", &[("group", group), ("closes", &closes)]));
            }
            ("by-hand", _) => lines.push(words.fill("service-by-hand", &[("group", group)])),
            _ => lines.push(words.fill("service-fixed", &[("group", group)])),
        }
    }
    let threshold = shown.both(|format| lowest(format, setup.controller.brake_threshold_kpa)).text;
    lines.push(words.fill("service-threshold", &[("threshold", &threshold)]));
    lines
}
