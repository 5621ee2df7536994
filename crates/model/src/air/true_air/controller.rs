//! How the controller works a channel: a valve opened for a while, shut, a wait, a reading, and on.
//!
//! A gauge at the valve reads the tires only while nothing flows, so the controller fills or vents for
//! a time it reckons from the last reading, waits for the line to settle, and reads again. Common
//! practice, no source; the times below are this project's choice.

use super::TrueAir;
use super::state::TrueState;
use super::step::OPENS_ABOVE;

/// Wait before a reading, s: the line and the tires come to one pressure.
const SETTLES: f64 = 4.0;
/// Time for which a line is charged so that wheel valves open, s.
const CHARGES: f64 = 1.5;
/// Longest charging before the controller reads what there is, s.
const CHARGES_AT_MOST: f64 = 20.0;
/// Time for which a line is let go after the work, s.
const RELEASES: f64 = 6.0;
/// First stretch of filling or venting, s.
const FIRST_STRETCH: f64 = 15.0;
/// Shortest and longest stretch after that, s.
const STRETCH: (f64, f64) = (2.0, 60.0);
/// Share of the deadband within which a pressure counts as reached once work has begun.
const REACHED_SHARE: f64 = 0.3;
/// Narrowest such band, Pa.
const REACHED_LEAST: f64 = 2e3;
/// A stretch that moves the reading by less than this moved nothing, Pa.
const MOVES: f64 = 0.7e3;
/// Stretches that move nothing before a channel is given up.
const IDLE_STRETCHES: u32 = 4;
/// Longest work on one order, s.
const LONGEST_WORK: f64 = 3600.0;

/// What the controller has a channel's valves do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Valve {
    Shut,
    Fill,
    Vent,
    /// Lets the line go after the work; self-closing wheel valves shut at once.
    Release,
}

#[derive(Debug, Clone, Copy, PartialEq, Default)]
enum Stage {
    #[default]
    Rest,
    Charge,
    Settle,
    Work {
        filling: bool,
        stretch: f64,
    },
    Release,
}

/// The controller's work on one channel.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[expect(clippy::struct_excessive_bools, reason = "each answers its own question")]
pub(super) struct Job {
    stage: Stage,
    /// When the stage began, by the clock of the state.
    since: f64,
    /// Time the valve stood open in this stage, s.
    open_for: f64,
    /// What the gauge shall read, Pa.
    target: Option<f64>,
    /// Whether the target is reached; a check does not undo it.
    reached: bool,
    pub gave_up: bool,
    /// Begun as a check of its own, not by an order.
    checking: bool,
    begun: f64,
    idle_stretches: u32,
    /// Whether the first reading of the job was taken, and what moved since.
    working: bool,
    before: f64,
    last_filling: Option<bool>,
    last_open: f64,
    pub reading: Option<(f64, f64)>,
    checked_at: f64,
}

impl Job {
    pub fn order(&mut self, target: f64, clock: f64) {
        self.target = Some(target);
        self.reached = false;
        self.gave_up = false;
        self.checking = false;
        self.begin(clock);
    }

    fn begin(&mut self, clock: f64) {
        self.begun = clock;
        self.working = false;
        self.idle_stretches = 0;
        self.last_filling = None;
        self.enter(Stage::Charge, clock);
    }

    fn enter(&mut self, stage: Stage, clock: f64) {
        self.stage = stage;
        self.since = clock;
        self.open_for = 0.0;
    }

    pub fn is_busy(&self) -> bool {
        self.stage != Stage::Rest
    }

    /// Whether what was ordered is reached; true before the first order.
    pub fn is_complete(&self) -> bool {
        self.target.is_none() || self.reached
    }

    pub fn releases(&self) -> bool {
        matches!(self.stage, Stage::Release | Stage::Rest)
    }
}

