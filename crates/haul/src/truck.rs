//! The combination made ready to be driven: masses, forces, air network, warm-up.

use model::air::{BrakeGate, ChannelSpec, MAX_CHANNELS, Network, NetworkError};
use model::haul_cycle::{HaulCycle, Weather};
use model::motion::air_density;
use model::tire::warm_up::{WarmUp, WarmUpError};
use model::vehicle::{Combination, WheelValve};
use quantity::{
    AbsolutePressure, GaugePressure, Length, RotationalSpeed, Speed, TemperatureDifference, Time,
    Volume,
};

/// The pressures the controller is set to, as it reads them, for every cell.
#[derive(Debug, Clone, PartialEq)]
pub struct SetPressures {
    channels: usize,
    rungs: usize,
    values: Vec<GaugePressure>,
}

impl SetPressures {
    /// Fills the table from a function of (channel, load state, rung).
    pub fn new(
        channels: usize,
        load_states: usize,
        rungs: usize,
        mut value: impl FnMut(usize, usize, usize) -> GaugePressure,
    ) -> Self {
        let mut values = Vec::with_capacity(channels * load_states * rungs);
        for load_state in 0..load_states {
            for rung in 0..rungs {
                values.extend((0..channels).map(|channel| value(channel, load_state, rung)));
            }
        }
        Self { channels, rungs, values }
    }

    /// Set pressure of a cell.
    pub fn get(&self, channel: usize, load_state: usize, rung: usize) -> GaugePressure {
        self.values[(load_state * self.rungs + rung) * self.channels + channel]
    }

    /// Number of rungs.
    pub fn rungs(&self) -> usize {
        self.rungs
    }
}

/// Why a combination cannot be driven.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum TruckError {
    /// The air system is impossible.
    #[error(transparent)]
    Air(#[from] NetworkError),
    /// A channel feeds nothing.
    #[error("air channel '{channel}' feeds no open tire; open a wheel end or remove the channel")]
    ChannelFeedsNothing {
        /// The channel.
        channel: String,
    },
    /// A tire cannot be warmed up.
    #[error(transparent)]
    WarmUp(#[from] WarmUpError),
    /// A load state weighs nothing.
    #[error("load state '{load_state}' weighs nothing; give the group loads")]
    NoMass {
        /// The load state.
        load_state: String,
    },
}

/// What one load state changes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Loaded {
    pub mass: f64,
    /// Rolling-resistance factor on hard roads, by rung.
    pub rolling_factor: Vec<f64>,
    /// Warm-up of the worst-loaded tire of each channel.
    pub warm_up: Vec<WarmUp>,
}

/// A combination made ready to be driven.
#[derive(Debug, Clone)]
pub struct Truck {
    pub(crate) network: Network,
    pub(crate) set: SetPressures,
    pub(crate) caps: Vec<f64>,
    pub(crate) loaded: Vec<Loaded>,
    pub(crate) channels: usize,
    pub(crate) wheel_power: f64,
    pub(crate) rated_power: f64,
    pub(crate) accessory_power: f64,
    pub(crate) efficiency: f64,
    pub(crate) drag_per_v2: f64,
    pub(crate) fuel_m3_per_j: f64,
    pub(crate) idle_fuel: f64,
    pub(crate) working: RotationalSpeed,
    pub(crate) descent: RotationalSpeed,
    pub(crate) idle: RotationalSpeed,
    pub(crate) high_idle: RotationalSpeed,
    pub(crate) full_application: f64,
    pub(crate) full_deceleration: f64,
    pub(crate) descent_applications_per_s: f64,
    pub(crate) leakage: f64,
    pub(crate) deadband: f64,
    pub(crate) weather: Weather,
    pub(crate) has_reserve: bool,
}

/// What is different about another truck of the same type on another day: factors, and an interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Variation {
    /// Compressor delivery.
    pub delivery: f64,
    /// Conductances.
    pub conductance: f64,
    /// Tire volumes.
    pub tire_volume: f64,
    /// Engine speed while pulling.
    pub engine_speed: f64,
    /// Ambient temperature.
    pub ambient: TemperatureDifference,
}

