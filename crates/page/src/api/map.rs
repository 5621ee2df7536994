//! A route on a plain map of its own track.

use std::sync::Arc;

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Query, State};
use serde::Deserialize;
use study::route_track;
use view::{MapDocument, RouteView};

use super::work::reading;
use crate::failure::{Answer, Failure};
use crate::site::Site;

/// Most points of a map: more than a screen has room for.
const MOST_POINTS: usize = 1500;

/// Which route.
#[derive(Debug, Deserialize)]
pub struct Wanted {
    route: String,
}

/// `GET /api/map`
pub async fn map(
    State(site): State<Arc<Site>>,
    wanted: Result<Query<Wanted>, QueryRejection>,
) -> Answer<Json<MapDocument>> {
    let Query(wanted) = wanted?;
    reading(site, move |_, snapshot| {
        let survey = snapshot.opened.survey.as_ref();
        let mut hauls = survey.iter().flat_map(|survey| &survey.hauls);
        let haul = hauls.find(|haul| haul.route.name == wanted.route).ok_or_else(|| {
            Failure::survey(format!("no haul without errors runs on route '{}'", wanted.route))
        })?;
        let track = route_track(&snapshot.opened.folder, &wanted.route);
        let points = match track.map_err(Failure::survey)? {
            Some(track) => track.on_a_plane(MOST_POINTS),
            None => Vec::new(),
        };
        Ok(Json(MapDocument::new(RouteView::from(haul), &points)))
    })
    .await
}
