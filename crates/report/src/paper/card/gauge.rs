//! What the gauge allows: for each speed the least every gauge must show, by channel and load.

use language::{Kind, Round};
use quantity::GaugePressure;
use view::{NowRowView, NowTableDocument};

use crate::Words;
use crate::document::{Block, Cell, Column, Group, Look, Row, Sheet, Table};
use crate::paper::Material;
use crate::paper::driver::{load_states, rungs};
use crate::quantities::cap;

/// Speeds nearer than this are one: rounding of a conversion, not another speed.
const SAME_KMH: f64 = 1e-6;

const fn columns_across(sheet: Sheet) -> usize {
    if sheet.is_card() { 8 } else { 14 }
}

pub(super) fn blocks(material: &Material<'_>, sheet: Sheet, words: Words<'_>) -> Vec<Block> {
    let gauge = &driven(material);
    let mut blocks = vec![
        Block::section(words.text("card-gauge")),
        Block::paragraph(words.text("card-gauge-how")),
    ];
    let channels = channels(gauge);
    let speeds = speeds(gauge);
    if speeds.is_empty() {
        blocks.push(Block::strong(words.text("card-gauge-none")));
        return blocks;
    }
    let states = gauge.load_states.len().max(1);
    for channels in channels.chunks((columns_across(sheet) / states).max(1)) {
        blocks.push(Block::Table(table(gauge, channels, &speeds, words)));
    }
    blocks
}

/// The table for the load states that the haul drives, and no faster than its fastest rung.
fn driven(material: &Material<'_>) -> NowTableDocument {
    let (plan, gauge) = (material.plan, material.gauge);
    let fastest = rungs(plan).first().map_or(0.0, |rung| rung.cap_kmh);
    let kept: Vec<usize> = load_states(plan)
        .into_iter()
        .filter_map(|name| gauge.load_states.iter().position(|state| state == name))
        .collect();
    let row = |row: &NowRowView| NowRowView {
        highest_speed_kmh: kept
            .iter()
            .map(|&state| speed(row, state).map(|kmh| kmh.min(fastest)))
            .collect(),
        ..row.clone()
    };
    NowTableDocument {
        load_states: kept.iter().map(|&state| gauge.load_states[state].clone()).collect(),
        rows: gauge.rows.iter().map(row).collect(),
        ..gauge.clone()
    }
}

fn channels(gauge: &NowTableDocument) -> Vec<&str> {
    let mut found: Vec<&str> = Vec::new();
    for row in &gauge.rows {
        if !found.contains(&row.channel.as_str()) {
            found.push(&row.channel);
        }
    }
    found
}

/// Every speed the table allows, the highest first.
fn speeds(gauge: &NowTableDocument) -> Vec<f64> {
    let mut speeds: Vec<f64> =
        gauge.rows.iter().flat_map(|row| &row.highest_speed_kmh).copied().flatten().collect();
    speeds.sort_by(|a, b| b.total_cmp(a));
    speeds.dedup_by(|a, b| (*a - *b).abs() < SAME_KMH);
    speeds
}

fn table(gauge: &NowTableDocument, channels: &[&str], speeds: &[f64], words: Words<'_>) -> Table {
    let format = words.format;
    let states = &gauge.load_states;
    let speed = words.fill("card-drive-up-to", &[("unit", &format.unit(Kind::Speed))]);
    let mut columns = vec![Column::centered(speed, 2)];
    for _ in channels {
        columns.extend(states.iter().map(|state| Column::centered(state.clone(), 2)));
    }
    let mut table = Table::new(columns);
    table.look = Look::Big;
    let unit = format.unit(Kind::Pressure);
    table.groups.push(Group { head: String::new(), span: 1 });
    let group = |channel: &&str| Group { head: format!("{channel}, {unit}"), span: states.len() };
    table.groups.extend(channels.iter().map(group));
    let mut hardest = vec![Cell::text(words.text("card-not-above"))];
    let each = || channels.iter().flat_map(|channel| (0..states.len()).map(move |s| (*channel, s)));
    hardest.extend(each().map(|(channel, state)| {
        // Without a limit in the table there is nothing to say; a dash would forbid driving.
        highest(&rows(gauge, channel), state)
            .map_or_else(Cell::default, |kpa| reading(Some(kpa), Round::Down, words))
    }));
    table.rows.push(Row { cells: hardest, strong: false });
    for kmh in speeds {
        let mut cells = vec![Cell::bare(&cap(format, *kmh))];
        cells.extend(each().map(|(channel, state)| {
            let rows = rows(gauge, channel);
            reading(least(&rows, state, *kmh), Round::Up, words)
        }));
        table.rows.push(Row { cells, strong: true });
    }
    table
}

fn rows<'a>(gauge: &'a NowTableDocument, channel: &str) -> Vec<&'a NowRowView> {
    gauge.rows.iter().filter(|row| row.channel == channel).collect()
}

fn speed(row: &NowRowView, state: usize) -> Option<f64> {
    row.highest_speed_kmh.get(state).copied().flatten()
}

/// The least reading from which on this speed is allowed, up to the highest reading that is.
fn least(rows: &[&NowRowView], state: usize, kmh: f64) -> Option<f64> {
    let last = rows.iter().rposition(|row| speed(row, state).is_some())?;
    let too_slow =
        |row: &&&NowRowView| speed(row, state).is_none_or(|allowed| allowed < kmh - SAME_KMH);
    let slow = rows[..=last].iter().rposition(|row| too_slow(&row));
    rows[..=last].get(slow.map_or(0, |row| row + 1)).map(|row| row.reading_kpa)
}

/// The highest reading that is still allowed; a table that ends allowed has none to tell.
fn highest(rows: &[&NowRowView], state: usize) -> Option<f64> {
    let last = rows.iter().rposition(|row| speed(row, state).is_some())?;
    (last + 1 < rows.len()).then(|| rows[last].reading_kpa)
}

/// A gauge reading; the table was made in steps of the reader's unit.
fn reading(kpa: Option<f64>, round: Round, words: Words<'_>) -> Cell {
    match kpa {
        Some(kpa) => Cell::bare(&words.format.pressure(GaugePressure::from_kpa(kpa), round)),
        None => Cell::text(words.text("unit-none")),
    }
}
