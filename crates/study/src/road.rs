//! Which haul a call from the road is about: by its name, or by its combination.

use model::haul_cycle::HaulCycle;
use plan::Detail;
use survey::Survey;

use crate::planning::{PlanningError, plan_hauls};

/// What the caller named.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Named<'a> {
    /// Name of a combination.
    pub combination: Option<&'a str>,
    /// Name of a haul.
    pub haul: Option<&'a str>,
}

/// Why no haul can be chosen.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NamedError {
    /// A register without units.
    #[error(
        "the survey has no register of units, so unit '{wanted}' is not known; give --combination: {}",
        known.join(", ")
    )]
    NoRegister {
        /// Fleet number asked for.
        wanted: String,
        /// Combinations there are.
        known: Vec<String>,
    },
    /// A fleet number that is not in the register.
    #[error("no unit has the number '{wanted}'; the register has: {}", known.join(", "))]
    NoSuchUnit {
        /// Fleet number asked for.
        wanted: String,
        /// Numbers there are.
        known: Vec<String>,
    },
    /// Units that no combination of a sound haul has a place for, or not for all of them.
    #[error(
        "no haul that can be planned runs {}; units that run: {}", together(units), known.join(", ")
    )]
    InNoCombination {
        /// Fleet numbers with their types.
        units: Vec<(String, String)>,
        /// Numbers of units that run on a haul.
        known: Vec<String>,
    },
    /// A haul in which not all of the units have a place.
    #[error(
        "haul '{haul}' has no place for {}; hauls that have one for all of them: {}",
        units.join(" with "), known.join(", ")
    )]
    NoPlace {
        /// Fleet numbers.
        units: Vec<String>,
        /// Haul asked for.
        haul: String,
        /// Hauls that would do.
        known: Vec<String>,
    },
    /// A combination that no haul runs.
    #[error("no haul that can be planned runs combination '{wanted}'; there are: {}", known.join(", "))]
    NoSuchCombination {
        /// Name asked for.
        wanted: String,
        /// Names there are.
        known: Vec<String>,
    },
    /// A haul that is not there, or that others than the unit run.
    #[error("haul '{wanted}' is not one of: {}", known.join(", "))]
    NoSuchHaul {
        /// Name asked for.
        wanted: String,
        /// Hauls that would do.
        known: Vec<String>,
    },
    /// Several hauls would do.
    #[error("several hauls fit; choose with --haul: {}", known.join(", "))]
    SeveralHauls {
        /// Hauls that would do.
        known: Vec<String>,
    },
    /// No haul is sound.
    #[error("no haul of this survey can be planned until its problems are mended")]
    NoneSound,
}

/// Units as a sentence names them.
fn together(units: &[(String, String)]) -> String {
    let named = units.iter().map(|(number, vehicle)| format!("unit '{number}', a {vehicle}"));
    named.collect::<Vec<_>>().join(", together with ")
}

/// The one haul a call names, out of a survey that [`crate::driven_by`] may have narrowed to units.
///
/// # Errors
/// [`NamedError`] where nothing, or more than one, fits; it lists what would.
pub fn haul_of<'a>(survey: &'a Survey, named: Named<'_>) -> Result<&'a HaulCycle, NamedError> {
    if survey.hauls.is_empty() {
        return Err(NamedError::NoneSound);
    }
    let mut hauls: Vec<&HaulCycle> = survey.hauls.iter().collect();
    if let Some(wanted) = named.combination {
        let mut known = names(hauls.iter().map(|haul| &haul.combination.name));
        known.dedup();
        hauls.retain(|haul| haul.combination.name == wanted);
        if hauls.is_empty() {
            return Err(NamedError::NoSuchCombination { wanted: wanted.to_owned(), known });
        }
    }
    let known = names(hauls.iter().map(|haul| &haul.name));
    match named.haul {
        Some(wanted) => hauls
            .into_iter()
            .find(|haul| haul.name == wanted)
            .ok_or(NamedError::NoSuchHaul { wanted: wanted.to_owned(), known }),
        None if hauls.len() > 1 => Err(NamedError::SeveralHauls { known }),
        None => hauls.into_iter().next().ok_or(NamedError::NoneSound),
    }
}

/// A haul by its name, with the rungs of its ladder: one that is searched for has its rungs only
/// once it is found.
///
/// # Errors
/// [`PlanningError`] for a name that is not there or a ladder that is not found.
pub fn haul_with_rungs(survey: &Survey, name: &str) -> Result<HaulCycle, PlanningError> {
    let known = survey.hauls.iter().find(|haul| haul.name == name);
    if let Some(haul) = known.filter(|haul| !haul.combination.rungs.is_empty()) {
        return Ok(haul.clone());
    }
    let detail = Detail { samples: 0, ..Detail::default() };
    let planned = plan_hauls(survey, Some(name), &detail)?;
    planned.into_iter().next().map(|one| one.haul).ok_or(PlanningError::NoneSound)
}

fn names<'a>(names: impl Iterator<Item = &'a String>) -> Vec<String> {
    names.cloned().collect()
}
