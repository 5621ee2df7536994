//! Loads of a combination: against its gross mass, its tires, its rims and its axles.

use model::tire::{Fitment, Tire};
use model::vehicle::{AxleGroup, GroupLoad, LoadState, WheelValve};
use quantity::{ColdPressure, Mass};

use super::tire::looks_like_psi;
use crate::convert::{Assembly, Loaded};
use crate::document::join;
use crate::file::CombinationFile;
use crate::problem::{Problem, ProblemKind};

/// Largest difference between the groups' sum and the gross mass.
const GROSS_TOLERANCE: f64 = 0.01;

/// Over the axle rating by more than anybody loads: rather a slip of the unit.
const BEYOND_OVERLOAD: f64 = 1.4;

/// Checks the loads, channels and pressures of an assembled combination.
pub(crate) fn assembly(
    file: &Loaded<CombinationFile>,
    made: &Assembly,
    problems: &mut Vec<Problem>,
) {
    // Loads that are not known are those of another state, and judged with it.
    let states = made.combination.load_states.iter().enumerate();
    for (index, state) in states.filter(|(_, state)| state.treat_as.is_none()) {
        let at = format!("/load_states/{index}");
        gross(file, index, state, &at, problems);
        for (number, group) in made.combination.groups.iter().enumerate() {
            if state.is_lifted(number) {
                continue;
            }
            let label = &made.origins[number].label;
            let pointer = join(&join(&join(&at, "loads"), label), "mass_kg");
            group_load(file, &pointer, label, (number, group), state, problems);
        }
    }
    idle_channels(made, problems);
    governor(file, made, problems);
    stored_rungs(file, made, problems);
}

/// Groups must add up to the gross mass within 1 %.
fn gross(
    file: &Loaded<CombinationFile>,
    index: usize,
    state: &LoadState,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    let Some(declared) = file.data.load_states[index].gross_mass_kg.map(Mass::from_kg) else {
        return;
    };
    let sum = state.gross();
    if (sum - declared).abs() > declared * GROSS_TOLERANCE {
        let kind = ProblemKind::GrossMass { sum, declared };
        problems.push(file.problem(&format!("{at}/gross_mass_kg"), kind));
    }
}

/// Load of the worst tire of a group that stands on the road: heavier side, heavier mate.
fn worst_tire(group: &AxleGroup, load: &GroupLoad, axles_down: u32) -> Mass {
    let end = load.mass * load.heavier_side_share / f64::from(axles_down);
    match group.fitment {
        Fitment::Single => end,
        Fitment::Dual => end * load.heavier_mate_share,
    }
}

fn group_load(
    file: &Loaded<CombinationFile>,
    pointer: &str,
    label: &str,
    (number, group): (usize, &AxleGroup),
    state: &LoadState,
    problems: &mut Vec<Problem>,
) {
    let mut problem = |kind| problems.push(file.problem(pointer, kind));
    let (load, axles_down) = (&state.groups[number], state.axles_down[number]);
    let (label, state) = (label.to_owned(), state.name.clone());
    if load.mass <= Mass::ZERO {
        problem(ProblemKind::ZeroLoad { group: label, liftable: group.liftable });
        return;
    }
    if load.mass > group.axle_rating * BEYOND_OVERLOAD
        && Mass::from_lb(load.mass.as_kg()) <= group.axle_rating
    {
        let (given, expected) = (load.mass, Mass::from_lb(load.mass.as_kg()));
        problem(ProblemKind::MassInPounds { given, expected });
        return;
    }
    if load.mass > group.axle_rating {
        let (load, rating) = (load.mass, group.axle_rating);
        let (group, load_state) = (label.clone(), state.clone());
        problem(ProblemKind::OverAxleRating { group, load_state, load, rating });
    }
    let worst = worst_tire(group, load, axles_down);
    let weakest = group
        .tire_models()
        .filter_map(|tire| tire.rated(group.fitment))
        .min_by(|first, second| first.load.total_cmp(&second.load));
    if let Some(rated) = weakest.filter(|rated| worst > rated.load) {
        let dual = group.fitment == Fitment::Dual;
        let (group, load_state) = (label.clone(), state.clone());
        let kind = ProblemKind::OverTireRating {
            group,
            load_state,
            load: worst,
            rating: rated.load,
            dual,
        };
        problem(kind);
    }
    let rims = group.tire_models().map(|tire| tire.rim.maximum_load);
    if let Some(rating) = rims.min_by(Mass::total_cmp).filter(|rating| worst > *rating) {
        let (group, load_state) = (label, state);
        problem(ProblemKind::OverRimRating { group, load_state, load: worst, rating });
    }
}

