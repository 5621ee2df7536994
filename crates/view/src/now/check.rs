//! Checks as identifiers with their arguments.

use model::haul_cycle::HaulCycle;
use plan::now::Check;

use super::{SaidView, Saying};

pub(super) fn check(haul: &HaulCycle, check: &Check) -> SaidView {
    let mut say = Saying::new(haul);
    let what = match *check {
        Check::Gauge { group } => {
            say.group(group);
            "gauge"
        }
        Check::Raise { channel, rung, to } => {
            say.channel(channel);
            say.rung(rung);
            say.number("set_kpa", to.as_kpa());
            "raise"
        }
        Check::Lower { group, to } => {
            say.group(group);
            say.number("highest_kpa", to.as_kpa());
            "lower"
        }
        Check::LeaveToTrainedPeople { group } => {
            say.group(group);
            "leave-to-trained-people"
        }
        Check::DeflateBeforeService { group, recommended } => {
            say.group(group);
            say.number("recommended_kpa", recommended.as_kpa());
            "deflate-before-service"
        }
        Check::FindWhySofter { group } => {
            say.group(group);
            "find-why-softer"
        }
        Check::WheelEndsShut { group, count } => {
            say.group(group);
            say.number("wheel_ends", f64::from(count));
            "wheel-ends-shut"
        }
        Check::RaiseBeforeParking { group } => {
            say.group(group);
            "raise-before-parking"
        }
        Check::AskMaker { channel } => {
            say.channel(channel);
            "ask-maker"
        }
        Check::FindOutLoad => "find-out-load",
        Check::TakeLoadOff { group } => {
            say.group(group);
            "take-load-off"
        }
        Check::ReadSidewalls => "read-sidewalls",
        Check::OpenWheelEnds => "open-wheel-ends",
        Check::SelectLoadState { state } => {
            say.load_state(state);
            "select-load-state"
        }
        Check::ReadUnitAgain { group } => {
            say.group(group);
            "read-unit-again"
        }
        Check::AskAgain => "ask-again",
    };
    say.said(what)
}
