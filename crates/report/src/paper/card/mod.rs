//! The driver card: one side to drive by, the other for the gauge and for when something happens.

pub(super) mod changes;
pub(super) mod events;
mod gauge;
pub(super) mod ladder;
pub(super) mod strip;

#[cfg(test)]
pub(super) mod tests;

use super::{Kind, Material, PaperError, stamp};
use crate::Words;
use crate::document::{Block, Document, Sheet};

/// A card has two sides.
const SIDES: usize = 2;

pub(super) fn document(
    material: &Material<'_>,
    sheet: Sheet,
    words: Words<'_>,
) -> Result<Document, PaperError> {
    let plan = material.plan;
    if plan.ladder.is_empty() {
        return Err(PaperError::NoLadder {
            haul: plan.haul.clone(),
            kind: Kind::DriverCard.name(),
        });
    }
    let mut document = stamp::begin(Kind::DriverCard, material, sheet, words);
    document.pages = Some(SIDES);
    let blocks = &mut document.blocks;
    blocks.extend(ladder::blocks(plan, sheet, words));
    blocks.extend(strip::block(material, words));
    blocks.extend(changes::blocks(plan, words));
    blocks.push(Block::PageBreak);
    blocks.extend(gauge::blocks(material, sheet, words));
    blocks.extend(events::blocks(plan, words));
    Ok(document)
}
