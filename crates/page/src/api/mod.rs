//! What the page may ask: every answer is a document of `view`, a schema, or bytes of a series.

mod check;
mod files;
mod home;
mod issued;
mod map;
mod now;
pub mod openapi;
mod paper;
pub mod practice;
pub mod series;
mod trial;
mod work;

use std::sync::Arc;

use axum::Router;
use axum::routing::{get, post};

use crate::failure::Failure;
use crate::site::Site;

/// The API, without its prefix.
pub fn routes() -> Router<Arc<Site>> {
    Router::new()
        .route("/site", get(home::site))
        .route("/units", get(home::units))
        .route("/texts", get(home::texts))
        .route("/schemas", get(home::schemas))
        .route("/openapi.json", get(openapi::serve))
        .route("/check", get(check::check))
        .route("/files", get(files::list))
        .route("/file", get(files::read).put(files::save))
        .route("/map", get(map::map))
        .route("/plan", post(trial::plan))
        .route("/effects", post(trial::effects))
        .route("/now", post(now::now))
        .route("/plans", get(issued::list))
        .route("/issue", post(issued::issue))
        .route("/papers", get(paper::list))
        .route("/paper", get(paper::paper))
        .route("/practice", post(practice::begin))
        .route("/practice/step", post(practice::step))
        .route("/practice/verdict", post(practice::verdict))
        .route("/series", get(series::list))
        .route("/series/window", get(series::window))
        .fallback(|| async { Failure::missing("there is no such question; see /api/openapi.json") })
}
