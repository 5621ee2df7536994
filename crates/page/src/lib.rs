//! The local page: a survey planned by hand and eye in a browser on this computer.
//!
//! [`router`] is a function from a [`Site`] to an axum router, so tests call it without a
//! socket; [`serve`] binds it. The browser uses nothing but what lies under `/api`, and every
//! answer there is a document of `view`. `docs/threat-model.md` says what is guarded against what.

mod api;
mod assets;
mod failure;
mod guard;
mod hash;
mod serve;
mod site;
mod snapshot;

pub use api::openapi::document as openapi;
pub use serve::{ServeError, Serving, serve};
pub use site::{Share, Site, SiteError, SiteOptions};

use std::sync::Arc;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::middleware::{from_fn, from_fn_with_state};

/// Largest body of a request: a survey file as text, with room.
pub const LARGEST_BODY: usize = 4 * 1024 * 1024;

/// The whole page: the front end, the API, and what guards them.
pub fn router(site: Arc<Site>) -> Router {
    Router::new()
        .nest("/api", api::routes())
        .merge(guard::pairing::routes())
        .fallback(assets::serve)
        .layer(DefaultBodyLimit::max(LARGEST_BODY))
        .layer(from_fn_with_state(Arc::clone(&site), guard::admit))
        .layer(from_fn(guard::headers::add))
        .with_state(site)
}
