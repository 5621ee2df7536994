//! The approval request: a letter for each tire model, with room for its maker's answer.

use language::{Format, Kind, Round};
use quantity::{ColdPressure, Speed, Time};
use view::{AskedHaulView, AskedLineView, RequestView, RequestsDocument};

use super::Material;
use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Document, Look, Row, Table};
use crate::quantities::{chainage, fine, highest, load, temperature, time};

/// What the answer must name to be put into the survey.
const ANSWER: [&str; 6] = ["number", "date", "expires", "for", "who", "signed"];

/// The requests, where there is something to ask.
pub(super) fn of<'a>(material: &Material<'a>) -> Option<&'a RequestsDocument> {
    material.requests.filter(|document| !document.requests.is_empty())
}

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let Some(requests) = of(material) else { return };
    for (index, request) in requests.requests.iter().enumerate() {
        if index > 0 {
            document.blocks.push(Block::PageBreak);
        }
        letter(&mut document.blocks, requests, request, words);
    }
}

fn letter(
    blocks: &mut Vec<Block>,
    document: &RequestsDocument,
    request: &RequestView,
    words: Words<'_>,
) {
    blocks.push(Block::part(words.fill(
        "request-title",
        &[
            ("size", &request.size),
            ("index", &request.load_index),
            ("symbol", &request.speed_symbol),
        ],
    )));
    blocks.push(Block::Table(facts(document, request, words)));
    let mut number = 0;
    for haul in &request.hauls {
        blocks.push(Block::section(words.fill("request-of-haul", &[("haul", &haul.haul)])));
        blocks.push(Block::paragraph(about(haul, words)));
        blocks.push(Block::Table(asked(haul, number + 1, words)));
        let notes = notes(haul, number + 1, words);
        if !notes.is_empty() {
            blocks.push(Block::Points { lines: notes });
        }
        number += haul.lines.len();
    }
    blocks.push(Block::paragraph(words.text("request-how")));
    blocks.push(Block::paragraph(words.text("request-table-how")));
    blocks.push(Block::section(words.text("request-please")));
    blocks.push(Block::Points { lines: questions(request, words) });
    let lines = ["caution-maker-approves", "caution-unapproved", "caution-law-decides"];
    blocks.push(Block::Caution(Caution {
        title: String::new(),
        lines: lines.map(|key| words.text(key)).to_vec(),
        grave: false,
    }));
    blocks.push(Block::section(words.text("request-answer")));
    blocks.push(Block::Table(answers(request, words)));
    blocks.push(Block::blanks(
        ANSWER.map(|what| (words.text(&format!("request-answer-{what}")), "")),
    ));
}

fn facts(document: &RequestsDocument, request: &RequestView, words: Words<'_>) -> Table {
    let format = words.format;
    let maximum = highest(format, request.rim_maximum_kpa);
    let rim = match &request.rim {
        Some(rim) => words.fill("request-rim-what", &[("rim", rim), ("maximum", &maximum)]),
        None => words.fill("request-rim-unknown", &[("maximum", &maximum)]),
    };
    let casing = if request.construction == "bias" { "bias" } else { "radial" };
    let tube = if request.with_tube { "tube" } else { "tubeless" };
    let mut table =
        Table::new(vec![Column::words(String::new(), 1), Column::words(String::new(), 3)]);
    for (key, fact) in [
        (
            "request-from",
            words.fill(
                "request-from-who",
                &[("responsible", &document.responsible), ("survey", &document.survey)],
            ),
        ),
        (
            "request-tire",
            words.fill(
                "request-tire-what",
                &[("size", &request.size), ("body", &request.body), ("name", &request.tire)],
            ),
        ),
        ("request-construction", words.text(&format!("request-{casing}-{tube}"))),
        ("request-rim", rim),
        ("request-molded", highest(format, request.molded_maximum_kpa).to_string()),
        (
            "request-so-far",
            match &request.document {
                None => words.text("request-none-so-far"),
                Some(document) if request.document_counts => document.clone(),
                Some(document) => words.fill("request-lapsed", &[("document", document)]),
            },
        ),
    ] {
        table.row(vec![Cell::text(words.text(key)), Cell::text(fact)]);
    }
    table
}

fn about(haul: &AskedHaulView, words: Words<'_>) -> String {
    let format = words.format;
    words.fill(
        "request-haul",
        &[
            ("haul", &haul.haul),
            ("distance", &chainage(format, haul.distance_per_cycle_km, Round::Up)),
            ("cycles", &format.number(haul.cycles_per_day, 1, Round::Nearest)),
            ("coldest", &temperature(format, haul.coldest_c)),
            ("warmest", &temperature(format, haul.warmest_c)),
            ("reference", &temperature(format, haul.reference_c)),
        ],
    )
}

