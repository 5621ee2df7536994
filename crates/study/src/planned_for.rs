//! Which units a plan is made for, and what was measured on them.

use model::date::Date;
use survey::{Measured, Survey, Unit};

use crate::road::NamedError;

/// Whom a plan is made for.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PlannedFor {
    /// Fleet numbers; empty where it is made for the types, whichever units drive.
    pub units: Vec<String>,
    /// Measured values that the plan counts, and those it does not though they make changes slower.
    pub measured: Vec<MeasuredOn>,
}

/// A value measured on a unit.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasuredOn {
    /// Fleet number.
    pub unit: String,
    /// What was measured.
    pub measured: Measured,
    /// Measured value over the type's.
    pub ratio: f64,
    /// Day of the measurement.
    pub date: Date,
    /// Whether the plan counts it; it does not where it is made for the types.
    pub counted: bool,
}

impl PlannedFor {
    /// For a haul of a survey, as it stands or as [`driven_by`] narrowed it.
    pub(crate) fn of(survey: &Survey, haul: &str) -> Self {
        let named = |unit: &Unit| survey.driven_by.contains(&unit.number);
        let is_member = |unit: &Unit| {
            survey.bases.get(haul).is_some_and(|basis| basis.members.contains(&unit.number))
        };
        // Of units that are not to drive, nothing need be known.
        let any_may_drive = survey.driven_by.is_empty();
        let measured = survey.measured_in(haul).into_iter().filter_map(|(unit, value)| {
            let counted = named(unit) || is_member(unit);
            (counted || (any_may_drive && value.is_slower())).then(|| MeasuredOn {
                unit: unit.number.clone(),
                measured: value.measured.clone(),
                ratio: value.ratio,
                date: value.date,
                counted,
            })
        });
        let measured = measured.collect();
        Self { units: survey.driven_by.clone(), measured }
    }
}

/// The survey as units drive it, by their fleet numbers: hauls in which all of them have a place.
///
/// Without numbers it is the survey as it stands.
///
/// # Errors
/// [`NamedError`] for a number the register does not have, and units that run on no haul together.
pub fn driven_by(survey: &Survey, numbers: &[String]) -> Result<Survey, NamedError> {
    if numbers.is_empty() {
        return Ok(survey.clone());
    }
    let mut units: Vec<&Unit> = Vec::new();
    for number in numbers {
        let unit = registered(survey, number)?;
        if !units.iter().any(|known| known.number == unit.number) {
            units.push(unit);
        }
    }
    let driven = survey.driven_by(&units);
    // Without a sound haul it is the survey that stands in the way, not the units.
    if driven.hauls.is_empty() && !survey.hauls.is_empty() {
        let runs = |unit: &&Unit| survey.bases.values().any(|basis| basis.has_place_for(unit));
        return Err(NamedError::InNoCombination {
            units: units.iter().map(|unit| (unit.number.clone(), unit.vehicle.clone())).collect(),
            known: numbers_of(survey.fleet.iter().filter(runs)),
        });
    }
    Ok(driven)
}

/// Units of the register that have a place in the combination of a haul.
///
/// With `assigned` units, those and the trailers that any truck may pull.
pub fn units_of<'a>(survey: &'a Survey, haul: &str, assigned: &[String]) -> Vec<&'a Unit> {
    let basis = survey.bases.get(haul);
    let has_place = |unit: &&Unit| basis.is_some_and(|basis| basis.has_place_for(unit));
    let drives = |unit: &&Unit| assigned.is_empty() || unit.pool || assigned.contains(&unit.number);
    survey.fleet.iter().filter(has_place).filter(drives).collect()
}

fn registered<'a>(survey: &'a Survey, wanted: &str) -> Result<&'a Unit, NamedError> {
    if survey.fleet.is_empty() {
        let combinations = survey.hauls.iter().map(|haul| haul.combination.name.clone());
        let mut known: Vec<String> = combinations.collect();
        known.dedup();
        return Err(NamedError::NoRegister { wanted: wanted.to_owned(), known });
    }
    survey.fleet.iter().find(|unit| unit.number == wanted).ok_or_else(|| NamedError::NoSuchUnit {
        wanted: wanted.to_owned(),
        known: numbers_of(survey.fleet.iter()),
    })
}

fn numbers_of<'a>(units: impl Iterator<Item = &'a Unit>) -> Vec<String> {
    units.map(|unit| unit.number.clone()).collect()
}
