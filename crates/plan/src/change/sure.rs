//! Moves a change point forward until nine of ten changes are complete in time.

use haul::{CappedStretch, Envelope, State, Stepper};
use quantity::Length;

use super::run::{Approach, Attempt};
use super::search::Open;
use super::spread::{ChangeSpread, draw, sample_change};
use super::walk::{Change, WalkError};

/// A change point that nine of ten changes can trust, or the nominal one with what is wrong.
pub(super) struct Sure {
    pub attempt: Attempt,
    pub spread: Option<ChangeSpread>,
    pub fits_p90: Option<bool>,
}

/// Moves of the start for the sample at the ninetieth percentile.
const MOVES: usize = 3;

pub(super) fn make_sure(
    change: &Change<'_>,
    approach: &Approach,
    open: &[Open],
    nominal: Attempt,
    base: &[CappedStretch],
) -> Result<Sure, WalkError> {
    let (run, samples) = (change.run, change.sampling.samples);
    if samples == 0 {
        return Ok(Sure { attempt: nominal, spread: None, fits_p90: None });
    }
    let to = run.target(change.into.rung);
    let caps = change.caps_from(base, nominal.start);
    let envelope = Envelope::new(run.coarse, &caps, &run.style);
    let begin = run.arrive(approach, nominal.start, &caps)?;
    let spread = sample_change(change, &envelope, &begin, to);
    let Some(spread) = spread.filter(|spread| spread.incomplete * 10 <= samples) else {
        return Ok(Sure { attempt: nominal, spread, fits_p90: Some(false) });
    };
    // The stretch must end where the nominal change had to: at the place, or before a descent.
    let Some(stretch) =
        open.iter().find(|stretch| stretch.from <= nominal.start && nominal.start <= stretch.to)
    else {
        return Ok(Sure { attempt: nominal, spread: Some(spread), fits_p90: Some(false) });
    };
    let must = stretch.to;
    let mut start = (must - spread.lead_p90).min(nominal.start);
    for _ in 0..MOVES {
        let from = start.max(stretch.from);
        let Some(lead) = lead_of_sample(change, approach, from, spread.p90_sample, base)? else {
            break;
        };
        let next = (must - lead).min(start);
        let moved = start - next;
        // Never later than the leads seen so far allow.
        start = next;
        if moved < Length::from_m(1.0) {
            break;
        }
    }
    let fits = start >= stretch.from;
    let start = start.max(stretch.from);
    let attempt = if start < nominal.start {
        run.attempt(approach, start, to, &change.caps_from(base, start))?
    } else {
        nominal.clone()
    };
    // An earlier start may run into what the nominal one kept clear of.
    if change.refuses(&attempt, base)?.is_some() {
        return Ok(Sure { attempt: nominal, spread: Some(spread), fits_p90: Some(false) });
    }
    Ok(Sure { attempt, spread: Some(spread), fits_p90: Some(fits) })
}

/// Lead of one sample when the change is begun at `start`, on the fine course.
fn lead_of_sample(
    change: &Change<'_>,
    approach: &Approach,
    start: Length,
    sample: usize,
    base: &[CappedStretch],
) -> Result<Option<Length>, WalkError> {
    let run = change.run;
    let caps = change.caps_from(base, start);
    let drawn = draw(&change.haul.spread, sample);
    let truck = run.truck.varied(&drawn.variation);
    let envelope = run.envelope(&caps).scaled(drawn.road_speed);
    let stepper = Stepper::new(&truck, run.course, &envelope, run.style);
    let mut state: State = run.arrive(approach, start, &caps)?;
    stepper.put_off(&mut state, drawn.held);
    stepper.order(&mut state, run.target(change.into.rung));
    let end = run.course.length();
    while state.is_changing() && state.travelled() < end - Length::from_mm(1.0) {
        stepper.step(&mut state, end)?;
    }
    Ok((!state.is_changing()).then(|| state.travelled() - start + drawn.reaction))
}
