//! What the page begins with: the survey, units, texts, schemas.

use std::sync::Arc;

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Extension, Query, State};
use axum::http::header;
use axum::response::IntoResponse;
use language::{Kind, Texts, UnitProfile};
use model::haul_cycle::HaulCycle;
use serde::Deserialize;
use serde_json::{Map, Value};
use survey::Survey;
use view::{HaulNameView, SiteDocument, UnitFormView, UnitsDocument};

use super::work::reading;
use crate::failure::{Answer, Failure};
use crate::guard::Rights;
use crate::site::{Share, Site};
use crate::snapshot::Snapshot;

const PROGRAM: &str = concat!("airtide ", env!("CARGO_PKG_VERSION"));

/// `GET /api/site`
pub async fn site(
    State(site): State<Arc<Site>>,
    Extension(rights): Extension<Rights>,
) -> Answer<Json<SiteDocument>> {
    reading(site, move |site, snapshot| Ok(Json(document(site, snapshot, rights)))).await
}

fn document(site: &Site, snapshot: &Snapshot, rights: Rights) -> SiteDocument {
    let opened = &snapshot.opened;
    let survey = opened.survey.as_ref();
    let folder = site.survey().file_name().map(|name| name.to_string_lossy().into_owned());
    SiteDocument {
        schema: "airtide.site/1".to_owned(),
        program: PROGRAM.to_owned(),
        survey: survey.map(|survey| survey.name.clone()).or(folder).unwrap_or_default(),
        read_only: !rights.write,
        token: site.token.clone(),
        language: survey.map_or("en", |survey| &survey.language).to_owned(),
        units: match survey.map(|survey| survey.units) {
            Some(survey::UnitProfile::Us) => UnitProfile::Us,
            Some(survey::UnitProfile::MetricBar) => UnitProfile::MetricBar,
            _ => UnitProfile::Si,
        }
        .name()
        .to_owned(),
        languages: language::OFFERED.iter().map(|tag| (*tag).to_owned()).collect(),
        speed_cap_step_kmh: survey.map_or(5.0, |survey| survey.speed_cap_step.as_kmh()),
        hauls: survey
            .map(|survey| survey.hauls.iter().map(|haul| named(survey, haul)).collect())
            .unwrap_or_default(),
        broken_hauls: survey.map(broken).unwrap_or_default(),
        responsible: survey.map(|survey| survey.responsible.clone()).unwrap_or_default(),
        date: opened.day.to_string(),
        pairing_code: (rights.here && site.options.share != Share::No).then(|| site.pairing_code()),
    }
}

fn broken(survey: &Survey) -> Vec<String> {
    let sound = |name: &&String| survey.hauls.iter().any(|haul| haul.name == **name);
    survey.haul_names.iter().filter(|name| !sound(name)).cloned().collect()
}

fn named(survey: &Survey, haul: &HaulCycle) -> HaulNameView {
    let combination = &haul.combination;
    let basis = survey.bases.get(&haul.name);
    let runs = |unit: &&survey::Unit| basis.is_some_and(|basis| basis.has_place_for(unit));
    let group = |group: &model::vehicle::AxleGroup| {
        format!("{}.{}", combination.vehicles[group.vehicle].name, group.name)
    };
    HaulNameView {
        name: haul.name.clone(),
        combination: combination.name.clone(),
        combination_file: format!("combinations/{}.toml", combination.name),
        route: haul.route.name.clone(),
        units: survey.fleet.iter().filter(runs).map(|unit| unit.number.clone()).collect(),
        load_states: combination.load_states.iter().map(|state| state.name.clone()).collect(),
        channels: combination.channels.iter().map(|channel| channel.name.clone()).collect(),
        fixed_groups: combination
            .groups
            .iter()
            .filter(|group| group.channel.is_none())
            .map(group)
            .collect(),
        ambient_c: haul.weather.ambient.as_celsius(),
    }
}

/// `GET /api/units`
pub async fn units() -> Json<UnitsDocument> {
    let forms = Kind::ALL.into_iter().flat_map(|kind| {
        UnitProfile::ALL.into_iter().map(move |profile| {
            let shown = kind.shown(profile);
            let (factor, offset) = kind.scale(profile);
            UnitFormView {
                kind: kind.name().to_owned(),
                profile: profile.name().to_owned(),
                label: shown.label.to_owned(),
                decimals: shown.decimals,
                factor,
                offset,
            }
        })
    });
    Json(UnitsDocument { schema: "airtide.units/1".to_owned(), forms: forms.collect() })
}

/// Which language.
#[derive(Debug, Deserialize)]
pub struct Language {
    language: String,
}

/// `GET /api/texts`: Fluent sources, those to fall back on first.
pub async fn texts(language: Result<Query<Language>, QueryRejection>) -> Answer<impl IntoResponse> {
    let Query(Language { language }) = language?;
    let sources = Texts::sources(&language).map_err(Failure::missing)?;
    let header = [(header::CONTENT_TYPE, "text/plain; charset=utf-8")];
    // A line of its own parts one file from the next for the reader.
    Ok((header, sources.join("\n# ---\n")))
}

/// `GET /api/schemas`: the JSON Schemas of survey files by name.
pub async fn schemas() -> Json<Value> {
    let by_name: Map<String, Value> =
        survey::schema::all().into_iter().map(|(name, schema)| (name.to_owned(), schema)).collect();
    Json(Value::Object(by_name))
}
