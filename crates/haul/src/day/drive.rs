//! The cycles of a day, driven on the true air.

use model::haul_cycle::{HaulCycle, LadenDirection};
use quantity::{GaugePressure, Length, Time};

use super::on_truck::{OnTruck, found};
use super::run::PATIENCE;
use super::{DayError, DayEvent, TimedFault, Witness};
use crate::breathing::EngineRun;
use crate::day_weather::DayWeather;
use crate::on_board::Awaits;
use crate::{
    Call, Course, CyclePlan, Driver, DriversCycle, DrivingStyle, Envelope, LadenChange, PhaseKind,
    State, Stepper, Target, TrueTruck,
};

/// Longest a forgetful driver waits.
const IMPATIENCE: Time = Time::from_s(20.0);

/// Everything about a day before it is driven.
#[derive(Debug, Clone, Copy)]
pub struct Day<'a> {
    /// The haul.
    pub haul: &'a HaulCycle,
    /// The truck that drives it.
    pub truck: &'a TrueTruck,
    /// Courses of the empty and the laden run.
    pub courses: (&'a Course, &'a Course),
    /// The plan it should be driven by.
    pub plan: &'a CyclePlan,
    /// Who drives.
    pub driver: &'a Driver,
    /// The weather.
    pub weather: &'a DayWeather,
    /// What goes wrong.
    pub faults: &'a [TimedFault],
    /// How many cycles.
    pub cycles: usize,
}

/// How a day ended.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayEnd {
    /// When.
    pub clock: Time,
    /// Distance driven.
    pub driven: Length,
}

impl Day<'_> {
    /// Drives the day and tells it to a witness.
    ///
    /// # Errors
    /// [`DayError`] where the truck cannot climb, its air cannot start, or a fault cannot be.
    pub fn drive<W: Witness>(&self, witness: &mut W) -> Result<DayEnd, DayError> {
        let haul = self.haul;
        let first = self.driver.carries_out(self.plan, 0);
        let style = first.style;
        let envelope = Envelope::new(self.courses.0, &first.plan.empty_caps, &style);
        let stepper = Stepper::new(&self.truck.motion, self.courses.0, &envelope, style);
        let parked = Target { rung: haul.shift_start.parked_rung, load_state: haul.empty_state };
        let mut state = stepper.start(parked, haul.empty_state, haul.shift_start.supply)?;
        let mut air = self.on_truck(parked, witness)?;

        air.phase = PhaseKind::ShiftStart;
        air.tell_event(&state, DayEvent::Phase(PhaseKind::ShiftStart));
        let idle = EngineRun { speed: self.truck.motion.idle, load: 0.0, draw: 0.0 };
        air.tell(&state, idle);
        let up = Awaits::Supply(haul.combination.supply.governor.cut_in);
        stepper.stand_on(&mut state, (up, PATIENCE), true, &mut air);
        air.ask(&stepper, &mut state, first.plan.empty_start, None, Call::AsPlanned);
        air.wait(&stepper, &mut state, PATIENCE);

        for cycle in 0..self.cycles {
            air.cycle = cycle;
            let drivers = self.driver.carries_out(self.plan, cycle);
            self.cycle(&mut state, &drivers, &mut air)?;
            if let Some(error) = air.wrong {
                return Err(error.into());
            }
        }
        Ok(DayEnd { clock: state.clock(), driven: Length::from_m(air.odometer) })
    }

    fn on_truck<'b, W: Witness>(
        &'b self,
        parked: Target,
        witness: &'b mut W,
    ) -> Result<OnTruck<'b, W>, DayError> {
        let (haul, truck) = (self.haul, self.truck);
        let forward = haul.laden_direction == LadenDirection::Backward;
        let length = haul.route.length();
        let start = if forward { Length::ZERO } else { length };
        let now = self.weather.at(Time::ZERO, haul.route.profile.elevation(start));
        let walls = vec![now.temperature; truck.tires.len()];
        let reference = haul.weather.reference;
        let find = |tire| {
            let off = self.driver.found(tire);
            found(truck, tire, parked, off, (reference, now.temperature), now.pressure)
        };
        let tires: Vec<GaugePressure> = (0..truck.tires.len()).map(find).collect();
        let squash: Vec<f64> =
            truck.carried[haul.empty_state].iter().map(|tire| tire.squash).collect();
        let around = model::air::TrueSurroundings {
            engine_speed: truck.motion.idle,
            engine_load: 0.0,
            ambient: now.pressure,
            temperature: now.temperature,
            reservoir_temperature: now.temperature,
            brake_draw: quantity::VolumeFlow::ZERO,
            walls: &walls,
            squash: &squash,
        };
        let state = truck.air.start(haul.shift_start.supply, &tires, &around)?;
        Ok(OnTruck {
            truck,
            weather: self.weather,
            faults: self.faults,
            profile: &haul.route.profile,
            reference,
            witness,
            air: truck.air.clone(),
            state,
            drag: vec![0.0; walls.len()],
            walls,
            reservoir: now.temperature,
            active: vec![false; self.faults.len()],
            cycle: 0,
            phase: PhaseKind::ShiftStart,
            forward,
            length,
            odometer: 0.0,
            last_v: 0.0,
            wrong: None,
        })
    }

    fn cycle<W: Witness>(
        &self,
        state: &mut State,
        drivers: &DriversCycle,
        air: &mut OnTruck<'_, W>,
    ) -> Result<(), DayError> {
        let haul = self.haul;
        let plan = &drivers.plan;
        let forward_laden = haul.laden_direction == LadenDirection::Forward;
        let run = |course, caps: &[_]| {
            Envelope::new(course, caps, &drivers.style).scaled(drivers.road_speed)
        };
        let envelopes =
            (run(self.courses.0, &plan.empty_caps), run(self.courses.1, &plan.laden_caps));
        let style: DrivingStyle = drivers.style;
        let motion = &self.truck.motion;
        let empty = Stepper::new(motion, self.courses.0, &envelopes.0, style);
        let laden = Stepper::new(motion, self.courses.1, &envelopes.1, style);

        air.forward = !forward_laden;
        empty.turn_round(state);
        air.begin(PhaseKind::Empty, state);
        air.run(&empty, state, &drivers.empty)?;

        air.begin(PhaseKind::Loading, state);
        if plan.laden_change == LadenChange::WhileLoading {
            air.ask(&empty, state, plan.laden_start, None, Call::AsPlanned);
        }
        let loading = haul.loading;
        air.stand(&empty, state, loading.time, loading.high_idle);
        empty.load(state, haul.laden_state);
        if state.ordered() != plan.laden_start {
            air.ask(&empty, state, plan.laden_start, None, Call::AsPlanned);
        }
        let patience = if drivers.waits_when_loaded { PATIENCE } else { IMPATIENCE };
        air.wait(&empty, state, patience);

        air.forward = forward_laden;
        laden.turn_round(state);
        air.begin(PhaseKind::Laden, state);
        air.run(&laden, state, &drivers.laden)?;

        air.begin(PhaseKind::Unloading, state);
        let unloading = haul.unloading;
        air.stand(&laden, state, unloading.time, unloading.high_idle);
        laden.load(state, haul.empty_state);
        air.ask(&laden, state, plan.empty_start, None, Call::AsPlanned);
        Ok(())
    }
}
