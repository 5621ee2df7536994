//! Water that the compressor takes in with the air.

use quantity::{Mass, Temperature, Volume};

use crate::source::Key;

/// Saturation pressure of water over water.
pub const SOURCE: Key = Key("wmo-8-magnus");

/// Relative humidity is a share from 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum HumidityError {
    /// Not a share.
    #[error("relative humidity {0} must be from 0 to 1")]
    Share(f64),
    /// The formula for saturation pressure does not reach there.
    #[error("air temperature {0} is outside -45 to 60 °C")]
    Temperature(Temperature),
}

/// Water that comes in with an amount of free air.
///
/// # Validity
/// −45 to 60 °C, humidity over water from 0 to 1.
///
/// # Errors
/// [`HumidityError`] outside that.
///
/// # Source
/// `wmo-8-magnus`, from memory.
pub fn water_taken_in(
    free_air: Volume,
    temperature: Temperature,
    relative_humidity: f64,
) -> Result<Mass, HumidityError> {
    /// Gas constant of water vapor, J/(kg K).
    const R_V: f64 = 461.5;
    if !(0.0..=1.0).contains(&relative_humidity) {
        return Err(HumidityError::Share(relative_humidity));
    }
    let t = temperature.as_celsius();
    if !(-45.0..=60.0).contains(&t) {
        return Err(HumidityError::Temperature(temperature));
    }
    let e_w = 611.2 * (17.62 * t / (243.12 + t)).exp();
    let vapor = relative_humidity * e_w / (R_V * temperature.as_kelvin());
    Ok(Mass::from_kg(vapor * free_air.as_m3()))
}

#[cfg(test)]
mod tests {
    use super::*;

    // 1 m³ at 20 °C and 65 % carries 11.2 g; 18 tires from 45 to 100 psi take 7.6 m³, 85 g.
    #[test]
    fn worked_water_in_free_air() {
        let t = Temperature::from_celsius(20.0);
        let water = |m3| water_taken_in(Volume::from_m3(m3), t, 0.65).unwrap().as_kg() * 1e3;
        assert!((water(1.0) - 11.2).abs() < 0.05, "{}", water(1.0));
        assert!((water(7.6) - 85.0).abs() < 0.5);
        assert!(water_taken_in(Volume::from_m3(1.0), t, 65.0).is_err());
    }
}
