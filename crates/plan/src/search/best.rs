//! The best ladder of a haul: discretised, solved, planned whole, and mended where the whole disagrees.

use model::haul_cycle::{HaulCycle, LegRungs};
use model::vehicle::Rung;
use quantity::Speed;

use super::discretise::{Candidates, DiscretiseError, Discretised, discretise};
use super::problem::{Terms, Weights};
use super::solve::{Ladders, Solution, solve};
use crate::{Detail, Plan, PlanError};

/// What is asked of the search.
#[derive(Debug, Clone, PartialEq)]
pub struct Wanted {
    /// How many rungs may be stored.
    pub rungs: usize,
    /// Caps to choose from.
    pub candidates: Candidates,
    /// What terms cost.
    pub weights: Weights,
}

/// A haul with its best ladder, planned.
#[derive(Debug, Clone)]
pub struct BestLadder {
    /// The haul with the rungs found, and the rung of every leg.
    pub haul: HaulCycle,
    /// Its plan.
    pub plan: Plan,
    /// The ladder as the search sees it, and one rung fewer and more.
    pub ladders: Ladders,
    /// Caps that were chosen from.
    pub caps: Vec<Speed>,
    /// How often the whole simulation sent the search back.
    pub rounds: usize,
}

/// Why there is no best ladder.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SearchError {
    /// The problem cannot be set up.
    #[error(transparent)]
    Discretise(#[from] DiscretiseError),
    /// A plan cannot be begun.
    #[error(transparent)]
    Plan(#[from] PlanError),
    /// No ladder of that many rungs will do.
    #[error(
        "no ladder of {rungs} rungs covers every leg, empty and laden: some leg has no possible speed cap"
    )]
    NoLadder {
        /// Rungs asked for.
        rungs: usize,
    },
}

/// How often a change that the whole simulation finds not to fit is priced anew.
const MOST_ROUNDS: usize = 4;

/// Finds the best ladder and plans it; `name` gives a rung its name from its cap.
///
/// Exact on the discretised problem. Where the whole simulation finds that a change chosen does
/// not fit on the road, its real cost is put in and the search runs again.
///
/// # Errors
/// [`SearchError`] where no ladder is possible or the haul cannot be driven at all.
pub fn best_ladder(
    haul: &HaulCycle,
    wanted: &Wanted,
    detail: &Detail,
    name: &dyn Fn(Speed) -> String,
) -> Result<BestLadder, SearchError> {
    let mut set_up = discretise(haul, &wanted.candidates, detail)?;
    let mut rounds = 0;
    loop {
        let ladders = solve(&set_up.problem, &wanted.weights, wanted.rungs)
            .ok_or(SearchError::NoLadder { rungs: wanted.rungs })?;
        let found = with_ladder(haul, &wanted.candidates.caps, &set_up, &ladders.best, name);
        let plan = Plan::of(&found, detail)?;
        rounds += 1;
        let repriced = rounds < MOST_ROUNDS && reprice(&mut set_up, &ladders.best, &found, &plan);
        if !repriced {
            let caps = wanted.candidates.caps.clone();
            return Ok(BestLadder { haul: found, plan, ladders, caps, rounds });
        }
    }
}

/// The haul with the rungs of a solution, and each leg on its own.
fn with_ladder(
    haul: &HaulCycle,
    caps: &[Speed],
    set_up: &Discretised,
    solution: &Solution,
    name: &dyn Fn(Speed) -> String,
) -> HaulCycle {
    let mut found = haul.clone();
    found.combination.rungs = solution
        .caps
        .iter()
        .map(|&cap| Rung {
            name: name(caps[cap]),
            cap: caps[cap],
            hold: haul
                .combination
                .rungs
                .iter()
                .find(|rung| rung.cap == caps[cap])
                .and_then(|r| r.hold),
            surfaces: Vec::new(),
        })
        .collect();
    let rung_of = |cap: usize| solution.caps.iter().position(|&own| own == cap).unwrap_or(0);
    let legs = haul.route.legs.len();
    let stretches = set_up.stretches.len();
    let (empty, laden) = solution.assignment.split_at(stretches);
    let spread = |steps: &[usize], forward: bool| {
        let mut rungs = vec![0; legs];
        for (step, &cap) in steps.iter().enumerate() {
            let stretch = if forward { step } else { stretches - 1 - step };
            for leg in set_up.stretches[stretch].clone() {
                rungs[leg] = rung_of(cap);
            }
        }
        rungs
    };
    found.leg_rungs = Some(LegRungs {
        empty: spread(empty, set_up.empty_forward),
        laden: spread(laden, !set_up.empty_forward),
    });
    // The same cells stay fixed by hand where their rung is still there.
    found.combination.hand_set.retain_mut(|cell| {
        let cap = haul.combination.rungs.get(cell.rung).map(|rung| rung.cap);
        match found.combination.rungs.iter().position(|rung| Some(rung.cap) == cap) {
            Some(rung) => {
                cell.rung = rung;
                true
            }
            None => false,
        }
    });
    let parked = haul.combination.rungs.get(haul.shift_start.parked_rung).map(|rung| rung.cap);
    found.shift_start.parked_rung = found
        .combination
        .rungs
        .iter()
        .rposition(|rung| parked.is_none_or(|cap| rung.cap <= cap))
        .unwrap_or(found.combination.rungs.len() - 1);
    found
}

/// Puts what changes that do not fit really cost into the problem; whether anything changed.
fn reprice(set_up: &mut Discretised, solution: &Solution, haul: &HaulCycle, plan: &Plan) -> bool {
    let Ok(driven) = &plan.driven else { return false };
    let stretches = set_up.stretches.len();
    let mut changed = false;
    for point in driven.points.iter().filter(|point| !point.fits) {
        let Some(lost) = point.chosen.time_lost else { continue };
        let laden = point.load_state == haul.laden_state;
        let (run, steps) = if laden {
            (&mut set_up.problem.laden, &solution.assignment[stretches..])
        } else {
            (&mut set_up.problem.empty, &solution.assignment[..stretches])
        };
        let of = |cap: usize| solution.caps.iter().position(|&own| own == cap);
        for (step, pair) in steps.windows(2).enumerate() {
            let here = of(pair[0]) == Some(point.from.rung) && of(pair[1]) == Some(point.to.rung);
            if !here {
                continue;
            }
            if let Some(edge) = &mut run.changes[step][pair[0]][pair[1]]
                && edge.time() < lost
            {
                *edge = *edge + Terms::of_time(lost - edge.time());
                changed = true;
            }
        }
    }
    changed
}
