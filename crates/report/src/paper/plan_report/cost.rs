//! What the plan costs and earns, by payer, what decides that, and other ways to run.

use language::Round;
use view::{BandView, CostLineView, CostView, PlanView};

use crate::Words;
use crate::bands::band;
use crate::document::{Block, Cell, Column, Look, Row, Table};

pub(super) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    let Some(first) = plan.cost.first() else {
        return vec![Block::paragraph(words.text("planreport-cost-none"))];
    };
    let how = words.fill("cost-how", &[("currency", &first.currency)]);
    let mut blocks = vec![
        Block::paragraph(how),
        Block::Table(results(plan, words)),
        Block::Table(lines(plan, words)),
    ];
    let mut left_out: Vec<String> = Vec::new();
    for payer in plan.cost.iter().filter(|payer| payer.payer == "all") {
        left_out.extend(payer.left_out.iter().map(|item| words.text(&format!("cost-item-{item}"))));
    }
    if !left_out.is_empty() {
        blocks.push(Block::strong(words.fill("cost-left-out", &[("items", &left_out.join(", "))])));
    }
    if !plan.cost_decided_by.is_empty() {
        blocks.push(Block::paragraph(words.text("cost-decided-by")));
        blocks.push(Block::Points { lines: deciding(plan, words) });
    }
    if !plan.cost_rivals.is_empty() {
        blocks.push(Block::paragraph(words.text("cost-rivals")));
        blocks.push(Block::Table(rivals(plan, words)));
    }
    blocks
}

fn money(of: &BandView, words: Words<'_>) -> String {
    band(of, |value, round| words.format.number(value, 0, round))
}

fn line(of: &CostLineView, words: Words<'_>) -> String {
    match (&of.per_year, &of.not_assessed) {
        (Some(per_year), _) => money(per_year, words),
        (None, Some(lack)) if lack.why == "give" => words.text("cost-not-told"),
        _ => words.text("effects-unknown"),
    }
}

fn payer(name: &str, words: Words<'_>) -> String {
    words.text(&format!("cost-payer-{name}"))
}

fn results(plan: &PlanView, words: Words<'_>) -> Table {
    let head = |key: &str| words.text(key).replace('\n', " ");
    let mut table = Table::new(vec![
        Column::words(head("cost-payer"), 3),
        Column::figures(head("cost-net")),
        Column::figures(head("cost-present-value")),
        Column::figures(head("cost-payback")),
        Column::figures(head("cost-break-even")),
    ]);
    table.look = Look::Small;
    for of in &plan.cost {
        // Of somebody of whom nothing is told, a sum of nothing is no zero.
        let untold = !of.lines.is_empty() && of.lines.iter().all(|line| line.per_year.is_none());
        let sum = |band| if untold { words.text("cost-not-told") } else { money(band, words) };
        let break_even = of.break_even_lost_min.map_or_else(
            || words.text("unit-none"),
            |min| words.format.number(min, 1, Round::Down),
        );
        let cells = [
            payer(&of.payer, words),
            sum(&of.net_after_capital),
            sum(&of.present_value),
            payback(of, words),
            break_even,
        ];
        table.rows.push(Row { cells: cells.map(Cell::text).to_vec(), strong: of.payer == "all" });
    }
    table
}

fn payback(of: &CostView, words: Words<'_>) -> String {
    match of.payback_years {
        Some(years) => {
            words.fill("cost-years", &[("years", &words.format.number(years, 1, Round::Up))])
        }
        None if of.lines.iter().any(|line| line.item == "system") || of.payer == "all" => {
            words.text("cost-never")
        }
        None => words.text("unit-none"),
    }
}

fn lines(plan: &PlanView, words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::words(words.text("cost-payer"), 3),
        Column::words(words.text("cost-item"), 5),
        Column::figures(words.text("cost-per-year")),
    ]);
    table.look = Look::Small;
    for of in plan.cost.iter().filter(|of| of.payer != "all") {
        for (index, one) in of.lines.iter().enumerate() {
            let name = if index == 0 { payer(&of.payer, words) } else { String::new() };
            let item = words.text(&format!("cost-item-{}", one.item));
            table.row([name, item, line(one, words)].map(Cell::text).to_vec());
        }
    }
    table
}

/// Every figure, the one that moves the present value most first.
fn deciding(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let number = |value: f64| words.format.number(value, 0, Round::Nearest);
    let told = plan.cost_decided_by.iter().map(|one| {
        let ends = if one.own_band { "cost-ends-own" } else { "cost-ends-fifth" };
        words.fill(
            "cost-decides",
            &[
                ("figure", &words.text(&format!("cost-figure-{}", one.figure))),
                ("low", &number(one.present_value_at_low)),
                ("high", &number(one.present_value_at_high)),
                ("ends", &words.text(ends)),
            ],
        )
    });
    told.collect()
}

fn rivals(plan: &PlanView, words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::words(words.text("effects-way"), 4),
        Column::words(words.text("cost-payer"), 3),
        Column::words(words.text("cost-item"), 5),
        Column::figures(words.text("cost-per-year")),
    ]);
    table.look = Look::Small;
    for rival in &plan.cost_rivals {
        for (index, of) in rival.lines.iter().enumerate() {
            let way = words.text(&format!("effects-way-{}", rival.way));
            let cells = [
                if index == 0 { way } else { String::new() },
                payer(&of.payer, words),
                words.text(&format!("cost-item-{}", of.line.item)),
                line(&of.line, words),
            ];
            table.row(cells.map(Cell::text).to_vec());
        }
    }
    table
}
