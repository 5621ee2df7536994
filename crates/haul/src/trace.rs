//! What a run leaves behind for charts, tables and logs.

use model::air::MAX_CHANNELS;
use quantity::{GaugePressure, Length, Speed, Temperature, Time, Volume};

/// One moment of the run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Clock.
    pub time: Time,
    /// Travel distance.
    pub travelled: Length,
    /// Chainage along the route.
    pub chainage: Length,
    /// Speed.
    pub speed: Speed,
    /// Speed cap of the pressures held.
    pub cap: Speed,
    /// Grade sign and size, uphill positive.
    pub grade: f64,
    /// Index of the load state.
    pub load_state: usize,
    /// Rung ordered.
    pub rung: usize,
    /// Whether a change is under way.
    pub changing: bool,
    /// Service reservoirs.
    pub supply: GaugePressure,
    /// Whether the compressor delivers.
    pub loading: bool,
    /// Each channel's tires as a vented gauge reads them.
    pub tires: [GaugePressure; MAX_CHANNELS],
    /// Air temperature in each channel's tires.
    pub tire_temperatures: [Temperature; MAX_CHANNELS],
    /// Fuel burnt so far.
    pub fuel: Volume,
    /// Free air compressed so far.
    pub compressed: Volume,
}

/// Something that listens to a run.
pub trait Record {
    /// Whether samples are wanted at all; lets a fast run skip making them.
    const WANTS: bool;

    /// Takes a sample.
    fn take(&mut self, sample: Sample);
}

/// Listens to nothing.
#[derive(Debug, Clone, Copy, Default)]
pub struct NoRecord;

impl Record for NoRecord {
    const WANTS: bool = false;

    fn take(&mut self, _: Sample) {}
}

/// Keeps samples that lie at least `spacing` apart in time, and every change of rung.
#[derive(Debug, Clone)]
pub struct Trace {
    spacing: Time,
    samples: Vec<Sample>,
}

impl Trace {
    /// An empty trace.
    pub fn every(spacing: Time) -> Self {
        Self { spacing, samples: Vec::new() }
    }

    /// The samples.
    pub fn samples(&self) -> &[Sample] {
        &self.samples
    }
}

impl Record for Trace {
    const WANTS: bool = true;

    fn take(&mut self, sample: Sample) {
        let keep = self.samples.last().is_none_or(|last| {
            sample.time - last.time >= self.spacing
                || sample.rung != last.rung
                || sample.changing != last.changing
                || sample.load_state != last.load_state
        });
        if keep {
            self.samples.push(sample);
        }
    }
}
