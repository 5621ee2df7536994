//! Plans the changes of one run, section by section, in the order of travel.

use haul::{CappedStretch, PlannedChange, State, StepperError};
use model::haul_cycle::HaulCycle;
use quantity::{GaugePressure, Length, Time};

use super::late::{late, never};
use super::options::{Refused, when_it_does_not_fit};
use super::point::{Action, ChangePoint, Refusal, Way, WayTaken};
use super::run::{Approach, Attempt, Run};
use super::search::{Found, Open, closed_to_raising, latest, open_stretches};
use super::sure::make_sure;
use crate::sections::Section;
use crate::workers::Workers;

/// Why a run could not be planned.
pub(crate) type WalkError = StepperError;

/// A run with its changes planned.
#[derive(Debug, Clone)]
pub(crate) struct Walked {
    pub changes: Vec<PlannedChange>,
    pub points: Vec<ChangePoint>,
    /// State when the last change was complete, or at the start.
    pub last: State,
    /// Stretches kept on a slower rung because the raise would not be complete within them.
    pub kept_low: Vec<KeptLow>,
}

/// A stretch that is run on a slower rung than wanted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KeptLow {
    /// Index of the load state.
    pub load_state: usize,
    /// Chainage where the stretch begins, in the direction of travel.
    pub from: Length,
    /// Chainage where it ends.
    pub to: Length,
    /// Rung wanted.
    pub wanted: usize,
    /// Rung kept.
    pub kept: usize,
}

/// Plans every change of a run that begins in `start`.
pub(crate) fn walk(
    haul: &HaulCycle,
    run: &Run<'_>,
    start: &State,
    sampling: Sampling<'_>,
) -> Result<Walked, WalkError> {
    let mut walked = Walked {
        changes: Vec::new(),
        points: Vec::new(),
        last: start.clone(),
        kept_low: Vec::new(),
    };
    let Some((&first, rest)) = run.sections.split_first() else { return Ok(walked) };
    let mut from = first;
    for &into in rest {
        // Nothing is called for a section that is passed before the change before it is complete:
        // that change does not fit, and its point says how far it reaches.
        let passed = into.to <= walked.last.travelled();
        if !passed && into.rung != from.rung {
            let change = Change { haul, run, sampling, from, into };
            if change.plan(&mut walked)? {
                from = into;
            } else {
                walked.kept_low.push(KeptLow {
                    load_state: run.load_state,
                    from: run.course.chainage(into.from),
                    to: run.course.chainage(into.to),
                    wanted: into.rung,
                    kept: from.rung,
                });
                from.to = into.to;
            }
        }
    }
    Ok(walked)
}

/// How many samples of each change, and who works them.
#[derive(Clone, Copy)]
pub(crate) struct Sampling<'a> {
    pub samples: usize,
    pub workers: &'a dyn Workers,
}

/// One change between two sections.
#[derive(Clone, Copy)]
pub(super) struct Change<'a> {
    pub haul: &'a HaulCycle,
    pub run: &'a Run<'a>,
    pub sampling: Sampling<'a>,
    pub from: Section,
    pub into: Section,
}