impl Variation {
    /// A truck just like its type, on an ordinary day.
    pub const NONE: Self = Self {
        delivery: 1.0,
        conductance: 1.0,
        tire_volume: 1.0,
        engine_speed: 1.0,
        ambient: TemperatureDifference::ZERO,
    };
}

/// Longest step of the air while spread is sampled.
const SAMPLING_STEP: Time = Time::from_s(3.0);

/// Share of the exponent by which rolling resistance falls with pressure on hard roads.
const ROLLING_EXPONENT: f64 = -0.3; // tyre maker practice, `rolling-resistance-pressure`

impl Truck {
    /// Makes a combination ready, with the pressures it is set to.
    ///
    /// # Errors
    /// [`TruckError`] for an impossible air system, a channel without open tires, or no mass.
    pub fn new(haul: &HaulCycle, set: SetPressures) -> Result<Self, TruckError> {
        let combination = &haul.combination;
        let specs = combination
            .channels
            .iter()
            .enumerate()
            .map(|(index, _)| channel_spec(combination, index))
            .collect::<Result<Vec<_>, _>>()?;
        let controller = &combination.controller;
        let gate = BrakeGate {
            stops_below: controller.brake_threshold,
            resumes_at: controller.brake_resume,
        };
        let network =
            Network::new(&combination.supply, Some(gate), &specs, controller.channels_together)?;
        let loaded = (0..combination.load_states.len())
            .map(|state| loaded(combination, &set, state))
            .collect::<Result<Vec<_>, _>>()?;
        let p = &combination.powertrain;
        let brakes = &combination.supply.brakes;
        let density = air_density(haul.weather.ambient_pressure, haul.weather.ambient);
        Ok(Self {
            network,
            caps: combination.rungs.iter().map(|rung| rung.cap.as_m_per_s()).collect(),
            loaded,
            channels: specs.len(),
            wheel_power: (p.rated_power - p.accessory_power).as_w() * p.efficiency,
            rated_power: p.rated_power.as_w(),
            accessory_power: p.accessory_power.as_w(),
            efficiency: p.efficiency,
            drag_per_v2: 0.5 * density.as_kg_per_m3() * combination.drag_area.as_m2(),
            fuel_m3_per_j: p.fuel_l_per_kwh * 1e-3 / 3.6e6,
            idle_fuel: p.idle_fuel.as_m3_per_s(),
            working: p.working_speed,
            descent: p.descent_speed,
            idle: p.idle_speed,
            high_idle: p.high_idle_speed,
            full_application: brakes.full_application.as_m3(),
            full_deceleration: brakes.full_deceleration_g * 9.80665,
            descent_applications_per_s: brakes.descent_applications_per_minute / 60.0,
            leakage: brakes.leakage.as_m3_per_s(),
            deadband: controller.deadband.as_kpa(),
            weather: haul.weather,
            has_reserve: combination.supply.reserve_volume.is_some(),
            set,
        })
    }

    /// Speed cap of a rung.
    pub fn cap(&self, rung: usize) -> Speed {
        Speed::from_m_per_s(self.caps[rung])
    }

    /// The pressures it is set to.
    pub fn set_pressures(&self) -> &SetPressures {
        &self.set
    }

    /// Ambient pressure of the site.
    pub fn ambient(&self) -> AbsolutePressure {
        self.weather.ambient_pressure
    }

    /// Another truck of the same type on another day.
    #[must_use]
    pub fn varied(&self, other: &Variation) -> Self {
        let mut truck = self.clone();
        truck.network = self
            .network
            .varied(other.delivery, other.conductance, other.tire_volume)
            .with_largest_step(SAMPLING_STEP);
        truck.working = self.working * other.engine_speed;
        truck.weather.ambient = self.weather.ambient + other.ambient;
        truck
    }

