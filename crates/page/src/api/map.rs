//! A route on a plain map of its own track.

use std::sync::Arc;

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Query, State};
use serde::Deserialize;
use serde_json::Value;
use survey::{Folder, track, written_values};
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
        let points = match track(&snapshot.opened.folder, &wanted.route)? {
            Some(track) => track.on_a_plane(MOST_POINTS),
            None => Vec::new(),
        };
        Ok(Json(MapDocument::new(RouteView::from(haul), &points)))
    })
    .await
}

/// The recorded track that the route's file names.
fn track(folder: &Folder, route: &str) -> Answer<Option<track::Track>> {
    let file = format!("routes/{route}.toml");
    let values = folder.bytes(&file).and_then(|bytes| written_values(&file, bytes));
    let path = values.as_ref().and_then(|values| values.get("track")).and_then(Value::as_str);
    let Some((path, bytes)) = path.and_then(|path| Some((path, folder.bytes(path)?))) else {
        return Ok(None);
    };
    track::read(bytes, path).map(Some).map_err(Failure::survey)
}
