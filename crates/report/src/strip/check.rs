//! What keeps a run from being drawn, found before anything is.

use language::TextError;
use view::{MarkView, RunView, SampleView};

/// Channels that can be told apart by line style alone.
pub(crate) const MAX_CHANNELS: usize = 16;

/// The marks that are change points.
pub(crate) const CHANGES: [&str; 2] = ["raise", "lower"];
const PLACES: [&str; 2] = ["landmark", "lay-by"];
const DIRECTIONS: [&str; 2] = ["forward", "backward"];

/// Why a chart could not be made.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ChartError {
    /// Nothing to draw.
    #[error("the run of haul '{haul}' has no samples; simulate it with a shorter spacing")]
    NoSamples {
        /// Whose run.
        haul: String,
    },
    /// A plan without effects.
    #[error("the plan of haul '{haul}' has no effects to draw; plan it again with this program")]
    NoEffects {
        /// Whose plan.
        haul: String,
    },
    /// A number no chart can show.
    #[error("{what} is {value}; to be drawn it must lie between {from} and {to}")]
    OutOfRange {
        /// Which number, with its unit.
        what: String,
        /// The number.
        value: f64,
        /// Least that can be drawn.
        from: f64,
        /// Most that can be drawn.
        to: f64,
    },
    /// A word the chart does not know.
    #[error("{what} is '{value}'; it must be one of: {known}")]
    UnknownWord {
        /// Whose word.
        what: String,
        /// The word.
        value: String,
        /// The words known.
        known: String,
    },
    /// A sample with more or fewer values than there are channels.
    #[error("the sample at {time_s} s has {found} {what} for {channels} channels")]
    ChannelCount {
        /// Time of the sample.
        time_s: f64,
        /// Which values.
        what: &'static str,
        /// How many there are.
        found: usize,
        /// How many there should be.
        channels: usize,
    },
    /// Both runs have one load state, so their samples cannot be told apart.
    #[error(
        "empty and laden run both have the load state '{name}'; give each run its own load state"
    )]
    SameLoadState {
        /// The load state.
        name: String,
    },
    /// A text is missing.
    #[error(transparent)]
    Text(#[from] TextError),
}

fn within(value: f64, (from, to): (f64, f64), what: &str) -> Result<(), ChartError> {
    // Written so that NaN fails too.
    if (from..=to).contains(&value) {
        return Ok(());
    }
    Err(ChartError::OutOfRange { what: what.to_owned(), value, from, to })
}

fn known<'a>(
    value: &str,
    words: impl IntoIterator<Item = &'a str> + Clone,
    what: &str,
) -> Result<(), ChartError> {
    if words.clone().into_iter().any(|word| word == value) {
        return Ok(());
    }
    Err(ChartError::UnknownWord {
        what: what.to_owned(),
        value: value.to_owned(),
        known: words.into_iter().collect::<Vec<_>>().join(", "),
    })
}

const KM: (f64, f64) = (-10_000.0, 100_000.0);
const KMH: (f64, f64) = (0.0, 500.0);
const KPA: (f64, f64) = (-150.0, 5_000.0);
const HEIGHT_M: (f64, f64) = (-1_000.0, 9_000.0);
const TIME_S: (f64, f64) = (0.0, 1e8);

/// Refuses a run that cannot be drawn whole.
pub(crate) fn check(run: &RunView) -> Result<(), ChartError> {
    if run.samples.is_empty() {
        return Err(ChartError::NoSamples { haul: run.haul.clone() });
    }
    if run.load_states[0] == run.load_states[1] {
        return Err(ChartError::SameLoadState { name: run.load_states[0].clone() });
    }
    known(&run.laden_direction, DIRECTIONS, "the direction of the laden run")?;
    within(run.channels.len() as f64, (0.0, MAX_CHANNELS as f64), "the number of channels")?;
    for leg in &run.legs {
        let what = |part: &str| format!("{part} of leg '{}'", leg.name);
        known(&leg.surface, super::surface::SURFACES.map(|s| s.word), &what("the surface"))?;
        within(leg.from_km, KM, &what("the beginning, km,"))?;
        within(leg.to_km, (leg.from_km, KM.1), &what("the end, km,"))?;
        within(leg.speed_limit_kmh, KMH, &what("the speed limit, km/h,"))?;
    }
    for &(km, height) in &run.elevation_km_m {
        within(km, KM, "a place of the elevation profile, km,")?;
        within(height, HEIGHT_M, "an elevation, m,")?;
    }
    run.marks.iter().try_for_each(|mark| check_mark(run, mark))?;
    run.samples.iter().try_for_each(|sample| check_sample(run, sample))
}

fn check_mark(run: &RunView, mark: &MarkView) -> Result<(), ChartError> {
    let what = |part: &str| format!("{part} of mark '{}'", mark.name);
    known(&mark.kind, PLACES.into_iter().chain(CHANGES), &what("the kind"))?;
    within(mark.km, KM, &what("the place, km,"))?;
    if CHANGES.contains(&mark.kind.as_str()) {
        let state = mark.load_state.as_deref().unwrap_or_default();
        known(state, run.load_states.iter().map(String::as_str), &what("the load state"))?;
    }
    mark.reach_by_km.map_or(Ok(()), |km| within(km, KM, &what("the end of the change, km,")))
}

fn check_sample(run: &RunView, sample: &SampleView) -> Result<(), ChartError> {
    let what = |part: &str| format!("{part} of the sample at {} s", sample.time_s);
    let channels = run.channels.len();
    for (name, found) in [
        ("tire pressures", sample.tire_kpa.len()),
        ("lowest allowed pressures", sample.tire_minimum_kpa.len()),
    ] {
        if found != channels {
            let time_s = sample.time_s;
            return Err(ChartError::ChannelCount { time_s, what: name, found, channels });
        }
    }
    let states = run.load_states.iter().map(String::as_str);
    known(&sample.load_state, states, &what("the load state"))?;
    within(sample.time_s, TIME_S, "the time of a sample, s,")?;
    within(sample.km, KM, &what("the place, km,"))?;
    within(sample.speed_kmh, KMH, &what("the speed, km/h,"))?;
    within(sample.cap_kmh, KMH, &what("the speed cap, km/h,"))?;
    within(sample.supply_kpa, KPA, &what("the supply pressure, kPa,"))?;
    let minimum = sample.tire_minimum_kpa.iter().flatten();
    sample
        .tire_kpa
        .iter()
        .chain(minimum)
        .try_for_each(|&kpa| within(kpa, KPA, &what("a tire pressure, kPa,")))
}
