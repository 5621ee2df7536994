//! Conditions other than those surveyed.

use model::haul_cycle::HaulCycle;
use quantity::{ColdPressure, Length, TemperatureDifference};

/// How conditions differ from the survey.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WhatIf {
    /// Loads of the laden state, as a multiple of those surveyed.
    pub load: f64,
    /// Bearing of the ground in what it advises at most, as a multiple: below 1 is wetter.
    pub bearing: f64,
    /// Ambient temperature, nominal, coldest and warmest alike.
    pub ambient: TemperatureDifference,
    /// Compressor delivery, as a multiple.
    pub delivery: f64,
    /// How much later than planned the driver calls every change.
    pub late: Length,
}

/// A condition outside what can be tried.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{what} of {value} is outside {low} to {high}; give one inside")]
pub struct WhatIfError {
    what: &'static str,
    value: f64,
    low: f64,
    high: f64,
}

impl Default for WhatIf {
    fn default() -> Self {
        Self {
            load: 1.0,
            bearing: 1.0,
            ambient: TemperatureDifference::ZERO,
            delivery: 1.0,
            late: Length::ZERO,
        }
    }
}

impl WhatIf {
    /// The conditions, checked.
    ///
    /// # Validity
    /// Load, bearing and delivery 0.2 to 3; ambient within 40 K; calls up to 20 km late or early.
    ///
    /// # Errors
    /// [`WhatIfError`] for a value outside that.
    pub fn checked(self) -> Result<Self, WhatIfError> {
        let ranges = [
            ("a load factor", self.load, 0.2, 3.0),
            ("a bearing factor", self.bearing, 0.2, 3.0),
            ("a change of temperature in kelvin", self.ambient.as_kelvin(), -40.0, 40.0),
            ("a delivery factor", self.delivery, 0.2, 3.0),
            ("a delay in kilometers", self.late.as_km(), -20.0, 20.0),
        ];
        match ranges.into_iter().find(|(_, value, low, high)| !(low..=high).contains(&value)) {
            Some((what, value, low, high)) => Err(WhatIfError { what, value, low, high }),
            None => Ok(self),
        }
    }

    /// The haul under these conditions.
    #[must_use]
    pub fn applied(&self, haul: &HaulCycle) -> HaulCycle {
        let mut haul = haul.clone();
        let laden = haul.laden_state;
        for group in &mut haul.combination.load_states[laden].groups {
            group.mass = group.mass * self.load;
        }
        for leg in &mut haul.route.legs {
            leg.ground_maximum = leg
                .ground_maximum
                .map(|advice| ColdPressure::from_kpa(advice.as_kpa() * self.bearing));
        }
        let compressor = &mut haul.combination.supply.compressor;
        compressor.displacement = compressor.displacement * self.delivery;
        let weather = &mut haul.weather;
        weather.ambient = weather.ambient + self.ambient;
        weather.coldest = weather.coldest + self.ambient;
        weather.warmest = weather.warmest + self.ambient;
        haul
    }
}
