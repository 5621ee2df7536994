//! Paragraphs no wider than the page.

use anstyle::Style;
use textwrap::{Options, WordSplitter};

use crate::words::Words;

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

/// What stands beside safety texts that no native speaker of their language has reviewed.
pub fn unreviewed(words: &Words, indent: &str) -> String {
    let mark = words.texts.unreviewed();
    mark.map_or_else(String::new, |mark| paragraph(&format!("[{mark}]"), indent, indent))
}

/// A line of its own in a style.
pub fn line(style: Style, indent: &str, text: &str) -> String {
    format!("{indent}{style}{text}{style:#}\n")
}

/// Labels with what belongs to them, even under each other.
pub fn labelled(facts: &[(String, String)]) -> String {
    let columns = |text: &str| text.chars().count();
    let width = facts.iter().map(|(label, _)| columns(label)).max().unwrap_or(0);
    let others = " ".repeat(width + 4);
    let lines = facts.iter().map(|(label, fact)| {
        let pad = " ".repeat(width - columns(label));
        paragraph(fact, &format!("  {label}{pad}  "), &others)
    });
    lines.collect()
}
