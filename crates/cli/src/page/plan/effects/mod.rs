//! What a plan does against other ways to run: in total, by leg, what is missing, what is known of it.

mod groups;
mod legs;
mod missing;
mod notes;
mod totals;

pub use missing::missing;

use view::PlanView;

use super::head;
use crate::page::text::paragraph;
use crate::words::Words;
use report::cells::Extent;

/// Effects, short or whole.
pub fn effects(plan: &PlanView, extent: Extent, words: &Words) -> String {
    if plan.effects.is_empty() {
        return String::new();
    }
    let mut text = head(words, "plan-effects");
    text.push_str(&paragraph(&words.text("effects-how"), "  ", "  "));
    text.push_str(&totals::totals(plan, words));
    text.push('\n');
    text.push_str(&legs::legs(plan, extent, words));
    if extent == Extent::Whole {
        text.push_str(&groups::groups(plan, words));
    }
    text.push_str(&notes::notes(plan, extent, words));
    text
}
