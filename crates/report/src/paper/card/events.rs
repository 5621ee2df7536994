//! What to do on each event, and the cautions of a driver.

use view::PlanView;

use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Look, Table};

/// Events with the texts that say what to do.
const EVENTS: [(&str, &[&str]); 7] = [
    ("brake-air", &["card-do-brake-air"]),
    ("not-rising", &["card-do-not-rising"]),
    ("late", &["card-do-late"]),
    ("too-fast", &["card-do-too-fast"]),
    ("display", &["card-do-display"]),
    ("stuck", &["card-do-stuck"]),
    ("shift-end", &["plan-shift-end"]),
];

/// After a fast loss, in this order.
const LOSS: [&str; 7] = ["stop-filling", "slow", "stop", "look", "stay-away", "isolate", "trained"];

const CAUTIONS: [&str; 11] = [
    "speed",
    "lower-cap-first",
    "wait-complete",
    "brakes-first",
    "side-slope",
    "tipping",
    "ice",
    "maker-approves",
    "law-decides",
    "trained-people",
    "rollover",
];

pub(in crate::paper) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    let mut table = Table::new(vec![
        Column::words(words.text("card-event"), 3),
        Column::words(words.text("card-do"), 9),
    ]);
    table.look = Look::Small;
    for (event, texts) in EVENTS {
        let told: Vec<String> = texts.iter().map(|key| words.text(key)).collect();
        let event = words.text(&format!("card-event-{event}"));
        table.row(vec![Cell::text(event), Cell::text(told.join(" "))]);
    }
    let cautions = CAUTIONS.map(|key| words.text(&format!("caution-{key}")));
    let mut blocks = vec![
        fast_loss(words),
        Block::Table(table),
        Block::Caution(Caution { title: String::new(), lines: cautions.to_vec(), grave: false }),
    ];
    if plan.cautions.iter().any(|caution| caution.caution == "supply-touches-brakes") {
        blocks.insert(1, Block::strong(words.text("card-supply-touches-brakes")));
    }
    blocks
}

/// After a fast loss of pressure, what to do in this order.
pub(in crate::paper) fn fast_loss(words: Words<'_>) -> Block {
    let loss = LOSS.map(|key| words.text(&format!("caution-loss-{key}")));
    // The first line names the event; it stands as the title.
    let (title, lines) = loss
        .split_first()
        .map_or((String::new(), &[][..]), |(title, lines)| (title.clone(), lines));
    Block::Caution(Caution { title, lines: lines.to_vec(), grave: true })
}
