//! What the devices on the bus know at one moment.

use logs::Value;
use logs::signal::Spn;
use quantity::Time;

use super::instruments::Said;
use super::place::Degrees;

/// What the devices know, in the units of the signals.
#[derive(Debug, Clone, Copy)]
pub(super) struct Now<'a> {
    pub clock: Time,
    pub speed_kmh: f64,
    /// As the wheels tell it, with an error of their radius.
    pub wheel_kmh: f64,
    pub engine_rpm: f64,
    pub engine_load: f64,
    pub fuel_l_h: f64,
    pub odometer_m: f64,
    pub service_kpa: [f64; 3],
    pub compressor_loads: bool,
    pub ambient_kpa: f64,
    pub outside_c: f64,
    pub fix: Option<Degrees>,
    pub fix_height_m: Option<f64>,
    pub bearing: f64,
    pub braking: bool,
    pub parked: bool,
    /// Location and what the sensor says, for tires with a sensor.
    pub tires: &'a [(u32, Option<Said>)],
    pub dead_sensors: usize,
    pub targets_kpa: &'a [Option<f64>],
    pub readings_kpa: &'a [Option<f64>],
    pub busy: &'a [bool],
    pub check_interval_min: f64,
    pub axle_kg: &'a [f64],
    pub engine_h: f64,
    pub compressor_h: f64,
    /// The clock group: time and day of the logger's world.
    pub utc: &'a [(Spn, Value)],
}
