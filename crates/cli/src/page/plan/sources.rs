//! The sources of the page, by key.

use std::collections::BTreeSet;

use view::PlanView;

use super::head;
use crate::page::text::paragraph;
use crate::register;
use crate::words::Words;
use report::cells::{Extent, shown};

/// Every source that a window shown rests on, with its title.
pub fn sources(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let mut keys: BTreeSet<&str> = BTreeSet::new();
    for cell in plan.ladder.iter().filter(|cell| shown(plan, cell, extent)) {
        let minimum = cell.min_limit.iter().chain(&cell.min_runner_up);
        keys.extend(minimum.map(|limit| limit.source.as_str()));
        let maximum = cell.max_source.as_ref().and_then(|source| {
            // The key stands before the place and the standing.
            source.split([',', ' ']).next()
        });
        keys.extend(maximum);
    }
    if keys.is_empty() {
        return String::new();
    }
    let mut text = head(words, "plan-sources");
    for key in keys {
        let line = match register::entry(key) {
            Some(entry) => match &entry.authors {
                Some(authors) => format!("{key}: {} ({authors})", entry.title),
                None => format!("{key}: {}", entry.title),
            },
            None => key.to_owned(),
        };
        text.push_str(&paragraph(&line, "  ", "    "));
    }
    text
}
