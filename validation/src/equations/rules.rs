//! Rules of law and of makers that are numbers.

use model::tire::duals::MinimumSpacing;
use model::tire::roadside::{Service, flat_reading, hot_allowance, service};

use crate::CaseError;
use crate::inputs::Inputs;
use crate::outputs::Outputs;

type Evaluated = Result<Outputs, CaseError>;

pub fn flat(inputs: &Inputs<'_>) -> Evaluated {
    let reading = flat_reading(inputs.quantity("molded_maximum")?).map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("reading", reading))
}

pub fn hot(inputs: &Inputs<'_>) -> Evaluated {
    let allowance = hot_allowance(inputs.quantity("rated_load")?, inputs.quantity("speed")?)
        .ok_or_else(|| CaseError::refused("the table has no row for this speed"))?;
    Ok(Outputs::new().quantity("allowance", allowance))
}

/// 1 where the tire may be inflated on the truck, 0 where it must be deflated and inspected.
pub fn service_rule(inputs: &Inputs<'_>) -> Evaluated {
    let found = service(inputs.quantity("cold")?, inputs.quantity("recommended")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().number("may_inflate", f64::from(u8::from(found == Service::MayInflate))))
}

pub fn spacing_estimate(inputs: &Inputs<'_>) -> Evaluated {
    let metric = inputs.word("designation")? == "metric";
    let spacing = MinimumSpacing::estimated(inputs.quantity("section_width")?, metric);
    Ok(Outputs::new().quantity("spacing", spacing.value))
}
