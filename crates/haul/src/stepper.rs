//! One step of the run: a piece of road, or a piece of standing time.

use model::air::{ChannelOrder, MAX_CHANNELS, NetworkError, Surroundings};
use quantity::{GaugePressure, Length, PressureDifference, Speed, Time, Volume, VolumeFlow};

use crate::breathing::{EngineRun, Resting};
use crate::trace::{Record, Sample};
use crate::{Controls, Course, Decision, DrivingStyle, Envelope, State, Target, Totals, Truck};

const G: f64 = 9.80665; // m/s², standard gravity

/// Why a run cannot go on.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum StepperError {
    /// The engine cannot pull the load up the grade.
    #[error(
        "cannot climb at {chainage}: the grade of {grade_pct:.1} % asks for more than the engine gives"
    )]
    Stalled {
        /// Where.
        chainage: Length,
        /// The grade in percent.
        grade_pct: f64,
    },
    /// The air system cannot start.
    #[error(transparent)]
    Air(#[from] NetworkError),
    /// A change does not come to an end while standing.
    #[error(
        "after {waited} of standing the change is still not complete: the supply cannot reach the pressure set"
    )]
    NeverComplete {
        /// How long it stood.
        waited: Time,
    },
}

/// When a standing truck may go on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StandUntil {
    /// After this long.
    Passed(Time),
    /// When the change ordered is complete.
    Complete,
    /// When the service reservoirs hold this.
    Supply(GaugePressure),
}

/// Longest wait for a change before it is told to be impossible.
const LONGEST_WAIT: f64 = 6.0 * 3600.0;
const STANDING_STEP: f64 = 10.0; // s

/// Carries a state along a course.
#[derive(Debug, Clone, Copy)]
pub struct Stepper<'a> {
    pub(crate) truck: &'a Truck,
    pub(crate) course: &'a Course,
    envelope: &'a Envelope,
    style: DrivingStyle,
}

pub(crate) struct Piece {
    end: f64,
    v1: f64,
    pub(crate) dt: f64,
    pub(crate) engine: EngineRun,
    fuel_per_s: f64,
    cap: f64,
}

impl<'a> Stepper<'a> {
    /// A stepper for one truck on one course.
    pub fn new(
        truck: &'a Truck,
        course: &'a Course,
        envelope: &'a Envelope,
        style: DrivingStyle,
    ) -> Self {
        Self { truck, course, envelope, style }
    }

    /// The truck standing at the start of the course, tires holding a cell at ambient temperature.
    ///
    /// # Errors
    /// [`NetworkError`] for pressures under ambient.
    pub fn start(
        &self,
        at: Target,
        load_state: usize,
        supply: GaugePressure,
    ) -> Result<State, NetworkError> {
        let truck = self.truck;
        let tire_temperature = [truck.weather.ambient; MAX_CHANNELS];
        let tires: Vec<GaugePressure> =
            (0..truck.channels).map(|c| truck.set.get(c, at.load_state, at.rung)).collect();
        let around = Surroundings {
            engine_speed: truck.idle,
            engine_load: 0.0,
            ambient: truck.weather.ambient_pressure,
            temperature: truck.weather.ambient,
            brake_draw: VolumeFlow::ZERO,
            tire_temperature,
        };
        let reserve = truck.has_reserve.then_some(supply);
        Ok(State {
            s: 0.0,
            v: 0.0,
            t: 0.0,
            cell: 0,
            air: truck.network.start(supply, reserve, &tires, &around)?,
            tire_temperature,
            load_state,
            held: at,
            ordered: at,
            changing: false,
            orders: [ChannelOrder::Hold; MAX_CHANNELS],
            braking: false,
            resting: Resting::default(),
            unheated_s: 0.0,
            unheated_m: 0.0,
            totals: Totals::default(),
        })
    }

    /// Takes a cell as held without moving any air, for comparison with what cannot be had.
    pub fn suppose_held(&self, state: &mut State, held: Target) {
        state.held = held;
        state.ordered = held;
        state.changing = false;
        state.orders = [ChannelOrder::Hold; MAX_CHANNELS];
    }

    /// Puts a state that ended another run at the start of this course.
    pub fn turn_round(&self, state: &mut State) {
        state.s = 0.0;
        state.v = 0.0;
        state.cell = 0;
        state.braking = false;
    }

    /// Takes a state from the same run on another cutting of the course.
    pub fn take_over(&self, state: &mut State) {
        state.cell = self.course.cell_at(state.s);
    }

    /// Puts the tires of every channel off by a difference, as a real truck may find them.
    pub fn put_off(&self, state: &mut State, off: PressureDifference) {
        for channel in 0..self.truck.channels {
            let temperature = state.tire_temperature[channel];
            let pressure = state.air.tire(channel, temperature) + off;
            state.air.set_tire(channel, pressure, temperature);
        }
    }

