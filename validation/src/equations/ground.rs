//! Footprints, stress and strength of soil, wheels on soft ground, ride.

use model::ground::bekker::{self, PlateWheel, Terrain};
use model::ground::cone_index::{self, SoilVehicle};
use model::ground::rut_soil::{self, Firmness};
use model::ground::soil_stress::{self, Concentration, Contact};
use model::ground::strength::{self, Cbr, Reading, SoilType};
use model::ground::wheel_pull::{self, SoilWheel};
use model::tire::Construction;
use model::tire::footprint::{self, ContactModel};
use model::tire::ride::{Suspension, WheelEnd, ride_change};
use model::tire::stiffness::{Section, Stiffness};
use quantity::{Force, Length, Mass, Stress};

use crate::CaseError;
use crate::inputs::{Inputs, wrong};
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

pub(super) fn load(inputs: &Inputs<'_>, name: &str) -> Result<Mass, CaseError> {
    inputs.quantity::<Force>(name).map(Force::as_mass)
}

pub(super) fn cbr(inputs: &Inputs<'_>, name: &str) -> Result<Cbr, CaseError> {
    Cbr::from_pct(inputs.number(name)?).map_err(CaseError::refused)
}

pub fn contact_pressure(inputs: &Inputs<'_>) -> Evaluated {
    let section = Section::new(
        inputs.quantity("section_width")?,
        inputs.quantity("diameter")?,
        inputs.quantity("rim_diameter")?,
    )
    .map_err(CaseError::refused)?;
    let model = match inputs.word("model")? {
        "road-truck" => ContactModel::RoadTruck,
        "flotation" => ContactModel::Flotation,
        _ => return Err(wrong("model", "is not road-truck or flotation")),
    };
    let p_m = footprint::mean_contact_pressure(section, model, inputs.quantity("pressure")?);
    Ok(Outputs::new().quantity("mean_pressure", p_m.map_err(CaseError::refused)?))
}

fn concentration(inputs: &Inputs<'_>) -> Result<Concentration, CaseError> {
    Concentration::new(inputs.number("concentration")?).map_err(CaseError::refused)
}

fn circle(inputs: &Inputs<'_>) -> Result<Contact, CaseError> {
    Contact::new(inputs.quantity("contact_pressure")?, inputs.quantity("radius")?)
        .map_err(CaseError::refused)
}

pub fn stress_on_axis(inputs: &Inputs<'_>) -> Evaluated {
    let stress = circle(inputs)?.on_axis(inputs.quantity("depth")?, concentration(inputs)?);
    Ok(Outputs::new().quantity("stress", stress.map_err(CaseError::refused)?))
}

pub fn stress_beside(inputs: &Inputs<'_>) -> Evaluated {
    let (offset, depth) = (inputs.quantity("offset")?, inputs.quantity("depth")?);
    let stress = circle(inputs)?.beside(offset, depth, concentration(inputs)?);
    Ok(Outputs::new().quantity("stress", stress.map_err(CaseError::refused)?))
}

pub fn stress_under_dual(inputs: &Inputs<'_>) -> Evaluated {
    let contact = Contact::under(load(inputs, "load")?, inputs.quantity("contact_pressure")?)
        .map_err(CaseError::refused)?;
    let (spacing, depth) = (inputs.quantity("spacing")?, inputs.quantity("depth")?);
    let found = contact.dual(spacing, depth, concentration(inputs)?).map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("under_tire", found.under_tire).quantity("mid_gap", found.mid_gap))
}

pub fn stress_under_point(inputs: &Inputs<'_>) -> Evaluated {
    let stress = soil_stress::under_point(
        load(inputs, "load")?,
        inputs.quantity("offset")?,
        inputs.quantity("depth")?,
        concentration(inputs)?,
    );
    Ok(Outputs::new().quantity("stress", stress.map_err(CaseError::refused)?))
}

pub fn rating_cone_index(inputs: &Inputs<'_>) -> Evaluated {
    let rating = strength::rating_cone_index(
        inputs.quantity("cone_index")?,
        inputs.number("remolding_index")?,
    );
    Ok(Outputs::new().quantity("rating", rating.map_err(CaseError::refused)?))
}

pub fn soil_strength(inputs: &Inputs<'_>) -> Evaluated {
    let soil = match inputs.word("soil")? {
        "lean clay" => SoilType::LeanClay,
        "fat clay" => SoilType::FatClay,
        "fine-grained" => SoilType::FineGrained,
        "coarse-grained" => SoilType::CoarseGrained,
        _ => return Err(wrong("soil", "is not lean clay, fat clay, fine- or coarse-grained")),
    };
    let reading = if inputs.has("cbr") {
        Reading::Cbr(cbr(inputs, "cbr")?)
    } else {
        Reading::Dcp(inputs.quantity("dcp")?)
    };
    let found = strength::strength(reading, soil).map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .number("cbr_pct", found.cbr.value.as_pct())
        .quantity("cohesion", found.cohesion.value))
}

