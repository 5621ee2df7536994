//! The truck's air as it is, tire by tire, with what a plan leaves out.
//!
//! Where [`super::Network`] takes all tires of a channel as one vessel at a given temperature behind
//! lines without volume, here every tire is a vessel of its own whose gas cools and warms against the
//! wall, lines hold air, mates of a dual are joined by their hoses, and the controller works as
//! controllers do: it opens a valve for a while, shuts it, waits, reads its gauge and goes on. It is
//! what made logs are drawn from, so that nothing fitted to them is fitted to its own equations.
//! Faults are changes to it: [`TrueAir::afflicted`].

mod controller;
mod fault;
mod line;
mod state;
mod step;
#[cfg(test)]
mod tests;

use quantity::{
    AbsolutePressure, GaugePressure, PressureDifference, RotationalSpeed, SonicConductance,
    Temperature, Time, Volume, VolumeFlow,
};

pub use fault::{AirFault, AirFaultError};
pub use state::{TrueState, TrueTotals};
pub use step::TrueAdvance;

use super::reference_air::P0;
use super::{
    AirSupply, BrakeGate, ChannelSpec, Compressor, EmptyPath, Governor, NetworkError, Restriction,
    SeriesCurve,
};
use crate::source::Key;

/// Heat between the gas in a tire and its wall.
pub const GAS_TO_WALL_SOURCE: Key = Key("gas-to-wall-heat");

/// Time in which the gas of a tire at [`GAS_TO_WALL_AT`] comes near the temperature of its wall.
///
/// # Validity
/// 15 to 40 s for 8 to 20 W/(m² K) at the wall; longer in proportion to the mass of gas.
///
/// # Source
/// `gas-to-wall-heat`
pub const GAS_TO_WALL: Time = Time::from_s(22.0);

/// Pressure at which [`GAS_TO_WALL`] holds.
///
/// # Source
/// `gas-to-wall-heat`
pub const GAS_TO_WALL_AT: AbsolutePressure = AbsolutePressure::from_kpa(800.0);

/// A wheel end with its tires.
#[derive(Debug, Clone, PartialEq)]
pub struct WheelEnd {
    /// Index of the air channel that feeds it.
    pub channel: usize,
    /// Air volume of each of its tires: one, or the two mates of a dual.
    pub tires: Vec<Volume>,
    /// Whether it is shut by hand.
    pub shut: bool,
}

/// How the controller goes about its work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ControllerHabits {
    /// Band around the set pressure in which it does nothing.
    pub deadband: PressureDifference,
    /// Time between its own checks.
    pub check_interval: Time,
    /// Whether it works all channels at once.
    pub together: bool,
    /// Whether its gauge is sealed at sea-level pressure instead of open to the air around it.
    pub sealed_gauge: bool,
}

/// What acts on the air from outside for a while.
#[derive(Debug, Clone, Copy)]
pub struct TrueSurroundings<'a> {
    /// Engine speed.
    pub engine_speed: RotationalSpeed,
    /// Share of full engine power now, 0 to 1.
    pub engine_load: f64,
    /// Ambient pressure.
    pub ambient: AbsolutePressure,
    /// Ambient temperature, which the lines have.
    pub temperature: Temperature,
    /// Temperature of the air in the reservoirs.
    pub reservoir_temperature: Temperature,
    /// What the brakes and leaks take, as free air at ambient pressure.
    pub brake_draw: VolumeFlow,
    /// Temperature of each tire's wall.
    pub walls: &'a [Temperature],
    /// Share of its volume that each tire loses by standing flat under its load.
    pub squash: &'a [f64],
}

/// A channel made ready.
#[derive(Debug, Clone)]
#[expect(clippy::struct_excessive_bools, reason = "each valve fails on its own")]
struct Channel {
    /// Supply to line, by the number of channels that fill at once, less one.
    fill: Vec<SeriesCurve>,
    /// Line to the open air through path and exhaust.
    vent: SeriesCurve,
    /// Hole in the line.
    hole: Option<SeriesCurve>,
    line_volume: f64,
    closes_below: Option<f64>,
    fill_stuck_shut: bool,
    exhaust_stuck_shut: bool,
    exhaust_stuck_open: bool,
    sealed_gauge: bool,
    gauge_off: f64,
    /// Tires on its line.
    tires: Vec<usize>,
    /// Wheel ends on its line.
    ends: Vec<usize>,
}

