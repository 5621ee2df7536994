//! Reasons as identifiers with their arguments.

use model::haul_cycle::HaulCycle;
use plan::now::Reason;

use super::{SaidView, Saying};
use crate::plan::{impossible, maximum_name, minimum_name};

pub(super) fn reason(haul: &HaulCycle, reason: &Reason) -> SaidView {
    let mut say = Saying::new(haul);
    let what = match reason {
        Reason::NotGauged { group } => {
            say.group(*group);
            "not-gauged"
        }
        Reason::KeptAsSurveyed { group, pressure } => {
            say.group(*group);
            say.number("kept_kpa", pressure.as_kpa());
            "kept-as-surveyed"
        }
        Reason::UnderServiceShare { group, cold, needed } => {
            say.group(*group);
            say.number("cold_kpa", cold.as_kpa());
            say.number("needed_kpa", needed.as_kpa());
            say.number("share_pct", cold.ratio_to(*needed) * 100.0);
            "under-service-share"
        }
        Reason::TooSoft { group, cold, needed, unapproved } => {
            say.group(*group);
            say.number("cold_kpa", cold.as_kpa());
            match (needed, unapproved) {
                (Some(needed), true) => {
                    say.number("needed_kpa", needed.as_kpa());
                    "too-soft-approved"
                }
                (Some(needed), false) => {
                    say.number("needed_kpa", needed.as_kpa());
                    "too-soft"
                }
                (None, _) => "nothing-approved",
            }
        }
        Reason::CannotBeReached { group, reading, closes_below } => {
            say.group(*group);
            say.number("reading_kpa", reading.as_kpa());
            say.number("closes_below_kpa", closes_below.as_kpa());
            "cannot-be-reached"
        }
        Reason::AboveHighest { group, cold, highest, by } => {
            say.group(*group);
            say.name("governed_by", maximum_name(*by));
            say.number("cold_kpa", cold.as_kpa());
            say.number("highest_kpa", highest.as_kpa());
            "above-highest"
        }
        Reason::MatesDiffer { group, difference } => {
            say.group(*group);
            say.number("difference_kpa", difference.as_kpa());
            "mates-differ"
        }
        Reason::Overloaded { group, load, highest } => {
            say.group(*group);
            say.number("load_kg", load.as_kg());
            say.number("highest_kg", highest.as_kg());
            "overloaded"
        }
        Reason::Impossible { group, why } => {
            say.group(*group);
            let (name, numbers) = impossible(why);
            say.name("why", &name);
            for (key, number) in numbers {
                say.number(key, number);
            }
            "impossible"
        }
        Reason::SetsTheSpeed { group, governed_by } => {
            say.group(*group);
            say.name("governed_by", minimum_name(*governed_by));
            "sets-the-speed"
        }
        Reason::LoadUnknown { heaviest } => {
            say.load_state(*heaviest);
            "load-unknown"
        }
        Reason::WarmthUnknown => "warmth-unknown",
        Reason::RanLastHour => "ran-last-hour",
        Reason::TrailerUnknown => "trailer-unknown",
        Reason::TrailerLeftLow => "trailer-left-low",
        Reason::TrailerLeftShut => "trailer-left-shut",
        Reason::TrailerOtherTires => "trailer-other-tires",
        Reason::OtherLoadStateSelected { selected } => {
            say.load_state(*selected);
            "other-load-state-selected"
        }
        Reason::HeldShortly { rung } => {
            say.rung(*rung);
            "held-shortly"
        }
        Reason::UnitSlip { group, reading, slip } => {
            say.group(*group);
            say.name("typed", slip.typed);
            say.name("meant", slip.meant);
            say.number("reading_kpa", reading.as_kpa());
            "unit-slip"
        }
        Reason::UnapprovedCounted => "unapproved-counted",
    };
    say.said(what)
}
