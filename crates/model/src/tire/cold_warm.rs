//! One tire's pressure at two temperatures and altitudes: the gas law at constant volume.
//!
//! Rules speak of cold tires, a controller reads warm ones. Both are gauge pressures, so the
//! ambient pressure they are counted from is always named.

use quantity::{AbsolutePressure, ColdPressure, GaugePressure, Length, Temperature};

use crate::source::Key;

/// The international standard atmosphere.
pub const ISO_2533: Key = Key("iso-2533");
/// The gas law for a sealed volume.
pub const GAS_LAW: Key = Key("ideal-gas-law");

/// Why conditions or an altitude are refused.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ConditionsError {
    /// Tire air colder or hotter than any in service.
    #[error("tire air at {temperature} is outside -60 to 200 °C")]
    Temperature {
        /// Temperature offered.
        temperature: Temperature,
    },
    /// Ambient pressure that no road has.
    #[error("an ambient pressure of {ambient} (absolute) is outside 40 to 110 kPa")]
    Ambient {
        /// Pressure offered.
        ambient: AbsolutePressure,
    },
    /// An altitude that no road has.
    #[error("an altitude of {altitude} is outside -500 to 6000 m")]
    Altitude {
        /// Altitude offered.
        altitude: Length,
    },
}

/// Ambient pressure at an altitude in the standard atmosphere.
///
/// # Validity
/// -500 to 6000 m above sea level; weather moves the true value by some 3 kPa.
///
/// # Errors
/// [`ConditionsError::Altitude`] outside that range.
///
/// # Source
/// [`ISO_2533`], troposphere; formula from memory.
///
/// ```
/// use model::tire::cold_warm::ambient_pressure;
/// use quantity::Length;
/// assert!((ambient_pressure(Length::from_m(1500.0))?.as_kpa() - 84.56).abs() < 0.01);
/// # Ok::<(), model::tire::cold_warm::ConditionsError>(())
/// ```
pub fn ambient_pressure(altitude: Length) -> Result<AbsolutePressure, ConditionsError> {
    let h = altitude.as_m();
    if !(-500.0..=6000.0).contains(&h) {
        return Err(ConditionsError::Altitude { altitude });
    }
    Ok(AbsolutePressure::from_kpa(101.325 * (1.0 - 2.25577e-5 * h).powf(5.25588)))
}

/// Temperature of the air in a tire, and the pressure a gauge on it counts from.
///
/// A vented gauge counts from the ambient pressure around it; for a sealed one give the
/// pressure sealed into it, wherever the truck stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    temperature: Temperature,
    ambient: AbsolutePressure,
}

impl Conditions {
    /// Conditions from a temperature of the air in the tire and an ambient pressure.
    ///
    /// # Errors
    /// [`ConditionsError`] outside -60 to 200 °C or 40 to 110 kPa.
    pub fn new(
        temperature: Temperature,
        ambient: AbsolutePressure,
    ) -> Result<Self, ConditionsError> {
        if !(-60.0..=200.0).contains(&temperature.as_celsius()) {
            return Err(ConditionsError::Temperature { temperature });
        }
        if !(40.0..=110.0).contains(&ambient.as_kpa()) {
            return Err(ConditionsError::Ambient { ambient });
        }
        Ok(Self { temperature, ambient })
    }

    /// Conditions in the standard atmosphere.
    ///
    /// # Errors
    /// [`ConditionsError`] for a temperature or altitude outside the ranges.
    pub fn at_altitude(
        temperature: Temperature,
        altitude: Length,
    ) -> Result<Self, ConditionsError> {
        Self::new(temperature, ambient_pressure(altitude)?)
    }

    /// The same place with the tire at another temperature.
    ///
    /// # Errors
    /// [`ConditionsError::Temperature`] outside -60 to 200 °C.
    pub fn with_temperature(self, temperature: Temperature) -> Result<Self, ConditionsError> {
        Self::new(temperature, self.ambient)
    }

    /// Temperature of the air in the tire.
    pub fn temperature(self) -> Temperature {
        self.temperature
    }

    /// Pressure the gauge counts from.
    pub fn ambient(self) -> AbsolutePressure {
        self.ambient
    }
}

/// What a gauge reads on the same air after the conditions change:
/// `(P2 + A2) / T2 = (P1 + A1) / T1`.
///
/// # Validity
/// Sealed tire, constant volume: warming and deflection move the volume by less than 3 %.
///
/// # Source
/// [`GAS_LAW`].
pub fn carried_over(reading: GaugePressure, from: Conditions, to: Conditions) -> GaugePressure {
    let t1 = from.temperature.as_kelvin();
    let t2 = to.temperature.as_kelvin();
    let p1 = reading.to_absolute(from.ambient);
    p1.scaled(t2 / t1).to_gauge(to.ambient)
}

