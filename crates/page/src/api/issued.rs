//! Issued plans.

use std::sync::Arc;

use axum::Json;
use axum::extract::rejection::JsonRejection;
use axum::extract::{Extension, State};
use model::date::Date;
use plan::Detail;
use study::{
    IssueTerms, Opened, driven_by, issue as issue_plan, issued, issued_problems, plan_hauls, stale,
};
use view::{IssueRequest, PlanDocument, PlansDocument};

use super::work::{computing, reading};
use crate::failure::{Answer, Failure};
use crate::guard::Rights;
use crate::site::Site;

const PROGRAM: &str = concat!("airtide ", env!("CARGO_PKG_VERSION"));

/// `GET /api/plans`
pub async fn list(State(site): State<Arc<Site>>) -> Answer<Json<PlansDocument>> {
    reading(site, |_, snapshot| Ok(Json(document(&snapshot.opened)?))).await
}

fn document(opened: &Opened) -> Answer<PlansDocument> {
    let plans = issued(&opened.folder);
    let problems = issued_problems(opened, &plans);
    let staleness = stale(opened, &plans.plans);
    PlansDocument::new(&plans, &staleness, &problems, None, opened.day)
        .map_err(|error| Failure::survey(format!("an issued plan: {error}")))
}

/// `POST /api/issue`
pub async fn issue(
    State(site): State<Arc<Site>>,
    Extension(rights): Extension<Rights>,
    wanted: Result<Json<IssueRequest>, JsonRejection>,
) -> Answer<Json<PlansDocument>> {
    let Json(wanted) = wanted?;
    if !rights.write {
        return Err(Failure::forbidden("read-only", "this window may only read"));
    }
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        let _alone = site.saving();
        let terms = terms(wanted.clone())?;
        let opened = Opened::read_as_of(site.survey(), terms.valid_from)?;
        let survey = opened.survey.as_ref();
        let survey = survey.ok_or_else(|| Failure::survey("survey.toml has errors"))?;
        // Planned for those who are to drive by it.
        let survey = &driven_by(survey, &terms.units).map_err(Failure::wrong)?;
        let planned = plan_hauls(survey, Some(&wanted.haul), &Detail::default());
        let planned = planned.map_err(Failure::survey)?;
        let frozen = serde_json::to_value(PlanDocument::new(&planned)).map_err(Failure::broken)?;
        let one = planned.first().ok_or_else(|| Failure::survey("no plan came of this haul"))?;
        let plan = issue_plan(&opened, one, frozen, &terms).map_err(Failure::survey)?;
        plan.write(site.survey()).map_err(Failure::broken)?;
        let snapshot = site.snapshots.renewed()?;
        Ok(Json(document(&snapshot.opened)?))
    })
    .await
}

fn terms(wanted: IssueRequest) -> Answer<IssueTerms> {
    let day = |text: &str| {
        text.parse::<Date>().map_err(|error| Failure::wrong(format!("'{text}': {error}")))
    };
    let date = day(&wanted.date)?;
    Ok(IssueTerms {
        date,
        number: None,
        units: wanted.units,
        responsible: wanted.responsible,
        valid_from: wanted.valid_from.as_deref().map(day).transpose()?.unwrap_or(date),
        valid_until: wanted.valid_until.as_deref().map(day).transpose()?,
        program: PROGRAM.to_owned(),
    })
}
