//! A route; the rungs its legs name are found once the combination is known.

use model::route::{Jurisdiction, Landmark, LayBy, Leg, Route, Surface};
use quantity::{ColdPressure, Length, Speed};

use super::Loaded;
use super::elevation::elevation;
use super::ground::ground;
use super::permit::{Terms, cut};
use crate::Folder;
use crate::document::Document;
use crate::file::{JurisdictionWord, LegFile, RouteFile, SurfaceWord, TravelWord};
use crate::problem::Problem;

/// A route with the rung names that its legs ask for.
#[derive(Debug, Clone)]
pub(crate) struct PlannedRoute {
    /// The route, its legs without rungs, cut where permits begin and end.
    pub route: Route,
    /// The rung each leg names.
    pub rungs: Vec<Option<String>>,
    /// Which leg of the file each leg was cut from.
    origins: Vec<usize>,
    /// The file.
    pub document: Document,
}

impl PlannedRoute {
    /// Pointer of a key of a leg, by the index of the leg in the route.
    pub fn pointer(&self, leg: usize, key: &str) -> String {
        format!("/legs/{}/{key}", self.origins[leg])
    }
}

/// The route of a file whose legs were checked.
pub(crate) fn route(
    name: &str,
    file: &Loaded<RouteFile>,
    folder: &Folder,
    terms: &[&Terms],
    problems: &mut Vec<Problem>,
) -> Option<PlannedRoute> {
    let data = &file.data;
    let profile = elevation(file, folder, problems)?;
    let mut lay_bys: Vec<LayBy> = data
        .lay_bys
        .iter()
        .map(|place| LayBy {
            name: place.name.clone(),
            at: Length::from_km(place.at_km),
            forward_only: match place.travel {
                TravelWord::Both => None,
                TravelWord::Forward => Some(true),
                TravelWord::Backward => Some(false),
            },
        })
        .collect();
    lay_bys.sort_by(|first, second| first.at.total_cmp(&second.at));
    let mut landmarks: Vec<Landmark> = data
        .landmarks
        .iter()
        .map(|place| Landmark { name: place.name.clone(), at: Length::from_km(place.at_km) })
        .collect();
    landmarks.sort_by(|first, second| first.at.total_cmp(&second.at));
    let mut legs: Vec<Leg> = data.legs.iter().map(leg).collect();
    for (index, leg) in legs.iter_mut().enumerate() {
        leg.ground = ground(file, index, problems);
    }
    let cut = cut(legs, terms, problems);
    let (origins, legs): (Vec<usize>, Vec<Leg>) = cut.into_iter().unzip();
    Some(PlannedRoute {
        route: Route {
            name: name.to_owned(),
            legs,
            profile,
            lay_bys,
            landmarks,
            descent_grade: data.descent.grade_pct / 100.0,
            descent_length: Length::from_m(data.descent.length_m),
            descent_approach: Length::from_m(data.descent.approach_m),
        },
        rungs: origins.iter().map(|&origin| data.legs[origin].rung.clone()).collect(),
        origins,
        document: file.document.clone(),
    })
}

fn leg(file: &LegFile) -> Leg {
    Leg {
        name: file.name.clone(),
        from: Length::from_km(file.from_km),
        to: Length::from_km(file.to_km),
        surface: surface(file.surface),
        rolling_resistance: file.rolling_resistance,
        speed_limit: Speed::from_kmh(file.speed_limit_kmh),
        crossfall: file.crossfall_pct / 100.0,
        curve_radius: file.curve_radius_m.map(Length::from_m),
        jurisdiction: match file.jurisdiction {
            JurisdictionWord::Private => Jurisdiction::Private,
            JurisdictionWord::UsPublic => Jurisdiction::UnitedStates,
            JurisdictionWord::OtherPublic => Jurisdiction::PublicOther,
        },
        rung: None,
        ground_maximum: file.ground_maximum_kpa.map(ColdPressure::from_kpa),
        raising_allowed: file.raising_allowed,
        permit: None,
        ground: None,
    }
}

pub(super) fn surface(word: SurfaceWord) -> Surface {
    match word {
        SurfaceWord::Paved => Surface::Paved,
        SurfaceWord::Sealed => Surface::Sealed,
        SurfaceWord::Gravel => Surface::Gravel,
        SurfaceWord::Earth => Surface::Earth,
        SurfaceWord::SoftGround => Surface::SoftGround,
        SurfaceWord::Sand => Surface::Sand,
        SurfaceWord::SnowOrIce => Surface::SnowOrIce,
    }
}
