//! The call from the road.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use axum::extract::rejection::JsonRejection;
use model::haul_cycle::HaulCycle;
use plan::now::{Call, Gauged, Load, Reading, Trailer, Warmth, Whose, answer};
use quantity::{GaugePressure, Speed, Temperature, Unit};
use study::{Named, driven_by, haul_of};
use view::{NowDocument, NowRequest, ReadingRequest, SubjectView};

use super::trial;
use super::work::computing;
use crate::failure::{Answer, Failure};
use crate::site::Site;

/// `POST /api/now`
pub async fn now(
    State(site): State<Arc<Site>>,
    wanted: Result<Json<NowRequest>, JsonRejection>,
) -> Answer<Json<NowDocument>> {
    let Json(wanted) = wanted?;
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        let snapshot = site.snapshots.current()?;
        let survey = snapshot.opened.survey.as_ref();
        let survey = survey.ok_or_else(|| Failure::survey("survey.toml has errors"))?;
        let units: Vec<String> = wanted.unit.iter().cloned().collect();
        let survey = &driven_by(survey, &units).map_err(Failure::wrong)?;
        let named = Named { combination: None, haul: wanted.haul.as_deref() };
        let name = haul_of(survey, named).map_err(Failure::wrong)?.name.clone();
        let haul = trial::haul(survey, &name)?;
        let call = call(&haul, &wanted, survey.speed_cap_step)?;
        let found = answer(&haul, &call).map_err(Failure::wrong)?;
        let subject = SubjectView {
            unit: wanted.unit,
            haul: haul.name.clone(),
            combination: haul.combination.name.clone(),
            chain_state: None,
            with_unapproved: false,
        };
        Ok(Json(NowDocument::new(&haul, subject, &found)))
    })
    .await
}

fn call(haul: &HaulCycle, wanted: &NowRequest, cap_step: Speed) -> Answer<Call> {
    let warmth = match wanted.tires.as_str() {
        "cold" => Warmth::Cold,
        "warm" => Warmth::Warm,
        "not-known" => Warmth::NotKnown,
        other => {
            return Err(Failure::wrong(format!(
                "tires are cold, warm or not-known, not '{other}'"
            )));
        }
    };
    let trailer = match wanted.trailer.as_deref() {
        None | Some("planned") => Trailer::AsPlanned,
        Some("none") => Trailer::None,
        Some("unknown") => Trailer::Unknown,
        Some("left-low") => Trailer::LeftLow,
        Some("left-shut") => Trailer::LeftShut,
        Some(other) => return Err(Failure::wrong(format!("no trailer is called '{other}'"))),
    };
    let states = &haul.combination.load_states;
    let load = match wanted.load_state.as_deref() {
        None => Load::Unknown,
        Some(name) => {
            let state = states.iter().position(|state| state.name == name);
            let missing = || Failure::missing(format!("there is no load state '{name}'"));
            Load::State(state.ok_or_else(missing)?)
        }
    };
    let ambient = wanted.ambient_c.map(Temperature::try_from_celsius).transpose();
    Ok(Call {
        load,
        chains: None,
        readings: wanted
            .readings
            .iter()
            .map(|given| reading(haul, given, warmth))
            .collect::<Answer<_>>()?,
        ran_last_hour: wanted.ran_last_hour,
        ambient: ambient.map_err(Failure::wrong)?,
        trailer,
        with_unapproved: false,
        cap_step,
    })
}

fn reading(haul: &HaulCycle, given: &ReadingRequest, warmth: Warmth) -> Answer<Reading> {
    let combination = &haul.combination;
    let channel = combination.channels.iter().position(|channel| channel.name == given.of);
    let group = combination.groups.iter().position(|group| {
        format!("{}.{}", combination.vehicles[group.vehicle].name, group.name) == given.of
    });
    let whose = channel.map(Whose::Channel).or(group.map(Whose::Group));
    let missing =
        || Failure::missing(format!("no air channel or axle group is called '{}'", given.of));
    let pressure = |kpa: f64| GaugePressure::try_from_kpa(kpa).map_err(Failure::wrong);
    let one = pressure(given.pressure_kpa)?;
    let typed_in = given.typed_in.as_deref();
    Ok(Reading {
        whose: whose.ok_or_else(missing)?,
        gauged: match given.mate_kpa {
            Some(mate) => Gauged::Mates(one, pressure(mate)?),
            None => Gauged::One(one),
        },
        warmth,
        typed_in: typed_in
            .and_then(|typed| GaugePressure::SYMBOLS.iter().copied().find(|known| *known == typed)),
    })
}
