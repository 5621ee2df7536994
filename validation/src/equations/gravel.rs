//! Aggregate roads, unsurfaced soil, and rolling on them.

use model::ground::gravel::{self, AggregateRoad};
use model::ground::gravel_thickness::{self, UNREINFORCED, WeakSubgrade};
use model::ground::rolling_resistance;
use model::tire::Fitment;

use super::ground::{cbr, load};
use crate::CaseError;
use crate::inputs::{Inputs, wrong};
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

pub fn rut(inputs: &Inputs<'_>) -> Evaluated {
    let road = AggregateRoad {
        thickness: inputs.quantity("thickness")?,
        top: cbr(inputs, "top_cbr")?,
        bottom: cbr(inputs, "bottom_cbr")?,
    };
    let (wheel, pressure) = (load(inputs, "wheel_load")?, inputs.quantity("pressure")?);
    let found = gravel::rut(&road, wheel, pressure, inputs.number("passes")?);
    Ok(Outputs::new().quantity("rut", found.map_err(CaseError::refused)?.value))
}

/// The thickness at another pressure, over that before.
pub fn thickness_for_same_rut(inputs: &Inputs<'_>) -> Evaluated {
    let before: quantity::Length = inputs.quantity("thickness")?;
    let after = gravel::thickness_for_same_rut(
        before,
        inputs.quantity("from_pressure")?,
        inputs.quantity("to_pressure")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().number("saving", 1.0 - after / before))
}

pub fn giroud_han(inputs: &Inputs<'_>) -> Evaluated {
    let found = gravel_thickness::giroud_han(&WeakSubgrade {
        wheel_load: load(inputs, "wheel_load")?,
        pressure: inputs.quantity("pressure")?,
        passes: inputs.number("passes")?,
        rut: inputs.quantity("rut")?,
        subgrade: cbr(inputs, "subgrade_cbr")?,
        base: cbr(inputs, "base_cbr")?,
        bearing_capacity_factor: UNREINFORCED,
        aperture_stability: 0.0,
    })
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("thickness", found.value))
}

pub fn permissible_stress(inputs: &Inputs<'_>) -> Evaluated {
    let geotextile = match inputs.word("below")? {
        "bare" => false,
        "geotextile" => true,
        _ => return Err(wrong("below", "is not bare or geotextile")),
    };
    let found = gravel_thickness::permissible_stress_thickness(
        load(inputs, "wheel_load")?,
        true,
        Fitment::Dual,
        inputs.quantity("pressure")?,
        inputs.quantity("cohesion")?,
        geotextile,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("thickness", found.value))
}

pub fn unsurfaced(inputs: &Inputs<'_>) -> Evaluated {
    let found = gravel_thickness::unsurfaced_thickness(
        load(inputs, "wheel_load")?,
        inputs.quantity("contact_area")?,
        inputs.number("coverages")?,
        cbr(inputs, "cbr")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("thickness", found.value))
}

pub fn haul_road(inputs: &Inputs<'_>) -> Evaluated {
    let found = rolling_resistance::haul_road(inputs.quantity("penetration")?);
    Ok(Outputs::new().number("resistance", found.map_err(CaseError::refused)?.value))
}
