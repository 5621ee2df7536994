//! A driver and how the plan fares in his hands.

use quantity::{Length, PressureDifference};

use crate::chance::{normal, uniform};
use crate::{CyclePlan, DrivingStyle, PlannedChange};

/// How a driver keeps to the changes of a plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DriverHabit {
    /// Calls every change at its place, give or take a reaction.
    Good,
    /// Calls every change late, by this much on average.
    Late {
        /// How late.
        by: Length,
    },
    /// Leaves changes out, this share of them on average.
    Forgetful {
        /// Share of changes left out, 0 to 1.
        share: f64,
    },
}

/// What became of a planned change.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Call {
    /// Called where the plan puts it, within the reaction.
    AsPlanned,
    /// Called later.
    Late,
    /// Never called.
    Forgotten,
}

/// A planned change with what the driver made of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Called {
    /// The change as planned.
    pub planned: PlannedChange,
    /// What became of it.
    pub call: Call,
    /// Travel distance at which it is called; as planned if it is forgotten.
    pub at: Length,
}

/// What a driver does in one cycle.
#[derive(Debug, Clone, PartialEq)]
pub struct DriversCycle {
    /// The plan as carried out; changes that are forgotten are not in it.
    pub plan: CyclePlan,
    /// Planned changes of the empty run.
    pub empty: Vec<Called>,
    /// Planned changes of the laden run.
    pub laden: Vec<Called>,
    /// Whether he waits after loading until the laden pressures are complete.
    pub waits_when_loaded: bool,
    /// How he drives.
    pub style: DrivingStyle,
    /// His speed everywhere over that of the plan.
    pub road_speed: f64,
}

/// A driver.
///
/// All habits are common practice without a source: that changes are called late or left out is what
/// audits of such hauls look for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Driver {
    /// How he keeps to the plan.
    pub habit: DriverHabit,
    /// How far past the place a good driver acts, one standard deviation.
    pub reaction: Length,
    /// How much his speed differs from one cycle to the next, one standard deviation as a share.
    pub speed_spread: f64,
    /// Error of the pressures he finds in the morning, one standard deviation.
    pub held: PressureDifference,
    /// Seed of his draws.
    pub seed: u64,
}

/// A driver who is careless with changes drives this much over the cap of the pressures held.
const CARELESS_SPEED: f64 = 1.12; // common practice, no source

impl Driver {
    /// The plan as he carries it out in a cycle of the day, counted from zero.
    pub fn carries_out(&self, plan: &CyclePlan, cycle: usize) -> DriversCycle {
        let mut style = DrivingStyle::default();
        let careful = self.habit == DriverHabit::Good;
        if !careful {
            style.over_cap = CARELESS_SPEED;
        }
        let empty = self.calls(&plan.empty, cycle, "empty");
        let laden = self.calls(&plan.laden, cycle, "laden");
        let mut own = plan.clone();
        own.empty = schedule(&empty);
        own.laden = schedule(&laden);
        if !careful {
            // Who does not think of the change ahead does not slow down for it in advance either.
            own.empty_caps.clear();
            own.laden_caps.clear();
        }
        let waits_when_loaded = match self.habit {
            DriverHabit::Good | DriverHabit::Late { .. } => true,
            DriverHabit::Forgetful { share } => {
                uniform(self.seed, cycle, "driver: waits when loaded") > share
            }
        };
        let spread = self.speed_spread * normal(self.seed, cycle, "driver: speed");
        DriversCycle {
            plan: own,
            empty,
            laden,
            waits_when_loaded,
            style,
            road_speed: (1.0 + spread).clamp(0.8, 1.15),
        }
    }

    /// Off-set of a tire's pressure in the morning.
    pub fn found(&self, tire: usize) -> PressureDifference {
        self.held * normal(self.seed, tire, "driver: found in the morning")
    }

