//! The ladder: for each load state a table of what to set, and the window around it.

use std::collections::BTreeMap;

use language::{Format, Kind, UnitProfile};
use view::{CellView, PlanView, RungView};

use super::{head, with_unit};
use crate::page::quantities::{cap, highest, load, lowest, percent, stretch, temperature, to_set};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{line, paragraph};
use crate::terminal::HEADING;
use crate::words::Words;
use report::cells::{
    Block, CellName, Extent, blocks, has_chains, left_out, list, same_as, uses_rung,
};

/// The tables of the cells that are shown, and how many are not.
pub fn ladder(plan: &PlanView, extent: Extent, words: &Words) -> String {
    if plan.ladder.is_empty() {
        return String::new();
    }
    let blocks = blocks(plan, extent);
    let mut text = head(words, "plan-ladder");
    text.push_str(&paragraph(&words.text("plan-ladder-how"), "  ", "  "));
    for (index, block) in blocks.iter().enumerate() {
        let name = name(plan, block);
        text.push('\n');
        if let Some(same) = same_as(block, &blocks[..index]) {
            let chains = &same.chain_state;
            let told = words.fill("plan-ladder-same", &[("cells", &name), ("chains", chains)]);
            text.push_str(&line(HEADING, "  ", &told));
        } else {
            text.push_str(&line(HEADING, "  ", &name));
            text.push_str(&table(plan, block, words));
        }
    }
    text.push_str(&holds(plan, extent, words));
    if extent == Extent::Driven {
        text.push('\n');
        text.push_str(&more(plan, words));
    }
    text
}

/// How many cells are left out, which of them are not possible, and how to see them.
fn more(plan: &PlanView, words: &Words) -> String {
    let left_out = left_out(plan, Extent::Driven);
    let mut told = Vec::new();
    if !left_out.is_empty() {
        told.push(words.count("plan-more-cells", left_out.len()));
        let impossible: Vec<CellName<'_>> = left_out
            .iter()
            .filter(|cell| cell.set_kpa.is_none())
            .map(|cell| CellName::from(*cell))
            .collect();
        told.push(if impossible.is_empty() {
            words.text("plan-more-possible")
        } else {
            words.texts.get(
                "plan-more-not-possible",
                &[
                    ("count", impossible.len().into()),
                    ("cells", list(plan, &impossible, words.of_paper()).into()),
                ],
            )
        });
    }
    told.push(words.text("plan-more-how"));
    paragraph(&told.join(" "), "  ", "  ")
}

/// `laden`, or `laden, no chains` where there is a choice.
pub fn name(plan: &PlanView, block: &Block<'_>) -> String {
    if has_chains(plan) {
        format!("{}, {}", block.load_state, block.chain_state)
    } else {
        block.load_state.to_owned()
    }
}

/// A format in the controller's unit, where that is not the reader's.
fn controller_format(plan: &PlanView, words: &Words) -> Option<Format> {
    let profile = match plan.controller_unit.as_str() {
        "psi" => UnitProfile::Us,
        "bar" => UnitProfile::MetricBar,
        _ => UnitProfile::Si,
    };
    let same = words.format.unit(Kind::Pressure) == plan.controller_unit;
    (!same).then(|| words.format.in_profile(profile))
}

fn table(plan: &PlanView, block: &Block<'_>, words: &Words) -> String {
    let format = &words.format;
    let pressure = format.unit(Kind::Pressure);
    let own = controller_format(plan, words);
    let mut headings = vec![
        (words.text("plan-rung"), Side::Left),
        (with_unit(words, "plan-cap", format.unit(Kind::Speed)), Side::Right),
        (words.text("plan-channel-brief"), Side::Left),
    ];
    if own.is_some() {
        headings.push((with_unit(words, "plan-set", &plan.controller_unit), Side::Right));
    }
    headings.extend([
        (with_unit(words, "plan-set", pressure), Side::Right),
        (with_unit(words, "plan-cold", pressure), Side::Right),
        (with_unit(words, "plan-lowest", pressure), Side::Right),
        (words.text("plan-governed-by"), Side::Left),
        (with_unit(words, "plan-highest", pressure), Side::Right),
        (words.text("plan-approval"), Side::Left),
    ]);
    let mut sheet = Sheet::new(headings);
    let mut last_rung = "";
    let mut notes = Vec::new();
    for cell in &block.cells {
        let new_rung = cell.rung != last_rung;
        last_rung = &cell.rung;
        sheet.row(row(plan, cell, new_rung, own.as_ref(), words));
        notes.extend(note(cell, words));
    }
    let unused: Vec<&str> = plan
        .rungs
        .iter()
        .map(|rung| rung.name.as_str())
        .filter(|name| block.cells.iter().any(|cell| cell.rung == *name) && !uses_rung(plan, name))
        .collect();
    if !unused.is_empty() {
        notes.push(words.fill("plan-rung-unused", &[("rungs", &unused.join(", "))]));
    }
    let notes: String = notes.iter().map(|note| paragraph(note, "  - ", "    ")).collect();
    sheet.lines() + &notes
}

