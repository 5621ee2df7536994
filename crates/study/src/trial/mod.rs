//! A plan tried under other conditions, with cells set by hand and changes called elsewhere.

mod what_if;

use haul::{Cycle, RunOf, Trace};
use model::haul_cycle::{HaulCycle, LadenDirection};
use model::vehicle::HandSetCell;
use plan::{ChangePoint, Detail, Driven, Plan};
use quantity::{Length, Time};

pub use what_if::{WhatIf, WhatIfError};

use crate::{Planned, PlannedFor, PlanningError, Threads};

/// A change called somewhere else than planned.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MovedCall {
    /// Which change point, from 0 in the order of the plan.
    pub number: usize,
    /// Chainage where it is called.
    pub at: Length,
}

/// What is tried.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Trial {
    /// Other conditions.
    pub what_if: WhatIf,
    /// Cells set by hand, over those of the survey.
    pub hand_set: Vec<HandSetCell>,
    /// Changes called elsewhere.
    pub moved: Vec<MovedCall>,
}

/// What a change does that is called elsewhere.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Called {
    /// Which change point.
    pub number: usize,
    /// Chainage of the call.
    pub at: Length,
    /// Chainage where it is complete; `None` if not before the run's end.
    pub reached: Option<Length>,
    /// Road run at a pressure that was not meant for it.
    pub wrong_road: Length,
}

/// A trial worked out.
#[derive(Debug, Clone)]
pub struct Tried {
    /// The haul under the conditions tried, with its plan.
    pub planned: Planned,
    /// The cycle as it goes with calls where they are made; `None` where it cannot be driven.
    pub cycle: Option<Cycle>,
    /// The run of that cycle.
    pub trace: Trace,
    /// Each change called elsewhere.
    pub called: Vec<Called>,
    /// Time lost in the cycle by calls elsewhere.
    pub time_lost: Time,
}

/// Moments of the run that a strip across a screen can show.
const POINTS: f64 = 700.0;

/// Plans a haul as tried, and drives it with changes called where they are called.
///
/// # Errors
/// [`PlanningError`] for weather out of range; a haul that cannot be driven is part of the plan.
pub fn try_out(haul: &HaulCycle, trial: &Trial, detail: &Detail) -> Result<Tried, PlanningError> {
    let mut haul = trial.what_if.applied(haul);
    for cell in &trial.hand_set {
        let same = |other: &HandSetCell| {
            (other.channel, other.load_state, other.rung)
                == (cell.channel, cell.load_state, cell.rung)
        };
        haul.combination.hand_set.retain(|other| !same(other));
        haul.combination.hand_set.push(cell.clone());
    }
    let plan = Plan::with_workers(&haul, detail, &Threads)
        .map_err(|error| PlanningError::Plan { haul: haul.name.clone(), error })?;
    let planned = Planned { haul, plan, search: None, planned_for: PlannedFor::default() };
    Ok(driven(planned, trial, detail))
}

fn driven(planned: Planned, trial: &Trial, detail: &Detail) -> Tried {
    let nothing = |planned| Tried {
        planned,
        cycle: None,
        trace: Trace::every(Time::from_s(1.0)),
        called: Vec::new(),
        time_lost: Time::ZERO,
    };
    let Ok(driven) = &planned.plan.driven else { return nothing(planned) };
    let places = places(&planned.haul, driven, trial);
    let mut schedule = driven.plan.clone();
    // From the last place back, so that a change may move into the room its successor left.
    for place in places.iter().rev() {
        schedule = schedule.called_elsewhere(place.run, place.from, place.to);
    }
    let mut trace = Trace::every(driven.cycle.time() / POINTS);
    let ladder = &planned.plan.ladder;
    let cycle = plan::simulate(&planned.haul, ladder, &schedule, detail, &mut trace).ok();
    let time_lost = cycle.as_ref().map_or(Time::ZERO, |cycle| cycle.time() - driven.cycle.time());
    let called = places.iter().map(|place| place.outcome(driven, &trace)).collect();
    Tried { planned, cycle, trace, called, time_lost }
}

/// A call that moves from one travel distance to another.
struct Place {
    number: usize,
    run: RunOf,
    from: Length,
    to: Length,
    at: Length,
}

fn places(haul: &HaulCycle, driven: &Driven, trial: &Trial) -> Vec<Place> {
    let late = trial.what_if.late;
    let points = driven.points.iter().enumerate();
    points
        .filter_map(|(number, point)| {
            let run = run_of(haul, driven, point);
            let rising = rises(haul, run);
            let asked = trial.moved.iter().rev().find(|moved| moved.number == number);
            let along = asked.map_or(Length::ZERO, |moved| {
                if rising { moved.at - point.at } else { point.at - moved.at }
            });
            let by = along + late;
            (by != Length::ZERO).then(|| {
                let to = (point.travelled + by).max(Length::ZERO).min(haul.route.length());
                let moved = to - point.travelled;
                let at = if rising { point.at + moved } else { point.at - moved };
                Place { number, run, from: point.travelled, to, at }
            })
        })
        .collect()
}

fn run_of(haul: &HaulCycle, driven: &Driven, point: &ChangePoint) -> RunOf {
    let holds = |run: RunOf| {
        driven.plan.changes(run).iter().any(|change| {
            change.to == point.to && (change.at - point.travelled).abs() < Length::from_mm(1.0)
        })
    };
    if point.load_state == haul.empty_state && holds(RunOf::Empty) {
        RunOf::Empty
    } else {
        RunOf::Laden
    }
}

/// Whether chainage rises along a run.
fn rises(haul: &HaulCycle, run: RunOf) -> bool {
    (haul.laden_direction == LadenDirection::Forward) == (run == RunOf::Laden)
}

impl Place {
    fn outcome(&self, driven: &Driven, trace: &Trace) -> Called {
        let point = &driven.points[self.number];
        let mut under_way = false;
        let mut reached = None;
        let here = trace.samples().iter().filter(|sample| {
            sample.load_state == point.load_state
                && sample.rung == point.to.rung
                && sample.travelled >= self.to - Length::from_mm(1.0)
        });
        for sample in here {
            if sample.changing {
                under_way = true;
            } else if under_way {
                reached = Some(sample);
                break;
            }
        }
        let place = point.travelled + (point.reach_by - point.at).abs();
        let late = reached.map_or(Length::ZERO, |sample| sample.travelled - place);
        Called {
            number: self.number,
            at: self.at,
            reached: reached.map(|sample| sample.chainage),
            wrong_road: late.max(Length::ZERO),
        }
    }
}
