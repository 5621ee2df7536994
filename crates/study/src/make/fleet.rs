//! Which units of the register drive a made log.

use haul::TrueTruck;
use haul::chance::normal;
use model::haul_cycle::HaulCycle;
use model::vehicle::Combination;
use survey::{Measured, Survey, Unit};

/// Weighing on board errs by this, one standard deviation: common practice, no source.
const WEIGHS_OFF: f64 = 0.02;

/// Why units cannot drive.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum FleetError {
    /// No such truck on this haul.
    #[error("no truck '{unit}' drives haul '{haul}'; trucks that do: {}", known.join(", "))]
    NoSuchUnit {
        /// Fleet number asked for.
        unit: String,
        /// The haul.
        haul: String,
        /// Trucks of the register that may.
        known: Vec<String>,
    },
    /// The same unit twice.
    #[error("unit '{0}' is asked for twice")]
    Twice(String),
}

/// A truck with what it pulls.
#[derive(Debug, Clone)]
pub(super) struct Hauling {
    /// Fleet number of the truck; the name of its type where the register has none.
    pub unit: String,
    /// Fleet numbers of the trailers.
    pub trailers: Vec<String>,
    /// First address of the truck in the register.
    pub controller_address: Option<u8>,
    /// Measured delivery over the type's.
    pub delivery: Option<f64>,
    /// The unit of each vehicle of the combination, where the register has it.
    members: Vec<Option<Unit>>,
}

/// The trucks asked for with their trailers, in the order asked for.
pub(super) fn hauling(
    survey: Option<&Survey>,
    haul: &HaulCycle,
    wanted: &[String],
) -> Result<Vec<Hauling>, FleetError> {
    let fleet: &[Unit] = survey.map_or(&[], |survey| &survey.fleet);
    let members = survey
        .and_then(|survey| survey.bases.get(&haul.name))
        .map_or_else(Vec::new, |basis| basis.members.clone());
    let fits = |unit: &Unit, place: usize| {
        members.get(place).is_some_and(|name| *name == unit.number || *name == unit.vehicle)
    };
    let truck_place = haul.combination.vehicles.iter().position(|vehicle| vehicle.is_truck);
    let trucks: Vec<&Unit> =
        fleet.iter().filter(|unit| truck_place.is_some_and(|place| fits(unit, place))).collect();
    let known = || trucks.iter().map(|unit| unit.number.clone()).collect();
    let mut chosen: Vec<Option<&Unit>> = Vec::new();
    for (index, name) in wanted.iter().enumerate() {
        if wanted[..index].contains(name) {
            return Err(FleetError::Twice(name.clone()));
        }
        let found = trucks.iter().find(|unit| unit.number == *name);
        let no_such = || FleetError::NoSuchUnit {
            unit: name.clone(),
            haul: haul.name.clone(),
            known: known(),
        };
        chosen.push(Some(*found.ok_or_else(no_such)?));
    }
    if chosen.is_empty() {
        chosen.push(trucks.first().copied());
    }
    let with = |(index, truck): (usize, Option<&Unit>)| {
        let place_of = |place: usize| -> Option<Unit> {
            if Some(place) == truck_place {
                return truck.cloned();
            }
            let pool: Vec<&Unit> = fleet.iter().filter(|unit| fits(unit, place)).collect();
            (!pool.is_empty()).then(|| pool[index % pool.len()].clone())
        };
        let places = 0..haul.combination.vehicles.len();
        let members: Vec<Option<Unit>> = places.clone().map(place_of).collect();
        let unit = truck.map_or_else(
            || truck_place.map_or(String::new(), |at| haul.combination.vehicles[at].name.clone()),
            |truck| truck.number.clone(),
        );
        let trailers = places
            .filter(|place| Some(*place) != truck_place)
            .filter_map(|place| members[place].as_ref().map(|unit| unit.number.clone()))
            .collect();
        let delivery = truck.and_then(|truck| {
            let measured = truck.fitted.iter().filter(|one| one.measured == Measured::Delivery);
            measured.max_by_key(|one| one.date).map(|one| one.ratio)
        });
        let controller_address = truck.and_then(|truck| truck.source_addresses.first().copied());
        Hauling { unit, trailers, controller_address, delivery, members }
    };
    Ok(chosen.into_iter().enumerate().map(with).collect())
}

impl Hauling {
    /// Which tires have a sensor: those the register says, or all where it knows none of the units.
    pub fn sensed(&self, combination: &Combination, truck: &TrueTruck) -> Vec<bool> {
        let nobody = self.members.iter().all(Option::is_none);
        let has = |tire: &haul::TireOnTruck| {
            if nobody {
                return true;
            }
            let group = &combination.groups[tire.group];
            let vehicle = &combination.vehicles[group.vehicle].name;
            let Some(unit) = &self.members[group.vehicle] else { return false };
            let prefix = format!("{vehicle}.");
            let own = tire.full_name.strip_prefix(&prefix).unwrap_or(&tire.full_name);
            unit.sensors.iter().any(|sensor| match sensor.position.wheel {
                None => sensor.position.group == group.name,
                Some(_) => sensor.position.to_string() == own,
            })
        };
        truck.tires().iter().map(has).collect()
    }
}

/// Mass on each axle, front to back, in each load state, as weighed on board, kg.
pub(super) fn axle_masses(haul: &HaulCycle, seed: u64) -> Vec<Vec<f64>> {
    let combination = &haul.combination;
    let of_state = |state: &model::vehicle::LoadState| {
        let mut rows = Vec::new();
        for (index, group) in combination.groups.iter().enumerate() {
            let down = state.axles_down[index];
            for axle in 0..group.axles {
                let off = 1.0 + WEIGHS_OFF * normal(seed, rows.len(), "weighing: error");
                let share = if axle < down { 1.0 / f64::from(down) } else { 0.0 };
                rows.push(state.groups[index].mass.as_kg() * share * off);
            }
        }
        rows
    };
    combination.load_states.iter().map(of_state).collect()
}
