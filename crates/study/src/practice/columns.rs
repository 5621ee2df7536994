//! Samples of a drive as the columns the audit reads.

use audit::{ChannelColumns, Column, Columns, LoadColumn};
use haul::Sample;
use series::Quality;

/// Columns of a drive; every value of a simulation is known.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct DriveColumns {
    km: Vec<f64>,
    kmh: Vec<f64>,
    load: Vec<u8>,
    kpa: Vec<Vec<f64>>,
    celsius: Vec<Vec<f64>>,
    quality: Vec<Quality>,
}

impl DriveColumns {
    pub fn of(samples: &[Sample], channels: usize) -> Self {
        let column = |of: &dyn Fn(&Sample) -> f64| samples.iter().map(of).collect::<Vec<f64>>();
        Self {
            km: column(&|sample| sample.chainage.as_km()),
            kmh: column(&|sample| sample.speed.as_kmh()),
            load: samples
                .iter()
                .map(|sample| u8::try_from(sample.load_state).unwrap_or(u8::MAX))
                .collect(),
            kpa: (0..channels).map(|at| column(&|sample| sample.tires[at].as_kpa())).collect(),
            celsius: (0..channels)
                .map(|at| column(&|sample| sample.tire_temperatures[at].as_celsius()))
                .collect(),
            quality: vec![Quality::Value; samples.len()],
        }
    }

    /// Hands the columns over as slices.
    pub fn with<T>(&self, read: impl FnOnce(&Columns<'_>) -> T) -> T {
        let column = |values| Column { values, quality: &self.quality };
        let channels: Vec<ChannelColumns<'_>> = self
            .kpa
            .iter()
            .zip(&self.celsius)
            .map(|(kpa, celsius)| ChannelColumns {
                pressure_kpa: column(kpa),
                temperature_c: Some(column(celsius)),
            })
            .collect();
        read(&Columns {
            chainage_km: column(&self.km),
            speed_kmh: column(&self.kmh),
            load_state: LoadColumn { values: &self.load, quality: &self.quality },
            channels: &channels,
        })
    }
}
