//! Approvals: which count today, and the maker's table they make for a tire.

use model::date::Date;
use model::tire::{Lapse, MakerRow, MakerTable, Recommended, Tire};
use quantity::{Length, Mass, Speed, Temperature, Time};

use super::date::period;
use super::tire::{fitment, row};
use super::{Catalog, Loaded, refer};
use crate::approval::{Approval, Asked, AskedLoad};
use crate::document::Document;
use crate::file::{ApprovalFile, RecommendedWord, TireFile};
use crate::problem::{ApprovalFault, DateFault, Problem, ProblemKind, Reference};

/// An approval with where it was written.
#[derive(Debug, Clone)]
pub(crate) struct Written {
    /// The approval.
    pub approval: Approval,
    /// The tire it was given for, as molded.
    given_for: String,
    /// Its file.
    pub document: Document,
}

/// The approval of a file; `None` if its tire is unknown, or its days cannot be.
pub(crate) fn approval(
    file: &Loaded<ApprovalFile>,
    tires: &Catalog<Loaded<TireFile>>,
    today: Date,
    problems: &mut Vec<Problem>,
) -> Option<Written> {
    let (data, document) = (&file.data, &file.document);
    let tire = refer(tires, &data.tire, Reference::Tire, document, "/tire", problems);
    let days = period(document, ("/date", &data.date), data.expires.as_ref(), problems);
    let (tire, (day, expires)) = (tire?, days?);
    if day > today {
        let fault = DateFault::InFuture { day, today };
        problems.push(file.problem("/date", fault.into()));
        return None;
    }
    let lapsed = match expires.filter(|last| *last < today) {
        Some(on) => Some(Lapse::Expired { on }),
        None => changed(file, &tire.data, problems),
    };
    let approval = Approval {
        file: document.path.clone(),
        tire: data.tire.clone(),
        number: data.number.trim().to_owned(),
        answered_by: data.answered_by.clone(),
        date: day,
        expires,
        recommended: match data.recommended_pressure {
            RecommendedWord::Row => Recommended::Row,
            RecommendedWord::Table => Recommended::Table,
        },
        rim: data.given_for.rim.clone(),
        asked: asked(data),
        rows: data.rows.iter().map(row).collect(),
        lapsed,
    };
    let given = &data.given_for;
    let given_for = format!("{} {}", given.designation, given.service_description);
    Some(Written { approval, given_for, document: document.clone() })
}

fn asked(data: &ApprovalFile) -> Asked {
    let loads = data.asked.loads.iter().map(|asked| AskedLoad {
        fitment: fitment(asked.fitment),
        load: Mass::from_kg(asked.load_kg),
        speed: Speed::from_kmh(asked.speed_kmh),
        distance: asked.distance_km.map(Length::from_km),
    });
    Asked {
        warmest: Temperature::from_celsius(data.asked.warmest_c),
        distance_per_cycle: data.asked.distance_per_cycle_km.map(Length::from_km),
        hold: data.asked.hold_min.map(Time::from_min),
        loads: loads.collect(),
    }
}

/// Sidewall and rim texts that differ only in blanks and case are the same.
fn same(first: &str, second: &str) -> bool {
    let folded = |text: &str| -> String {
        text.chars().filter(|c| !c.is_whitespace()).flat_map(char::to_uppercase).collect()
    };
    folded(first) == folded(second)
}

/// Whether the tire or the rim fitted now is another than the approval was given for.
fn changed(
    file: &Loaded<ApprovalFile>,
    tire: &TireFile,
    problems: &mut Vec<Problem>,
) -> Option<Lapse> {
    let given = &file.data.given_for;
    let alike = same(&given.designation, &tire.designation)
        && same(&given.service_description, &tire.service_description);
    if !alike {
        return Some(Lapse::TireChanged);
    }
    let Some(fitted) = &tire.rim.size else {
        let fault = ApprovalFault::RimNotSaid { given: given.rim.clone() };
        problems.push(file.problem("/given_for/rim", fault.into()));
        return None;
    };
    (!same(&given.rim, fitted)).then_some(Lapse::RimChanged)
}

/// A row of a tire's approved documents, with where it stands.
struct Placed<'a> {
    row: &'a MakerRow,
    document: &'a Document,
    pointer: String,
}

