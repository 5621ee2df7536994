//! An air channel, and the controller that works all of them.

use quantity::{GaugePressure, Length, PressureDifference, Time};

use crate::air::{PathElement, Restriction};

/// How a pressure gauge takes its zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GaugeKind {
    /// Open to the air around it: reads pressure above ambient.
    Vented,
    /// Sealed at sea-level pressure: reads low at altitude.
    Sealed,
}

/// What was measured on a channel's air over what the parts of its type give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeasuredAir {
    /// Conductance of lines, seals, valves and exhaust; 1 where not measured.
    pub conductance: f64,
    /// Air volume of its tires; 1 where not measured.
    pub tire_volume: f64,
}

impl MeasuredAir {
    /// As the parts of the type give.
    pub const AS_THE_TYPE: Self = Self { conductance: 1.0, tire_volume: 1.0 };
}

/// One independently controlled air line.
#[derive(Debug, Clone, PartialEq)]
pub struct AirChannel {
    /// Name in the survey, such as `drive`.
    pub name: String,
    /// Restrictions from the supply to the wheel ends, in order.
    pub path: Vec<PathElement>,
    /// Restrictions of one wheel end: rotary seal, hose, wheel valve.
    pub wheel_end: Vec<PathElement>,
    /// Restriction through which the channel vents when it lowers.
    pub exhaust: Restriction,
    /// Length of line that must be filled before a self-closing valve opens.
    pub line_length: Length,
    /// What was measured on the units that are driven, over the type.
    pub measured: MeasuredAir,
}

/// What the pressure controller of the combination can do.
#[derive(Debug, Clone, PartialEq)]
pub struct Controller {
    /// Smallest step a stored pressure can be set to.
    pub step: PressureDifference,
    /// Name of the pressure unit the controller works in, as quantities parse it.
    pub unit: &'static str,
    /// Band around the set pressure in which it does nothing.
    pub deadband: PressureDifference,
    /// Error of its gauge, either way.
    pub gauge_error: PressureDifference,
    /// How many rungs it can store.
    pub stored_rungs: u32,
    /// Time between its own checks of a tire.
    pub check_interval: Time,
    /// Gauge kind.
    pub gauge: GaugeKind,
    /// Service brake pressure under which it takes no air for tires.
    pub brake_threshold: GaugePressure,
    /// Service brake pressure from which it takes air again.
    pub brake_resume: GaugePressure,
    /// Whether it works all channels at once; otherwise one after another in order.
    pub channels_together: bool,
    /// Longest stretch of time the compressor may be loaded without a pause.
    pub compressor_limit: Time,
}
