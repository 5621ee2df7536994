//! Everything that is wrong with the survey.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use study::{issued, issued_problems};
use view::CheckDocument;

use super::work::reading;
use crate::failure::Answer;
use crate::site::Site;

/// `GET /api/check`
pub async fn check(State(site): State<Arc<Site>>) -> Answer<Json<CheckDocument>> {
    reading(site, |_, snapshot| {
        let opened = &snapshot.opened;
        let of_plans = issued_problems(opened, &issued(&opened.folder));
        Ok(Json(CheckDocument::new(&opened.problems, &of_plans)))
    })
    .await
}