    fn calls(&self, changes: &[PlannedChange], cycle: usize, run: &str) -> Vec<Called> {
        let mut not_before = Length::ZERO;
        let call = |(index, planned): (usize, &PlannedChange)| {
            // Each change of each cycle has its own draw.
            let sample = cycle * 64 + index;
            let name = |what: &str| format!("driver: {run} {what}");
            let reaction = self.reaction * normal(self.seed, sample, &name("reaction")).abs();
            let (call, at) = match self.habit {
                DriverHabit::Good => (Call::AsPlanned, planned.at + reaction),
                DriverHabit::Late { by } => {
                    let share = 0.5 + uniform(self.seed, sample, &name("late"));
                    (Call::Late, planned.at + by * share)
                }
                DriverHabit::Forgetful { share } => {
                    if uniform(self.seed, sample, &name("forgotten")) <= share {
                        (Call::Forgotten, planned.at)
                    } else {
                        (Call::AsPlanned, planned.at + reaction)
                    }
                }
            };
            let at = if call == Call::Forgotten { at } else { at.max(not_before) };
            if call != Call::Forgotten {
                not_before = at;
            }
            Called { planned: *planned, call, at }
        };
        changes.iter().enumerate().map(call).collect()
    }
}

fn schedule(calls: &[Called]) -> Vec<PlannedChange> {
    calls
        .iter()
        .filter(|called| called.call != Call::Forgotten)
        .map(|called| PlannedChange { at: called.at, ..called.planned })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{LadenChange, Target};

    fn plan() -> CyclePlan {
        let change = |km, rung| PlannedChange {
            at: Length::from_km(km),
            to: Target { rung, load_state: 0 },
            standing: false,
        };
        CyclePlan {
            empty_start: Target { rung: 2, load_state: 0 },
            empty: vec![change(10.0, 1), change(10.5, 0)],
            empty_caps: Vec::new(),
            laden_change: LadenChange::AfterLoading,
            laden_start: Target { rung: 0, load_state: 1 },
            laden: vec![change(3.0, 1)],
            laden_caps: Vec::new(),
        }
    }

    fn driver(habit: DriverHabit) -> Driver {
        Driver {
            habit,
            reaction: Length::from_m(30.0),
            speed_spread: 0.03,
            held: PressureDifference::from_kpa(5.0),
            seed: 7,
        }
    }

    #[test]
    fn a_good_driver_keeps_every_change_near_its_place_and_the_cap() {
        for cycle in 0..50 {
            let own = driver(DriverHabit::Good).carries_out(&plan(), cycle);
            assert_eq!(own.plan.empty.len(), 2);
            for called in own.empty.iter().chain(&own.laden) {
                let past = (called.at - called.planned.at).as_m();
                assert!((0.0..150.0).contains(&past), "{past} m");
            }
            assert!(own.waits_when_loaded && own.style.over_cap <= 1.0);
        }
    }

    #[test]
    fn a_late_driver_calls_everything_late_and_in_order() {
        let by = Length::from_km(1.5);
        for cycle in 0..50 {
            let own = driver(DriverHabit::Late { by }).carries_out(&plan(), cycle);
            assert!(own.plan.empty[0].at <= own.plan.empty[1].at);
            for called in &own.empty {
                assert!(called.at - called.planned.at >= by * 0.5);
                assert_eq!(called.call, Call::Late);
            }
        }
    }

    #[test]
    fn a_forgetful_driver_leaves_out_his_share() {
        let of = |share| {
            let driver = driver(DriverHabit::Forgetful { share });
            let forgotten = |cycle| {
                let own = driver.carries_out(&plan(), cycle);
                let gone = own.empty.iter().filter(|c| c.call == Call::Forgotten).count();
                assert_eq!(own.plan.empty.len() + gone, 2);
                gone
            };
            (0..500).map(forgotten).sum::<usize>()
        };
        assert_eq!((of(0.0), of(1.0)), (0, 1000));
        assert!((250..350).contains(&of(0.3)), "{}", of(0.3));
    }

    #[test]
    fn the_same_cycle_of_the_same_driver_is_the_same() {
        let one = driver(DriverHabit::Forgetful { share: 0.5 });
        assert_eq!(one.carries_out(&plan(), 3), one.carries_out(&plan(), 3));
        let other = Driver { seed: 8, ..one };
        assert_ne!(one.carries_out(&plan(), 3), other.carries_out(&plan(), 3));
    }
}
