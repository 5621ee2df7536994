//! The air that changes the tires: supply, restrictions, lines, and the whole network.

use quantity::{GaugePressure, Length, PressureDifference, SonicConductance, Volume, VolumeFlow};

/// A restriction given by its ISO 6358 characteristics.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Restriction {
    c: SonicConductance,
    b: f64,
}

/// One element of an air path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PathElement {
    /// A part with known conductance: valve, rotary seal, wheel valve, fitting.
    Part(Restriction),
    /// A smooth tube.
    Tube {
        /// Bore.
        bore: Length,
        /// Length.
        length: Length,
    },
}

/// What the compressor breathes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CompressorInlet {
    /// Ambient air.
    Ambient,
    /// Engine boost, this much above ambient while the engine pulls at full power.
    Boosted {
        /// Boost at full power.
        at_full_power: PressureDifference,
    },
}

/// An engine-driven compressor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compressor {
    /// Swept volume a revolution.
    pub displacement: Volume,
    /// Turns of the compressor for one of the engine.
    pub speed_ratio: f64,
    /// k of the volumetric efficiency: valves, leakage, suction heating.
    pub efficiency: f64,
    /// c: clearance volume over swept volume.
    pub clearance: f64,
    /// n: polytropic exponent of re-expansion.
    pub polytropic: f64,
    /// What it breathes.
    pub inlet: CompressorInlet,
}

/// The governor's two pressures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Governor {
    /// The compressor starts to load under this.
    pub cut_in: GaugePressure,
    /// It stops loading at this.
    pub cut_out: GaugePressure,
}

/// Pressure protection valve between the brakes and the tire circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProtectionValve {
    /// Opens above.
    pub opens: GaugePressure,
    /// Shuts under.
    pub shuts: GaugePressure,
    /// Its restriction when open.
    pub restriction: Restriction,
}

/// Air the brakes use.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BrakeUse {
    /// Free air of one full application of all chambers.
    pub full_application: Volume,
    /// Deceleration of a full application, as a share of gravity.
    pub full_deceleration_g: f64,
    /// Full-application equivalents a minute on a sustained descent.
    pub descent_applications_per_minute: f64,
    /// Air lost by leaks, free.
    pub leakage: VolumeFlow,
}

/// The truck's air supply.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AirSupply {
    /// Compressor.
    pub compressor: Compressor,
    /// Governor.
    pub governor: Governor,
    /// Service and wet reservoirs together.
    pub service_volume: Volume,
    /// What the brakes take.
    pub brakes: BrakeUse,
    /// Protection valve to the tire circuit.
    pub protection: ProtectionValve,
    /// Reserve tank for tire air behind the protection valve, if fitted.
    pub reserve_volume: Option<Volume>,
}