    /// The same truck with `times` the compressor delivery; `None` if that cannot be built.
    pub fn with_more_air(&self, haul: &HaulCycle, times: f64) -> Option<Self> {
        let mut haul = haul.clone();
        let compressor = &mut haul.combination.supply.compressor;
        compressor.displacement = compressor.displacement * times;
        Self::new(&haul, self.set.clone()).ok()
    }

    /// Number of air channels.
    pub fn channels(&self) -> usize {
        self.channels
    }
}

pub(crate) fn channel_spec(
    combination: &Combination,
    index: usize,
) -> Result<ChannelSpec, TruckError> {
    let channel = &combination.channels[index];
    let mut tire_volume = Volume::ZERO;
    let mut open_wheel_ends = 0;
    let mut closes_below: Option<GaugePressure> = None;
    for (_, group) in combination.groups_of(index) {
        tire_volume += group.tire.air_volume * f64::from(group.open_tires());
        open_wheel_ends += group.open_tires() / group.tires_per_end();
        if let Some(WheelValve::SelfClosing { closes_below: p }) = group.wheel_valve {
            closes_below = Some(closes_below.map_or(p, |before| before.max(p)));
        }
    }
    if open_wheel_ends == 0 {
        return Err(TruckError::ChannelFeedsNothing { channel: channel.name.clone() });
    }
    Ok(ChannelSpec {
        path: channel.path.clone(),
        wheel_end: channel.wheel_end.clone(),
        open_wheel_ends,
        exhaust: channel.exhaust,
        tire_volume: tire_volume * channel.measured.tire_volume,
        closes_below,
        line_volume: line_volume(channel.line_length, &channel.path),
        conductance: channel.measured.conductance,
    })
}

/// Volume of the tubes of a path, for the length that has to be filled.
fn line_volume(length: Length, path: &[model::air::PathElement]) -> Volume {
    let bore = path
        .iter()
        .filter_map(|element| match element {
            model::air::PathElement::Tube { bore, .. } => Some(bore.as_m()),
            model::air::PathElement::Part(_) => None,
        })
        .fold(0.0, f64::max);
    Volume::from_m3(std::f64::consts::PI * bore * bore / 4.0 * length.as_m())
}

fn loaded(
    combination: &Combination,
    set: &SetPressures,
    state: usize,
) -> Result<Loaded, TruckError> {
    let load_state = &combination.load_states[state];
    let mass = load_state.gross().as_kg();
    if mass <= 0.0 {
        return Err(TruckError::NoMass { load_state: load_state.name.clone() });
    }
    let top = set.rungs().saturating_sub(1);
    let rolling_factor = (0..set.rungs())
        .map(|rung| {
            let weighted: f64 = combination
                .groups
                .iter()
                .zip(&load_state.groups)
                .map(|(group, load)| {
                    let factor = group.channel.map_or(1.0, |channel| {
                        let ratio = set.get(channel, state, rung).as_kpa()
                            / set.get(channel, state, top).as_kpa();
                        ratio.powf(ROLLING_EXPONENT)
                    });
                    load.mass.as_kg() * factor
                })
                .sum();
            weighted / mass
        })
        .collect();
    let warm_up = (0..combination.channels.len())
        .map(|channel| {
            let (group, load) = combination
                .groups_of(channel)
                .map(|(index, group)| {
                    let tires = load_state.tires_down(index, group).max(1);
                    (group, load_state.groups[index].mass / f64::from(tires))
                })
                .max_by(|a, b| {
                    (a.1 / a.0.tire.single.load).total_cmp(&(b.1 / b.0.tire.single.load))
                })
                .ok_or_else(|| TruckError::ChannelFeedsNothing {
                    channel: combination.channels[channel].name.clone(),
                })?;
            Ok(WarmUp::new(&group.tire, load)?)
        })
        .collect::<Result<_, TruckError>>()?;
    Ok(Loaded { mass, rolling_factor, warm_up })
}

const _: () = assert!(MAX_CHANNELS >= 12, "a combination may have twelve channels");
