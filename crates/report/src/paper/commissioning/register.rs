//! What the register knows of the units: sensors with their last verification, measured values.

use language::Round;
use view::{FittedView, SetupView};

use crate::Words;
use crate::document::{Block, Cell, Column, Look, Table};
use crate::paper::mechanic::tick;
use crate::quantities::percent;

pub(super) fn blocks(setup: &SetupView, words: Words<'_>) -> Vec<Block> {
    let mut blocks = vec![sensors(setup, words)];
    let fitted: Vec<(&str, &FittedView)> = setup
        .units
        .iter()
        .flat_map(|unit| unit.fitted.iter().map(|value| (unit.number.as_str(), value)))
        .collect();
    if fitted.is_empty() {
        blocks.push(Block::paragraph(words.text("commission-fitted-none")));
        return blocks;
    }
    let mut table = Table::new(vec![
        Column::words(words.text("paper-unit"), 2),
        Column::words(words.text("commission-fitted"), 5),
        Column::figures(words.text("commission-of-type")),
        Column::words(words.text("commission-fitted-on"), 3),
        Column::words(words.text("commission-measured-now"), 3),
    ]);
    table.look = Look::Small;
    for (unit, value) in fitted {
        let channel = value.channel.clone().unwrap_or_default();
        let what = words.fill(&format!("plan-measured-{}", value.what), &[("channel", &channel)]);
        table.row(vec![
            Cell::text(unit),
            Cell::text(what),
            Cell::amount(&percent(words.format, value.share_pct, Round::Nearest)),
            Cell::text(value.date.clone()),
            Cell::default(),
        ]);
    }
    blocks.push(Block::Table(table));
    blocks
}

/// Pressure sensors with the day each was last held against a reference gauge, or that nothing is
/// known of any.
pub(in crate::paper) fn sensors(setup: &SetupView, words: Words<'_>) -> Block {
    let mut table = Table::new(vec![
        Column::words(words.text("paper-unit"), 2),
        Column::words(words.text("commission-type"), 3),
        Column::words(words.text("commission-sensor"), 4),
        Column::words(words.text("commission-verified"), 3),
        Column::words(words.text("commission-reads"), 2),
        Column::words(words.text("commission-reference-reads"), 2),
        Column::centered("☐", 1),
    ]);
    table.look = Look::Small;
    for unit in &setup.units {
        for sensor in &unit.sensors {
            let verified = sensor.verified.clone();
            table.row(vec![
                Cell::text(unit.number.clone()),
                Cell::text(unit.vehicle.clone()),
                Cell::text(sensor.place.clone()),
                Cell::text(verified.unwrap_or_else(|| words.text("commission-never-verified"))),
                Cell::default(),
                Cell::default(),
                tick(),
            ]);
        }
    }
    if table.rows.is_empty() {
        return Block::paragraph(words.text("commission-sensors-none"));
    }
    Block::Table(table)
}
