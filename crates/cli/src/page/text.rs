//! Paragraphs no wider than the page.

use textwrap::{Options, WordSplitter};

/// Columns of a page.
pub const WIDTH: usize = 100;

/// A paragraph wrapped to the page, with what stands before its first and its other lines.
pub fn paragraph(text: &str, first: &str, others: &str) -> String {
    let options = Options::new(WIDTH)
        .initial_indent(first)
        .subsequent_indent(others)
        .break_words(false)
        .word_splitter(WordSplitter::NoHyphenation);
    let mut wrapped = textwrap::fill(text, options);
    wrapped.push('\n');
    wrapped
}
