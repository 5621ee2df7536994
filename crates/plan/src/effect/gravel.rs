//! What a way to run does to an aggregate road, against full pressure.

use model::ground::gravel::{
    AggregateRoad, GravelError, pressure_effect, rut, thickness_for_same_rut,
};
use model::ground::strength::Cbr;
use model::ground::washboard;
use model::route::Leg;
use quantity::{ColdPressure, Length, Mass};

use super::band::{Band, Finding, NotAssessed};

/// An aggregate road against the same road under full pressure.
#[derive(Debug, Clone, PartialEq)]
pub struct GravelEffect {
    /// Rut after the same passes over that at full pressure: least by the equation alone, expected
    /// with its gain cut at what was measured, most where trials found no difference.
    pub rut: Band<f64>,
    /// Passes to the same rut over those at full pressure.
    pub passes: Band<f64>,
    /// Whether the gain was cut.
    pub capped: bool,
    /// Thickness of the aggregate that gives the same rut, where it is told what lies there.
    pub thickness: Option<Thickness>,
}

/// Aggregate now, and what would do.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thickness {
    /// What lies there.
    pub now: Length,
    /// What gives the same rut, by the equation alone.
    pub same_rut: Length,
}

/// A tire and what it holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wheel {
    /// Load.
    pub load: Mass,
    /// Cold pressure.
    pub pressure: ColdPressure,
}

/// What one tire does to the aggregate of a leg against another.
///
/// # Validity
/// A ratio; the depth itself means nothing before it is set against a rut seen there.
///
/// # Errors
/// [`NotAssessed::OutOfRange`] for pressures the equation refuses.
///
/// # Source
/// `barber-1978` from memory, `shalaby-reggin-2002` for the cap, the trials for the end without a gain.
pub fn gravel_effect(leg: &Leg, full: Wheel, wheel: Wheel) -> Finding<GravelEffect> {
    let refused = |error: GravelError| NotAssessed::refused(&error);
    let by_pressure = pressure_effect(full.pressure, wheel.pressure).map_err(refused)?;
    let (by_load, exponent) = load_ratio(full, wheel).map_err(refused)?;
    let passes_by_load = by_load.powf(-1.0 / exponent);
    let rut = Band::spanning(
        by_pressure.rut_ratio * by_load,
        // Trials that found no difference speak of pressure, not of load.
        [by_pressure.uncapped_rut_ratio * by_load, by_load],
    );
    let passes = Band::spanning(
        by_pressure.passes_ratio * passes_by_load,
        [by_pressure.uncapped_passes_ratio * passes_by_load, passes_by_load],
    );
    let aggregate = leg.ground.as_ref().and_then(|ground| ground.aggregate);
    let thickness = aggregate.and_then(|aggregate| {
        let now = aggregate.thickness;
        // Outside the equation's thickness there is no such number; the ratio above stands.
        let same_rut = thickness_for_same_rut(now, full.pressure, wheel.pressure).ok()?;
        Some(Thickness { now, same_rut })
    });
    Ok(GravelEffect { rut, passes, capped: by_pressure.capped, thickness })
}

/// Rut by load alone, and the exponent of the passes. The road cancels out of both, so any will do.
fn load_ratio(full: Wheel, wheel: Wheel) -> Result<(f64, f64), GravelError> {
    let cbr = |pct| Cbr::from_pct(pct).expect("within its range");
    let road = AggregateRoad { thickness: Length::from_in(10.0), top: cbr(60.0), bottom: cbr(5.0) };
    let at = |load, passes| rut(&road, load, full.pressure, passes).map(|rut| rut.value);
    let (few, many) = (at(full.load, 100.0)?, at(full.load, 10_000.0)?);
    Ok((at(wheel.load, 100.0)? / few, (many / few).ln() / 100_f64.ln()))
}

/// Whether an empty leg is likely to corrugate, from the deflections empty and laden.
///
/// # Errors
/// As the deflections, or [`NotAssessed::OutOfRange`].
///
/// # Source
/// `washboard-screen`, ours; `grau-1991`.
pub fn washboard(laden: &Finding<f64>, empty: &Finding<f64>) -> Finding<bool> {
    let (laden, empty) = (laden.clone()?, empty.clone()?);
    let found = washboard::empty_leg(laden, empty).map_err(|error| NotAssessed::refused(&error))?;
    Ok(found.likely)
}
