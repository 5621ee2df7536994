//! How warm a rolling tire gets: rolling resistance against cooling by the wind of travel.

use quantity::{ColdPressure, Mass, Speed, Temperature, TemperatureDifference, Time};

use super::Tire;
use crate::source::Key;

/// The lumped heat balance and its scale.
pub const HEAT_BALANCE: Key = Key("tire-heat-balance");
/// Rolling resistance of truck tires against pressure.
pub const ROLLING_RESISTANCE_PRESSURE: Key = Key("rolling-resistance-pressure");
/// Temperatures of the contained air to warn and to stop at.
pub const AIR_HEAT_LIMITS: Key = Key("contained-air-heat");

/// Contained air this warm: slow down and find out why.
pub const WARN_AT: Temperature = Temperature::from_celsius(85.0);
/// Contained air this hot: stop.
pub const STOP_AT: Temperature = Temperature::from_celsius(100.0);

/// Cooling of a reference tire at [`REFERENCE_SPEED`], W/K.
const REFERENCE_COOLING: f64 = 102.0;
/// Load the reference tire carries.
const REFERENCE_LOAD: Mass = Mass::from_kg(2725.0);
const REFERENCE_SPEED: Speed = Speed::from_kmh(80.0);
/// Exponent of rolling resistance over pressure; -0.2 to -0.4 are seen.
const PRESSURE_EXPONENT: f64 = -0.3;
/// Under this share of the reference pressure the model is held where it is.
const LEAST_PRESSURE_RATIO: f64 = 0.1;

/// Why there is no rise to give.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum WarmUpError {
    /// A tire without usable ratings or rolling resistance.
    #[error(
        "tire '{tire}' has no usable rated load, rated pressure or rolling-resistance coefficient; \
         all must be above zero"
    )]
    Tire {
        /// Name of the tire.
        tire: String,
    },
    /// A negative load.
    #[error("a tire cannot carry {load}; give a load of zero or more")]
    Load {
        /// Load offered.
        load: Mass,
    },
    /// A pressure that is not above zero.
    #[error("rolling resistance at {pressure} is unknown; give a pressure above zero")]
    Pressure {
        /// Pressure offered.
        pressure: ColdPressure,
    },
    /// A negative speed.
    #[error("a speed of {speed} is below zero")]
    Speed {
        /// Speed offered.
        speed: Speed,
    },
}

/// Steady rise of the contained air over ambient.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rise {
    /// The rise.
    pub value: TemperatureDifference,
    /// Whether pressure, load or speed lie outside where the model was checked.
    pub extrapolated: bool,
}

/// How warm contained air is against the two limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum AirHeat {
    /// Under both.
    Usual,
    /// At [`WARN_AT`] or more.
    Warn,
    /// At [`STOP_AT`] or more.
    Stop,
}

/// Judges the temperature of the air in a tire.
///
/// # Validity
/// The air is cooler than the belt edges; tread rubber suffers from about 91 °C.
///
/// # Source
/// [`AIR_HEAT_LIMITS`]: an engineering choice, common practice.
pub fn judge(air: Temperature) -> AirHeat {
    if air >= STOP_AT {
        AirHeat::Stop
    } else if air >= WARN_AT {
        AirHeat::Warn
    } else {
        AirHeat::Usual
    }
}

/// Time constant of warming and cooling on the road.
///
/// # Validity
/// Truck tires, 40 to 60 min; worked out from the standard warm-up of 180 min, not measured.
///
/// # Source
/// [`HEAT_BALANCE`].
pub const fn time_constant() -> Time {
    Time::from_min(50.0)
}

/// The rise after some time at one pressure, load and speed, from a rise before:
/// `θ = θ_s + (θ_0 - θ_s) e^(-t/τ)`.
///
/// # Source
/// [`HEAT_BALANCE`].
#[must_use]
pub fn approach(
    before: TemperatureDifference,
    steady: TemperatureDifference,
    elapsed: Time,
) -> TemperatureDifference {
    steady + (before - steady) * (-(elapsed / time_constant())).exp()
}

/// Rolling resistance against that at a reference pressure: `(P/P_ref)^-0.3`.
///
/// # Validity
/// Hard road; exponent -0.2 to -0.4; checked down to half the reference pressure. On soft
/// ground the ground's share falls with pressure and outweighs this.
///
/// # Errors
/// [`WarmUpError::Pressure`] for pressures of zero or less.
///
/// # Source
/// [`ROLLING_RESISTANCE_PRESSURE`].
pub fn rolling_resistance_factor(
    pressure: ColdPressure,
    reference: ColdPressure,
) -> Result<f64, WarmUpError> {
    for pressure in [pressure, reference] {
        if pressure <= ColdPressure::ZERO {
            return Err(WarmUpError::Pressure { pressure });
        }
    }
    Ok(pressure.ratio_to(reference).powf(PRESSURE_EXPONENT))
}

