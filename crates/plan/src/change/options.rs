//! What can be done when a raise does not fit on the road before the place.

use haul::{CappedStretch, NoRecord, PlannedChange, StandUntil, State, Stepper, StepperError};
use model::route::LayBy;
use quantity::{Length, Time};

use super::point::{Stop, Way, WayTaken};
use super::run::{Approach, Attempt};
use super::search::Open;
use super::walk::Change;

/// The way chosen when rolling does not fit, with the ways not chosen.
pub(super) struct Refused {
    pub changes: Vec<PlannedChange>,
    pub attempt: Attempt,
    pub chosen: WayTaken,
    pub others: Vec<WayTaken>,
}

/// Largest compressor a fleet would consider, as a multiple of today's.
const MOST_AIR: f64 = 8.0;

pub(super) fn when_it_does_not_fit(
    change: &Change<'_>,
    approach: &Approach,
    open: &[Open],
    earliest: Length,
    base: &[CappedStretch],
) -> Result<Refused, StepperError> {
    let run = change.run;
    let place = change.into.from;
    let to = run.target(change.into.rung);
    let slow = roll_on(change, approach, earliest, base)?;
    let start = slow.start;
    let reached = slow.complete.unwrap_or(run.course.length());
    let past = (reached - place).max(Length::ZERO);
    let ideal = ideal_clock(change, approach, reached, base)?;
    let slow_lost = (slow.end.clock() - ideal).max(Time::ZERO);
    let slow_way = WayTaken { way: Way::GoOnSlowly { past }, time_lost: Some(slow_lost) };

    let mut others = Vec::new();
    let stand = stand_in_lay_by(change, approach, open, earliest, base)?;
    let mut chosen_stand = None;
    if let Some((attempt, way)) = stand {
        if way.time_lost.is_some_and(|lost| lost < slow_lost) {
            chosen_stand = Some((attempt, way));
        } else {
            others.push(way);
        }
    }
    // The longest open stretch is the one that comes nearest to being enough.
    let longest = open.iter().max_by(|a, b| (a.to - a.from).total_cmp(&(b.to - b.from)));
    if let Some(&stretch) = longest {
        others.extend(on_stretch(change, approach, stretch, base)?);
    }
    Ok(match chosen_stand {
        Some((attempt, way)) => {
            others.insert(0, slow_way);
            let at = attempt.end.travelled();
            Refused {
                changes: vec![
                    PlannedChange { at: attempt.start, to, standing: false },
                    PlannedChange { at, to, standing: true },
                ],
                attempt,
                chosen: way,
                others,
            }
        }
        None => Refused {
            changes: vec![PlannedChange { at: start, to, standing: false }],
            attempt: slow,
            chosen: slow_way,
            others,
        },
    })
}

/// The raise made rolling, past the place: from the start of the first open stretch, of those that
/// reach to the place or lie beyond it, on which it is complete before the next descent.
///
/// Where none is long enough the last is taken, and the plan says that the lead does not fit.
fn roll_on(
    change: &Change<'_>,
    approach: &Approach,
    earliest: Length,
    base: &[CappedStretch],
) -> Result<Attempt, StepperError> {
    let run = change.run;
    let place = change.into.from;
    let to = run.target(change.into.rung);
    let mut found = None;
    for stretch in change.open(earliest, run.course.length()) {
        if stretch.to < place || stretch.from >= change.into.to {
            continue;
        }
        let attempt = run.attempt(approach, stretch.from, to, base)?;
        let done = attempt.complete.is_some_and(|at| at <= stretch.to);
        found = Some(attempt);
        if done {
            break;
        }
    }
    found.map_or_else(|| run.attempt(approach, place.max(earliest), to, base), Ok)
}

/// What would make the change fit on one open stretch: less speed, more road, a lower rung, more air.
fn on_stretch(
    change: &Change<'_>,
    approach: &Approach,
    stretch: Open,
    base: &[CappedStretch],
) -> Result<Vec<WayTaken>, StepperError> {
    let run = change.run;
    let Open { from, to: end } = stretch;
    let attempt = run.attempt(approach, from, run.target(change.into.rung), base)?;
    let reached = attempt.complete.unwrap_or(run.course.length());
    let mut ways = Vec::new();
    if reached > end && attempt.time > Time::ZERO {
        let mean = quantity::Speed::from_m_per_s((end - from).as_m() / attempt.time.as_s());
        let usual = run.clock_at(approach.before(end), end, base)?.clock()
            - run.clock_at(approach.before(from), from, base)?.clock();
        let time_lost = Some((attempt.time - usual).max(Time::ZERO));
        ways.push(WayTaken { way: Way::Slower { mean }, time_lost });
        ways.push(WayTaken { way: Way::MoreRoad { missing: reached - end }, time_lost: None });
    }
    if let Some(rung) = rung_in_time(change, approach, stretch, base)? {
        ways.push(WayTaken { way: Way::OtherRung { rung }, time_lost: None });
    }
    if let Some(times) = air_that_fits(change, approach, stretch, base)? {
        ways.push(WayTaken { way: Way::MoreAir { times }, time_lost: None });
    }
    Ok(ways)
}

