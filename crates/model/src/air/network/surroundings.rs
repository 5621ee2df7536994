//! What acts on the network from outside while it is advanced.

use quantity::{AbsolutePressure, RotationalSpeed, Temperature, VolumeFlow};

use super::super::reference_air::{P0, T0};
use super::{MAX_CHANNELS, Network};

/// What acts on the network from outside; constant over one advance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surroundings {
    /// Engine speed.
    pub engine_speed: RotationalSpeed,
    /// Share of full engine power now, 0 to 1, for boost.
    pub engine_load: f64,
    /// Ambient pressure.
    pub ambient: AbsolutePressure,
    /// Temperature of the air drawn in, and of the air in the reservoirs, which cools to it.
    pub temperature: Temperature,
    /// What the brakes and leaks take, as free air at ambient pressure.
    pub brake_draw: VolumeFlow,
    /// Air temperature in the tires of each channel.
    pub tire_temperature: [Temperature; MAX_CHANNELS],
}

/// Numbers that follow from network and surroundings together, in SI units.
///
/// Flows are volumes in the reference atmosphere a second; a gain is the rise of a
/// vessel's pressure for a cubic meter of it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Air {
    pub(super) ambient: f64,
    pub(super) temperature: f64,
    /// Flow the compressor would make at a volumetric efficiency of 1.
    pub(super) swept: f64,
    pub(super) per_inlet: f64,
    pub(super) brakes: f64,
    pub(super) service_gain: f64,
    pub(super) reserve_gain: f64,
}

impl Air {
    pub(super) fn of(network: &Network, around: &Surroundings) -> Self {
        let ambient = around.ambient.as_kpa() * 1e3;
        let temperature = around.temperature.as_kelvin();
        let load = around.engine_load.clamp(0.0, 1.0);
        let inlet = network.compressor.inlet_pressure(around.ambient, load).as_kpa() * 1e3;
        let density = T0 / (P0 * temperature);
        let warmth = P0 / T0 * temperature;
        let turns = around.engine_speed.as_per_s().max(0.0) * network.compressor.speed_ratio;
        Self {
            ambient,
            temperature,
            swept: network.compressor.displacement.as_m3() * turns * inlet * density,
            per_inlet: 1.0 / inlet,
            brakes: around.brake_draw.as_m3_per_s().max(0.0) * ambient * density,
            service_gain: warmth / network.service_volume,
            reserve_gain: network.reserve_volume.map_or(0.0, |volume| warmth / volume),
        }
    }
}
