//! A combination out of its vehicles.

use std::sync::Arc;

use model::tire::{Fitment, Tire};
use model::vehicle::{
    AxleGroup, Combination, DualPair, HandSetCell, HoldLimit, Rung, Vehicle, WheelValve,
};
use quantity::{Area, ColdPressure, GaugePressure, Length, Mass, Speed, Time};

use super::channel::channels;
use super::load_state::load_states;
use super::powertrain::{controller, powertrain, supply};
use super::route::surface;
use super::{Catalog, Loaded, index_of, unknown_name};
use crate::document::Document;
use crate::file::{
    AxleGroupFile, CombinationFile, FitmentWord, RungFile, VehicleFile, VehicleKindWord,
    WheelValveWord,
};
use crate::problem::{Problem, ProblemKind, Reference};
use crate::register::{Unit, tires_of};

/// What the combination's file calls an axle group.
#[derive(Debug, Clone)]
pub(crate) struct Origin {
    /// `vehicle.group`.
    pub label: String,
    /// Single or dual.
    pub fitment: FitmentWord,
    /// Axles.
    pub axles: u32,
    /// Whether it can be lifted.
    pub liftable: bool,
}

/// A combination with where its parts were written.
#[derive(Debug, Clone)]
pub(crate) struct Assembly {
    /// The combination.
    pub combination: Combination,
    /// One for each axle group.
    pub origins: Vec<Origin>,
    /// Types of the vehicles, by their files.
    pub types: Vec<String>,
    /// The vehicles as the file names them: types or fleet numbers.
    pub members: Vec<String>,
    /// The truck's file.
    pub truck: Document,
    /// The combination's own file.
    pub document: Document,
}

/// Joins the vehicles of a combination; `None` if anything in them or in it is unusable.
pub(crate) fn assemble(
    name: &str,
    file: &Loaded<CombinationFile>,
    vehicles: &Catalog<Loaded<VehicleFile>>,
    tires: &Catalog<Arc<Tire>>,
    units: &[Unit],
    problems: &mut Vec<Problem>,
) -> Option<Assembly> {
    let found: Vec<Option<Member<'_>>> = (0..file.data.vehicles.len())
        .map(|index| member(file, index, vehicles, units, problems))
        .collect();
    let fleet = found.into_iter().collect::<Option<Vec<_>>>()?;
    let members: Vec<&Loaded<VehicleFile>> = fleet.iter().map(|member| member.file).collect();
    let names = numbered(&file.data.vehicles);
    let truck = only_truck(file, &members, problems);
    let origins = origins(&names, &members);
    let channels = channels(&members, problems);
    let load_states = load_states(file, &origins, problems);

    let truck = truck?;
    let (engine, air, control) =
        (truck.data.engine.as_ref()?, truck.data.air.as_ref()?, truck.data.controller.as_ref()?);
    let drag_area = file.data.drag_area_m2.or(truck.data.drag_area_m2)?;
    let channels = channels?;
    let channel_names: Vec<&str> = channels.iter().map(|channel| channel.name.as_str()).collect();
    let groups: Vec<Option<AxleGroup>> = fleet
        .iter()
        .enumerate()
        .flat_map(|(index, member)| {
            member.file.data.axle_groups.iter().map(move |group| (index, member, group))
        })
        .map(|(vehicle, member, group)| {
            let fitted = member.tires_of(group, units);
            axle_group(vehicle, group, &channel_names, &fitted, tires)
        })
        .collect();
    let rungs: Vec<Rung> = file.data.rungs.iter().map(rung).collect();
    let load_states = load_states?;
    let hand_set = hand_set(file, &channel_names, problems)?;
    let combination = Combination {
        name: name.to_owned(),
        vehicles: names
            .into_iter()
            .zip(&members)
            .map(|(name, vehicle)| Vehicle {
                name,
                is_truck: vehicle.data.kind == VehicleKindWord::Truck,
            })
            .collect(),
        groups: groups.into_iter().collect::<Option<Vec<_>>>()?,
        channels,
        controller: controller(control),
        supply: supply(air),
        powertrain: powertrain(engine),
        drag_area: Area::from_m2(drag_area),
        load_states,
        rungs,
        hand_set,
    };
    Some(Assembly {
        combination,
        origins,
        types: fleet.iter().map(|member| member.vehicle.to_owned()).collect(),
        members: file.data.vehicles.clone(),
        truck: truck.document.clone(),
        document: file.document.clone(),
    })
}

/// A vehicle of the combination: any of a type, or one unit.
struct Member<'a> {
    vehicle: &'a str,
    file: &'a Loaded<VehicleFile>,
    unit: Option<&'a Unit>,
}

impl Member<'_> {
    /// Names of the tire models at a group, the group's own first.
    fn tires_of(&self, group: &AxleGroupFile, units: &[Unit]) -> Vec<String> {
        let of_type: Vec<&Unit> =
            units.iter().filter(|unit| unit.vehicle == self.vehicle).collect();
        tires_of(group, self.unit, &of_type)
    }
}

/// The type or unit that an entry of the combination names.
fn member<'a>(
    file: &'a Loaded<CombinationFile>,
    index: usize,
    vehicles: &'a Catalog<Loaded<VehicleFile>>,
    units: &'a [Unit],
    problems: &mut Vec<Problem>,
) -> Option<Member<'a>> {
    let wanted = file.data.vehicles[index].as_str();
    let unit = units.iter().find(|unit| unit.number == wanted);
    let vehicle = unit.map_or(wanted, |unit| unit.vehicle.as_str());
    let Some(found) = vehicles.get(vehicle) else {
        let numbers = units.iter().map(|unit| &unit.number);
        let known: Vec<&String> = vehicles.keys().chain(numbers).collect();
        let kind = unknown_name(wanted, Reference::Member, &known);
        problems.push(file.problem(&format!("/vehicles/{index}"), kind));
        return None;
    };
    Some(Member { vehicle, file: found.as_ref()?, unit })
}