impl Change<'_> {
    pub fn action(&self) -> Action {
        if self.run.truck.cap(self.into.rung) > self.run.truck.cap(self.from.rung) {
            Action::Raise
        } else {
            Action::Lower
        }
    }

    /// Plans the change; false if the stretch is better kept on the rung before it.
    fn plan(&self, walked: &mut Walked) -> Result<bool, WalkError> {
        let run = self.run;
        let place = self.into.from;
        if self.changes_nothing() {
            let to = run.target(self.into.rung);
            walked.changes.push(PlannedChange { at: place, to, standing: false });
            return Ok(true);
        }
        let base = run.caps_of(&walked.changes);
        let approach = run.approach(&walked.last, place, &base)?;
        let earliest = walked.last.travelled().max(self.from.from);
        let open = self.open(earliest, place);
        let caps = |start: Length| self.caps_from(&base, start);
        let refuses = |attempt: &Attempt| self.refuses(attempt, &base);
        let to = run.target(self.into.rung);
        let found = latest(run, &approach, to, &open, &caps, &refuses)?;
        match found {
            Found::Start(nominal) => {
                let sure = make_sure(self, &approach, &open, *nominal, &base)?;
                let attempt = sure.attempt;
                walked.changes.push(PlannedChange { at: attempt.start, to, standing: false });
                let others = self.lay_by_beside(&approach, earliest, &base)?;
                let chosen = WayTaken { way: Way::Rolling, time_lost: Some(Time::ZERO) };
                let mut point = self.point(&approach, &attempt, chosen, others, &base)?;
                point.spread = sure.spread;
                point.fits_p90 = sure.fits_p90;
                walked.points.push(point);
                walked.last = attempt.end;
            }
            _ if self.action() == Action::Lower => {
                let attempt = run.attempt(&approach, earliest, to, &caps(earliest))?;
                walked.changes.push(PlannedChange { at: earliest, to, standing: false });
                let past = attempt.complete.unwrap_or(run.course.length()) - place;
                let chosen = WayTaken {
                    way: Way::GoOnSlowly { past: past.max(Length::ZERO) },
                    time_lost: Some(Time::ZERO),
                };
                let missing = WayTaken {
                    way: Way::MoreRoad { missing: past.max(Length::ZERO) },
                    time_lost: None,
                };
                let point = self.point(&approach, &attempt, chosen, vec![missing], &base)?;
                walked.points.push(point);
                walked.last = attempt.end;
            }
            Found::TooShort | Found::NotPermitted(_) => {
                let Refused { changes, attempt, chosen, others } =
                    when_it_does_not_fit(self, &approach, &open, earliest, &base)?;
                let ends_in_time = attempt.complete.is_some_and(|at| at < self.into.to);
                let is_last = self.into.to >= run.course.length() - Length::from_m(1.0);
                if !ends_in_time && !is_last {
                    return Ok(false);
                }
                walked.changes.extend(changes);
                let mut point = self.point(&approach, &attempt, chosen, others, &base)?;
                if let Found::NotPermitted(why) = found {
                    point.refused = Some(why);
                    point.fits = matches!(point.chosen.way, Way::LayBy(_));
                }
                walked.points.push(point);
                walked.last = attempt.end;
            }
        }
        Ok(true)
    }

    /// Where the change may be ordered: raising keeps off sustained descents and legs that forbid it.
    pub fn open(&self, earliest: Length, to: Length) -> Vec<Open> {
        if self.action() == Action::Lower {
            return open_stretches(earliest, to, &[]);
        }
        let closed = closed_to_raising(self.haul, self.run.course);
        open_stretches(earliest, to, &closed)
    }

    /// Caps of the run when this change is ordered at `start`.
    pub fn caps_from(&self, base: &[CappedStretch], start: Length) -> Vec<CappedStretch> {
        let mut caps = base.to_vec();
        if self.action() == Action::Lower {
            let cap = self.run.truck.cap(self.into.rung);
            caps.push(CappedStretch { from: start, to: self.into.to, cap });
        }
        caps
    }

    /// Brakes first: compressor limit kept, and the reservoir at cut-in or more at the next descent.
    pub fn refuses(
        &self,
        attempt: &Attempt,
        base: &[CappedStretch],
    ) -> Result<Option<Refusal>, WalkError> {
        if self.action() == Action::Lower {
            return Ok(None);
        }
        let controller = &self.haul.combination.controller;
        if attempt.longest_loaded > controller.compressor_limit {
            return Ok(Some(Refusal::CompressorLimit));
        }
        let Some(complete) = attempt.complete else { return Ok(None) };
        let next = self
            .run
            .course
            .descents()
            .iter()
            .find(|descent| descent.top >= complete && descent.top < self.into.to);
        let Some(descent) = next else { return Ok(None) };
        let state = self.run.clock_at(&attempt.end, descent.top, base)?;
        let supply: GaugePressure = state.supply(self.run.truck.ambient());
        let enough = supply >= self.haul.combination.supply.governor.cut_in;
        Ok((!enough).then_some(Refusal::SupplyBeforeDescent))
    }

    /// Whether the tires of a raise would be filled on a sustained descent.
    pub fn on_descent(&self, attempt: &Attempt) -> bool {
        let complete = attempt.complete.unwrap_or(self.run.course.length());
        self.action() == Action::Raise
            && self
                .run
                .course
                .descents()
                .iter()
                .any(|descent| descent.top < complete && descent.foot > attempt.start)
    }

    /// Whether every channel holds nearly the same on both rungs, so that there is nothing to call.
    fn changes_nothing(&self) -> bool {
        let deadband = self.haul.combination.controller.deadband;
        let set = self.run.truck.set_pressures();
        (0..self.run.truck.channels()).all(|channel| {
            let of = |rung| set.get(channel, self.run.load_state, rung);
            (of(self.from.rung) - of(self.into.rung)).abs() <= deadband
        })
    }

    pub fn point(
        &self,
        approach: &Approach,
        attempt: &Attempt,
        chosen: WayTaken,
        others: Vec<WayTaken>,
        base: &[CappedStretch],
    ) -> Result<ChangePoint, WalkError> {
        let run = self.run;
        let place = self.into.from;
        let complete = attempt.complete.unwrap_or(run.course.length());
        let fits = matches!(chosen.way, Way::Rolling | Way::LayBy(_));
        let (cap_from, cap_to) = (run.truck.cap(self.from.rung), run.truck.cap(self.into.rung));
        let before_descent = self.action() == Action::Raise
            && run
                .course
                .descents()
                .iter()
                .any(|descent| descent.top >= complete && descent.foot <= place);
        Ok(ChangePoint {
            at: run.course.chainage(attempt.start),
            travelled: attempt.start,
            load_state: run.load_state,
            from: run.target(self.from.rung),
            to: run.target(self.into.rung),
            action: self.action(),
            fits,
            refused: None,
            reach_by: run.course.chainage(place),
            reached: run.course.chainage(complete),
            lead: complete.max(place) - attempt.start,
            time: attempt.time,
            spread: None,
            fits_p90: None,
            cap: cap_from.min(cap_to),
            lowest_supply: attempt.lowest_supply,
            longest_loaded: attempt.longest_loaded,
            chosen,
            others,
            late_1_km: late(self, approach, attempt, Length::from_km(1.0), base)?,
            never: never(self, approach, attempt, base)?,
            before_descent,
        })
    }
}
