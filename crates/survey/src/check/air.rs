//! The truck's air: pressures that must stand in a certain order.

use quantity::GaugePressure;

use crate::convert::Loaded;
use crate::file::{InletWord, VehicleFile};
use crate::problem::{Condition, Ordered, Problem, ProblemKind};

/// Checks the supply of a truck and the controller's brake pressures.
pub(super) fn supply(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    inlet(file, problems);
    governor(file, problems);
    protection(file, problems);
    brakes(file, problems);
}

/// Reports a pair of pressures unless `low` lies below `high`, or on it where that is allowed.
fn ordered(
    file: &Loaded<VehicleFile>,
    pointer: &str,
    which: Ordered,
    (low, high): (f64, f64),
    may_be_equal: bool,
    problems: &mut Vec<Problem>,
) {
    if low < high || (may_be_equal && low <= high) {
        return;
    }
    let (low, high) = (GaugePressure::from_kpa(low), GaugePressure::from_kpa(high));
    problems.push(file.problem(pointer, ProblemKind::WrongOrder { which, low, high }));
}

fn inlet(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    let Some(compressor) = file.data.air.map(|air| air.compressor) else { return };
    let at = "/air/compressor";
    let key = "boost_kpa";
    match (compressor.inlet, compressor.boost_kpa) {
        (InletWord::Boosted, None) => {
            let kind = ProblemKind::Needed { key, because: Condition::Boosted };
            problems.push(file.problem(at, kind));
        }
        (InletWord::Ambient, Some(_)) => {
            let kind = ProblemKind::OutOfPlace { key, because: Condition::NotBoosted };
            problems.push(file.document.problem_with_key(&format!("{at}/{key}"), kind));
        }
        _ => {}
    }
}

fn governor(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    let Some(governor) = file.data.air.map(|air| air.governor) else { return };
    let pair = (governor.cut_in_kpa, governor.cut_out_kpa);
    ordered(file, "/air/governor/cut_in_kpa", Ordered::GovernorCutIn, pair, false, problems);
}

fn protection(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    let Some(air) = &file.data.air else { return };
    let valve = &air.protection;
    let at = "/air/protection";
    let pair = (valve.shuts_kpa, valve.opens_kpa);
    ordered(file, &format!("{at}/shuts_kpa"), Ordered::ProtectionShuts, pair, false, problems);
    let pair = (valve.opens_kpa, air.governor.cut_in_kpa);
    let which = Ordered::ProtectionOpensUnderCutIn;
    ordered(file, &format!("{at}/opens_kpa"), which, pair, true, problems);
}

fn brakes(file: &Loaded<VehicleFile>, problems: &mut Vec<Problem>) {
    let Some(controller) = &file.data.controller else { return };
    let threshold = controller.brake_threshold_kpa;
    let pair = (threshold, controller.brake_resume_kpa);
    let at = "/controller/brake_threshold_kpa";
    ordered(file, at, Ordered::BrakeThreshold, pair, true, problems);
    let Some(air) = &file.data.air else { return };
    let pair = (air.protection.shuts_kpa, threshold);
    ordered(file, at, Ordered::ProtectionUnderBrakeThreshold, pair, true, problems);
    let pair = (controller.brake_resume_kpa, air.governor.cut_in_kpa);
    let at = "/controller/brake_resume_kpa";
    ordered(file, at, Ordered::ResumeUnderCutIn, pair, true, problems);
}
