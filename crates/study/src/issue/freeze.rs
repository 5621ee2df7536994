//! From a plan to an issued plan, or why not.

use model::date::Date;
use model::haul_cycle::HaulCycle;
use serde_json::Value;
use survey::{HaulBasis, Survey, Unit};

use super::document::{InputFile, inputs_hash, plan_hash};
use super::{FOLDER, Hash, Issued, IssuedPlan, SCHEMA, issued};
use crate::{Opened, Planned};

/// On what terms a plan is issued.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct IssueTerms {
    /// Day of issue.
    pub date: Date,
    /// Number; the next free one of the haul if `None`.
    pub number: Option<u32>,
    /// Fleet numbers of the units that are to drive by it.
    pub units: Vec<String>,
    /// Person who answers for it; the survey's if `None`.
    pub responsible: Option<String>,
    /// First day.
    pub valid_from: Date,
    /// Last day, if there is one.
    pub valid_until: Option<Date>,
    /// Program and version.
    pub program: String,
}

/// Why a plan is not issued.
#[derive(Debug, thiserror::Error)]
pub enum IssueError {
    /// The haul is not among the sound ones.
    #[error("haul '{haul}' is not issued: its survey has errors; mend what `airtide check` shows")]
    HasErrors {
        /// The haul.
        haul: String,
    },
    /// The plan breaks a limit.
    #[error(
        "haul '{haul}' is not issued: its plan breaks a limit; `airtide plan` says which, change \
         the survey and issue again"
    )]
    BreaksALimit {
        /// The haul.
        haul: String,
    },
    /// Nobody answers for it.
    #[error(
        "haul '{haul}' is not issued: nobody answers for it; name the responsible person in \
         survey.toml or with --by"
    )]
    NobodyResponsible {
        /// The haul.
        haul: String,
    },
    /// A fleet number that the register does not have.
    #[error("no unit has the fleet number '{unit}'; {}", known_units(known))]
    UnknownUnit {
        /// The number asked for.
        unit: String,
        /// Numbers there are.
        known: Vec<String>,
    },
    /// A unit that cannot drive by it.
    #[error(
        "haul '{haul}' is not issued to unit {unit}, a {vehicle}: its combination holds {}; units \
         with a place in it: {}", members.join(", "), or_none(fitting)
    )]
    NoPlace {
        /// The haul.
        haul: String,
        /// The unit.
        unit: String,
        /// Its type.
        vehicle: String,
        /// What the combination is made of.
        members: Vec<String>,
        /// Units that would do.
        fitting: Vec<String>,
    },
    /// The plan was worked out for other units than it is given to.
    #[error(
        "haul '{haul}' is not issued: it was planned for {} and would be given to {}; plan it for \
         those who drive by it",
        any_or(planned),
        any_or(assigned)
    )]
    PlannedForOthers {
        /// The haul.
        haul: String,
        /// Units it was planned for.
        planned: Vec<String>,
        /// Units it would be given to.
        assigned: Vec<String>,
    },
    /// The number is used.
    #[error("{file} is there already and is never written over; the next free number is {next}")]
    NumberTaken {
        /// The file.
        file: String,
        /// Free number.
        next: u32,
    },
    /// Number zero.
    #[error("issued plans are numbered from 1")]
    NumberZero,
    /// Days that run against the numbers.
    #[error(
        "number {number} would be dated {date}, and {file} is dated {other}; later numbers have \
         later days"
    )]
    OutOfOrder {
        /// Number wanted.
        number: u32,
        /// Day wanted.
        date: Date,
        /// A plan that stands against it.
        file: String,
        /// Its day.
        other: Date,
    },
    /// It would hold before it was issued.
    #[error("a plan issued on {date} cannot hold from {from}; give a day not before its issue")]
    HoldsBeforeIssue {
        /// Day of issue.
        date: Date,
        /// First day.
        from: Date,
    },
    /// It would end before it begins.
    #[error("the last day {until} lies before the first, {from}")]
    EndsBeforeStart {
        /// First day.
        from: Date,
        /// Last day.
        until: Date,
    },
    /// What it rests on does not hold so long.
    #[error(
        "haul '{haul}' is not issued up to {until}: an approval or permit it rests on begins or \
         ends after {from}; give an earlier last day, and issue another plan for the days after"
    )]
    BasisLapses {
        /// The haul.
        haul: String,
        /// First day.
        from: Date,
        /// Last day.
        until: Date,
    },
}

