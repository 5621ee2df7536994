//! The whole truck's air: compressor, reservoirs, protection valve, and every air channel.
//!
//! Each vessel holds air as an ideal gas at a given temperature; lines are quasi-static.
//! The reservoirs are one volume, fed by the compressor under its governor and drawn on
//! by the brakes. Behind the protection valve the tire circuit draws straight from them,
//! or from a reserve tank that the valve fills. Nothing flows back through the valves.

mod advance;
mod flows;
mod locate;
mod state;
mod surroundings;
#[cfg(test)]
mod tests;
mod work;

use quantity::{GaugePressure, Time, Volume};

pub use advance::{Advance, AirEvent};
pub use state::{AirState, Totals};
pub use surroundings::Surroundings;
pub use work::ChannelOrder;

use super::compressor::EfficiencyCurve;
use super::{
    AirSupply, Compressor, CompressorError, EmptyPath, PathElement, Restriction, RestrictionError,
    SeriesCurve,
};
use crate::source::Key;

/// The differential equations of the whole truck.
pub const SOURCE: Key = Key("ideal-gas-vessels");

/// Measured whole-truck inflation times.
pub const INFLATION_TIMES_SOURCE: Key = Key("forest-service-1987");

/// Most air channels a combination can have.
pub const MAX_CHANNELS: usize = 16;

/// Longest step of the integration while channels work.
const LARGEST_STEP: Time = Time::from_s(1.0);

/// The pressures at which the controller leaves the air to the brakes, and takes it again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BrakeGate {
    /// Service pressure at which it stops taking air for tires.
    pub stops_below: GaugePressure,
    /// Service pressure at which it takes air again.
    pub resumes_at: GaugePressure,
}

/// One air channel, as the network needs it.
#[derive(Debug, Clone, PartialEq)]
pub struct ChannelSpec {
    /// Restrictions from the supply to the wheel ends; air passes them both ways.
    pub path: Vec<PathElement>,
    /// Restrictions of one wheel end, the wheel valve last; air passes them both ways.
    pub wheel_end: Vec<PathElement>,
    /// Wheel ends open to the line.
    pub open_wheel_ends: u32,
    /// Restriction at the supply end through which the channel vents.
    pub exhaust: Restriction,
    /// Volume of all open tires together.
    pub tire_volume: Volume,
    /// Line pressure under which the wheel valves close themselves; `None` if they do not.
    ///
    /// They open on a line that stands at supply pressure, so a supply under this fills
    /// nothing; while venting they shut where the line falls to this, above the tire's
    /// target perhaps.
    pub closes_below: Option<GaugePressure>,
    /// Volume of the line, filled at each change before self-closing valves open.
    pub line_volume: Volume,
    /// Factor on all its conductances: measured on the truck over what the parts give.
    pub conductance: f64,
}

/// Why a network cannot be built or started.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum NetworkError {
    /// The compressor's numbers cannot be.
    #[error(transparent)]
    Compressor(#[from] CompressorError),
    /// A restriction of a channel cannot be.
    #[error("air channel {channel}: {error}")]
    Restriction {
        /// Index of the channel.
        channel: usize,
        /// What is wrong with it.
        error: RestrictionError,
    },
    /// A volume is zero or negative.
    #[error("{what} {volume} must be above zero")]
    Volume {
        /// Which volume.
        what: &'static str,
        /// Its value.
        volume: Volume,
    },
    /// Two switching pressures are in the wrong order.
    #[error("{what}: {lower} must lie under {upper}")]
    Order {
        /// Which pair.
        what: &'static str,
        /// The one that should be lower.
        lower: GaugePressure,
        /// The one that should be higher.
        upper: GaugePressure,
    },
    /// More channels than the network can hold.
    #[error("{0} air channels; at most 16 can be worked")]
    TooManyChannels(usize),
    /// A channel without an open wheel end.
    #[error("air channel {0} has no open wheel end; open one or leave the channel out")]
    NoOpenWheelEnd(usize),
    /// A channel without any restriction between supply and tires.
    #[error(
        "air channel {0} has no restriction between supply and tires; give its path or its wheel ends"
    )]
    NoPath(usize),
    /// A factor on conductances that is not above zero.
    #[error("air channel {channel}: a factor of {factor} on its conductances is not above zero")]
    Conductance {
        /// Index of the channel.
        channel: usize,
        /// Its value.
        factor: f64,
    },
    /// Wheel valves that would still be shut when the protection valve opens.
    #[error(
        "air channel {channel}: its wheel valves close below {closes_below}, but the protection valve lets the supply fall to {shuts}"
    )]
    ClosesAboveProtection {
        /// Index of the channel.
        channel: usize,
        /// Closing pressure of the wheel valves.
        closes_below: GaugePressure,
        /// Shutting pressure of the protection valve.
        shuts: GaugePressure,
    },
    /// Not one starting pressure for each channel.
    #[error("{given} tire pressures for {wanted} air channels")]
    TireCount {
        /// How many were given.
        given: usize,
        /// How many channels there are.
        wanted: usize,
    },
    /// A starting pressure under ambient.
    #[error("{what} pressure {pressure} is under ambient")]
    UnderAmbient {
        /// Which pressure.
        what: &'static str,
        /// Its value.
        pressure: GaugePressure,
    },
    /// A reserve pressure without a reserve, or the other way about.
    #[error("a starting pressure of the reserve tank is needed exactly when one is fitted")]
    Reserve,
}

