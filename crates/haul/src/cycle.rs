//! The whole haul: start of shift, empty run, loading, laden run, unloading.

use model::haul_cycle::{HaulCycle, LadenDirection};
use quantity::{GaugePressure, Length, Time, Volume};

use crate::{
    CappedStretch, Course, Direction, DrivingStyle, Envelope, PlannedChange, Record, Schedule,
    StandUntil, State, Stepper, StepperError, Target, Truck,
};

/// When the tires go from the empty to the laden pressures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LadenChange {
    /// Ordered on the empty run; the schedule of that run holds it.
    Rolling,
    /// Ordered when loading begins, where the maker gives a standing row.
    WhileLoading,
    /// Ordered when loading has ended, at high idle.
    AfterLoading,
}

/// Everything the driver does in one haul.
#[derive(Debug, Clone, PartialEq)]
pub struct CyclePlan {
    /// Cell of the first stretch of the empty run.
    pub empty_start: Target,
    /// Changes on the empty run.
    pub empty: Vec<PlannedChange>,
    /// Stretches of the empty run under a cap from a known place on.
    pub empty_caps: Vec<CappedStretch>,
    /// How the laden pressures are reached.
    pub laden_change: LadenChange,
    /// Cell of the first stretch of the laden run.
    pub laden_start: Target,
    /// Changes on the laden run.
    pub laden: Vec<PlannedChange>,
    /// Stretches of the laden run under a cap from a known place on.
    pub laden_caps: Vec<CappedStretch>,
}

/// Parts of the haul.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PhaseKind {
    /// Building up air and setting tires before the first move.
    ShiftStart,
    /// On the way to loading.
    Empty,
    /// Loading, and waiting for the laden pressures.
    Loading,
    /// On the way from loading.
    Laden,
    /// Unloading.
    Unloading,
}

/// One part of the haul as it went.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Phase {
    /// Which part.
    pub kind: PhaseKind,
    /// How long it took.
    pub time: Time,
    /// Fuel burnt in it.
    pub fuel: Volume,
    /// Free air compressed.
    pub compressed: Volume,
    /// Time the compressor delivered.
    pub compressor_loaded: Time,
    /// Longest unbroken stretch of it.
    pub longest_loaded: Time,
    /// Lowest service pressure.
    pub lowest_supply: GaugePressure,
    /// Time during which a change was under way.
    pub changing: Time,
    /// Time waited, standing, for a change alone.
    pub waited: Time,
    /// Distance above the cap of the pressures held.
    pub over_cap: Length,
}

/// A haul as it went, part by part.
#[derive(Debug, Clone, PartialEq)]
pub struct Cycle {
    /// The parts in order.
    pub phases: Vec<Phase>,
    /// State at the end.
    pub end: State,
}

impl Cycle {
    /// Sums a time over the parts of the repeating cycle: all but the start of shift.
    pub fn time(&self) -> Time {
        self.repeating().map(|phase| phase.time).sum()
    }

    /// Fuel of the repeating cycle.
    pub fn fuel(&self) -> Volume {
        self.repeating().map(|phase| phase.fuel).sum()
    }

    /// Compressor time of the repeating cycle.
    pub fn compressor_loaded(&self) -> Time {
        self.repeating().map(|phase| phase.compressor_loaded).sum()
    }

    /// Free air compressed in the repeating cycle.
    pub fn compressed(&self) -> Volume {
        self.repeating().map(|phase| phase.compressed).sum()
    }

    /// Lowest service pressure of the repeating cycle.
    pub fn lowest_supply(&self) -> Option<GaugePressure> {
        self.repeating().map(|phase| phase.lowest_supply).min_by(GaugePressure::total_cmp)
    }

    /// Time waited for changes in the repeating cycle.
    pub fn waited(&self) -> Time {
        self.repeating().map(|phase| phase.waited).sum()
    }

    /// The part of a kind.
    pub fn phase(&self, kind: PhaseKind) -> Option<&Phase> {
        self.phases.iter().find(|phase| phase.kind == kind)
    }

    fn repeating(&self) -> impl Iterator<Item = &Phase> {
        self.phases.iter().filter(|phase| phase.kind != PhaseKind::ShiftStart)
    }

    /// Drives a whole haul as planned.
    ///
    /// # Errors
    /// [`StepperError`] where the truck cannot climb or a change never ends.
    pub fn drive<R: Record>(
        haul: &HaulCycle,
        truck: &Truck,
        courses: (&Course, &Course),
        plan: &CyclePlan,
        style: DrivingStyle,
        record: &mut R,
    ) -> Result<Self, StepperError> {
        Self::drive_at(haul, truck, courses, plan, style, 1.0, record)
    }