fn row(
    plan: &PlanView,
    cell: &CellView,
    new_rung: bool,
    own: Option<&Format>,
    words: &Words,
) -> Vec<String> {
    let format = &words.format;
    let none = words.text("unit-none");
    let number = |amount: Option<language::Amount>| amount.map_or(none.clone(), |a| a.number);
    let speed = plan.rungs.iter().find(|rung| rung.name == cell.rung).map(|rung| rung.cap_kmh);
    let mut row = if new_rung {
        vec![cell.rung.clone(), number(speed.map(|kmh| cap(format, kmh)))]
    } else {
        vec![String::new(), String::new()]
    };
    row.push(cell.channel.clone());
    if let Some(own) = own {
        row.push(number(cell.set_kpa.map(|kpa| to_set(own, kpa))));
    }
    let governed = cell.min_governed_by.as_ref();
    row.extend([
        number(cell.set_kpa.map(|kpa| to_set(format, kpa))),
        number(cell.pressure_kpa.map(|kpa| lowest(format, kpa))),
        number(cell.min_kpa.map(|kpa| lowest(format, kpa))),
        governed.map_or(none.clone(), |by| words.text(&format!("limit-brief-{by}"))),
        number(cell.max_kpa.map(|kpa| highest(format, kpa))),
        words.text(approval(&cell.approval)),
    ]);
    row
}

fn approval(approval: &str) -> &'static str {
    match approval {
        "maker" => "plan-approval-brief-maker",
        "standard" => "plan-approval-brief-standard",
        "needs approval" => "plan-approval-needed",
        _ => "plan-approval-not-possible",
    }
}

/// What has to be said under the table about a cell.
fn note(cell: &CellView, words: &Words) -> Vec<String> {
    let format = &words.format;
    let mut notes = Vec::new();
    let place = format!("{}, {}", cell.rung, cell.channel);
    if let Some(reason) = &cell.not_possible_because {
        let why = why(reason, &cell.not_possible_with, words);
        notes.push(words.fill("plan-cell-not-possible", &[("cell", &place), ("why", &why)]));
    }
    if let Some(hold) = cell.hold_m {
        let road = stretch(format, hold, language::Round::Down);
        notes.push(words.fill("plan-cell-hold", &[("cell", &place), ("distance", &road)]));
    }
    notes
}

/// Why a cell is not possible, in words; a reason that a formula gave is passed on as it is.
pub fn why(reason: &str, with: &BTreeMap<String, f64>, words: &Words) -> String {
    let format = &words.format;
    let number = |key: &str| with.get(key).copied().unwrap_or(f64::NAN);
    let key = format!("why-{reason}");
    match reason {
        "overloaded" => words.fill(
            &key,
            &[
                ("load", &load(format, number("load_kg"))),
                ("highest", &at_most_load(format, number("highest_kg"))),
                ("cap", &cap(format, number("cap_kmh"))),
            ],
        ),
        "too-fast" => words.fill(
            &key,
            &[
                ("cap", &cap(format, number("cap_kmh"))),
                ("rated", &cap(format, number("rated_kmh"))),
            ],
        ),
        "too-hot" => words.fill(&key, &[("highest", &temperature(format, number("highest_c")))]),
        "duals-touch" => {
            let spacing = quantity::Length::from_mm(number("spacing_mm"));
            let spacing = format.size(spacing, language::Round::Down);
            words.fill(&key, &[("spacing", &spacing)])
        }
        "no-deflection" => words.fill(
            &key,
            &[("share", &percent(format, number("deflection_pct"), language::Round::Down))],
        ),
        "empty-supply" | "empty-rim" | "empty-permit" | "empty-tire" => words.fill(
            &key,
            &[
                ("lowest", &lowest(format, number("lowest_kpa"))),
                ("highest", &highest(format, number("highest_kpa"))),
            ],
        ),
        "not-rated" => words.text(&key),
        reason => reason.to_owned(),
    }
}

fn at_most_load(format: &Format, kg: f64) -> language::Amount {
    format.load(quantity::Mass::from_kg(kg), language::Round::Down)
}

/// The hold limits of the rungs shown that have one.
fn holds(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let format = &words.format;
    let mut text = String::new();
    let shown = |rung: &&RungView| extent == Extent::Whole || uses_rung(plan, &rung.name);
    for rung in plan.rungs.iter().filter(shown) {
        let (Some(minutes), Some(road)) = (rung.hold_limit_min, rung.hold_limit_m) else {
            continue;
        };
        let time = quantity::Time::from_min(minutes);
        let limit = words.fill(
            "plan-hold-limit-both",
            &[
                ("time", &format.minutes(time, language::Round::Down)),
                ("distance", &stretch(format, road, language::Round::Down)),
            ],
        );
        let told = format!("{}, {}: {limit}", words.text("plan-hold-limit"), rung.name);
        text.push_str(&paragraph(&told, "  ", "    "));
    }
    text
}
