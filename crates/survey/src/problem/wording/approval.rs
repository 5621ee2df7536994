//! Sentences about approvals.

use super::number::cold;
use super::place;
use crate::problem::ApprovalFault;

pub(super) fn message(fault: &ApprovalFault) -> String {
    match fault {
        ApprovalFault::Expired { on } => {
            format!("this approval counted until {on}; its rows only advise now")
        }
        ApprovalFault::TireChanged { given, fitted } => format!(
            "this approval was given for {given}, but the tire is {fitted}; its rows only advise"
        ),
        ApprovalFault::RimChanged { given, fitted } => format!(
            "this approval was given for the rim {given}, but the rim is {fitted}; its rows only advise"
        ),
        ApprovalFault::RimNotSaid { given } => {
            format!(
                "this approval is for the rim {given}; the tire's file does not say which rim is fitted"
            )
        }
        ApprovalFault::Contradicts { file, line, here, there } => format!(
            "{} for the same load, speed and fitment as {} in {}",
            cold(*here),
            cold(*there),
            place(file, *line)
        ),
        ApprovalFault::AskedForCooler { asked, warmest } => {
            format!("the maker was asked about air up to {asked}; the survey has up to {warmest}")
        }
    }
}

pub(super) fn hint(fault: &ApprovalFault) -> &'static str {
    match fault {
        ApprovalFault::Expired { .. } => "ask the tire maker to renew it",
        ApprovalFault::TireChanged { .. } | ApprovalFault::RimChanged { .. } => {
            "ask the tire maker again for what is fitted now"
        }
        ApprovalFault::RimNotSaid { .. } => {
            "read the stamp on the rim and add size to [rim] in the tire's file"
        }
        ApprovalFault::Contradicts { .. } => {
            "ask the tire maker which one holds, and take the other row out"
        }
        ApprovalFault::AskedForCooler { .. } => "ask the tire maker about the warmest day too",
    }
}
