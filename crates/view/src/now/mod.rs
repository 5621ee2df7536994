//! The documents of a call from the road, `airtide.now/1` and `airtide.now-table/1`.

mod check;
mod reason;

use std::collections::BTreeMap;

use model::haul_cycle::HaulCycle;
use plan::now::{Answer, CardRow, GroupAnswer, HowFar, SetFor, Stance, Verdict};
use quantity::{ColdPressure, GaugePressure, Length, Speed, Temperature, Time};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::plan::{group_name, minimum_name};

/// What was called about.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SubjectView {
    /// Fleet number; `null` where a combination was named instead.
    pub unit: Option<String>,
    /// Haul.
    pub haul: String,
    /// Combination.
    pub combination: String,
    /// Chain state; `null` for the usual one.
    pub chain_state: Option<String>,
    /// Whether pressures nobody approved were counted.
    pub with_unapproved: bool,
}

/// The answer to a call from the road.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct NowDocument {
    /// `airtide.now/1`.
    pub schema: String,
    /// What was called about.
    pub subject: SubjectView,
    /// Load state judged; the heaviest where the load is not known.
    pub load_state: String,
    /// `go`, `go-slow` or `stop`.
    pub verdict: String,
    /// Highest speed, rounded down to the survey's step between rungs; `null` for a stop.
    pub highest_speed_kmh: Option<f64>,
    /// The same without rounding.
    pub exact_speed_kmh: Option<f64>,
    /// The highest rung that every group holds.
    pub rung: Option<String>,
    /// How far.
    pub how_far: HowFarView,
    /// Each axle group that stands on the road.
    pub groups: Vec<GroupAnswerView>,
    /// Why.
    pub reasons: Vec<SaidView>,
    /// What to check or do next.
    pub checks: Vec<SaidView>,
    /// What was set against what is needed, where another load state is selected.
    pub set_for: Vec<SetForView>,
}

/// How far it may go.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct HowFarView {
    /// `nowhere`, `off-the-road`, `hold` or `next-stop`.
    pub to: String,
    /// Longest distance of a hold limit.
    pub distance_m: Option<f64>,
    /// Longest time of a hold limit.
    pub time_min: Option<f64>,
}

/// One axle group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct GroupAnswerView {
    /// Axle group.
    pub axle_group: String,
    /// Air channel; `null` for a fixed pressure.
    pub channel: Option<String>,
    /// `gauged`, `kept` as the survey says, or `not-gauged`.
    pub known_from: String,
    /// The softest reading.
    pub reading_kpa: Option<f64>,
    /// Its cold pressure, on the careful side.
    pub cold_kpa: Option<f64>,
    /// Temperature of the air in the tire that it was taken at.
    pub taken_at_c: Option<f64>,
    /// `go`, `go-slow` or `stop`.
    pub verdict: String,
    /// Highest speed this pressure allows, rounded down.
    pub highest_speed_kmh: Option<f64>,
    /// The same without rounding.
    pub exact_speed_kmh: Option<f64>,
    /// The highest rung held.
    pub rung: Option<String>,
    /// What governs the pressure for the next speed.
    pub next_governed_by: Option<String>,
}

/// Something to be said: a reason or a check.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SaidView {
    /// Which, such as `not-gauged`.
    pub what: String,
    /// Names it speaks of, by role.
    pub names: BTreeMap<String, String>,
    /// Numbers it speaks of, by name with unit.
    pub numbers: BTreeMap<String, f64>,
}

/// What a channel was set to, against what it needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SetForView {
    /// Air channel.
    pub channel: String,
    /// Rung.
    pub rung: String,
    /// Value set for the state selected, as the controller reads it.
    pub was_set_kpa: Option<f64>,
    /// Value to set for the load there is.
    pub needed_kpa: Option<f64>,
}

/// Highest speeds over readings, for a card.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct NowTableDocument {
    /// `airtide.now-table/1`.
    pub schema: String,
    /// What was called about.
    pub subject: SubjectView,
    /// `cold`, `warm` or `not-known`, which counts as warm.
    pub tires: String,
    /// Load states, in the order of the speeds of a row.
    pub load_states: Vec<String>,
    /// Rows by channel and reading.
    pub rows: Vec<NowRowView>,
}

/// One row of the card.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct NowRowView {
    /// Air channel.
    pub channel: String,
    /// What the gauge shows.
    pub reading_kpa: f64,
    /// Highest speed by load state; `null` where it is not allowed.
    pub highest_speed_kmh: Vec<Option<f64>>,
}