/// A pair of switching pressures, Pa above ambient.
#[derive(Debug, Clone, Copy)]
struct Hysteresis {
    low: f64,
    high: f64,
}

impl Hysteresis {
    fn new(
        what: &'static str,
        lower: GaugePressure,
        upper: GaugePressure,
    ) -> Result<Self, NetworkError> {
        if lower.as_kpa() <= 0.0 || lower >= upper {
            return Err(NetworkError::Order { what, lower, upper });
        }
        Ok(Self { low: lower.as_kpa() * 1e3, high: upper.as_kpa() * 1e3 })
    }
}

/// What the vent of a channel with self-closing valves needs to know of its valve.
#[derive(Debug, Clone)]
struct ClosingValve {
    closes_below: f64,
    /// The last restriction before the tire, all open wheel ends together.
    valve: Option<Restriction>,
    /// From the valve's line side out through the exhaust.
    rest: SeriesCurve,
}

#[derive(Debug, Clone)]
struct Channel {
    fill: SeriesCurve,
    vent: SeriesCurve,
    tire_volume: f64,
    line_volume: f64,
    closing: Option<ClosingValve>,
}

/// A truck's air, checked and tabulated, ready to be advanced in time.
///
/// # Validity
/// Vessels at given temperatures, so not for the seconds after a very fast change;
/// quasi-static lines; air as an ideal gas.
///
/// # Source
/// `ideal-gas-vessels`, `iso-6358-1`, `iso-6358-3`
#[derive(Debug, Clone)]
pub struct Network {
    compressor: Compressor,
    efficiency: EfficiencyCurve,
    governor: Hysteresis,
    protection: Hysteresis,
    protection_c: f64,
    protection_b: f64,
    gate: Option<Hysteresis>,
    service_volume: f64,
    reserve_volume: Option<f64>,
    channels: Vec<Channel>,
    together: bool,
    largest_step: f64,
}

impl Network {
    /// Checks and tabulates a truck's air.
    ///
    /// With `together` all unfinished channels work at once, otherwise only the first.
    ///
    /// # Errors
    /// [`NetworkError`] with the first thing that cannot be.
    pub fn new(
        supply: &AirSupply,
        gate: Option<BrakeGate>,
        channels: &[ChannelSpec],
        together: bool,
    ) -> Result<Self, NetworkError> {
        let mut compressor = supply.compressor;
        compressor.displacement = compressor.displacement * supply.measured_delivery;
        compressor.check()?;
        if channels.len() > MAX_CHANNELS {
            return Err(NetworkError::TooManyChannels(channels.len()));
        }
        let protection = supply.protection;
        Ok(Self {
            compressor,
            efficiency: EfficiencyCurve::new(&compressor),
            governor: Hysteresis::new(
                "governor cut-in and cut-out",
                supply.governor.cut_in,
                supply.governor.cut_out,
            )?,
            protection: Hysteresis::new(
                "protection valve, shutting and opening",
                protection.shuts,
                protection.opens,
            )?,
            protection_c: protection.restriction.c().as_m3_per_s_pa(),
            protection_b: protection.restriction.b(),
            gate: gate
                .map(|gate| {
                    let what = "brake threshold and resuming pressure";
                    Hysteresis::new(what, gate.stops_below, gate.resumes_at)
                })
                .transpose()?,
            service_volume: positive("service reservoir volume", supply.service_volume)?,
            reserve_volume: supply
                .reserve_volume
                .map(|volume| positive("reserve tank volume", volume))
                .transpose()?,
            channels: channels
                .iter()
                .enumerate()
                .map(|(index, spec)| Channel::new(index, spec, supply))
                .collect::<Result<_, _>>()?,
            together,
            largest_step: LARGEST_STEP.as_s(),
        })
    }