/// A tire made ready.
#[derive(Debug, Clone)]
struct Vessel {
    volume: f64,
    /// The wheel end it hangs on; `None` for a tire that no channel feeds.
    end: Option<usize>,
    /// Line to tire, this tire's share of the wheel end.
    feed: Option<SeriesCurve>,
    /// The other tire of a dual.
    mate: Option<usize>,
    hole: Option<SeriesCurve>,
}

/// A truck's air, tire by tire, ready to be advanced in time.
///
/// # Validity
/// Seconds and longer. Air as an ideal gas with one temperature in each tire; lines and reservoirs
/// at the temperatures given. Wheel valves that close themselves are taken to shut at once when the
/// controller lets the line go after its work.
///
/// # Source
/// `ideal-gas-vessels`, `gas-to-wall-heat`, `iso-6358-1`, `iso-6358-3`
#[derive(Debug, Clone)]
pub struct TrueAir {
    compressor: Compressor,
    governor: Governor,
    protection: (GaugePressure, GaugePressure),
    to_reserve: SeriesCurve,
    gate: Option<BrakeGate>,
    service_volume: f64,
    reserve_volume: Option<f64>,
    brake_leak: VolumeFlow,
    channels: Vec<Channel>,
    ends: Vec<bool>,
    tires: Vec<Vessel>,
    between_mates: SeriesCurve,
    habits: ControllerHabits,
}

/// Hoses between the two tires of a dual: common practice, no source.
const BETWEEN_MATES: Restriction =
    Restriction::of_numbers(SonicConductance::from_dm3_per_s_bar(2.0), 0.3);
/// A port that hardly narrows anything, where a channel has no path of its own.
const OPEN_PORT: Restriction =
    Restriction::of_numbers(SonicConductance::from_dm3_per_s_bar(50.0), 0.5);

impl TrueAir {
    /// Makes a truck's air ready: its channels, the wheel ends on them, and the volumes of tires
    /// that no channel feeds.
    ///
    /// Tires are numbered through: those of the wheel ends in order, then the others.
    ///
    /// # Errors
    /// [`NetworkError`] with the first thing that cannot be.
    pub fn new(
        supply: &AirSupply,
        gate: Option<BrakeGate>,
        channels: &[ChannelSpec],
        ends: &[WheelEnd],
        unfed: &[Volume],
        habits: ControllerHabits,
    ) -> Result<Self, NetworkError> {
        // The plan's own network is asked first: what it refuses is refused here in the same words.
        super::Network::new(supply, gate, channels, habits.together)?;
        let mut tires = Vec::new();
        for (index, end) in ends.iter().enumerate() {
            let first = tires.len();
            let count = end.tires.len();
            let feed = feed(end.channel, &channels[end.channel], count)?;
            for (mate, volume) in end.tires.iter().enumerate() {
                tires.push(Vessel {
                    volume: volume.as_m3(),
                    end: Some(index),
                    feed: Some(feed.clone()),
                    mate: (count == 2).then(|| first + 1 - mate),
                    hole: None,
                });
            }
        }
        tires.extend(unfed.iter().map(|volume| Vessel {
            volume: volume.as_m3(),
            end: None,
            feed: None,
            mate: None,
            hole: None,
        }));
        let on_line = |channel: usize, tire: &Vessel| {
            tire.end.is_some_and(|end| ends[end].channel == channel)
        };
        let channels = channels
            .iter()
            .enumerate()
            .map(|(index, spec)| {
                let mut channel = made_ready(index, spec, supply, channels.len(), &habits)?;
                let of = |vessel: &Vessel| on_line(index, vessel);
                channel.tires = (0..tires.len()).filter(|&tire| of(&tires[tire])).collect();
                channel.ends = (0..ends.len()).filter(|&end| ends[end].channel == index).collect();
                Ok(channel)
            })
            .collect::<Result<_, NetworkError>>()?;
        let mut compressor = supply.compressor;
        compressor.displacement = compressor.displacement * supply.measured_delivery;
        Ok(Self {
            compressor,
            governor: supply.governor,
            protection: (supply.protection.shuts, supply.protection.opens),
            to_reserve: single(supply.protection.restriction),
            gate,
            service_volume: supply.service_volume.as_m3(),
            reserve_volume: supply.reserve_volume.map(Volume::as_m3),
            brake_leak: VolumeFlow::ZERO,
            channels,
            ends: ends.iter().map(|end| end.shut).collect(),
            tires,
            between_mates: single(BETWEEN_MATES),
            habits,
        })
    }

