//! The run along the route, for charts and tables of a simulation.

use haul::Trace;
use model::haul_cycle::LadenDirection;
use plan::CellId;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::{Planned, Simulated};

use crate::route::{LegView, MarkView, elevation, laden_direction, legs, places};

/// One moment of the run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SampleView {
    /// Clock since the start of the shift.
    pub time_s: f64,
    /// Chainage.
    pub km: f64,
    /// Load state.
    pub load_state: String,
    /// Speed.
    pub speed_kmh: f64,
    /// Speed cap.
    pub cap_kmh: f64,
    /// Grade, uphill positive.
    pub grade_pct: f64,
    /// Rung ordered.
    pub rung: String,
    /// Whether a change is under way.
    pub changing: bool,
    /// Service pressure.
    pub supply_kpa: f64,
    /// Whether the compressor delivers.
    pub compressor_loading: bool,
    /// Tire pressure of each channel as a vented gauge reads it.
    pub tire_kpa: Vec<f64>,
    /// Lowest allowed in each channel, cold, on the rung ordered; `null` where none is possible.
    pub tire_minimum_kpa: Vec<Option<f64>>,
    /// Air temperature in each channel's tires.
    pub tire_c: Vec<f64>,
    /// Fuel so far.
    pub fuel_l: f64,
    /// Free air compressed so far.
    pub compressed_l: f64,
}

/// A simulated haul along its route.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RunView {
    /// `airtide.run/1`.
    pub schema: String,
    /// Haul.
    pub haul: String,
    /// Route.
    pub route: String,
    /// Channels.
    pub channels: Vec<String>,
    /// Load states of the empty and the laden run.
    pub load_states: [String; 2],
    /// Which way the load goes: `forward` or `backward` along the chainage.
    pub laden_direction: String,
    /// Legs.
    pub legs: Vec<LegView>,
    /// Elevation as (km, m).
    pub elevation_km_m: Vec<(f64, f64)>,
    /// Landmarks, lay-bys and change points.
    pub marks: Vec<MarkView>,
    /// Samples in time.
    pub samples: Vec<SampleView>,
}

/// Makes the view of a simulated haul.
pub fn run_view(planned: &Planned, simulated: &Simulated) -> RunView {
    let haul = &planned.haul;
    let combination = &haul.combination;
    let state = |index: usize| combination.load_states[index].name.clone();
    RunView {
        schema: "airtide.run/1".to_owned(),
        haul: haul.name.clone(),
        route: haul.route.name.clone(),
        channels: combination.channels.iter().map(|channel| channel.name.clone()).collect(),
        load_states: [state(haul.empty_state), state(haul.laden_state)],
        laden_direction: laden_direction(haul),
        legs: legs(haul),
        elevation_km_m: elevation(haul),
        marks: marks(planned),
        samples: samples(planned, &simulated.trace),
    }
}

fn marks(planned: &Planned) -> Vec<MarkView> {
    let (haul, plan) = (&planned.haul, &planned.plan);
    let changes = plan.driven.iter().flat_map(|driven| &driven.points).map(|point| MarkView {
        km: point.at.as_km(),
        name: haul.combination.rungs[point.to.rung].name.clone(),
        kind: match point.action {
            plan::Action::Raise => "raise",
            plan::Action::Lower => "lower",
        }
        .to_owned(),
        load_state: Some(haul.combination.load_states[point.load_state].name.clone()),
        reach_by_km: Some(point.reach_by.as_km()),
    });
    let laden_change = plan.driven.iter().filter_map(|driven| {
        let choice = &driven.laden_change;
        let chosen = choice.options.iter().find(|option| option.way == choice.chosen)?;
        Some(MarkView {
            km: chosen.at?.as_km(),
            name: haul.combination.load_states[choice.to.load_state].name.clone(),
            kind: "raise".to_owned(),
            load_state: Some(haul.combination.load_states[haul.empty_state].name.clone()),
            reach_by_km: Some(match haul.laden_direction {
                LadenDirection::Forward => 0.0,
                LadenDirection::Backward => haul.route.length().as_km(),
            }),
        })
    });
    places(haul).chain(changes).chain(laden_change).collect()
}

fn samples(planned: &Planned, trace: &Trace) -> Vec<SampleView> {
    let (haul, plan) = (&planned.haul, &planned.plan);
    let combination = &haul.combination;
    let channels = combination.channels.len();
    let lowest = |channel, load_state, rung| {
        let id = CellId { channel, load_state, chain_state: 0, rung };
        let window = plan.ladder.cell(id)?.window.as_ref()?;
        Some(window.governing_minimum().pressure.as_kpa())
    };
    trace
        .samples()
        .iter()
        .map(|sample| SampleView {
            time_s: sample.time.as_s(),
            km: sample.chainage.as_km(),
            load_state: combination.load_states[sample.load_state].name.clone(),
            speed_kmh: sample.speed.as_kmh(),
            cap_kmh: sample.cap.as_kmh(),
            grade_pct: sample.grade * 100.0,
            rung: combination.rungs[sample.rung].name.clone(),
            changing: sample.changing,
            supply_kpa: sample.supply.as_kpa(),
            compressor_loading: sample.loading,
            tire_kpa: (0..channels).map(|channel| sample.tires[channel].as_kpa()).collect(),
            tire_minimum_kpa: (0..channels)
                .map(|channel| lowest(channel, sample.load_state, sample.rung))
                .collect(),
            tire_c: (0..channels)
                .map(|channel| sample.tire_temperatures[channel].as_celsius())
                .collect(),
            fuel_l: sample.fuel.as_l(),
            compressed_l: sample.compressed.as_l(),
        })
        .collect()
}
