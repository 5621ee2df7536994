//! A haul cycle: a combination on a route, in the weather of the survey or its own.

use model::haul_cycle::{
    HaulCycle, LadenDirection, ShiftStart, Spread, Standing, Weather,
};
use model::tire::cold_warm::ambient_pressure;
use quantity::{GaugePressure, Length, Temperature, Time};

use super::{Assembly, Loaded, PlannedRoute, index_of};
use crate::file::{HaulFile, LadenDirectionWord, StandingFile, SurveyFile};
use crate::problem::{Problem, Reference};

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
    let pointer = "/shift_start/parked_rung";
    let parked = &data.shift_start.parked_rung;
    let parked = index_of(&rungs, parked, Reference::Rung, &file.document, pointer, problems);

    let mut route = planned.route.clone();
    let mut whole = true;
    for (index, wanted) in planned.rungs.iter().enumerate() {
        let Some(wanted) = wanted else { continue };
        let pointer = format!("/legs/{index}/rung");
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
        spread: Spread::default(),
        ladder_wish: None,
    })
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
