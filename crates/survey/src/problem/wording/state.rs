//! Sentences about load states.

use super::number::mass;
use crate::problem::StateFault;

pub(super) fn message(fault: &StateFault) -> String {
    match fault {
        StateFault::NotLiftable { group, axles } => {
            format!("'{group}' cannot be lifted, so all of its {axles} axles are down")
        }
        StateFault::AxlesDown { group, down, axles } => {
            format!("{down} axles of '{group}' down, but it has {axles}")
        }
        StateFault::LiftedCarries { group, load } => {
            format!("'{group}' is lifted and still carries {}", mass(*load))
        }
        StateFault::StandsForUnknown { other } => {
            format!("the loads of '{other}' are not known either")
        }
        StateFault::HeavierThere { other, heaviest } => {
            format!("'{other}' stands in for unknown loads, but '{heaviest}' is heavier")
        }
        StateFault::DrivenRaised { load_state } => {
            format!("the haul is driven in '{load_state}', with the body raised")
        }
    }
}

pub(super) fn hint(fault: &StateFault) -> &'static str {
    match fault {
        StateFault::NotLiftable { .. } => "add liftable = true to the group if it can be lifted",
        StateFault::AxlesDown { .. } => "count the axles that stand on the road",
        StateFault::LiftedCarries { .. } => {
            "weigh again with the axles lifted, or count them as down"
        }
        StateFault::StandsForUnknown { .. } => "name a load state that was weighed",
        StateFault::HeavierThere { .. } => "right only if nothing heavier can be aboard",
        StateFault::DrivenRaised { .. } => {
            "right for spreading at a walk; otherwise name a state with the body down"
        }
    }
}
