//! What decided a pressure, in a line: the limit with its numbers and source, and what was added.

use language::Round;
use quantity::{Mass, Speed};
use view::{CellView, LimitView};

use crate::Words;
use crate::quantities::{added, percent};

/// `+10.0 gauge +15.0 deadband +7.4 warm tire and step`; what warms and what rounds are one item.
pub fn stack(cell: &CellView, words: Words<'_>) -> String {
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
        format!("{sign}{} {what}", added(words.format, *kpa).number)
    });
    told.collect::<Vec<_>>().join(" ")
}

/// The kind of limit with the numbers it rests on, its source and standing.
pub fn because(limit: &LimitView, words: Words<'_>) -> String {
    let format = words.format;
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

/// How well the source of a limit is known.
pub fn standing(limit: &LimitView, words: Words<'_>) -> String {
    words.text(match limit.standing.as_str() {
        "read" => "plan-standing-brief-read",
        "given" => "plan-standing-brief-given",
        "from memory" => "plan-standing-brief-memory",
        _ => "plan-standing-practice",
    })
}
