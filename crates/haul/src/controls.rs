//! Who decides when a change of rung is ordered.

use quantity::Length;

use crate::State;

/// The cells a change goes to: the pressures of a rung for a load state.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Target {
    /// Index of the rung.
    pub rung: usize,
    /// Index of the load state whose pressures are wanted; it may be the one to come.
    pub load_state: usize,
}

/// What the driver does at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decision {
    /// Drives on.
    DriveOn,
    /// Orders pressures and drives on.
    Change(Target),
    /// Stops, orders pressures, and waits until they are reached.
    StandAndChange(Target),
}

/// A driver: a person, a schedule, or a person who is late.
pub trait Controls {
    /// The next travel distance beyond `from` at which it wants to be asked.
    fn next_place(&self, from: Length) -> Option<Length>;

    /// What it does here.
    fn decide(&mut self, state: &State) -> Decision;
}

/// A change at a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlannedChange {
    /// Travel distance where it is ordered.
    pub at: Length,
    /// What is ordered.
    pub to: Target,
    /// Whether the truck stands until the change is complete.
    pub standing: bool,
}

/// Changes in the order of travel, carried out where they stand.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Schedule {
    changes: Vec<PlannedChange>,
    done: usize,
}

impl Schedule {
    /// Takes changes in the order of travel.
    pub fn new(changes: Vec<PlannedChange>) -> Self {
        Self { changes, done: 0 }
    }
}

impl Controls for Schedule {
    fn next_place(&self, from: Length) -> Option<Length> {
        self.changes.get(self.done).map(|change| change.at.max(from))
    }

    fn decide(&mut self, state: &State) -> Decision {
        match self.changes.get(self.done) {
            Some(change) if change.at <= state.travelled() + Length::from_mm(1.0) => {
                self.done += 1;
                if change.standing {
                    Decision::StandAndChange(change.to)
                } else {
                    Decision::Change(change.to)
                }
            }
            _ => Decision::DriveOn,
        }
    }
}

/// A schedule in which one change is called late, or never.
#[derive(Debug, Clone, PartialEq)]
pub struct Late;

impl Late {
    /// The schedule with change `which` moved on by `by`; `None` leaves it out.
    ///
    /// Changes that follow are not called before the late one.
    pub fn schedule(changes: &[PlannedChange], which: usize, by: Option<Length>) -> Schedule {
        let mut late = changes.to_vec();
        match by {
            None => {
                late.remove(which);
            }
            Some(by) => {
                let at = late[which].at + by;
                for change in &mut late[which..] {
                    change.at = change.at.max(at);
                }
                late[which].at = at;
            }
        }
        Schedule::new(late)
    }
}
