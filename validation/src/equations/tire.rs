//! Tires: load, speed, temperature, stiffness, deflection.

use model::tire::cold_warm::{self, Conditions};
use model::tire::deflection::DeflectionLaw;
use model::tire::load_inflation::{Exponent, carried_load, required_pressure};
use model::tire::low_speed::{SpeedBand, restricted_speed_pressure, tra_allowance};
use model::tire::stiffness::{self, Section};
use model::tire::{Construction, RatedPoint, SizeClass, StandardsBody};
use quantity::{ColdPressure, GaugePressure, Speed};

use crate::CaseError;
use crate::inputs::{Inputs, wrong};
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

fn rated(inputs: &Inputs<'_>) -> Result<RatedPoint, CaseError> {
    Ok(RatedPoint {
        load: inputs.quantity("rated_load")?,
        pressure: inputs.quantity("rated_pressure")?,
    })
}

fn exponent(inputs: &Inputs<'_>) -> Result<Exponent, CaseError> {
    match inputs.word("rule")? {
        "tra-radial" => Ok(Exponent::of(StandardsBody::Tra, Construction::Radial)),
        "tra-bias" => Ok(Exponent::of(StandardsBody::Tra, Construction::Bias)),
        "etrto" => Ok(Exponent::of(StandardsBody::Etrto, Construction::Radial)),
        _ => Err(wrong("rule", "is not tra-radial, tra-bias or etrto")),
    }
}

fn size_class(inputs: &Inputs<'_>) -> Result<SizeClass, CaseError> {
    match inputs.word("class")? {
        "conventional" => Ok(SizeClass::Conventional),
        "metric-or-wide" => Ok(SizeClass::MetricOrWide),
        _ => Err(wrong("class", "is not conventional or metric-or-wide")),
    }
}

pub fn power_law(inputs: &Inputs<'_>) -> Evaluated {
    let carried = carried_load(rated(inputs)?, inputs.quantity("pressure")?, &exponent(inputs)?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("load", carried.load))
}

pub fn required(inputs: &Inputs<'_>) -> Evaluated {
    let needed = required_pressure(rated(inputs)?, inputs.quantity("load")?, &exponent(inputs)?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("pressure", needed.pressure))
}

/// What the slowest row that still covers a speed grants.
pub fn low_speed_allowance(inputs: &Inputs<'_>) -> Evaluated {
    let rows = tra_allowance(size_class(inputs)?, inputs.quantity("speed")?);
    let slowest = rows.min_by(|(one, _), (other, _)| {
        let kmh = |row: &SpeedBand| row.top.map_or(f64::MAX, Speed::as_kmh);
        kmh(one).total_cmp(&kmh(other))
    });
    let (_, allowance) = slowest.ok_or_else(|| CaseError::refused("no row covers this speed"))?;
    Ok(Outputs::new()
        .number("load_allowance_pct", allowance.load_pct)
        .quantity("pressure_addition", allowance.pressure_addition))
}

pub fn low_speed_pressure(inputs: &Inputs<'_>) -> Evaluated {
    let found = restricted_speed_pressure(
        rated(inputs)?,
        inputs.quantity("load")?,
        &exponent(inputs)?,
        size_class(inputs)?,
        inputs.quantity("speed")?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("pressure", found.pressure))
}

pub fn isa_pressure(inputs: &Inputs<'_>) -> Evaluated {
    let p =
        cold_warm::ambient_pressure(inputs.quantity("altitude")?).map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("pressure", p))
}

pub fn carried_over(inputs: &Inputs<'_>) -> Evaluated {
    let conditions = |temperature: &str, ambient: &str| {
        Conditions::new(inputs.quantity(temperature)?, inputs.quantity(ambient)?)
            .map_err(CaseError::refused)
    };
    let from = conditions("from_temperature", "from_ambient")?;
    let to = conditions("to_temperature", "to_ambient")?;
    let before: GaugePressure = inputs.quantity("pressure")?;
    let after = cold_warm::carried_over(before, from, to);
    Ok(Outputs::new().quantity("pressure", after).quantity("rise", after - before))
}

fn section(inputs: &Inputs<'_>) -> Result<Section, CaseError> {
    Section::new(
        inputs.quantity("section_width")?,
        inputs.quantity("diameter")?,
        inputs.quantity("rim_diameter")?,
    )
    .map_err(CaseError::refused)
}

pub fn rhyne_stiffness(inputs: &Inputs<'_>) -> Evaluated {
    let k = stiffness::rhyne(section(inputs)?, inputs.quantity("pressure")?);
    Ok(Outputs::new().number("n_per_mm", k.map_err(CaseError::refused)?.as_n_per_mm()))
}

pub fn hadekel_stiffness(inputs: &Inputs<'_>) -> Evaluated {
    let k = stiffness::hadekel(section(inputs)?, inputs.quantity("pressure")?);
    Ok(Outputs::new().number("n_per_mm", k.map_err(CaseError::refused)?.as_n_per_mm()))
}

fn law(inputs: &Inputs<'_>) -> Result<DeflectionLaw, CaseError> {
    let force: quantity::Force = inputs.quantity("rated_force")?;
    let rated: ColdPressure = inputs.quantity("rated_pressure")?;
    DeflectionLaw::anchored(
        RatedPoint { load: force.as_mass(), pressure: rated },
        inputs.quantity("diameter")?,
        inputs.quantity("rim_diameter")?,
        inputs.quantity("loaded_radius")?,
    )
    .map_err(CaseError::refused)
}

pub fn deflection(inputs: &Inputs<'_>) -> Evaluated {
    let force: quantity::Force = inputs.quantity("force")?;
    let found = law(inputs)?
        .deflection(force.as_mass(), inputs.quantity("pressure")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .quantity("deflection", found.value)
        .number("share", found.share_of_section_height))
}

pub fn deflection_pressure(inputs: &Inputs<'_>) -> Evaluated {
    let force: quantity::Force = inputs.quantity("force")?;
    let found = law(inputs)?
        .pressure_for(force.as_mass(), inputs.number("share")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("pressure", found.pressure))
}
