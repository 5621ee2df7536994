//! Plans of the hauls of a survey.

use model::haul_cycle::HaulCycle;
use plan::search::SearchError;
use plan::{Detail, Plan, PlanError};

use rayon::prelude::*;
use survey::Survey;

use crate::planned_for::PlannedFor;
use crate::search::{Searched, best_haul};
use crate::threads::Threads;

/// A haul with its plan.
#[derive(Debug, Clone)]
pub struct Planned {
    /// The haul as surveyed.
    pub haul: HaulCycle,
    /// Its plan.
    pub plan: Plan,
    /// How its ladder was found, where the survey did not give it.
    pub search: Option<Searched>,
    /// Whom it is made for.
    pub planned_for: PlannedFor,
}

/// Why hauls could not be planned.
#[derive(Debug, thiserror::Error)]
pub enum PlanningError {
    /// No haul of that name, or none at all.
    #[error("no haul is called '{wanted}'; the survey has: {}", known.join(", "))]
    NoSuchHaul {
        /// The name asked for.
        wanted: String,
        /// Names there are.
        known: Vec<String>,
    },
    /// The haul has a file, but the file or one it uses has errors.
    #[error("haul '{haul}' cannot be planned until the problems above are mended")]
    HasErrors {
        /// The haul.
        haul: String,
    },
    /// No haul is sound.
    #[error("no haul of this survey can be planned until the problems above are mended")]
    NoneSound,
    /// A plan could not be begun.
    #[error("haul '{haul}': {error}")]
    Plan {
        /// The haul.
        haul: String,
        /// What stands in the way.
        error: PlanError,
    },
    /// A search is asked for, and its prices are missing.
    #[error(
        "haul '{haul}': its file has no [ladder], so no ladder can be searched for; add rungs, \
         lowest cap and prices to hauls/{haul}.toml"
    )]
    NoWish {
        /// The haul.
        haul: String,
    },
    /// More rungs than the controller stores.
    #[error(
        "haul '{haul}': its controller stores {stored} rungs, {rungs} were asked for; ask for fewer"
    )]
    OverStored {
        /// The haul.
        haul: String,
        /// Asked for.
        rungs: usize,
        /// Stored.
        stored: usize,
    },
    /// No ladder was found.
    #[error("haul '{haul}': {error}")]
    Search {
        /// The haul.
        haul: String,
        /// Why.
        error: SearchError,
    },
}

/// Plans one haul by name, or every sound haul, in the order of the survey.
///
/// A haul whose combination has no rungs gets the best ladder there is.
///
/// # Errors
/// [`PlanningError`] for an unknown haul, a haul with errors, weather out of range, or a haul
/// without rungs that no ladder covers.
pub fn plan_hauls(
    survey: &Survey,
    haul: Option<&str>,
    detail: &Detail,
) -> Result<Vec<Planned>, PlanningError> {
    chosen(survey, haul)?
        .into_par_iter()
        .map(|haul| {
            if haul.combination.rungs.is_empty() {
                return best_haul(survey, haul, None, detail);
            }
            let plan = Plan::with_workers(haul, detail, &Threads)
                .map_err(|error| PlanningError::Plan { haul: haul.name.clone(), error })?;
            let planned_for = PlannedFor::of(survey, &haul.name);
            Ok(Planned { haul: haul.clone(), plan, search: None, planned_for })
        })
        .collect()
}

pub(crate) fn chosen<'a>(
    survey: &'a Survey,
    wanted: Option<&str>,
) -> Result<Vec<&'a HaulCycle>, PlanningError> {
    match wanted {
        None if survey.hauls.is_empty() => Err(PlanningError::NoneSound),
        None => Ok(survey.hauls.iter().collect()),
        Some(name) => match survey.hauls.iter().find(|haul| haul.name == name) {
            Some(haul) => Ok(vec![haul]),
            None if survey.haul_names.iter().any(|known| known == name) => {
                Err(PlanningError::HasErrors { haul: name.to_owned() })
            }
            None => Err(PlanningError::NoSuchHaul {
                wanted: name.to_owned(),
                known: survey.haul_names.clone(),
            }),
        },
    }
}
