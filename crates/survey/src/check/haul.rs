//! A haul: its states, its day, its legs against its rungs and tires.

use model::haul_cycle::{HaulCycle, LadderWish};
use model::vehicle::AxleGroup;
use quantity::Speed;

use super::survey::temperatures;
use crate::convert::{Assembly, Loaded, PlannedRoute};
use crate::file::{HaulFile, SurveyFile};
use crate::problem::{LadderFault, PermitFault, Problem, ProblemKind, StateFault};

const HOURS_A_DAY: f64 = 24.0;
const MINUTES_AN_HOUR: f64 = 60.0;

/// Checks what a haul's file says without its combination and route.
pub(crate) fn haul_file(
    file: &Loaded<HaulFile>,
    survey: &Loaded<SurveyFile>,
    problems: &mut Vec<Problem>,
) {
    let data = &file.data;
    if let Some(own) = &data.weather {
        let common = &survey.data.temperature;
        let three = [
            own.coldest_c.unwrap_or(common.coldest_c),
            own.nominal_c.unwrap_or(common.nominal_c),
            own.warmest_c.unwrap_or(common.warmest_c),
        ];
        temperatures(&file.document, "/weather", three, problems);
    }
    let standing = data.loading.time_min + data.unloading.time_min;
    let hours = standing * data.cycles_a_day / MINUTES_AN_HOUR;
    if hours > HOURS_A_DAY {
        problems.push(file.problem("/cycles_a_day", ProblemKind::CyclesInDay { hours }));
    }
}

/// Checks a haul with its combination and route.
pub(crate) fn haul(
    file: &Loaded<HaulFile>,
    cycle: &HaulCycle,
    assembly: &Assembly,
    planned: &PlannedRoute,
    problems: &mut Vec<Problem>,
) {
    states(file, cycle, problems);
    if !cycle.combination.rungs.is_empty() {
        leg_rungs(cycle, planned, problems);
    }
    leg_speeds(cycle, planned, problems);
    caps(cycle, assembly, problems);
    gross_masses(file, cycle, problems);
    if let Some(wish) = &cycle.ladder_wish {
        ladder(file, cycle, wish, problems);
    }
}

fn states(file: &Loaded<HaulFile>, cycle: &HaulCycle, problems: &mut Vec<Problem>) {
    let gross = |state: usize| cycle.combination.load_states[state].gross();
    let (empty, laden) = (gross(cycle.empty_state), gross(cycle.laden_state));
    if laden <= empty {
        problems.push(file.problem("/laden_state", ProblemKind::LadenLighter { empty, laden }));
    }
    for (key, state) in driven(cycle) {
        let state = &cycle.combination.load_states[state];
        if state.body_raised {
            let fault = StateFault::DrivenRaised { load_state: state.name.clone() };
            problems.push(file.problem(key, ProblemKind::State(fault)));
        }
    }
}

/// The load states that are driven in, with the keys that name them.
fn driven(cycle: &HaulCycle) -> [(&'static str, usize); 2] {
    [("/empty_state", cycle.empty_state), ("/laden_state", cycle.laden_state)]
}

/// No state driven in is heavier than a permit on the route allows.
fn gross_masses(file: &Loaded<HaulFile>, cycle: &HaulCycle, problems: &mut Vec<Problem>) {
    let permits = cycle.route.legs.iter().filter_map(|leg| leg.permit.as_ref());
    for permit in permits.filter(|permit| permit.in_force) {
        for (key, state) in driven(cycle) {
            let state = &cycle.combination.load_states[state];
            if let Some(allowed) = permit.gross_mass.filter(|allowed| state.gross() > *allowed) {
                let fault = PermitFault::GrossAbove {
                    permit: permit.number.clone(),
                    load_state: state.name.clone(),
                    gross: state.gross(),
                    allowed,
                };
                problems.push(file.problem(key, ProblemKind::Permit(fault)));
            }
        }
    }
}

/// What a search is asked for must fit the controller, the tires and itself.
fn ladder(
    file: &Loaded<HaulFile>,
    cycle: &HaulCycle,
    wish: &LadderWish,
    problems: &mut Vec<Problem>,
) {
    let stored = cycle.combination.controller.stored_rungs;
    if wish.rungs > stored as usize {
        let kind = ProblemKind::RungsOverStored { rungs: wish.rungs, stored };
        problems.push(file.problem("/ladder/rungs", kind));
    }
    if let Some(kind) = slowest(cycle, wish.lowest_cap, false) {
        problems.push(file.problem("/ladder/lowest_cap_kmh", kind));
    }
    let fixed = wish.fixed_caps.len();
    if let Some(rungs) = file.data.ladder.as_ref().map(|ladder| ladder.rungs)
        && fixed > rungs as usize
    {
        let fault = LadderFault::TooManyFixed { fixed, rungs };
        problems.push(file.problem("/ladder/fixed_caps_kmh", ProblemKind::Ladder(fault)));
    }
    for (index, &cap) in wish.fixed_caps.iter().enumerate() {
        let pointer = format!("/ladder/fixed_caps_kmh/{index}");
        if let Some(kind) = slowest(cycle, cap, false) {
            problems.push(file.problem(&pointer, kind));
        }
        if cap < wish.lowest_cap {
            let fault = LadderFault::FixedUnderLowest { cap, lowest: wish.lowest_cap };
            problems.push(file.problem(&pointer, ProblemKind::Ladder(fault)));
        }
    }
}

/// Every leg names a rung or has a surface that one rung is meant for.
fn leg_rungs(cycle: &HaulCycle, planned: &PlannedRoute, problems: &mut Vec<Problem>) {
    for (index, leg) in cycle.route.legs.iter().enumerate() {
        let meant = cycle.combination.rungs.iter().any(|rung| rung.surfaces.contains(&leg.surface));
        if leg.rung.is_none() && !meant {
            let kind = ProblemKind::NoRungForLeg { leg: leg.name.clone() };
            problems.push(planned.document.problem(&planned.pointer(index, "surface"), kind));
        }
    }
}

/// A speed against the slowest tire of the combination.
fn slowest(cycle: &HaulCycle, speed: Speed, limit_of_road: bool) -> Option<ProblemKind> {
    let groups = &cycle.combination.groups;
    let tire = groups
        .iter()
        .flat_map(AxleGroup::tire_models)
        .min_by(|first, second| first.rated_speed.total_cmp(&second.rated_speed))?;
    (speed > tire.rated_speed).then(|| ProblemKind::AboveSpeedSymbol {
        speed,
        tire: tire.name.clone(),
        symbol: tire.speed_symbol.clone(),
        rated: tire.rated_speed,
        limit_of_road,
    })
}

fn leg_speeds(cycle: &HaulCycle, planned: &PlannedRoute, problems: &mut Vec<Problem>) {
    for (index, leg) in cycle.route.legs.iter().enumerate() {
        if let Some(kind) = slowest(cycle, leg.speed_limit, true) {
            let pointer = planned.pointer(index, "speed_limit_kmh");
            problems.push(planned.document.problem(&pointer, kind));
        }
    }
}

fn caps(cycle: &HaulCycle, assembly: &Assembly, problems: &mut Vec<Problem>) {
    for (index, rung) in cycle.combination.rungs.iter().enumerate() {
        if let Some(kind) = slowest(cycle, rung.cap, false) {
            let pointer = format!("/rungs/{index}/speed_cap_kmh");
            problems.push(assembly.document.problem(&pointer, kind));
        }
    }
}
