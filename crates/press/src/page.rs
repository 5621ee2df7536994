//! A document as the template reads it: with the measures of its page.

use report::document::{Document, Sheet};
use serde::Serialize;

/// The document with its measures.
#[derive(Serialize)]
struct Page<'a> {
    document: &'a Document,
    /// Language and region apart, as typst wants them.
    language: &'a str,
    region: Option<&'a str>,
    width_mm: f64,
    height_mm: f64,
    margin_mm: f64,
    /// Size of the text in points.
    text_pt: f64,
    /// Size of figures that are read at arm's length.
    big_pt: f64,
    /// Whether a page begins where the document says so.
    breaks: bool,
}

/// The JSON that the template reads.
pub(crate) fn json(document: &Document, scale: f64, breaks: bool) -> Vec<u8> {
    let (width_mm, height_mm) = document.sheet.size_mm();
    let (text, big, margin_mm) = sizes(document.sheet);
    let mut parts = document.language.split('-');
    let page = Page {
        document,
        language: parts.next().unwrap_or("en"),
        region: parts.next(),
        width_mm,
        height_mm,
        margin_mm,
        text_pt: text * scale,
        big_pt: big * scale,
        breaks,
    };
    serde_json::to_vec(&page).expect("its keys are text and its numbers are finite")
}

/// Text, big figures, and the margin of a sheet.
fn sizes(sheet: Sheet) -> (f64, f64, f64) {
    if sheet.is_card() { (9.6, 18.5, 7.0) } else { (10.0, 16.0, 18.0) }
}
