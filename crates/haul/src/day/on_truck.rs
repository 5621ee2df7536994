//! The air and the tires' walls while the stepper drives.

use model::air::{AirFault, AirFaultError, TrueAir, TrueState, TrueSurroundings};
use model::route::Profile;
use model::tire::warm_up::time_constant;
use quantity::{
    AbsolutePressure, ColdPressure, GaugePressure, Length, RotationalSpeed, Speed, Temperature,
    Time, VolumeFlow,
};

use super::{DayEvent, Moment, TimedFault, TrueFault, Witness};
use crate::breathing::EngineRun;
use crate::day_weather::{DayWeather, WeatherNow};
use crate::on_board::{OnBoard, Passed};
use crate::{PhaseKind, State, Target, TrueTruck};

/// A wet road takes heat from the tires this much faster: common practice, no source.
const WET_COOLING: f64 = 1.6;
/// Air leaves a working compressor warm; what reaches the reservoirs is this much over ambient.
const DELIVERED_WARMER: f64 = 12.0; // K, common practice, no source
/// Time in which the reservoirs follow, s: common practice, no source.
const RESERVOIRS_FOLLOW: f64 = 300.0;
/// Step between the gears of a heavy gearbox: common practice, no source.
const GEAR_STEP: f64 = 1.28;
/// Speed at which the top gear runs at the working speed, m/s: common practice, no source.
const TOP_GEAR: f64 = 85.0 / 3.6;
/// Heat a dragging brake gives while rolling is reached in this time, s.
const DRAG_FOLLOWS: f64 = 600.0; // common practice, no source

/// The truck's air, its walls, and what acts on them.
pub(super) struct OnTruck<'a, W> {
    pub truck: &'a TrueTruck,
    pub weather: &'a DayWeather,
    pub faults: &'a [TimedFault],
    pub profile: &'a Profile,
    pub reference: Temperature,
    pub witness: &'a mut W,
    pub air: TrueAir,
    pub state: TrueState,
    pub walls: Vec<Temperature>,
    pub drag: Vec<f64>,
    pub reservoir: Temperature,
    pub active: Vec<bool>,
    pub cycle: usize,
    pub phase: PhaseKind,
    pub forward: bool,
    pub length: Length,
    pub odometer: f64,
    pub last_v: f64,
    pub wrong: Option<AirFaultError>,
}

impl<W: Witness> OnTruck<'_, W> {
    fn chainage(&self, state: &State) -> Length {
        if self.forward { state.travelled() } else { self.length - state.travelled() }
    }

    fn now(&self, state: &State) -> (WeatherNow, Length) {
        let height = self.profile.elevation(self.chainage(state));
        (self.weather.at(state.clock(), height), height)
    }

    /// Engine speed by the gear that suits the road speed.
    fn engine_speed(&self, state: &State, engine: EngineRun) -> RotationalSpeed {
        if state.v < 0.5 {
            return engine.speed;
        }
        let gears = (TOP_GEAR / state.v).ln() / GEAR_STEP.ln();
        let gear = gears.round().max(0.0);
        let factor = state.v / (TOP_GEAR / GEAR_STEP.powf(gear));
        let slowest = self.truck.motion.idle;
        (engine.speed * factor.clamp(0.75, 1.3)).max(slowest)
    }

    /// Faults that come or go now.
    pub fn look_at_faults(&mut self, state: &State) {
        let (now, _) = self.now(state);
        let clock = state.clock();
        let mut turned = false;
        for (index, fault) in self.faults.iter().enumerate() {
            let timely = clock >= fault.from && fault.until.is_none_or(|until| clock < until);
            let cold = fault.only_below.is_none_or(|below| now.temperature < below);
            let there = timely && cold;
            if there != self.active[index] {
                self.active[index] = there;
                turned = true;
                let event =
                    if there { DayEvent::FaultBegins(index) } else { DayEvent::FaultEnds(index) };
                self.witness.event(clock, self.chainage(state), event);
            }
        }
        if turned {
            let of_air = |(fault, there): (&TimedFault, &bool)| match &fault.fault {
                TrueFault::Air(fault) if *there => Some(*fault),
                TrueFault::Air(_) | TrueFault::HotWheel { .. } => None,
            };
            let now: Vec<AirFault> =
                self.faults.iter().zip(&self.active).filter_map(of_air).collect();
            match self.truck.air.afflicted(&now) {
                Ok(air) => self.air = air,
                Err(error) => self.wrong = Some(error),
            }
        }
    }

    fn warm(&mut self, state: &State, now: WeatherNow, elapsed: f64) {
        let carried = &self.truck.carried[state.load_state()];
        let speed = Speed::from_m_per_s(state.v);
        let cooling = if now.wet { WET_COOLING } else { 1.0 };
        let keep = (-elapsed * cooling / time_constant().as_s()).exp();
        for (index, wall) in self.walls.iter_mut().enumerate() {
            let tire = &carried[index];
            let warm = self.state.gas_temperature(index).as_kelvin();
            let absolute = self.state.tire(index).to_absolute(now.pressure);
            let cold = absolute.scaled(self.reference.as_kelvin() / warm).to_gauge(now.pressure);
            let rise = if tire.is_down {
                let cold = ColdPressure::read_at_reference(cold);
                tire.warm_up.rise(cold, speed).value * (1.0 / cooling)
            } else {
                quantity::TemperatureDifference::ZERO
            };
            let dragged = self.drag[index];
            let steady = now.temperature + rise;
            *wall = steady + (*wall - steady) * keep;
            let wanted = hot(self.faults, &self.active, index, state.v);
            self.drag[index] += (wanted - dragged) * (1.0 - (-elapsed / DRAG_FOLLOWS).exp());
        }
    }

    fn walls_now(&self) -> Vec<Temperature> {
        let warmer = |(wall, drag): (&Temperature, &f64)| {
            *wall + quantity::TemperatureDifference::from_kelvin(*drag)
        };
        self.walls.iter().zip(&self.drag).map(warmer).collect()
    }

    /// Tells the witness where things stand.
    pub fn tell(&mut self, state: &State, engine: EngineRun) {
        let (now, elevation) = self.now(state);
        let walls = self.walls_now();
        let moment = Moment {
            clock: state.clock(),
            cycle: self.cycle,
            phase: self.phase,
            chainage: self.chainage(state),
            forward: self.forward,
            speed: state.speed(),
            engine_speed: self.engine_speed(state, engine),
            engine_load: engine.load.clamp(0.0, 1.0),
            fuel: state.totals().fuel(),
            braking: state.braking,
            load_state: state.load_state(),
            ordered: state.ordered(),
            changing: state.is_changing(),
            air: &self.state,
            walls: &walls,
            ambient: now.temperature,
            ambient_pressure: now.pressure,
            elevation,
            odometer: Length::from_m(self.odometer),
        };
        self.witness.moment(&moment);
    }

    /// Tells the witness that something happens here.
    pub fn tell_event(&mut self, state: &State, event: DayEvent) {
        let chainage = self.chainage(state);
        self.witness.event(state.clock(), chainage, event);
    }

    /// Chainage of a travel distance of this run.
    pub fn chainage_of(&self, travelled: Length) -> Length {
        if self.forward { travelled } else { self.length - travelled }
    }
}

