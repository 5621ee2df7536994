//! From written entries to units, with what is wrong with them.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use model::date::Date;
use model::tire::{AirRetention, Construction, Fitment, Tire};
use quantity::ColdPressure;

use super::entry::{Entry, FittedEntry, Register, Written};
use super::{FittedTire, FittedValue, Measured, Position, Sensor, Unit, position};
use crate::convert::{Catalog, Loaded, day, unknown_name};
use crate::file::{FitmentWord, FittedWord, VehicleFile, VehicleKindWord};
use crate::problem::{DateFault, Problem, ProblemKind, Reference, UnitFault};

/// What a register is held against.
#[derive(Debug, Clone, Copy)]
struct Survey<'a> {
    vehicles: &'a Catalog<Loaded<VehicleFile>>,
    tires: &'a Catalog<Arc<Tire>>,
    today: Date,
}

/// The units of a register; an entry with an unusable number or type gives none.
pub(crate) fn units(
    register: &Register,
    vehicles: &Catalog<Loaded<VehicleFile>>,
    tires: &Catalog<Arc<Tire>>,
    today: Date,
    problems: &mut Vec<Problem>,
) -> Vec<Unit> {
    let survey = Survey { vehicles, tires, today };
    let mut seen: BTreeMap<&str, Option<usize>> = BTreeMap::new();
    let mut found = Vec::new();
    for entry in &register.entries {
        let number = entry.number.text.trim();
        let fault = if number.is_empty() {
            Some(UnitFault::Empty)
        } else if let Some(line) = seen.get(number) {
            Some(UnitFault::NumberTwice { line: *line })
        } else if vehicles.contains_key(number) {
            Some(UnitFault::NumberIsType)
        } else {
            None
        };
        if let Some(fault) = fault {
            problems.push(register.problem(&entry.number, ProblemKind::Unit(fault)));
            continue;
        }
        seen.insert(number, register.line(&entry.number));
        found.extend(Judge { register, survey }.unit(entry, problems));
    }
    found
}

/// Tells of units that no combination uses, by number or by type.
pub(crate) fn in_use(
    register: &Register,
    units: &[Unit],
    used: &BTreeSet<&str>,
    problems: &mut Vec<Problem>,
) {
    for unit in units {
        if used.contains(unit.number.as_str()) || used.contains(unit.vehicle.as_str()) {
            continue;
        }
        let entry = register.entries.iter().find(|entry| entry.number.text.trim() == unit.number);
        if let Some(entry) = entry {
            let fault = UnitFault::InNoCombination { vehicle: unit.vehicle.clone() };
            problems.push(register.problem(&entry.number, ProblemKind::Unit(fault)));
        }
    }
}

struct Judge<'a> {
    register: &'a Register,
    survey: Survey<'a>,
}

