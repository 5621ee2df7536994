//! Documents to PDF, by typst as a library.
//!
//! The text of a document is handed over as JSON and never pasted into source, so that no
//! name in a survey can become an instruction. The world that typst sees holds the template,
//! the document and the fonts, and nothing else: no disk, no network, no clock. The same
//! document gives the same bytes.

mod fonts;
mod glyphs;
mod page;
mod world;

#[cfg(test)]
mod tests;

use report::document::Document;
use typst_layout::PagedDocument;
use typst_pdf::PdfOptions;

use world::PaperWorld;

pub use glyphs::MissingGlyph;

/// Why a document cannot be set.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PressError {
    /// A character that the fonts do not have; an empty box on paper could hide a number.
    #[error(transparent)]
    MissingGlyph(#[from] MissingGlyph),
    /// What the typesetter says; a fault of the template, not of the document.
    #[error("the document cannot be set: {0}")]
    NotSet(String),
}

/// A document as it was set.
#[derive(Debug)]
pub struct Pressed {
    /// The PDF.
    pub pdf: Vec<u8>,
    /// How many pages it takes.
    pub pages: usize,
}

/// How much smaller the text may become to keep a document to its pages.
const SCALES: [f64; 5] = [1.0, 0.94, 0.88, 0.82, 0.77];

/// Sets a document as PDF: tagged, with text that can be selected.
///
/// A document that is meant for so many pages is set smaller until it keeps to them, down to
/// 77 %, then without its page breaks; one that still does not takes more pages, and nothing is cut
/// off.
///
/// # Errors
/// [`PressError::MissingGlyph`] for a character the fonts do not have.
pub fn pdf(document: &Document) -> Result<Pressed, PressError> {
    glyphs::check(document)?;
    let set = fitted(document)?;
    let options = PdfOptions {
        creator: typst::foundations::Smart::Custom(Some("Airtide".to_owned())),
        ..PdfOptions::default()
    };
    let pdf = typst_pdf::pdf(&set, &options).map_err(|errors| not_set(&errors))?;
    Ok(Pressed { pdf, pages: set.pages().len() })
}

/// The largest text that keeps to the pages: each with what belongs on it, else running on; and where
/// nothing does, there is no reason to strain the eyes.
fn fitted(document: &Document) -> Result<PagedDocument, PressError> {
    let natural = set(document, SCALES[0], true)?;
    let Some(most) = document.pages.filter(|most| natural.pages().len() > *most) else {
        return Ok(natural);
    };
    // What is two pages over is over on both sides of a break: smaller text will not mend that.
    let apart = if natural.pages().len() - most > 1 { &[] } else { &SCALES[1..] };
    let apart = apart.iter().map(|&scale| (scale, true));
    for (scale, breaks) in apart.chain(SCALES.map(|scale| (scale, false))) {
        let set = set(document, scale, breaks)?;
        if set.pages().len() <= most {
            return Ok(set);
        }
    }
    Ok(natural)
}

fn set(document: &Document, scale: f64, breaks: bool) -> Result<PagedDocument, PressError> {
    let world = PaperWorld::new(page::json(document, scale, breaks));
    typst::compile::<PagedDocument>(&world).output.map_err(|errors| not_set(&errors))
}

fn not_set(errors: &[typst::diag::SourceDiagnostic]) -> PressError {
    let told: Vec<&str> = errors.iter().map(|error| error.message.as_str()).collect();
    PressError::NotSet(told.join("; "))
}
