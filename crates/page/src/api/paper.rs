//! Every document for paper: which there are, and their bytes.

use std::sync::Arc;

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::IntoResponse;
use language::{Format, Texts, UnitProfile};
use plan::Detail;
use quantity::PressureDifference;
use report::document::{Document, Sheet};
use report::paper::{Kind, Material};
use serde::Deserialize;
use study::{issued, plan_hauls};
use view::{PaperKindView, PaperMaterial, PaperWants, PapersDocument};

use super::work::computing;
use crate::failure::{Answer, Failure};
use crate::site::Site;

/// Forms that this build writes.
const FORMATS: &[&str] = if cfg!(feature = "paper") { &["html", "pdf", "xlsx"] } else { &["html"] };

/// `GET /api/papers`
pub async fn list() -> Json<PapersDocument> {
    let kind = |kind: Kind| PaperKindView { kind: kind.name().to_owned() };
    Json(PapersDocument {
        schema: "airtide.papers/1".to_owned(),
        papers: Kind::ALL.map(kind).to_vec(),
        formats: FORMATS.iter().map(|&format| format.to_owned()).collect(),
    })
}

/// Which document.
#[derive(Debug, Deserialize)]
pub struct Wanted {
    kind: String,
    haul: String,
    /// Number of an issued plan; without it a draft.
    plan: Option<u32>,
    language: String,
    units: String,
    format: String,
}

/// `GET /api/paper`
pub async fn paper(
    State(site): State<Arc<Site>>,
    wanted: Result<Query<Wanted>, QueryRejection>,
) -> Answer<impl IntoResponse> {
    let Query(wanted) = wanted?;
    let slots = Arc::clone(&site.workers);
    let (bytes, media, name) = computing(&slots, move || {
        let kind: Kind = wanted.kind.parse().map_err(Failure::missing)?;
        let units = UnitProfile::ALL.into_iter().find(|one| one.name() == wanted.units);
        let units = units.ok_or_else(|| Failure::wrong("units are si, us or metric-bar"))?;
        let texts = Texts::new(&wanted.language).map_err(Failure::missing)?;
        let format = Format::new(units, &wanted.language).map_err(Failure::missing)?;
        let material = material(&site, &wanted, kind, units)?;
        let sheet = Sheet::usual(format.language(), units == UnitProfile::Us, kind.is_card());
        let words = report::Words { texts: &texts, format: &format };
        let document = report::paper::document(kind, &Material::of(&material), sheet, words)
            .map_err(Failure::survey)?;
        let (bytes, media) = written(&document, &wanted.format)?;
        let number = wanted.plan.map(|number| format!("-{number}")).unwrap_or_default();
        Ok((bytes, media, format!("{}{number}.{}", kind.name(), wanted.format)))
    })
    .await?;
    let disposition = format!("inline; filename=\"{name}\"");
    Ok((
        [(header::CONTENT_TYPE, media.to_owned()), (header::CONTENT_DISPOSITION, disposition)],
        bytes,
    ))
}

fn material(site: &Site, wanted: &Wanted, kind: Kind, units: UnitProfile) -> Answer<PaperMaterial> {
    let snapshot = site.snapshots.current()?;
    let opened = &snapshot.opened;
    let survey = opened.survey.as_ref();
    let survey = survey.ok_or_else(|| Failure::survey("survey.toml has errors"))?;
    let wants = PaperWants {
        gauge_step: match units {
            UnitProfile::Us => PressureDifference::from_psi(5.0),
            UnitProfile::Si => PressureDifference::from_kpa(25.0),
            UnitProfile::MetricBar => PressureDifference::from_bar(0.25),
        },
        yard_changes: kind == Kind::CommissioningRecord,
        requests: kind == Kind::ApprovalRequest,
    };
    let Some(number) = wanted.plan else {
        let planned = plan_hauls(survey, Some(&wanted.haul), &Detail::default());
        let planned = planned.map_err(Failure::survey)?.into_iter().next();
        let planned = planned.ok_or_else(|| Failure::survey("the haul gives no plan"))?;
        return PaperMaterial::of_draft(survey, &planned, wants).map_err(Failure::survey);
    };
    let found = issued(&opened.folder).plans.into_iter();
    let plan = found.into_iter().find(|plan| plan.haul == wanted.haul && plan.number == number);
    let missing = || Failure::missing(format!("'{}' has no issued plan {number}", wanted.haul));
    PaperMaterial::of_issued(opened, survey, &plan.ok_or_else(missing)?, wants)
        .map_err(Failure::survey)
}

#[cfg(feature = "paper")]
fn written(document: &Document, format: &str) -> Answer<(Vec<u8>, &'static str)> {
    match format {
        "html" => Ok((report::html::html(document).into_bytes(), "text/html; charset=utf-8")),
        "pdf" => Ok((press::pdf(document).map_err(Failure::survey)?.pdf, "application/pdf")),
        "xlsx" => Ok((
            report::xlsx::xlsx(document).map_err(Failure::survey)?,
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        )),
        other => Err(Failure::wrong(format!("'{other}' is none of {}", FORMATS.join(", ")))),
    }
}

#[cfg(not(feature = "paper"))]
fn written(document: &Document, format: &str) -> Answer<(Vec<u8>, &'static str)> {
    match format {
        "html" => Ok((report::html::html(document).into_bytes(), "text/html; charset=utf-8")),
        other => Err(Failure::wrong(format!(
            "this build writes no {other}; build airtide with --features page,paper for it"
        ))),
    }
}
