//! What only a truck has: engine, air supply, pressure controller.

use schemars::JsonSchema;
use serde::Deserialize;

/// What the compressor breathes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum InletWord {
    /// Ambient air.
    Ambient,
    /// Engine boost.
    Boosted,
}

/// How a gauge takes its zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum GaugeWord {
    /// Open to the air around it.
    Vented,
    /// Sealed at sea-level pressure: reads low at altitude.
    Sealed,
}

/// Pressure unit the controller works in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
pub(crate) enum PressureUnitWord {
    /// Kilopascal.
    #[serde(rename = "kPa")]
    Kpa,
    /// Pound-force per square inch.
    #[serde(rename = "psi")]
    Psi,
    /// Bar.
    #[serde(rename = "bar")]
    Bar,
}

/// Engine and driveline.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct EngineFile {
    /// Rated power.
    #[schemars(range(min = 60, max = 3500))]
    pub rated_power_kw: f64,
    /// Power taken by fan, pumps and steering.
    #[schemars(range(min = 0, max = 300))]
    pub accessory_power_kw: f64,
    /// Driveline efficiency from flywheel to wheels.
    #[schemars(range(min = 0.6, max = 1))]
    pub driveline_efficiency: f64,
    /// Engine speed while it pulls.
    #[schemars(range(min = 600, max = 3500))]
    pub working_speed_rpm: f64,
    /// Engine speed downhill, on the engine brake or idling.
    #[schemars(range(min = 400, max = 3500))]
    pub descent_speed_rpm: f64,
    /// Idle.
    #[schemars(range(min = 300, max = 1200))]
    pub idle_speed_rpm: f64,
    /// High idle, standing.
    #[schemars(range(min = 400, max = 2500))]
    pub high_idle_speed_rpm: f64,
    /// Brake-specific fuel consumption, liters a kilowatt-hour.
    #[schemars(range(min = 0.18, max = 0.45))]
    pub fuel_l_per_kwh: f64,
    /// Fuel at idle.
    #[schemars(range(min = 0.2, max = 40))]
    pub idle_fuel_l_h: f64,
}

/// Compressor, governor, reservoirs, brakes, protection valve.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct AirFile {
    /// Service and wet reservoirs together.
    #[schemars(range(min = 20, max = 1000))]
    pub service_volume_l: f64,
    /// Tank for tire air behind the protection valve, if one is fitted.
    #[schemars(range(min = 5, max = 1000))]
    pub reserve_volume_l: Option<f64>,
    /// Compressor.
    pub compressor: CompressorFile,
    /// Governor.
    pub governor: GovernorFile,
    /// Pressure protection valve between the brakes and the tire circuit.
    pub protection: ProtectionFile,
    /// Air the brakes use.
    pub brakes: BrakesFile,
}

/// An engine-driven compressor.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct CompressorFile {
    /// Swept volume a revolution.
    #[schemars(range(min = 50, max = 3000))]
    pub displacement_cm3: f64,
    /// Turns of the compressor for one of the engine.
    #[schemars(range(min = 0.2, max = 4))]
    pub speed_ratio: f64,
    /// k of the volumetric efficiency: valves, leakage, suction heating.
    #[schemars(range(min = 0.3, max = 1))]
    pub efficiency: f64,
    /// c: clearance volume over swept volume.
    #[schemars(range(min = 0, max = 0.3))]
    pub clearance: f64,
    /// n: polytropic exponent of re-expansion.
    #[schemars(range(min = 1, max = 1.4))]
    pub polytropic: f64,
    /// What it breathes.
    pub inlet: InletWord,
    /// Boosted inlet: boost at full power above ambient.
    #[schemars(range(min = 10, max = 400))]
    pub boost_kpa: Option<f64>,
}

/// The governor's two pressures.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct GovernorFile {
    /// The compressor starts to load under this.
    #[schemars(range(min = 300, max = 1400))]
    pub cut_in_kpa: f64,
    /// It stops loading at this.
    #[schemars(range(min = 300, max = 1400))]
    pub cut_out_kpa: f64,
}

/// Pressure protection valve.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ProtectionFile {
    /// Opens above.
    #[schemars(range(min = 200, max = 1200))]
    pub opens_kpa: f64,
    /// Shuts under.
    #[schemars(range(min = 200, max = 1200))]
    pub shuts_kpa: f64,
    /// Sonic conductance C when open.
    #[schemars(range(min = 0.01, max = 100))]
    pub c_dm3_s_bar: f64,
    /// Critical pressure ratio b.
    #[schemars(range(min = 0.05, max = 0.6))]
    pub b: f64,
}

/// Air the brakes use.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct BrakesFile {
    /// Free air of one full application of all chambers.
    #[schemars(range(min = 1, max = 400))]
    pub full_application_l: f64,
    /// Deceleration of a full application, as a share of gravity.
    #[schemars(range(min = 0.1, max = 1))]
    pub full_deceleration_g: f64,
    /// Full applications, or as many parts of one, a minute on a sustained descent.
    #[schemars(range(min = 0, max = 20))]
    pub descent_applications_a_minute: f64,
    /// Free air lost by leaks.
    #[schemars(range(min = 0, max = 300))]
    pub leakage_l_min: f64,
}

/// What the pressure controller can do.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ControllerFile {
    /// Smallest step a stored pressure can be set to.
    #[schemars(range(min = 0.1, max = 100))]
    pub step_kpa: f64,
    /// Pressure unit it works in.
    pub unit: PressureUnitWord,
    /// Band around the set pressure in which it does nothing.
    #[schemars(range(min = 0, max = 100))]
    pub deadband_kpa: f64,
    /// Error of its gauge, either way.
    #[schemars(range(min = 0, max = 100))]
    pub gauge_error_kpa: f64,
    /// How many rungs it can store.
    #[schemars(range(min = 1, max = 64))]
    pub stored_rungs: u32,
    /// Time between its own checks of a tire.
    #[schemars(range(min = 0.1, max = 240))]
    pub check_interval_min: f64,
    /// Vented or sealed gauge.
    pub gauge: GaugeWord,
    /// Service brake pressure under which it takes no air for tires.
    #[schemars(range(min = 300, max = 1200))]
    pub brake_threshold_kpa: f64,
    /// Service brake pressure from which it takes air again.
    #[schemars(range(min = 300, max = 1200))]
    pub brake_resume_kpa: f64,
    /// Whether it works all channels at once; otherwise one after another.
    pub channels_together: bool,
    /// Longest time the compressor may be loaded without a pause.
    #[schemars(range(min = 1, max = 240))]
    pub compressor_limit_min: f64,
}
