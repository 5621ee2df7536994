//! The best ladder of a haul, searched for with the prices of its survey.

use model::haul_cycle::{HaulCycle, LadderWish};
use plan::search::{
    BestLadder, Candidates, Ladders, SearchError, Terms, Wanted, Weights, best_ladder,
};
use plan::{Detail, Plan};
use quantity::Speed;
use rayon::prelude::*;
use survey::{Survey, UnitProfile};

use crate::planned_for::PlannedFor;
use crate::planning::{Planned, PlanningError, chosen};
use crate::threads::Threads;

/// How the ladder of a planned haul was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Searched {
    /// How many rungs were asked for at most.
    pub rungs: usize,
    /// What the survey says of the search.
    pub wish: LadderWish,
    /// Caps that were chosen from.
    pub caps: Vec<Speed>,
    /// The ladder as the search sees it, and one rung fewer and more.
    pub ladders: Ladders,
    /// How often the ladder found was planned whole.
    pub rounds: usize,
}

/// What each term of a ladder costs, in the money of the survey.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TermCosts {
    /// Driving and waiting.
    pub time: f64,
    /// Road driven harder than the ground wants.
    pub hard_road: f64,
    /// Changes.
    pub changes: f64,
    /// Loaded compressor.
    pub compressor: f64,
}

impl Searched {
    /// The terms of the ladder found.
    pub fn terms(&self) -> Terms {
        self.ladders.best.terms
    }

    /// What each term of the ladder found costs; together they are its cost.
    pub fn costs(&self) -> TermCosts {
        let prices = weights(&self.wish);
        let free = Weights { truck_hour: 0.0, hard_kpa_km: 0.0, change: 0.0, compressor_hour: 0.0 };
        let terms = self.terms();
        TermCosts {
            time: terms.cost(&Weights { truck_hour: prices.truck_hour, ..free }),
            hard_road: terms.cost(&Weights { hard_kpa_km: prices.hard_kpa_km, ..free }),
            changes: terms.cost(&Weights { change: prices.change, ..free }),
            compressor: terms.cost(&Weights { compressor_hour: prices.compressor_hour, ..free }),
        }
    }
}

/// Searches the best ladder of one haul by name, or of every sound haul, and plans each on it.
///
/// `rungs` overrides how many rungs the survey asks for.
///
/// # Errors
/// [`PlanningError`] as for [`crate::plan_hauls`], for a haul whose file has no `[ladder]`, for
/// more rungs than its controller stores, and where no ladder covers every leg.
pub fn best_hauls(
    survey: &Survey,
    haul: Option<&str>,
    rungs: Option<usize>,
    detail: &Detail,
) -> Result<Vec<Planned>, PlanningError> {
    chosen(survey, haul)?
        .into_par_iter()
        .map(|haul| best_haul(survey, haul, rungs, detail))
        .collect()
}

pub(crate) fn best_haul(
    survey: &Survey,
    haul: &HaulCycle,
    rungs: Option<usize>,
    detail: &Detail,
) -> Result<Planned, PlanningError> {
    let of = || haul.name.clone();
    let wish = haul.ladder_wish.as_ref().ok_or_else(|| PlanningError::NoWish { haul: of() })?;
    let rungs = rungs.unwrap_or(wish.rungs);
    let stored = haul.combination.controller.stored_rungs as usize;
    if rungs > stored {
        return Err(PlanningError::OverStored { haul: of(), rungs, stored });
    }
    let wanted = Wanted {
        rungs,
        candidates: Candidates::of(haul, wish.cap_step, wish.lowest_cap, &wish.fixed_caps),
        weights: weights(wish),
    };
    // The search itself needs no spread between trucks and runs; the plan of what it finds does.
    let nominal = Detail { samples: 0, ..*detail };
    let failed = |error: SearchError| PlanningError::Search { haul: of(), error };
    let found = best_ladder(haul, &wanted, &nominal, &|cap| rung_name(cap, survey.units))
        .map_err(failed)?;
    let BestLadder { haul: found, ladders, caps, rounds, .. } = found;
    let plan = Plan::with_workers(&found, detail, &Threads)
        .map_err(|error| PlanningError::Plan { haul: of(), error })?;
    let search = Searched { rungs, wish: wish.clone(), caps, ladders, rounds };
    let planned_for = PlannedFor::of(survey, &found.name);
    Ok(Planned { haul: found, plan, search: Some(search), planned_for })
}

fn weights(wish: &LadderWish) -> Weights {
    Weights {
        truck_hour: wish.truck_hour,
        hard_kpa_km: wish.hard_kpa_km,
        change: wish.change,
        compressor_hour: wish.compressor_hour,
    }
}

/// A rung is named by its cap in the survey's unit, such as `40 km/h`.
fn rung_name(cap: Speed, units: UnitProfile) -> String {
    let (number, unit) = match units {
        UnitProfile::Us => (cap.as_mph(), "mph"),
        UnitProfile::Si | UnitProfile::MetricBar => (cap.as_kmh(), "km/h"),
    };
    let tenths = (number * 10.0).round() / 10.0;
    format!("{tenths} {unit}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rung_is_named_by_its_cap_in_the_units_of_the_survey() {
        assert_eq!(rung_name(Speed::from_kmh(40.0), UnitProfile::Si), "40 km/h");
        assert_eq!(rung_name(Speed::from_mph(25.0), UnitProfile::Us), "25 mph");
        assert_eq!(rung_name(Speed::from_mph(22.5), UnitProfile::Us), "22.5 mph");
    }
}
