//! The reference atmosphere in which free air is counted.

use quantity::{Density, Mass, Temperature, Volume};

use crate::source::Key;

/// Standard reference atmosphere: 100 kPa, 20 °C, 65 % relative humidity.
pub const SOURCE: Key = Key("iso-8778");

/// Reference pressure, Pa.
pub(super) const P0: f64 = 100e3;
/// Reference temperature, K.
pub(super) const T0: f64 = 293.15;
/// Density of reference air, kg/m³.
pub(super) const RHO0: f64 = 1.185;

/// Temperature of the reference atmosphere, 20 °C.
///
/// # Source
/// `iso-8778`
pub const REFERENCE_TEMPERATURE: Temperature = Temperature::from_kelvin(T0);

/// Density of air in the reference atmosphere, 1.185 kg/m³.
///
/// # Source
/// `iso-8778`
pub const REFERENCE_DENSITY: Density = Density::from_kg_per_m3(RHO0);

/// Mass of an amount of air given as its volume in the reference atmosphere.
#[must_use]
pub fn mass_of_free_air(volume: Volume) -> Mass {
    Mass::from_kg(volume.as_m3() * RHO0)
}
