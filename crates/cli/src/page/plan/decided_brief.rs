//! What decided each number of the cells shown, in three lines: lowest, next closest, stack.

use language::{Kind, Round};
use quantity::{Mass, Speed};
use view::{CellView, LimitView, PlanView};

use super::decided::standing;
use super::head;
use crate::page::quantities::{added, lowest, percent, to_set};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::paragraph;
use crate::words::Words;
use report::cells::{Extent, blocks};

/// What stands behind one cell: a label, a pressure and the reason, line by line.
type Lines = Vec<[String; 3]>;

/// A table for each load state shown.
pub fn decided(plan: &PlanView, words: &Words) -> String {
    if plan.ladder.is_empty() {
        return String::new();
    }
    let mut text = head(words, "plan-what-decided");
    text.push_str(&paragraph(&words.text("plan-decided-how"), "  ", "  "));
    for block in blocks(plan, Extent::Driven) {
        let mut sheet = Sheet::new(vec![
            (block.load_state.to_owned(), Side::Left),
            (String::new(), Side::Left),
            (words.format.unit(Kind::Pressure).to_owned(), Side::Right),
            (words.text("plan-decided-by"), Side::Left),
        ]);
        for (rung, channels, lines) in joined(&block.cells, words) {
            let mut names = [rung, channels].into_iter();
            for [label, pressure, why] in lines {
                sheet.row(vec![names.next().unwrap_or_default(), label, pressure, why]);
            }
        }
        text.push('\n');
        text.push_str(&sheet.lines());
    }
    text
}

/// Cells of one rung with the very same lines are told once, under the names of their channels.
fn joined(cells: &[&CellView], words: &Words) -> Vec<(String, String, Lines)> {
    let mut found: Vec<(String, String, Lines)> = Vec::new();
    for cell in cells {
        let lines = explained(cell, words);
        if lines.is_empty() {
            continue;
        }
        match found.iter_mut().find(|(rung, _, told)| *rung == cell.rung && *told == lines) {
            Some((_, channels, _)) => {
                channels.push_str(", ");
                channels.push_str(&cell.channel);
            }
            None => found.push((cell.rung.clone(), cell.channel.clone(), lines)),
        }
    }
    found
}

fn explained(cell: &CellView, words: &Words) -> Lines {
    let format = &words.format;
    let limit = |key: &str, limit: &LimitView| {
        [words.text(key), lowest(format, limit.pressure_kpa).number, because(limit, words)]
    };
    let mut lines = Vec::new();
    lines.extend(cell.min_limit.as_ref().map(|found| limit("plan-decided-lowest", found)));
    lines.extend(cell.min_runner_up.as_ref().map(|found| limit("plan-decided-next", found)));
    lines.extend(cell.set_kpa.map(|set| {
        [words.text("plan-decided-set"), to_set(format, set).number, stack(cell, words)]
    }));
    lines
}

/// `+10.0 gauge +15.0 deadband +7.4 warm tire and step`; what warms and what rounds are one item.
fn stack(cell: &CellView, words: &Words) -> String {
    let mut items: Vec<(String, f64)> = Vec::new();
    for item in &cell.stack {
        let name = match item.added_for.as_str() {
            "snap" => "warmest",
            other => other,
        };
        match items.iter_mut().find(|(known, _)| known == name) {
            Some((_, sum)) => *sum += item.pressure_kpa,
            None => items.push((name.to_owned(), item.pressure_kpa)),
        }
    }
    let told = items.iter().map(|(name, kpa)| {
        let sign = if *kpa < 0.0 { "" } else { "+" };
        let what = words.text(&format!("plan-stack-brief-{name}"));
        format!("{sign}{} {what}", added(&words.format, *kpa).number)
    });
    told.collect::<Vec<_>>().join(" ")
}

/// The kind of limit with the numbers it rests on, its source and standing.
fn because(limit: &LimitView, words: &Words) -> String {
    let format = &words.format;
    let mut parts = vec![words.text(&format!("limit-brief-{}", limit.governed_by))];
    let load = limit.load_kg.map(|kg| format.load(Mass::from_kg(kg), Round::Up).to_string());
    let speed =
        limit.speed_kmh.map(|kmh| format.speed(Speed::from_kmh(kmh), Round::Down).to_string());
    parts.extend(load.into_iter().chain(speed));
    if let Some(pct) = limit.load_allowance_pct.filter(|pct| *pct != 0.0) {
        let share = format.percent(pct / 100.0, 0, Round::Nearest);
        parts.push(words.fill("plan-decided-allowance", &[("share", &share)]));
    }
    parts.extend(limit.deflection_pct.map(|pct| percent(format, pct, Round::Down).to_string()));
    format!("{} [{}: {}]", parts.join(", "), limit.source, standing(limit, words))
}
