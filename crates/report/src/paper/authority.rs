//! The report to a road authority: roads, weights, windows, speeds, what is kept as evidence.

use language::{Amount, Format, Kind as Unit, Round};
use quantity::Mass;
use view::{LegView, PermitView, PlanView};

use super::Material;
use super::plan_report::{of_limits, window_tables};
use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Document, Look, Table};
use crate::quantities::{added, cap, chainage, highest, load, lowest, time_left};

/// What the fleet keeps, so that it can be shown afterwards.
const EVIDENCE: [&str; 6] = ["pressure", "speed", "place", "commands", "faults", "plan"];

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let plan = material.plan;
    let blocks = &mut document.blocks;
    blocks.push(Block::paragraph(words.text("authority-what")));
    blocks.push(Block::section(words.text("authority-roads")));
    blocks.push(Block::Table(roads(material, words)));
    blocks.push(Block::section(words.text("authority-permits")));
    blocks.extend(permits(&material.route.legs, words));
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
    document.sources = of_limits(plan, words);
}

fn roads(material: &Material<'_>, words: Words<'_>) -> Table {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::words(words.text("authority-leg"), 4),
        Column::figures(words.with_unit("authority-from", Unit::Distance)),
        Column::figures(words.with_unit("authority-to", Unit::Distance)),
        Column::words(words.text("authority-surface"), 2),
        Column::words(words.text("authority-whose"), 3),
        Column::figures(words.with_unit("authority-limit", Unit::Speed)),
    ]);
    for leg in &material.route.legs {
        let surface = words.text(&format!("chart-surface-{}", leg.surface.replace(' ', "-")));
        table.row(vec![
            Cell::text(leg.name.clone()),
            Cell::bare(&chainage(format, leg.from_km, Round::Nearest)),
            Cell::bare(&chainage(format, leg.to_km, Round::Nearest)),
            Cell::text(surface),
            Cell::text(whose(leg, words)),
            Cell::bare(&cap(format, leg.speed_limit_kmh)),
        ]);
    }
    table
}

/// Whose road it is; unknown where an older document does not say.
fn whose(leg: &LegView, words: Words<'_>) -> String {
    words.text(match leg.jurisdiction.as_str() {
        "private" => "authority-private",
        "us-public" => "authority-us-public",
        "public" => "authority-public",
        _ => "unit-unknown",
    })
}

/// Terms of the permits, stretch by stretch; what the permit leaves open stays a dash.
fn permits(legs: &[LegView], words: Words<'_>) -> Vec<Block> {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::words(words.text("authority-leg"), 4),
        Column::words(words.text("authority-permit"), 5),
        Column::words(words.with_unit("authority-pressures", Unit::Pressure), 4),
        Column::words(words.with_unit("authority-tolerance", Unit::Pressure), 2),
        Column::words(words.with_unit("authority-permit-speed", Unit::Speed), 2),
        Column::words(words.with_unit("authority-mass", Unit::Load), 3),
        Column::words(words.text("authority-interval"), 2),
    ]);
    table.look = Look::Small;
    let none = || Cell::text(words.text("unit-none"));
    for leg in legs {
        let Some(permit) = &leg.permit else { continue };
        let [from, to] = [leg.from_km, leg.to_km].map(|km| chainage(format, km, Round::Nearest));
        table.row(vec![
            Cell::text(format!("{}\n{}–{to}", leg.name, from.number)),
            Cell::text(standing(permit, words)),
            Cell::text(pressures(permit, words)),
            permit.tolerance_kpa.map_or_else(none, |kpa| Cell::bare(&added(format, kpa))),
            permit.speed_kmh.map_or_else(none, |kmh| Cell::bare(&cap(format, kmh))),
            permit.gross_mass_kg.map_or_else(none, |kg| Cell::bare(&mass_limit(format, kg))),
            permit.evidence_interval_s.map_or_else(none, |s| Cell::amount(&time_left(format, s))),
        ]);
    }
    if table.rows.is_empty() {
        return vec![Block::paragraph(words.text("authority-no-permit"))];
    }
    let uncovered: Vec<&str> = legs
        .iter()
        .filter(|leg| leg.permit.is_none() && leg.jurisdiction != "private")
        .map(|leg| leg.name.as_str())
        .collect();
    let mut blocks = vec![Block::Table(table)];
    if !uncovered.is_empty() {
        let legs = uncovered.join(", ");
        blocks.push(Block::strong(words.fill("authority-uncovered", &[("legs", &legs)])));
    }
    blocks
}

/// Number, authority, last day, and loudly where it does not count.
fn standing(permit: &PermitView, words: Words<'_>) -> String {
    let mut told = vec![permit.number.clone(), permit.authority.clone()];
    told.extend(permit.expires.as_ref().map(|day| words.fill("authority-until", &[("day", day)])));
    if !permit.in_force {
        told.push(words.text("authority-not-in-force"));
    }
    told.retain(|line| !line.is_empty());
    told.join("\n")
}

fn pressures(permit: &PermitView, words: Words<'_>) -> String {
    let format = words.format;
    let low = permit.minimum_kpa.map(|kpa| lowest(format, kpa).number);
    let high = permit.maximum_kpa.map(|kpa| highest(format, kpa).number);
    let range = match (low, high) {
        (Some(low), Some(high)) => format!("{low}–{high}"),
        (Some(low), None) => words.fill("unit-at-least", &[("value", &low)]),
        (None, Some(high)) => words.fill("unit-at-most", &[("value", &high)]),
        (None, None) => return words.text("unit-none"),
    };
    let how = words.text(if permit.cold { "authority-cold" } else { "authority-as-read" });
    format!("{range}, {how}")
}

/// A highest mass: never shown above.
fn mass_limit(format: &Format, kg: f64) -> Amount {
    format.load(Mass::from_kg(kg), Round::Down)
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
