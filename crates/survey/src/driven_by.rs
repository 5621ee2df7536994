//! A haul as certain units drive it: on their tires, with what was measured on their air.

use std::collections::BTreeMap;
use std::sync::Arc;

use model::haul_cycle::HaulCycle;
use model::tire::Tire;
use model::vehicle::MeasuredAir;

use crate::load::{HaulBasis, Survey};
use crate::register::{FittedValue, Measured, Places, Unit};

impl Survey {
    /// The survey as these units drive it: only hauls in which each of them has a place, on the
    /// tires they have, with the slowest air measured on any of them.
    ///
    /// A vehicle of which no unit is named stays as its type, with the tires of all its units.
    #[must_use]
    pub fn driven_by(&self, units: &[&Unit]) -> Self {
        let mut survey = self.clone();
        survey.driven_by = units.iter().map(|unit| unit.number.clone()).collect();
        let hauls = self.hauls.iter();
        survey.hauls = hauls.filter_map(|haul| self.haul_driven_by(&haul.name, units)).collect();
        survey
    }

    /// One haul as these units drive it; `None` if it is not sound or one of them has no place in it.
    pub fn haul_driven_by(&self, haul: &str, units: &[&Unit]) -> Option<HaulCycle> {
        let found = self.hauls.iter().find(|known| known.name == haul)?;
        let basis = self.bases.get(haul)?;
        let runs_all = units.iter().all(|unit| basis.has_place_for(unit));
        runs_all.then(|| driven_by(found, basis, &self.fleet, units, &self.tires))
    }

    /// What was measured on units with a place in a haul.
    pub fn measured_in(&self, haul: &str) -> Vec<(&Unit, &FittedValue)> {
        let Some(basis) = self.bases.get(haul) else { return Vec::new() };
        let in_place = self.fleet.iter().filter(|unit| basis.has_place_for(unit));
        in_place.flat_map(|unit| unit.fitted.iter().map(move |one| (unit, one))).collect()
    }
}

/// The haul with the named units in their places; a place the combination itself gives to a unit
/// is that unit's whoever is named.
pub(crate) fn driven_by(
    haul: &HaulCycle,
    basis: &HaulBasis,
    fleet: &[Unit],
    units: &[&Unit],
    tires: &BTreeMap<String, Arc<Tire>>,
) -> HaulCycle {
    let mut driven = haul.clone();
    let mut worst = Worst::default();
    for (vehicle, member) in basis.members.iter().enumerate() {
        let own = fleet.iter().find(|unit| unit.number == *member);
        if let Some(unit) = own {
            worst.places.push(vec![unit]);
            continue;
        }
        let here: Vec<&Unit> =
            units.iter().copied().filter(|unit| unit.vehicle == *member).collect();
        if here.is_empty() {
            continue;
        }
        fit(&mut driven, vehicle, &here, tires);
        worst.places.push(here);
    }
    worst.apply(&mut driven);
    driven
}

/// Leaves on a vehicle the tires that these units have.
fn fit(haul: &mut HaulCycle, vehicle: usize, units: &[&Unit], tires: &BTreeMap<String, Arc<Tire>>) {
    let groups = haul.combination.groups.iter_mut().filter(|group| group.vehicle == vehicle);
    for group in groups {
        let (name, tire) = (group.name.clone(), group.tire.name.clone());
        let places = Places { name: &name, tire: &tire, count: group.tires() as usize };
        let mut fitted: Vec<Arc<Tire>> = Vec::new();
        for model in units.iter().flat_map(|unit| unit.tires_of(places)) {
            // A type's tires include those of its units, and all of them are sound.
            let Some(model) = tires.get(model) else { continue };
            if !fitted.iter().any(|known| known.name == model.name) {
                fitted.push(Arc::clone(model));
            }
        }
        let mut fitted = fitted.into_iter();
        if let Some(first) = fitted.next() {
            group.tire = first;
            group.also_fitted = fitted.collect();
        }
    }
}

/// The units in each place of the combination, and the slowest of what was measured on them.
#[derive(Debug, Default)]
struct Worst<'a> {
    places: Vec<Vec<&'a Unit>>,
}

impl Worst<'_> {
    /// The worst ratio of a thing: in a place, a unit on which it was not measured is as its type;
    /// a place without any measurement says nothing.
    fn ratio(&self, measured: &Measured, worse: fn(f64, f64) -> f64) -> f64 {
        let of_unit = |unit: &&Unit| {
            let values = unit.fitted.iter().filter(|value| value.measured == *measured);
            values.max_by_key(|value| value.date).map(|value| value.ratio)
        };
        let of_place = |units: &Vec<&Unit>| {
            let ratios: Vec<Option<f64>> = units.iter().map(of_unit).collect();
            ratios.iter().any(Option::is_some).then(|| ratios.into_iter().map(|r| r.unwrap_or(1.0)))
        };
        let ratios = self.places.iter().filter_map(of_place).flatten();
        ratios.reduce(worse).unwrap_or(1.0)
    }

    fn apply(&self, haul: &mut HaulCycle) {
        let combination = &mut haul.combination;
        combination.supply.measured_delivery = self.ratio(&Measured::Delivery, f64::min);
        for channel in &mut combination.channels {
            let conductance = Measured::Conductance(channel.name.clone());
            let tire_volume = Measured::TireVolume(channel.name.clone());
            channel.measured = MeasuredAir {
                conductance: self.ratio(&conductance, f64::min),
                tire_volume: self.ratio(&tire_volume, f64::max),
            };
        }
    }
}