/// The lines asked about: what is run is never shown less, what is wanted never more.
fn asked(haul: &AskedHaulView, first: usize, words: Words<'_>) -> Table {
    let format = words.format;
    let head = |key: &str| words.text(key).replace('\n', " ");
    let with_unit = |key: &str, kind: Kind| format!("{}, {}", head(key), format.unit(kind));
    let figures = |head: String| Column { share: 3, ..Column::figures(head) };
    let mut table = Table::new(vec![
        Column { share: 2, ..Column::figures(head("request-line")) },
        Column::words(head("plan-axle-group"), 5),
        Column::words(head("request-state"), 3),
        figures(with_unit("request-load", Kind::Load)),
        figures(with_unit("request-speed", Kind::Speed)),
        figures(with_unit("request-distance", Kind::Distance)),
        figures(with_unit("request-stay", Kind::Distance)),
        figures(head("request-hold")),
        figures(with_unit("request-by-table", Kind::Pressure)),
        figures(with_unit("request-wanted", Kind::Pressure)),
        Column::words(head("request-today"), 4),
    ]);
    table.look = Look::Small;
    let mut last = "";
    for (number, line) in (first..).zip(&haul.lines) {
        let group = if line.axle_group == last { String::new() } else { group(line, words) };
        last = &line.axle_group;
        table.rows.push(Row {
            cells: vec![
                Cell::text(number.to_string()),
                Cell::text(group),
                Cell::text(line.load_state.clone()),
                Cell::bare(&load(format, line.load_kg)),
                Cell::bare(&format.speed(Speed::from_kmh(line.speed_kmh), Round::Up)),
                Cell::bare(&chainage(format, line.distance_km, Round::Up)),
                known(line.stay_km, words, |km| Cell::bare(&chainage(format, km, Round::Up))),
                known(line.hold_min, words, |min| {
                    Cell::bare(&format.minutes(Time::from_min(min), Round::Up))
                }),
                known(line.table_kpa, words, |kpa| {
                    Cell::bare(&pressure(format, kpa, Round::Nearest))
                }),
                known(line.wanted_kpa, words, |kpa| {
                    Cell::bare(&pressure(format, kpa, Round::Down))
                }),
                Cell::text(words.text(today(line))),
            ],
            strong: is_open(line),
        });
    }
    table
}

fn group(line: &AskedLineView, words: Words<'_>) -> String {
    let fitment = words.text(if line.fitment == "dual" { "plan-dual" } else { "plan-single" });
    format!("{}\n{fitment}", line.axle_group)
}

fn known(value: Option<f64>, words: Words<'_>, cell: impl Fn(f64) -> Cell) -> Cell {
    value.map_or_else(|| Cell::text(words.text("unit-none")), cell)
}

/// With one digit more than on paper for drivers: the maker compares it with rows in print.
fn pressure(format: &Format, kpa: f64, round: Round) -> language::Amount {
    fine(format, Kind::Pressure, ColdPressure::from_kpa(kpa), round)
}

fn is_open(line: &AskedLineView) -> bool {
    !matches!(line.approval.as_str(), "maker" | "standard")
}

fn today(line: &AskedLineView) -> &'static str {
    match line.approval.as_str() {
        "maker" => "plan-approval-brief-maker",
        "standard" => "plan-approval-brief-standard",
        "needs approval" => "plan-approval-needed",
        _ => "plan-approval-not-possible",
    }
}

fn notes(haul: &AskedHaulView, first: usize, words: Words<'_>) -> Vec<String> {
    let mut lines = Vec::new();
    for (number, line) in (first..).zip(&haul.lines) {
        if let Some(kpa) = line.ground_wants_kpa {
            let pressure = highest(words.format, kpa);
            lines.push(words.fill("request-ground", &[("line", &number), ("pressure", &pressure)]));
        }
        if line.approval == "not possible" {
            lines.push(words.fill("request-none-left", &[("line", &number)]));
        }
    }
    lines
}

fn questions(request: &RequestView, words: Words<'_>) -> Vec<String> {
    let standing = request.hauls.iter().map(|haul| haul.loading_s).fold(0.0, f64::max);
    let standing = time(words.format, standing);
    vec![
        words.text("request-please-pressure"),
        words.text("request-please-hold"),
        words.fill("request-please-standing", &[("time", &standing)]),
        words.text("request-please-service"),
        words.text("request-please-days"),
    ]
}

/// A row for each line, empty for the maker to fill in.
fn answers(request: &RequestView, words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::figures(words.text("request-line")),
        Column::words(words.with_unit("request-approved", Kind::Pressure), 3),
        Column::words(words.with_unit("request-approved-road", Kind::Distance), 3),
        Column::words(words.text("request-approved-time"), 3),
        Column::words(words.text("request-remarks"), 6),
    ]);
    let lines = request.hauls.iter().flat_map(|haul| &haul.lines);
    for (number, line) in (1usize..).zip(lines) {
        table.rows.push(Row {
            cells: vec![
                Cell::text(number.to_string()),
                Cell::default(),
                Cell::default(),
                Cell::default(),
                Cell::default(),
            ],
            strong: is_open(line),
        });
    }
    table
}
