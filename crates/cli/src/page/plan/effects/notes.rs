//! What to know of the effects, and the trials.

use view::{PlanView, TrialView};

use crate::page::text::paragraph;
use crate::words::Words;
use report::cells::Extent;
use report::effect_words;

/// Notes, and the trials.
pub fn notes(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let lines = effect_words::notes(plan, words.of_paper());
    let lines: String = lines.iter().map(|line| paragraph(line, "  - ", "    ")).collect();
    lines + &trials(&plan.trials, extent, words)
}

/// Every trial, or on the short page those that found nothing and how many found a gain.
fn trials(trials: &[TrialView], extent: Extent, words: &Words) -> String {
    if trials.is_empty() {
        return String::new();
    }
    let shown = |trial: &&TrialView| extent == Extent::Whole || trial.found == "no-difference";
    let gained = trials.iter().filter(|trial| trial.found != "no-difference").count();
    let head = match extent {
        Extent::Whole => words.text("effects-trials"),
        Extent::Driven => words.count("effects-trials-brief", gained),
    };
    let mut text = paragraph(&head, "  ", "  ");
    for trial in trials.iter().filter(shown) {
        let line = effect_words::trial(trial, words.of_paper());
        text.push_str(&paragraph(&line, "    - ", "      "));
    }
    text
}