    /// The same with another longest step of the integration; 1 s suits planning.
    ///
    /// # Panics
    /// If the step is not above zero.
    #[must_use]
    pub fn with_largest_step(mut self, step: Time) -> Self {
        assert!(step.as_s() > 0.0, "a time step is above zero");
        self.largest_step = step.as_s();
        self
    }

    /// Another truck of the same type: delivery, conductances and tire volumes times a factor each.
    ///
    /// Flow is in proportion to conductance, so nothing is tabulated anew.
    ///
    /// # Panics
    /// If a factor is not above zero.
    #[must_use]
    pub fn varied(&self, delivery: f64, conductance: f64, tire_volume: f64) -> Self {
        let factors = [delivery, conductance, tire_volume];
        assert!(factors.iter().all(|factor| *factor > 0.0), "a factor is above zero");
        let mut other = self.clone();
        other.compressor.displacement = other.compressor.displacement * delivery;
        other.protection_c *= conductance;
        for channel in &mut other.channels {
            channel.conduct(conductance);
            channel.tire_volume *= tire_volume;
        }
        other
    }

    /// How many air channels it has.
    pub fn channels(&self) -> usize {
        self.channels.len()
    }
}

fn positive(what: &'static str, volume: Volume) -> Result<f64, NetworkError> {
    if volume.as_m3() > 0.0 {
        Ok(volume.as_m3())
    } else {
        Err(NetworkError::Volume { what, volume })
    }
}

impl Channel {
    /// Every conductance times a factor: flow is in proportion to it.
    fn conduct(&mut self, factor: f64) {
        self.fill = self.fill.scaled(factor);
        self.vent = self.vent.scaled(factor);
        if let Some(closing) = &mut self.closing {
            closing.valve = closing.valve.map(|valve| valve.scaled(factor));
            closing.rest = closing.rest.scaled(factor);
        }
    }

    fn new(channel: usize, spec: &ChannelSpec, supply: &AirSupply) -> Result<Self, NetworkError> {
        let wrong = |error| NetworkError::Restriction { channel, error };
        if spec.open_wheel_ends == 0 {
            return Err(NetworkError::NoOpenWheelEnd(channel));
        }
        let mut path = Vec::with_capacity(spec.path.len() + spec.wheel_end.len() + 1);
        for element in &spec.path {
            path.push(element.restriction().map_err(wrong)?);
        }
        for element in &spec.wheel_end {
            let one = element.restriction().map_err(wrong)?;
            path.push(one.in_parallel(spec.open_wheel_ends).map_err(wrong)?);
        }
        let curve = |path: &[Restriction]| {
            SeriesCurve::new(path).map_err(|EmptyPath| NetworkError::NoPath(channel))
        };
        let fill = curve(&path)?;
        let valve = if spec.wheel_end.is_empty() { None } else { path.last().copied() };
        path.reverse();
        path.push(spec.exhaust);
        let closing = match spec.closes_below {
            None => None,
            Some(closes_below) => {
                let shuts = supply.protection.shuts;
                if supply.reserve_volume.is_none() && closes_below >= shuts {
                    return Err(NetworkError::ClosesAboveProtection {
                        channel,
                        closes_below,
                        shuts,
                    });
                }
                Some(ClosingValve {
                    closes_below: closes_below.as_kpa() * 1e3,
                    valve,
                    rest: curve(&path[usize::from(valve.is_some())..])?,
                })
            }
        };
        if spec.line_volume.as_m3() < 0.0 {
            let volume = spec.line_volume;
            return Err(NetworkError::Volume { what: "line volume", volume });
        }
        if !(spec.conductance > 0.0 && spec.conductance.is_finite()) {
            return Err(NetworkError::Conductance { channel, factor: spec.conductance });
        }
        let mut made = Self {
            fill,
            vent: curve(&path)?,
            tire_volume: positive("tire volume of an air channel", spec.tire_volume)?,
            line_volume: spec.line_volume.as_m3(),
            closing,
        };
        made.conduct(spec.conductance);
        Ok(made)
    }
}
