//! Approval requests: one for each tire model that a planned haul runs without its maker's word.

use std::collections::BTreeMap;
use std::sync::Arc;

use model::haul_cycle::HaulCycle;
use model::tire::Tire;
use plan::Approval;
use plan::request::{RequestLine, lines};
use survey::Survey;

use crate::planning::Planned;

/// What one haul asks of a tire.
#[derive(Debug, Clone)]
pub struct HaulLines {
    /// The haul as planned.
    pub haul: HaulCycle,
    /// Its loads and speeds.
    pub lines: Vec<RequestLine>,
}

/// What to ask the maker of a tire model.
#[derive(Debug, Clone)]
pub struct ApprovalRequest {
    /// The tire.
    pub tire: Arc<Tire>,
    /// Its rim as stamped; `None` where the survey does not say.
    pub rim: Option<String>,
    /// What its maker answered so far: the documents in force, else the latest that lapsed.
    pub document: Option<String>,
    /// Whether that still counts.
    pub document_counts: bool,
    /// Every haul that runs the tire.
    pub hauls: Vec<HaulLines>,
}

impl ApprovalRequest {
    /// Lines that nobody stands behind yet, or where no pressure is possible.
    pub fn open(&self) -> usize {
        let lines = self.hauls.iter().flat_map(|haul| &haul.lines);
        lines.filter(|line| is_open(line)).count()
    }
}

/// Whether the maker has something to say to a line.
fn is_open(line: &RequestLine) -> bool {
    matches!(line.approval, Approval::NeedsApproval | Approval::NotPossible)
}

/// A request for each tire model with an open line, in order of name, over all planned hauls.
pub fn approval_requests(survey: &Survey, planned: &[Planned]) -> Vec<ApprovalRequest> {
    let mut tires: BTreeMap<&str, &Arc<Tire>> = BTreeMap::new();
    for one in planned {
        for group in &one.haul.combination.groups {
            let fitted = std::iter::once(&group.tire).chain(&group.also_fitted);
            tires.extend(fitted.map(|tire| (tire.name.as_str(), tire)));
        }
    }
    let of_tire = |tire: &Arc<Tire>| ApprovalRequest {
        tire: Arc::clone(tire),
        rim: survey.rims.get(&tire.name).cloned(),
        document: tire.maker_table.as_ref().map(|table| table.document.clone()),
        document_counts: tire.maker_table.as_ref().is_some_and(|table| table.approved),
        hauls: planned
            .iter()
            .map(|one| HaulLines {
                haul: one.haul.clone(),
                lines: lines(&one.haul, &one.plan, tire),
            })
            .filter(|haul| !haul.lines.is_empty())
            .collect(),
    };
    tires.into_values().map(of_tire).filter(|request| request.open() > 0).collect()
}