impl Judge<'_> {
    fn unit(&self, entry: &Entry, problems: &mut Vec<Problem>) -> Option<Unit> {
        let vehicle = entry.vehicle.text.trim();
        if vehicle.is_empty() {
            self.tell(&entry.vehicle, UnitFault::Empty, problems);
            return None;
        }
        let Some(found) = self.survey.vehicles.get(vehicle) else {
            let known: Vec<&String> = self.survey.vehicles.keys().collect();
            let kind = unknown_name(vehicle, Reference::Vehicle, &known);
            problems.push(self.register.problem(&entry.vehicle, kind));
            return None;
        };
        let file = found.as_ref()?;
        let pool = entry.pool.as_ref().is_some_and(|pool| self.yes(pool, problems));
        if let Some(written) = entry.pool.as_ref().filter(|_| pool)
            && file.data.kind == VehicleKindWord::Truck
        {
            self.tell(written, UnitFault::TruckInPool, problems);
        }
        let mut addresses = Vec::new();
        for written in &entry.addresses {
            match address(&written.text) {
                Some(address) => addresses.push(address),
                None => self.tell(written, UnitFault::NotAnAddress, problems),
            }
        }
        let mut tires = Vec::new();
        for (place, tire) in &entry.tires {
            tires.extend(self.tire(place, tire, &file.data, problems));
        }
        let mut sensors = Vec::new();
        for (place, verified) in &entry.sensors {
            let position = self.position(place, &file.data, problems);
            let verified = verified.as_ref().and_then(|day| self.past_day(day, problems));
            sensors.extend(position.map(|position| Sensor { position, verified }));
        }
        let fitted = entry.fitted.iter();
        Some(Unit {
            number: entry.number.text.trim().to_owned(),
            vehicle: vehicle.to_owned(),
            pool,
            source_addresses: addresses,
            tires,
            sensors,
            fitted: fitted.filter_map(|one| self.fitted(one, &file.data, problems)).collect(),
        })
    }

    fn tell(&self, written: &Written, fault: UnitFault, problems: &mut Vec<Problem>) {
        problems.push(self.register.problem(written, ProblemKind::Unit(fault)));
    }

    fn yes(&self, written: &Written, problems: &mut Vec<Problem>) -> bool {
        match written.text.trim().to_lowercase().as_str() {
            "yes" | "true" | "x" | "1" => true,
            "no" | "false" | "0" => false,
            _ => {
                self.tell(written, UnitFault::NotYesOrNo, problems);
                false
            }
        }
    }

    fn position(
        &self,
        written: &Written,
        vehicle: &VehicleFile,
        problems: &mut Vec<Problem>,
    ) -> Option<Position> {
        position::read(&written.text, &vehicle.axle_groups)
            .map_err(|reason| {
                let first = |group| position::positions(group).into_iter().next();
                let groups = vehicle.axle_groups.iter();
                let known = groups
                    .flat_map(|group| {
                        [Some(group.name.clone()), first(group).map(|p| p.to_string())]
                    })
                    .flatten()
                    .collect();
                let position = written.text.clone();
                self.tell(written, UnitFault::BadPosition { position, reason, known }, problems);
            })
            .ok()
    }

    /// A tire model at a position, which it must suit.
    fn tire(
        &self,
        place: &Written,
        written: &Written,
        vehicle: &VehicleFile,
        problems: &mut Vec<Problem>,
    ) -> Option<FittedTire> {
        let position = self.position(place, vehicle, problems);
        let name = written.text.trim();
        let Some(tire) = self.survey.tires.get(name) else {
            let known: Vec<&String> = self.survey.tires.keys().collect();
            let kind = unknown_name(name, Reference::Tire, &known);
            problems.push(self.register.problem(written, kind));
            return None;
        };
        let position = position?;
        let group = vehicle.axle_groups.iter().find(|group| group.name == position.group)?;
        if let Some(tire) = tire {
            let tire_name = || name.to_owned();
            let mut tell = |kind| problems.push(self.register.problem(written, kind));
            if group.fitment == FitmentWord::Dual && tire.rated(Fitment::Dual).is_none() {
                tell(ProblemKind::NoDualRating { tire: tire_name() });
            }
            let limits = [
                ("molded_maximum_kpa", tire.molded_maximum),
                ("rim.maximum_pressure_kpa", tire.rim.maximum_pressure),
            ];
            let pressure = group.fixed_pressure_kpa.map(ColdPressure::from_kpa);
            for (limit, maximum) in limits {
                if let Some(pressure) = pressure.filter(|pressure| *pressure > maximum) {
                    tell(ProblemKind::OverMaximum { pressure, maximum, limit });
                }
            }
            if group.channel.is_some() && tire.air_retention == AirRetention::TubeType {
                tell(ProblemKind::TubeTypeOnChannel { tire: tire_name() });
            }
            if group.channel.is_some() && tire.construction == Construction::Bias {
                tell(ProblemKind::BiasOnChannel { tire: tire_name() });
            }
        }
        Some(FittedTire { position, tire: name.to_owned() })
    }

    /// A day that is not in the future.
    fn past_day(&self, written: &Written, problems: &mut Vec<Problem>) -> Option<Date> {
        let today = self.survey.today;
        let found = day(&written.text).and_then(|day| {
            if day > today { Err(DateFault::InFuture { day, today }) } else { Ok(day) }
        });
        found.map_err(|fault| problems.push(self.register.problem(written, fault.into()))).ok()
    }

    fn fitted(
        &self,
        entry: &FittedEntry,
        vehicle: &VehicleFile,
        problems: &mut Vec<Problem>,
    ) -> Option<FittedValue> {
        const SHARE_PCT: std::ops::RangeInclusive<f64> = 10.0..=300.0;
        let text = entry.share_pct.text.trim().trim_end_matches('%').trim().replace(',', ".");
        let share = text.parse::<f64>().ok().filter(|share| SHARE_PCT.contains(share));
        if share.is_none() {
            self.tell(&entry.share_pct, UnitFault::NotAShare, problems);
        }
        if entry.date.is_none() {
            self.tell(&entry.share_pct, UnitFault::FittedWithoutDay, problems);
        }
        let date = entry.date.as_ref().and_then(|written| self.past_day(written, problems));
        let measured = match (entry.what, &entry.channel) {
            (FittedWord::Delivery, None) => Measured::Delivery,
            (FittedWord::Delivery, Some(written)) => {
                self.tell(written, UnitFault::FittedChannel { needed: false }, problems);
                return None;
            }
            (_, None) => {
                self.tell(&entry.share_pct, UnitFault::FittedChannel { needed: true }, problems);
                return None;
            }
            (what, Some(written)) => {
                let channel = self.channel(written, vehicle, problems)?;
                match what {
                    FittedWord::TireVolume => Measured::TireVolume(channel),
                    _ => Measured::Conductance(channel),
                }
            }
        };
        Some(FittedValue { measured, ratio: share? / 100.0, date: date? })
    }

    fn channel(
        &self,
        written: &Written,
        vehicle: &VehicleFile,
        problems: &mut Vec<Problem>,
    ) -> Option<String> {
        let channel = written.text.trim().to_owned();
        if vehicle.channels.iter().any(|known| known.name == channel) {
            return Some(channel);
        }
        let known = vehicle.channels.iter().map(|known| known.name.clone()).collect();
        self.tell(written, UnitFault::NoSuchChannel { channel, known }, problems);
        None
    }
}

/// A source address, decimal or with 0x.
fn address(text: &str) -> Option<u8> {
    const HIGHEST: u8 = 253;
    let text = text.trim();
    let number = match text.strip_prefix("0x").or_else(|| text.strip_prefix("0X")) {
        Some(digits) => u8::from_str_radix(digits, 16),
        None => text.parse(),
    };
    number.ok().filter(|address| *address <= HIGHEST)
}
