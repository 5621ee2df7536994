//! What is wrong with issued plans, as a problem of the survey they lie in.

use std::collections::BTreeSet;
use std::fmt;

use model::date::Date;
use survey::Severity;

use super::force::{days, is_live};
use super::{Change, FileChange, Hash, InForce, Issued, StaleCause, Staleness, in_force, stale};
use crate::Opened;

/// One problem with one issued plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct IssuedProblem {
    /// File, relative to the survey.
    pub file: String,
    /// What is wrong.
    pub fault: IssuedFault,
}

/// What is wrong with an issued plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum IssuedFault {
    /// No issued plan can be read from it.
    NotReadable {
        /// Line, from 1, where known.
        line: Option<usize>,
        /// What the reader says.
        message: String,
    },
    /// Made by a program with other documents.
    OtherSchema {
        /// As written.
        schema: String,
    },
    /// It is not what was issued.
    Edited {
        /// The hash it states.
        stored: Hash,
        /// The hash it has.
        found: Hash,
    },
    /// It has another name than it was issued under.
    Renamed {
        /// The name it was issued under.
        id: String,
    },
    /// Another haul's plan of the same day claims the same unit.
    TwoInForce {
        /// The unit.
        unit: String,
        /// The other file.
        other: String,
        /// First day of the two.
        from: Date,
    },
    /// The survey moved on.
    Stale {
        /// Why.
        cause: StaleCause,
        /// By which files.
        changes: Vec<FileChange>,
    },
    /// Files changed in nothing the plan rests on.
    Touched(Staleness),
}

impl IssuedFault {
    /// Whether the plan cannot be used.
    pub fn severity(&self) -> Severity {
        match self {
            Self::Stale { .. } | Self::Touched(_) => Severity::Warning,
            _ => Severity::Error,
        }
    }

    /// What is wrong, in one sentence without a full stop.
    pub fn message(&self) -> String {
        match self {
            Self::NotReadable { message, .. } => format!("no issued plan can be read: {message}"),
            Self::OtherSchema { schema } if schema.is_empty() => {
                "this is no issued plan: it has no schema".to_owned()
            }
            Self::OtherSchema { schema } => {
                format!("the schema '{schema}' is not one this version reads")
            }
            Self::Edited { stored, found } => format!(
                "this issued plan was edited: it states {stored} and has {found}, so it counts \
                 for no unit"
            ),
            Self::Renamed { id } => format!("this plan was issued as '{id}'"),
            Self::TwoInForce { unit, other, from } => {
                format!("from {from} unit {unit} has two plans in force: this one and {other}")
            }
            Self::Stale { cause: StaleCause::BasisLapsed, .. } => {
                "this issued plan is stale: an approval or permit it rests on began or ended"
                    .to_owned()
            }
            Self::Stale { cause: StaleCause::CannotTell, changes } => format!(
                "this issued plan may be stale: its haul has errors now, and {}",
                listed(changes)
            ),
            Self::Stale { cause: StaleCause::Values, changes } => {
                format!("this issued plan is stale: {}", listed(changes))
            }
            Self::Touched(staleness) if staleness.only_comments() => format!(
                "files changed since it was issued, only comments or spacing: {}",
                paths(&staleness.changes)
            ),
            Self::Touched(staleness) => format!(
                "files changed since it was issued, in no value this haul uses: {}",
                listed(&staleness.changes)
            ),
        }
    }

    /// What to do about it, where there is something to say.
    pub fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NotReadable { .. } | Self::Edited { .. } => {
                "restore the file from a copy of the survey, or remove it and issue the plan again"
            }
            Self::OtherSchema { .. } => "read it with the version that wrote it, or issue again",
            Self::Renamed { id } => return Some(format!("name the file plans/{id}.json again")),
            Self::TwoInForce { .. } => {
                "issue the plan it is to drive by again, on a later day; the last one counts"
            }
            Self::Stale { cause: StaleCause::CannotTell, .. } => {
                "mend the errors, then check again"
            }
            Self::Stale { .. } => "plan the haul again, and issue it if the plan is still right",
            Self::Touched(_) => return None,
        };
        Some(hint.to_owned())
    }
}

impl IssuedProblem {
    /// Whether the plan cannot be used.
    pub fn severity(&self) -> Severity {
        self.fault.severity()
    }

    /// Line of the file, from 1, where one is meant.
    pub fn line(&self) -> Option<usize> {
        match self.fault {
            IssuedFault::NotReadable { line, .. } => line,
            _ => None,
        }
    }
}

/// In one line, as the problems of a survey.
impl fmt::Display for IssuedProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.file)?;
        if let Some(line) = self.line() {
            write!(f, ":{line}")?;
        }
        let warning = if self.severity() == Severity::Warning { "warning: " } else { "" };
        write!(f, ": {warning}{}", self.fault.message())?;
        match self.fault.hint() {
            Some(hint) => write!(f, " — {hint}"),
            None => Ok(()),
        }
    }
}

fn listed(changes: &[FileChange]) -> String {
    let told = changes.iter().map(|file| {
        let what = match file.change {
            Change::Changed => "changed",
            Change::CommentsOnly => "changed in comments or spacing only",
            Change::Added => "added",
            Change::Removed => "removed",
        };
        format!("{} {what}", file.path)
    });
    told.collect::<Vec<_>>().join(", ")
}

fn paths(changes: &[FileChange]) -> String {
    changes.iter().map(|file| file.path.as_str()).collect::<Vec<_>>().join(", ")
}

/// Everything wrong with the issued plans of a survey, as of the day it was opened for: broken
/// files, units with two plans, and plans still to be driven by that the survey has left behind.
pub fn issued_problems(opened: &Opened, issued: &Issued) -> Vec<IssuedProblem> {
    let mut found = issued.problems.clone();
    found.extend(two_in_force(opened, issued));
    for (plan, staleness) in issued.plans.iter().zip(stale(opened, &issued.plans)) {
        if !is_live(plan, &issued.plans, opened.day) {
            continue;
        }
        let fault = match staleness.cause {
            Some(cause) => IssuedFault::Stale { cause, changes: staleness.changes },
            None if staleness.changes.is_empty() => continue,
            None => IssuedFault::Touched(staleness),
        };
        found.push(IssuedProblem { file: plan.file(), fault });
    }
    found.sort_by(|one, other| one.file.cmp(&other.file));
    found
}

fn two_in_force(opened: &Opened, issued: &Issued) -> Vec<IssuedProblem> {
    let plans = &issued.plans;
    let units: BTreeSet<&String> = plans.iter().flat_map(|plan| &plan.units).collect();
    let mut told: BTreeSet<(&String, &str, &str)> = BTreeSet::new();
    let mut found = Vec::new();
    for unit in units {
        for day in days(plans, unit, opened.day) {
            if let InForce::Two(one, other) = in_force(plans, unit, day)
                && told.insert((unit, &one.id, &other.id))
            {
                let (unit, other) = (unit.clone(), other.file());
                let fault = IssuedFault::TwoInForce { unit, other, from: day };
                found.push(IssuedProblem { file: one.file(), fault });
            }
        }
    }
    found
}
