//! A vehicle: what its kind, its channels and its fitments ask for.

use std::sync::Arc;

use model::tire::duals::{MinimumSpacing, diameters_match};
use model::tire::{AirRetention, Construction, Fitment, Tire};
use quantity::{ColdPressure, Length};

use super::tire::looks_like_psi;
use super::{air, names};
use crate::convert::{Catalog, Loaded, index_of, refer};
use crate::file::{
    AxleGroupFile, ChannelFile, ElementFile, FitmentWord, TrailerAirWord, VehicleFile,
    VehicleKindWord, WheelValveWord,
};
use crate::problem::{Condition, Problem, ProblemKind, Reference, SpacingBasis};

/// Largest difference of mate diameters, a quarter of an inch.
const MATE_DIAMETER: Length = Length::from_in(0.25);

/// Checks a vehicle against itself and against the tires it names.
pub(crate) fn vehicle(
    file: &Loaded<VehicleFile>,
    tires: &Catalog<Arc<Tire>>,
    problems: &mut Vec<Problem>,
) {
    let data = &file.data;
    let document = &file.document;
    let groups = data.axle_groups.iter().map(|group| group.name.as_str());
    names::unique(document, groups, |index| format!("/axle_groups/{index}/name"), problems);
    let channels = data.channels.iter().map(|channel| channel.name.as_str());
    names::unique(document, channels, |index| format!("/channels/{index}/name"), problems);
    match data.kind {
        VehicleKindWord::Truck => truck(file, problems),
        VehicleKindWord::Trailer => trailer(file, problems),
    }
    for (index, channel) in data.channels.iter().enumerate() {
        elements(file, channel, &format!("/channels/{index}"), problems);
    }
    for (index, group) in data.axle_groups.iter().enumerate() {
        let at = format!("/axle_groups/{index}");
        channel_keys(file, group, &at, problems);
        let pointer = format!("{at}/tire");
        let found = refer(tires, &group.tire, Reference::Tire, document, &pointer, problems);
        dual_keys(file, group, &at, problems);
        if let Some(tire) = found {
            fitment(file, group, tire, &at, problems);
            casing(file, group, tire, &at, problems);
            fixed_pressure(file, group, tire, &at, problems);
            scrub_minimum(file, group, tire, &at, problems);
        }
    }
}

fn needed(
    file: &Loaded<VehicleFile>,
    at: &str,
    key: &'static str,
    because: Condition,
    problems: &mut Vec<Problem>,
) {
    problems.push(file.problem(at, ProblemKind::Needed { key, because }));
}

fn out_of_place(
    file: &Loaded<VehicleFile>,
    at: &str,
    key: &'static str,
    because: Condition,
    problems: &mut Vec<Problem>,
) {
    let pointer = format!("{at}/{key}");
    let kind = ProblemKind::OutOfPlace { key, because };
    problems.push(file.document.problem_with_key(&pointer, kind));
}

fn truck(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    let data = &file.data;
    let given = [
        ("drag_area_m2", data.drag_area_m2.is_some()),
        ("engine", data.engine.is_some()),
        ("air", data.air.is_some()),
        ("controller", data.controller.is_some()),
    ];
    for (key, _) in given.into_iter().filter(|(_, given)| !given) {
        needed(file, "", key, Condition::Truck, problems);
    }
    if data.air_from.is_some() {
        out_of_place(file, "", "air_from", Condition::Truck, problems);
    }
    air::supply(file, problems);
}

fn trailer(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    let data = &file.data;
    let given = [
        ("drag_area_m2", data.drag_area_m2.is_some()),
        ("engine", data.engine.is_some()),
        ("air", data.air.is_some()),
        ("controller", data.controller.is_some()),
    ];
    for (key, _) in given.into_iter().filter(|(_, given)| *given) {
        out_of_place(file, "", key, Condition::Trailer, problems);
    }
    match data.air_from {
        Some(TrailerAirWord::BrakeSupplyLine) => {
            problems.push(file.problem("/air_from", ProblemKind::BrakeSupplyLine));
        }
        None if !data.channels.is_empty() => {
            needed(file, "", "air_from", Condition::TrailerWithChannels, problems);
        }
        Some(TrailerAirWord::TireLine) | None => {}
    }
}

fn elements(
    file: &Loaded<VehicleFile>,
    channel: &ChannelFile,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    let path =
        channel.path.iter().enumerate().map(|(index, one)| (format!("{at}/path/{index}"), one));
    let ends = channel.wheel_end.iter().flatten().enumerate();
    let ends = ends.map(|(index, one)| (format!("{at}/wheel_end/{index}"), one));
    for (pointer, element) in path.chain(ends) {
        element_keys(file, element, &pointer, problems);
    }
}

/// A part has C and b, a tube has bore and length, and nothing has both.
fn element_keys(
    file: &Loaded<VehicleFile>,
    element: &ElementFile,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    let part = element.c_dm3_s_bar.is_some() || element.b.is_some();
    let keys = [
        ("c_dm3_s_bar", element.c_dm3_s_bar.is_some(), true),
        ("b", element.b.is_some(), true),
        ("bore_mm", element.bore_mm.is_some(), false),
        ("length_m", element.length_m.is_some(), false),
    ];
    for (key, given, of_part) in keys {
        if of_part == part && !given {
            let because = if part { Condition::Part } else { Condition::Tube };
            needed(file, at, key, because, problems);
        }
        if of_part != part && given {
            out_of_place(file, at, key, Condition::Part, problems);
        }
    }
}

