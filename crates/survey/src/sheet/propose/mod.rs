//! Guessing a mapping from what a sheet says in its titles and headings.

mod clues;
mod list;
mod table;

use model::tire::MakerRow;

use super::cell::Sheet;
use super::import_sheet;
use super::mapping::Mapping;
use clues::Guess;

/// Rows searched for headings.
const SEARCHED: usize = 40;
/// Rows shown with a proposal.
const SHOWN: usize = 5;

/// How far a proposal rests on what the sheet says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Confidence {
    /// Everything is written in the sheet.
    Written,
    /// Something is guessed from the size of the numbers.
    Guessed,
    /// Something has to be filled in before rows can be read.
    Incomplete,
}

impl std::fmt::Display for Confidence {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Written => "written in the sheet",
            Self::Guessed => "partly guessed; check against the document",
            Self::Incomplete => "incomplete; fill in what is missing",
        })
    }
}

/// A mapping offered for a sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// The mapping.
    pub mapping: Mapping,
    /// How far it can be trusted.
    pub confidence: Confidence,
    /// What was guessed or is missing, in words; empty if everything is written.
    pub reasons: Vec<String>,
    /// The first rows it gives.
    pub sample: Vec<MakerRow>,
    /// How many rows it gives.
    pub rows: usize,
    /// How many problems it meets.
    pub problems: usize,
}

/// Offers mappings for a sheet, the most trustworthy first; none if no table is recognized.
///
/// Units, speed and single or dual are looked for in the headings, then in the lines above them
/// and the name of the sheet. What is only guessed is said.
pub fn propose(sheet: &Sheet) -> Vec<Proposal> {
    let rows = 0..sheet.rows.len().min(SEARCHED);
    let guesses =
        rows.flat_map(|row| list::guess(sheet, row).into_iter().chain(table::guess(sheet, row)));
    let mut proposals: Vec<Proposal> = guesses.filter_map(|guess| finish(sheet, guess)).collect();
    proposals.sort_by_key(|proposal| (proposal.confidence, std::cmp::Reverse(proposal.rows)));
    proposals
}

fn finish(sheet: &Sheet, guess: Guess) -> Option<Proposal> {
    let Guess { mapping, reasons, incomplete } = guess;
    let (rows, problems) = match import_sheet(sheet, &mapping) {
        Ok((rows, problems)) => (rows, problems.len()),
        Err(_) if incomplete => (Vec::new(), 0),
        Err(_) => return None,
    };
    if rows.is_empty() && !incomplete {
        return None;
    }
    let confidence = match (incomplete, reasons.is_empty()) {
        (true, _) => Confidence::Incomplete,
        (false, true) => Confidence::Written,
        (false, false) => Confidence::Guessed,
    };
    let sample = rows.iter().take(SHOWN).cloned().collect();
    Some(Proposal { mapping, confidence, reasons, sample, rows: rows.len(), problems })
}
