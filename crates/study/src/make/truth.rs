//! What truly happened in a made log.

use haul::day::DayEvent;
use haul::{Call, PhaseKind};
use quantity::{AbsolutePressure, GaugePressure, Length, PressureDifference, Temperature, Time};

use super::clock::{ClockStep, Gap};

/// A tire of a made log.
#[derive(Debug, Clone, PartialEq)]
pub struct TruthTire {
    /// Such as `drive.1.left.outer`.
    pub name: String,
    /// The location that frames give it: row in the high nibble, position in the low.
    pub location: u8,
    /// Its air channel.
    pub channel: Option<String>,
    /// Error of its sensor; `None` where it has none.
    pub sensor_off: Option<PressureDifference>,
}

/// A fault of a made log.
#[derive(Debug, Clone, PartialEq)]
pub struct TruthFault {
    /// As it was asked for.
    pub asked: String,
    /// Its kind.
    pub kind: &'static str,
    /// Where; empty for the truck as a whole.
    pub place: String,
    /// How big, with its unit; empty where it has no size.
    pub size: String,
    /// From when.
    pub from: Time,
    /// Until when; `None` to the end.
    pub until: Option<Time>,
}

/// A change of pressures in a made log.
#[derive(Debug, Clone, PartialEq)]
pub struct TruthChange {
    /// When it was asked for; where it was forgotten, when it should have been.
    pub asked: Time,
    /// Where that was.
    pub asked_at: Length,
    /// Rung and load state ordered.
    pub rung: String,
    /// Load state whose pressures are ordered.
    pub load_state: String,
    /// Where the plan asks for it; `None` for changes ordered where the truck stands.
    pub planned_at: Option<Length>,
    /// What the driver made of it.
    pub call: Call,
    /// When and where it was complete on every channel; `None` if it never was.
    pub complete: Option<(Time, Length)>,
}

/// A part of the day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TruthPhase {
    /// When it begins.
    pub begins: Time,
    /// Which part of the cycle.
    pub kind: PhaseKind,
}

/// True values at one moment.
#[derive(Debug, Clone, PartialEq)]
pub struct TruthSample {
    /// When.
    pub clock: Time,
    /// Chainage.
    pub chainage: Length,
    /// Service reservoirs.
    pub service: GaugePressure,
    /// Ambient pressure.
    pub ambient: AbsolutePressure,
    /// Air temperature outside.
    pub outside: Temperature,
    /// Each tire.
    pub tires: Vec<GaugePressure>,
    /// Gas in each tire.
    pub gas: Vec<Temperature>,
}

/// Everything that truly happened in a made log.
#[derive(Debug, Clone, PartialEq)]
pub struct Truth {
    /// Haul.
    pub haul: String,
    /// Fleet number of the truck.
    pub unit: String,
    /// Fleet numbers of what it pulls.
    pub trailers: Vec<String>,
    /// Clock zero in seconds since 1970-01-01 UTC.
    pub begins_unix: i64,
    /// Seed of the draws.
    pub seed: u64,
    /// Driver: `good`, `late` or `forgetful`.
    pub driver: &'static str,
    /// Whether positions lie on the surveyed track.
    pub surveyed_track: bool,
    /// Drift of the logger's clock, as a share.
    pub clock_drift: f64,
    /// Jumps of the logger's clock.
    pub clock_steps: Vec<ClockStep>,
    /// Stretches without a record.
    pub gaps: Vec<Gap>,
    /// Compressor delivery over the type's.
    pub delivery: f64,
    /// When the road was wet.
    pub wet: Option<(Time, Time)>,
    /// Tires; those on air channels come first.
    pub tires: Vec<TruthTire>,
    /// Faults asked for.
    pub faults: Vec<TruthFault>,
    /// When faults of the truck truly were there, by their place in the list: begin and end.
    pub active: Vec<(usize, Time, Option<Time>)>,
    /// Changes.
    pub changes: Vec<TruthChange>,
    /// Parts of the day.
    pub phases: Vec<TruthPhase>,
    /// True values every ten seconds.
    pub samples: Vec<TruthSample>,
    /// End of the day.
    pub ends: Time,
    /// Distance driven.
    pub driven: Length,
}

/// Puts the events of a day into changes, phases and faults.
#[derive(Debug, Default)]
pub(super) struct Told {
    pub changes: Vec<TruthChange>,
    pub phases: Vec<TruthPhase>,
    pub active: Vec<(usize, Time, Option<Time>)>,
}

impl Told {
    /// Takes an event; `name` gives the words of a target.
    pub fn take(
        &mut self,
        (clock, chainage): (Time, Length),
        event: &DayEvent,
        name: impl Fn(haul::Target) -> (String, String),
    ) {
        match event {
            DayEvent::Phase(kind) => self.phases.push(TruthPhase { begins: clock, kind: *kind }),
            DayEvent::Asked { to, planned_at, call } => {
                let (rung, load_state) = name(*to);
                self.changes.push(TruthChange {
                    asked: clock,
                    asked_at: chainage,
                    rung,
                    load_state,
                    planned_at: *planned_at,
                    call: *call,
                    complete: None,
                });
            }
            DayEvent::Forgotten { to, planned_at } => {
                let (rung, load_state) = name(*to);
                self.changes.push(TruthChange {
                    asked: clock,
                    asked_at: chainage,
                    rung,
                    load_state,
                    planned_at: Some(*planned_at),
                    call: Call::Forgotten,
                    complete: None,
                });
            }
            DayEvent::Complete { .. } => {
                let asked = self.changes.iter_mut().rev();
                let mut asked = asked.filter(|change| change.call != Call::Forgotten);
                if let Some(change) = asked.next().filter(|change| change.complete.is_none()) {
                    change.complete = Some((clock, chainage));
                }
            }
            DayEvent::GivenUp { .. } => {}
            DayEvent::FaultBegins(index) => self.active.push((*index, clock, None)),
            DayEvent::FaultEnds(index) => {
                let open = self.active.iter_mut().rev().find(|one| one.0 == *index);
                if let Some(open) = open {
                    open.2 = Some(clock);
                }
            }
        }
    }
}
