//! A plan worked out while somebody moves a slider.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use axum::extract::rejection::JsonRejection;
use model::haul_cycle::HaulCycle;
use model::vehicle::HandSetCell;
use plan::Detail;
use quantity::{ColdPressure, Length};
use study::{MovedCall, Trial, Tried, haul_with_rungs, try_out};
use survey::Survey;
use view::{HandSetRequest, PlanDocument, TrialDocument, TrialRequest};

use super::work::computing;
use crate::failure::{Answer, Failure};
use crate::site::Site;

/// Most cells and changes one request may move; more than any ladder has.
const MOST: usize = 400;
/// Lowest and highest pressure a cell may be set to.
const PRESSURES_KPA: std::ops::RangeInclusive<f64> = 50.0..=1500.0;

/// `POST /api/plan`
pub async fn plan(
    State(site): State<Arc<Site>>,
    wanted: Result<Json<TrialRequest>, JsonRejection>,
) -> Answer<Json<TrialDocument>> {
    let Json(wanted) = wanted?;
    let slots = Arc::clone(&site.planners);
    computing(&slots, move || Ok(Json(TrialDocument::new(&tried(&site, &wanted)?)))).await
}

/// `POST /api/effects`: the plan tried, with what it does and costs; slower.
pub async fn effects(
    State(site): State<Arc<Site>>,
    wanted: Result<Json<TrialRequest>, JsonRejection>,
) -> Answer<Json<PlanDocument>> {
    let Json(wanted) = wanted?;
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        let tried = tried(&site, &wanted)?;
        Ok(Json(PlanDocument::new(std::slice::from_ref(&tried.planned))))
    })
    .await
}

fn tried(site: &Site, wanted: &TrialRequest) -> Answer<Tried> {
    let snapshot = site.snapshots.current()?;
    let survey = snapshot.opened.survey.as_ref();
    let survey = survey.ok_or_else(|| Failure::survey("survey.toml has errors"))?;
    let samples = if wanted.sampled { Detail::default().samples } else { 0 };
    let detail = Detail { samples, ..Detail::default() };
    let haul = haul(survey, &wanted.haul)?;
    let trial = trial(&haul, wanted)?;
    try_out(&haul, &trial, &detail).map_err(Failure::survey)
}

/// A haul of the survey with the rungs of its ladder.
pub fn haul(survey: &Survey, name: &str) -> Answer<HaulCycle> {
    let Some(haul) = survey.hauls.iter().find(|haul| haul.name == name) else {
        if survey.haul_names.iter().any(|known| known == name) {
            return Err(Failure::survey(format!("haul '{name}' has errors to be mended first")));
        }
        return Err(Failure::missing(format!("the survey has no haul '{name}'")));
    };
    haul_with_rungs(survey, &haul.name).map_err(Failure::survey)
}

fn trial(haul: &HaulCycle, wanted: &TrialRequest) -> Answer<Trial> {
    if wanted.hand_set.len() > MOST || wanted.moved.len() > MOST {
        return Err(Failure::wrong(format!("more than {MOST} cells or changes in one request")));
    }
    let what_if = wanted.what_if.what_if();
    let what_if =
        what_if.ok_or_else(|| Failure::wrong("what_if holds something that is no number"))?;
    let moved = |moved: &view::MovedRequest| {
        let on_route = (0.0..=haul.route.length().as_km()).contains(&moved.km);
        let at = Length::from_km(moved.km);
        let problem = || Failure::wrong(format!("{} km is not on the route", moved.km));
        on_route.then_some(MovedCall { number: moved.number, at }).ok_or_else(problem)
    };
    Ok(Trial {
        what_if: what_if.checked().map_err(Failure::wrong)?,
        hand_set: wanted.hand_set.iter().map(|cell| hand_set(haul, cell)).collect::<Answer<_>>()?,
        moved: wanted.moved.iter().map(moved).collect::<Answer<_>>()?,
    })
}

fn hand_set(haul: &HaulCycle, cell: &HandSetRequest) -> Answer<HandSetCell> {
    let combination = &haul.combination;
    let missing = |what: &str, name: &str| Failure::missing(format!("there is no {what} '{name}'"));
    let channel = combination.channels.iter().position(|one| one.name == cell.channel);
    let load_state = combination.load_states.iter().position(|one| one.name == cell.load_state);
    let rung = combination.rungs.iter().position(|one| one.name == cell.rung);
    if !PRESSURES_KPA.contains(&cell.pressure_kpa) {
        return Err(Failure::wrong(format!(
            "a cold pressure of {} kPa is outside {} to {} kPa",
            cell.pressure_kpa,
            PRESSURES_KPA.start(),
            PRESSURES_KPA.end()
        )));
    }
    Ok(HandSetCell {
        channel: channel.ok_or_else(|| missing("air channel", &cell.channel))?,
        load_state: load_state.ok_or_else(|| missing("load state", &cell.load_state))?,
        rung: rung.ok_or_else(|| missing("rung", &cell.rung))?,
        pressure: ColdPressure::from_kpa(cell.pressure_kpa),
    })
}