/// Names of the vehicles, the second of a kind with a 2 and so on.
fn numbered(names: &[String]) -> Vec<String> {
    names
        .iter()
        .enumerate()
        .map(|(index, name)| {
            let before = names[..index].iter().filter(|other| *other == name).count();
            if before == 0 { name.clone() } else { format!("{name} {}", before + 1) }
        })
        .collect()
}

fn only_truck<'a>(
    file: &Loaded<CombinationFile>,
    members: &[&'a Loaded<VehicleFile>],
    problems: &mut Vec<Problem>,
) -> Option<&'a Loaded<VehicleFile>> {
    let is_truck = |member: &&&Loaded<VehicleFile>| member.data.kind == VehicleKindWord::Truck;
    let count = members.iter().filter(is_truck).count();
    if count != 1 {
        problems.push(file.problem("/vehicles", ProblemKind::Trucks { count }));
        return None;
    }
    members.iter().find(is_truck).copied()
}

fn origins(names: &[String], members: &[&Loaded<VehicleFile>]) -> Vec<Origin> {
    let mut origins = Vec::new();
    for (name, vehicle) in names.iter().zip(members) {
        for group in &vehicle.data.axle_groups {
            let label = format!("{name}.{}", group.name);
            let (fitment, axles) = (group.fitment, group.axles);
            origins.push(Origin { label, fitment, axles, liftable: group.liftable });
        }
    }
    origins
}

/// A group; its faults were reported with its vehicle, so here they only make it unusable.
fn axle_group(
    vehicle: usize,
    file: &AxleGroupFile,
    channels: &[&str],
    fitted: &[String],
    tires: &Catalog<Arc<Tire>>,
) -> Option<AxleGroup> {
    let fitted = fitted.iter().map(|name| Some(Arc::clone(tires.get(name)?.as_ref()?)));
    let mut fitted = fitted.collect::<Option<Vec<_>>>()?.into_iter();
    let channel = match &file.channel {
        Some(name) => Some(channels.iter().position(|channel| channel == name)?),
        None => None,
    };
    let wheel_valve = match (channel, file.wheel_valve) {
        (Some(_), Some(WheelValveWord::ByHand)) => Some(WheelValve::ByHand),
        (Some(_), Some(WheelValveWord::SelfClosing)) => Some(WheelValve::SelfClosing {
            closes_below: GaugePressure::from_kpa(file.wheel_valve_closes_below_kpa?),
        }),
        (Some(_), None) => return None,
        (None, _) => None,
    };
    if channel.is_none() && file.fixed_pressure_kpa.is_none() {
        return None;
    }
    let dual = match (file.fitment, &file.dual) {
        (FitmentWord::Dual, Some(dual)) => Some(DualPair {
            spacing: Length::from_mm(dual.spacing_mm),
            diameter_difference: Length::from_mm(dual.diameter_difference_mm),
            least_gap: Length::from_mm(dual.least_gap_mm),
        }),
        (FitmentWord::Dual, None) => return None,
        (FitmentWord::Single, _) => None,
    };
    Some(AxleGroup {
        name: file.name.clone(),
        vehicle,
        axles: file.axles,
        fitment: match file.fitment {
            FitmentWord::Single => Fitment::Single,
            FitmentWord::Dual => Fitment::Dual,
        },
        tire: fitted.next()?,
        also_fitted: fitted.collect(),
        dual,
        driven: file.driven,
        steered: file.steered,
        liftable: file.liftable,
        channel,
        fixed_pressure: file.fixed_pressure_kpa.map(ColdPressure::from_kpa),
        axle_rating: Mass::from_kg(file.axle_rating_kg),
        wheel_valve,
        wheel_ends_shut: file.wheel_ends_shut,
        track: Length::from_mm(file.track_mm),
        scrub_minimum: file.scrub_minimum_kpa.map(ColdPressure::from_kpa),
    })
}

fn rung(file: &RungFile) -> Rung {
    Rung {
        name: file.name.clone(),
        cap: Speed::from_kmh(file.speed_cap_kmh),
        hold: file.hold.map(|hold| HoldLimit {
            time: Time::from_min(hold.time_min),
            distance: Length::from_km(hold.distance_km),
        }),
        surfaces: file.surfaces.iter().copied().map(surface).collect(),
    }
}

fn hand_set(
    file: &Loaded<CombinationFile>,
    channels: &[&str],
    problems: &mut Vec<Problem>,
) -> Option<Vec<HandSetCell>> {
    let states: Vec<&str> = file.data.load_states.iter().map(|one| one.name.as_str()).collect();
    let rungs: Vec<&str> = file.data.rungs.iter().map(|one| one.name.as_str()).collect();
    let cells: Vec<Option<HandSetCell>> = file
        .data
        .hand_set
        .iter()
        .enumerate()
        .map(|(index, cell)| {
            let mut find = |names: &[&str], name: &str, reference, key: &str| {
                let pointer = format!("/hand_set/{index}/{key}");
                index_of(names, name, reference, &file.document, &pointer, problems)
            };
            let channel = find(channels, &cell.channel, Reference::Channel, "channel");
            let load_state = find(&states, &cell.load_state, Reference::LoadState, "load_state");
            let rung = find(&rungs, &cell.rung, Reference::Rung, "rung");
            Some(HandSetCell {
                channel: channel?,
                load_state: load_state?,
                rung: rung?,
                pressure: ColdPressure::from_kpa(cell.pressure_kpa),
            })
        })
        .collect();
    cells.into_iter().collect()
}
