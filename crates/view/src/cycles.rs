//! Whole cycles of many trucks on many days.

use plan::cycles::{CycleSpread, Tenths};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Ten, fifty and ninety of a hundred lie at or under these.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TenthsView {
    /// One of ten.
    pub p10: f64,
    /// The middle.
    pub p50: f64,
    /// Nine of ten.
    pub p90: f64,
}

/// One sampled cycle.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SampledCycleView {
    /// Time of the cycle.
    pub time_s: f64,
    /// Waited for pressure alone.
    pub waited_s: f64,
    /// Fuel.
    pub fuel_l: f64,
    /// Compressor time.
    pub compressor_loaded_s: f64,
    /// Lowest service pressure.
    pub lowest_supply_kpa: f64,
}

/// How the cycles of a haul spread.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CycleSpreadView {
    /// `airtide.cycles/1`.
    pub schema: String,
    /// Haul.
    pub haul: String,
    /// Cycles that could not be driven.
    pub not_driven: usize,
    /// Time of a cycle.
    pub time_s: TenthsView,
    /// Waited for pressure alone.
    pub waited_s: TenthsView,
    /// Fuel.
    pub fuel_l: TenthsView,
    /// Compressor time.
    pub compressor_loaded_s: TenthsView,
    /// Lowest service pressure.
    pub lowest_supply_kpa: TenthsView,
    /// Every cycle, in order of its number.
    pub cycles: Vec<SampledCycleView>,
}

fn tenths<T: Copy>(values: &Tenths<T>, number: impl Fn(T) -> f64) -> TenthsView {
    TenthsView { p10: number(values.p10), p50: number(values.p50), p90: number(values.p90) }
}

impl CycleSpreadView {
    /// Makes the view.
    pub fn new(haul: &str, spread: &CycleSpread) -> Self {
        use quantity::{GaugePressure, Time, Volume};
        Self {
            schema: "airtide.cycles/1".to_owned(),
            haul: haul.to_owned(),
            not_driven: spread.not_driven,
            time_s: tenths(&spread.time, Time::as_s),
            waited_s: tenths(&spread.waited, Time::as_s),
            fuel_l: tenths(&spread.fuel, Volume::as_l),
            compressor_loaded_s: tenths(&spread.compressor_loaded, Time::as_s),
            lowest_supply_kpa: tenths(&spread.lowest_supply, GaugePressure::as_kpa),
            cycles: spread
                .cycles
                .iter()
                .map(|cycle| SampledCycleView {
                    time_s: cycle.time.as_s(),
                    waited_s: cycle.waited.as_s(),
                    fuel_l: cycle.fuel.as_l(),
                    compressor_loaded_s: cycle.compressor_loaded.as_s(),
                    lowest_supply_kpa: cycle.lowest_supply.as_kpa(),
                })
                .collect(),
        }
    }
}
