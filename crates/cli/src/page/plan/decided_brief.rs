//! What decided each number of the cells shown, in three lines: lowest, next closest, stack.

use language::Kind;
use view::{CellView, LimitView, PlanView};

use super::head;
use crate::page::quantities::{lowest, to_set};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::paragraph;
use crate::words::Words;
use report::cells::{Extent, blocks};
use report::decided::{because, stack};

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
        [
            words.text(key),
            lowest(format, limit.pressure_kpa).number,
            because(limit, words.of_paper()),
        ]
    };
    let mut lines = Vec::new();
    lines.extend(cell.min_limit.as_ref().map(|found| limit("plan-decided-lowest", found)));
    lines.extend(cell.min_runner_up.as_ref().map(|found| limit("plan-decided-next", found)));
    lines.extend(cell.set_kpa.map(|set| {
        [words.text("plan-decided-set"), to_set(format, set).number, stack(cell, words.of_paper())]
    }));
    lines
}
