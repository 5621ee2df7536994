//! A plan tried: what is asked, and what comes of it.

use quantity::{Length, TemperatureDifference, Time};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::{Tried, WhatIf};

use super::StripView;
use crate::PlanView;

/// What is tried on a haul.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TrialRequest {
    /// Haul.
    pub haul: String,
    /// Conditions other than surveyed.
    #[serde(default)]
    pub what_if: WhatIfRequest,
    /// Cells set by hand.
    #[serde(default)]
    pub hand_set: Vec<HandSetRequest>,
    /// Changes called elsewhere.
    #[serde(default)]
    pub moved: Vec<MovedRequest>,
    /// Whether changes are sampled for the lead that nine of ten keep; slower.
    #[serde(default)]
    pub sampled: bool,
}

/// Conditions other than surveyed.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct WhatIfRequest {
    /// Laden loads, more or less by so much.
    pub load_pct: f64,
    /// Bearing of the ground, more or less by so much.
    pub bearing_pct: f64,
    /// Ambient, warmer or colder by so much.
    pub ambient_k: f64,
    /// Compressor delivery, more or less by so much.
    pub delivery_pct: f64,
    /// How much later every change is called.
    pub late_m: f64,
}

impl WhatIfRequest {
    /// The conditions; `None` for what is no number.
    pub fn what_if(&self) -> Option<WhatIf> {
        let share = |pct: f64| 1.0 + pct / 100.0;
        let numbers =
            [self.load_pct, self.bearing_pct, self.ambient_k, self.delivery_pct, self.late_m];
        numbers.iter().all(|number| number.is_finite()).then(|| WhatIf {
            load: share(self.load_pct),
            bearing: share(self.bearing_pct),
            ambient: TemperatureDifference::from_kelvin(self.ambient_k),
            delivery: share(self.delivery_pct),
            late: Length::from_m(self.late_m),
        })
    }
}

/// A cell set by hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HandSetRequest {
    /// Air channel.
    pub channel: String,
    /// Load state.
    pub load_state: String,
    /// Rung.
    pub rung: String,
    /// Cold pressure wanted.
    pub pressure_kpa: f64,
}

/// A change called elsewhere.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MovedRequest {
    /// Which change point, from 0 in the order of the plan.
    pub number: usize,
    /// Chainage where it is called.
    pub km: f64,
}

/// What comes of a trial.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrialDocument {
    /// `airtide.trial/1`.
    pub schema: String,
    /// The plan under the conditions tried; its effects and cost are asked for apart.
    pub plan: PlanView,
    /// The run with its calls where they are made; `null` where the haul cannot be driven.
    pub strip: Option<StripView>,
    /// Why it cannot be driven.
    pub not_driven_because: Option<String>,
    /// Time of the cycle as called.
    pub cycle_time_s: Option<f64>,
    /// Of that, lost by calls elsewhere than planned; below zero where time is won.
    pub time_lost_s: f64,
    /// Changes called elsewhere.
    pub called: Vec<CalledView>,
}

/// A change called elsewhere.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CalledView {
    /// Which change point, from 0.
    pub number: usize,
    /// Chainage of the call.
    pub km: f64,
    /// Chainage where it is complete; `null` if not before the run's end.
    pub reached_km: Option<f64>,
    /// Road run at a pressure not meant for it.
    pub wrong_road_m: f64,
}

impl TrialDocument {
    /// Makes the document.
    pub fn new(tried: &Tried) -> Self {
        let why_not = tried.planned.plan.driven.as_ref().err();
        Self {
            schema: "airtide.trial/1".to_owned(),
            plan: PlanView::new(&tried.planned, None),
            strip: tried.cycle.is_some().then(|| StripView::new(tried)),
            not_driven_because: why_not.map(ToString::to_string),
            cycle_time_s: tried.cycle.as_ref().map(|cycle| cycle.time().as_s()),
            time_lost_s: if tried.time_lost.abs() < Time::from_s(1e-3) {
                0.0
            } else {
                tried.time_lost.as_s()
            },
            called: tried
                .called
                .iter()
                .map(|called| CalledView {
                    number: called.number,
                    km: called.at.as_km(),
                    reached_km: called.reached.map(Length::as_km),
                    wrong_road_m: called.wrong_road.as_m(),
                })
                .collect(),
        }
    }
}
