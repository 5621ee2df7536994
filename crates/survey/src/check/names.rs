//! Names that must be one thing within their list.

use crate::document::Document;
use crate::problem::{Problem, ProblemKind};

/// Reports every name that stands in the list before; `at` gives the pointer of an entry's name.
pub(super) fn unique<'a>(
    document: &Document,
    names: impl Iterator<Item = &'a str>,
    at: impl Fn(usize) -> String,
    problems: &mut Vec<Problem>,
) {
    let mut seen: Vec<&str> = Vec::new();
    for (index, name) in names.enumerate() {
        if seen.contains(&name) {
            let kind = ProblemKind::DuplicateName { name: name.to_owned() };
            problems.push(document.problem(&at(index), kind));
        }
        seen.push(name);
    }
}
