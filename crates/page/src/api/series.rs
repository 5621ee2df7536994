//! Long series: simulated runs and tables of numbers, through windows.

use std::sync::{Arc, Mutex, PoisonError};

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::IntoResponse;
use plan::Detail;
use quantity::Time;
use serde::Deserialize;
use study::{Planned, PlannedFor, Series, Window, simulate};
use view::{SeriesDocument, SeriesView};

use super::trial;
use super::work::computing;
use crate::failure::{Answer, Failure};
use crate::site::Site;

/// Step of simulated runs: as fine as the stepper's own.
const EVERY: Time = Time::from_s(0.1);
/// Series kept at once.
const KEPT: usize = 3;
/// Most buckets of a window: more than a screen has pixels.
const MOST_BUCKETS: usize = 4000;
/// Most columns of a window.
const MOST_COLUMNS: usize = 16;
/// Largest table.
const LARGEST: u64 = 1 << 30;

/// The series looked at last, each under its id and the state of what it was made from.
#[derive(Debug, Default)]
pub struct Shelf(Mutex<Vec<(String, String, Arc<Series>)>>);

impl Shelf {
    fn take(&self, id: &str, state: &str) -> Option<Arc<Series>> {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let at = kept.iter().position(|(known, of, _)| known == id && of == state)?;
        let found = kept.remove(at);
        let series = Arc::clone(&found.2);
        kept.push(found);
        Some(series)
    }

    fn put(&self, id: &str, state: &str, series: &Arc<Series>) {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        kept.retain(|(known, _, _)| known != id);
        kept.push((id.to_owned(), state.to_owned(), Arc::clone(series)));
        if kept.len() > KEPT {
            kept.remove(0);
        }
    }
}

/// `GET /api/series`
pub async fn list(State(site): State<Arc<Site>>) -> Answer<Json<SeriesDocument>> {
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        let snapshot = site.snapshots.current()?;
        let hauls = snapshot.opened.survey.iter().flat_map(|survey| &survey.hauls);
        let runs = hauls.map(|haul| (format!("run:{}", haul.name), haul.name.clone()));
        let tables = site.options.series.iter().enumerate().map(|(index, path)| {
            let name = path.file_name().map(|name| name.to_string_lossy().into_owned());
            (format!("table:{index}"), name.unwrap_or_default())
        });
        let series = runs.chain(tables).map(|(id, name)| {
            let found = find(&site, &id);
            view_of(id, name, found)
        });
        Ok(Json(SeriesDocument { schema: "airtide.series/1".to_owned(), series: series.collect() }))
    })
    .await
}

fn view_of(id: String, name: String, found: Answer<Arc<Series>>) -> SeriesView {
    let mut view = SeriesView {
        id,
        name,
        samples: 0,
        from_s: 0.0,
        to_s: 0.0,
        columns: Vec::new(),
        problem: None,
    };
    match found {
        Ok(series) => {
            view.samples = series.len();
            (view.from_s, view.to_s) = series.span_s().unwrap_or_default();
            view.columns = series.columns().map(str::to_owned).collect();
        }
        Err(failure) => view.problem = Some(failure.message().to_owned()),
    }
    view
}

fn find(site: &Site, id: &str) -> Answer<Arc<Series>> {
    if let Some(haul) = id.strip_prefix("run:") {
        return run(site, id, haul);
    }
    let index = id.strip_prefix("table:").and_then(|index| index.parse::<usize>().ok());
    let path = index.and_then(|index| site.options.series.get(index));
    let path = path.ok_or_else(|| Failure::missing("there is no such series"))?;
    let broken = |error: std::io::Error| Failure::survey(format!("it cannot be read: {error}"));
    let metadata = std::fs::metadata(path).map_err(broken)?;
    if metadata.len() > LARGEST {
        return Err(Failure::survey("it is larger than 1 GiB; cut it first"));
    }
    let state = format!("{:?}", (metadata.len(), metadata.modified().ok()));
    if let Some(series) = site.series.take(id, &state) {
        return Ok(series);
    }
    let bytes = std::fs::read(path).map_err(broken)?;
    let series = Arc::new(Series::read_csv(&bytes).map_err(Failure::survey)?);
    site.series.put(id, &state, &series);
    Ok(series)
}

