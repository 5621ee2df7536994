//! The invented haul cut to what one test needs.
#![allow(dead_code, missing_docs, reason = "each test file uses its own part of it")]

use haul::{
    CappedStretch, Course, Direction, DrivingStyle, Envelope, PlannedChange, Record, Schedule,
    SetPressures, State, Stepper, StepperError, Target, Trace, Truck,
};
use model::haul_cycle::HaulCycle;
use model::route::{Leg, Profile, Route, Surface};
use quantity::{GaugePressure, Length, Speed, Time};

pub const EMPTY: usize = example::EMPTY;
pub const LADEN: usize = example::LADEN;
pub const SPUR: usize = 0;
pub const GRAVEL: usize = 1;
pub const HIGHWAY: usize = 2;

/// Pressures of the invented ladder, psi: empty and laden, spur, gravel and highway.
pub fn pressures() -> SetPressures {
    let psi = [[20.0, 25.0, 35.0], [60.0, 68.0, 88.0]];
    SetPressures::new(2, 2, 3, |_, load_state, rung| GaugePressure::from_psi(psi[load_state][rung]))
}

pub fn truck(haul: &HaulCycle) -> Truck {
    Truck::new(haul, pressures()).expect("the invented truck is sound")
}

pub fn laden(rung: usize) -> Target {
    Target { rung, load_state: LADEN }
}

/// A route with these legs on a profile of (km, m).
pub fn route(legs: Vec<Leg>, profile: &[(f64, f64)]) -> Route {
    let points = profile.iter().map(|&(km, m)| (Length::from_km(km), Length::from_m(m))).collect();
    Route { legs, profile: Profile::new(points).expect("rising"), ..example::route() }
}

/// One gravel leg of constant grade with a rolling resistance of its own.
pub fn ramp(km: f64, grade: f64, rolling_resistance: f64, kmh: f64) -> Route {
    let mut leg = example::leg("ramp", 0.0, km, Surface::Gravel, kmh);
    leg.rolling_resistance = rolling_resistance;
    route(vec![leg], &[(0.0, 0.0), (km, km * 1000.0 * grade)])
}

pub fn forward(route: &Route, cell_m: f64) -> Course {
    let style = DrivingStyle::default();
    Course::new(route, Direction::Forward, Length::from_m(cell_m), &style).expect("a sound route")
}

/// What a run needs besides its truck and course.
pub struct Run<'a> {
    pub truck: &'a Truck,
    pub course: &'a Course,
    pub from: Target,
    pub changes: Vec<PlannedChange>,
    pub capped: Vec<CappedStretch>,
}

impl<'a> Run<'a> {
    pub fn new(truck: &'a Truck, course: &'a Course, from: Target) -> Self {
        Self { truck, course, from, changes: Vec::new(), capped: Vec::new() }
    }

    pub fn change(mut self, km: f64, to: Target) -> Self {
        self.changes.push(PlannedChange { at: Length::from_km(km), to, standing: false });
        self
    }

    /// Drives it whole, full reservoirs at the start.
    pub fn drive<R: Record>(&self, record: &mut R) -> Result<State, StepperError> {
        let style = DrivingStyle::default();
        let envelope = Envelope::new(self.course, &self.capped, &style);
        let stepper = Stepper::new(self.truck, self.course, &envelope, style);
        let supply = GaugePressure::from_psi(125.0);
        let mut state = stepper.start(self.from, self.from.load_state, supply)?;
        stepper.run(&mut state, &mut Schedule::new(self.changes.clone()), record)?;
        Ok(state)
    }

    pub fn end(&self) -> State {
        self.drive(&mut haul::NoRecord).expect("it drives")
    }

    /// Every step of the run.
    pub fn trace(&self) -> Trace {
        let mut trace = Trace::every(Time::ZERO);
        self.drive(&mut trace).expect("it drives");
        trace
    }
}

/// Clock and place at which each change was complete.
pub fn completions(trace: &Trace) -> Vec<(Time, Length)> {
    trace
        .samples()
        .windows(2)
        .filter(|pair| pair[0].changing && !pair[1].changing)
        .map(|pair| (pair[1].time, pair[1].travelled))
        .collect()
}

/// The haul with masses scaled so that the laden gross is this.
pub fn with_gross(t: f64) -> HaulCycle {
    let mut haul = example::haul();
    let state = &mut haul.combination.load_states[LADEN];
    let scale = t / state.gross().as_t();
    for group in &mut state.groups {
        group.mass = group.mass * scale;
    }
    haul
}

/// The haul whose rungs are capped at this speed, all alike.
pub fn without_caps(mut haul: HaulCycle) -> HaulCycle {
    for rung in &mut haul.combination.rungs {
        rung.cap = Speed::from_kmh(300.0);
    }
    haul
}
