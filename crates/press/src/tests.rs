use report::document::{
    Around, Block, Caution, Cell, Column, Document, Look, Row, Sheet, Stamp, Table,
};
use typst_layout::PagedDocument;

use crate::world::PaperWorld;
use crate::{PressError, page, pdf};

fn document(blocks: Vec<Block>) -> Document {
    Document {
        title: "Sample".to_owned(),
        language: "fi".to_owned(),
        sheet: Sheet::A5,
        pages: None,
        stamp: Stamp {
            plan: "Plan 3".to_owned(),
            about: "Haul x".to_owned(),
            page: "Page".to_owned(),
            draft: true,
            responsible: "desk".to_owned(),
            unreviewed: "Not read by a native speaker.".to_owned(),
        },
        blocks,
        sources: Vec::new(),
        words: Around {
            sources: "Sources".to_owned(),
            source_columns: ["What", "Source", "Standing"].map(str::to_owned),
            drawing: "Drawing".to_owned(),
        },
    }
}

fn rows(count: usize, text: &str) -> Block {
    let mut table = Table::new(vec![Column::words("Name", 1), Column::centered("kPa", 1)]);
    table.look = Look::Big;
    for index in 0..count {
        let cells = vec![Cell::text(text), Cell::text(index.to_string())];
        table.rows.push(Row { cells, strong: false });
    }
    Block::Table(table)
}

#[test]
fn the_same_document_gives_the_same_tagged_bytes() {
    let caution = Caution {
        title: "Älä aja".to_owned(),
        lines: vec!["Höyry ß ñ ç œ → ≤ ½ ⚠".to_owned()],
        grave: true,
    };
    let document = document(vec![rows(3, "a"), Block::Caution(caution)]);
    let (one, two) = (pdf(&document).unwrap(), pdf(&document).unwrap());
    assert!(one.pdf == two.pdf && one.pages == 1);
    let holds = |what: &[u8]| one.pdf.windows(what.len()).any(|part| part == what);
    assert!(one.pdf.starts_with(b"%PDF-") && holds(b"/StructTreeRoot") && holds(b"/ToUnicode"));
    assert!(!holds(b"/CreationDate"));
}

#[test]
fn a_character_without_a_sign_is_refused_by_name() {
    let error = pdf(&document(vec![Block::paragraph("haul \u{6f22}")])).unwrap_err();
    let PressError::MissingGlyph(glyph) = error else { panic!("{error}") };
    assert_eq!(glyph.character, '\u{6f22}');
    assert!(glyph.to_string().contains("U+6F22") && glyph.to_string().contains("HTML"), "{glyph}");
}

#[test]
fn text_is_never_taken_for_source() {
    let hostile = "#panic() $x$ *b* = @ref /* `raw` \\ #read(\"/etc/passwd\") <label>";
    assert_eq!(pdf(&document(vec![Block::paragraph(hostile), rows(2, hostile)])).unwrap().pages, 1);
}

#[test]
fn a_document_keeps_to_its_pages_where_smaller_text_does_and_loses_nothing_where_not() {
    let with = |count| Document { pages: Some(1), ..document(vec![rows(count, "a")]) };
    let free = |count| Document { pages: None, ..with(count) };
    let (mut shrunk, mut longer) = (0, 0);
    for count in 10..40 {
        let (kept, natural) = (pdf(&with(count)).unwrap().pages, pdf(&free(count)).unwrap().pages);
        match (kept, natural) {
            (1, 2) => shrunk += 1,
            (2, 2) => longer += 1,
            _ => assert_eq!((kept, natural), (1, 1)),
        }
    }
    assert!(shrunk > 0 && longer > 0);
}

#[test]
fn pages_of_a_card_run_on_where_its_two_sides_do_not_hold_them_apart() {
    let mut blocks = vec![rows(20, "a"), Block::PageBreak];
    blocks.push(rows(5, "a"));
    let apart = Document { pages: Some(2), ..document(blocks.clone()) };
    assert_eq!(pdf(&apart).unwrap().pages, 2);
    let mut longer = vec![rows(36, "a"), Block::PageBreak];
    longer.push(rows(12, "a"));
    let run_on = Document { pages: Some(2), ..document(longer.clone()) };
    let free = Document { pages: None, ..run_on.clone() };
    assert_eq!((pdf(&run_on).unwrap().pages, pdf(&free).unwrap().pages), (2, 3));
}

/// Names of 200 letters, with and without places to break, in every kind of block.
#[test]
fn nothing_runs_over_the_edge_of_the_page() {
    let solid = "x".repeat(200);
    let words = "tire-pressure support ".repeat(9);
    let blocks = |name: &str| {
        vec![
            Block::section(name),
            Block::paragraph(name),
            rows(2, name),
            Block::Points { lines: vec![name.to_owned()] },
            Block::Ticks { lines: vec![name.to_owned()] },
            Block::blanks([(name.to_owned(), "kPa")]),
        ]
    };
    for name in [&solid, &words] {
        let mut document = document(blocks(name));
        document.stamp.about = (*name).clone();
        let world = PaperWorld::new(page::json(&document, 1.0, true));
        let set = typst::compile::<PagedDocument>(&world).output.unwrap();
        for page in set.pages() {
            let width = page.frame.width().to_pt();
            right_edge(&page.frame, 0.0, &mut |right, text| {
                assert!(right <= width, "'{text}' ends at {right} of {width} pt");
            });
        }
    }
}

fn right_edge(frame: &typst::layout::Frame, left: f64, tell: &mut impl FnMut(f64, &str)) {
    use typst::layout::FrameItem;
    for (place, item) in frame.items() {
        let x = left + place.x.to_pt();
        match item {
            FrameItem::Group(group) => right_edge(&group.frame, x, tell),
            FrameItem::Text(text) => tell(x + text.width().to_pt(), &text.text),
            _ => {}
        }
    }
}
