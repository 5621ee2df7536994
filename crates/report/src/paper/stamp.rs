//! What stands on every page.

use super::{Kind, Material};
use crate::Words;
use crate::document::{Around, Block, Caution, Document, Sheet, Stamp};

/// A document of a plan with nothing in it yet but what every one of them has: the stamp, and
/// loud words where the plan is a draft or must not be driven.
pub(super) fn begin(
    kind: Kind,
    material: &Material<'_>,
    sheet: Sheet,
    words: Words<'_>,
) -> Document {
    Document {
        title: words.text(&format!("paper-kind-{}", kind.name())),
        language: words.format.language().to_owned(),
        sheet,
        pages: None,
        stamp: stamp(material, words),
        // A tire maker is asked about tires, not about the plan of a day.
        blocks: if kind == Kind::ApprovalRequest { Vec::new() } else { warnings(material, words) },
        sources: Vec::new(),
        words: Around {
            sources: words.text("paper-sources"),
            source_columns: ["paper-source-what", "paper-source", "paper-source-standing"]
                .map(|key| words.text(key)),
            drawing: words.text("paper-drawing"),
        },
    }
}

fn stamp(material: &Material<'_>, words: Words<'_>) -> Stamp {
    let plan = material.plan;
    let haul: &dyn std::fmt::Display = &plan.haul;
    let combination: &dyn std::fmt::Display = &plan.combination;
    let about = match material.issue {
        Some(issue) if !issue.units.is_empty() => words.fill(
            "paper-about-units",
            &[("haul", haul), ("combination", combination), ("units", &issue.units.join(", "))],
        ),
        _ => words.fill("paper-about", &[("haul", haul), ("combination", combination)]),
    };
    Stamp {
        plan: match material.issue {
            Some(issue) => {
                words.fill("paper-issued", &[("plan", &issue.id), ("date", &issue.date)])
            }
            None => words.text("paper-draft"),
        },
        about,
        page: words.text("paper-page"),
        draft: material.issue.is_none(),
        responsible: material.responsible.to_owned(),
        unreviewed: words.texts.unreviewed().unwrap_or_default(),
    }
}

/// That it is a draft stands on every page by the stamp; that it breaks limits stands first.
fn warnings(material: &Material<'_>, words: Words<'_>) -> Vec<Block> {
    let broken = crate::cautions::broken(material.plan, words);
    if broken.is_empty() {
        return Vec::new();
    }
    let title = words.count("plan-breaks-limits", broken.len());
    vec![Block::Caution(Caution { title, lines: broken, grave: true })]
}
