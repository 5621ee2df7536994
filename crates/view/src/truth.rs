//! What truly happened in a made log, and the list of logs made.

use std::path::Path;

use haul::{Call, PhaseKind};
use quantity::{Length, PressureDifference, Time};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::make::{MadeLog, Truth, TruthChange, TruthSample};

/// A tire of a made log.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthTireView {
    /// Such as `drive.1.left.outer`.
    pub name: String,
    /// Location as frames give it: row from 0 in the high four bits, position from 0 in the low ones.
    pub location: u8,
    /// Its air channel; `null` where none feeds it.
    pub channel: Option<String>,
    /// Error of its healthy sensor; `null` where it has none.
    pub sensor_off_kpa: Option<f64>,
}

/// A fault that was asked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthFaultView {
    /// As it was asked for.
    pub asked: String,
    /// Its kind, as `--list-faults` names it.
    pub kind: String,
    /// Where; empty for the truck as a whole.
    pub place: String,
    /// How big, with its unit; empty where it has no size.
    pub size: String,
    /// From when.
    pub from_s: f64,
    /// Until when; `null` to the end.
    pub until_s: Option<f64>,
    /// When it truly was there, for faults of the truck.
    pub there: Vec<SpanView>,
}

/// A span of time.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SpanView {
    /// From when.
    pub from_s: f64,
    /// Until when; `null` to the end.
    pub until_s: Option<f64>,
}

/// A jump of the logger's clock.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ClockStepView {
    /// From when.
    pub from_s: f64,
    /// Until when; `null` to the end.
    pub until_s: Option<f64>,
    /// By how much it then is ahead.
    pub ahead_s: f64,
}

/// A change of pressures.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthChangeView {
    /// When it was asked for; where it was forgotten, when it should have been.
    pub asked_s: f64,
    /// Chainage there.
    pub asked_km: f64,
    /// Rung ordered.
    pub rung: String,
    /// Load state whose pressures were ordered.
    pub load_state: String,
    /// Chainage where the plan asks for it; `null` for changes ordered where the truck stands.
    pub planned_km: Option<f64>,
    /// `as planned`, `late` or `forgotten`.
    pub call: String,
    /// When it was complete on every channel; `null` if it never was.
    pub complete_s: Option<f64>,
    /// Chainage there.
    pub complete_km: Option<f64>,
}

/// A part of the day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthPhaseView {
    /// When it begins.
    pub begins_s: f64,
    /// `start of shift`, `empty`, `loading`, `laden` or `unloading`.
    pub kind: String,
}

/// True values, a list entry for each time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthValuesView {
    /// Times.
    pub time_s: Vec<f64>,
    /// Chainage.
    pub km: Vec<f64>,
    /// Service reservoirs, above ambient.
    pub service_kpa: Vec<f64>,
    /// Ambient pressure, absolute.
    pub ambient_kpa: Vec<f64>,
    /// Temperature outside.
    pub outside_c: Vec<f64>,
    /// Pressure above ambient, a list for each tire in the order of `tires`.
    pub tire_kpa: Vec<Vec<f64>>,
    /// Temperature of the gas, a list for each tire.
    pub gas_c: Vec<Vec<f64>>,
}

/// Everything that truly happened in a made log; times run from `begins_unix_s`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthDocument {
    /// `airtide.truth/1`.
    pub schema: String,
    /// File of the log, beside this one.
    pub log: String,
    /// Haul.
    pub haul: String,
    /// Truck.
    pub unit: String,
    /// What it pulls.
    pub trailers: Vec<String>,
    /// Clock zero, seconds since 1970-01-01 UTC.
    pub begins_unix_s: i64,
    /// End of the day.
    pub ends_s: f64,
    /// Distance driven.
    pub driven_km: f64,
    /// Seed of all draws.
    pub seed: u64,
    /// `good`, `late` or `forgetful`.
    pub driver: String,
    /// Whether positions lie on the surveyed track; otherwise they are at sea.
    pub surveyed_track: bool,
    /// Drift of the logger's clock in parts of a million.
    pub clock_drift_ppm: f64,
    /// Jumps of the logger's clock.
    pub clock_steps: Vec<ClockStepView>,
    /// Stretches without a record.
    pub gaps: Vec<SpanView>,
    /// Compressor delivery of this unit over its type's.
    pub delivery_share: f64,
    /// When the road was wet.
    pub wet: Option<SpanView>,
    /// Tires.
    pub tires: Vec<TruthTireView>,
    /// Faults.
    pub faults: Vec<TruthFaultView>,
    /// Changes, in order of time.
    pub changes: Vec<TruthChangeView>,
    /// Parts of the day.
    pub phases: Vec<TruthPhaseView>,
    /// True values every ten seconds.
    pub values: TruthValuesView,
}

/// A log that was made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MadeLogView {
    /// Its file.
    pub log: String,
    /// The file of its truth.
    pub truth: String,
    /// Truck.
    pub unit: String,
    /// Frames in it.
    pub frames: usize,
    /// Frames lost in gaps.
    pub lost_frames: usize,
    /// Bytes of it.
    pub bytes: usize,
    /// How long the day is.
    pub span_s: f64,
    /// Distance driven.
    pub driven_km: f64,
    /// Changes asked for.
    pub changes_asked: usize,
    /// Changes that were complete.
    pub changes_complete: usize,
    /// Changes that were forgotten.
    pub changes_forgotten: usize,
}

/// The logs that were made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MadeLogsDocument {
    /// `airtide.made-logs/1`.
    pub schema: String,
    /// The logs, in order of unit and day.
    pub logs: Vec<MadeLogView>,
}

