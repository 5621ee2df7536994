//! Motion along the road, and the units everything is told in.

use model::motion::{self, RoadLoad};
use quantity::{
    ColdPressure, Force, Length, Mass, Power, SonicConductance, Speed, Unit, Volume, VolumeFlow,
};

use crate::CaseError;
use crate::inputs::{Inputs, wrong};
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

fn load(inputs: &Inputs<'_>) -> Result<RoadLoad, CaseError> {
    Ok(RoadLoad {
        mass: inputs.quantity("mass")?,
        rolling_resistance: inputs.number("rolling_resistance")?,
        grade: inputs.number("grade")?,
        drag_area: inputs.quantity("drag_area")?,
        air_density: inputs.quantity("air_density")?,
    })
}

pub fn force(inputs: &Inputs<'_>) -> Evaluated {
    let force = load(inputs)?.force(inputs.quantity("speed")?);
    Ok(Outputs::new().quantity("force", force))
}

pub fn steady_speed(inputs: &Inputs<'_>) -> Evaluated {
    let speed = load(inputs)?.steady_speed(inputs.quantity("wheel_power")?);
    Ok(Outputs::new().quantity("speed", speed.map_err(CaseError::refused)?))
}

pub fn air_density(inputs: &Inputs<'_>) -> Evaluated {
    let rho = motion::air_density(inputs.quantity("pressure")?, inputs.quantity("temperature")?);
    Ok(Outputs::new().quantity("density", rho))
}

pub fn curve_speed(inputs: &Inputs<'_>) -> Evaluated {
    let speed = motion::curve_speed(inputs.quantity("radius")?, inputs.number("side_friction")?);
    Ok(Outputs::new().quantity("speed", speed))
}

/// A value read in one unit, for comparison in another.
pub fn unit_factor(inputs: &Inputs<'_>) -> Evaluated {
    fn read<Q>(inputs: &Inputs<'_>) -> Evaluated
    where
        Q: Unit + std::str::FromStr,
        Q::Err: std::fmt::Display,
    {
        Ok(Outputs::new().quantity("value", inputs.quantity::<Q>("value")?))
    }
    match inputs.word("kind")? {
        "pressure" => read::<ColdPressure>(inputs),
        "mass" => read::<Mass>(inputs),
        "length" => read::<Length>(inputs),
        "force" => read::<Force>(inputs),
        "speed" => read::<Speed>(inputs),
        "power" => read::<Power>(inputs),
        "volume" => read::<Volume>(inputs),
        "volume flow" => read::<VolumeFlow>(inputs),
        "conductance" => read::<SonicConductance>(inputs),
        _ => Err(wrong("kind", "is not a kind of quantity")),
    }
}