/// Clock at a place for a truck that held the new rung from the boundary on, at no cost.
fn ideal_clock(
    change: &Change<'_>,
    approach: &Approach,
    place: Length,
    base: &[CappedStretch],
) -> Result<Time, StepperError> {
    let run = change.run;
    let envelope = run.envelope(base);
    let stepper = Stepper::new(run.truck, run.course, &envelope, run.style);
    let mut state: State = approach.last().clone();
    stepper.suppose_held(&mut state, run.target(change.into.rung));
    stepper.drive_to(&mut state, place, &mut NoRecord)?;
    Ok(state.clock())
}

fn lay_by_travel(change: &Change<'_>, chainage: Length) -> Length {
    change.run.course.chainage(chainage)
}

/// The last lay-by before the place that can be used in this direction.
fn last_lay_by<'a>(change: &Change<'a>, earliest: Length) -> Option<(&'a LayBy, Length)> {
    let forward = change.run.course.direction() == haul::Direction::Forward;
    change
        .haul
        .route
        .lay_bys
        .iter()
        .filter(|lay_by| lay_by.forward_only.is_none_or(|only| only == forward))
        .map(|lay_by| (lay_by, lay_by_travel(change, lay_by.at)))
        .filter(|(_, at)| *at > earliest && *at <= change.into.from + Length::from_m(1.0))
        .max_by(|a, b| a.1.total_cmp(&b.1))
}

/// Stands in the last lay-by until the change is complete, having ordered it where the open
/// stretch that leads there begins.
fn stand_in_lay_by(
    change: &Change<'_>,
    approach: &Approach,
    open: &[Open],
    earliest: Length,
    base: &[CappedStretch],
) -> Result<Option<(Attempt, WayTaken)>, StepperError> {
    let run = change.run;
    let Some((lay_by, at)) = last_lay_by(change, earliest) else { return Ok(None) };
    let to = run.target(change.into.rung);
    let envelope = run.envelope(base);
    let stepper = Stepper::new(run.truck, run.course, &envelope, run.style);
    let start = open
        .iter()
        .find(|stretch| stretch.from <= at && at <= stretch.to + Length::from_m(1.0))
        .map_or(at, |stretch| stretch.from);
    let mut state = approach.before(start).clone();
    stepper.drive_to(&mut state, start, &mut NoRecord)?;
    state.forget_extremes(run.truck.ambient());
    let begun = state.clock();
    stepper.order(&mut state, to);
    stepper.drive_to(&mut state, at, &mut NoRecord)?;
    let stopped = state.clock();
    match stepper.stand(&mut state, StandUntil::Complete, true, &mut NoRecord) {
        Ok(()) => {}
        Err(StepperError::NeverComplete { .. }) => return Ok(None),
        Err(other) => return Err(other),
    }
    let wait = state.clock() - stopped;
    let attempt = Attempt {
        start,
        complete: Some(at),
        time: state.clock() - begun,
        lowest_supply: state.lowest_supply(),
        longest_loaded: state.longest_loaded(),
        end: state,
    };
    let stop = Stop { name: lay_by.name.clone(), at: lay_by.at, wait };
    Ok(Some((attempt, WayTaken { way: Way::LayBy(stop), time_lost: Some(wait) })))
}

impl Change<'_> {
    /// A lay-by beside a change that fits rolling, for comparison.
    pub fn lay_by_beside(
        &self,
        approach: &Approach,
        earliest: Length,
        base: &[CappedStretch],
    ) -> Result<Vec<WayTaken>, StepperError> {
        if self.action() == super::point::Action::Lower {
            return Ok(Vec::new());
        }
        let found = stand_in_lay_by(self, approach, &[], earliest, base)?;
        Ok(found.into_iter().map(|(_, way)| way).collect())
    }
}

/// The highest rung between the two that is reached by the end of the stretch.
fn rung_in_time(
    change: &Change<'_>,
    approach: &Approach,
    stretch: Open,
    base: &[CappedStretch],
) -> Result<Option<usize>, StepperError> {
    let run = change.run;
    for rung in (change.from.rung + 1..change.into.rung).rev() {
        let attempt = run.attempt(approach, stretch.from, run.target(rung), base)?;
        if attempt.complete.is_some_and(|at| at <= stretch.to) {
            return Ok(Some(rung));
        }
    }
    Ok(None)
}

/// The multiple of today's compressor delivery with which the change just fits.
fn air_that_fits(
    change: &Change<'_>,
    approach: &Approach,
    stretch: Open,
    base: &[CappedStretch],
) -> Result<Option<f64>, StepperError> {
    let fits = |times: f64| -> Result<bool, StepperError> {
        let Some(truck) = change.run.truck.with_more_air(change.haul, times) else {
            return Ok(false);
        };
        let run = super::run::Run { truck: &truck, ..*change.run };
        let attempt = run.attempt(approach, stretch.from, run.target(change.into.rung), base)?;
        Ok(attempt.complete.is_some_and(|at| at <= stretch.to))
    };
    if !fits(MOST_AIR)? {
        return Ok(None);
    }
    let (mut low, mut high) = (1.0, MOST_AIR);
    while high - low > 0.02 {
        let middle = 0.5 * (low + high);
        if fits(middle)? {
            high = middle;
        } else {
            low = middle;
        }
    }
    Ok(Some(high))
}