impl MadeLogsDocument {
    /// The document of logs that were made.
    pub fn new(made: &[MadeLog]) -> Self {
        let count = |log: &MadeLog, is: fn(&TruthChange) -> bool| {
            log.truth.changes.iter().filter(|change| is(change)).count()
        };
        let logs = made.iter().map(|log| MadeLogView {
            log: log.file.display().to_string(),
            truth: log.truth_file.display().to_string(),
            unit: log.truth.unit.clone(),
            frames: log.frames,
            lost_frames: log.lost,
            bytes: log.bytes,
            span_s: round(log.truth.ends.as_s(), 3),
            driven_km: round(log.truth.driven.as_km(), 3),
            changes_asked: count(log, |change| change.call != Call::Forgotten),
            changes_complete: count(log, |change| change.complete.is_some()),
            changes_forgotten: count(log, |change| change.call == Call::Forgotten),
        });
        Self { schema: "airtide.made-logs/1".to_owned(), logs: logs.collect() }
    }
}

impl TruthDocument {
    /// The document of one made log.
    pub fn new(log: &MadeLog) -> Self {
        let truth = &log.truth;
        let name = |path: &Path| {
            path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned())
        };
        Self {
            schema: "airtide.truth/1".to_owned(),
            log: name(&log.file),
            haul: truth.haul.clone(),
            unit: truth.unit.clone(),
            trailers: truth.trailers.clone(),
            begins_unix_s: truth.begins_unix,
            ends_s: seconds(truth.ends),
            driven_km: km(truth.driven),
            seed: truth.seed,
            driver: truth.driver.to_owned(),
            surveyed_track: truth.surveyed_track,
            clock_drift_ppm: round(truth.clock_drift * 1e6, 3),
            clock_steps: truth
                .clock_steps
                .iter()
                .map(|step| ClockStepView {
                    from_s: seconds(step.from),
                    until_s: step.until.map(seconds),
                    ahead_s: seconds(step.by),
                })
                .collect(),
            gaps: truth.gaps.iter().map(|gap| span(gap.from, Some(gap.until))).collect(),
            delivery_share: round(truth.delivery, 4),
            wet: truth.wet.map(|(from, until)| span(from, Some(until))),
            tires: truth
                .tires
                .iter()
                .map(|tire| TruthTireView {
                    name: tire.name.clone(),
                    location: tire.location,
                    channel: tire.channel.clone(),
                    sensor_off_kpa: tire.sensor_off.map(PressureDifference::as_kpa).map(two),
                })
                .collect(),
            faults: faults(truth),
            changes: truth.changes.iter().map(change).collect(),
            phases: truth
                .phases
                .iter()
                .map(|phase| TruthPhaseView {
                    begins_s: seconds(phase.begins),
                    kind: kind(phase.kind).to_owned(),
                })
                .collect(),
            values: values(truth),
        }
    }
}

fn faults(truth: &Truth) -> Vec<TruthFaultView> {
    let there = |index: usize| {
        let own = truth.active.iter().filter(move |one| one.0 == index);
        own.map(|&(_, from, until)| span(from, until)).collect()
    };
    truth
        .faults
        .iter()
        .enumerate()
        .map(|(index, fault)| TruthFaultView {
            asked: fault.asked.clone(),
            kind: fault.kind.to_owned(),
            place: fault.place.clone(),
            size: fault.size.clone(),
            from_s: seconds(fault.from),
            until_s: fault.until.map(seconds),
            there: there(index),
        })
        .collect()
}

fn change(change: &TruthChange) -> TruthChangeView {
    TruthChangeView {
        asked_s: seconds(change.asked),
        asked_km: km(change.asked_at),
        rung: change.rung.clone(),
        load_state: change.load_state.clone(),
        planned_km: change.planned_at.map(km),
        call: match change.call {
            Call::AsPlanned => "as planned",
            Call::Late => "late",
            Call::Forgotten => "forgotten",
        }
        .to_owned(),
        complete_s: change.complete.map(|(clock, _)| seconds(clock)),
        complete_km: change.complete.map(|(_, at)| km(at)),
    }
}

fn kind(kind: PhaseKind) -> &'static str {
    match kind {
        PhaseKind::ShiftStart => "start of shift",
        PhaseKind::Empty => "empty",
        PhaseKind::Loading => "loading",
        PhaseKind::Laden => "laden",
        PhaseKind::Unloading => "unloading",
    }
}

fn values(truth: &Truth) -> TruthValuesView {
    let samples = &truth.samples;
    let of = |value: fn(&TruthSample) -> f64| samples.iter().map(|one| two(value(one))).collect();
    let by_tire = |value: fn(&TruthSample, usize) -> f64| {
        let tires = 0..truth.tires.len();
        tires.map(|tire| samples.iter().map(|one| two(value(one, tire))).collect()).collect()
    };
    TruthValuesView {
        time_s: samples.iter().map(|one| seconds(one.clock)).collect(),
        km: samples.iter().map(|one| km(one.chainage)).collect(),
        service_kpa: of(|one| one.service.as_kpa()),
        ambient_kpa: of(|one| one.ambient.as_kpa()),
        outside_c: of(|one| one.outside.as_celsius()),
        tire_kpa: by_tire(|one, tire| one.tires[tire].as_kpa()),
        gas_c: by_tire(|one, tire| one.gas[tire].as_celsius()),
    }
}

fn span(from: Time, until: Option<Time>) -> SpanView {
    SpanView { from_s: seconds(from), until_s: until.map(seconds) }
}

fn seconds(time: Time) -> f64 {
    round(time.as_s(), 3)
}

fn km(length: Length) -> f64 {
    round(length.as_km(), 4)
}

fn two(number: f64) -> f64 {
    round(number, 2)
}

/// A number with so many places, so that the file stays small.
fn round(number: f64, places: i32) -> f64 {
    let scale = 10f64.powi(places);
    (number * scale).round() / scale
}