impl NowDocument {
    /// Makes the document.
    pub fn new(haul: &HaulCycle, subject: SubjectView, answer: &Answer) -> Self {
        let combination = &haul.combination;
        let all = answer.all_reasons();
        Self {
            schema: "airtide.now/1".to_owned(),
            subject,
            load_state: combination.load_states[answer.load_state].name.clone(),
            verdict: verdict(answer.verdict).to_owned(),
            highest_speed_kmh: answer.speed.map(Speed::as_kmh),
            exact_speed_kmh: answer.exact.map(Speed::as_kmh),
            rung: answer.rung.map(|rung| combination.rungs[rung].name.clone()),
            how_far: how_far(answer.how_far),
            groups: answer.groups.iter().map(|one| group(haul, one)).collect(),
            reasons: all.map(|one| reason::reason(haul, one)).collect(),
            checks: answer.all_checks().iter().map(|one| check::check(haul, one)).collect(),
            set_for: answer.set_for.iter().map(|one| set_for(haul, one)).collect(),
        }
    }
}

impl NowTableDocument {
    /// Makes the document.
    pub fn new(haul: &HaulCycle, subject: SubjectView, tires: &str, rows: &[CardRow]) -> Self {
        let combination = &haul.combination;
        let row = |row: &CardRow| NowRowView {
            channel: combination.channels[row.channel].name.clone(),
            reading_kpa: row.reading.as_kpa(),
            highest_speed_kmh: row.speeds.iter().map(|speed| speed.map(Speed::as_kmh)).collect(),
        };
        Self {
            schema: "airtide.now-table/1".to_owned(),
            subject,
            tires: tires.to_owned(),
            load_states: combination.load_states.iter().map(|state| state.name.clone()).collect(),
            rows: rows.iter().map(row).collect(),
        }
    }
}

fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Go => "go",
        Verdict::GoSlow => "go-slow",
        Verdict::Stop => "stop",
    }
}

fn how_far(how_far: HowFar) -> HowFarView {
    let (to, distance, time) = match how_far {
        HowFar::Nowhere => ("nowhere", None, None),
        HowFar::OffTheRoad => ("off-the-road", None, None),
        HowFar::Hold { distance, time } => ("hold", distance, time),
        HowFar::NextStop => ("next-stop", None, None),
    };
    HowFarView {
        to: to.to_owned(),
        distance_m: distance.map(Length::as_m),
        time_min: time.map(Time::as_min),
    }
}

fn group(haul: &HaulCycle, answer: &GroupAnswer) -> GroupAnswerView {
    let combination = &haul.combination;
    GroupAnswerView {
        axle_group: group_name(haul, answer.group),
        channel: answer.channel.map(|channel| combination.channels[channel].name.clone()),
        known_from: match answer.stance {
            Stance::Gauged => "gauged",
            Stance::Kept => "kept",
            Stance::NotGauged => "not-gauged",
        }
        .to_owned(),
        reading_kpa: answer.reading.map(GaugePressure::as_kpa),
        cold_kpa: answer.cold.map(ColdPressure::as_kpa),
        taken_at_c: answer.taken_at.map(Temperature::as_celsius),
        verdict: verdict(answer.verdict).to_owned(),
        highest_speed_kmh: answer.speed.map(Speed::as_kmh),
        exact_speed_kmh: answer.exact.map(Speed::as_kmh),
        rung: answer.rung.map(|rung| combination.rungs[rung].name.clone()),
        next_governed_by: answer.next.map(|kind| minimum_name(kind).to_owned()),
    }
}

fn set_for(haul: &HaulCycle, set: &SetFor) -> SetForView {
    SetForView {
        channel: haul.combination.channels[set.channel].name.clone(),
        rung: haul.combination.rungs[set.rung].name.clone(),
        was_set_kpa: set.was_set.map(GaugePressure::as_kpa),
        needed_kpa: set.needed.map(GaugePressure::as_kpa),
    }
}

/// Something said, filled piece by piece.
struct Saying<'a> {
    haul: &'a HaulCycle,
    view: SaidView,
}

impl<'a> Saying<'a> {
    fn new(haul: &'a HaulCycle) -> Self {
        let (names, numbers) = (BTreeMap::new(), BTreeMap::new());
        Self { haul, view: SaidView { what: String::new(), names, numbers } }
    }

    fn name(&mut self, role: &str, name: &str) {
        self.view.names.insert(role.to_owned(), name.to_owned());
    }

    fn number(&mut self, key: &str, number: f64) {
        self.view.numbers.insert(key.to_owned(), number);
    }

    fn group(&mut self, group: usize) {
        let name = group_name(self.haul, group);
        self.name("axle_group", &name);
    }

    fn channel(&mut self, channel: usize) {
        let name = self.haul.combination.channels[channel].name.clone();
        self.name("channel", &name);
    }

    fn rung(&mut self, rung: usize) {
        let name = self.haul.combination.rungs[rung].name.clone();
        self.name("rung", &name);
    }

    fn load_state(&mut self, state: usize) {
        let name = self.haul.combination.load_states[state].name.clone();
        self.name("load_state", &name);
    }

    fn said(mut self, what: &str) -> SaidView {
        what.clone_into(&mut self.view.what);
        self.view
    }
}