pub fn vehicle_cone_index(inputs: &Inputs<'_>) -> Evaluated {
    let (index, ratio) = (inputs.number("mobility_index")?, inputs.number("deflection_ratio")?);
    let found = cone_index::vehicle_cone_index(index, ratio).map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .quantity("one_pass", found.one_pass)
        .quantity("fifty_passes", found.fifty_passes)
        .number(
            "correction",
            cone_index::deflection_correction(ratio).map_err(CaseError::refused)?,
        ))
}

fn soil_vehicle(inputs: &Inputs<'_>) -> Result<SoilVehicle, CaseError> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "small counts")]
    let count = |name| inputs.number(name).map(|n| n as u32);
    Ok(SoilVehicle {
        gross: inputs.quantity("gross")?,
        axles: count("axles")?,
        driven_axles: count("axles")?,
        tires: count("tires")?,
        tire_width: inputs.quantity("tire_width")?,
        tire_diameter: inputs.quantity("tire_diameter")?,
        clearance: inputs.quantity("clearance")?,
        power_to_weight: inputs.quantity("power_to_weight")?,
        automatic: true,
        chains: false,
    })
}

pub fn mobility_index(inputs: &Inputs<'_>) -> Evaluated {
    let index = cone_index::mobility_index(&soil_vehicle(inputs)?).map_err(CaseError::refused)?;
    Ok(Outputs::new().number("index", index))
}

pub fn limiting_cone_index(inputs: &Inputs<'_>) -> Evaluated {
    let found =
        cone_index::limiting_cone_index(&soil_vehicle(inputs)?, inputs.quantity("deflection")?);
    Ok(Outputs::new().quantity("cone_index", found.map_err(CaseError::refused)?))
}

fn soil_wheel(inputs: &Inputs<'_>) -> Result<SoilWheel, CaseError> {
    let wheel = SoilWheel::new(
        load(inputs, "load")?,
        inputs.quantity("cone_index")?,
        inputs.quantity("width")?,
        inputs.quantity("diameter")?,
        inputs.number("deflection_ratio")?,
    );
    let wheel = wheel.map_err(CaseError::refused)?;
    if inputs.has("section_height") {
        let height: Length = inputs.quantity("section_height")?;
        return wheel.with_section_height(height).map_err(CaseError::refused);
    }
    Ok(wheel)
}

pub fn gee_clough(inputs: &Inputs<'_>) -> Evaluated {
    let wheel = soil_wheel(inputs)?;
    let pull =
        wheel_pull::gee_clough(&wheel, inputs.number("slip")?).map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .number("numeric", wheel.clay_numeric())
        .number("net", pull.net)
        .number("resistance", pull.resistance))
}

pub fn brixius(inputs: &Inputs<'_>) -> Evaluated {
    let slip = inputs.number("slip")?;
    let pull = wheel_pull::brixius(&soil_wheel(inputs)?, slip, Construction::Bias)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().number("net", pull.net).number("resistance", pull.resistance))
}

pub fn maclaurin(inputs: &Inputs<'_>) -> Evaluated {
    let wheel = soil_wheel(inputs)?;
    let pull = wheel_pull::maclaurin(&wheel).map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .number("net", pull.net)
        .number("resistance", pull.resistance)
        .quantity("first_rut", rut_soil::first_pass(&wheel).value))
}

pub fn soil_rut(inputs: &Inputs<'_>) -> Evaluated {
    let found = rut_soil::rut(&soil_wheel(inputs)?, inputs.number("passes")?, Firmness::Average)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("fastest", found.high))
}

pub fn plate_sinkage(inputs: &Inputs<'_>) -> Evaluated {
    let soil = inputs.word("soil")?;
    let moisture = inputs.has("moisture_pct").then(|| inputs.number("moisture_pct")).transpose()?;
    let terrain = Terrain::named(soil, moisture).ok_or_else(|| wrong("soil", "is not listed"))?;
    let wheel = PlateWheel {
        load: load(inputs, "load")?,
        pressure: inputs.quantity::<Stress>("pressure")?,
        width: inputs.quantity("width")?,
        diameter: inputs.quantity("diameter")?,
    };
    let found = bekker::sinkage(wheel, terrain).map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("depth", found.depth).number("resistance", found.resistance))
}

pub fn ride(inputs: &Inputs<'_>) -> Evaluated {
    let suspension = match inputs.word("suspension")? {
        "air" => Suspension::Air,
        "steel" => Suspension::Steel,
        _ => return Err(wrong("suspension", "is not air or steel")),
    };
    let wheel_end = WheelEnd {
        suspension,
        sprung: inputs.quantity("sprung")?,
        unsprung: inputs.quantity("unsprung")?,
    };
    let stiffness = |name| inputs.number(name).map(Stiffness::from_n_per_mm);
    let change = ride_change(wheel_end, stiffness("from_n_per_mm")?, stiffness("to_n_per_mm")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .number("body_ratio", 1.0 + change.body_pct / 100.0)
        .number("wheel_load_ratio", 1.0 + change.wheel_load_pct / 100.0))
}
