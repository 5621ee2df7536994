//! What decided each number of the ladder, cells that say the same in one row.

use language::Kind;
use view::{CellView, PlanView};

use crate::Words;
use crate::cells::{self, Extent, explained_before, same_as};
use crate::decided::{because, stack};
use crate::document::{Block, Cell, Column, Look, Table};
use crate::quantities::{lowest, to_set};

pub(super) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    let mut made = vec![Block::paragraph(words.text("plan-decided-how"))];
    let blocks = cells::blocks(plan, Extent::Whole);
    let mut same = Vec::new();
    for (index, block) in blocks.iter().enumerate() {
        let earlier = &blocks[..index];
        if let Some(first) = same_as(block, earlier) {
            let cells = format!("{}, {}", block.load_state, block.chain_state);
            let told =
                [("cells", &cells as &dyn std::fmt::Display), ("chains", &first.chain_state)];
            same.push(words.fill("plan-ladder-same", &told));
            continue;
        }
        let mut table = empty(words);
        table.caption = format!("{}, {}", block.load_state, block.chain_state);
        let new = block.cells.iter().filter(|cell| !explained_before(block, cell, earlier));
        for row in joined(new.copied(), words) {
            table.row(row);
        }
        made.push(Block::Table(table));
    }
    if !same.is_empty() {
        made.push(Block::Points { lines: same });
    }
    made
}

fn empty(words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::words(words.text("plan-rung"), 2),
        Column::words(words.text("plan-channel-brief"), 3),
        Column::figures(words.with_unit("plan-lowest", Kind::Pressure)),
        Column::words(words.text("plan-governed-by"), 6),
        Column::words(words.with_unit("plan-next-closest", Kind::Pressure), 3),
        Column::figures(words.with_unit("plan-set", Kind::Pressure)),
        Column::words(words.text("plan-stack"), 7),
    ]);
    table.look = Look::Small;
    table
}

/// A row for each rung and reason, with the channels it is so on.
fn joined<'a>(cells: impl Iterator<Item = &'a CellView>, words: Words<'_>) -> Vec<Vec<Cell>> {
    let mut found: Vec<(String, Vec<String>, Vec<Cell>)> = Vec::new();
    for cell in cells {
        let told = told(cell, words);
        match found.iter_mut().find(|(rung, _, same)| *rung == cell.rung && *same == told) {
            Some((_, channels, _)) => channels.push(cell.channel.clone()),
            None => found.push((cell.rung.clone(), vec![cell.channel.clone()], told)),
        }
    }
    let mut last = String::new();
    found
        .into_iter()
        .map(|(rung, channels, told)| {
            let name = if rung == last { String::new() } else { rung.clone() };
            last = rung;
            let mut row = vec![Cell::text(name), Cell::text(channels.join(", "))];
            row.extend(told);
            row
        })
        .collect()
}

fn told(cell: &CellView, words: Words<'_>) -> Vec<Cell> {
    let format = words.format;
    let none = || Cell::text(words.text("unit-none"));
    let Some(limit) = &cell.min_limit else {
        let why = Cell::text(words.text("plan-approval-not-possible"));
        return vec![none(), why, none(), none(), none()];
    };
    vec![
        Cell::bare(&lowest(format, limit.pressure_kpa)),
        Cell::text(because(limit, words)),
        cell.min_runner_up.as_ref().map_or_else(none, |next| {
            let name = words.text(&format!("limit-brief-{}", next.governed_by));
            Cell::text(format!("{name} {}", lowest(format, next.pressure_kpa).number))
        }),
        cell.set_kpa.map_or_else(none, |kpa| Cell::bare(&to_set(format, kpa))),
        Cell::text(stack(cell, words)),
    ]
}
