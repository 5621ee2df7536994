//! How late is too late for a change, and what each further kilometer costs.

use haul::{Course, CourseError, CyclePlan, PlannedChange, Record, RunOf, Sample};
use model::haul_cycle::HaulCycle;
use quantity::{Length, Time};

use super::{InverseError, change_point, same_change};
use crate::change::{Action, ChangePoint, Way};
use crate::drive::{Driven, NotDriven, simulate};
use crate::{Detail, Plan};

/// One later call, driven whole.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LateCall {
    /// How much later than the latest.
    pub by: Length,
    /// Chainage of the call.
    pub at: Length,
    /// Chainage where the change is complete; `None` if not before the run's end.
    pub reached: Option<Length>,
    /// Time lost in the cycle; below zero where the driver is faster for it.
    pub time_lost: Time,
    /// Road run at a pressure that was not meant for it.
    pub wrong_road: Length,
    /// Whether tires are then filled on a sustained descent, where the brakes need the air.
    pub on_descent: bool,
}

/// How late is too late.
#[derive(Debug, Clone, PartialEq)]
pub struct LateAnswer {
    /// The change as the plan has it.
    pub change: ChangePoint,
    /// Chainage of the latest call that is complete by the place, nominally; `None` if no call is.
    pub latest: Option<Length>,
    /// Road between the place of the plan and the latest one: what the plan keeps in hand.
    pub in_hand: Option<Length>,
    /// The latest call itself, then later ones, a kilometer apart.
    pub calls: Vec<LateCall>,
}

/// Longest table.
const CALLS: u32 = 5;

/// Finds the latest call of a change, and drives the haul with it and with later ones.
///
/// # Validity
/// Nominal: one truck, one day. Nine of ten changes need the place of the plan. A change that is
/// made standing has no later call.
///
/// # Errors
/// [`InverseError`] for a haul that cannot be driven or a change that is not there.
pub fn too_late(
    haul: &HaulCycle,
    plan: &Plan,
    number: usize,
    detail: &Detail,
) -> Result<LateAnswer, InverseError> {
    let change = change_point(plan, number)?;
    let nominal = Plan::of(haul, &Detail { samples: 0, ..*detail })?;
    let driven = nominal.driven.as_ref().map_err(Clone::clone)?;
    let Some(point) = same_change(&nominal, change) else {
        let known = driven.points.len();
        return Err(InverseError::NoSuchChange { number, known });
    };
    let rolls = !matches!(point.chosen.way, Way::LayBy(_));
    let latest = (point.fits && rolls).then_some(point.at);
    let mut answer = LateAnswer {
        change: change.clone(),
        latest,
        in_hand: latest.map(|at| (at - change.at).abs()),
        calls: Vec::new(),
    };
    if !rolls {
        return Ok(answer);
    }
    let courses = Course::of_haul(haul, detail.cell, &detail.style).map_err(course)?;
    let late = Late { haul, plan: &nominal, driven, point, detail, courses: &courses };
    let on_time = late.drive(Length::ZERO)?;
    for km in 0..=CALLS {
        let by = Length::from_km(f64::from(km));
        if by > Length::ZERO && !late.may_be_called(by) {
            break;
        }
        let called = late.drive(by)?;
        answer.calls.push(late.call(by, &called, on_time.time));
    }
    Ok(answer)
}

fn course(error: CourseError) -> InverseError {
    NotDriven::from(error).into()
}

/// The haul with one change called later.
struct Late<'a> {
    haul: &'a HaulCycle,
    plan: &'a Plan,
    driven: &'a Driven,
    point: &'a ChangePoint,
    detail: &'a Detail,
    courses: &'a (Course, Course),
}

struct Called {
    time: Time,
    complete: Option<Length>,
}

impl Late<'_> {
    fn is_empty_run(&self) -> bool {
        let empty = &self.driven.plan.empty;
        self.point.load_state == self.haul.empty_state
            && empty.iter().any(|change| self.is_it(change))
    }

    fn is_it(&self, change: &PlannedChange) -> bool {
        change.to == self.point.to
            && (change.at - self.point.travelled).abs() < Length::from_mm(1.0)
    }

    fn course(&self) -> &Course {
        if self.is_empty_run() { &self.courses.0 } else { &self.courses.1 }
    }

    /// Whether the call would still come before the next one, and before the end of the run.
    fn may_be_called(&self, by: Length) -> bool {
        let at = self.point.travelled + by;
        let plan = &self.driven.plan;
        let changes = if self.is_empty_run() { &plan.empty } else { &plan.laden };
        let next = changes
            .iter()
            .map(|change| change.at)
            .find(|&place| place > self.point.travelled + Length::from_mm(1.0));
        next.is_none_or(|next| at < next) && at < self.course().length()
    }

    fn plan_called(&self, by: Length) -> CyclePlan {
        let run = if self.is_empty_run() { RunOf::Empty } else { RunOf::Laden };
        let at = self.point.travelled;
        self.driven.plan.called_elsewhere(run, at, at + by)
    }

    fn drive(&self, by: Length) -> Result<Called, InverseError> {
        let mut watch = Watch {
            load_state: self.point.load_state,
            rung: self.point.to.rung,
            from: self.point.travelled + by,
            under_way: false,
            complete: None,
        };
        let plan = self.plan_called(by);
        let cycle = simulate(self.haul, &self.plan.ladder, &plan, self.detail, &mut watch)?;
        Ok(Called { time: cycle.time(), complete: watch.complete })
    }

    fn call(&self, by: Length, called: &Called, on_time: Time) -> LateCall {
        let course = self.course();
        let start = self.point.travelled + by;
        let place = self.point.travelled + (self.point.reach_by - self.point.at).abs();
        let complete = called.complete.unwrap_or(course.length());
        let on_descent = self.point.action == Action::Raise
            && course
                .descents()
                .iter()
                .any(|descent| descent.top < complete && descent.foot > start);
        LateCall {
            by,
            at: course.chainage(start),
            reached: called.complete.map(|place| course.chainage(place)),
            time_lost: called.time - on_time,
            wrong_road: (complete - place).max(Length::ZERO),
            on_descent,
        }
    }
}

/// Sees where a change is complete.
struct Watch {
    load_state: usize,
    rung: usize,
    from: Length,
    under_way: bool,
    complete: Option<Length>,
}

impl Record for Watch {
    const WANTS: bool = true;

    fn take(&mut self, sample: Sample) {
        let here = sample.load_state == self.load_state
            && sample.rung == self.rung
            && sample.travelled >= self.from - Length::from_mm(1.0);
        if self.complete.is_some() || !here {
            return;
        }
        if sample.changing {
            self.under_way = true;
        } else if self.under_way {
            self.complete = Some(sample.travelled);
        }
    }
}
