//! The document of approval requests, `airtide.requests/1`.

use model::tire::{AirRetention, Construction, Fitment, StandardsBody, Tire};
use quantity::{ColdPressure, Length, Time};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::{ApprovalRequest, HaulLines};

use crate::plan::{approval, group_name};

/// What to ask the makers of the tires of a survey.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RequestsDocument {
    /// `airtide.requests/1`.
    pub schema: String,
    /// Who asks: the person who answers for the survey.
    pub responsible: String,
    /// Name of the survey.
    pub survey: String,
    /// One for each tire model that runs without its maker's word, in order of name.
    pub requests: Vec<RequestView>,
}

/// What to ask about one tire model.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RequestView {
    /// Tire model, by its name in the survey.
    pub tire: String,
    /// Size as molded.
    pub size: String,
    /// Load index of the single rating.
    pub load_index: u16,
    /// Speed symbol.
    pub speed_symbol: String,
    /// `TRA` or `ETRTO`.
    pub body: String,
    /// `radial` or `bias`.
    #[serde(default)]
    pub construction: String,
    /// Whether it runs with an inner tube.
    #[serde(default)]
    pub with_tube: bool,
    /// Rim as stamped; `null` where the survey does not say.
    pub rim: Option<String>,
    /// Highest pressure molded on the sidewall.
    pub molded_maximum_kpa: f64,
    /// Highest pressure stamped on the rim.
    pub rim_maximum_kpa: f64,
    /// What the maker answered so far.
    pub document: Option<String>,
    /// Whether that still counts.
    pub document_counts: bool,
    /// Lines that nobody stands behind yet.
    pub open_lines: usize,
    /// Hauls that run it.
    pub hauls: Vec<AskedHaulView>,
}

/// What one haul asks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AskedHaulView {
    /// Haul.
    pub haul: String,
    /// Road of a whole cycle, there and back.
    pub distance_per_cycle_km: f64,
    /// Cycles a day.
    pub cycles_per_day: f64,
    /// Temperature that cold pressures are named at.
    pub reference_c: f64,
    /// Coldest air.
    pub coldest_c: f64,
    /// Warmest air.
    pub warmest_c: f64,
    /// Time of loading, laden or half laden, standing.
    pub loading_s: f64,
    /// Loads and speeds.
    pub lines: Vec<AskedLineView>,
}

/// A load and a speed asked about.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AskedLineView {
    /// Axle group.
    pub axle_group: String,
    /// `single` or `dual`.
    pub fitment: String,
    /// Load state.
    pub load_state: String,
    /// Rung.
    pub rung: String,
    /// Load on the worst tire of the group.
    pub load_kg: f64,
    /// Highest speed.
    pub speed_kmh: f64,
    /// Road on it in a cycle.
    pub distance_km: f64,
    /// Longest road on it at a time; `null` where the haul cannot be driven.
    pub stay_km: Option<f64>,
    /// Longest time on it at a time, standing included.
    pub hold_min: Option<f64>,
    /// Lowest cold pressure wanted; `null` where no window is left.
    pub wanted_kpa: Option<f64>,
    /// What a published table gives, cold; `null` where none covers it or the maker's rows stand in
    /// its place.
    #[serde(default)]
    pub table_kpa: Option<f64>,
    /// Cold pressure that the plan holds.
    pub held_kpa: Option<f64>,
    /// What the ground would like at most, where that is less.
    pub ground_wants_kpa: Option<f64>,
    /// Who stands behind it today: `maker`, `standard`, `needs approval` or `not possible`.
    pub approval: String,
}

impl RequestsDocument {
    /// Makes the document.
    pub fn new(survey: &survey::Survey, requests: &[ApprovalRequest]) -> Self {
        Self {
            schema: "airtide.requests/1".to_owned(),
            responsible: survey.responsible.clone(),
            survey: survey.name.clone(),
            requests: requests.iter().map(RequestView::from).collect(),
        }
    }
}

impl From<&ApprovalRequest> for RequestView {
    fn from(request: &ApprovalRequest) -> Self {
        let tire: &Tire = &request.tire;
        Self {
            tire: tire.name.clone(),
            size: tire.size.clone(),
            load_index: tire.load_index,
            speed_symbol: tire.speed_symbol.clone(),
            body: match tire.body {
                StandardsBody::Tra => "TRA",
                StandardsBody::Etrto => "ETRTO",
            }
            .to_owned(),
            construction: match tire.construction {
                Construction::Radial => "radial",
                Construction::Bias => "bias",
            }
            .to_owned(),
            with_tube: tire.air_retention == AirRetention::TubeType,
            rim: request.rim.clone(),
            molded_maximum_kpa: tire.molded_maximum.as_kpa(),
            rim_maximum_kpa: tire.rim.maximum_pressure.as_kpa(),
            document: request.document.clone(),
            document_counts: request.document_counts,
            open_lines: request.open(),
            hauls: request.hauls.iter().map(AskedHaulView::from).collect(),
        }
    }
}

impl From<&HaulLines> for AskedHaulView {
    fn from(asked: &HaulLines) -> Self {
        let haul = &asked.haul;
        let combination = &haul.combination;
        let lines = asked.lines.iter().map(|line| AskedLineView {
            axle_group: group_name(haul, line.group),
            fitment: match line.fitment {
                Fitment::Single => "single",
                Fitment::Dual => "dual",
            }
            .to_owned(),
            load_state: combination.load_states[line.load_state].name.clone(),
            rung: combination.rungs[line.rung].name.clone(),
            load_kg: line.load.as_kg(),
            speed_kmh: line.speed.as_kmh(),
            distance_km: line.distance.as_km(),
            stay_km: line.stay.map(Length::as_km),
            hold_min: line.hold.map(Time::as_min),
            wanted_kpa: line.wanted.map(ColdPressure::as_kpa),
            table_kpa: line.table.map(ColdPressure::as_kpa),
            held_kpa: line.held.map(ColdPressure::as_kpa),
            ground_wants_kpa: line.ground.map(ColdPressure::as_kpa),
            approval: approval(line.approval).to_owned(),
        });
        Self {
            haul: haul.name.clone(),
            distance_per_cycle_km: (haul.route.length() * 2.0).as_km(),
            cycles_per_day: haul.cycles_per_day,
            reference_c: haul.weather.reference.as_celsius(),
            coldest_c: haul.weather.coldest.as_celsius(),
            warmest_c: haul.weather.warmest.as_celsius(),
            loading_s: haul.loading.time.as_s(),
            lines: lines.collect(),
        }
    }
}
