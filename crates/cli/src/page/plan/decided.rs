//! What decided each number: the limit that governs, the next closest, the stack, the highest.

use language::{Amount, Round};
use quantity::{Length, Mass, Speed};
use view::{CellView, LimitView, PlanView};

use super::{head, ladder};
use crate::page::quantities::{added, highest, lowest, percent, temperature, to_set};
use crate::page::text::{line, paragraph};
use crate::terminal::HEADING;
use crate::words::Words;
use report::cells::{Extent, blocks, explained_before};

/// The explanation of every cell that differs from one already explained.
pub fn decided(plan: &PlanView, words: &Words) -> String {
    if plan.ladder.is_empty() {
        return String::new();
    }
    let blocks = blocks(plan, Extent::Whole);
    let mut text = head(words, "plan-what-decided");
    for (index, block) in blocks.iter().enumerate() {
        let name = ladder::name(plan, block);
        for cell in &block.cells {
            let again = explained_before(block, cell, &blocks[..index]);
            if cell.min_limit.is_some() && !again {
                text.push_str(&explained(plan, &name, cell, words));
            }
        }
    }
    text
}

fn explained(plan: &PlanView, state: &str, cell: &CellView, words: &Words) -> String {
    let format = &words.format;
    let title = format!("{state}, {}, {}", cell.rung, cell.channel);
    let mut text = line(HEADING, "  ", &title);
    let mut tell = |key: &str, pressure: Option<Amount>, what: &str| {
        let label = words.text(key);
        let pressure = pressure.map(|amount| format!("{amount}, ")).unwrap_or_default();
        text.push_str(&paragraph(&format!("{label}: {pressure}{what}"), "    ", "      "));
    };
    if let Some(limit) = &cell.min_limit {
        tell("plan-lowest", Some(lowest(format, limit.pressure_kpa)), &because(plan, limit, words));
    }
    if let Some(limit) = &cell.min_runner_up {
        tell(
            "plan-next-closest",
            Some(lowest(format, limit.pressure_kpa)),
            &because(plan, limit, words),
        );
    }
    if let (Some(kpa), Some(by), Some(source)) =
        (cell.max_kpa, &cell.max_governed_by, &cell.max_source)
    {
        let mut what =
            format!("{} [{}]", words.text(&format!("limit-{by}")), one_style(source, words));
        if let Some(advice) = cell.ground_advice_kpa {
            let advice = words.fill("plan-ground", &[("advice", &highest(format, advice))]);
            what.push_str("; ");
            what.push_str(&advice);
        }
        tell("plan-highest", Some(highest(format, kpa)), &what);
    }
    if let (Some(set), false) = (cell.set_kpa, cell.stack.is_empty()) {
        let items: Vec<String> = cell
            .stack
            .iter()
            .map(|item| {
                let amount = added(format, item.pressure_kpa);
                format!("{amount} {}", words.text(&format!("plan-stack-{}", item.added_for)))
            })
            .collect();
        let what = words.fill(
            "plan-stack-sums-to",
            &[
                ("items", &items.join(", ")),
                ("set", &to_set(format, set)),
                ("warmest", &temperature(format, cell.warmest_tire_c)),
            ],
        );
        let share = cell.deflection_pct.map(|share| {
            let share = percent(format, share, Round::Up);
            format!("; {}", words.fill("plan-deflection-then", &[("percent", &share)]))
        });
        tell("plan-stack", None, &(what + &share.unwrap_or_default()));
    }
    text
}

/// A source as the page writes it: key, place, and its standing in the reader's words.
fn one_style(source: &str, words: &Words) -> String {
    match source.strip_suffix(')').and_then(|source| source.rsplit_once(" (")) {
        Some((source, standing)) => format!("{source}: {}", standing_words(standing, words)),
        None => source.to_owned(),
    }
}

/// What a limit rests on: kind, group, load and allowance, source and standing.
fn because(plan: &PlanView, limit: &LimitView, words: &Words) -> String {
    let format = &words.format;
    let mut parts = vec![words.text(&format!("limit-{}", limit.governed_by))];
    parts.push(limit.axle_group.clone());
    let own = plan.axle_groups.iter().find(|group| group.name == limit.axle_group);
    if own.is_some_and(|group| group.tire != limit.tire) {
        parts.push(words.fill("plan-other-tire", &[("tire", &limit.tire)]));
    }
    if let Some(kg) = limit.load_kg {
        let load = format.load(Mass::from_kg(kg), Round::Up);
        parts.push(words.fill("plan-worst-tire", &[("load", &load)]));
    }
    if let Some(kmh) = limit.speed_kmh {
        let speed = format.speed(Speed::from_kmh(kmh), Round::Down);
        parts.push(words.fill("plan-covers", &[("speed", &speed)]));
    }
    if let Some(pct) = limit.load_allowance_pct.filter(|pct| *pct != 0.0) {
        let share = format.percent(pct / 100.0, 0, Round::Nearest);
        parts.push(words.fill("plan-load-allowance", &[("share", &share)]));
    }
    if let Some(kpa) = limit.pressure_addition_kpa.filter(|kpa| *kpa != 0.0) {
        parts.push(words.fill("plan-pressure-added", &[("pressure", &added(format, kpa))]));
    }
    if let Some(pct) = limit.deflection_pct {
        parts.push(
            words.fill("plan-deflection-at-most", &[("share", &percent(format, pct, Round::Down))]),
        );
    }
    if let Some(kpa) = limit.reading_kpa {
        parts.push(words.fill("plan-from-reading", &[("pressure", &lowest(format, kpa))]));
    }
    if let Some(c) = limit.temperature_c {
        parts.push(words.fill("plan-at-temperature", &[("temperature", &temperature(format, c))]));
    }
    if let Some(mm) = limit.gap_mm {
        let gap = format.size(Length::from_mm(mm), Round::Up);
        parts.push(words.fill("plan-least-gap", &[("gap", &gap)]));
    }
    format!("{} [{}]", parts.join(", "), cited(limit, words))
}

/// Key, place and standing of a limit's source.
fn cited(limit: &LimitView, words: &Words) -> String {
    let place =
        if limit.locator.is_empty() { String::new() } else { format!(", {}", limit.locator) };
    format!("{}{place}: {}", limit.source, standing(limit, words))
}

/// How the number stands to its source.
pub(super) fn standing(limit: &LimitView, words: &Words) -> String {
    standing_words(&limit.standing, words)
}

fn standing_words(standing: &str, words: &Words) -> String {
    words.text(match standing {
        "read" => "plan-standing-brief-read",
        "given" => "plan-standing-brief-given",
        "from memory" => "plan-standing-brief-memory",
        _ => "plan-standing-practice",
    })
}