/// Channels that no group hangs on.
fn idle_channels(made: &Assembly, problems: &mut Vec<Problem>) {
    for (index, channel) in made.combination.channels.iter().enumerate() {
        if made.combination.groups_of(index).next().is_none() {
            let kind = ProblemKind::ChannelFeedsNothing { channel: channel.name.clone() };
            problems.push(made.document.problem("/vehicles", kind));
        }
    }
}

/// The governor must cut out above every pressure that the tires are to reach.
fn governor(file: &Loaded<CombinationFile>, made: &Assembly, problems: &mut Vec<Problem>) {
    let cut_out = made.combination.supply.governor.cut_out;
    for (group, origin) in made.combination.groups.iter().zip(&made.origins) {
        let rated = group.tire_models().filter_map(|tire| tire.rated(group.fitment));
        let wanted = rated.map(|rated| rated.pressure).max_by(ColdPressure::total_cmp);
        let Some(wanted) = wanted.filter(|_| group.channel.is_some()) else { continue };
        if wanted.at_reference() >= cut_out {
            let target = origin.label.clone();
            let kind = ProblemKind::GovernorTooLow { cut_out, wanted, target, rated: true };
            problems.push(made.truck.problem("/air/governor/cut_out_kpa", kind));
        }
    }
    for (index, cell) in made.combination.hand_set.iter().enumerate() {
        let wanted = cell.pressure;
        let pointer = format!("/hand_set/{index}/pressure_kpa");
        if wanted.at_reference() >= cut_out {
            let target = made.combination.channels[cell.channel].name.clone();
            let kind = ProblemKind::GovernorTooLow { cut_out, wanted, target, rated: false };
            problems.push(file.problem(&pointer, kind));
        }
        for (_, group) in made.combination.groups_of(cell.channel) {
            for tire in group.tire_models() {
                hand_set(file, &pointer, wanted, (group, tire), problems);
            }
        }
    }
}

/// A pressure fixed by hand against what a tire may have.
fn hand_set(
    file: &Loaded<CombinationFile>,
    pointer: &str,
    wanted: ColdPressure,
    (group, tire): (&AxleGroup, &Tire),
    problems: &mut Vec<Problem>,
) {
    if looks_like_psi(wanted, tire) {
        let kind = ProblemKind::PressureInPsi { given: wanted, rated: tire.single.pressure };
        problems.push(file.problem(pointer, kind));
    }
    let least = [
        ("bead_minimum_kpa", tire.bead_minimum),
        ("wheel_valve_closes_below_kpa", closing(group.wheel_valve)),
    ];
    for (limit, minimum) in least {
        if let Some(minimum) = minimum.filter(|minimum| wanted < *minimum) {
            let kind = ProblemKind::UnderMinimum { pressure: wanted, minimum, limit };
            problems.push(file.problem(pointer, kind));
        }
    }
    let limits = [
        ("molded_maximum_kpa", tire.molded_maximum),
        ("rim.maximum_pressure_kpa", tire.rim.maximum_pressure),
    ];
    for (limit, maximum) in limits {
        if wanted > maximum {
            let kind = ProblemKind::OverMaximum { pressure: wanted, maximum, limit };
            problems.push(file.problem(pointer, kind));
        }
    }
}

fn closing(valve: Option<WheelValve>) -> Option<ColdPressure> {
    match valve? {
        WheelValve::SelfClosing { closes_below } => {
            Some(ColdPressure::read_at_reference(closes_below))
        }
        WheelValve::ByHand => None,
    }
}

/// No more rungs than the controller stores.
fn stored_rungs(file: &Loaded<CombinationFile>, made: &Assembly, problems: &mut Vec<Problem>) {
    let rungs = made.combination.rungs.len();
    let stored = made.combination.controller.stored_rungs;
    if rungs > stored as usize {
        problems.push(file.problem("/rungs", ProblemKind::RungsOverStored { rungs, stored }));
    }
}
