//! The page of a plan, top to bottom.

mod cautions;
mod changes;
mod cost;
mod cycle;
mod decided;
mod decided_brief;
mod effects;
mod groups;
mod heading;
mod ladder;
mod search;
mod sources;

pub use ladder::why;
pub use report::cells::Extent;
use view::PlanView;

use crate::page::text::line;
use crate::terminal::HEADING;
use crate::words::Words;

/// The page of one plan.
pub fn plan(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let parts = [
        heading::heading(plan, words),
        heading::axle_groups(plan, words),
        groups::fixed(plan, extent, words),
        ladder::ladder(plan, extent, words),
        search::search(plan, words),
        groups::morning(plan, words),
        changes::points(plan, words),
        changes::laden(plan, words),
        cycle::cycle(plan, words),
        effects::effects(plan, extent, words),
        cost::cost(plan, extent, words),
        effects::missing(plan, words),
        cautions::cautions(plan, words),
        match extent {
            Extent::Driven => decided_brief::decided(plan, words),
            Extent::Whole => decided::decided(plan, words),
        },
        sources::sources(plan, extent, words),
    ];
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("\n")
}

/// A line that heads a part of the page.
fn head(words: &Words, key: &str) -> String {
    line(HEADING, "", &words.text(key))
}

/// A column heading with the unit under it.
fn with_unit(words: &Words, key: &str, unit: &str) -> String {
    format!("{}\n{unit}", words.text(key))
}
