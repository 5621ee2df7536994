//! Cautions: those that break a limit first, then what people must be told.

use report::cautions;
use view::PlanView;

use super::head;
use crate::page::text::{line as text_line, paragraph, unreviewed};
use crate::terminal::WRONG;
use crate::words::Words;

/// All cautions.
pub fn cautions(plan: &PlanView, words: &Words) -> String {
    let broken = cautions::broken(plan, words.of_paper());
    let mut text = head(words, "plan-cautions") + &unreviewed(words, "  ");
    if !broken.is_empty() {
        text.push_str(&text_line(WRONG, "  ", &words.text("plan-cautions-broken")));
        for line in broken {
            text.push_str(&paragraph(&line, "  ! ", "    "));
        }
        text.push('\n');
        text.push_str(&paragraph(&words.text("plan-cautions-told"), "  ", "  "));
    }
    for line in cautions::told(plan, words.of_paper()) {
        text.push_str(&paragraph(&line, "  - ", "    "));
    }
    text
}
