//! What to fill in so that more can be told.

use view::{MissingInputView, PlanView};

use crate::page::plan::head;
use crate::page::text::paragraph;
use crate::words::Words;

/// Inputs that are missing, with file and keys; what is missing on several legs stands in one line.
pub fn missing(plan: &PlanView, words: &Words) -> String {
    if plan.missing_inputs.is_empty() {
        return String::new();
    }
    let mut text = head(words, "effects-missing");
    let mut told: Vec<(&MissingInputView, Vec<&str>)> = Vec::new();
    for one in &plan.missing_inputs {
        let leg = one.leg.as_deref();
        let same = |(first, _): &&mut (&MissingInputView, Vec<&str>)| {
            first.input == one.input && first.decides == one.decides
        };
        match told.iter_mut().find(same) {
            Some((_, legs)) => legs.extend(leg),
            None => told.push((one, leg.into_iter().collect())),
        }
    }
    for (one, legs) in told {
        let decides: Vec<String> =
            one.decides.iter().map(|effect| words.text(&format!("effects-of-{effect}"))).collect();
        let place = if legs.is_empty() {
            one.file.clone()
        } else {
            let legs = legs.join(", ");
            words.fill("effects-on-legs", &[("file", &one.file), ("legs", &legs)])
        };
        let item = one.decides.iter().all(|effect| effect == "cost-item");
        let line = words.fill(
            if item { "effects-missing-cost-line" } else { "effects-missing-line" },
            &[
                ("what", &words.text(&format!("effects-give-{}", one.input))),
                ("place", &place),
                ("keys", &one.keys.join(&format!(" {} ", words.text("effects-or")))),
                ("decides", &decides.join(", ")),
            ],
        );
        text.push_str(&paragraph(&line, "  - ", "    "));
    }
    text
}
