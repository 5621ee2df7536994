//! The pressure at which a tire rolls easiest on soft ground, looked for in its window alone.

use model::ground::rolling_resistance::{PressureRange, optimum_pressure, soft_ground};
use model::route::Leg;
use model::vehicle::AxleGroup;
use quantity::ColdPressure;

use super::band::{Band, Finding, NotAssessed};
use super::soil::{cone_index, is_soft};
use super::tire::OnTire;
use super::way::{Run, Way, Ways};

/// Where the tires of a group roll easiest: softer, and the tire's own loss grows; harder, and it
/// sinks in further.
#[derive(Debug, Clone, PartialEq)]
pub struct LeastResistance {
    /// The pressure, from the weak end of the soil's strength to the strong one.
    pub pressure: Band<ColdPressure>,
    /// Whether the expected one is the lowest of the window, so that only the tire's limits stop it.
    pub at_lowest: bool,
    /// Resistance at the pressure held over the least, at the expected strength.
    pub held_over_least: f64,
    /// Whether a part of it was asked outside where the laws hold.
    pub extrapolated: bool,
}

/// Least resistance in the window of the plan's rung on a soft leg; `None` on other ground, in other
/// ways and for a group whose pressure is not controlled or has no window.
///
/// # Validity
/// Fine-grained soil, first pass; for comparing pressures, not for a level.
///
/// # Errors
/// [`NotAssessed::Give`] the strength of the soil.
///
/// # Source
/// `haul-road-penetration` on `maclaurin-1990`; `rolling-resistance-pressure`.
pub(super) fn least_resistance(
    ways: &Ways<'_>,
    run: Run,
    leg: (usize, &Leg),
    group: &AxleGroup,
    tire: &OnTire,
) -> Option<Finding<LeastResistance>> {
    let (leg_index, leg) = leg;
    let channel = group.channel?;
    if !is_soft(leg.surface) {
        return None;
    }
    let window = ways.cell(Way::Plan, run, leg_index, channel)?.window.as_ref()?;
    let range = PressureRange {
        low: window.governing_minimum().pressure,
        high: window.governing_maximum().pressure,
        step: ways.haul.combination.controller.step,
    };
    (range.low <= range.high).then(|| within(range, leg, group, tire))
}

fn within(
    range: PressureRange,
    leg: &Leg,
    group: &AxleGroup,
    tire: &OnTire,
) -> Finding<LeastResistance> {
    let cone = cone_index(leg)?;
    let best = |cone_index| {
        optimum_pressure(&group.tire, tire.load, cone_index, range)
            .map(|found| found.best)
            .map_err(|error| NotAssessed::refused(&error))
    };
    let (weak, expected, strong) = (best(cone.low)?, best(cone.value)?, best(cone.high)?);
    let held = soft_ground(&group.tire, tire.load, tire.pressure, cone.value)
        .map_err(|error| NotAssessed::refused(&error))?;
    let ends = [weak.pressure, strong.pressure];
    Ok(LeastResistance {
        pressure: Band {
            low: ends.into_iter().fold(expected.pressure, ColdPressure::min),
            middle: expected.pressure,
            high: ends.into_iter().fold(expected.pressure, ColdPressure::max),
        },
        at_lowest: expected.pressure == range.low,
        held_over_least: held.total() / expected.total(),
        extrapolated: expected.extrapolated,
    })
}