/// The heat balance of one tire under one load, made ready for many pressures and speeds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WarmUp {
    /// Rise in kelvin at the reference pressure and 1 m/s.
    scale: f64,
    reference: ColdPressure,
    load_checked: bool,
}

impl WarmUp {
    /// Prepares the balance `θ = RRC L g v / hA(v)`, with `hA ∝ √v` and in proportion to the
    /// tire's rated load (dual where it has one).
    ///
    /// # Validity
    /// Truck tires on a hard road, no brake heat, 0 to 110 km/h. The scale is one point: a
    /// rise of 38 K at 2725 kg and 80 km/h; growing cooling with the rated load is an
    /// engineering choice.
    ///
    /// # Errors
    /// [`WarmUpError`] for a tire without ratings or a negative load.
    ///
    /// # Source
    /// [`HEAT_BALANCE`].
    pub fn new(tire: &Tire, load: Mass) -> Result<Self, WarmUpError> {
        let rated = tire.dual.unwrap_or(tire.single);
        let usable = rated.load > Mass::ZERO
            && tire.single.pressure > ColdPressure::ZERO
            && tire.rolling_resistance > 0.0
            && tire.rolling_resistance.is_finite();
        if !usable {
            return Err(WarmUpError::Tire { tire: tire.name.clone() });
        }
        if load < Mass::ZERO {
            return Err(WarmUpError::Load { load });
        }
        let rolling = tire.rolling_resistance * load.weight().as_n();
        let cooling_at_1_m_per_s =
            REFERENCE_COOLING * (rated.load / REFERENCE_LOAD) / REFERENCE_SPEED.as_m_per_s().sqrt();
        Ok(Self {
            scale: rolling / cooling_at_1_m_per_s,
            reference: tire.single.pressure,
            load_checked: load <= tire.single.load * 1.3,
        })
    }

    /// Steady rise at a cold pressure and a speed.
    ///
    /// # Validity
    /// Marked outside 0.4 to 1.2 of the rated pressure, over 110 km/h, or over 1.3 of the
    /// rated load. Under a tenth of the rated pressure the model says nothing; the value at a
    /// tenth is given, marked, and it is too low.
    pub fn rise(&self, pressure: ColdPressure, speed: Speed) -> Rise {
        let ratio = pressure.ratio_to(self.reference);
        let v = speed.as_m_per_s().max(0.0);
        let factor = ratio.max(LEAST_PRESSURE_RATIO).powf(PRESSURE_EXPONENT);
        Rise {
            value: TemperatureDifference::from_kelvin(self.scale * factor * v.sqrt()),
            extrapolated: !self.load_checked
                || !(0.4..=1.2).contains(&ratio)
                || !(0.0..=110.0 / 3.6 + 1e-9).contains(&speed.as_m_per_s()),
        }
    }
}

