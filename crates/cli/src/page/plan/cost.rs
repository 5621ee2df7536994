//! Cost and gain by payer, what decides it, and other ways to run.

use language::Round;
use view::{BandView, CostLineView, CostView, PlanView};

use super::head;
use crate::page::sheet::{Sheet, Side};
use crate::page::text::paragraph;
use crate::words::Words;
use report::bands::band;
use report::cells::Extent;

/// Figures told on the short page.
const DECIDING: usize = 3;

/// The cost, where the haul tells money.
pub fn cost(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let Some(first) = plan.cost.first() else { return String::new() };
    let how = words.fill("cost-how", &[("currency", &first.currency)]);
    let parts = [
        head(words, "plan-cost"),
        paragraph(&how, "  ", "  "),
        lines(plan, words),
        format!("\n{}", results(plan, words)),
        deciding(plan, extent, words),
        rivals(plan, words),
    ];
    parts.concat()
}

fn money(of: &BandView, words: &Words) -> String {
    band(of, |value, round| words.format.number(value, 0, round))
}

fn line(of: &CostLineView, words: &Words) -> String {
    match (&of.per_year, &of.not_assessed) {
        (Some(per_year), _) => money(per_year, words),
        (None, Some(lack)) if lack.why == "give" => words.text("cost-not-told"),
        _ => words.text("effects-unknown"),
    }
}

fn lines(plan: &PlanView, words: &Words) -> String {
    let mut sheet = Sheet::new(vec![
        (words.text("cost-payer"), Side::Left),
        (words.text("cost-item"), Side::Left),
        (words.text("cost-per-year"), Side::Right),
    ]);
    for payer in plan.cost.iter().filter(|payer| payer.payer != "all") {
        for (index, of) in payer.lines.iter().enumerate() {
            let name = words.text(&format!("cost-payer-{}", payer.payer));
            let item = words.text(&format!("cost-item-{}", of.item));
            let name = if index == 0 { name } else { String::new() };
            sheet.row(vec![name, item, line(of, words)]);
        }
    }
    sheet.lines()
}

fn results(plan: &PlanView, words: &Words) -> String {
    let mut sheet = Sheet::new(vec![
        (words.text("cost-payer"), Side::Left),
        (words.text("cost-net"), Side::Right),
        (words.text("cost-present-value"), Side::Right),
        (words.text("cost-payback"), Side::Right),
        (words.text("cost-break-even"), Side::Right),
    ]);
    for payer in &plan.cost {
        // Of somebody of whom nothing is told, a sum of nothing is no zero.
        let untold =
            !payer.lines.is_empty() && payer.lines.iter().all(|line| line.per_year.is_none());
        let sum = |of| if untold { words.text("cost-not-told") } else { money(of, words) };
        sheet.row(vec![
            words.text(&format!("cost-payer-{}", payer.payer)),
            sum(&payer.net_after_capital),
            sum(&payer.present_value),
            payback(payer, words),
            payer.break_even_lost_min.map_or_else(
                || words.text("unit-none"),
                |min| words.format.number(min, 1, Round::Down),
            ),
        ]);
    }
    let left_out: Vec<&str> = plan
        .cost
        .iter()
        .filter(|payer| payer.payer == "all")
        .flat_map(|payer| payer.left_out.iter().map(String::as_str))
        .collect();
    let mut text = sheet.lines();
    if !left_out.is_empty() {
        let items: Vec<String> =
            left_out.iter().map(|item| words.text(&format!("cost-item-{item}"))).collect();
        let line = words.fill("cost-left-out", &[("items", &items.join(", "))]);
        text.push_str(&paragraph(&line, "  ", "  "));
    }
    text
}

fn payback(payer: &CostView, words: &Words) -> String {
    match payer.payback_years {
        Some(years) => {
            let years = words.format.number(years, 1, Round::Up);
            words.fill("cost-years", &[("years", &years)])
        }
        None if payer.lines.iter().any(|line| line.item == "system") || payer.payer == "all" => {
            words.text("cost-never")
        }
        None => words.text("unit-none"),
    }
}

fn deciding(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let count = if extent == Extent::Whole { plan.cost_decided_by.len() } else { DECIDING };
    if plan.cost_decided_by.is_empty() {
        return String::new();
    }
    let mut text = paragraph(&words.text("cost-decided-by"), "  ", "  ");
    let number = |value: f64| words.format.number(value, 0, Round::Nearest);
    for figure in plan.cost_decided_by.iter().take(count) {
        let ends = if figure.own_band { "cost-ends-own" } else { "cost-ends-fifth" };
        let line = words.fill(
            "cost-decides",
            &[
                ("figure", &words.text(&format!("cost-figure-{}", figure.figure))),
                ("low", &number(figure.present_value_at_low)),
                ("high", &number(figure.present_value_at_high)),
                ("ends", &words.text(ends)),
            ],
        );
        text.push_str(&paragraph(&line, "    - ", "      "));
    }
    text
}

fn rivals(plan: &PlanView, words: &Words) -> String {
    if plan.cost_rivals.is_empty() {
        return String::new();
    }
    let mut sheet = Sheet::new(vec![
        (words.text("effects-way"), Side::Left),
        (words.text("cost-payer"), Side::Left),
        (words.text("cost-item"), Side::Left),
        (words.text("cost-per-year"), Side::Right),
    ]);
    for rival in &plan.cost_rivals {
        for (index, of) in rival.lines.iter().enumerate() {
            let way = words.text(&format!("effects-way-{}", rival.way));
            sheet.row(vec![
                if index == 0 { way } else { String::new() },
                words.text(&format!("cost-payer-{}", of.payer)),
                words.text(&format!("cost-item-{}", of.line.item)),
                line(&of.line, words),
            ]);
        }
    }
    format!("\n{}{}", paragraph(&words.text("cost-rivals"), "  ", "  "), sheet.lines())
}
