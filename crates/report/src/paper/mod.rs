//! The documents a specialist hands over, one module each.
//!
//! A document is made from finished results alone ([`Material`]); where a result it needs is
//! not there, it is refused by name, never left out in silence.

mod approval_request;
mod authority;
mod card;
mod commissioning;
mod driver;
mod lesson;
mod mechanic;
mod plan_report;
mod recovery;
mod service;
mod setup_sheet;
mod signs;
mod stamp;

#[cfg(test)]
mod sample;
#[cfg(test)]
mod tests;

pub use view::PaperIssue as Issue;
use view::{NowTableDocument, PaperMaterial, PlanView, RequestsDocument, RouteView, SetupView};

use crate::Words;
use crate::document::{Document, Sheet};

/// A kind of document.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Two sides for the cab: ladder, change points, gauge, what to do.
    DriverCard,
    /// Which board stands where, with which words.
    SignList,
    /// Everything to store in the controller and to look at on the truck, for the mechanic.
    SetupSheet,
    /// Acceptance tests with their limits, and what was measured.
    CommissioningRecord,
    /// What to inspect how often.
    ServiceList,
    /// What to do when stuck, where a tire maker approved it.
    RecoveryProcedure,
    /// Rules, this fleet's own plan, and a short test with its answers apart.
    DriverLesson,
    /// What to ask the tire makers, with room for their answers.
    ApprovalRequest,
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
    /// What is fitted, with changes in the yard for a commissioning record.
    pub setup: &'a SetupView,
    /// What to ask the tire makers; `None` where no approval request is made.
    pub requests: Option<&'a RequestsDocument>,
}

impl<'a> Material<'a> {
    /// Material as it was gathered.
    pub fn of(gathered: &'a PaperMaterial) -> Self {
        Self {
            plan: &gathered.plan,
            issue: gathered.issue.as_ref(),
            responsible: &gathered.responsible,
            route: &gathered.route,
            gauge: &gathered.gauge,
            setup: &gathered.setup,
            requests: gathered.requests.as_ref(),
        }
    }
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
    /// Nothing to ask a tire maker.
    #[error(
        "haul '{haul}' has nothing to ask: the maker or the standard stands behind every pressure \
         it drives"
    )]
    NothingToAsk {
        /// Haul.
        haul: String,
    },
    /// No recovery procedure can be printed.
    #[error(
        "haul '{haul}' has no recovery procedure: no tire maker approved rung '{rung}' for the \
         driven tires. Missing: {}. Ask with an approval request, put the answer into approvals/, \
         and print again; until then the driver waits for help",
        missing.join("; ")
    )]
    RecoveryNotApproved {
        /// Haul.
        haul: String,
        /// The lowest rung.
        rung: String,
        /// What nobody approved, cell by cell.
        missing: Vec<String>,
    },
}

fn kinds() -> String {
    Kind::ALL.map(Kind::name).join(", ")
}

impl Kind {
    /// Every kind, in the order of the work.
    pub const ALL: [Self; 10] = [
        Self::SetupSheet,
        Self::CommissioningRecord,
        Self::DriverCard,
        Self::SignList,
        Self::DriverLesson,
        Self::RecoveryProcedure,
        Self::ServiceList,
        Self::ApprovalRequest,
        Self::PlanReport,
        Self::AuthorityReport,
    ];

    /// The name on the command line.
    pub const fn name(self) -> &'static str {
        match self {
            Self::DriverCard => "driver-card",
            Self::SignList => "sign-list",
            Self::SetupSheet => "setup-sheet",
            Self::CommissioningRecord => "commissioning-record",
            Self::ServiceList => "service-list",
            Self::RecoveryProcedure => "recovery-procedure",
            Self::ApprovalRequest => "approval-request",
            Self::DriverLesson => "driver-lesson",
            Self::PlanReport => "plan-report",
            Self::AuthorityReport => "authority-report",
        }
    }

    /// Whether it is for the hand rather than the desk.
    pub const fn is_card(self) -> bool {
        matches!(self, Self::DriverCard)
    }

    /// Refuses what lacks the results that the document is made from.
    fn check(self, material: &Material<'_>) -> Result<(), PaperError> {
        let plan = material.plan;
        let haul = || plan.haul.clone();
        if plan.ladder.is_empty() {
            return Err(PaperError::NoLadder { haul: haul(), kind: self.name() });
        }
        match self {
            Self::SignList if plan.change_points.is_empty() => {
                Err(PaperError::NoChangePoints { haul: haul(), kind: self.name() })
            }
            Self::ApprovalRequest if approval_request::of(material).is_none() => {
                Err(PaperError::NothingToAsk { haul: haul() })
            }
            Self::RecoveryProcedure => recovery::check(material),
            _ => Ok(()),
        }
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
    kind.check(material)?;
    let mut document = stamp::begin(kind, material, sheet, words);
    let fill = match kind {
        Kind::DriverCard => card::fill,
        Kind::SignList => signs::fill,
        Kind::SetupSheet => setup_sheet::fill,
        Kind::CommissioningRecord => commissioning::fill,
        Kind::ServiceList => service::fill,
        Kind::RecoveryProcedure => recovery::fill,
        Kind::DriverLesson => lesson::fill,
        Kind::ApprovalRequest => approval_request::fill,
        Kind::PlanReport => plan_report::fill,
        Kind::AuthorityReport => authority::fill,
    };
    fill(&mut document, material, words);
    Ok(document)
}
