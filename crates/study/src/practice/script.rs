//! A driver on paper: what is done at which place or time.

use haul::practice::{Action, ActionError, Practice, SpeedChoice, Stage};
use haul::{LadenChange, Target};
use plan::Driven;
use quantity::{Length, Speed, Time};

/// When something is done on a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum When {
    /// Standing, before the run.
    Start,
    /// At a travel distance.
    At(Length),
    /// This long after moving off.
    After(Time),
}

/// How long a stop lasts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StopUntil {
    /// Until the change ordered is complete.
    Complete,
    /// For a time.
    For(Time),
}

/// What is done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Do {
    /// Orders the pressures of a cell.
    Order(Target),
    /// Chooses a speed.
    Speed(SpeedChoice),
    /// Stops, and goes on by itself.
    Stop(StopUntil),
    /// Before a run: moves off at once, without waiting for what was ordered.
    GoNow,
}

/// One line of the paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ScriptItem {
    /// On the laden run, else on the empty one.
    pub laden: bool,
    /// When.
    pub when: When,
    /// What.
    pub action: Do,
}

/// The paper. Before each run the driver waits until what was ordered is complete, unless told to go.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Script {
    items: Vec<ScriptItem>,
    /// What is ordered before the laden run is ordered as soon as loading begins.
    while_loading: bool,
}

/// Longest a paper driver waits standing before moving off anyway.
const LONGEST_WAIT: u32 = 6 * 3600;
/// How far from a place a stop for it may end.
const AT_THE_PLACE: Length = Length::from_m(50.0);
/// Longest drive.
const LONGEST_DRIVE: u32 = 72 * 3600;

impl Script {
    /// Items in the order they are done.
    pub fn new(items: Vec<ScriptItem>) -> Self {
        Self { items, while_loading: false }
    }

    /// The items.
    pub fn items(&self) -> &[ScriptItem] {
        &self.items
    }

    /// The plan of a haul, as its driver would write it down.
    pub fn of_plan(driven: &Driven) -> Self {
        let plan = &driven.plan;
        let item = |laden, when, action| ScriptItem { laden, when, action };
        let mut items = vec![item(false, When::Start, Do::Order(plan.empty_start))];
        for (laden, changes) in [(false, &plan.empty), (true, &plan.laden)] {
            if laden && plan.laden_change != LadenChange::Rolling {
                items.push(item(true, When::Start, Do::Order(plan.laden_start)));
            }
            for change in changes {
                items.push(item(laden, When::At(change.at), Do::Order(change.to)));
                if change.standing {
                    items.push(item(laden, When::At(change.at), Do::Stop(StopUntil::Complete)));
                }
            }
        }
        Self { items, while_loading: plan.laden_change == LadenChange::WhileLoading }
    }

    /// Drives it to the end.
    ///
    /// # Errors
    /// [`ActionError`] for a line that cannot be done.
    pub fn drive(&self, practice: &mut Practice) -> Result<(), ActionError> {
        let mut on_paper = OnPaper { items: self.items.clone(), ..OnPaper::default() };
        while !practice.is_over() && practice.second() < LONGEST_DRIVE {
            if self.while_loading && practice.stage() == Stage::Loading {
                on_paper.order_at_start(practice, true)?;
            }
            on_paper.second(practice)?;
            practice.advance(1);
        }
        Ok(())
    }
}

/// Where on the paper the driver is.
#[derive(Debug, Default)]
struct OnPaper {
    items: Vec<ScriptItem>,
    stopped: Option<StopUntil>,
    stood: u32,
    moved_off: u32,
    waited: u32,
}

impl OnPaper {
    fn second(&mut self, practice: &mut Practice) -> Result<(), ActionError> {
        match practice.stage() {
            Stage::Start => self.before(practice, false),
            Stage::Loaded => self.before(practice, true),
            Stage::Empty => self.on_the_run(practice, false),
            Stage::Laden => self.on_the_run(practice, true),
            Stage::Loading | Stage::Arrived | Stage::Stuck => Ok(()),
        }
    }

    /// Does what stands on the paper for before a run; tells whether to go at once.
    fn order_at_start(
        &mut self,
        practice: &mut Practice,
        laden: bool,
    ) -> Result<bool, ActionError> {
        let mut go = false;
        let at_start = |item: &ScriptItem| item.laden == laden && item.when == When::Start;
        while let Some(index) = self.items.iter().position(at_start) {
            match self.items.remove(index).action {
                Do::Order(to) => practice.act(Action::Order(to))?,
                Do::Speed(choice) => practice.act(Action::Speed(choice))?,
                Do::GoNow => go = true,
                Do::Stop(_) => {}
            }
        }
        Ok(go)
    }

    fn before(&mut self, practice: &mut Practice, laden: bool) -> Result<(), ActionError> {
        let go = self.order_at_start(practice, laden)?;
        self.waited += 1;
        if go || !practice.state().is_changing() || self.waited > LONGEST_WAIT {
            practice.act(Action::Go)?;
            (self.moved_off, self.waited) = (practice.second(), 0);
        }
        Ok(())
    }

    fn on_the_run(&mut self, practice: &mut Practice, laden: bool) -> Result<(), ActionError> {
        // A truck that came to stand at a place is there for everything that is done at it.
        let stands = practice.state().speed() <= Speed::ZERO && self.stopped.is_some();
        let slack = if stands { AT_THE_PLACE } else { Length::ZERO };
        let here = practice.state().travelled() + slack;
        let ahead = here + practice.stopping_distance();
        let since = f64::from(practice.second() - self.moved_off);
        let due = |item: &ScriptItem| {
            item.laden == laden
                && match (item.when, item.action) {
                    (When::Start, _) => true,
                    // A stop is braked for in advance.
                    (When::At(place), Do::Stop(_)) => place <= ahead,
                    (When::At(place), _) => place <= here,
                    (When::After(time), _) => time.as_s() <= since,
                }
        };
        while let Some(index) = self.items.iter().position(due) {
            match self.items.remove(index).action {
                Do::Order(to) => practice.act(Action::Order(to))?,
                Do::Speed(choice) => practice.act(Action::Speed(choice))?,
                Do::Stop(until) => {
                    practice.act(Action::Stop)?;
                    if practice.is_held_up() {
                        (self.stopped, self.stood) = (Some(until), 0);
                    }
                }
                Do::GoNow => {}
            }
        }
        match self.stopped {
            Some(until) => self.stand(practice, until),
            None => Ok(()),
        }
    }

    fn stand(&mut self, practice: &mut Practice, until: StopUntil) -> Result<(), ActionError> {
        if practice.state().speed().as_m_per_s() > 0.0 {
            return Ok(());
        }
        self.stood += 1;
        let over = match until {
            StopUntil::Complete => !practice.state().is_changing() || self.stood > LONGEST_WAIT,
            StopUntil::For(time) => f64::from(self.stood) >= time.as_s(),
        };
        if over {
            self.stopped = None;
            practice.act(Action::Go)?;
        }
        Ok(())
    }
}
