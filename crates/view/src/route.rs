//! The route of a haul, `airtide.route/1`: what does not change with the plan.

use model::haul_cycle::{HaulCycle, LadenDirection};
use model::route::{Jurisdiction, Permit, StatedPressure, Surface};
use quantity::{Mass, PressureDifference, Speed, Time};
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
    /// Whose road: `private`, `us-public` or `public`; empty in documents from before it was told.
    #[serde(default)]
    pub jurisdiction: String,
    /// Terms of a permit that covers it.
    #[serde(default)]
    pub permit: Option<PermitView>,
}

/// What an authority allows on a leg.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PermitView {
    /// Number or title.
    pub number: String,
    /// Authority that gave it.
    pub authority: String,
    /// Whether it counts on the day of the plan.
    pub in_force: bool,
    /// Last day it counts.
    pub expires: Option<String>,
    /// Whether its pressures are those of cold tires; otherwise as a gauge reads them on the road.
    pub cold: bool,
    /// Lowest pressure.
    pub minimum_kpa: Option<f64>,
    /// Highest pressure.
    pub maximum_kpa: Option<f64>,
    /// How far a logged pressure may pass them and still count as kept.
    pub tolerance_kpa: Option<f64>,
    /// Highest speed.
    pub speed_kmh: Option<f64>,
    /// Highest gross mass.
    pub gross_mass_kg: Option<f64>,
    /// Longest time between two logged pressures.
    pub evidence_interval_s: Option<f64>,
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
            jurisdiction: jurisdiction(leg.jurisdiction).to_owned(),
            permit: leg.permit.as_ref().map(permit),
        })
        .collect()
}

fn jurisdiction(whose: Jurisdiction) -> &'static str {
    match whose {
        Jurisdiction::Private => "private",
        Jurisdiction::UnitedStates => "us-public",
        Jurisdiction::PublicOther => "public",
    }
}

fn permit(permit: &Permit) -> PermitView {
    let kpa = |stated: StatedPressure| match stated {
        StatedPressure::Cold(pressure) => pressure.as_kpa(),
        StatedPressure::AsRead(pressure) => pressure.as_kpa(),
    };
    let stated = permit.minimum.or(permit.maximum);
    PermitView {
        number: permit.number.clone(),
        authority: permit.authority.clone(),
        in_force: permit.in_force,
        expires: permit.expires.map(|day| day.to_string()),
        cold: !matches!(stated, Some(StatedPressure::AsRead(_))),
        minimum_kpa: permit.minimum.map(kpa),
        maximum_kpa: permit.maximum.map(kpa),
        tolerance_kpa: permit.tolerance.map(PressureDifference::as_kpa),
        speed_kmh: permit.speed.map(Speed::as_kmh),
        gross_mass_kg: permit.gross_mass.map(Mass::as_kg),
        evidence_interval_s: permit.evidence_interval.map(Time::as_s),
    }
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