fn run(site: &Site, id: &str, haul: &str) -> Answer<Arc<Series>> {
    let snapshot = site.snapshots.current()?;
    if let Some(series) = site.series.take(id, &snapshot.hash) {
        return Ok(series);
    }
    let survey = snapshot.opened.survey.as_ref();
    let survey = survey.ok_or_else(|| Failure::survey("survey.toml has errors"))?;
    let haul = trial::haul(survey, haul)?;
    let detail = Detail { samples: 0, ..Detail::default() };
    let plan = plan::Plan::of(&haul, &detail).map_err(Failure::survey)?;
    let planned = Planned { haul, plan, search: None, planned_for: PlannedFor::default() };
    let simulated = simulate(&planned, EVERY, &detail).map_err(Failure::survey)?;
    let series = Series::of_run(&planned.haul, &simulated).map_err(Failure::broken)?;
    let series = Arc::new(series);
    site.series.put(id, &snapshot.hash, &series);
    Ok(series)
}

/// Which part of a series.
#[derive(Debug, Deserialize)]
pub struct Part {
    id: String,
    /// Column numbers, comma between.
    columns: String,
    from_s: f64,
    to_s: f64,
    buckets: usize,
}

/// `GET /api/series/window`
pub async fn window(
    State(site): State<Arc<Site>>,
    part: Result<Query<Part>, QueryRejection>,
) -> Answer<impl IntoResponse> {
    let Query(part) = part?;
    let columns: Vec<usize> = part
        .columns
        .split(',')
        .map(|column| column.trim().parse())
        .collect::<Result<_, _>>()
        .map_err(|_| Failure::wrong("columns are numbers with commas between, such as 0,2"))?;
    let sane = part.from_s.is_finite() && part.to_s.is_finite() && part.from_s <= part.to_s;
    if !sane || columns.len() > MOST_COLUMNS || !(1..=MOST_BUCKETS).contains(&part.buckets) {
        return Err(Failure::wrong(format!(
            "from_s must not be after to_s, columns at most {MOST_COLUMNS}, buckets 1 to {MOST_BUCKETS}"
        )));
    }
    let slots = Arc::clone(&site.workers);
    let bytes = computing(&slots, move || {
        let series = find(&site, &part.id)?;
        if let Some(beyond) = columns.iter().find(|&&column| column >= series.columns().count()) {
            return Err(Failure::missing(format!("there is no column {beyond}")));
        }
        Ok(packed(&series.window(&columns, part.from_s, part.to_s, part.buckets)))
    })
    .await?;
    Ok(([(header::CONTENT_TYPE, "application/octet-stream")], bytes))
}

/// A window as [`SeriesDocument`] describes it.
#[expect(clippy::cast_possible_truncation, reason = "offsets are small beside their base")]
fn packed(window: &Window) -> Vec<u8> {
    let (base_s, base) = (window.time_s.first().copied(), window.first.first().copied());
    let (base_s, base) = (base_s.unwrap_or(0.0), base.unwrap_or(0));
    let mut bytes = Vec::with_capacity(24 + window.first.len() * (8 + 8 * window.low.len()));
    bytes.extend(base_s.to_le_bytes());
    for count in [base, window.first.len(), window.low.len(), 0] {
        bytes.extend((count as u32).to_le_bytes());
    }
    bytes.extend(window.first.iter().flat_map(|first| ((first - base) as u32).to_le_bytes()));
    bytes.extend(window.time_s.iter().flat_map(|time| ((time - base_s) as f32).to_le_bytes()));
    for (low, high) in window.low.iter().zip(&window.high) {
        bytes.extend(low.iter().chain(high).flat_map(|value| value.to_le_bytes()));
    }
    bytes
}
