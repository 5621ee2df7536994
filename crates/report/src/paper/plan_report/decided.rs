//! What decided each number, and the sources it rests on.

use language::Kind;
use view::{CellView, LimitView, PlanView};

use crate::Words;
use crate::cells::{Extent, shown};
use crate::document::{Block, Cell, Column, Look, Source, Table};
use crate::quantities::{added, lowest};

pub(super) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    let mut table = Table::new(vec![
        Column::words(words.text("planreport-cell"), 4),
        Column::figures(words.with_unit("plan-lowest", Kind::Pressure)),
        Column::words(words.text("plan-governed-by"), 5),
        Column::words(words.text("plan-next-closest"), 4),
        Column::words(words.text("plan-stack"), 4),
    ]);
    table.look = Look::Small;
    for cell in plan.ladder.iter().filter(|cell| shown(plan, cell, Extent::Whole)) {
        table.row(row(cell, words));
    }
    vec![Block::paragraph(words.text("plan-decided-how")), Block::Table(table)]
}

fn row(cell: &CellView, words: Words<'_>) -> Vec<Cell> {
    let format = words.format;
    let none = || words.text("unit-none");
    let name = [&*cell.load_state, &*cell.chain_state, &*cell.rung, &*cell.channel].join(", ");
    let Some(limit) = &cell.min_limit else {
        let why = words.text("plan-approval-not-possible");
        return vec![
            Cell::text(name),
            Cell::text(none()),
            Cell::text(why),
            Cell::text(none()),
            Cell::text(none()),
        ];
    };
    let stack: Vec<String> = cell
        .stack
        .iter()
        .map(|item| {
            let what = words.text(&format!("plan-stack-{}", item.added_for));
            format!("{what} {}", added(format, item.pressure_kpa))
        })
        .collect();
    vec![
        Cell::text(name),
        Cell::bare(&lowest(format, limit.pressure_kpa)),
        Cell::text(format!(
            "{} [{}: {}]",
            words.text(&format!("limit-{}", limit.governed_by)),
            limit.source,
            standing(limit, words)
        )),
        Cell::text(cell.min_runner_up.as_ref().map_or_else(none, |next| {
            format!(
                "{} {}",
                words.text(&format!("limit-brief-{}", next.governed_by)),
                lowest(format, next.pressure_kpa)
            )
        })),
        Cell::text(stack.join("; ")),
    ]
}

fn standing(limit: &LimitView, words: Words<'_>) -> String {
    words.text(match limit.standing.as_str() {
        "read" => "plan-standing-read",
        "given" => "plan-standing-given",
        "from memory" => "plan-standing-memory",
        _ => "plan-standing-practice",
    })
}

/// Every source that a limit of the plan rests on, once, with what rests on it.
pub(in crate::paper) fn sources(plan: &PlanView, words: Words<'_>) -> Vec<Source> {
    let mut found: Vec<Source> = Vec::new();
    let limits = plan.ladder.iter().flat_map(|cell| [&cell.min_limit, &cell.min_runner_up]);
    for limit in limits.flatten() {
        let place =
            if limit.locator.is_empty() { String::new() } else { format!(", {}", limit.locator) };
        let source = Source {
            what: words.text(&format!("limit-{}", limit.governed_by)),
            source: format!("{}{place}", limit.source),
            standing: standing(limit, words),
        };
        if !found.contains(&source) {
            found.push(source);
        }
    }
    found
}
