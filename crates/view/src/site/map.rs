//! A route with the shape of its track.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use survey::track::MapPoint;

use crate::RouteView;

/// A place of the track on a flat map, from its middle.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MapPointView {
    /// Chainage.
    pub km: f64,
    /// To the east.
    pub east_m: f64,
    /// To the north.
    pub north_m: f64,
}

/// A route, and its track where it has one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MapDocument {
    /// `airtide.map/1`.
    pub schema: String,
    /// Legs, marks and elevation.
    pub route: RouteView,
    /// The track; empty where the route has none.
    pub points: Vec<MapPointView>,
}

impl MapDocument {
    /// Makes the document.
    pub fn new(route: RouteView, points: &[MapPoint]) -> Self {
        let view = |point: &MapPoint| MapPointView {
            km: point.at.as_km(),
            east_m: point.east.as_m(),
            north_m: point.north.as_m(),
        };
        Self {
            schema: "airtide.map/1".to_owned(),
            route,
            points: points.iter().map(view).collect(),
        }
    }
}
