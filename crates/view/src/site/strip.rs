//! The run along the route in columns: as much as a screen can draw, no more.

use haul::Trace;
use plan::CellId;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::{Planned, Tried};

use crate::route::{self, LegView, MarkView};

/// A run along its route for the screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct StripView {
    /// Length of the route.
    pub route_km: f64,
    /// Air channels.
    pub channels: Vec<String>,
    /// Load states of the empty and the laden run.
    pub load_states: [String; 2],
    /// Which way the load goes: `forward` or `backward` along the chainage.
    pub laden_direction: String,
    /// Legs.
    pub legs: Vec<LegView>,
    /// Elevation as (km, m).
    pub elevation_km_m: Vec<(f64, f64)>,
    /// Landmarks and lay-bys.
    pub marks: Vec<MarkView>,
    /// The run to loading.
    pub empty: ColumnsView,
    /// The run from loading.
    pub laden: ColumnsView,
}

/// Samples of a run, column by column.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
pub struct ColumnsView {
    /// Chainage.
    pub km: Vec<f64>,
    /// Clock.
    pub time_s: Vec<f64>,
    /// Speed.
    pub speed_kmh: Vec<f64>,
    /// Speed cap.
    pub cap_kmh: Vec<f64>,
    /// Service pressure.
    pub supply_kpa: Vec<f64>,
    /// Whether a change is under way.
    pub changing: Vec<bool>,
    /// Index of the rung ordered.
    pub rung: Vec<usize>,
    /// Tire pressure of each channel as a vented gauge reads it.
    pub tire_kpa: Vec<Vec<f64>>,
    /// Lowest allowed in each channel, cold, on the rung ordered.
    pub tire_minimum_kpa: Vec<Vec<Option<f64>>>,
}

impl StripView {
    /// The strip of a trial.
    pub fn new(tried: &Tried) -> Self {
        let haul = &tried.planned.haul;
        let state = |index: usize| haul.combination.load_states[index].name.clone();
        let half = |state| columns(&tried.planned, &tried.trace, state);
        Self {
            route_km: haul.route.length().as_km(),
            channels: haul.combination.channels.iter().map(|one| one.name.clone()).collect(),
            load_states: [state(haul.empty_state), state(haul.laden_state)],
            laden_direction: route::laden_direction(haul),
            legs: route::legs(haul),
            elevation_km_m: elevation(haul),
            marks: route::places(haul).collect(),
            empty: half(haul.empty_state),
            laden: half(haul.laden_state),
        }
    }
}

/// Digits a screen shows; fewer bytes, same picture.
fn tidy(value: f64, scale: f64) -> f64 {
    (value * scale).round() / scale
}

/// Heights at most so many; a strip is some hundred pixels wide.
const HEIGHTS: usize = 400;

fn elevation(haul: &model::haul_cycle::HaulCycle) -> Vec<(f64, f64)> {
    let points: Vec<_> = haul.route.profile.points().iter().collect();
    let step = points.len().div_ceil(HEIGHTS).max(1);
    let last = points.len().saturating_sub(1);
    points
        .iter()
        .enumerate()
        .filter(|(index, _)| index % step == 0 || *index == last)
        .map(|(_, (at, height))| (tidy(at.as_km(), 1e3), tidy(height.as_m(), 10.0)))
        .collect()
}

fn columns(planned: &Planned, trace: &Trace, load_state: usize) -> ColumnsView {
    let (haul, ladder) = (&planned.haul, &planned.plan.ladder);
    let channels = haul.combination.channels.len();
    let mut view = ColumnsView {
        tire_kpa: vec![Vec::new(); channels],
        tire_minimum_kpa: vec![Vec::new(); channels],
        ..ColumnsView::default()
    };
    let lowest = |channel, rung| {
        let id = CellId { channel, load_state, chain_state: 0, rung };
        let window = ladder.cell(id)?.window.as_ref()?;
        Some(tidy(window.governing_minimum().pressure.as_kpa(), 10.0))
    };
    for sample in trace.samples().iter().filter(|sample| sample.load_state == load_state) {
        view.km.push(tidy(sample.chainage.as_km(), 1e3));
        view.time_s.push(tidy(sample.time.as_s(), 10.0));
        view.speed_kmh.push(tidy(sample.speed.as_kmh(), 10.0));
        view.cap_kmh.push(tidy(sample.cap.as_kmh(), 10.0));
        view.supply_kpa.push(tidy(sample.supply.as_kpa(), 1.0));
        view.changing.push(sample.changing);
        view.rung.push(sample.rung);
        for channel in 0..channels {
            view.tire_kpa[channel].push(tidy(sample.tires[channel].as_kpa(), 1.0));
            view.tire_minimum_kpa[channel].push(lowest(channel, sample.rung));
        }
    }
    view
}