    /// Another truck of the same type: delivery, conductances and tire volumes times a factor each.
    ///
    /// # Panics
    /// If a factor is not above zero.
    #[must_use]
    pub fn varied(&self, delivery: f64, conductance: f64, tire_volume: f64) -> Self {
        assert!(delivery > 0.0 && conductance > 0.0 && tire_volume > 0.0);
        let mut other = self.clone();
        other.compressor.displacement = other.compressor.displacement * delivery;
        for channel in &mut other.channels {
            channel.vent = channel.vent.scaled(conductance);
            for curve in &mut channel.fill {
                *curve = curve.scaled(conductance);
            }
        }
        for tire in &mut other.tires {
            tire.volume *= tire_volume;
            tire.feed = tire.feed.take().map(|feed| feed.scaled(conductance));
        }
        other
    }

    /// How many tires it has.
    pub fn tires(&self) -> usize {
        self.tires.len()
    }

    /// How many channels it has.
    pub fn channels(&self) -> usize {
        self.channels.len()
    }

    /// Air held in reservoirs, lines and tires, as volume in the reference atmosphere.
    #[must_use]
    pub fn contents(&self, state: &TrueState) -> Volume {
        let lines: f64 = state.lines.iter().map(|line| line.held).sum();
        let tires: f64 = state.tires.iter().map(|tire| tire.held).sum();
        Volume::from_m3(state.service + state.reserve + lines + tires)
    }
}

/// A path of one restriction.
fn single(one: Restriction) -> SeriesCurve {
    SeriesCurve::new(&[one]).unwrap_or_else(|EmptyPath| unreachable!("a path of one is not empty"))
}

/// The wheel end's own restrictions, this tire's share of them.
fn feed(channel: usize, spec: &ChannelSpec, tires: usize) -> Result<SeriesCurve, NetworkError> {
    let mut path = Vec::with_capacity(spec.wheel_end.len());
    for element in &spec.wheel_end {
        let one =
            element.restriction().map_err(|error| NetworkError::Restriction { channel, error })?;
        path.push(one.scaled(spec.conductance / tires as f64));
    }
    Ok(SeriesCurve::new(&path).unwrap_or_else(|EmptyPath| single(OPEN_PORT)))
}

fn made_ready(
    channel: usize,
    spec: &ChannelSpec,
    supply: &AirSupply,
    channels: usize,
    habits: &ControllerHabits,
) -> Result<Channel, NetworkError> {
    let mut path = Vec::with_capacity(spec.path.len() + 1);
    for element in &spec.path {
        let one =
            element.restriction().map_err(|error| NetworkError::Restriction { channel, error })?;
        path.push(one.scaled(spec.conductance));
    }
    let fill = (1..=channels)
        .map(|at_once| {
            let mut whole = path.clone();
            if supply.reserve_volume.is_none() {
                // Channels that fill at once share the protection valve.
                whole.insert(0, supply.protection.restriction.scaled(1.0 / at_once as f64));
            }
            SeriesCurve::new(&whole).unwrap_or_else(|EmptyPath| single(OPEN_PORT))
        })
        .collect();
    path.reverse();
    path.push(spec.exhaust.scaled(spec.conductance));
    let vent = SeriesCurve::new(&path).map_err(|EmptyPath| NetworkError::NoPath(channel))?;
    Ok(Channel {
        fill,
        vent,
        hole: None,
        line_volume: spec.line_volume.as_m3().max(LEAST_LINE),
        closes_below: spec.closes_below.map(|pressure| pressure.as_kpa() * 1e3),
        fill_stuck_shut: false,
        exhaust_stuck_shut: false,
        exhaust_stuck_open: false,
        sealed_gauge: habits.sealed_gauge,
        gauge_off: 0.0,
        tires: Vec::new(),
        ends: Vec::new(),
    })
}

/// Least volume of a line, m³: fittings and valve block, common practice, no source.
const LEAST_LINE: f64 = 0.1e-3;
/// Sea-level pressure at which a sealed gauge was closed, Pa.
const SEALED_AT: f64 = 101.325e3;

impl Vessel {
    /// Gas held at a pressure and temperature, in reference volume.
    fn held(&self, pressure: f64, temperature: f64, squash: f64) -> f64 {
        pressure * self.volume * (1.0 - squash) * super::reference_air::T0 / (P0 * temperature)
    }

    fn pressure(&self, held: f64, temperature: f64, squash: f64) -> f64 {
        held * P0 * temperature / (self.volume * (1.0 - squash) * super::reference_air::T0)
    }
}