    /// Takes the load on or off; what the tires hold is then unproven for the new load.
    pub fn load(&self, state: &mut State, load_state: usize) {
        state.load_state = load_state;
    }

    /// Orders the pressures of a cell on every channel.
    pub fn order(&self, state: &mut State, to: Target) {
        self.catch_up(state);
        // A change given up on the way leaves the tires between two rungs: the slower counts as held.
        if state.changing && self.truck.caps[state.ordered.rung] < self.truck.caps[state.held.rung]
        {
            state.held = state.ordered;
        }
        state.ordered = to;
        let ambient = self.truck.weather.ambient_pressure;
        let mut open = false;
        for channel in 0..self.truck.channels {
            let wanted = self.truck.set.get(channel, to.load_state, to.rung);
            let off = wanted - state.tire_pressure(channel, ambient);
            state.orders[channel] = if off.abs().as_kpa() <= self.truck.deadband {
                ChannelOrder::Hold
            } else {
                open = true;
                ChannelOrder::Reach(wanted)
            };
        }
        state.changing = open;
        if !open {
            state.held = to;
        }
    }

    /// Drives on to a travel distance, or to the end of the course.
    ///
    /// # Errors
    /// [`StepperError::Stalled`] where the engine cannot pull the load up.
    pub fn drive_to<R: Record>(
        &self,
        state: &mut State,
        to: Length,
        record: &mut R,
    ) -> Result<(), StepperError> {
        let to = to.min(self.course.length());
        while state.s < to.as_m() - 1e-6 {
            self.step(state, to)?;
            self.sample(state, record);
        }
        self.catch_up(state);
        Ok(())
    }

    /// Drives one piece of road, at most to `to`; ends early when a change is complete.
    ///
    /// # Errors
    /// As [`Self::drive_to`].
    pub fn step(&self, state: &mut State, to: Length) -> Result<(), StepperError> {
        let piece = self.piece(state, to.as_m())?;
        let elapsed = if state.changing {
            self.breathe(state, piece.engine, piece.dt)
        } else {
            self.rest(state, piece.engine, piece.dt);
            piece.dt
        };
        let driven = self.go(state, &piece, elapsed);
        self.pass_time(state, elapsed, driven);
        Ok(())
    }

    /// Moves the truck along a piece for so long; gives the distance driven.
    pub(crate) fn go(&self, state: &mut State, piece: &Piece, elapsed: f64) -> f64 {
        let (s0, v0) = (state.s, state.v);
        if elapsed < piece.dt {
            let a = (piece.v1 - v0) / piece.dt;
            state.s = (s0 + v0 * elapsed + 0.5 * a * elapsed * elapsed).min(piece.end);
            state.v = v0 + a * elapsed;
        } else {
            state.s = piece.end;
            state.v = piece.v1;
        }
        while state.cell + 1 < self.course.cells.len()
            && state.s >= self.course.cells[state.cell].to
        {
            state.cell += 1;
        }
        state.totals.fuel_m3 += piece.fuel_per_s * elapsed;
        if v0.max(state.v) > piece.cap * 1.01 {
            state.totals.over_cap_m += state.s - s0;
        }
        state.s - s0
    }

    fn cap(&self, state: &State) -> f64 {
        let ordered = self.truck.caps[state.ordered.rung];
        if state.changing { ordered.min(self.truck.caps[state.held.rung]) } else { ordered }
    }

    pub(crate) fn piece(&self, state: &mut State, to: f64) -> Result<Piece, StepperError> {
        let truck = self.truck;
        let cell = self.course.cells[state.cell];
        let end = cell.to.min(to);
        let ds = end - state.s;
        let cap = self.cap(state);
        let loaded = &truck.loaded[state.load_state];
        let m = loaded.mass;
        let rolling = if cell.hard {
            cell.rolling_cos * loaded.rolling_factor[state.held.rung.min(state.ordered.rung)]
        } else {
            cell.rolling_cos
        };
        let slope = m * G * (rolling + cell.sin);
        let v0 = state.v;
        let slowest2 = (v0 * v0 - 2.0 * self.style.braking * ds).max(0.0);
        let kept = cap * self.style.over_cap;
        let wanted2 =
            self.envelope.v2_at(self.course, state.cell, end).min(kept * kept).max(slowest2);
        let pull = |v: f64| {
            let v = v.max(self.style.crawl);
            let net = truck.wheel_power / v - slope - truck.drag_per_v2 * v * v;
            (net / m).min(self.style.acceleration)
        };
        let a0 = pull(v0);
        let a1 = pull((v0 * v0 + 2.0 * a0 * ds).max(0.0).sqrt());
        let free2 = v0 * v0 + (a0 + a1) * ds;
        let crawl2 = self.style.crawl * self.style.crawl;
        if free2 < crawl2 && pull(self.style.crawl) < 0.0 {
            return Err(StepperError::Stalled {
                chainage: self.course.chainage(Length::from_m(state.s)),
                grade_pct: cell.sin.asin().tan() * 100.0,
            });
        }
        let v1 = free2.max(crawl2).min(wanted2).sqrt();
        let mean = (0.5 * (v0 + v1)).max(0.5 * self.style.crawl);
        let dt = ds / mean;
        let force = m * (v1 * v1 - v0 * v0) / (2.0 * ds)
            + slope
            + truck.drag_per_v2 * 0.5 * (v0 * v0 + v1 * v1);
        let power = (force * mean).max(0.0) / truck.efficiency + truck.accessory_power;
        let mut draw = truck.leakage;
        let slowing = force < 0.0 && v1 < v0;
        if slowing && !state.braking {
            let share = (-force / m / truck.full_deceleration).min(1.0);
            draw += truck.full_application * share / dt;
        }
        state.braking = slowing;
        if force < 0.0 && cell.descent {
            draw += truck.full_application * truck.descent_applications_per_s;
        }
        let engine_speed = if force > 0.0 { truck.working } else { truck.descent };
        let engine = EngineRun { speed: engine_speed, load: power / truck.rated_power, draw };
        Ok(Piece { end, v1, dt, engine, fuel_per_s: power * truck.fuel_m3_per_j, cap })
    }

