//! The fonts on paper: `DejaVu` Sans, from the registry at build time.
//!
//! License: the Bitstream Vera terms and public domain for the additions, free to embed; the
//! package `dejavu` carries the text.

use std::sync::LazyLock;

use typst::foundations::Bytes;
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;

/// Fonts and what typst looks them up by.
pub(crate) struct Fonts {
    pub(crate) book: LazyHash<FontBook>,
    pub(crate) all: Vec<Font>,
}

/// The fonts, read once.
pub(crate) static FONTS: LazyLock<Fonts> = LazyLock::new(|| {
    let files = [
        dejavu::sans_condensed::regular(),
        dejavu::sans_condensed::bold(),
        dejavu::sans::regular(),
        dejavu::sans::bold(),
    ];
    let all: Vec<Font> = files.into_iter().flat_map(|file| Font::iter(Bytes::new(file))).collect();
    Fonts { book: LazyHash::new(FontBook::from_fonts(&all)), all }
});
