//! What a haul costs, against tables of engineering economy.

use crate::CaseError;
use crate::inputs::Inputs;
use crate::outputs::Outputs;

pub(super) fn capital_recovery(inputs: &Inputs<'_>) -> Result<Outputs, CaseError> {
    let factor = plan::cost::capital_recovery(inputs.number("interest")?, inputs.number("years")?);
    Ok(Outputs::new().number("factor", factor))
}
