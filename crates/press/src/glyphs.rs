//! Characters that the fonts do not have.

use report::document::Document;

use crate::fonts::FONTS;

/// A character without a glyph.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error(
    "the PDF fonts have no sign for '{character}' (U+{:04X}), in \"{text}\"; write it otherwise in \
     the survey, or ask for HTML, which uses the fonts of the reader",
    u32::from(*.character)
)]
pub struct MissingGlyph {
    /// The character.
    pub character: char,
    /// The text that has it, or its beginning.
    pub text: String,
}

/// How much of a text an error repeats.
const TOLD: usize = 60;

/// Refuses a document with a character that any of the fonts lacks.
pub(crate) fn check(document: &Document) -> Result<(), MissingGlyph> {
    for text in document.texts() {
        for character in text.chars() {
            if !is_layout(character) && !known(character) {
                let text = text.chars().take(TOLD).collect();
                return Err(MissingGlyph { character, text });
            }
        }
    }
    Ok(())
}

/// Characters that are obeyed, not printed.
fn is_layout(character: char) -> bool {
    matches!(character, '\n' | '\t' | '\u{ad}' | '\u{200b}')
}

fn known(character: char) -> bool {
    FONTS.all.iter().all(|font| font.info().coverage.contains(u32::from(character)))
}