/// How much warmer a dragging brake makes a tire in the long run, K.
fn hot(faults: &[TimedFault], active: &[bool], tire: usize, v: f64) -> f64 {
    let rolls = if v > 1.0 { 1.0 } else { 0.0 };
    faults
        .iter()
        .zip(active)
        .filter(|(_, there)| **there)
        .filter_map(|(fault, _)| match &fault.fault {
            TrueFault::HotWheel { tires, rise } if tires.contains(&tire) => Some(rise.as_kelvin()),
            TrueFault::HotWheel { .. } | TrueFault::Air(_) => None,
        })
        .sum::<f64>()
        * rolls
}

impl<W: Witness> OnBoard for OnTruck<'_, W> {
    fn order(&mut self, _: &State, to: Target) {
        let channels = self.air.channels();
        let target = |channel| self.truck.set.get(channel, to.load_state, to.rung);
        let targets: Vec<GaugePressure> = (0..channels).map(target).collect();
        self.air.order(&mut self.state, &targets);
    }

    fn pass(&mut self, state: &State, engine: EngineRun, dt: f64) -> Passed {
        self.look_at_faults(state);
        let (now, _) = self.now(state);
        let warmer = if self.state.compressor_loading() { DELIVERED_WARMER } else { 0.0 };
        let toward = now.temperature.as_kelvin() + warmer;
        let follow = 1.0 - (-dt / RESERVOIRS_FOLLOW).exp();
        let reservoir = self.reservoir.as_kelvin();
        self.reservoir = Temperature::from_kelvin(reservoir + (toward - reservoir) * follow);
        let walls = self.walls_now();
        let squash: Vec<f64> =
            self.truck.carried[state.load_state()].iter().map(|tire| tire.squash).collect();
        let around = TrueSurroundings {
            engine_speed: self.engine_speed(state, engine),
            engine_load: engine.load.clamp(0.0, 1.0),
            ambient: now.pressure,
            temperature: now.temperature,
            reservoir_temperature: self.reservoir,
            brake_draw: VolumeFlow::from_m3_per_s(engine.draw),
            walls: &walls,
            squash: &squash,
        };
        let advance = self.air.advance(&mut self.state, &around, Time::from_s(dt));
        let elapsed = advance.elapsed.as_s();
        self.warm(state, now, elapsed);
        Passed { elapsed, completed: advance.completed && state.changing }
    }

    fn came_to(&mut self, state: &State, engine: EngineRun, elapsed: f64) {
        self.odometer += 0.5 * (self.last_v + state.v) * elapsed;
        self.last_v = state.v;
        self.tell(state, engine);
    }

    fn is_complete(&self) -> bool {
        self.state.is_complete()
    }

    fn supply(&self) -> GaugePressure {
        self.state.service()
    }
}

/// Pressure outside a sealed gauge, for those who ask.
pub(super) fn found(
    truck: &TrueTruck,
    tire: usize,
    at: Target,
    off: quantity::PressureDifference,
    (reference, outside): (Temperature, Temperature),
    ambient: AbsolutePressure,
) -> GaugePressure {
    match (truck.tires[tire].channel, truck.fixed[tire]) {
        (Some(channel), _) => truck.set.get(channel, at.load_state, at.rung) + off,
        (None, Some(cold)) => {
            // Filled cold at the reference temperature, found at tonight's.
            let absolute = cold.to_absolute(ambient);
            absolute.scaled(outside.as_kelvin() / reference.as_kelvin()).to_gauge(ambient) + off
        }
        (None, None) => GaugePressure::ZERO,
    }
}
