//! Sentences about the register of units.

use crate::problem::UnitFault;

pub(super) fn message(fault: &UnitFault, key: &str, value: &str) -> String {
    match fault {
        UnitFault::TwoRegisters { other } => {
            format!("there is another register of units, {other}")
        }
        UnitFault::NoColumn { wanted, columns } => {
            format!("there is no column '{wanted}'; the columns are: {}", columns.join(", "))
        }
        UnitFault::UnknownColumn { .. } => format!("nothing reads the column '{value}'"),
        UnitFault::NoSheet { sheets } => {
            format!("no sheet is called 'units'; the sheets are: {}", sheets.join(", "))
        }
        UnitFault::Empty => format!("{key} is empty"),
        UnitFault::NumberTwice { line } => match line {
            Some(line) => format!("the fleet number {value} stands already in line {line}"),
            None => format!("the fleet number {value} is used twice"),
        },
        UnitFault::NumberIsType => {
            format!("the fleet number {value} is also the name of a file in vehicles/")
        }
        UnitFault::InNoCombination { vehicle } => {
            format!("unit {value}: no combination has it or its type '{vehicle}'")
        }
        UnitFault::BadPosition { position, reason, .. } => {
            format!("'{position}' is no position of this type: {reason}")
        }
        UnitFault::NotAnAddress => format!("{key} = {value} is not a source address"),
        UnitFault::NotYesOrNo => format!("{key} = {value} is neither yes nor no"),
        UnitFault::TruckInPool => "a truck cannot be in the trailer pool".into(),
        UnitFault::NotAShare => format!("{key} = {value} is not a share from 10 to 300 %"),
        UnitFault::FittedWithoutDay => "measured values without the day of measuring".into(),
        UnitFault::FittedChannel { needed: true } => {
            "conductance and tire volume are those of a channel, and none is named".into()
        }
        UnitFault::FittedChannel { needed: false } => {
            "delivery is the compressor's and belongs to no channel".into()
        }
        UnitFault::NoSuchChannel { channel, .. } => {
            format!("the type has no air channel '{channel}'")
        }
    }
}

pub(super) fn hint(fault: &UnitFault) -> Option<String> {
    let hint = match fault {
        UnitFault::TwoRegisters { .. } => "keep one of units.toml, units.csv and units.xlsx".into(),
        UnitFault::NoColumn { .. } => "name the columns in the first row".into(),
        UnitFault::UnknownColumn { nearest: Some(nearest), .. } => {
            format!("did you mean '{nearest}'?")
        }
        UnitFault::UnknownColumn { known, .. } => {
            format!("columns that are read: {}", known.join(", "))
        }
        UnitFault::NoSheet { .. } => "call the sheet with the register 'units'".into(),
        UnitFault::Empty | UnitFault::NotAShare => return None,
        UnitFault::NumberTwice { .. } => "give each unit its own fleet number".into(),
        UnitFault::NumberIsType => "rename the type's file; combinations may name either".into(),
        UnitFault::InNoCombination { .. } => {
            "right if it is a spare; otherwise add a combination".into()
        }
        UnitFault::BadPosition { known, .. } => format!("such as: {}", known.join(", ")),
        UnitFault::NotAnAddress => "write 0 to 253, or 0x00 to 0xFD".into(),
        UnitFault::NotYesOrNo => "write yes or no".into(),
        UnitFault::TruckInPool => "pool is for trailers that any truck may pull".into(),
        UnitFault::FittedWithoutDay => "add the day, in the column 'fitted date' of a sheet".into(),
        UnitFault::FittedChannel { needed: true } => "add the channel".into(),
        UnitFault::FittedChannel { needed: false } => "take the channel out".into(),
        UnitFault::NoSuchChannel { known, .. } => format!("there are: {}", known.join(", ")),
    };
    Some(hint)
}
