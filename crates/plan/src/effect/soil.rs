//! The soil of a soft leg: how strong it is, and the ruts that tires leave in it.

use model::ground::Estimate;
use model::ground::rut_soil::{Firmness, first_pass, passes_to_same_rut};
use model::ground::wheel_pull::SoilWheel;
use model::route::{Leg, Surface};
use model::vehicle::AxleGroup;
use quantity::{Mass, Stress};

use super::band::{Band, Finding, Input, NotAssessed};
use super::tire::OnTire;

/// Ruts in soil against those at full pressure.
#[derive(Debug, Clone, PartialEq)]
pub struct SoilEffect {
    /// Rut after the same passes over that at full pressure: least and expected by the equation, most
    /// where pressure does nothing, as trials on wet ground found.
    pub rut: Band<f64>,
    /// Passes to the same rut over those at full pressure.
    pub passes: Band<f64>,
    /// Whether a wheel sinks further than the equation is known to hold for.
    pub extrapolated: bool,
}

/// Whether wheels sink into a surface, so that its strength counts.
pub(super) fn is_soft(surface: Surface) -> bool {
    matches!(surface, Surface::Earth | Surface::SoftGround)
}

/// Cone index of the soil of a leg.
pub(super) fn cone_index(leg: &Leg) -> Finding<Estimate<Stress>> {
    let soil = leg.ground.as_ref().and_then(|ground| ground.soil);
    let soil = soil.ok_or(NotAssessed::Give(Input::Strength))?;
    Ok(soil.strength().map_err(|error| NotAssessed::refused(&error))?.cone_index)
}

/// A wheel of a group on soil.
pub(super) fn wheel(
    group: &AxleGroup,
    load: Mass,
    deflection: f64,
    cone_index: Stress,
) -> Finding<SoilWheel> {
    SoilWheel::new(load, cone_index, group.tire.section_width, group.tire.diameter, deflection)
        .and_then(|wheel| wheel.with_section_height(group.tire.section_height()))
        .map_err(|error| NotAssessed::refused(&error))
}

/// What a tire does to the soil of a leg against another; a ratio, in which the passes cancel.
///
/// # Errors
/// [`NotAssessed::Give`] the strength of the soil.
///
/// # Source
/// `maclaurin-1990`, `freitag-1965`, from memory.
pub fn soil_effect(
    leg: &Leg,
    group: &AxleGroup,
    full: &OnTire,
    tire: &OnTire,
) -> Finding<SoilEffect> {
    let cone = cone_index(leg)?.value;
    let before = wheel(group, full.load, full.deflection.clone()?, cone)?;
    let after = wheel(group, tire.load, tire.deflection.clone()?, cone)?;
    let by_load = wheel(group, tire.load, full.deflection.clone()?, cone)?;
    let ratio = |wheel: &SoilWheel| first_pass(wheel).value / first_pass(&before).value;
    let more = passes_to_same_rut(&before, &after, Firmness::Average);
    let alone = passes_to_same_rut(&before, &by_load, Firmness::Average).value;
    Ok(SoilEffect {
        rut: Band::spanning(ratio(&after), [ratio(&by_load)]),
        passes: Band::spanning(more.value, [more.low, more.high, alone]),
        extrapolated: more.extrapolated,
    })
}
