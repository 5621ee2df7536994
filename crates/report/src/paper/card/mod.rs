//! The driver card: one side to drive by, the other for the gauge and for when something happens.

pub(super) mod changes;
pub(super) mod events;
mod gauge;
pub(super) mod ladder;
pub(super) mod strip;

#[cfg(test)]
mod tests;

use super::Material;
use crate::Words;
use crate::document::{Block, Document};

/// A card has two sides.
const SIDES: usize = 2;

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let (plan, sheet) = (material.plan, document.sheet);
    document.pages = Some(SIDES);
    let blocks = &mut document.blocks;
    blocks.extend(ladder::blocks(plan, sheet, words));
    blocks.extend(strip::block(material, words));
    blocks.extend(changes::blocks(plan, words));
    blocks.push(Block::PageBreak);
    blocks.extend(gauge::blocks(material, sheet, words));
    blocks.extend(events::blocks(plan, words));
}
