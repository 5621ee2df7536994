//! Temperature as a point on the scale, and as an interval.

use crate::kind::{kind, linear};
use crate::{NotFinite, ParseError, Unit};

const ZERO_CELSIUS: f64 = 273.15;

/// A temperature, held above absolute zero.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Temperature(f64);

impl Temperature {
    /// Makes it from degrees Celsius.
    ///
    /// # Panics
    /// If the number is not finite or below absolute zero; use the `try_` form for foreign numbers.
    pub const fn from_celsius(value: f64) -> Self {
        Self::from_kelvin(value + ZERO_CELSIUS)
    }

    /// Makes it from kelvin.
    ///
    /// # Panics
    /// If the number is not finite or below absolute zero.
    pub const fn from_kelvin(value: f64) -> Self {
        assert!(value.is_finite() && value >= 0.0, "a temperature lies above absolute zero");
        Self(value)
    }

    /// Makes it from degrees Celsius that may be anything.
    ///
    /// # Errors
    /// [`NotFinite`] for NaN, infinities, and anything below absolute zero.
    pub fn try_from_celsius(value: f64) -> Result<Self, NotFinite> {
        let kelvin = value + ZERO_CELSIUS;
        if kelvin.is_finite() && kelvin >= 0.0 {
            Ok(Self(kelvin))
        } else {
            Err(NotFinite { value, kind: Self::KIND })
        }
    }

    /// Degrees Celsius.
    pub const fn as_celsius(self) -> f64 {
        self.0 - ZERO_CELSIUS
    }

    /// Degrees Fahrenheit.
    pub const fn as_fahrenheit(self) -> f64 {
        self.as_celsius() * 1.8 + 32.0
    }

    /// Kelvin.
    #[inline]
    pub const fn as_kelvin(self) -> f64 {
        self.0
    }

    /// The warmer of two.
    #[must_use]
    pub const fn max(self, other: Self) -> Self {
        Self(self.0.max(other.0))
    }

    /// The colder of two.
    #[must_use]
    pub const fn min(self, other: Self) -> Self {
        Self(self.0.min(other.0))
    }
}

impl Unit for Temperature {
    const KIND: &'static str = "temperature";
    const SYMBOLS: &'static [&'static str] = &["C", "F", "K"];

    fn from_unit(value: f64, symbol: &str) -> Option<Result<Self, NotFinite>> {
        let celsius = match symbol {
            "C" => value,
            "F" => (value - 32.0) / 1.8,
            "K" => value - ZERO_CELSIUS,
            _ => return None,
        };
        Some(Self::try_from_celsius(celsius))
    }

    fn in_unit(self, symbol: &str) -> Option<f64> {
        match symbol {
            "C" => Some(self.as_celsius()),
            "F" => Some(self.as_fahrenheit()),
            "K" => Some(self.as_kelvin()),
            _ => None,
        }
    }
}

impl std::str::FromStr for Temperature {
    type Err = ParseError;
    fn from_str(text: &str) -> Result<Self, ParseError> {
        crate::parse::parse(text)
    }
}

impl std::fmt::Display for Temperature {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} °C", (self.as_celsius() * 1e2).round() / 1e2)
    }
}

kind! {
    /// A difference of two temperatures.
    TemperatureDifference ("temperature difference") {
        "K" = from_kelvin, try_from_kelvin, as_kelvin, 1.0;
        "F" = from_fahrenheit, try_from_fahrenheit, as_fahrenheit, 1.0 / 1.8;
    }
}
linear!(TemperatureDifference);

impl std::ops::Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference::from_kelvin(self.0 - other.0)
    }
}

impl std::ops::Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self::from_kelvin(self.0 + difference.as_kelvin())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fahrenheit_meets_celsius_at_minus_forty() {
        let cold: Temperature = "-40F".parse().unwrap();
        assert!((cold.as_celsius() + 40.0).abs() < 1e-9);
        assert!((cold.as_fahrenheit() + 40.0).abs() < 1e-9);
    }

    #[test]
    fn below_absolute_zero_is_refused() {
        assert!("-300C".parse::<Temperature>().is_err());
    }
}
