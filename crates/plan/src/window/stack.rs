//! What is added to the lowest pressure before the controller is set.

use model::tire::load_inflation::Exponent;
use model::vehicle::{AxleGroup, Controller, GaugeKind};
use quantity::{AbsolutePressure, ColdPressure, GaugePressure, PressureDifference, Temperature};

use super::site::Site;

/// Why something is added.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Added {
    /// Error of the controller's gauge.
    Gauge,
    /// Band in which the controller does nothing.
    Deadband,
    /// Mates of a dual that differ in diameter.
    DualMismatch,
    /// The tire may be this warm when it is set.
    WarmestTire,
    /// Rounding to the controller's step.
    Step,
    /// A sealed gauge read at altitude.
    SealedGauge,
    /// A pressure fixed by hand above the lowest.
    HandSet,
}

/// One item of the stack.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StackItem {
    /// Why.
    pub added: Added,
    /// How much; below zero for a gauge that reads low.
    pub amount: PressureDifference,
}

/// Pressure a controller is set to, with everything added on the way.
#[derive(Debug, Clone, PartialEq)]
pub struct SetPoint {
    /// Cold pressure that the cell is meant to hold.
    pub cold: ColdPressure,
    /// As a vented gauge reads it, snapped to the step.
    pub vented: GaugePressure,
    /// As this controller reads it.
    pub as_controller_reads: GaugePressure,
    /// What was added.
    pub stack: Vec<StackItem>,
}

/// Rounding smaller than this is not worth a line.
const NEGLIGIBLE: PressureDifference = PressureDifference::from_kpa(1e-6);

/// Extra pressure for the larger mate of a mismatched dual.
///
/// The mates share one axle height, so half the radius difference goes to each: the larger
/// deflects by a quarter of the diameter difference more than the mean, and carries as much
/// more load in proportion to its deflection.
pub(super) fn dual_mismatch(
    group: &AxleGroup,
    lowest: ColdPressure,
    deflection: quantity::Length,
    exponent: &Exponent,
) -> PressureDifference {
    let Some(pair) = group.dual else { return PressureDifference::ZERO };
    if deflection <= quantity::Length::ZERO {
        return PressureDifference::ZERO;
    }
    let more = (pair.diameter_difference.abs() / 4.0) / deflection;
    lowest.scaled((1.0 + more).powf(1.0 / exponent.n())) - lowest
}

/// Adds everything to the lowest pressure and snaps the result up to the controller's step.
pub(super) fn set_point(
    lowest: ColdPressure,
    mismatch: PressureDifference,
    hand_set: Option<ColdPressure>,
    warmest_tire: Temperature,
    controller: &Controller,
    site: &Site,
) -> SetPoint {
    let mut stack = Vec::with_capacity(6);
    let mut add = |added, amount: PressureDifference| {
        if amount.abs() > NEGLIGIBLE {
            stack.push(StackItem { added, amount });
        }
    };
    add(Added::DualMismatch, mismatch);
    add(Added::Gauge, controller.gauge_error);
    add(Added::Deadband, controller.deadband);
    let mut cold = lowest + mismatch + controller.gauge_error + controller.deadband;
    if let Some(wanted) = hand_set.filter(|wanted| *wanted > cold) {
        add(Added::HandSet, wanted - cold);
        cold = wanted;
    }
    let warm = site.read_at(cold, warmest_tire);
    add(Added::WarmestTire, warm - cold.at_reference());
    let offset = sealed_offset(controller.gauge, site.reference.ambient());
    add(Added::SealedGauge, offset);
    let wanted = warm + offset;
    let snapped = snap_up(wanted, controller.step);
    add(Added::Step, snapped - wanted);
    let vented = snapped - offset;
    SetPoint {
        cold: site.cold_of(vented, warmest_tire),
        vented,
        as_controller_reads: snapped,
        stack,
    }
}

/// A sealed gauge counts from sea level wherever it is, so at altitude it reads less than a
/// vented one by what the ambient pressure is short of it.
fn sealed_offset(gauge: GaugeKind, ambient: AbsolutePressure) -> PressureDifference {
    match gauge {
        GaugeKind::Vented => PressureDifference::ZERO,
        GaugeKind::Sealed => ambient - AbsolutePressure::from_kpa(101.325),
    }
}

/// The next multiple of a step at or above; a value that is a multiple but for rounding stays.
pub(crate) fn snap_up(pressure: GaugePressure, step: PressureDifference) -> GaugePressure {
    let steps = pressure.as_kpa() / step.as_kpa();
    GaugePressure::from_kpa((steps - 1e-9 * steps.abs().max(1.0)).ceil() * step.as_kpa())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_multiple_of_the_step_stays() {
        let step = PressureDifference::from_psi(5.0);
        let p = GaugePressure::from_psi(85.0);
        assert!((snap_up(p, step).as_psi() - 85.0).abs() < 1e-9);
        let above = GaugePressure::from_psi(85.01);
        assert!((snap_up(above, step).as_psi() - 90.0).abs() < 1e-9);
    }
}
