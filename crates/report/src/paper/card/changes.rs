//! Change points in the order of travel, by landmark: what to start, where, and how fast meanwhile.

use language::Kind;
use view::{ChangePointView, LadenOptionView, PlanView};

use crate::Words;
use crate::changes::{early, place, way};
use crate::document::{Block, Cell, Column, Row, Table};
use crate::paper::driver::load_states;
use crate::quantities::{cap, chainage, time};

pub(in crate::paper) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    let mut blocks = Vec::new();
    if plan.cycle.is_none() {
        blocks.push(Block::strong(words.text("card-not-driven")));
        return blocks;
    }
    let before = plan.cautions.iter().filter(|caution| caution.caution == "before-first-move");
    let channels: Vec<&str> =
        before.filter_map(|caution| caution.names.get("channel").map(String::as_str)).collect();
    if !channels.is_empty() {
        let told = words.fill("card-before-first-move", &[("channels", &channels.join(", "))]);
        blocks.push(Block::strong(told));
    }
    let mut number = 0;
    for state in load_states(plan) {
        let points: Vec<&ChangePointView> =
            plan.change_points.iter().filter(|point| point.load_state == state).collect();
        if state == plan.laden_state {
            blocks.extend(laden_change(plan, words));
        }
        blocks.push(Block::section(words.fill("plan-run", &[("load_state", &state)])));
        if points.is_empty() {
            blocks.push(Block::paragraph(words.text("plan-no-change-points")));
        } else {
            blocks.push(Block::Table(table(&points, number, words)));
            blocks.extend(points.iter().zip(number + 1..).filter_map(|(point, number)| {
                Some(Block::strong(words.fill(
                    "card-change-told",
                    &[("number", &number), ("told", &told(point, words)?)],
                )))
            }));
        }
        number += points.len();
    }
    blocks.push(Block::paragraph(words.fill("card-unloaded", &[("state", &plan.empty_state)])));
    blocks
}

fn table(points: &[&ChangePointView], before: usize, words: Words<'_>) -> Table {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::figures(words.text("card-number")),
        Column { share: 4, ..Column::figures(words.with_unit("plan-at", Kind::Distance)) },
        Column::words(words.text("plan-place"), 11),
        Column::words(words.text("plan-call"), 12),
        Column { share: 4, ..Column::figures(words.with_unit("plan-done-by", Kind::Distance)) },
        Column {
            share: 4,
            ..Column::figures(words.fill("card-up-to", &[("unit", &format.unit(Kind::Speed))]))
        },
    ]);
    for (index, point) in points.iter().enumerate() {
        let round = early(point);
        table.rows.push(Row {
            cells: vec![
                Cell::text((before + index + 1).to_string()),
                Cell::bare(&chainage(format, point.km, round)),
                Cell::text(place(point, words)),
                Cell::text(call(point, words)),
                Cell::bare(&chainage(format, point.reach_by_km, round)),
                Cell::bare(&cap(format, point.cap_kmh)),
            ],
            strong: false,
        });
    }
    table
}

/// `START RAISING ↑ highway`, with a mark where more is told under the table.
fn call(point: &ChangePointView, words: Words<'_>) -> String {
    let (start, arrow) = match point.action.as_str() {
        "raise" => ("plan-start-raising", "↑"),
        _ => ("plan-start-lowering", "↓"),
    };
    let stops = point.chosen.way == "lay-by";
    let start = words.text(if stops { "plan-stop-and-change" } else { start });
    let mark = if told(point, words).is_some() { " ⚠" } else { "" };
    format!("{start} {arrow} {}{mark}", point.to_rung)
}

/// What to do where rolling through is not enough.
fn told(point: &ChangePointView, words: Words<'_>) -> Option<String> {
    let mut told = Vec::new();
    if point.chosen.way != "rolling" {
        told.push(way(&point.chosen, words));
    }
    if !point.fits {
        told.push(words.text("card-not-complete"));
    }
    (!told.is_empty()).then(|| told.join(" – "))
}

fn laden_change(plan: &PlanView, words: Words<'_>) -> Option<Block> {
    let chosen = plan.laden_change.iter().find(|option| option.chosen)?;
    Some(Block::strong(loaded(chosen, plan, words)))
}

fn loaded(option: &LadenOptionView, plan: &PlanView, words: Words<'_>) -> String {
    let format = words.format;
    let unknown = || words.text("unit-unknown");
    let takes = option.change_time_s.map_or_else(unknown, |s| time(format, s).to_string());
    let state: &dyn std::fmt::Display = &plan.laden_state;
    if !option.possible {
        return words.fill("card-laden-not-possible", &[("state", state)]);
    }
    match option.way.as_str() {
        "rolling" => {
            // It is ordered on the way to loading: early means before it, whichever way that is.
            let round = match plan.laden_direction.as_str() {
                "forward" => language::Round::Up,
                _ => language::Round::Down,
            };
            let at = option.km.map_or_else(unknown, |km| chainage(format, km, round).to_string());
            words.fill("card-laden-rolling", &[("state", state), ("at", &at), ("time", &takes)])
        }
        "while loading" => {
            words.fill("card-laden-while-loading", &[("state", state), ("time", &takes)])
        }
        _ => words.fill("card-laden-after-loading", &[("state", state), ("time", &takes)]),
    }
}