/// Puts the approvals of a tire into its maker's table, and tells of those that do not count.
///
/// Rows of all approvals in force count together, with those that the tire's own file has
/// approved. Without any in force, the latest that lapsed stays to advise.
pub(crate) fn approve(
    tire: &mut Tire,
    file: &Loaded<TireFile>,
    written: &[&Written],
    problems: &mut Vec<Problem>,
) {
    let (mut in_force, lapsed): (Vec<&Written>, Vec<&Written>) =
        written.iter().partition(|one| one.approval.lapsed.is_none());
    in_force.sort_by_key(|one| one.approval.date);
    let own = tire.maker_table.take();
    let own_counts = own.as_ref().is_some_and(|table| table.approved);
    if in_force.is_empty() {
        problems.extend(lapsed.iter().filter_map(|one| told(one, &file.data)));
        let latest = lapsed.iter().max_by_key(|one| one.approval.date);
        tire.maker_table = match latest.filter(|_| !own_counts) {
            Some(latest) => Some(MakerTable {
                document: latest.approval.document(),
                approved: false,
                lapsed: latest.approval.lapsed,
                recommended: latest.approval.recommended,
                rows: latest.approval.rows.clone(),
            }),
            None => own,
        };
        return;
    }
    let own = own.filter(|table| table.approved);
    let own_rows =
        own.iter().flat_map(|table| table.rows.iter().enumerate()).map(|(index, row)| {
            let pointer = format!("/maker_rows/{index}/pressure_kpa");
            Placed { row, document: &file.document, pointer }
        });
    let approved = in_force.iter().flat_map(|one| {
        one.approval.rows.iter().enumerate().map(|(index, row)| {
            let pointer = format!("/rows/{index}/pressure_kpa");
            Placed { row, document: &one.document, pointer }
        })
    });
    let placed: Vec<Placed<'_>> = own_rows.chain(approved).collect();
    contradictions(&placed, problems);
    let documents = own.iter().map(|table| table.document.clone());
    let documents = documents.chain(in_force.iter().map(|one| one.approval.document()));
    tire.maker_table = Some(MakerTable {
        document: documents.collect::<Vec<_>>().join("; "),
        approved: true,
        lapsed: None,
        recommended: strictest(&in_force),
        rows: placed.iter().map(|placed| placed.row.clone()).collect(),
    });
}

/// Where one of several answers counts the ordinary table, all are judged by it.
fn strictest(in_force: &[&Written]) -> Recommended {
    let by_table = in_force.iter().any(|one| one.approval.recommended == Recommended::Table);
    if by_table { Recommended::Table } else { Recommended::Row }
}

/// The problem that an approval does not count.
fn told(written: &Written, tire: &TireFile) -> Option<Problem> {
    let given = |key: &str| format!("/given_for/{key}");
    let (pointer, fault) = match written.approval.lapsed? {
        Lapse::Expired { on } => ("/expires".to_owned(), ApprovalFault::Expired { on }),
        Lapse::TireChanged => {
            let fitted = format!("{} {}", tire.designation, tire.service_description);
            let fault = ApprovalFault::TireChanged { given: written.given_for.clone(), fitted };
            (given("designation"), fault)
        }
        Lapse::RimChanged => {
            let fitted = tire.rim.size.clone().unwrap_or_default();
            (
                given("rim"),
                ApprovalFault::RimChanged { given: written.approval.rim.clone(), fitted },
            )
        }
    };
    Some(written.document.problem(&pointer, fault.into()))
}

/// Rows for the same case that ask for different pressures.
fn contradictions(placed: &[Placed<'_>], problems: &mut Vec<Problem>) {
    const SAME_KG: f64 = 0.5;
    const SAME_KMH: f64 = 0.05;
    const SAME_KPA: f64 = 0.5;
    for (index, later) in placed.iter().enumerate() {
        let earlier = placed[..index].iter().find(|earlier| {
            earlier.row.fitment == later.row.fitment
                && (earlier.row.load - later.row.load).abs().as_kg() < SAME_KG
                && (earlier.row.speed - later.row.speed).abs().as_kmh() < SAME_KMH
                && (earlier.row.pressure - later.row.pressure).abs().as_kpa() > SAME_KPA
        });
        if let Some(earlier) = earlier {
            let fault = ApprovalFault::Contradicts {
                file: earlier.document.path.clone(),
                line: earlier.document.line(&earlier.pointer),
                here: later.row.pressure,
                there: earlier.row.pressure,
            };
            problems.push(later.document.problem(&later.pointer, fault.into()));
        }
    }
}

impl From<ApprovalFault> for ProblemKind {
    fn from(fault: ApprovalFault) -> Self {
        Self::Approval(fault)
    }
}