/// Groups on a channel and groups without one ask for different keys.
fn channel_keys(
    file: &Loaded<VehicleFile>,
    group: &AxleGroupFile,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    if let Some(channel) = &group.channel {
        let known: Vec<&str> = file.data.channels.iter().map(|one| one.name.as_str()).collect();
        let pointer = format!("{at}/channel");
        index_of(&known, channel, Reference::Channel, &file.document, &pointer, problems);
        if group.wheel_valve.is_none() {
            needed(file, at, "wheel_valve", Condition::OnChannel, problems);
        }
        if group.fixed_pressure_kpa.is_some() {
            out_of_place(file, at, "fixed_pressure_kpa", Condition::OnChannel, problems);
        }
    } else {
        if group.fixed_pressure_kpa.is_none() {
            needed(file, at, "fixed_pressure_kpa", Condition::WithoutChannel, problems);
        }
        if group.wheel_valve.is_some() {
            out_of_place(file, at, "wheel_valve", Condition::WithoutChannel, problems);
        }
    }
    let closes = group.wheel_valve_closes_below_kpa.is_some();
    let key = "wheel_valve_closes_below_kpa";
    match group.wheel_valve {
        Some(WheelValveWord::SelfClosing) if !closes => {
            needed(file, at, key, Condition::SelfClosing, problems);
        }
        Some(WheelValveWord::ByHand) | None if closes => {
            out_of_place(file, at, key, Condition::NotSelfClosing, problems);
        }
        _ => {}
    }
    let all = group.axles * 2;
    if group.wheel_ends_shut > all {
        let kind = ProblemKind::WheelEndsShut { shut: group.wheel_ends_shut, all };
        problems.push(file.problem(&format!("{at}/wheel_ends_shut"), kind));
    }
}

fn dual_keys(
    file: &Loaded<VehicleFile>,
    group: &AxleGroupFile,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    match (group.fitment, group.dual.is_some()) {
        (FitmentWord::Dual, false) => needed(file, at, "dual", Condition::Dual, problems),
        (FitmentWord::Single, true) => out_of_place(file, at, "dual", Condition::Single, problems),
        _ => {}
    }
}

/// Duals: a dual rating, room between them, and mates that match.
fn fitment(
    file: &Loaded<VehicleFile>,
    group: &AxleGroupFile,
    tire: &Tire,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    if group.fitment == FitmentWord::Single {
        return;
    }
    if tire.rated(Fitment::Dual).is_none() {
        let kind = ProblemKind::NoDualRating { tire: tire.name.clone() };
        problems.push(file.problem(&format!("{at}/fitment"), kind));
    }
    let Some(dual) = &group.dual else { return };
    let spacing = Length::from_mm(dual.spacing_mm);
    let printed =
        MinimumSpacing::of(&tire.size).map(|least| (least.value, SpacingBasis::SizeTable));
    let gap = tire.section_width + Length::from_mm(dual.least_gap_mm);
    let least = match printed {
        Some((least, basis)) if least >= gap => (least, basis),
        _ => (gap, SpacingBasis::SectionWidth),
    };
    // The table is printed to a tenth of an inch, spacers are sold to the millimeter.
    let rounding = Length::from_mm(1.0);
    if spacing + rounding < least.0 {
        let kind = ProblemKind::DualsTooClose { spacing, least: least.0, basis: least.1 };
        problems.push(file.problem(&format!("{at}/dual/spacing_mm"), kind));
    }
    let difference = Length::from_mm(dual.diameter_difference_mm);
    if !diameters_match(difference) {
        let kind = ProblemKind::DualsMismatched { difference, most: MATE_DIAMETER };
        problems.push(file.problem(&format!("{at}/dual/diameter_difference_mm"), kind));
    }
}

/// Casings that do not suit a pressure that varies.
fn casing(
    file: &Loaded<VehicleFile>,
    group: &AxleGroupFile,
    tire: &Tire,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    if group.channel.is_none() {
        return;
    }
    let pointer = format!("{at}/tire");
    if tire.air_retention == AirRetention::TubeType {
        let kind = ProblemKind::TubeTypeOnChannel { tire: tire.name.clone() };
        problems.push(file.problem(&pointer, kind));
    }
    if tire.construction == Construction::Bias {
        let kind = ProblemKind::BiasOnChannel { tire: tire.name.clone() };
        problems.push(file.problem(&pointer, kind));
    }
}

/// A fixed pressure within what tire and rim may hold.
fn fixed_pressure(
    file: &Loaded<VehicleFile>,
    group: &AxleGroupFile,
    tire: &Tire,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    let Some(pressure) = group.fixed_pressure_kpa.map(ColdPressure::from_kpa) else { return };
    let limits = [
        ("molded_maximum_kpa", tire.molded_maximum),
        ("rim.maximum_pressure_kpa", tire.rim.maximum_pressure),
    ];
    for (limit, maximum) in limits {
        if pressure > maximum {
            let kind = ProblemKind::OverMaximum { pressure, maximum, limit };
            problems.push(file.problem(&format!("{at}/fixed_pressure_kpa"), kind));
        }
    }
}

fn scrub_minimum(
    file: &Loaded<VehicleFile>,
    group: &AxleGroupFile,
    tire: &Tire,
    at: &str,
    problems: &mut Vec<Problem>,
) {
    let Some(given) = group.scrub_minimum_kpa.map(ColdPressure::from_kpa) else { return };
    let pointer = format!("{at}/scrub_minimum_kpa");
    let (limit, maximum) = ("molded_maximum_kpa", tire.molded_maximum);
    if given > maximum {
        let kind = ProblemKind::OverMaximum { pressure: given, maximum, limit };
        problems.push(file.problem(&pointer, kind));
    } else if looks_like_psi(given, tire) {
        let kind = ProblemKind::PressureInPsi { given, rated: tire.single.pressure };
        problems.push(file.problem(&pointer, kind));
    }
}