    /// Stands, with the engine at idle or high idle.
    ///
    /// # Errors
    /// [`StepperError::NeverComplete`] if a change does not end within six hours.
    pub fn stand<R: Record>(
        &self,
        state: &mut State,
        until: StandUntil,
        high_idle: bool,
        record: &mut R,
    ) -> Result<(), StepperError> {
        let truck = self.truck;
        self.catch_up(state);
        state.v = 0.0;
        let engine_speed = if high_idle { truck.high_idle } else { truck.idle };
        let begun = state.t;
        loop {
            let waited = state.t - begun;
            let left = match until {
                StandUntil::Passed(time) => time.as_s() - waited,
                StandUntil::Complete if !state.changing => 0.0,
                StandUntil::Supply(wanted)
                    if state.supply(truck.weather.ambient_pressure) >= wanted =>
                {
                    0.0
                }
                StandUntil::Complete | StandUntil::Supply(_) if waited > LONGEST_WAIT => {
                    return Err(StepperError::NeverComplete { waited: Time::from_s(waited) });
                }
                StandUntil::Complete | StandUntil::Supply(_) => STANDING_STEP,
            };
            if left <= 1e-9 {
                return Ok(());
            }
            let engine = EngineRun { speed: engine_speed, load: 0.0, draw: truck.leakage };
            let elapsed = self.breathe(state, engine, left.min(STANDING_STEP));
            state.totals.fuel_m3 += truck.idle_fuel * elapsed;
            state.totals.standing_s += elapsed;
            self.pass_time(state, elapsed, 0.0);
            self.sample(state, record);
        }
    }

    /// Drives to the end of the course as the controls decide.
    ///
    /// # Errors
    /// As [`Self::drive_to`] and [`Self::stand`].
    pub fn run<C: Controls, R: Record>(
        &self,
        state: &mut State,
        controls: &mut C,
        record: &mut R,
    ) -> Result<(), StepperError> {
        loop {
            let next = controls.next_place(state.travelled());
            let to = next.unwrap_or(self.course.length()).min(self.course.length());
            self.drive_to(state, to, record)?;
            if next.is_none_or(|place| place > self.course.length()) {
                return Ok(());
            }
            match controls.decide(state) {
                Decision::DriveOn => {}
                Decision::Change(to) => self.order(state, to),
                Decision::StandAndChange(to) => {
                    self.order(state, to);
                    self.stand(state, StandUntil::Complete, true, record)?;
                }
            }
        }
    }

    pub(crate) fn sample<R: Record>(&self, state: &mut State, record: &mut R) {
        if !R::WANTS {
            return;
        }
        self.catch_up(state);
        let ambient = self.truck.weather.ambient_pressure;
        let mut tires = [GaugePressure::ZERO; MAX_CHANNELS];
        for (channel, tire) in tires.iter_mut().enumerate().take(self.truck.channels) {
            *tire = state.tire_pressure(channel, ambient);
        }
        record.take(Sample {
            time: state.clock(),
            travelled: state.travelled(),
            chainage: self.course.chainage(state.travelled()),
            speed: state.speed(),
            cap: Speed::from_m_per_s(self.cap(state)),
            grade: self.course.cells[state.cell].sin.asin().tan(),
            load_state: state.load_state,
            rung: state.ordered.rung,
            changing: state.changing,
            supply: state.supply(ambient),
            loading: state.air.compressor_loading(),
            tires,
            tire_temperatures: state.tire_temperature,
            fuel: Volume::from_m3(state.totals.fuel_m3),
            compressed: state.air.totals().compressed(),
        });
    }
}
