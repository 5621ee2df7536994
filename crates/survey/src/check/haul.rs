//! A haul: its states, its day, its legs against its rungs and tires.

use model::haul_cycle::HaulCycle;
use quantity::Speed;

use super::survey::temperatures;
use crate::convert::{Assembly, Loaded, PlannedRoute};
use crate::file::{HaulFile, SurveyFile};
use crate::problem::{Problem, ProblemKind};

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
    leg_rungs(cycle, planned, problems);
    leg_speeds(cycle, planned, problems);
    caps(cycle, assembly, problems);
}

fn states(file: &Loaded<HaulFile>, cycle: &HaulCycle, problems: &mut Vec<Problem>) {
    let gross = |state: usize| cycle.combination.load_states[state].gross();
    let (empty, laden) = (gross(cycle.empty_state), gross(cycle.laden_state));
    if laden <= empty {
        problems.push(file.problem("/laden_state", ProblemKind::LadenLighter { empty, laden }));
    }
}

/// Every leg names a rung or has a surface that one rung is meant for.
fn leg_rungs(cycle: &HaulCycle, planned: &PlannedRoute, problems: &mut Vec<Problem>) {
    for (index, leg) in cycle.route.legs.iter().enumerate() {
        let meant = cycle.combination.rungs.iter().any(|rung| rung.surfaces.contains(&leg.surface));
        if leg.rung.is_none() && !meant {
            let kind = ProblemKind::NoRungForLeg { leg: leg.name.clone() };
            problems.push(planned.document.problem(&format!("/legs/{index}/surface"), kind));
        }
    }
}

/// A speed against the slowest tire of the combination.
fn slowest(cycle: &HaulCycle, speed: Speed, limit_of_road: bool) -> Option<ProblemKind> {
    let groups = &cycle.combination.groups;
    let tire = &groups
        .iter()
        .min_by(|first, second| first.tire.rated_speed.total_cmp(&second.tire.rated_speed))?
        .tire;
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
            let pointer = format!("/legs/{index}/speed_limit_kmh");
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
