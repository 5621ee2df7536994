//! The drive itself, second by second.

use model::haul_cycle::HaulCycle;
use quantity::{Length, Speed, Time};

use super::{Acted, Action, ActionError, SpeedChoice, Surprise};
use crate::{
    Course, CourseError, DrivingStyle, Envelope, Record, Sample, SetPressures, StandUntil, State,
    Stepper, StepperError, Target, Truck, TruckError,
};

/// Where in the haul the drive is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Stage {
    /// Standing before the empty run, reservoirs up.
    Start,
    /// On the way to loading.
    Empty,
    /// Being loaded.
    Loading,
    /// Loaded, standing.
    Loaded,
    /// On the way from loading.
    Laden,
    /// Arrived.
    Arrived,
    /// Stuck: the engine cannot pull the load on.
    Stuck,
}

/// What happened, for whoever drives to see.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Event {
    /// Another part of the haul began.
    Stage(Stage),
    /// The change ordered is complete on every channel.
    Complete,
    /// Something is in the way.
    MustStop,
    /// The way is free again.
    FreeAgain,
    /// The lay-by is closed, the truck drives on.
    LayByClosed,
}

/// An event with its second.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Happened {
    /// Seconds since the practice began.
    pub second: u32,
    /// What.
    pub event: Event,
}