impl IssueError {
    /// Whether the call was wrong, rather than the survey not ready.
    pub fn is_wrong_call(&self) -> bool {
        matches!(
            self,
            Self::UnknownUnit { .. }
                | Self::NumberTaken { .. }
                | Self::NumberZero
                | Self::OutOfOrder { .. }
                | Self::HoldsBeforeIssue { .. }
                | Self::EndsBeforeStart { .. }
        )
    }
}

fn any_or(units: &[String]) -> String {
    if units.is_empty() { "any unit".to_owned() } else { format!("units {}", units.join(", ")) }
}

fn or_none(names: &[String]) -> String {
    if names.is_empty() { "none".to_owned() } else { names.join(", ") }
}

fn known_units(known: &[String]) -> String {
    if known.is_empty() {
        "the survey has no register of units; write units.toml".to_owned()
    } else {
        format!("the register has: {}", known.join(", "))
    }
}

/// Freezes a plan: the survey is to be opened as of the first day, `frozen` is the document of
/// that plan alone.
///
/// Nothing is written; see [`IssuedPlan::write`].
///
/// # Errors
/// [`IssueError`] if a limit is broken, the survey is not sound, nobody answers for it, a unit
/// cannot drive by it, or number and days do not fit what was issued before.
pub fn issue(
    opened: &Opened,
    planned: &Planned,
    frozen: Value,
    terms: &IssueTerms,
) -> Result<IssuedPlan, IssueError> {
    let haul = &planned.haul.name;
    let has_errors = || IssueError::HasErrors { haul: haul.clone() };
    let survey = opened.survey.as_ref().ok_or_else(has_errors)?;
    let basis = survey.bases.get(haul).ok_or_else(has_errors)?;
    check_days(terms)?;
    let units = assigned(survey, haul, basis, &terms.units)?;
    let surveyed = surveyed(survey, haul, &units).ok_or_else(has_errors)?;
    if planned.planned_for.units != units {
        return Err(IssueError::PlannedForOthers {
            haul: haul.clone(),
            planned: planned.planned_for.units.clone(),
            assigned: units,
        });
    }
    if planned.plan.breaks_a_limit() {
        return Err(IssueError::BreaksALimit { haul: haul.clone() });
    }
    let responsible = terms.responsible.as_ref().unwrap_or(&survey.responsible).trim();
    if responsible.is_empty() {
        return Err(IssueError::NobodyResponsible { haul: haul.clone() });
    }
    check_basis_holds(opened, &surveyed, &units, terms)?;
    let number = number(opened, haul, terms)?;
    let inputs = InputFile::all(&opened.folder, &basis.files);
    let mut plan = IssuedPlan {
        schema: SCHEMA.to_owned(),
        id: id(haul, number),
        number,
        date: terms.date,
        responsible: responsible.to_owned(),
        haul: haul.clone(),
        combination: planned.haul.combination.name.clone(),
        units,
        valid_from: terms.valid_from,
        valid_until: terms.valid_until,
        program: terms.program.clone(),
        inputs_hash: inputs_hash(&inputs),
        inputs,
        values_hash: values_hash(&surveyed),
        plan: frozen,
        plan_hash: Hash::of_bytes(&[]),
    };
    plan.plan_hash = plan_hash(&plan.to_json());
    Ok(plan)
}

/// A haul as the survey has it for the units that are to drive it.
pub(super) fn surveyed(survey: &Survey, haul: &str, units: &[String]) -> Option<HaulCycle> {
    let registered = |number: &String| survey.fleet.iter().find(|unit| unit.number == *number);
    let units: Vec<&Unit> = units.iter().filter_map(registered).collect();
    survey.haul_driven_by(haul, &units)
}

/// Every checked value of a haul, digit by digit, in the form of this version of the program.
pub(super) fn values_hash(haul: &HaulCycle) -> Hash {
    Hash::of_bytes(format!("{haul:?}").as_bytes())
}

