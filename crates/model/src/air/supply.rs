//! The parts of a truck's air supply, as the survey describes them.

use quantity::{GaugePressure, Length, Volume, VolumeFlow};

use super::{Compressor, Governor, Restriction, RestrictionError};

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

impl PathElement {
    /// The restriction it makes.
    ///
    /// # Errors
    /// [`RestrictionError::TubeTooShort`] for a tube no longer than 20 bores.
    pub fn restriction(&self) -> Result<Restriction, RestrictionError> {
        match *self {
            Self::Part(restriction) => Ok(restriction),
            Self::Tube { bore, length } => Restriction::tube(bore, length),
        }
    }
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
    /// Delivery measured on the truck over what its compressor's numbers give; 1 where not measured.
    pub measured_delivery: f64,
}
