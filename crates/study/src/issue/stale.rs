//! Which issued plans a survey has left behind, and by which files.

use std::collections::{BTreeMap, BTreeSet};

use model::date::Date;
use survey::{HaulBasis, Survey};

use super::document::InputFile;
use super::freeze::{surveyed, values_hash};
use super::{Hash, IssuedPlan};
use crate::Opened;

/// What happened to a file since a plan was issued.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// Its values, or bytes that cannot be compared by value.
    Changed,
    /// Only its comments, spacing or order of keys.
    CommentsOnly,
    /// The haul uses it now and did not then.
    Added,
    /// It is gone.
    Removed,
}

/// A file that is not as it was.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FileChange {
    /// Path in the survey.
    pub path: String,
    /// What happened.
    pub change: Change,
}

/// What changed files mean for a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StaleCause {
    /// Values of its haul changed.
    Values,
    /// The haul cannot be read any more, so nobody knows.
    CannotTell,
    /// No file changed; an approval or permit began or ended.
    BasisLapsed,
}

/// How an issued plan stands to the survey of today.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Staleness {
    /// Files that are not as they were, by path, even where nothing the haul uses changed.
    pub changes: Vec<FileChange>,
    /// Why the plan is stale; `None` if it is not.
    pub cause: Option<StaleCause>,
}

impl Staleness {
    /// Whether files changed in nothing but comments and spacing.
    pub fn only_comments(&self) -> bool {
        !self.changes.is_empty()
            && self.changes.iter().all(|file| file.change == Change::CommentsOnly)
    }
}

/// How each plan stands to a survey, as of the day it was opened for.
pub fn stale(opened: &Opened, plans: &[IssuedPlan]) -> Vec<Staleness> {
    let mut first_days: BTreeMap<Date, Option<Survey>> = BTreeMap::new();
    plans.iter().map(|plan| of_plan(opened, plan, &mut first_days)).collect()
}

fn of_plan(
    opened: &Opened,
    plan: &IssuedPlan,
    first_days: &mut BTreeMap<Date, Option<Survey>>,
) -> Staleness {
    let survey = opened.survey.as_ref();
    let now = survey.and_then(|survey| surveyed(survey, &plan.haul, &plan.units));
    let changes = changes(opened, plan, survey.and_then(|survey| survey.bases.get(&plan.haul)));
    let touched = changes.iter().any(|file| file.change != Change::CommentsOnly);
    let cause = match now {
        None if touched => Some(StaleCause::CannotTell),
        None => None,
        Some(now) if touched => {
            (values_hash(&now) != plan.values_hash).then_some(StaleCause::Values)
        }
        Some(_) if plan.valid_from >= opened.day => None,
        Some(now) => {
            let first = first_days
                .entry(plan.valid_from)
                .or_insert_with_key(|day| survey::load(&opened.folder, *day).0);
            let then = first.as_ref().and_then(|first| surveyed(first, &plan.haul, &plan.units));
            (then != Some(now)).then_some(StaleCause::BasisLapsed)
        }
    };
    Staleness { changes, cause }
}

fn changes(opened: &Opened, plan: &IssuedPlan, basis: Option<&HaulBasis>) -> Vec<FileChange> {
    let now = |input: &InputFile| {
        let bytes = opened.folder.bytes(&input.path);
        let change = match bytes {
            None => Change::Removed,
            Some(bytes) if Hash::of_bytes(bytes) == input.hash => return None,
            Some(bytes) => {
                let now = InputFile::of(&input.path, bytes);
                match (&now.values_hash, &input.values_hash) {
                    (Some(now), Some(then)) if now == then => Change::CommentsOnly,
                    _ => Change::Changed,
                }
            }
        };
        Some(FileChange { path: input.path.clone(), change })
    };
    let known: BTreeSet<&String> = plan.inputs.iter().map(|input| &input.path).collect();
    let added = basis
        .into_iter()
        .flat_map(|basis| &basis.files)
        .filter(|path| !known.contains(path) && opened.folder.bytes(path).is_some())
        .map(|path| FileChange { path: path.clone(), change: Change::Added });
    let mut changes: Vec<FileChange> = plan.inputs.iter().filter_map(now).chain(added).collect();
    changes.sort_by(|one, other| one.path.cmp(&other.path));
    changes
}