impl TrueAir {
    /// Goes on with the work on every channel; gives what each valve does in this step.
    pub(super) fn work(&self, state: &mut TrueState, h: f64) -> Vec<Valve> {
        let may_fill = state.gate_open && (state.has_reserve || state.protection_open);
        let mut another = true;
        (0..self.channels.len())
            .map(|channel| {
                let mut job = state.jobs[channel];
                if job.stage == Stage::Rest {
                    self.check_in_time(state, &mut job);
                }
                let busy = job.is_busy();
                let valve = if busy && (another || job.stage == Stage::Release) {
                    self.go_on(state, channel, &mut job, may_fill, h)
                } else {
                    // It waits for its turn: the time does not count.
                    job.since = state.clock;
                    Valve::Shut
                };
                if busy && !self.habits.together {
                    another = false;
                }
                state.jobs[channel] = job;
                valve
            })
            .collect()
    }

    fn check_in_time(&self, state: &TrueState, job: &mut Job) {
        let due = job.checked_at + self.habits.check_interval.as_s();
        if job.target.is_some() && state.clock >= due {
            job.checking = true;
            job.begin(state.clock);
        }
    }

    fn go_on(
        &self,
        state: &TrueState,
        channel: usize,
        job: &mut Job,
        may_fill: bool,
        h: f64,
    ) -> Valve {
        let clock = state.clock;
        let passed = clock - job.since;
        let spec = &self.channels[channel];
        match job.stage {
            Stage::Rest => Valve::Shut,
            Stage::Charge => {
                let Some(closes_below) = spec.closes_below else {
                    job.enter(Stage::Settle, clock);
                    return Valve::Shut;
                };
                let above = state.lines[channel].pressure - state.ambient - closes_below;
                let open = above > 2.0 * OPENS_ABOVE;
                if (open && job.open_for >= CHARGES) || job.open_for >= CHARGES_AT_MOST {
                    job.enter(Stage::Settle, clock);
                    return Valve::Shut;
                }
                if may_fill {
                    job.open_for += h;
                    Valve::Fill
                } else {
                    Valve::Shut
                }
            }
            Stage::Settle => {
                if passed >= SETTLES {
                    self.read(state, channel, job);
                }
                Valve::Shut
            }
            Stage::Work { filling, stretch } => {
                if job.open_for >= stretch {
                    job.last_open = job.open_for;
                    job.last_filling = Some(filling);
                    job.enter(Stage::Settle, clock);
                    return Valve::Shut;
                }
                if filling && !may_fill {
                    return Valve::Shut;
                }
                job.open_for += h;
                if filling { Valve::Fill } else { Valve::Vent }
            }
            Stage::Release => {
                if passed >= RELEASES {
                    job.checked_at = clock;
                    job.enter(Stage::Rest, clock);
                    return Valve::Shut;
                }
                if spec.closes_below.is_some() { Valve::Release } else { Valve::Shut }
            }
        }
    }

    /// Takes a reading and decides what follows.
    fn read(&self, state: &TrueState, channel: usize, job: &mut Job) {
        let clock = state.clock;
        let reading = self.gauge(state, channel);
        job.reading = Some((reading, clock));
        let Some(target) = job.target else {
            job.enter(Stage::Release, clock);
            return;
        };
        let off = target - reading;
        let deadband = self.habits.deadband.as_kpa() * 1e3;
        let band =
            if job.working { (REACHED_SHARE * deadband).max(REACHED_LEAST) } else { deadband };
        // A check tops up what was lost; it lets nothing out of tires that are only warm.
        let within = off.abs() <= band || (job.checking && off < 0.0);
        let moved = (reading - job.before).abs();
        if job.working && moved < MOVES {
            job.idle_stretches += 1;
        } else {
            job.idle_stretches = 0;
        }
        let given_up = job.idle_stretches >= IDLE_STRETCHES || clock - job.begun > LONGEST_WORK;
        if within || given_up {
            job.reached |= off.abs() <= band;
            job.gave_up = !job.reached;
            job.enter(Stage::Release, clock);
            return;
        }
        let filling = off > 0.0;
        let stretch = if job.last_filling == Some(filling) && moved >= MOVES {
            (0.9 * off.abs() / moved * job.last_open).clamp(STRETCH.0, STRETCH.1)
        } else if job.last_filling.is_some_and(|before| before != filling) {
            STRETCH.0
        } else {
            FIRST_STRETCH
        };
        job.working = true;
        job.before = reading;
        job.enter(Stage::Work { filling, stretch }, clock);
    }
}