/// What a gauge reads now on a tire whose cold pressure is known at the reference conditions.
///
/// # Validity
/// As [`carried_over`].
///
/// # Source
/// [`GAS_LAW`].
///
/// ```
/// use model::tire::cold_warm::{Conditions, as_read};
/// use quantity::{ColdPressure, Length, Temperature};
/// let at = |c, m| Conditions::at_altitude(Temperature::from_celsius(c), Length::from_m(m));
/// let now = as_read(ColdPressure::from_kpa(480.0), at(20.0, 300.0)?, at(-10.0, 1500.0)?);
/// assert!((now.as_kpa() - 434.1).abs() < 0.1);
/// # Ok::<(), model::tire::cold_warm::ConditionsError>(())
/// ```
pub fn as_read(cold: ColdPressure, reference: Conditions, now: Conditions) -> GaugePressure {
    carried_over(cold.at_reference(), reference, now)
}

/// The cold pressure at the reference conditions of a tire read now.
///
/// # Validity
/// As [`carried_over`].
///
/// # Source
/// [`GAS_LAW`].
pub fn as_cold(reading: GaugePressure, now: Conditions, reference: Conditions) -> ColdPressure {
    ColdPressure::read_at_reference(carried_over(reading, now, reference))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn at(celsius: f64, m: f64) -> Conditions {
        Conditions::at_altitude(Temperature::from_celsius(celsius), Length::from_m(m)).unwrap()
    }

    // ISO 2533 standard atmosphere, static pressure: 1000 m 898.76 hPa, 2000 m 795.01 hPa,
    // 3000 m 701.21 hPa, 5000 m 540.48 hPa (values recalled).
    #[test]
    fn table_standard_atmosphere() {
        for (m, kpa) in
            [(0.0, 101.325), (1000.0, 89.876), (2000.0, 79.501), (3000.0, 70.121), (5000.0, 54.048)]
        {
            let p = ambient_pressure(Length::from_m(m)).unwrap().as_kpa();
            assert!((p - kpa).abs() < 0.03, "{m} m: {p}");
        }
    }

    #[test]
    fn worked_cold_and_altitude() {
        let cold = ColdPressure::from_kpa(480.0);
        let read = |from, to| as_read(cold, from, to).as_kpa();
        assert!((read(at(20.0, 300.0), at(-10.0, 300.0)) - 420.9).abs() < 0.1);
        assert!((read(at(20.0, 300.0), at(-10.0, 1500.0)) - 434.1).abs() < 0.1);
        assert!((read(at(20.0, 0.0), at(20.0, 1500.0)) - 496.8).abs() < 0.1);
        let warm = as_read(ColdPressure::from_kpa(690.0), at(20.0, 0.0), at(58.0, 0.0));
        assert!((warm.as_kpa() - 792.6).abs() < 0.1);
        let set_hot = as_cold(GaugePressure::from_psi(45.0), at(60.0, 0.0), at(20.0, 0.0));
        assert!((set_hot.as_psi() - 37.8).abs() < 0.05);
    }

    // Trade text: truck tires gain or lose about 2 psi for 10 °F.
    #[test]
    fn table_two_psi_for_ten_fahrenheit() {
        let warm =
            as_read(ColdPressure::from_psi(100.0), at(20.0, 0.0), at(20.0 + 10.0 / 1.8, 0.0));
        assert!((warm.as_psi() - 102.0).abs() < 0.3);
    }

    #[test]
    fn a_sealed_gauge_ignores_altitude() {
        let sealed = at(20.0, 0.0);
        let cold = ColdPressure::from_kpa(480.0);
        assert!((as_read(cold, sealed, sealed).as_kpa() - 480.0).abs() < 1e-9);
    }

    #[test]
    fn impossible_conditions_are_refused() {
        assert!(ambient_pressure(Length::from_m(7000.0)).is_err());
        let sea = AbsolutePressure::from_kpa(101.0);
        assert!(Conditions::new(Temperature::from_celsius(-80.0), sea).is_err());
        assert!(
            Conditions::new(Temperature::from_celsius(20.0), AbsolutePressure::from_kpa(700.0))
                .is_err()
        );
    }

    proptest! {
        #[test]
        fn cold_and_read_turn_round(
            kpa in 50.0..1000.0f64, c1 in -50.0..60.0f64, c2 in -50.0..150.0f64,
            m1 in 0.0..5000.0f64, m2 in 0.0..5000.0f64,
        ) {
            let cold = ColdPressure::from_kpa(kpa);
            let back = as_cold(as_read(cold, at(c1, m1), at(c2, m2)), at(c2, m2), at(c1, m1));
            prop_assert!((back.as_kpa() - kpa).abs() < 1e-8);
        }

        #[test]
        fn warmer_reads_higher(kpa in 50.0..1000.0f64, a in -50.0..150.0f64, b in -50.0..150.0f64) {
            prop_assume!((a - b).abs() > 0.01);
            let read = |c| as_read(ColdPressure::from_kpa(kpa), at(20.0, 0.0), at(c, 0.0));
            prop_assert!(read(a.min(b)) < read(a.max(b)));
        }
    }
}
