//! A haul cycle: a combination on a route, in the weather of the survey or its own.

use model::haul_cycle::{
    HaulCycle, LadderWish, LadenDirection, ShiftStart, Spread, Standing, Weather,
};
use model::tire::cold_warm::ambient_pressure;
use quantity::{
    GaugePressure, Length, PressureDifference, Speed, Temperature, TemperatureDifference, Time,
};

use super::money::money;
use super::{Assembly, Loaded, PlannedRoute, index_of};
use crate::file::{HaulFile, LadderFile, LadenDirectionWord, SpreadFile, StandingFile, SurveyFile};
use crate::problem::{Condition, Problem, ProblemKind, Reference};

/// The haul of a file, if its combination and its route have every name it uses and `survey.toml`
/// could be read.
pub(crate) fn haul(
    name: &str,
    file: &Loaded<HaulFile>,
    survey: Option<&SurveyFile>,
    assembly: &Assembly,
    planned: &PlannedRoute,
    problems: &mut Vec<Problem>,
) -> Option<HaulCycle> {
    let data = &file.data;
    let combination = &assembly.combination;
    let states: Vec<&str> = combination.load_states.iter().map(|one| one.name.as_str()).collect();
    let rungs: Vec<&str> = combination.rungs.iter().map(|one| one.name.as_str()).collect();
    let mut state = |name: &str, pointer: &str| {
        index_of(&states, name, Reference::LoadState, &file.document, pointer, problems)
    };
    let empty_state = state(&data.empty_state, "/empty_state");
    let laden_state = state(&data.laden_state, "/laden_state");
    let ladder_wish = ladder_wish(data, survey);
    if rungs.is_empty() && data.ladder.is_none() {
        let kind = ProblemKind::Needed { key: "ladder", because: Condition::WithoutRungs };
        problems.push(file.problem("/combination", kind));
        return None;
    }
    let money = money(file, problems);
    let parked = parked_rung(file, &rungs, problems);

    let mut route = planned.route.clone();
    let mut whole = true;
    for (index, wanted) in planned.rungs.iter().enumerate() {
        let Some(wanted) = wanted else { continue };
        let pointer = planned.pointer(index, "rung");
        let found =
            index_of(&rungs, wanted, Reference::Rung, &planned.document, &pointer, problems);
        whole &= found.is_some();
        route.legs[index].rung = found;
    }
    if !whole {
        return None;
    }
    Some(HaulCycle {
        name: name.to_owned(),
        combination: combination.clone(),
        route,
        laden_direction: match data.laden_direction {
            LadenDirectionWord::Forward => LadenDirection::Forward,
            LadenDirectionWord::Backward => LadenDirection::Backward,
        },
        empty_state: empty_state?,
        laden_state: laden_state?,
        loading: standing(&data.loading),
        unloading: standing(&data.unloading),
        cycles_per_day: data.cycles_a_day,
        shift_start: ShiftStart {
            supply: GaugePressure::from_kpa(data.shift_start.supply_kpa),
            parked_rung: parked?,
        },
        weather: weather(data, survey?),
        leg_rungs: None,
        spread: spread(data.spread.as_ref()),
        ladder_wish,
        money,
    })
}

/// Index of the rung the tires were parked on; a combination without rungs gets its first one.
fn parked_rung(
    file: &Loaded<HaulFile>,
    rungs: &[&str],
    problems: &mut Vec<Problem>,
) -> Option<usize> {
    let pointer = "/shift_start/parked_rung";
    let key = "parked_rung";
    match &file.data.shift_start.parked_rung {
        None if rungs.is_empty() => Some(0),
        None => {
            let kind = ProblemKind::Needed { key, because: Condition::WithRungs };
            problems.push(file.problem("/shift_start", kind));
            None
        }
        Some(_) if rungs.is_empty() => {
            let kind = ProblemKind::OutOfPlace { key, because: Condition::WithoutRungs };
            problems.push(file.document.problem_with_key(pointer, kind));
            None
        }
        Some(name) => index_of(rungs, name, Reference::Rung, &file.document, pointer, problems),
    }
}

fn ladder_wish(data: &HaulFile, survey: Option<&SurveyFile>) -> Option<LadderWish> {
    let ladder: &LadderFile = data.ladder.as_ref()?;
    Some(LadderWish {
        rungs: ladder.rungs as usize,
        cap_step: Speed::from_kmh(survey?.speed_cap_step_kmh),
        lowest_cap: Speed::from_kmh(ladder.lowest_cap_kmh),
        fixed_caps: ladder.fixed_caps_kmh.iter().copied().map(Speed::from_kmh).collect(),
        truck_hour: ladder.truck_hour,
        hard_kpa_km: ladder.hard_kpa_km,
        change: ladder.change,
        compressor_hour: ladder.compressor_hour,
        currency: ladder.currency.clone(),
    })
}

/// The spread of the file; what it leaves out has its usual width.
fn spread(file: Option<&SpreadFile>) -> Spread {
    let mut spread = Spread::default();
    let Some(file) = file else { return spread };
    let share = |into: &mut f64, pct: Option<f64>| {
        if let Some(pct) = pct {
            *into = pct / 100.0;
        }
    };
    share(&mut spread.truck.delivery, file.truck.delivery_pct);
    share(&mut spread.truck.conductance, file.truck.conductance_pct);
    share(&mut spread.truck.tire_volume, file.truck.tire_volume_pct);
    share(&mut spread.run.engine_speed, file.run.engine_speed_pct);
    share(&mut spread.run.road_speed, file.run.road_speed_pct);
    if let Some(kelvin) = file.run.ambient_c {
        spread.run.ambient = TemperatureDifference::from_kelvin(kelvin);
    }
    if let Some(m) = file.run.reaction_m {
        spread.run.reaction = Length::from_m(m);
    }
    if let Some(kpa) = file.run.held_pressure_kpa {
        spread.run.held_pressure = PressureDifference::from_kpa(kpa);
    }
    spread.seed = file.seed.unwrap_or(spread.seed);
    spread
}

fn standing(file: &StandingFile) -> Standing {
    Standing {
        time: Time::from_min(file.time_min),
        high_idle: file.high_idle,
        change_while_loading: file.change_meanwhile,
    }
}

fn weather(haul: &HaulFile, survey: &SurveyFile) -> Weather {
    let own = haul.weather.unwrap_or_default();
    let common = &survey.temperature;
    let altitude = Length::from_m(own.altitude_m.unwrap_or(survey.altitude_m));
    Weather {
        reference: Temperature::from_celsius(common.reference_c),
        coldest: Temperature::from_celsius(own.coldest_c.unwrap_or(common.coldest_c)),
        warmest: Temperature::from_celsius(own.warmest_c.unwrap_or(common.warmest_c)),
        ambient: Temperature::from_celsius(own.nominal_c.unwrap_or(common.nominal_c)),
        ambient_pressure: ambient_pressure(altitude)
            .expect("the schema holds altitude within the standard atmosphere's range"),
        humidity: own.humidity_pct.unwrap_or(survey.humidity_pct) / 100.0,
    }
}
