//! Truck to truck and run to run: how far the lead must reach for nine changes of ten.

use haul::{Envelope, State, Stepper, StepperError, Target, Truck, Variation};
use model::haul_cycle::Spread;
use quantity::{Length, Time};

use super::walk::{Change, Sampling};
use crate::chance::normal;
use crate::workers::collect;

/// One change of one truck on one day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sampled {
    /// Which sample.
    pub sample: usize,
    /// How long it took.
    pub time: Time,
    /// Road from the place to where it was complete, the driver's reaction included.
    pub lead: Length,
}

/// Spread of a change begun at one place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChangeSpread {
    /// Time of the middle change.
    pub time_p50: Time,
    /// Time that nine of ten keep.
    pub time_p90: Time,
    /// Lead of the middle change.
    pub lead_p50: Length,
    /// Lead that nine of ten keep.
    pub lead_p90: Length,
    /// The sample at the ninetieth percentile of the lead.
    pub p90_sample: usize,
    /// Samples that did not complete on the run at all.
    pub incomplete: usize,
    /// Samples.
    pub samples: usize,
}

/// What a sample draws: the truck by its number, the day by its own.
pub(crate) struct Drawn {
    pub variation: Variation,
    pub road_speed: f64,
    pub reaction: Length,
    pub held: quantity::PressureDifference,
}

/// Factors stay clear of zero however wide a spread is given.
const LEAST_FACTOR: f64 = 0.2;

pub(crate) fn draw(spread: &Spread, sample: usize) -> Drawn {
    let z = |input: &str| normal(spread.seed, sample, input);
    let factor = |sigma: f64, input: &str| (1.0 + sigma * z(input)).max(LEAST_FACTOR);
    let (truck, run) = (&spread.truck, &spread.run);
    Drawn {
        variation: Variation {
            delivery: factor(truck.delivery, "truck: delivery"),
            conductance: factor(truck.conductance, "truck: conductance"),
            tire_volume: factor(truck.tire_volume, "truck: tire volume"),
            engine_speed: factor(run.engine_speed, "run: engine speed"),
            ambient: run.ambient * z("run: ambient"),
        },
        road_speed: factor(run.road_speed, "run: road speed"),
        reaction: run.reaction * z("run: reaction").abs(),
        held: run.held_pressure * z("run: held pressure"),
    }
}

/// The change from one state, sampled.
pub(super) fn sample_change(
    change: &Change<'_>,
    envelope: &Envelope,
    begin: &State,
    to: Target,
) -> Option<ChangeSpread> {
    let Sampling { samples, workers } = change.sampling;
    let job = |sample: usize| one_change(change, envelope, begin, to, sample).ok()?;
    let mut done: Vec<Sampled> = collect(workers, samples, job).into_iter().flatten().collect();
    if done.is_empty() {
        return None;
    }
    let incomplete = samples - done.len();
    // Changes that never complete stand behind all that do.
    let rank = |tenths: usize| (samples * tenths).div_ceil(10).clamp(1, done.len()) - 1;
    let (middle, tail) = (rank(5), rank(9));
    done.sort_by(|a, b| a.time.total_cmp(&b.time).then(a.sample.cmp(&b.sample)));
    let (time_p50, time_p90) = (done[middle].time, done[tail].time);
    done.sort_by(|a, b| a.lead.total_cmp(&b.lead).then(a.sample.cmp(&b.sample)));
    Some(ChangeSpread {
        time_p50,
        time_p90,
        lead_p50: done[middle].lead,
        lead_p90: done[tail].lead,
        p90_sample: done[tail].sample,
        incomplete,
        samples,
    })
}

fn one_change(
    change: &Change<'_>,
    envelope: &Envelope,
    begin: &State,
    to: Target,
    sample: usize,
) -> Result<Option<Sampled>, StepperError> {
    let run = change.run;
    let drawn = draw(&change.haul.spread, sample);
    let truck: Truck = run.truck.varied(&drawn.variation);
    let scaled = envelope.scaled(drawn.road_speed);
    let stepper = Stepper::new(&truck, run.coarse, &scaled, run.style);
    let mut state = begin.clone();
    stepper.take_over(&mut state);
    stepper.put_off(&mut state, drawn.held);
    stepper.order(&mut state, to);
    let end = run.coarse.length();
    while state.is_changing() && state.travelled() < end - Length::from_mm(1.0) {
        stepper.step(&mut state, end)?;
    }
    Ok((!state.is_changing()).then(|| Sampled {
        sample,
        time: state.clock() - begin.clock(),
        lead: state.travelled() - begin.travelled() + drawn.reaction,
    }))
}
