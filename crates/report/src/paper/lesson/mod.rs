//! The driver lesson: rules, this fleet's own plan, and a short test with its answers apart.

mod questions;

use super::Material;
use super::card::{changes, events, ladder, strip};
use crate::Words;
use crate::document::{Block, Cell, Column, Document, Table};

use questions::{Question, questions};

/// Rules of thumb; common practice, no source.
const RULES: [&str; 10] = [
    "three",
    "order",
    "loaded-first",
    "slowest",
    "no-short-cut",
    "brakes",
    "descent",
    "no-bleeding",
    "leaks",
    "write-down",
];

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let (plan, sheet) = (material.plan, document.sheet);
    let blocks = &mut document.blocks;
    blocks.push(Block::section(words.text("lesson-rules")));
    blocks.push(Block::paragraph(words.text("lesson-rules-standing")));
    blocks.push(Block::Steps {
        lines: RULES.map(|rule| words.text(&format!("lesson-rule-{rule}"))).to_vec(),
    });
    blocks.push(Block::section(words.text("lesson-ladder")));
    blocks.extend(ladder::blocks(plan, sheet, words));
    blocks.push(Block::section(words.text("lesson-way")));
    blocks.extend(strip::block(material, words));
    blocks.extend(changes::blocks(plan, words));
    blocks.push(Block::section(words.text("lesson-events")));
    blocks.extend(events::blocks(plan, words));
    blocks.push(Block::PageBreak);
    blocks.extend(test(&questions(plan, words), words));
}

/// The test, and the answers on a page of their own.
fn test(questions: &[Question], words: Words<'_>) -> Vec<Block> {
    let mut blocks = vec![
        Block::part(words.text("lesson-test")),
        Block::blanks([
            (words.text("lesson-name"), ""),
            (words.text("lesson-unit"), ""),
            (words.text("lesson-date"), ""),
        ]),
    ];
    let mut answers = Table::new(vec![
        Column::figures(words.text("card-number")),
        Column::words(words.text("lesson-question"), 5),
        Column::words(words.text("lesson-answer"), 5),
    ]);
    for (number, question) in (1..).zip(questions) {
        blocks.push(Block::section(format!("{number}. {}", question.asked)));
        blocks.push(Block::Ticks { lines: question.choices(number) });
        answers.row(vec![
            Cell::text(number.to_string()),
            Cell::text(question.asked.clone()),
            Cell::text(question.right.clone()),
        ]);
    }
    blocks.push(Block::PageBreak);
    blocks.push(Block::part(words.text("lesson-answers")));
    blocks.push(Block::paragraph(words.text("lesson-answers-how")));
    blocks.push(Block::Table(answers));
    blocks.push(Block::Ticks {
        lines: ["lesson-seen-ladder", "lesson-seen-way", "lesson-seen-ride"]
            .map(|key| words.text(key))
            .to_vec(),
    });
    blocks
        .push(Block::blanks([(words.text("lesson-trainer"), ""), (words.text("lesson-date"), "")]));
    blocks
}
