//! The sources that a document rests on, each once.

use view::{LimitView, PlanView};

use crate::Words;
use crate::document::Source;

/// Sources of the limits of a plan; places in one source stand in one row.
pub(in crate::paper) fn of_limits(plan: &PlanView, words: Words<'_>) -> Vec<Source> {
    let mut found: Vec<(Source, Vec<String>)> = Vec::new();
    let limits = plan.ladder.iter().flat_map(|cell| [&cell.min_limit, &cell.min_runner_up]);
    for limit in limits.flatten() {
        let what = words.text(&format!("limit-{}", limit.governed_by));
        let standing = standing(limit, words);
        // What stands before the last comma names the document, what follows the row.
        let (document, row) = limit.locator.rsplit_once(", ").unwrap_or((&limit.locator, ""));
        let named = [&*limit.source, document].into_iter().filter(|part| !part.is_empty());
        let source = Source { what, source: named.collect::<Vec<_>>().join(", "), standing };
        let row = row.to_owned();
        match found.iter_mut().find(|(known, _)| *known == source) {
            Some((_, rows)) if row.is_empty() || rows.contains(&row) => {}
            Some((_, rows)) => rows.push(row),
            None if row.is_empty() => found.push((source, Vec::new())),
            None => found.push((source, vec![row])),
        }
    }
    let told = |(mut source, rows): (Source, Vec<String>)| {
        for row in rows {
            source.source.push_str(", ");
            source.source.push_str(&row);
        }
        source
    };
    found.into_iter().map(told).collect()
}

/// Sources of the effects of a plan.
pub(super) fn of_effects(plan: &PlanView, words: Words<'_>) -> Vec<Source> {
    if plan.effects.is_empty() {
        return Vec::new();
    }
    let mut found: Vec<Source> = Vec::new();
    for effect in &plan.effect_sources {
        let what = words.text(&format!("effects-of-{}", effect.effect));
        let standing = words.text(match effect.standing.as_str() {
            "read" => "plan-standing-read",
            "given" => "plan-standing-given",
            "from memory" => "plan-standing-memory",
            _ => "plan-standing-practice",
        });
        let same = |known: &&mut Source| known.what == what && known.standing == standing;
        match found.iter_mut().find(same) {
            Some(known) if known.source.split(", ").any(|key| key == effect.source) => {}
            Some(known) => {
                known.source.push_str(", ");
                known.source.push_str(&effect.source);
            }
            None => found.push(Source { what, source: effect.source.clone(), standing }),
        }
    }
    found
}

fn standing(limit: &LimitView, words: Words<'_>) -> String {
    words.text(match limit.standing.as_str() {
        "read" => "plan-standing-read",
        "given" => "plan-standing-given",
        "from memory" => "plan-standing-memory",
        _ => "plan-standing-practice",
    })
}
