//! A problem with a survey: where it is, what was written, what is wrong, and what to do.

mod detail;
mod fault;
mod kind;
mod print;
mod severity;
mod wording;

use std::ops::Range;

pub use detail::{Condition, Ordered, Reference, SizeFault, SpacingBasis, UnitSlip};
pub use fault::{
    ApprovalFault, DateFault, GroundFault, LadderFault, PermitFault, StateFault, UnitFault,
};
pub use kind::ProblemKind;
pub use print::report;
pub use severity::Severity;

/// One problem with one place in a survey.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// Whether it stops the haul.
    pub severity: Severity,
    /// File, relative to the survey.
    pub file: String,
    /// Line, from 1; `None` where the file as a whole is meant.
    pub line: Option<usize>,
    /// Column in characters, from 1.
    pub column: Option<usize>,
    /// Bytes of the place in the file.
    pub span: Option<Range<usize>>,
    /// The key concerned, as written.
    pub key: Option<String>,
    /// The value as written, shortened.
    pub value: Option<String>,
    /// What is wrong.
    pub kind: ProblemKind,
}

impl Problem {
    /// A problem with a file as a whole.
    pub(crate) fn in_file(file: &str, kind: ProblemKind) -> Self {
        Self {
            severity: kind.severity(),
            file: file.to_owned(),
            line: kind.line(),
            column: None,
            span: None,
            key: None,
            value: None,
            kind,
        }
    }

    /// A problem with a place in a text.
    pub(crate) fn at(file: &str, text: &str, span: &Range<usize>, kind: ProblemKind) -> Self {
        let start = floor_boundary(text, span.start);
        let end = floor_boundary(text, span.end).max(start);
        let before = &text[..start];
        let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
        Self {
            line: Some(before.split('\n').count()),
            column: Some(1 + before[line_start..].chars().count()),
            span: Some(start..end),
            value: shortened(&text[start..end]),
            ..Self::in_file(file, kind)
        }
    }

    /// What is wrong, in one sentence without a full stop.
    pub fn message(&self) -> String {
        wording::message(self)
    }

    /// What to do about it, where there is something to say.
    pub fn hint(&self) -> Option<String> {
        wording::hint(self)
    }
}

fn floor_boundary(text: &str, at: usize) -> usize {
    let mut at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

/// The first line of a value, at most as long as a screen line bears.
fn shortened(text: &str) -> Option<String> {
    const MOST: usize = 60;
    let line = text.trim().lines().next()?.trim();
    if line.is_empty() {
        return None;
    }
    let mut short: String = line.chars().take(MOST).collect();
    if short.len() < line.len() {
        short.push('…');
    }
    Some(short)
}

/// The known word most like `text`, if it is like enough to be meant.
pub(crate) fn nearest<S: AsRef<str>>(text: &str, known: &[S]) -> Option<String> {
    const LIKE_ENOUGH: f64 = 0.6;
    let text = text.to_lowercase();
    known
        .iter()
        .map(|word| {
            (strsim::normalized_damerau_levenshtein(&text, &word.as_ref().to_lowercase()), word)
        })
        .filter(|(likeness, _)| *likeness >= LIKE_ENOUGH)
        .max_by(|first, second| first.0.total_cmp(&second.0))
        .map(|(_, word)| word.as_ref().to_owned())
}
