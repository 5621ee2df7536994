//! The sources of the page, by key.

use std::collections::BTreeSet;

use view::PlanView;

use super::head;
use crate::page::text::paragraph;
use crate::register;
use crate::words::Words;
use report::cells::{Extent, shown};

/// Every source that a window shown or an effect rests on, with its title.
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
    if extent == Extent::Whole {
        keys.extend(plan.effect_sources.iter().map(|one| one.source.as_str()));
        keys.extend(plan.trials.iter().map(|one| one.source.as_str()));
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
    if extent == Extent::Driven && !plan.effect_sources.is_empty() {
        text.push_str(&of_effects(plan, words));
    }
    text
}

/// On the short page, how many sources the effects rest on, and those that nobody read.
fn of_effects(plan: &PlanView, words: &Words) -> String {
    let of = |standing: &str| {
        let with = plan.effect_sources.iter().filter(|one| one.standing == standing);
        let keys: BTreeSet<&str> = with.map(|one| one.source.as_str()).collect();
        keys.into_iter().collect::<Vec<_>>().join(", ")
    };
    let all: BTreeSet<&str> = plan.effect_sources.iter().map(|one| one.source.as_str()).collect();
    let line = words.fill(
        "effects-sources",
        &[
            ("count", &all.len()),
            ("memory", &of("from memory")),
            ("practice", &of("common practice")),
        ],
    );
    paragraph(&line, "  ", "    ")
}
