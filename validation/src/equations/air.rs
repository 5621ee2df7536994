//! Air: restrictions, tubes, paths, compressor, water.

use model::air::{
    Compressor, CompressorInlet, Restriction, adiabatic_fill_time, adiabatic_vent,
    displacement_of_rating, fill_time, mass_of_free_air, series_mass_flow, vent_time,
    water_taken_in,
};

use crate::CaseError;
use crate::inputs::Inputs;
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

fn restriction(inputs: &Inputs<'_>, ending: &str) -> Result<Restriction, CaseError> {
    let c = inputs.quantity(&format!("conductance{ending}"))?;
    let b = inputs.number(&format!("critical_ratio{ending}"))?;
    Restriction::new(c, b).map_err(CaseError::refused)
}

pub fn restriction_flow(inputs: &Inputs<'_>) -> Evaluated {
    let flow = restriction(inputs, "")?
        .mass_flow(
            inputs.quantity("upstream")?,
            inputs.quantity("temperature")?,
            inputs.quantity("downstream")?,
        )
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("mass_flow", flow))
}

pub fn orifice(inputs: &Inputs<'_>) -> Evaluated {
    let found = Restriction::from_orifice(inputs.quantity("bore")?, inputs.number("discharge")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("conductance", found.c()))
}

pub fn tube(inputs: &Inputs<'_>) -> Evaluated {
    let found = Restriction::tube(inputs.quantity("bore")?, inputs.quantity("length")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("conductance", found.c()).number("critical_ratio", found.b()))
}

pub fn series_flow(inputs: &Inputs<'_>) -> Evaluated {
    let endings = (1..).map(|i| format!("_{i}"));
    let path = endings
        .take_while(|ending| inputs.has(&format!("conductance{ending}")))
        .map(|ending| restriction(inputs, &ending))
        .collect::<Result<Vec<_>, _>>()?;
    let flow = series_mass_flow(
        &path,
        inputs.quantity("upstream")?,
        inputs.quantity("temperature")?,
        inputs.quantity("downstream")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("mass_flow", flow))
}

pub fn volumetric_efficiency(inputs: &Inputs<'_>) -> Evaluated {
    let compressor = Compressor {
        displacement: quantity::Volume::from_cm3(300.0),
        speed_ratio: 1.0,
        efficiency: inputs.number("efficiency")?,
        clearance: inputs.number("clearance")?,
        polytropic: inputs.number("polytropic")?,
        inlet: CompressorInlet::Ambient,
    };
    let share =
        compressor.volumetric_efficiency(inputs.quantity("intake")?, inputs.quantity("delivery")?);
    Ok(Outputs::new().number("ratio", share))
}

pub fn rating(inputs: &Inputs<'_>) -> Evaluated {
    Ok(Outputs::new().quantity("displacement", displacement_of_rating(inputs.quantity("rating")?)))
}

pub fn free_air_mass(inputs: &Inputs<'_>) -> Evaluated {
    Ok(Outputs::new().quantity("mass", mass_of_free_air(inputs.quantity("volume")?)))
}

pub fn water(inputs: &Inputs<'_>) -> Evaluated {
    let water = water_taken_in(
        inputs.quantity("free_air")?,
        inputs.quantity("temperature")?,
        inputs.number("humidity")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("water", water))
}

pub fn fill(inputs: &Inputs<'_>) -> Evaluated {
    let time = fill_time(
        inputs.quantity("volume")?,
        restriction(inputs, "")?,
        inputs.quantity("supply")?,
        inputs.quantity("from")?,
        inputs.quantity("to")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("time", time))
}

pub fn fill_without_heat(inputs: &Inputs<'_>) -> Evaluated {
    let time = adiabatic_fill_time(
        inputs.quantity("volume")?,
        restriction(inputs, "")?,
        inputs.quantity("supply")?,
        inputs.quantity("from")?,
        inputs.quantity("to")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("time", time))
}

pub fn vent(inputs: &Inputs<'_>) -> Evaluated {
    let time = vent_time(
        inputs.quantity("volume")?,
        restriction(inputs, "")?,
        inputs.quantity("ambient")?,
        inputs.quantity("from")?,
        inputs.quantity("to")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("time", time))
}

pub fn vent_without_heat(inputs: &Inputs<'_>) -> Evaluated {
    let vent = adiabatic_vent(
        inputs.quantity("volume")?,
        restriction(inputs, "")?,
        inputs.quantity("ambient")?,
        inputs.quantity("from")?,
        inputs.quantity("to")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("time", vent.time).quantity("end_temperature", vent.end))
}
