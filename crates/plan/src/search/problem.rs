//! The discretised problem: costs of legs and changes, and how they add up.

use quantity::{Length, PressureDifference, Time};

/// What turns the terms of a ladder into one cost; the unit of money is the survey's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weights {
    /// Money for an hour of the truck.
    pub truck_hour: f64,
    /// Money for a kilometer driven one kilopascal above what the ground wants, all channels averaged.
    pub hard_kpa_km: f64,
    /// Money for a change: attention and wear.
    pub change: f64,
    /// Money for an hour of loaded compressor.
    pub compressor_hour: f64,
}

/// What a ladder costs, term by term, for one haul cycle.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Terms {
    /// Driving and waiting, s.
    time_s: f64,
    /// Pressure above what the ground wants, times road, kPa km.
    hard_kpa_km: f64,
    /// Changes.
    changes: f64,
    /// Loaded compressor, s.
    compressor_s: f64,
}

impl Terms {
    /// Driving or waiting time.
    pub fn of_time(time: Time) -> Self {
        Self { time_s: time.as_s(), ..Self::default() }
    }

    /// The same with road driven harder than the ground wants.
    #[must_use]
    pub fn with_hard_road(mut self, above: PressureDifference, road: Length) -> Self {
        self.hard_kpa_km += above.as_kpa() * road.as_km();
        self
    }

    /// The same with one change, and the compressor time it takes.
    #[must_use]
    pub fn with_change(mut self, compressor: Time) -> Self {
        self.changes += 1.0;
        self.compressor_s += compressor.as_s();
        self
    }

    /// Driving and waiting.
    pub fn time(&self) -> Time {
        Time::from_s(self.time_s)
    }

    /// Pressure above what the ground wants times road, in kilopascal kilometers.
    pub fn hard_kpa_km(&self) -> f64 {
        self.hard_kpa_km
    }

    /// Number of changes.
    pub fn changes(&self) -> f64 {
        self.changes
    }

    /// Loaded compressor time.
    pub fn compressor(&self) -> Time {
        Time::from_s(self.compressor_s)
    }

    /// The cost in money.
    pub fn cost(&self, weights: &Weights) -> f64 {
        self.time_s / 3600.0 * weights.truck_hour
            + self.hard_kpa_km * weights.hard_kpa_km
            + self.changes * weights.change
            + self.compressor_s / 3600.0 * weights.compressor_hour
    }
}

impl std::ops::Add for Terms {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            time_s: self.time_s + other.time_s,
            hard_kpa_km: self.hard_kpa_km + other.hard_kpa_km,
            changes: self.changes + other.changes,
            compressor_s: self.compressor_s + other.compressor_s,
        }
    }
}

/// A square table from cap to cap; `None` where the change cannot be made.
pub type Edges = Vec<Vec<Option<Terms>>>;

/// One run: its legs in the order of travel, and the changes between them.
#[derive(Debug, Clone, PartialEq)]
pub struct RunProblem {
    /// By leg, by cap; `None` where the cap is not possible on the leg.
    pub legs: Vec<Vec<Option<Terms>>>,
    /// By boundary between a leg and the next: one fewer than legs.
    pub changes: Vec<Edges>,
}

/// The whole cycle: empty run, loading, laden run, unloading, and round again.
#[derive(Debug, Clone, PartialEq)]
pub struct LadderProblem {
    /// Number of candidate caps.
    pub caps: usize,
    /// Empty run.
    pub empty: RunProblem,
    /// From the last empty leg to the first laden leg.
    pub loading: Edges,
    /// Laden run.
    pub laden: RunProblem,
    /// From the last laden leg to the first empty leg.
    pub unloading: Edges,
    /// Caps that must be among the rungs.
    pub required: Vec<usize>,
}

impl LadderProblem {
    /// Steps of the cycle: legs of the empty run, then of the laden run.
    pub(super) fn steps(&self) -> usize {
        self.empty.legs.len() + self.laden.legs.len()
    }

    /// Cost of a step at a cap.
    pub(super) fn leg(&self, step: usize, cap: usize) -> Option<Terms> {
        let empty = self.empty.legs.len();
        if step < empty { self.empty.legs[step][cap] } else { self.laden.legs[step - empty][cap] }
    }

    /// Cost of going from a step to the next at other caps; the last step leads to the first.
    pub(super) fn edge(&self, step: usize, from: usize, to: usize) -> Option<Terms> {
        let empty = self.empty.legs.len();
        let edges = if step + 1 < empty {
            &self.empty.changes[step]
        } else if step + 1 == empty {
            &self.loading
        } else if step + 1 < self.steps() {
            &self.laden.changes[step - empty]
        } else {
            &self.unloading
        };
        edges[from][to]
    }

    /// Terms of a whole assignment of caps to steps; `None` if any part is impossible.
    pub fn terms(&self, assignment: &[usize]) -> Option<Terms> {
        let mut total = Terms::default();
        for (step, &cap) in assignment.iter().enumerate() {
            let next = assignment[(step + 1) % assignment.len()];
            total = total + self.leg(step, cap)? + self.edge(step, cap, next)?;
        }
        Some(total)
    }
}
