//! The sign list: which board stands where, whom it faces, and its words.

use language::Kind as Unit;
use view::{ChangePointView, PlanView};

use super::Material;
use super::driver::load_states;
use crate::Words;
use crate::changes::{early, place};
use crate::document::{Block, Cell, Column, Document, Row, Table};
use crate::quantities::{cap, chainage};

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let plan = material.plan;
    document.blocks.push(Block::paragraph(words.text("signs-how")));
    let mut number = 0;
    for state in load_states(plan) {
        let points: Vec<(usize, &ChangePointView)> = plan
            .change_points
            .iter()
            .enumerate()
            .filter(|(_, point)| point.load_state == state)
            .collect();
        if points.is_empty() {
            continue;
        }
        let run = words.fill("signs-facing", &[("load_state", &state)]);
        document.blocks.push(Block::section(run));
        document.blocks.push(Block::Table(table(plan, &points, &mut number, words)));
    }
    let lines = ["signs-road-owner", "caution-law-decides", "signs-work", "signs-check"];
    document.blocks.push(Block::Points { lines: lines.map(|key| words.text(key)).to_vec() });
}

fn table(
    plan: &PlanView,
    points: &[(usize, &ChangePointView)],
    number: &mut usize,
    words: Words<'_>,
) -> Table {
    let mut table = Table::new(vec![
        Column::figures(words.text("signs-board")),
        Column::figures(words.with_unit("plan-at", Unit::Distance)),
        Column::words(words.text("plan-place"), 4),
        Column::words(words.text("signs-words"), 5),
        Column::words(words.text("signs-for"), 3),
        Column::words(words.text("signs-stands"), 1),
    ]);
    for (index, point) in points {
        for board in [start(*index, point, words), complete(plan, *index, point, words)] {
            *number += 1;
            let mut cells = vec![Cell::text(number.to_string())];
            cells.extend(board);
            cells.push(Cell::text("☐"));
            table.rows.push(Row { cells, strong: false });
        }
    }
    table
}

/// The board where the driver starts.
fn start(index: usize, point: &ChangePointView, words: Words<'_>) -> [Cell; 4] {
    let (key, arrow) = if point.action == "raise" {
        ("plan-start-raising", "↑")
    } else {
        ("plan-start-lowering", "↓")
    };
    [
        Cell::bare(&chainage(words.format, point.km, early(point))),
        Cell::text(place(point, words)),
        Cell::text(format!("{} {arrow}\n{}", words.text(key), point.to_rung)),
        Cell::text(words.fill("signs-of-change", &[("number", &(index + 1))])),
    ]
}

/// The board where it must be complete: which speed holds from there, and which without it.
fn complete(plan: &PlanView, index: usize, point: &ChangePointView, words: Words<'_>) -> [Cell; 4] {
    let format = words.format;
    let reached = plan.rungs.iter().find(|rung| rung.name == point.to_rung);
    let reached = reached.map_or(point.cap_kmh, |rung| rung.cap_kmh);
    let told = words.fill(
        "signs-complete",
        &[
            ("rung", &point.to_rung),
            ("cap", &cap(format, reached)),
            ("slow", &cap(format, point.cap_kmh.min(reached))),
        ],
    );
    [
        Cell::bare(&chainage(format, point.reach_by_km, early(point))),
        Cell::text(words.text("signs-where-complete")),
        Cell::text(told),
        Cell::text(words.fill("signs-of-change", &[("number", &(index + 1))])),
    ]
}
