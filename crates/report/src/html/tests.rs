use crate::document::{
    Around, Block, Caution, Cell, Column, Document, Row, Sheet, Source, Stamp, Table,
};
use language::{Format, Round, UnitProfile};
use quantity::ColdPressure;

/// One block of most kinds, with names that would break a page if they were not escaped.
pub(crate) fn sample() -> Document {
    let format = Format::new(UnitProfile::MetricBar, "fr-CA").unwrap();
    let minimum = format.pressure(ColdPressure::from_kpa(586.1), Round::Up);
    let mut table = Table::new(vec![Column::words("<b>Rung</b>", 1), Column::figures("bar")]);
    table.rows.push(Row { cells: vec![Cell::text("a & b"), Cell::bare(&minimum)], strong: false });
    Document {
        title: "Sample <script>".to_owned(),
        language: "fr-CA".to_owned(),
        sheet: Sheet::A5,
        pages: Some(2),
        stamp: Stamp {
            plan: "Plan 3".to_owned(),
            about: "Haul \"x\"".to_owned(),
            page: "Page".to_owned(),
            draft: true,
            responsible: "desk".to_owned(),
            unreviewed: "Not read by a native speaker.".to_owned(),
        },
        blocks: vec![
            Block::part("Part"),
            Block::strong("first\nsecond"),
            Block::Table(table),
            Block::Caution(Caution {
                title: "Stop".to_owned(),
                lines: vec!["One thing.".to_owned()],
                grave: true,
            }),
            Block::Ticks { lines: vec!["looked".to_owned()] },
            Block::blanks([("Reading".to_owned(), "bar")]),
            Block::PageBreak,
        ],
        sources: vec![Source {
            what: "Rung".to_owned(),
            source: "maker".to_owned(),
            standing: "given".to_owned(),
        }],
        words: Around {
            sources: "Sources".to_owned(),
            source_columns: ["What", "Source", "Standing"].map(str::to_owned),
            drawing: "Drawing".to_owned(),
        },
    }
}

#[test]
fn a_page_stands_alone_and_runs_nothing() {
    let page = super::html(&sample());
    assert!(page.starts_with("<!DOCTYPE html>\n<html lang=\"fr-CA\">"));
    for forbidden in ["<script", "<b>", "http:", "https:", "src=", "href=", "@import", "url("] {
        assert!(!page.contains(forbidden), "{forbidden}");
    }
    assert!(page.contains("a &amp; b") && page.contains("first<br>second"));
    assert!(page.contains("size: 148mm 210mm"));
}

#[test]
fn a_minimum_is_written_rounded_up_with_its_own_mark() {
    assert!(super::html(&sample()).contains(">5,87<"));
}

#[test]
fn regress_the_body_of_a_page() {
    let page = super::html(&sample());
    let body = page.split("</head>").nth(1).unwrap();
    insta::assert_snapshot!(body);
}
