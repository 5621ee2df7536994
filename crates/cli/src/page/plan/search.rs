//! Why this ladder: what a cycle on it costs, term by term, and what other ladders would.

use language::Round;
use view::{LadderSearchView, PlanView};

use super::head;
use crate::page::quantities::{cap, time};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::paragraph;
use crate::words::Words;

/// The section, where the ladder was searched for.
pub fn search(plan: &PlanView, words: &Words) -> String {
    let Some(found) = &plan.ladder_search else { return String::new() };
    let mut text = head(words, "plan-search");
    text.push_str(&paragraph(&asked(found, words), "  ", "  "));
    text.push_str(&table(found, words));
    for told in [others(found, words), exact(found, words)] {
        text.push_str(&paragraph(&told, "  ", "  "));
    }
    text
}

/// What was asked for, and out of what it was chosen.
fn asked(found: &LadderSearchView, words: &Words) -> String {
    let format = &words.format;
    let kmh = |kmh: f64| cap(format, kmh).to_string();
    let ends = found.caps_tried_kmh.first().zip(found.caps_tried_kmh.last());
    let (lowest, highest) = ends.map_or_else(Default::default, |(a, b)| (kmh(*a), kmh(*b)));
    let required: Vec<String> = found.caps_required_kmh.iter().map(|cap| kmh(*cap)).collect();
    let mut told = words.fill(
        "plan-search-asked",
        &[
            ("asked", &found.rungs_asked),
            ("found", &found.rungs_found),
            ("caps", &found.caps_tried_kmh.len()),
            ("lowest", &lowest),
            ("highest", &highest),
        ],
    );
    if !required.is_empty() {
        told.push(' ');
        told.push_str(&words.fill("plan-search-required", &[("caps", &required.join(", "))]));
    }
    told
}

fn table(found: &LadderSearchView, words: &Words) -> String {
    let format = &words.format;
    let (terms, prices, costs) = (found.terms, found.prices, found.term_costs);
    let plain = |value: f64| format.number(value, 0, Round::Nearest);
    let rows = [
        ("time", time(format, terms.time_s).to_string(), prices.truck_hour, costs.time),
        ("hard-road", plain(terms.hard_kpa_km), prices.hard_kpa_km, costs.hard_road),
        ("changes", plain(terms.changes), prices.change, costs.changes),
        (
            "compressor",
            time(format, terms.compressor_s).to_string(),
            prices.compressor_hour,
            costs.compressor,
        ),
    ];
    let mut sheet = Sheet::new(vec![
        (words.text("plan-search-term"), Side::Left),
        (words.text("plan-search-amount"), Side::Right),
        (words.text("plan-search-price"), Side::Right),
        (format!("{}\n{}", words.text("plan-cost"), found.currency), Side::Right),
    ]);
    for (term, amount, price, cost) in rows {
        let price = words
            .fill(&format!("plan-search-price-{term}"), &[("price", &as_written(price, words))]);
        let name = words.text(&format!("plan-search-{term}"));
        sheet.row(vec![name, amount, price, money(cost, words)]);
    }
    let whole = words.text("plan-search-in-all");
    sheet.row(vec![whole, String::new(), String::new(), money(found.cost, words)]);
    sheet.lines()
}

/// One rung fewer, and one more.
fn others(found: &LadderSearchView, words: &Words) -> String {
    let told = |key: &str, cost: Option<f64>| {
        let Some(cost) = cost else { return words.text(&format!("plan-search-no-{key}")) };
        let difference = money((cost - found.cost).abs(), words);
        let which = match cost - found.cost {
            none if none.abs() < 0.005 => "same",
            more if more > 0.0 => "more",
            _ => "less",
        };
        words.fill(
            &format!("plan-search-{key}-{which}"),
            &[("currency", &found.currency), ("difference", &difference)],
        )
    };
    format!("{} {}", told("fewer", found.one_fewer_cost), told("more", found.one_more_cost))
}

fn exact(found: &LadderSearchView, words: &Words) -> String {
    let rounds = words.count("plan-search-rounds", found.rounds);
    let gap = if found.gap > 0.0 {
        words.fill(
            "plan-search-gap",
            &[("gap", &money(found.gap, words)), ("currency", &found.currency)],
        )
    } else {
        words.text("plan-search-exact")
    };
    format!("{gap} {rounds}")
}

fn money(amount: f64, words: &Words) -> String {
    words.format.number(amount, 2, Round::Nearest)
}

/// A price with no more decimals than it needs, four at most.
fn as_written(price: f64, words: &Words) -> String {
    let decimals = (0..4).find(|&decimals| {
        let scaled = price * 10f64.powi(i32::from(decimals));
        (scaled - scaled.round()).abs() < 1e-9
    });
    words.format.number(price, decimals.unwrap_or(4), Round::Nearest)
}
