//! Rules of law and of makers that are numbers.

use model::tire::designation::Designation;
use model::tire::duals::MinimumSpacing;
use model::tire::load_index::LoadIndex;
use model::tire::r54::r54_allowance;
use model::tire::roadside::{Service, flat_reading, hot_allowance, service};
use model::tire::speed_symbol::SpeedSymbol;
use model::tire::tkph::{Haulage, k1, site_tkph};

use crate::CaseError;
use crate::inputs::{Inputs, wrong};
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

pub fn load_index(inputs: &Inputs<'_>) -> Evaluated {
    let index = LoadIndex::new(whole(inputs, "index")?).map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("load", index.load()))
}

pub fn speed_symbol(inputs: &Inputs<'_>) -> Evaluated {
    let symbol: SpeedSymbol = inputs.word("symbol")?.parse().map_err(CaseError::refused)?;
    Ok(Outputs::new().quantity("speed", symbol.speed()))
}

pub fn r54(inputs: &Inputs<'_>) -> Evaluated {
    let index = whole(inputs, "load_index")?;
    let found = r54_allowance(index, inputs.word("symbol")?, inputs.quantity("speed")?)
        .map_err(CaseError::refused)?;
    Ok(Outputs::new().number("load_allowance_pct", found.load_pct))
}

pub fn nominal_diameter(inputs: &Inputs<'_>) -> Evaluated {
    let size: Designation = inputs.word("size")?.parse().map_err(CaseError::refused)?;
    let diameter = size
        .nominal_diameter()
        .ok_or_else(|| CaseError::refused("the designation fixes no diameter"))?;
    Ok(Outputs::new().quantity("diameter", diameter.value))
}

pub fn site(inputs: &Inputs<'_>) -> Evaluated {
    let site = site_tkph(Haulage {
        empty_load: inputs.quantity("empty_load")?,
        laden_load: inputs.quantity("laden_load")?,
        cycle_length: inputs.quantity("cycle_length")?,
        cycles: inputs.number("cycles")?,
        hours: inputs.quantity("hours")?,
        ambient: inputs.quantity("ambient")?,
    })
    .map_err(CaseError::refused)?;
    Ok(Outputs::new()
        .number("tkph", site.site.as_tkph())
        .quantity("mean_load", site.mean_load)
        .quantity("mean_speed", site.mean_speed))
}

pub fn distance_factor(inputs: &Inputs<'_>) -> Evaluated {
    let factor = k1(inputs.quantity("cycle_length")?).map_err(CaseError::refused)?;
    Ok(Outputs::new().number("factor", factor))
}

/// A whole number that is not negative.
fn whole(inputs: &Inputs<'_>, name: &str) -> Result<u16, CaseError> {
    let number = inputs.number(name)?;
    (0..=u16::MAX)
        .find(|whole| (f64::from(*whole) - number).abs() < f64::EPSILON)
        .ok_or_else(|| wrong(name, "is not a whole number"))
}
