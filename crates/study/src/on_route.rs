//! Positions of a log to places on the route of a haul.

use quantity::{Length, Time};
use survey::Survey;
use survey::track::{self, Position, Track, TrackError};

use crate::{NamedError, Opened, road, route_track};

/// How far from the route a position may lie and still be on it: width of the road and its lay-bys,
/// the error of the receiver and that of the recorded track. Common practice, no source.
const REACH: Length = Length::from_m(50.0);

/// Why positions cannot be matched to a route.
#[derive(Debug, thiserror::Error)]
pub enum OnRouteError {
    /// No such haul.
    #[error(transparent)]
    Named(#[from] NamedError),
    /// The track of its route cannot be read.
    #[error(transparent)]
    Track(#[from] TrackError),
    /// Its route has no recorded track.
    #[error(
        "the route of '{haul}' has no track; record it as GPX, GeoJSON, KML or CSV and name the file in \
         the key 'track' of routes/{route}.toml"
    )]
    NoTrack {
        /// The haul.
        haul: String,
        /// Its route.
        route: String,
    },
}

/// The route of a haul as it lies on the earth.
#[derive(Debug, Clone)]
pub struct HaulRoute {
    /// Name of the route.
    pub name: String,
    track: Track,
    /// Length of the route over the length of its track.
    scale: f64,
}

impl HaulRoute {
    /// The route of a haul; without a name, of the only one there is.
    ///
    /// # Errors
    /// [`OnRouteError`] where no haul fits, or its route has no track.
    pub fn of(opened: &Opened, survey: &Survey, haul: Option<&str>) -> Result<Self, OnRouteError> {
        let haul = road::haul_of(survey, road::Named { haul, combination: None })?;
        let route = &haul.route.name;
        let track = route_track(&opened.folder, route)?.ok_or_else(|| OnRouteError::NoTrack {
            haul: haul.name.clone(),
            route: route.clone(),
        })?;
        let scale = haul.route.length() / track.length();
        Ok(Self { name: haul.route.name.clone(), track, scale })
    }

    /// Places on the route of positions in order of time.
    pub fn places(&self, fixes: &[logs::store::Fix]) -> Vec<Option<logs::store::Place>> {
        let first = fixes.first().map_or(0, |fix| fix.second);
        // A position that is none on earth leaves its second without a place.
        let on_earth: Vec<Option<track::Fix>> = fixes
            .iter()
            .map(|fix| {
                let position = Position::from_degrees(fix.latitude_deg, fix.longitude_deg)?;
                Some(track::Fix { at: Time::from_s((fix.second - first) as f64), position })
            })
            .collect();
        let known: Vec<track::Fix> = on_earth.iter().copied().flatten().collect();
        let mut found = self.track.follow(&known, REACH).into_iter();
        on_earth
            .iter()
            .map(|fix| {
                let place = fix.and_then(|_| found.next().flatten())?;
                Some(logs::store::Place {
                    chainage_km: (place.at * self.scale).as_km(),
                    off_m: place.off.as_m(),
                    forward: place.forward,
                })
            })
            .collect()
    }
}