    /// The same by a driver who is faster or slower everywhere by a factor.
    ///
    /// # Errors
    /// As [`Self::drive`].
    pub fn drive_at<R: Record>(
        haul: &HaulCycle,
        truck: &Truck,
        courses: (&Course, &Course),
        plan: &CyclePlan,
        style: DrivingStyle,
        road_speed: f64,
        record: &mut R,
    ) -> Result<Self, StepperError> {
        let (empty_course, laden_course) = courses;
        let empty_envelope =
            Envelope::new(empty_course, &plan.empty_caps, &style).scaled(road_speed);
        let laden_envelope =
            Envelope::new(laden_course, &plan.laden_caps, &style).scaled(road_speed);
        let empty = Stepper::new(truck, empty_course, &empty_envelope, style);
        let laden = Stepper::new(truck, laden_course, &laden_envelope, style);

        let parked = Target { rung: haul.shift_start.parked_rung, load_state: haul.empty_state };
        let mut state = empty.start(parked, haul.empty_state, haul.shift_start.supply)?;
        let mut phases = Vec::with_capacity(5);
        let mut mark = Mark::at(&state);

        // The brakes come first: no move, and no tire air, before the reservoirs are up.
        let up = StandUntil::Supply(haul.combination.supply.governor.cut_in);
        empty.stand(&mut state, up, true, record)?;
        empty.order(&mut state, plan.empty_start);
        empty.stand(&mut state, StandUntil::Complete, true, record)?;
        let waited = state.clock();
        phases.push(mark.phase(PhaseKind::ShiftStart, &mut state, truck, waited));

        empty.run(&mut state, &mut Schedule::new(plan.empty.clone()), record)?;
        phases.push(mark.phase(PhaseKind::Empty, &mut state, truck, Time::ZERO));

        if plan.laden_change == LadenChange::WhileLoading {
            empty.order(&mut state, plan.laden_start);
        }
        let loading = haul.loading;
        empty.stand(&mut state, StandUntil::Passed(loading.time), loading.high_idle, record)?;
        empty.load(&mut state, haul.laden_state);
        let loaded_at = state.clock();
        if state.ordered() != plan.laden_start {
            empty.order(&mut state, plan.laden_start);
        }
        // Never move off before the laden pressures are complete.
        empty.stand(&mut state, StandUntil::Complete, true, record)?;
        let waited = state.clock() - loaded_at;
        phases.push(mark.phase(PhaseKind::Loading, &mut state, truck, waited));

        laden.turn_round(&mut state);
        laden.run(&mut state, &mut Schedule::new(plan.laden.clone()), record)?;
        phases.push(mark.phase(PhaseKind::Laden, &mut state, truck, Time::ZERO));

        let unloading = haul.unloading;
        laden.stand(&mut state, StandUntil::Passed(unloading.time), unloading.high_idle, record)?;
        laden.load(&mut state, haul.empty_state);
        // Going down to the empty pressures is done on the road, under the lower of the two caps.
        laden.order(&mut state, plan.empty_start);
        phases.push(mark.phase(PhaseKind::Unloading, &mut state, truck, Time::ZERO));
        Ok(Self { phases, end: state })
    }
}

/// Directions of the empty and the laden run.
pub(crate) fn directions(laden: LadenDirection) -> (Direction, Direction) {
    match laden {
        LadenDirection::Forward => (Direction::Backward, Direction::Forward),
        LadenDirection::Backward => (Direction::Forward, Direction::Backward),
    }
}

impl Course {
    /// The courses of the empty and the laden run of a haul.
    ///
    /// # Errors
    /// [`crate::CourseError`] as [`Course::new`].
    pub fn of_haul(
        haul: &HaulCycle,
        cell: Length,
        style: &DrivingStyle,
    ) -> Result<(Self, Self), crate::CourseError> {
        let (empty, laden) = directions(haul.laden_direction);
        Ok((
            Self::new(&haul.route, empty, cell, style)?,
            Self::new(&haul.route, laden, cell, style)?,
        ))
    }
}

/// Where sums stood when a part began.
struct Mark {
    clock: Time,
    fuel: Volume,
    compressed: Volume,
    loaded: Time,
    changing: Time,
    over_cap: Length,
}

impl Mark {
    fn at(state: &State) -> Self {
        Self {
            clock: state.clock(),
            fuel: state.totals().fuel(),
            compressed: state.air().totals().compressed(),
            loaded: state.air().duty().loaded(),
            changing: state.totals().changing(),
            over_cap: state.totals().over_cap(),
        }
    }

