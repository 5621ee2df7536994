//! Engine and driveline, as far as speed, fuel and air depend on them.

use quantity::{Power, RotationalSpeed, VolumeFlow};

/// Engine and driveline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Powertrain {
    /// Rated engine power.
    pub rated_power: Power,
    /// Power taken by fan, pumps and steering.
    pub accessory_power: Power,
    /// Driveline efficiency.
    pub efficiency: f64,
    /// Engine speed while it pulls.
    pub working_speed: RotationalSpeed,
    /// Engine speed downhill, on the engine brake or idling.
    pub descent_speed: RotationalSpeed,
    /// Engine speed at idle.
    pub idle_speed: RotationalSpeed,
    /// Engine speed at high idle, standing.
    pub high_idle_speed: RotationalSpeed,
    /// Brake-specific fuel consumption, liters a kilowatt-hour.
    pub fuel_l_per_kwh: f64,
    /// Fuel at idle.
    pub idle_fuel: VolumeFlow,
}
