//! The documents a specialist hands over, one module each.
//!
//! A document is made from finished results alone ([`Material`]); where a result it needs is
//! not there, it is refused by name, never left out in silence.

mod card;
mod driver;
mod stamp;

use view::{NowTableDocument, PlanView, RouteView};

use crate::Words;
use crate::document::{Document, Sheet};

/// A kind of document.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Two sides for the cab: ladder, change points, gauge, what to do.
    DriverCard,
}

/// What documents are made from.
#[derive(Debug, Clone, Copy)]
pub struct Material<'a> {
    /// The plan.
    pub plan: &'a PlanView,
    /// Its number and day; `None` for a draft.
    pub issue: Option<&'a Issue>,
    /// Person who answers for it.
    pub responsible: &'a str,
    /// The route.
    pub route: &'a RouteView,
    /// Highest speeds over gauge readings, in steps of the reader's unit.
    pub gauge: &'a NowTableDocument,
}

/// Under which number a plan was issued.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Issue {
    /// Name of the plan: haul and number.
    pub id: String,
    /// Day of issue.
    pub date: String,
    /// Units it is assigned to.
    pub units: Vec<String>,
}

/// Why a document cannot be made.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PaperError {
    /// A name that is no kind of document.
    #[error("'{given}' is not a kind of document; there are: {}", kinds())]
    UnknownKind {
        /// What was given.
        given: String,
    },
    /// No ladder to put on paper.
    #[error("haul '{haul}' has no ladder; a {kind} needs one")]
    NoLadder {
        /// Haul.
        haul: String,
        /// Kind of document.
        kind: &'static str,
    },
}

fn kinds() -> String {
    Kind::ALL.map(Kind::name).join(", ")
}

impl Kind {
    /// Every kind, in the order of the work.
    pub const ALL: [Self; 1] = [Self::DriverCard];

    /// The name on the command line.
    pub const fn name(self) -> &'static str {
        match self {
            Self::DriverCard => "driver-card",
        }
    }

    /// Whether it is for the hand rather than the desk.
    pub const fn is_card(self) -> bool {
        matches!(self, Self::DriverCard)
    }
}

impl std::str::FromStr for Kind {
    type Err = PaperError;
    fn from_str(text: &str) -> Result<Self, PaperError> {
        let found = Self::ALL.into_iter().find(|kind| kind.name() == text);
        found.ok_or_else(|| PaperError::UnknownKind { given: text.to_owned() })
    }
}

/// Makes a document on a size of paper.
///
/// # Errors
/// [`PaperError`] where a result it needs is not there.
pub fn document(
    kind: Kind,
    material: &Material<'_>,
    sheet: Sheet,
    words: Words<'_>,
) -> Result<Document, PaperError> {
    match kind {
        Kind::DriverCard => card::document(material, sheet, words),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn kinds_turn_round_and_others_are_refused_with_the_choice() {
        for kind in Kind::ALL {
            assert_eq!(kind.name().parse(), Ok(kind));
        }
        let error = "poem".parse::<Kind>().unwrap_err();
        assert!(error.to_string().contains("there are: driver-card"), "{error}");
    }
}
