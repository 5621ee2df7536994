//! Rolling resistance on hard and on soft ground, and the pressure at which it is least.

use quantity::{ColdPressure, Length, Mass, PressureDifference, Stress};

use super::Estimate;
use super::rut_soil::first_pass;
use super::wheel_pull::{SoilWheel, WheelPullError};
use crate::source::{Citation, Key, Standing};
use crate::tire::Tire;
use crate::tire::deflection::{DeflectionError, DeflectionLaw};
use crate::tire::warm_up::{WarmUpError, rolling_resistance_factor};

/// Two percent and 0.6 % for each centimeter of penetration.
pub const PENETRATION_RULE: Key = Key("haul-road-penetration");

/// Resistance for each centimeter the tire sinks in or the road gives way.
const PER_CM: f64 = 0.006;

/// Why there is no resistance.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ResistanceError {
    /// A negative penetration.
    #[error(
        "a penetration of {penetration} is below zero; give how far the tire sinks in or the road gives way"
    )]
    Penetration {
        /// Penetration offered.
        penetration: Length,
    },
    /// No range of pressures.
    #[error(
        "no pressure from {low} to {high} in steps of {step} can be tried; give a range above zero and a step of 1 kPa or more"
    )]
    Range {
        /// Low end.
        low: ColdPressure,
        /// High end.
        high: ColdPressure,
        /// Step.
        step: PressureDifference,
    },
    /// At no pressure of the range does the tire carry the load.
    #[error(
        "at none of the pressures can the tire carry {load}: it would come near its rim; raise the range"
    )]
    Overloaded {
        /// Load.
        load: Mass,
    },
    /// The deflection law refused.
    #[error(transparent)]
    Deflection(#[from] DeflectionError),
    /// The wheel is none.
    #[error(transparent)]
    Wheel(#[from] WheelPullError),
    /// The tire's own resistance is unknown.
    #[error(transparent)]
    Tire(#[from] WarmUpError),
}

/// Rolling resistance of a haul road over the weight: 2 % and 0.6 % for each centimeter of
/// penetration, from 1.5 % at the low end.
///
/// # Validity
/// Haul trucks; road flex counts as penetration. The pressure of the tire is not in it.
///
/// # Errors
/// [`ResistanceError::Penetration`] below zero.
///
/// # Source
/// [`PENETRATION_RULE`], read.
///
/// ```
/// use model::ground::rolling_resistance::haul_road;
/// use quantity::Length;
/// assert!((haul_road(Length::from_mm(30.0))?.value - 0.038).abs() < 1e-12);
/// # Ok::<(), model::ground::rolling_resistance::ResistanceError>(())
/// ```
pub fn haul_road(penetration: Length) -> Result<Estimate<f64>, ResistanceError> {
    if penetration < Length::ZERO {
        return Err(ResistanceError::Penetration { penetration });
    }
    let sunk = PER_CM * penetration.as_mm() / 10.0;
    Ok(Estimate {
        value: 0.02 + sunk,
        low: 0.015 + sunk,
        high: 0.02 + sunk,
        extrapolated: penetration > Length::from_mm(300.0),
        citation: Citation::of(PENETRATION_RULE, Standing::Read),
    })
}

/// Rolling resistance of a tire model on a hard road at a pressure, over the load.
///
/// # Validity
/// As [`rolling_resistance_factor`]; its reference is the single rated point.
///
/// # Errors
/// [`ResistanceError::Tire`] for a pressure or coefficient that is none.
///
/// # Source
/// `rolling-resistance-pressure`.
pub fn hard_road(tire: &Tire, pressure: ColdPressure) -> Result<f64, ResistanceError> {
    if !(tire.rolling_resistance.is_finite() && tire.rolling_resistance > 0.0) {
        return Err(WarmUpError::Tire { tire: tire.name.clone() }.into());
    }
    Ok(tire.rolling_resistance * rolling_resistance_factor(pressure, tire.single.pressure)?)
}

/// Resistance of one tire on soft ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoftResistance {
    /// Cold pressure.
    pub pressure: ColdPressure,
    /// In the tire, over the load.
    pub tire: f64,
    /// In the ground, over the load.
    pub ground: f64,
    /// Depth the tire sinks in at the first pass.
    pub sinkage: Length,
    /// Whether a part of it was asked outside where it holds.
    pub extrapolated: bool,
}

impl SoftResistance {
    /// Both together.
    pub fn total(&self) -> f64 {
        self.tire + self.ground
    }
}

/// Resistance of a tire under a load on soil of a cone index at one pressure: that of the tire, and
/// 0.6 % for each centimeter it sinks in.
///
/// # Validity
/// Fine-grained soil, first pass. Good for comparing pressures, not for a level.
///
/// # Errors
/// [`ResistanceError`]: a tire, load or pressure that the laws refuse.
///
/// # Source
/// [`PENETRATION_RULE`] on the sinkage of `maclaurin-1990`; `rolling-resistance-pressure`.
pub fn soft_ground(
    tire: &Tire,
    load: Mass,
    pressure: ColdPressure,
    cone_index: Stress,
) -> Result<SoftResistance, ResistanceError> {
    let law = DeflectionLaw::of(tire)?;
    soft_ground_by(&law, tire, load, pressure, cone_index)
}

fn soft_ground_by(
    law: &DeflectionLaw,
    tire: &Tire,
    load: Mass,
    pressure: ColdPressure,
    cone_index: Stress,
) -> Result<SoftResistance, ResistanceError> {
    let pressed = law.deflection(load, pressure)?;
    let wheel = SoilWheel::new(
        load,
        cone_index,
        tire.section_width,
        tire.diameter,
        pressed.share_of_section_height,
    )?
    .with_section_height(law.section_height())?;
    let sinkage = first_pass(&wheel);
    Ok(SoftResistance {
        pressure,
        tire: hard_road(tire, pressure)?,
        ground: PER_CM * sinkage.value.as_mm() / 10.0,
        sinkage: sinkage.value,
        extrapolated: pressed.extrapolated || sinkage.extrapolated,
    })
}

/// Pressures to try.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressureRange {
    /// Lowest, such as the minimum of the window.
    pub low: ColdPressure,
    /// Highest, such as the maximum of the window.
    pub high: ColdPressure,
    /// Step of the controller.
    pub step: PressureDifference,
}

