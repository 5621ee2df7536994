//! The register of units: trucks and trailers with their fleet numbers, tires, sensors and
//! measured values.

mod entry;
mod judge;
mod position;
mod sheet;

use model::date::Date;

pub(crate) use entry::Register;
pub(crate) use judge::{in_use, units};
pub use position::{Mate, Position, Side, Wheel};

use crate::file::AxleGroupFile;

/// A tire that a unit has where its type has another.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FittedTire {
    /// Where.
    pub position: Position,
    /// Tire model, by its name in the survey.
    pub tire: String,
}

/// A pressure sensor of a unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sensor {
    /// What it measures.
    pub position: Position,
    /// Day it was last held against a reference gauge; `None` means never.
    pub verified: Option<Date>,
}

/// What was measured on a unit.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Measured {
    /// Compressor delivery.
    Delivery,
    /// Conductance of lines, seals and valves of the air channel with this name.
    Conductance(String),
    /// Air volume of the tires of the air channel with this name.
    TireVolume(String),
}

/// A value measured on a unit.
#[derive(Debug, Clone, PartialEq)]
pub struct FittedValue {
    /// What was measured.
    pub measured: Measured,
    /// Measured value over the type's.
    pub ratio: f64,
    /// Day of the measurement.
    pub date: Date,
}

impl FittedValue {
    /// Whether a change of pressure takes longer than on the type.
    pub fn is_slower(&self) -> bool {
        match self.measured {
            Measured::Delivery | Measured::Conductance(_) => self.ratio < 1.0,
            Measured::TireVolume(_) => self.ratio > 1.0,
        }
    }
}

/// A truck or trailer with a fleet number.
#[derive(Debug, Clone, PartialEq)]
pub struct Unit {
    /// Fleet number.
    pub number: String,
    /// Its type: the name of a file in `vehicles/`.
    pub vehicle: String,
    /// Whether it is a trailer that any truck may pull.
    pub pool: bool,
    /// Source addresses of its devices on the vehicle's network.
    pub source_addresses: Vec<u8>,
    /// Tires where they differ from the type's.
    pub tires: Vec<FittedTire>,
    /// Pressure sensors.
    pub sensors: Vec<Sensor>,
    /// Measured values.
    pub fitted: Vec<FittedValue>,
}

impl Unit {
    /// Names of the tire models at a group's positions, each once, the most general first.
    pub(crate) fn tires_of<'a>(&'a self, group: Places<'a>) -> Vec<&'a str> {
        let here = || self.tires.iter().filter(|fitted| fitted.position.group == group.name);
        let whole = here().find(|fitted| fitted.position.wheel.is_none());
        let single = here().filter(|fitted| fitted.position.wheel.is_some()).count();
        let all = group.count;
        let common = whole.map_or(group.tire, |fitted| fitted.tire.as_str());
        let mut found: Vec<&str> = if single < all { vec![common] } else { Vec::new() };
        for fitted in here().filter(|fitted| fitted.position.wheel.is_some()) {
            if !found.contains(&fitted.tire.as_str()) {
                found.push(&fitted.tire);
            }
        }
        found
    }
}

/// An axle group as its type has it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Places<'a> {
    /// Its name.
    pub name: &'a str,
    /// The type's tire model.
    pub tire: &'a str,
    /// How many tires it has.
    pub count: usize,
}

impl<'a> Places<'a> {
    fn of(group: &'a AxleGroupFile) -> Self {
        let count = position::positions(group).len();
        Self { name: &group.name, tire: &group.tire, count }
    }
}

/// Names of the tire models at a group of one unit, or of a type with all its units: the first
/// is the group's own, the others are fitted too.
pub(crate) fn tires_of(
    group: &AxleGroupFile,
    unit: Option<&Unit>,
    of_type: &[&Unit],
) -> Vec<String> {
    let of_units = of_type.iter().flat_map(|unit| unit.tires_of(Places::of(group)));
    let of_type = std::iter::once(group.tire.as_str()).chain(of_units);
    let names: Vec<&str> =
        unit.map_or_else(|| of_type.collect(), |unit| unit.tires_of(Places::of(group)));
    let mut found: Vec<String> = Vec::new();
    for name in names {
        if !found.iter().any(|known| known == name) {
            found.push(name.to_owned());
        }
    }
    found
}
