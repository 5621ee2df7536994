//! The route of a haul, `airtide.route/1`: what does not change with the plan.

use model::haul_cycle::{HaulCycle, LadenDirection};
use model::route::Surface;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A leg for the strip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LegView {
    /// Name.
    pub name: String,
    /// Where it begins.
    pub from_km: f64,
    /// Where it ends.
    pub to_km: f64,
    /// `paved`, `sealed`, `gravel`, `earth`, `soft ground`, `sand` or `snow or ice`.
    pub surface: String,
    /// Speed limit.
    pub speed_limit_kmh: f64,
}

/// A landmark, lay-by or change point on the strip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MarkView {
    /// Chainage.
    pub km: f64,
    /// What it is called.
    pub name: String,
    /// `landmark`, `lay-by`, `raise` or `lower`.
    pub kind: String,
    /// Load state of the run, for change points.
    pub load_state: Option<String>,
    /// Where a change must be complete.
    pub reach_by_km: Option<f64>,
}

/// The route of a haul.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RouteView {
    /// `airtide.route/1`.
    pub schema: String,
    /// Haul.
    pub haul: String,
    /// Route.
    pub route: String,
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
}

impl From<&HaulCycle> for RouteView {
    fn from(haul: &HaulCycle) -> Self {
        let state = |index: usize| haul.combination.load_states[index].name.clone();
        Self {
            schema: "airtide.route/1".to_owned(),
            haul: haul.name.clone(),
            route: haul.route.name.clone(),
            load_states: [state(haul.empty_state), state(haul.laden_state)],
            laden_direction: laden_direction(haul),
            legs: legs(haul),
            elevation_km_m: elevation(haul),
            marks: places(haul).collect(),
        }
    }
}

pub(crate) fn surface(surface: Surface) -> &'static str {
    match surface {
        Surface::Paved => "paved",
        Surface::Sealed => "sealed",
        Surface::Gravel => "gravel",
        Surface::Earth => "earth",
        Surface::SoftGround => "soft ground",
        Surface::Sand => "sand",
        Surface::SnowOrIce => "snow or ice",
    }
}

pub(crate) fn laden_direction(haul: &HaulCycle) -> String {
    match haul.laden_direction {
        LadenDirection::Forward => "forward",
        LadenDirection::Backward => "backward",
    }
    .to_owned()
}

pub(crate) fn legs(haul: &HaulCycle) -> Vec<LegView> {
    haul.route
        .legs
        .iter()
        .map(|leg| LegView {
            name: leg.name.clone(),
            from_km: leg.from.as_km(),
            to_km: leg.to.as_km(),
            surface: surface(leg.surface).to_owned(),
            speed_limit_kmh: leg.speed_limit.as_kmh(),
        })
        .collect()
}

pub(crate) fn elevation(haul: &HaulCycle) -> Vec<(f64, f64)> {
    let points = haul.route.profile.points().iter();
    points.map(|(at, height)| (at.as_km(), height.as_m())).collect()
}

/// Landmarks and lay-bys.
pub(crate) fn places(haul: &HaulCycle) -> impl Iterator<Item = MarkView> {
    let mark = |km, name: &str, kind: &str| MarkView {
        km,
        name: name.to_owned(),
        kind: kind.to_owned(),
        load_state: None,
        reach_by_km: None,
    };
    let landmarks = haul.route.landmarks.iter();
    let lay_bys = haul.route.lay_bys.iter();
    landmarks
        .map(move |place| mark(place.at.as_km(), &place.name, "landmark"))
        .chain(lay_bys.map(move |place| mark(place.at.as_km(), &place.name, "lay-by")))
}