    fn phase(&mut self, kind: PhaseKind, state: &mut State, truck: &Truck, waited: Time) -> Phase {
        let phase = Phase {
            kind,
            time: state.clock() - self.clock,
            fuel: state.totals().fuel() - self.fuel,
            compressed: state.air().totals().compressed() - self.compressed,
            compressor_loaded: state.air().duty().loaded() - self.loaded,
            longest_loaded: state.longest_loaded(),
            lowest_supply: state.lowest_supply(),
            changing: state.totals().changing() - self.changing,
            waited,
            over_cap: state.totals().over_cap() - self.over_cap,
        };
        *self = Self::at(state);
        state.forget_extremes(truck.ambient());
        phase
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::SetPressures;

    /// The invented haul with pressures of the usual size, set by (load state, rung).
    fn planned() -> (HaulCycle, Truck, CyclePlan) {
        let haul = example::haul();
        let psi = [[20.0, 25.0, 35.0], [60.0, 68.0, 88.0]];
        let set = SetPressures::new(2, 2, 3, |_, load_state, rung| {
            GaugePressure::from_psi(psi[load_state][rung])
        });
        let truck = Truck::new(&haul, set).expect("the invented truck is sound");
        let change = |km, rung, load_state| PlannedChange {
            at: Length::from_km(km),
            to: Target { rung, load_state },
            standing: false,
        };
        let plan = CyclePlan {
            empty_start: Target { rung: 2, load_state: 0 },
            empty: vec![change(21.0, 1, 0), change(36.5, 0, 0)],
            empty_caps: Vec::new(),
            laden_change: LadenChange::AfterLoading,
            laden_start: Target { rung: 0, load_state: 1 },
            laden: vec![change(2.9, 1, 1), change(15.0, 2, 1)],
            laden_caps: Vec::new(),
        };
        (haul, truck, plan)
    }

    #[test]
    fn the_air_of_a_whole_cycle_balances() {
        let (haul, truck, plan) = planned();
        let style = DrivingStyle::default();
        let (empty, laden) = Course::of_haul(&haul, Length::from_m(10.0), &style).unwrap();
        let envelope = Envelope::new(&empty, &[], &style);
        let parked = Target { rung: haul.shift_start.parked_rung, load_state: haul.empty_state };
        let start = Stepper::new(&truck, &empty, &envelope, style)
            .start(parked, haul.empty_state, haul.shift_start.supply)
            .unwrap();
        let cycle =
            Cycle::drive(&haul, &truck, (&empty, &laden), &plan, style, &mut crate::NoRecord)
                .unwrap();
        let contents = |state: &State| truck.network.contents(state.air()).as_m3();
        let totals = cycle.end.air().totals();
        let taken = totals.brakes() + totals.vented() + totals.lines();
        let grown = contents(&cycle.end) - contents(&start);
        let off = grown - (totals.compressed() - taken).as_m3();
        assert!(totals.compressed().as_m3() > 5.0 && totals.vented().as_m3() > 0.5);
        assert!(off.abs() < 1e-9 * totals.compressed().as_m3(), "{off} m³");
    }

    #[test]
    fn parts_of_the_cycle_add_up_to_the_clock_and_the_truck_waits_for_its_laden_pressures() {
        let (haul, truck, plan) = planned();
        let style = DrivingStyle::default();
        let (empty, laden) = Course::of_haul(&haul, Length::from_m(10.0), &style).unwrap();
        let mut trace = crate::Trace::every(Time::ZERO);
        let cycle =
            Cycle::drive(&haul, &truck, (&empty, &laden), &plan, style, &mut trace).unwrap();
        let all: Time = cycle.phases.iter().map(|phase| phase.time).sum();
        assert!((all - cycle.end.clock()).abs().as_s() < 1e-6);
        let start = cycle.phase(PhaseKind::ShiftStart).unwrap();
        assert!((all - start.time - cycle.time()).abs().as_s() < 1e-6);
        let loading = cycle.phase(PhaseKind::Loading).unwrap();
        assert!(loading.waited > Time::from_min(3.0), "{}", loading.waited);
        assert!((loading.time - haul.loading.time - loading.waited).abs().as_s() < 1e-6);
        let first_laden_move = trace
            .samples()
            .iter()
            .find(|sample| sample.load_state == 1 && sample.speed.as_m_per_s() > 0.0)
            .unwrap();
        assert!(!first_laden_move.changing);
    }
}
