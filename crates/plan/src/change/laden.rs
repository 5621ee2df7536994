//! The change from the empty to the laden pressures, made in one of three ways.

use haul::{
    CappedStretch, LadenChange, NoRecord, PlannedChange, StandUntil, State, Stepper, StepperError,
    Target,
};
use model::haul_cycle::HaulCycle;
use quantity::{Length, Time};

use super::point::Refusal;
use super::run::{Approach, Run};
use super::search::{Found, closed_to_raising, latest, open_stretches};

/// One way to make the change.
#[derive(Debug, Clone, PartialEq)]
pub struct LadenOption {
    /// The way.
    pub way: LadenChange,
    /// How long the change itself takes; `None` where it cannot be made this way.
    pub change_time: Option<Time>,
    /// Time lost standing for it.
    pub time_lost: Option<Time>,
    /// Chainage where it is ordered on the empty run, for the rolling way.
    pub at: Option<Length>,
    /// Empty road driven at the laden pressures before loading.
    pub empty_road_hard: Length,
}

/// The way chosen, with all three.
#[derive(Debug, Clone, PartialEq)]
pub struct LadenChoice {
    /// The way chosen.
    pub chosen: LadenChange,
    /// Every way, in the order rolling, while loading, after loading.
    pub options: Vec<LadenOption>,
    /// Cells wanted when the laden run begins.
    pub to: Target,
}

/// Compares the three ways and says what the empty run's schedule gains by the choice.
pub(crate) fn choose(
    haul: &HaulCycle,
    empty: &Run<'_>,
    last: &State,
    caps: &[CappedStretch],
    to: Target,
) -> Result<(LadenChoice, Option<PlannedChange>), StepperError> {
    let end = empty.course.length();
    let approach = empty.approach(last, end, caps)?;
    let rolling = rolling(haul, empty, &approach, last, caps, to)?;
    let while_loading = standing(haul, empty, &approach, caps, to, true)?;
    let after_loading = standing(haul, empty, &approach, caps, to, false)?;
    let mut options = vec![rolling.0, while_loading, after_loading];
    if !haul.loading.change_while_loading {
        options[1].change_time = None;
        options[1].time_lost = None;
    }
    // Least time lost; between equals the order loading, rolling, after: no empty road run hard.
    let order = [LadenChange::WhileLoading, LadenChange::Rolling, LadenChange::AfterLoading];
    let chosen = order
        .into_iter()
        .filter_map(|way| {
            let option = options.iter().find(|option| option.way == way)?;
            Some((way, option.time_lost?))
        })
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .map_or(LadenChange::AfterLoading, |(way, _)| way);
    let planned = match (chosen, rolling.1) {
        (LadenChange::Rolling, Some(at)) => Some(PlannedChange { at, to, standing: false }),
        _ => None,
    };
    Ok((LadenChoice { chosen, options, to }, planned))
}

fn rolling(
    haul: &HaulCycle,
    run: &Run<'_>,
    approach: &Approach,
    last: &State,
    caps: &[CappedStretch],
    to: Target,
) -> Result<(LadenOption, Option<Length>), StepperError> {
    let end = run.course.length();
    let closed = closed_to_raising(haul, run.course);
    let section = run.sections.last().map_or(Length::ZERO, |section| section.from);
    let open = open_stretches(last.travelled().max(section), end, &closed);
    let limit = haul.combination.controller.compressor_limit;
    let found = latest(run, approach, to, &open, &|_| caps.to_vec(), &|attempt| {
        Ok((attempt.longest_loaded > limit).then_some(Refusal::CompressorLimit))
    })?;
    Ok(match found {
        Found::Start(attempt) => (
            LadenOption {
                way: LadenChange::Rolling,
                change_time: Some(attempt.time),
                time_lost: Some(Time::ZERO),
                at: Some(run.course.chainage(attempt.start)),
                empty_road_hard: end - attempt.start,
            },
            Some(attempt.start),
        ),
        Found::TooShort | Found::NotPermitted(_) => (
            LadenOption {
                way: LadenChange::Rolling,
                change_time: None,
                time_lost: None,
                at: None,
                empty_road_hard: Length::ZERO,
            },
            None,
        ),
    })
}

fn standing(
    haul: &HaulCycle,
    run: &Run<'_>,
    approach: &Approach,
    caps: &[CappedStretch],
    to: Target,
    while_loading: bool,
) -> Result<LadenOption, StepperError> {
    let envelope = run.envelope(caps);
    let stepper = Stepper::new(run.truck, run.course, &envelope, run.style);
    let mut state = approach.last().clone();
    let loading = haul.loading;
    let mut record = NoRecord;
    if !while_loading {
        let passed = StandUntil::Passed(loading.time);
        stepper.stand(&mut state, passed, loading.high_idle, &mut record)?;
    }
    let begun = state.clock();
    stepper.order(&mut state, to);
    let high_idle = loading.high_idle || !while_loading;
    let way = if while_loading { LadenChange::WhileLoading } else { LadenChange::AfterLoading };
    let taken = match stepper.stand(&mut state, StandUntil::Complete, high_idle, &mut record) {
        Ok(()) => Some(state.clock() - begun),
        Err(StepperError::NeverComplete { .. }) => None,
        Err(other) => return Err(other),
    };
    let time_lost = taken
        .map(|taken| if while_loading { (taken - loading.time).max(Time::ZERO) } else { taken });
    Ok(LadenOption { way, change_time: taken, time_lost, at: None, empty_road_hard: Length::ZERO })
}
