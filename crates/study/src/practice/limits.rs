//! What a plan holds a drive to.

use audit::{
    CellLimit, ChangeLimit, ChangeTo, ClosedStretch, Hold, Limits, LimitsError, LimitsGiven,
    LoadLimit, RungLimit, Site, Tolerance,
};
use haul::{Course, CourseError};
use plan::{CellId, ChangePoint, Detail, Driven, NotDriven};
use quantity::{ColdPressure, GaugePressure, Length, PressureDifference, Temperature};

use crate::Planned;

/// Why a plan gives no limits.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum NoLimits {
    /// The plan cannot be driven itself.
    #[error("haul '{haul}' cannot be driven: {why}")]
    NotDriven {
        /// The haul.
        haul: String,
        /// The plan's reason.
        why: NotDriven,
    },
    /// The route cannot be cut into cells.
    #[error(transparent)]
    Course(#[from] CourseError),
    /// The plan does not fit what can be judged.
    #[error(transparent)]
    Limits(#[from] LimitsError),
}

/// Reading above the value set that still counts as lowered, at most; common practice, no source.
const BAND: PressureDifference = PressureDifference::from_kpa(35.0);

/// The limits of a plan, for the audit.
///
/// # Errors
/// [`NoLimits`] for a plan that cannot be driven, or that is larger than can be judged.
pub fn limits_of(planned: &Planned, detail: &Detail) -> Result<Limits, NoLimits> {
    let haul = &planned.haul;
    let combination = &haul.combination;
    let driven = planned
        .plan
        .driven
        .as_ref()
        .map_err(|why| NoLimits::NotDriven { haul: haul.name.clone(), why: why.clone() })?;
    let (empty, laden) = Course::of_haul(haul, detail.cell, &detail.style)?;
    let runs = [(haul.empty_state, &empty), (haul.laden_state, &laden)];
    let warmest = planned.plan.ladder.cells().iter().map(|cell| cell.warmest_tire);
    let warmest = warmest.fold(haul.weather.warmest, Temperature::max);
    let changes = driven.points.iter().filter_map(|point| {
        let run = usize::from(point.load_state == haul.laden_state);
        change(planned, driven, point, run, runs[run].1)
    });
    let closed = runs.iter().flat_map(|(load_state, course)| {
        course.descents().iter().map(|descent| ClosedStretch {
            load_state: *load_state,
            from: course.chainage(descent.closed_from),
            to: course.chainage(descent.foot),
        })
    });
    Ok(Limits::new(LimitsGiven {
        site: Site {
            reference: haul.weather.reference,
            ambient: haul.weather.ambient_pressure,
            coldest_tire: haul.weather.coldest,
            warmest_tire: warmest,
        },
        tolerance: Tolerance::default(),
        route: haul.route.length(),
        rungs: combination.rungs.iter().map(|rung| RungLimit { cap: rung.cap }).collect(),
        load_states: (0..combination.load_states.len())
            .map(|at| load(planned, driven, at))
            .collect(),
        changes: changes.collect(),
        closed: closed.collect(),
    })?)
}

fn cell(planned: &Planned, channel: usize, load_state: usize, rung: usize) -> Option<&plan::Cell> {
    let id = CellId { channel, load_state, chain_state: 0, rung };
    planned.plan.ladder.cell(id).filter(|cell| cell.set.is_some())
}

fn lowest(cell: &plan::Cell) -> Option<ColdPressure> {
    Some(cell.window.as_ref()?.governing_minimum().pressure)
}

fn load(planned: &Planned, driven: &Driven, load_state: usize) -> LoadLimit {
    let haul = &planned.haul;
    let rungs = &haul.combination.rungs;
    let channels = 0..haul.combination.channels.len();
    let cells = (0..rungs.len()).map(|rung| {
        let minimum = |channel| cell(planned, channel, load_state, rung).and_then(lowest);
        channels.clone().map(|channel| CellLimit { minimum: minimum(channel) }).collect()
    });
    let holds = rungs.iter().enumerate().map(|(at, rung)| {
        let by_maker = channels
            .clone()
            .filter_map(|channel| cell(planned, channel, load_state, at)?.hold)
            .min_by(Length::total_cmp);
        let distance = match (rung.hold.map(|hold| hold.distance), by_maker) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
        let time = rung.hold.map(|hold| hold.time);
        (time.is_some() || distance.is_some()).then_some(Hold { time, distance })
    });
    let start = driven.laden_change.to;
    LoadLimit {
        cells: cells.collect(),
        holds: holds.collect(),
        start_rung: (start.load_state == load_state).then_some(start.rung),
    }
}

/// The stretch on which a change must be complete, and what it goes to; `None` where its section ends before.
fn change(
    planned: &Planned,
    driven: &Driven,
    point: &ChangePoint,
    run: usize,
    course: &Course,
) -> Option<ChangeLimit> {
    let place = course.chainage(point.reach_by);
    // Where the plan itself is complete only behind the place, the driver cannot do better.
    let due = place.max(point.travelled + point.lead);
    let near = Length::from_m(1.0);
    let section =
        driven.sections[run].iter().find(|section| (section.from - place).abs() < near)?;
    let channels = 0..planned.haul.combination.channels.len();
    let to = channels.map(|channel| {
        let of = |rung| {
            let cell = cell(planned, channel, point.load_state, rung)?;
            Some((cell.set.as_ref()?.vented, lowest(cell)?))
        };
        match (of(point.from.rung), of(point.to.rung)) {
            (Some((from, _)), Some((set, lowest))) => change_to(planned, from, set, lowest),
            _ => ChangeTo::Stays,
        }
    });
    (due < section.to).then(|| ChangeLimit {
        load_state: point.load_state,
        rung: point.to.rung,
        reach_by: course.chainage(due),
        until: course.chainage(section.to),
        to: to.collect(),
    })
}

fn change_to(
    planned: &Planned,
    from: GaugePressure,
    set: GaugePressure,
    lowest: ColdPressure,
) -> ChangeTo {
    let deadband = planned.haul.combination.controller.deadband;
    if (set - from).abs() <= deadband * 2.0 {
        ChangeTo::Stays
    } else if set > from {
        ChangeTo::Raised(lowest)
    } else {
        // A small step counts as made from its middle on.
        ChangeTo::Lowered(set + BAND.min((from - set) * 0.5).max(deadband))
    }
}