/// The pressure of least resistance on soft ground, with all that were tried.
#[derive(Debug, Clone, PartialEq)]
pub struct Optimum {
    /// The best.
    pub best: SoftResistance,
    /// Whether it lies at an end of the range, so that a wider range might do better.
    pub at_end: bool,
    /// Every pressure that the tire carries the load at, in rising order.
    pub tried: Vec<SoftResistance>,
    /// Pressures of the range left out because the tire would come near its rim, or bends less than
    /// the wheel's equation holds for.
    pub left_out: usize,
}

/// Searches a range of pressures for the least resistance on soft ground; of equals, the highest pressure.
///
/// It says where resistance is least, not what the tire may run at: the range is to be that of the window.
///
/// # Validity
/// As [`soft_ground`].
///
/// # Errors
/// [`ResistanceError`]: no range, a load at which no pressure of it holds the tire off its rim.
///
/// # Source
/// As [`soft_ground`].
pub fn optimum_pressure(
    tire: &Tire,
    load: Mass,
    cone_index: Stress,
    range: PressureRange,
) -> Result<Optimum, ResistanceError> {
    let PressureRange { low, high, step } = range;
    let steps = (high - low) / step;
    if low <= ColdPressure::ZERO
        || high < low
        || step < PressureDifference::from_kpa(1.0)
        || steps > 5000.0
    {
        return Err(ResistanceError::Range { low, high, step });
    }
    let law = DeflectionLaw::of(tire)?;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 5000")]
    let count = (steps + 1e-9).floor() as usize;
    let (mut tried, mut left_out, mut stiff) = (Vec::with_capacity(count + 1), 0, None);
    for i in 0..=count {
        match soft_ground_by(&law, tire, load, low + step * i as f64, cone_index) {
            Ok(found) => tried.push(found),
            Err(ResistanceError::Deflection(DeflectionError::NearRim { .. })) => left_out += 1,
            Err(ResistanceError::Wheel(error @ WheelPullError::Deflection { .. })) => {
                left_out += 1;
                stiff = Some(error.into());
            }
            Err(other) => return Err(other),
        }
    }
    let best = tried
        .iter()
        .rev()
        .min_by(|a, b| a.total().total_cmp(&b.total()))
        .copied()
        .ok_or_else(|| stiff.unwrap_or(ResistanceError::Overloaded { load }))?;
    let at_end = tried.first().is_some_and(|first| first.pressure == best.pressure)
        || tried.last().is_some_and(|last| last.pressure == best.pressure);
    Ok(Optimum { best, at_end, tried, left_out })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::Force;

    use super::*;
    use crate::tire::fixture;

    fn kpa(value: f64) -> ColdPressure {
        ColdPressure::from_kpa(value)
    }

    fn range() -> PressureRange {
        PressureRange { low: kpa(150.0), high: kpa(800.0), step: PressureDifference::from_kpa(5.0) }
    }

    fn load() -> Mass {
        Force::from_kn(18.9).as_mass()
    }

    fn optimum(ci: f64) -> Optimum {
        optimum_pressure(&fixture::tire_11r22_5(), load(), Stress::from_kpa(ci), range()).unwrap()
    }

    // Haul-truck maker's text: 2 % and 1.5 % an inch.
    #[test]
    fn table_penetration_rule() {
        let inch = haul_road(Length::from_in(1.0)).unwrap();
        assert!((inch.value - 0.035).abs() < 0.0003);
        assert!((haul_road(Length::ZERO).unwrap().value - 0.02).abs() < 1e-12);
        assert!(haul_road(Length::from_mm(-1.0)).is_err());
    }

    #[test]
    fn hard_roads_resist_less_at_more_pressure() {
        let tire = fixture::tire_11r22_5();
        let at = |p| hard_road(&tire, kpa(p)).unwrap();
        assert!((at(720.0) - tire.rolling_resistance).abs() < 1e-12);
        assert!(at(400.0) > at(720.0));
        assert!(hard_road(&tire, ColdPressure::ZERO).is_err());
        let unknown = Tire { rolling_resistance: f64::NAN, ..tire };
        assert!(hard_road(&unknown, kpa(720.0)).is_err());
    }

    #[test]
    fn soft_ground_has_its_optimum_low_and_hard_ground_high() {
        let (soft, firm, hard) = (optimum(500.0), optimum(1500.0), optimum(8000.0));
        assert!(soft.best.pressure < firm.best.pressure);
        assert!(firm.best.pressure < hard.best.pressure);
        assert!(soft.best.extrapolated);
        assert_eq!(soft.tried.len() + soft.left_out, 131);
    }

    #[test]
    fn a_pressure_too_low_for_the_load_is_left_out_and_counted() {
        let low = PressureRange { low: kpa(60.0), ..range() };
        let of = |kn| {
            let load = Force::from_kn(kn).as_mass();
            optimum_pressure(&fixture::tire_11r22_5(), load, Stress::from_kpa(900.0), low)
        };
        assert!(of(22.0).unwrap().left_out > 0);
        assert!(matches!(of(200.0), Err(ResistanceError::Overloaded { .. })));
    }

    #[test]
    fn a_pressure_too_hard_for_the_load_is_left_out_too() {
        let of = |kn, low| {
            let hard = PressureRange { low: kpa(low), ..range() };
            let load = Force::from_kn(kn).as_mass();
            optimum_pressure(&fixture::tire_11r22_5(), load, Stress::from_kpa(900.0), hard)
        };
        let found = of(4.0, 150.0).unwrap();
        assert!(found.left_out > 0 && !found.tried.is_empty());
        assert!(matches!(of(4.0, 800.0), Err(ResistanceError::Wheel(_))));
    }

    #[test]
    fn no_range_is_refused() {
        let of = |low, high, step| {
            let range = PressureRange {
                low: kpa(low),
                high: kpa(high),
                step: PressureDifference::from_kpa(step),
            };
            optimum_pressure(&fixture::tire_11r22_5(), load(), Stress::from_kpa(900.0), range)
        };
        assert!(of(0.0, 700.0, 5.0).is_err());
        assert!(of(700.0, 300.0, 5.0).is_err());
        assert!(of(300.0, 700.0, 0.0).is_err());
        assert!(of(300.0, 300.0, 5.0).unwrap().at_end);
    }

    proptest! {
        #[test]
        fn no_tried_pressure_beats_the_best(ci in 400.0..5000.0f64) {
            let found = optimum(ci);
            for other in &found.tried {
                prop_assert!(other.total() >= found.best.total());
            }
        }

        #[test]
        fn lower_pressure_sinks_less(ci in 400.0..5000.0f64, p in 250.0..700.0f64) {
            let at = |p| soft_ground(&fixture::tire_11r22_5(), load(), kpa(p), Stress::from_kpa(ci)).unwrap();
            prop_assert!(at(p).ground < at(p + 50.0).ground);
            prop_assert!(at(p).tire > at(p + 50.0).tire);
        }
    }
}