/// Why a haul cannot be practised.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum PracticeError {
    /// The truck cannot be made ready.
    #[error(transparent)]
    Truck(#[from] TruckError),
    /// The route cannot be cut into cells.
    #[error(transparent)]
    Course(#[from] CourseError),
    /// The air cannot start.
    #[error(transparent)]
    Stepper(#[from] StepperError),
}

/// Speed at which a braking truck stands, m/s.
const STANDS: f64 = 0.5;
/// Speed a second begins with at least, m/s, so that pulling away takes no longer than it.
const PULLING_AWAY: f64 = 0.25;
/// Road over which a closed lay-by keeps others out, either way.
const NEAR_LAY_BY: Length = Length::from_m(250.0);

/// A drive under way; a copy of it goes on exactly here.
#[derive(Debug, Clone)]
pub struct Practice {
    pub(super) truck: Truck,
    /// Caps of the ladder; those of the truck itself are what the driver chose.
    pub(super) caps: Vec<f64>,
    pub(super) courses: [Course; 2],
    pub(super) envelopes: [Envelope; 2],
    pub(super) style: DrivingStyle,
    pub(super) loading: model::haul_cycle::Standing,
    pub(super) load_states: [usize; 2],
    pub(super) surprises: Vec<Surprise>,
    pub(super) state: State,
    pub(super) stage: Stage,
    pub(super) second: u32,
    pub(super) choice: SpeedChoice,
    pub(super) stopping: bool,
    pub(super) loading_left: Time,
    pub(super) blocked: Option<Time>,
    pub(super) acted: Vec<Acted>,
    pub(super) happened: Vec<Happened>,
    pub(super) samples: Samples,
}

/// One sample a second.
#[derive(Debug, Clone, Default)]
pub(super) struct Samples(pub(super) Vec<Sample>);

impl Record for Samples {
    const WANTS: bool = true;

    fn take(&mut self, sample: Sample) {
        self.0.push(sample);
    }
}

impl Practice {
    /// The truck standing at the start of the empty run, on the rung it was parked on, reservoirs up.
    ///
    /// # Errors
    /// [`PracticeError`] for a truck or a route that cannot be driven.
    pub fn new(
        haul: &HaulCycle,
        set: SetPressures,
        surprises: Vec<Surprise>,
        cell: Length,
        style: DrivingStyle,
    ) -> Result<Self, PracticeError> {
        let mut haul = haul.clone();
        for surprise in &surprises {
            surprise.on_haul(&mut haul);
        }
        let mut truck = Truck::new(&haul, set)?;
        for surprise in &surprises {
            surprise.on_truck(&mut truck);
        }
        let (empty, laden) = Course::of_haul(&haul, cell, &style)?;
        let envelopes = [&empty, &laden].map(|course| Envelope::new(course, &[], &style));
        let parked = Target { rung: haul.shift_start.parked_rung, load_state: haul.empty_state };
        let supply = haul.shift_start.supply.max(haul.combination.supply.governor.cut_in);
        let stepper = Stepper::new(&truck, &empty, &envelopes[0], style);
        let state = stepper.start(parked, haul.empty_state, supply).map_err(StepperError::from)?;
        Ok(Self {
            caps: truck.caps.clone(),
            truck,
            courses: [empty, laden],
            envelopes,
            style,
            loading: haul.loading,
            load_states: [haul.empty_state, haul.laden_state],
            surprises,
            state,
            stage: Stage::Start,
            second: 0,
            choice: SpeedChoice::KeepToCap,
            stopping: false,
            loading_left: haul.loading.time,
            blocked: None,
            acted: Vec::new(),
            happened: Vec::new(),
            samples: Samples::default(),
        })
    }

    /// Does something now.
    ///
    /// # Errors
    /// [`ActionError`] for what cannot be done; it is not noted then.
    pub fn act(&mut self, action: Action) -> Result<(), ActionError> {
        if self.is_over() {
            return Err(ActionError::Over);
        }
        match action {
            Action::Order(to) => self.order(to)?,
            Action::Speed(SpeedChoice::At(speed)) if speed <= Speed::ZERO => {
                return Err(ActionError::NoSpeed { speed });
            }
            Action::Speed(choice) => self.choice = choice,
            Action::Stop if self.near_closed_lay_by() => self.note(Event::LayByClosed),
            Action::Stop => self.stopping = true,
            Action::Go => match self.stage {
                Stage::Loading => return Err(ActionError::Loading { left: self.loading_left }),
                Stage::Start => self.move_off(Stage::Empty),
                Stage::Loaded => self.move_off(Stage::Laden),
                _ => self.stopping = false,
            },
        }
        self.acted.push(Acted { second: self.second, action });
        Ok(())
    }

    fn order(&mut self, to: Target) -> Result<(), ActionError> {
        let [empty, laden] = self.load_states;
        let known = to.rung < self.caps.len() && (to.load_state == empty || to.load_state == laden);
        if !known {
            return Err(ActionError::NoSuchCell { rung: to.rung, load_state: to.load_state });
        }
        let wrong = to.load_state == laden && self.surprises.contains(&Surprise::WrongLoadState);
        let to = if wrong {
            // It happens once: who sees it and orders again is heard.
            self.surprises.retain(|surprise| *surprise != Surprise::WrongLoadState);
            Target { load_state: empty, ..to }
        } else {
            to
        };
        self.truck.caps.clone_from(&self.caps);
        let course = self.course_index();
        let stepper =
            Stepper::new(&self.truck, &self.courses[course], &self.envelopes[course], self.style);
        stepper.order(&mut self.state, to);
        Ok(())
    }

    fn move_off(&mut self, into: Stage) {
        self.stage = into;
        self.stopping = false;
        let course = self.course_index();
        let stepper =
            Stepper::new(&self.truck, &self.courses[course], &self.envelopes[course], self.style);
        stepper.turn_round(&mut self.state);
        self.note(Event::Stage(into));
    }

    /// Lets so many seconds pass; fewer if the drive is over before.
    pub fn advance(&mut self, seconds: u32) {
        for _ in 0..seconds {
            if self.is_over() {
                return;
            }
            self.tick();
        }
    }

    fn tick(&mut self) {
        let was_changing = self.state.is_changing();
        self.second += 1;
        match self.stage {
            Stage::Start | Stage::Loaded => self.stand(true),
            Stage::Loading => {
                self.stand(self.loading.high_idle);
                self.loading_left = Time::from_s(self.loading_left.as_s() - 1.0);
                if self.loading_left.as_s() <= 1e-9 {
                    self.state.load_state = self.load_states[1];
                    self.enter(Stage::Loaded);
                }
            }
            Stage::Empty | Stage::Laden => self.roll(),
            Stage::Arrived | Stage::Stuck => {}
        }
        if was_changing && !self.state.is_changing() {
            self.note(Event::Complete);
        }
    }

    /// Stands to the end of this second.
    fn stand(&mut self, high_idle: bool) {
        let course = self.course_index();
        let stepper =
            Stepper::new(&self.truck, &self.courses[course], &self.envelopes[course], self.style);
        let left = Time::from_s((f64::from(self.second) - self.state.t).max(1e-3));
        let mut last = Samples::default();
        // A stand for a time always ends.
        let _ends = stepper.stand(&mut self.state, StandUntil::Passed(left), high_idle, &mut last);
        // A change may end within the second: the last sample is the second's.
        self.samples.0.extend(last.0.pop());
    }

    fn roll(&mut self) {
        self.look_ahead();
        let must_stand = self.stopping || self.blocked.is_some();
        if must_stand && self.state.v <= STANDS {
            self.stand(true);
            self.wait_for_the_way();
            return;
        }
        let wanted = if must_stand { 0.0 } else { self.chosen_speed() };
        self.truck.caps.fill(wanted);
        let course = self.course_index();
        let length = self.courses[course].length();
        let stepper =
            Stepper::new(&self.truck, &self.courses[course], &self.envelopes[course], self.style);
        while f64::from(self.second) - self.state.t > 1e-3
            && self.state.s < length.as_m() - 1e-6
            && !(must_stand && self.state.v <= STANDS && self.state.s > 0.0)
        {
            let left = f64::from(self.second) - self.state.t;
            let to = Length::from_m(self.state.s + self.state.v.max(PULLING_AWAY) * left);
            if stepper.step(&mut self.state, to).is_err() {
                self.state.v = 0.0;
                stepper.sample(&mut self.state, &mut self.samples);
                self.enter(Stage::Stuck);
                return;
            }
        }
        stepper.sample(&mut self.state, &mut self.samples);
        if self.state.s >= length.as_m() - 1e-6 {
            self.state.v = 0.0;
            let next = if self.stage == Stage::Empty { Stage::Loading } else { Stage::Arrived };
            self.enter(next);
        }
    }

    /// Notices what is in the way.
    fn look_ahead(&mut self) {
        let (stage, at) = (self.stage, self.state.travelled());
        let seen = self.surprises.iter().position(|surprise| {
            matches!(surprise, Surprise::UnexpectedStop { run, at: place, .. }
                if *run == stage && *place <= at)
        });
        if let Some(index) = seen
            && let Surprise::UnexpectedStop { time, .. } = self.surprises.remove(index)
        {
            self.blocked = Some(time);
            self.note(Event::MustStop);
        }
    }

    fn wait_for_the_way(&mut self) {
        let Some(left) = self.blocked else { return };
        let left = Time::from_s(left.as_s() - 1.0);
        self.blocked = (left.as_s() > 1e-9).then_some(left);
        if self.blocked.is_none() {
            self.note(Event::FreeAgain);
        }
    }

    fn chosen_speed(&self) -> f64 {
        match self.choice {
            SpeedChoice::KeepToCap => self.cap().as_m_per_s(),
            SpeedChoice::Road => f64::from(u16::MAX),
            SpeedChoice::At(speed) => speed.as_m_per_s(),
        }
    }

    fn near_closed_lay_by(&self) -> bool {
        let stands = self.state.travelled() + self.stopping_distance();
        let stands = self.courses[self.course_index()].chainage(stands);
        matches!(self.stage, Stage::Empty | Stage::Laden)
            && self.surprises.iter().any(|surprise| {
                matches!(surprise, Surprise::ClosedLayBy { at }
                    if (*at - stands).abs() < NEAR_LAY_BY)
            })
    }

    fn enter(&mut self, stage: Stage) {
        self.stage = stage;
        self.note(Event::Stage(stage));
    }

    fn note(&mut self, event: Event) {
        self.happened.push(Happened { second: self.second, event });
    }

    pub(super) fn course_index(&self) -> usize {
        usize::from(matches!(self.stage, Stage::Laden | Stage::Arrived | Stage::Stuck))
    }
}
