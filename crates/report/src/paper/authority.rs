//! The report to a road authority: roads, weights, windows, speeds, what is kept as evidence.

use language::{Kind as Unit, Round};
use view::PlanView;

use super::plan_report::{sources, window_tables};
use super::{Kind, Material, PaperError, stamp};
use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Document, Sheet, Table};
use crate::quantities::{cap, chainage, load};

/// What the fleet keeps, so that it can be shown afterwards.
const EVIDENCE: [&str; 6] = ["pressure", "speed", "place", "commands", "faults", "plan"];

pub(super) fn document(
    material: &Material<'_>,
    sheet: Sheet,
    words: Words<'_>,
) -> Result<Document, PaperError> {
    let plan = material.plan;
    if plan.ladder.is_empty() {
        return Err(PaperError::NoLadder {
            haul: plan.haul.clone(),
            kind: Kind::AuthorityReport.name(),
        });
    }
    let mut document = stamp::begin(Kind::AuthorityReport, material, sheet, words);
    let blocks = &mut document.blocks;
    blocks.push(Block::paragraph(words.text("authority-what")));
    blocks.push(Block::section(words.text("authority-roads")));
    blocks.push(Block::Table(roads(material, words)));
    blocks.push(Block::section(words.text("authority-weights")));
    blocks.push(Block::Table(weights(plan, material, words)));
    blocks.push(Block::section(words.text("authority-windows")));
    blocks.push(Block::paragraph(words.text("plan-ladder-how")));
    blocks.extend(window_tables(plan, words));
    blocks.push(Block::section(words.text("authority-evidence")));
    blocks.push(Block::paragraph(words.text("authority-evidence-how")));
    let kept = EVIDENCE.map(|what| words.text(&format!("authority-keep-{what}")));
    blocks.push(Block::Points { lines: kept.to_vec() });
    blocks.push(Block::section(words.text("authority-exceptions")));
    blocks.push(Block::Caution(Caution {
        title: String::new(),
        lines: crate::cautions::told(plan, words),
        grave: false,
    }));
    blocks.push(Block::blanks([
        (words.text("authority-signed"), ""),
        (words.text("authority-date"), ""),
    ]));
    document.sources = sources(plan, words);
    Ok(document)
}

fn roads(material: &Material<'_>, words: Words<'_>) -> Table {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::words(words.text("authority-leg"), 4),
        Column::figures(words.with_unit("authority-from", Unit::Distance)),
        Column::figures(words.with_unit("authority-to", Unit::Distance)),
        Column::words(words.text("authority-surface"), 2),
        Column::figures(words.with_unit("authority-limit", Unit::Speed)),
    ]);
    for leg in &material.route.legs {
        let surface = words.text(&format!("chart-surface-{}", leg.surface.replace(' ', "-")));
        table.row(vec![
            Cell::text(leg.name.clone()),
            Cell::bare(&chainage(format, leg.from_km, Round::Nearest)),
            Cell::bare(&chainage(format, leg.to_km, Round::Nearest)),
            Cell::text(surface),
            Cell::bare(&cap(format, leg.speed_limit_kmh)),
        ]);
    }
    table
}

fn weights(plan: &PlanView, material: &Material<'_>, words: Words<'_>) -> Table {
    // Loads stand in the order of the survey's load states, which the gauge table repeats.
    let states = &material.gauge.load_states;
    let mut columns = vec![
        Column::words(words.text("plan-axle-group"), 3),
        Column::words(words.text("plan-tire"), 3),
        Column::words(words.text("plan-tires"), 2),
    ];
    let unit = words.format.unit(Unit::Load);
    columns.extend(states.iter().map(|state| Column::figures(format!("{state}, {unit}"))));
    let mut table = Table::new(columns);
    for group in &plan.axle_groups {
        let fitment = words.text(if group.fitment == "dual" { "plan-dual" } else { "plan-single" });
        let mut cells = vec![
            Cell::text(group.name.clone()),
            Cell::text(group.tire.clone()),
            Cell::text(format!("{} {fitment}", group.tires)),
        ];
        for index in 0..states.len() {
            let kg = group.loads_kg.get(index);
            cells.push(kg.map_or_else(
                || Cell::text(words.text("unit-unknown")),
                |kg| Cell::bare(&load(words.format, *kg)),
            ));
        }
        table.row(cells);
    }
    table
}
