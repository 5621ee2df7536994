//! Rolling resistance and fuel of a leg against full pressure.

use model::ground::rolling_resistance::soft_ground;
use model::haul_cycle::HaulCycle;
use model::route::{Leg, Surface};
use model::tire::warm_up::rolling_resistance_factor;
use model::vehicle::AxleGroup;
use quantity::{ColdPressure, Length, Mass, Volume};

use super::band::{Band, Finding, NotAssessed};
use super::soil::cone_index;
use super::way::{Run, Ways};

/// Least and most exponent of the resistance of a tire over its pressure, as published.
const EXPONENTS: [f64; 2] = [-0.2, -0.4];

/// A group's tire at full pressure and in a way, with the mass the group carries.
pub struct Rolls<'a> {
    /// The group.
    pub group: &'a AxleGroup,
    /// Mass it carries.
    pub carried: Mass,
    /// At full pressure.
    pub full: ColdPressure,
    /// In this way.
    pub pressure: ColdPressure,
}

/// Resistance of a combination on a leg over that at full pressure, under the same load.
///
/// On pavement the tires alone count: `(p/p_full)^-0.3`, -0.2 to -0.4. On soft ground tires and
/// sinkage together, by the strength of the soil. On gravel and sand only the tires' share can
/// be told; what the surface gives back cannot, so the low end is no more than at full pressure.
///
/// # Errors
/// [`NotAssessed::Give`] the strength of soft ground.
///
/// # Source
/// `rolling-resistance-pressure`; `haul-road-penetration` on `maclaurin-1990`.
pub fn resistance(leg: &Leg, rolls: &[Rolls<'_>]) -> Finding<Band<f64>> {
    let parts: Vec<(f64, Band<f64>)> = rolls
        .iter()
        .map(|tire| Ok((tire.carried.as_kg(), of_group(leg, tire)?)))
        .collect::<Finding<_>>()?;
    Band::weighted_mean(&parts)
        .ok_or_else(|| NotAssessed::OutOfRange("nothing stands on the road".to_owned()))
}

fn of_group(leg: &Leg, tire: &Rolls<'_>) -> Finding<Band<f64>> {
    if tire.pressure == tire.full {
        return Ok(Band::exact(1.0));
    }
    let casing = rolling_resistance_factor(tire.pressure, tire.full)
        .map_err(|error| NotAssessed::refused(&error))?;
    let ratio = tire.pressure.ratio_to(tire.full);
    let casing = Band::spanning(casing, EXPONENTS.map(|exponent| ratio.powf(exponent)));
    match leg.surface {
        Surface::Paved | Surface::Sealed => Ok(casing),
        Surface::Gravel | Surface::Sand | Surface::SnowOrIce => {
            let share = (tire.group.tire.rolling_resistance / leg.rolling_resistance).min(1.0);
            let told = casing.map(|factor| 1.0 + share * (factor - 1.0));
            Ok(Band::spanning(told.middle, [told.low, told.high, 1.0]))
        }
        Surface::Earth | Surface::SoftGround => soft(leg, tire),
    }
}

/// Tires and sinkage at the low, expected and high strength of the soil.
fn soft(leg: &Leg, tire: &Rolls<'_>) -> Finding<Band<f64>> {
    let cone = cone_index(leg)?;
    let load = tire.carried / f64::from(tire.group.tires());
    let ratio = |cone_index| {
        let at = |pressure| {
            soft_ground(&tire.group.tire, load, pressure, cone_index)
                .map(|found| found.total())
                .map_err(|error| NotAssessed::refused(&error))
        };
        Ok(at(tire.pressure)? / at(tire.full)?)
    };
    Ok(Band::spanning(ratio(cone.value)?, [ratio(cone.low)?, ratio(cone.high)?]))
}

/// Fuel that a ratio of resistance adds on a leg; below zero it saves. Only where the engine pulls:
/// down a grade steeper than the resistance nothing is added.
///
/// # Source
/// `cfr-40-1066-210` for the force.
pub fn fuel_added(
    ways: &Ways<'_>,
    run: Run,
    leg: &Leg,
    gross: Mass,
    ratio: Band<f64>,
) -> Band<Volume> {
    let haul = ways.haul;
    let engine = &haul.combination.powertrain;
    let pulled = pulled_road(haul, run, leg);
    ratio.map(|ratio| {
        let force_n = gross.weight().as_n() * leg.rolling_resistance * (ratio - 1.0);
        let kwh = force_n * pulled.as_m() / engine.efficiency / 3.6e6;
        Volume::from_l(kwh * engine.fuel_l_per_kwh)
    })
}

/// Road of a leg on which rolling resistance is more than the grade gives.
fn pulled_road(haul: &HaulCycle, run: Run, leg: &Leg) -> Length {
    const STEP: Length = Length::from_m(100.0);
    let sign = if run.forward(haul) { 1.0 } else { -1.0 };
    let mut pulled = Length::ZERO;
    let mut from = leg.from;
    while from < leg.to {
        let to = (from + STEP).min(leg.to);
        let rise = haul.route.profile.elevation(to) - haul.route.profile.elevation(from);
        if sign * (rise / (to - from)) + leg.rolling_resistance > 0.0 {
            pulled += to - from;
        }
        from = to;
    }
    pulled
}
