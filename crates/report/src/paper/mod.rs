//! The documents a specialist hands over, one module each.
//!
//! A document is made from finished results alone ([`Material`]); where a result it needs is
//! not there, it is refused by name, never left out in silence.

mod authority;
mod card;
mod driver;
mod lesson;
mod plan_report;
mod signs;
mod stamp;

use view::{NowTableDocument, PlanView, RouteView};

use crate::Words;
use crate::document::{Document, Sheet};

/// A kind of document.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Two sides for the cab: ladder, change points, gauge, what to do.
    DriverCard,
    /// Which board stands where, with which words.
    SignList,
    /// Rules, this fleet's own plan, and a short test with its answers apart.
    DriverLesson,
    /// Every number with what decided it, for whoever answers for the haul.
    PlanReport,
    /// Roads, weights, windows, speeds and evidence, for the road authority.
    AuthorityReport,
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
    /// No change point to put a board at.
    #[error("haul '{haul}' has no change points; a {kind} needs some")]
    NoChangePoints {
        /// Haul.
        haul: String,
        /// Kind of document.
        kind: &'static str,
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
    pub const ALL: [Self; 5] = [
        Self::DriverCard,
        Self::SignList,
        Self::DriverLesson,
        Self::PlanReport,
        Self::AuthorityReport,
    ];

    /// The name on the command line.
    pub const fn name(self) -> &'static str {
        match self {
            Self::DriverCard => "driver-card",
            Self::SignList => "sign-list",
            Self::DriverLesson => "driver-lesson",
            Self::PlanReport => "plan-report",
            Self::AuthorityReport => "authority-report",
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
        Kind::SignList => signs::document(material, sheet, words),
        Kind::DriverLesson => lesson::document(material, sheet, words),
        Kind::PlanReport => plan_report::document(material, sheet, words),
        Kind::AuthorityReport => authority::document(material, sheet, words),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Block;
    use language::{Format, Texts, UnitProfile};

    #[test]
    fn every_document_is_made_in_every_language_with_every_word_and_caution() {
        let (plan, route, gauge) = card::tests::made();
        let material = Material {
            plan: &plan,
            issue: None,
            responsible: "desk",
            route: &route,
            gauge: &gauge,
        };
        for language in language::OFFERED {
            let texts = Texts::new(language).unwrap();
            let format = Format::new(UnitProfile::Us, language).unwrap();
            let words = Words { texts: &texts, format: &format };
            for kind in Kind::ALL {
                let made = document(kind, &material, Sheet::A4, words).unwrap();
                let all = made.texts().join("\n");
                let prefixes = [
                    "paper",
                    "card",
                    "signs",
                    "lesson",
                    "planreport",
                    "authority",
                    "plan",
                    "limit",
                ];
                for prefix in prefixes {
                    assert!(!all.contains(&format!("[{prefix}-")), "{language} {kind:?}: {all}");
                }
                assert!(all.contains(&texts.get("paper-draft", &[])));
                assert!(all.contains(&texts.get("caution-law-decides", &[])), "{kind:?}");
                for block in &made.blocks {
                    if let Block::Table(table) = block {
                        assert!(
                            table.rows.iter().all(|row| row.cells.len() == table.columns.len())
                        );
                    }
                }
            }
        }
    }

    #[test]
    fn a_lesson_keeps_its_answers_on_a_page_of_their_own_and_asks_no_trick() {
        let (plan, route, gauge) = card::tests::made();
        let material = Material {
            plan: &plan,
            issue: None,
            responsible: "desk",
            route: &route,
            gauge: &gauge,
        };
        let texts = Texts::new("en").unwrap();
        let format = Format::new(UnitProfile::Si, "en").unwrap();
        let words = Words { texts: &texts, format: &format };
        let lesson = document(Kind::DriverLesson, &material, Sheet::A4, words).unwrap();
        let pages: Vec<&[Block]> =
            lesson.blocks.split(|block| *block == Block::PageBreak).collect();
        let [.., test, answers] = &pages[..] else { panic!("no page of answers") };
        let Some(Block::Table(right)) = answers.iter().find(|b| matches!(b, Block::Table(_)))
        else {
            panic!("no answers")
        };
        let asked: Vec<&Vec<String>> = test
            .iter()
            .filter_map(|block| if let Block::Ticks { lines } = block { Some(lines) } else { None })
            .collect();
        assert!(asked.len() >= 6 && asked.len() == right.rows.len());
        for (choices, row) in asked.iter().zip(&right.rows) {
            assert_eq!(choices.iter().filter(|choice| **choice == row.cells[2].text).count(), 1);
            assert!(choices.len() > 1);
        }
    }

    #[test]
    fn kinds_turn_round_and_others_are_refused_with_the_choice() {
        for kind in Kind::ALL {
            assert_eq!(kind.name().parse(), Ok(kind));
        }
        let error = "poem".parse::<Kind>().unwrap_err();
        assert!(error.to_string().contains("there are: driver-card"), "{error}");
    }
}
