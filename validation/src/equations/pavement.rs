//! Wear of paved roads, and layered elastic ground.

use std::f64::consts::PI;

use model::road::axle_factor;
use model::road::layered::{Accuracy, Depth, Layer, Pavement, Point, Wheel, respond};
use model::road::pavement_strain;
use quantity::{Force, Length, Stress};

use crate::CaseError;
use crate::inputs::{Inputs, wrong};
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

pub fn axle_factor(inputs: &Inputs<'_>) -> Evaluated {
    let axles = (1..=9).find(|count| inputs.number("axles") == Ok(f64::from(*count)));
    let lef = axle_factor::axle_factor(
        inputs.quantity("load")?,
        axles.ok_or_else(|| wrong("axles", "is not a small whole number"))?,
        inputs.number("structural_number")?,
        inputs.number("terminal")?,
    );
    Ok(Outputs::new().number("lef", lef.map_err(CaseError::refused)?))
}

pub fn pavement_strain(inputs: &Inputs<'_>) -> Evaluated {
    let dual_spacing =
        inputs.has("dual_spacing").then(|| inputs.quantity("dual_spacing")).transpose()?;
    let found = pavement_strain::pavement_strain(
        inputs.quantity("wheel_load")?,
        inputs.quantity("pressure")?,
        dual_spacing,
        &pavement(inputs)?,
    )
    .map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .number("asphalt_microstrain", found.asphalt.strain.as_microstrain())
        .number("subgrade_microstrain", found.subgrade.strain.as_microstrain()))
}

/// One or two wheels in a row along x, the first at the origin; tension positive.
pub fn layered_response(inputs: &Inputs<'_>) -> Evaluated {
    let pressure: Stress = inputs.quantity("pressure")?;
    let radius: Length = inputs.quantity("radius")?;
    let load = Force::from_kn(pressure.as_kpa() * PI * radius.as_m().powi(2));
    let wheel = |x| Wheel { x, y: Length::ZERO, load, pressure };
    let mut wheels = vec![wheel(Length::ZERO)];
    if inputs.has("spacing") {
        wheels.push(wheel(inputs.quantity("spacing")?));
    }
    let face = |name, layers: usize, face: fn(usize) -> Depth| {
        let number = inputs.number(name)?;
        let layer = (0..layers).find(|i| (number - 1.0 - *i as f64).abs() < f64::EPSILON);
        layer.map(face).ok_or_else(|| wrong(name, "is no layer's number"))
    };
    let pavement = pavement(inputs)?;
    let layers = pavement.layers().len();
    let depth = if inputs.has("bottom_of") {
        face("bottom_of", layers, Depth::BottomOf)?
    } else if inputs.has("top_of") {
        face("top_of", layers, Depth::TopOf)?
    } else {
        Depth::At(inputs.quantity("depth")?)
    };
    let point = Point { x: inputs.quantity("x")?, y: Length::ZERO, depth };
    let found =
        respond(&pavement, &wheels, &[point], Accuracy::Fine).map_err(CaseError::refused)?[0];
    Ok(Outputs::new()
        .number("strain_x_microstrain", found.strain.xx.as_microstrain())
        .number("strain_y_microstrain", found.strain.yy.as_microstrain())
        .number("strain_z_microstrain", found.strain.zz.as_microstrain())
        .quantity("stress_x", found.stress.xx)
        .quantity("stress_y", found.stress.yy)
        .quantity("stress_z", found.stress.zz)
        .quantity("settlement", found.displacement[2]))
}

/// Layers written like `3000 MPa, 0.35, 50 mm; 50 MPa, 0.4`.
fn pavement(inputs: &Inputs<'_>) -> Result<Pavement, CaseError> {
    let layer = |text: &str| {
        let mut parts = text.split(',').map(str::trim);
        let modulus = parts.next()?.parse().ok()?;
        let poisson = parts.next()?.parse().ok()?;
        let thickness = parts.next().map(str::parse).transpose().ok()?;
        Some(Layer { modulus, poisson, thickness })
    };
    let layers: Option<Vec<Layer>> = inputs.word("layers")?.split(';').map(layer).collect();
    let layers = layers.ok_or_else(|| wrong("layers", "is no list like 'E, nu, h; E, nu'"))?;
    Pavement::new(layers).map_err(CaseError::refused)
}
