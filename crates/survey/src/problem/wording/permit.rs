//! Sentences about permits.

use super::number::{mass, speed, way};
use super::place;
use crate::problem::PermitFault;

pub(super) fn message(fault: &PermitFault) -> String {
    match fault {
        PermitFault::Expired { on } => format!("this permit counted until {on}"),
        PermitFault::NotYet { from } => format!("this permit counts only from {from}"),
        PermitFault::Overlaps { file, line, from, to } => {
            format!("{} to {} is covered by {} too", way(*from), way(*to), place(file, *line))
        }
        PermitFault::PressuresCross => "the lowest pressure is above the highest".into(),
        PermitFault::SpeedAbove { leg, limit, allowed } => format!(
            "the permit allows {}, the leg '{leg}' has a limit of {}; the permit's is kept",
            speed(*allowed),
            speed(*limit)
        ),
        PermitFault::GrossAbove { permit, load_state, gross, allowed } => format!(
            "'{load_state}' weighs {}; the permit {permit} allows {} on this route",
            mass(*gross),
            mass(*allowed)
        ),
    }
}

pub(super) fn hint(fault: &PermitFault) -> &'static str {
    match fault {
        PermitFault::Expired { .. } => {
            "without it the road is public like any other: ask the authority to renew it"
        }
        PermitFault::NotYet { .. } => "until then the road is public like any other",
        PermitFault::Overlaps { .. } => "let each stretch be covered by one permit in force",
        PermitFault::PressuresCross => "exchange them, or check the unit",
        PermitFault::SpeedAbove { .. } => "right if drivers are told; otherwise check both speeds",
        PermitFault::GrossAbove { .. } => {
            "load less, take another route, or ask the authority for more"
        }
    }
}