fn check_days(terms: &IssueTerms) -> Result<(), IssueError> {
    let IssueTerms { date, valid_from: from, valid_until, .. } = *terms;
    if from < date {
        return Err(IssueError::HoldsBeforeIssue { date, from });
    }
    match valid_until {
        Some(until) if until < from => Err(IssueError::EndsBeforeStart { from, until }),
        _ => Ok(()),
    }
}

/// A unit by its fleet number.
///
/// # Errors
/// [`IssueError::UnknownUnit`] with the numbers there are.
pub fn registered<'a>(survey: &'a Survey, number: &str) -> Result<&'a Unit, IssueError> {
    survey.fleet.iter().find(|unit| unit.number == number).ok_or_else(|| IssueError::UnknownUnit {
        unit: number.to_owned(),
        known: survey.fleet.iter().map(|unit| unit.number.clone()).collect(),
    })
}

fn assigned(
    survey: &Survey,
    haul: &str,
    basis: &HaulBasis,
    wanted: &[String],
) -> Result<Vec<String>, IssueError> {
    let mut units: Vec<String> = Vec::new();
    for number in wanted {
        let unit = registered(survey, number)?;
        if !basis.has_place_for(unit) {
            let fitting = survey.fleet.iter().filter(|unit| basis.has_place_for(unit));
            return Err(IssueError::NoPlace {
                haul: haul.to_owned(),
                unit: number.clone(),
                vehicle: unit.vehicle.clone(),
                members: basis.members.clone(),
                fitting: fitting.map(|unit| unit.number.clone()).collect(),
            });
        }
        if !units.contains(number) {
            units.push(number.clone());
        }
    }
    Ok(units)
}

fn check_basis_holds(
    opened: &Opened,
    surveyed_first: &HaulCycle,
    units: &[String],
    terms: &IssueTerms,
) -> Result<(), IssueError> {
    let Some(until) = terms.valid_until else { return Ok(()) };
    let (last, _) = survey::load(&opened.folder, until);
    let same = last
        .as_ref()
        .and_then(|last| surveyed(last, &surveyed_first.name, units))
        .is_some_and(|last| last == *surveyed_first);
    if same {
        return Ok(());
    }
    let (haul, from) = (surveyed_first.name.clone(), terms.valid_from);
    Err(IssueError::BasisLapses { haul, from, until })
}

/// The number wanted, or one more than the highest there is.
fn number(opened: &Opened, haul: &str, terms: &IssueTerms) -> Result<u32, IssueError> {
    let taken = numbers(opened, haul);
    let next = taken.iter().max().map_or(1, |last| last + 1);
    let number = terms.number.unwrap_or(next);
    if number == 0 {
        return Err(IssueError::NumberZero);
    }
    if taken.contains(&number) {
        return Err(IssueError::NumberTaken { file: path(&id(haul, number)), next });
    }
    let Issued { plans, .. } = issued(&opened.folder);
    let against = plans.iter().find(|other| {
        other.haul == haul
            && ((other.number < number && other.date > terms.date)
                || (other.number > number && other.date < terms.date))
    });
    match against {
        Some(other) => Err(IssueError::OutOfOrder {
            number,
            date: terms.date,
            file: other.file(),
            other: other.date,
        }),
        None => Ok(number),
    }
}

/// Numbers that have a file, readable or not.
fn numbers(opened: &Opened, haul: &str) -> Vec<u32> {
    let start = format!("{FOLDER}/{}-", safe(haul));
    let known = opened.folder.files().map(|(path, _)| path);
    let refused = opened.folder.refused().iter().map(|problem| problem.file.as_str());
    known
        .chain(refused)
        .filter_map(|path| path.strip_prefix(&start)?.strip_suffix(".json")?.parse().ok())
        .collect()
}

fn path(id: &str) -> String {
    format!("{FOLDER}/{id}.json")
}

fn id(haul: &str, number: u32) -> String {
    format!("{}-{number}", safe(haul))
}

/// A name that every file system takes.
fn safe(haul: &str) -> String {
    let keep = |letter: char| letter.is_alphanumeric() || matches!(letter, '-' | '_');
    haul.chars().map(|letter| if keep(letter) { letter } else { '-' }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plan_is_named_by_haul_and_number_whatever_the_haul_is_called() {
        assert_eq!(id("rock", 12), "rock-12");
        assert_eq!(id("night: rock/2", 1), "night--rock-2-1");
        assert_eq!(id("..", 1), "---1");
    }
}
