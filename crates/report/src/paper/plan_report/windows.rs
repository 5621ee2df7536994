//! The windows of the ladder: what is set, between which limits, and who stands behind it.

use language::{Kind, Round};
use view::{CellView, PlanView};

use crate::Words;
use crate::cells::{Extent, blocks};
use crate::document::{Block, Cell, Column, Look, Table};
use crate::quantities::{cap, highest, lowest, percent, to_set};

/// A table for each load state and chain state that the haul drives.
pub(in crate::paper) fn ladder(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    blocks(plan, Extent::Driven)
        .into_iter()
        .map(|block| {
            let mut table = empty(words);
            table.caption = format!("{}, {}", block.load_state, block.chain_state);
            let mut last = "";
            for cell in block.cells {
                table.row(row(plan, cell, cell.rung == last, words));
                last = &cell.rung;
            }
            Block::Table(table)
        })
        .collect()
}

fn empty(words: Words<'_>) -> Table {
    let pressure = |key: &str| Column::figures(words.with_unit(key, Kind::Pressure));
    let mut table = Table::new(vec![
        Column::words(words.text("plan-rung"), 3),
        Column::figures(words.with_unit("plan-cap", Kind::Speed)),
        Column::words(words.text("plan-channel-brief"), 3),
        pressure("plan-set"),
        pressure("plan-cold"),
        pressure("plan-lowest"),
        Column::words(words.text("plan-governed-by"), 4),
        pressure("plan-highest"),
        Column::figures(words.text("plan-deflection")),
        Column::words(words.text("plan-approval"), 5),
    ]);
    table.look = Look::Small;
    table
}

fn row(plan: &PlanView, cell: &CellView, same_rung: bool, words: Words<'_>) -> Vec<Cell> {
    let format = words.format;
    let none = || Cell::text(words.text("unit-none"));
    let rung = plan.rungs.iter().find(|rung| rung.name == cell.rung);
    vec![
        if same_rung { Cell::default() } else { Cell::text(cell.rung.clone()) },
        match rung {
            Some(_) if same_rung => Cell::default(),
            Some(rung) => Cell::bare(&cap(format, rung.cap_kmh)),
            None => none(),
        },
        Cell::text(cell.channel.clone()),
        cell.set_kpa.map_or_else(none, |kpa| Cell::bare(&to_set(format, kpa))),
        cell.pressure_kpa.map_or_else(none, |kpa| Cell::bare(&lowest(format, kpa))),
        cell.min_kpa.map_or_else(none, |kpa| Cell::bare(&lowest(format, kpa))),
        cell.min_governed_by
            .as_ref()
            .map_or_else(none, |by| Cell::text(words.text(&format!("limit-brief-{by}")))),
        cell.max_kpa.map_or_else(none, |kpa| Cell::bare(&highest(format, kpa))),
        cell.deflection_pct.map_or_else(none, |pct| Cell::amount(&percent(format, pct, Round::Up))),
        Cell::text(approval(&cell.approval, words)),
    ]
}

/// Who stands behind a cell.
fn approval(approval: &str, words: Words<'_>) -> String {
    words.text(match approval {
        "maker" => "plan-approval-brief-maker",
        "standard" => "plan-approval-brief-standard",
        "needs approval" => "plan-approval-needed",
        _ => "plan-approval-not-possible",
    })
}