/// Steady rise of the contained air over ambient, every input checked.
///
/// # Validity
/// As [`WarmUp::new`] and [`WarmUp::rise`].
///
/// # Errors
/// [`WarmUpError`] for a tire without ratings, a negative load or speed, or no pressure.
///
/// # Source
/// [`HEAT_BALANCE`].
pub fn steady_rise(
    tire: &Tire,
    load: Mass,
    pressure: ColdPressure,
    speed: Speed,
) -> Result<Rise, WarmUpError> {
    if pressure <= ColdPressure::ZERO {
        return Err(WarmUpError::Pressure { pressure });
    }
    if speed < Speed::ZERO {
        return Err(WarmUpError::Speed { speed });
    }
    Ok(WarmUp::new(tire, load)?.rise(pressure, speed))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tire::{RatedPoint, fixture};

    fn reference_tire() -> Tire {
        let point =
            |kg| RatedPoint { load: Mass::from_kg(kg), pressure: ColdPressure::from_psi(120.0) };
        Tire {
            single: point(3000.0),
            dual: Some(point(2725.0)),
            rolling_resistance: 0.0065,
            ..fixture::tire_11r22_5()
        }
    }

    // 0.0065, 2725 kg, 80 km/h: 3.86 kW and, at 102 W/K, 38 K.
    #[test]
    fn worked_reference_rise() {
        let rise = steady_rise(
            &reference_tire(),
            Mass::from_kg(2725.0),
            ColdPressure::from_psi(120.0),
            Speed::from_kmh(80.0),
        )
        .unwrap();
        assert!((rise.value.as_kelvin() - 37.8).abs() < 0.1);
        assert!(!rise.extrapolated);
    }

    // Trade text: a 100 psi tire at 68 °F gains 10 to 15 psi on the road, which is 26 to 38 K.
    #[test]
    fn table_trade_gain_on_the_road() {
        let rise = steady_rise(
            &reference_tire(),
            Mass::from_kg(2200.0),
            ColdPressure::from_psi(100.0),
            Speed::from_kmh(90.0),
        )
        .unwrap();
        assert!((26.0..38.0).contains(&rise.value.as_kelvin()), "{}", rise.value);
    }

    // 45 psi at 40 km/h against 90 psi at 80 km/h, same load: ratio 0.87 worked by hand.
    #[test]
    fn worked_low_pressure_needs_the_speed_cap() {
        let warm = WarmUp::new(&reference_tire(), Mass::from_kg(1928.0)).unwrap();
        let rise = |psi, kmh| {
            warm.rise(ColdPressure::from_psi(psi), Speed::from_kmh(kmh)).value.as_kelvin()
        };
        assert!((rise(45.0, 40.0) / rise(90.0, 80.0) - 0.87).abs() < 0.005);
        assert!((rise(45.0, 80.0) / rise(90.0, 80.0) - 1.23).abs() < 0.005);
    }

    // Trade figures put rolling resistance at 0.8, 0.6 and 0.5 of the pressure at 1.07, 1.17, 1.23.
    #[test]
    fn worked_rolling_resistance() {
        let p = ColdPressure::from_psi;
        for (share, factor) in [(0.8, 1.07), (0.6, 1.17), (0.5, 1.23)] {
            let ours = rolling_resistance_factor(p(100.0 * share), p(100.0)).unwrap();
            assert!((ours - factor).abs() < 0.005);
        }
        assert!(rolling_resistance_factor(p(0.0), p(100.0)).is_err());
    }

    #[test]
    fn warming_is_95_percent_done_after_three_time_constants() {
        let k = TemperatureDifference::from_kelvin;
        let after = approach(k(0.0), k(38.0), time_constant() * 3.0).as_kelvin() / 38.0;
        assert!((after - 0.9502).abs() < 1e-4);
    }

    #[test]
    fn limits_are_met_at_their_value() {
        let c = Temperature::from_celsius;
        assert_eq!(judge(c(84.9)), AirHeat::Usual);
        assert_eq!(judge(c(85.0)), AirHeat::Warn);
        assert_eq!(judge(c(100.0)), AirHeat::Stop);
    }

    #[test]
    fn bad_input_is_refused_or_marked() {
        let tire = reference_tire();
        let p = ColdPressure::from_psi(90.0);
        let (kg, kmh) = (Mass::from_kg(2000.0), Speed::from_kmh(50.0));
        assert!(steady_rise(&tire, Mass::from_kg(-1.0), p, kmh).is_err());
        assert!(steady_rise(&tire, kg, ColdPressure::ZERO, kmh).is_err());
        assert!(steady_rise(&tire, kg, p, Speed::from_kmh(-1.0)).is_err());
        assert!(steady_rise(&tire, kg, ColdPressure::from_psi(10.0), kmh).unwrap().extrapolated);
        assert!(steady_rise(&tire, kg, p, Speed::from_kmh(120.0)).unwrap().extrapolated);
        let bare = Tire { rolling_resistance: 0.0, ..tire };
        assert!(WarmUp::new(&bare, kg).is_err());
    }

    proptest! {
        #[test]
        fn softer_faster_and_heavier_are_warmer(
            psi in 20.0..120.0f64, kmh in 1.0..110.0f64, kg in 200.0..3000.0f64,
        ) {
            let rise = |psi, kmh, kg| {
                WarmUp::new(&reference_tire(), Mass::from_kg(kg))
                    .unwrap()
                    .rise(ColdPressure::from_psi(psi), Speed::from_kmh(kmh))
                    .value
            };
            let here = rise(psi, kmh, kg);
            prop_assert!(rise(psi + 1.0, kmh, kg) < here);
            prop_assert!(rise(psi, kmh + 1.0, kg) > here);
            prop_assert!(rise(psi, kmh, kg + 10.0) > here);
        }
    }
}
