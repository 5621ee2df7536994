//! The document of the plan asked backwards, `airtide.ask/1`.

use model::haul_cycle::HaulCycle;
use plan::inverse::{CapAnswer, CapAsked, Judged, LateAnswer, LateCall, SupplyAnswer};
use plan::now::Load;
use plan::{Action, ChangePoint};
use quantity::{Length, Speed, Volume};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::plan::minimum_name;

/// The answer to one question.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AskDocument {
    /// `airtide.ask/1`.
    pub schema: String,
    /// Haul.
    pub haul: String,
    /// The question with its answer.
    #[serde(flatten)]
    pub answer: AnswerView,
}

/// One of the questions.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum AnswerView {
    /// Which supply makes a change fit.
    Supply(SupplyView),
    /// Which cap a pressure allows.
    Cap(CapView),
    /// How late is too late.
    Late(LateView),
}

/// The change asked about, as planned.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AskedChangeView {
    /// Its number on the plan page, from 1.
    pub number: usize,
    /// Chainage of the call.
    pub km: f64,
    /// Where it must be complete.
    pub reach_by_km: f64,
    /// Load state.
    pub load_state: String,
    /// Rung before.
    pub from_rung: String,
    /// Rung after.
    pub to_rung: String,
    /// `raise` or `lower`.
    pub action: String,
    /// Whether it is complete where it must be, nominally.
    pub fits: bool,
    /// Whether nine of ten are; `null` without samples.
    pub fits_p90: Option<bool>,
}

/// Which supply is enough, each means alone.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SupplyView {
    /// The change.
    pub change: AskedChangeView,
    /// `nine-of-ten` or `nominal`.
    pub judged_by: String,
    /// Whether it fits as it is.
    pub fits_today: bool,
    /// Compressor delivery as a multiple of today's; `null` if the most tried is not enough.
    pub compressor_times: Option<f64>,
    /// The most tried.
    pub compressor_times_tried: f64,
    /// Volume to add to the reserve; `null` if the most tried is not enough.
    pub more_reserve_l: Option<f64>,
    /// The most tried.
    pub more_reserve_tried_l: f64,
}

/// Which cap a pressure allows.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CapView {
    /// Air channel.
    pub channel: String,
    /// Load state; `null` where nobody knows the load.
    pub load_state: Option<String>,
    /// Pressure the tires hold, cold.
    pub pressure_kpa: f64,
    /// Highest cap that the windows allow, rounded down to the survey's step between rungs.
    pub cap_kmh: Option<f64>,
    /// The same without rounding.
    pub exact_cap_kmh: Option<f64>,
    /// Highest cap that the maker or a standard stands behind.
    pub approved_cap_kmh: Option<f64>,
    /// What governs just above it.
    pub next_governed_by: Option<String>,
    /// Whether the pressure is above the highest.
    pub above_highest: bool,
}

/// How late is too late.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LateView {
    /// The change.
    pub change: AskedChangeView,
    /// Latest call that is complete by the place, nominally; `null` if none is.
    pub latest_km: Option<f64>,
    /// Road from the place of the plan to the latest call.
    pub in_hand_m: Option<f64>,
    /// The latest call, then later ones.
    pub calls: Vec<LateCallView>,
}

/// One later call.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LateCallView {
    /// How much later than the latest.
    pub by_m: f64,
    /// Where it is called.
    pub km: f64,
    /// Where the change is complete; `null` if the run ends first.
    pub reached_km: Option<f64>,
    /// Time lost in the cycle.
    pub time_lost_s: f64,
    /// Road run at a pressure that was not meant for it.
    pub wrong_road_m: f64,
    /// Whether tires are filled on a sustained descent.
    pub on_descent: bool,
}

impl AskDocument {
    fn new(haul: &HaulCycle, answer: AnswerView) -> Self {
        Self { schema: "airtide.ask/1".to_owned(), haul: haul.name.clone(), answer }
    }

    /// The document of a supply.
    pub fn supply(haul: &HaulCycle, number: usize, answer: &SupplyAnswer) -> Self {
        let view = SupplyView {
            change: change(haul, number, &answer.change),
            judged_by: match answer.judged {
                Judged::NineOfTen => "nine-of-ten",
                Judged::Nominal => "nominal",
            }
            .to_owned(),
            fits_today: answer.fits_today,
            compressor_times: answer.compressor,
            compressor_times_tried: plan::inverse::MOST_AIR,
            more_reserve_l: answer.reserve.map(Volume::as_l),
            more_reserve_tried_l: plan::inverse::MOST_RESERVE.as_l(),
        };
        Self::new(haul, AnswerView::Supply(view))
    }

    /// The document of a cap.
    pub fn cap(haul: &HaulCycle, asked: &CapAsked, answer: &CapAnswer) -> Self {
        let combination = &haul.combination;
        let view = CapView {
            channel: combination.channels[asked.channel].name.clone(),
            load_state: match asked.load {
                Load::State(state) => Some(combination.load_states[state].name.clone()),
                Load::Unknown => None,
            },
            pressure_kpa: asked.pressure.as_kpa(),
            cap_kmh: answer.by_window.map(Speed::as_kmh),
            exact_cap_kmh: answer.exact.map(Speed::as_kmh),
            approved_cap_kmh: answer.approved.map(Speed::as_kmh),
            next_governed_by: answer.governed_by.map(|kind| minimum_name(kind).to_owned()),
            above_highest: answer.above_highest,
        };
        Self::new(haul, AnswerView::Cap(view))
    }

    /// The document of a late call.
    pub fn late(haul: &HaulCycle, number: usize, answer: &LateAnswer) -> Self {
        let call = |call: &LateCall| LateCallView {
            by_m: call.by.as_m(),
            km: call.at.as_km(),
            reached_km: call.reached.map(Length::as_km),
            time_lost_s: call.time_lost.as_s(),
            wrong_road_m: call.wrong_road.as_m(),
            on_descent: call.on_descent,
        };
        let view = LateView {
            change: change(haul, number, &answer.change),
            latest_km: answer.latest.map(Length::as_km),
            in_hand_m: answer.in_hand.map(Length::as_m),
            calls: answer.calls.iter().map(call).collect(),
        };
        Self::new(haul, AnswerView::Late(view))
    }
}

fn change(haul: &HaulCycle, number: usize, point: &ChangePoint) -> AskedChangeView {
    let combination = &haul.combination;
    AskedChangeView {
        number,
        km: point.at.as_km(),
        reach_by_km: point.reach_by.as_km(),
        load_state: combination.load_states[point.load_state].name.clone(),
        from_rung: combination.rungs[point.from.rung].name.clone(),
        to_rung: combination.rungs[point.to.rung].name.clone(),
        action: match point.action {
            Action::Raise => "raise",
            Action::Lower => "lower",
        }
        .to_owned(),
        fits: point.fits,
        fits_p90: point.fits_p90,
    }
}
