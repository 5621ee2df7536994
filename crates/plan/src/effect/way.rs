//! The ways to run that are compared, and the pressure each tire holds in them.

use haul::{CyclePlan, LadenChange, Target};
use model::haul_cycle::{HaulCycle, LadenDirection};
use model::vehicle::LoadState;
use quantity::{ColdPressure, GaugePressure, Length, Mass, Speed};

use crate::drive::Driven;
use crate::ladder::Ladder;
use crate::sections::wanted_rung;
use crate::window::{Cell, CellId};

/// A way to run the haul.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Way {
    /// As planned.
    Plan,
    /// Laden pressures of the fastest rung all the way, empty too.
    FullPressure,
    /// Laden pressures of the next slower rung all the way, under its speed cap.
    ConstantReduced,
    /// Full pressure with a fifth less payload.
    LessLoad,
}

impl Way {
    /// All of them, in the order of tables.
    pub const ALL: [Self; 4] =
        [Self::Plan, Self::FullPressure, Self::ConstantReduced, Self::LessLoad];
}

/// Share of the payload that [`Way::LessLoad`] carries: a round number to compare with, ours.
pub const LESS_LOAD: f64 = 0.8;

/// Empty or laden.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Run {
    /// To loading.
    Empty,
    /// From loading.
    Laden,
}

impl Run {
    /// Both.
    pub const BOTH: [Self; 2] = [Self::Empty, Self::Laden];

    /// The load state of the run.
    pub fn load_state(self, haul: &HaulCycle) -> usize {
        match self {
            Self::Empty => haul.empty_state,
            Self::Laden => haul.laden_state,
        }
    }

    /// Whether the run goes with rising chainage.
    pub fn forward(self, haul: &HaulCycle) -> bool {
        (haul.laden_direction == LadenDirection::Forward) == (self == Self::Laden)
    }
}

/// What a tire holds: cold, and as a gauge reads it while it rolls under control.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    /// Cold pressure.
    pub cold: ColdPressure,
    /// While rolling, as set; for a group without control its cold pressure.
    pub rolling: GaugePressure,
}

/// Who runs how: load states by way, and rungs by leg.
pub(crate) struct Ways<'a> {
    pub haul: &'a HaulCycle,
    ladder: &'a Ladder,
    /// Rung of each leg on the empty and on the laden run of the plan.
    rungs: [Vec<Option<usize>>; 2],
    /// The fastest rung that is possible laden.
    pub top: Option<usize>,
    /// The next slower one.
    pub reduced: Option<usize>,
    /// The laden state with less payload.
    lighter: LoadState,
}

impl<'a> Ways<'a> {
    pub fn of(haul: &'a HaulCycle, ladder: &'a Ladder, driven: Option<&Driven>) -> Self {
        let last = haul.combination.rungs.len().saturating_sub(1);
        let top = ladder.usable_rung(haul.laden_state, last);
        let reduced = top
            .and_then(|top| top.checked_sub(1))
            .and_then(|below| ladder.usable_rung(haul.laden_state, below));
        let rungs = Run::BOTH.map(|run| {
            let legs = 0..haul.route.legs.len();
            legs.map(|leg| rung_of_leg(haul, ladder, driven, run, leg)).collect()
        });
        Self { haul, ladder, rungs, top, reduced, lighter: lighter(haul) }
    }

    /// The rung a leg is run on; `None` where there is no such way.
    pub fn rung(&self, way: Way, run: Run, leg: usize) -> Option<usize> {
        match way {
            Way::Plan => self.rungs[run as usize][leg],
            Way::FullPressure | Way::LessLoad => self.top,
            Way::ConstantReduced => self.reduced,
        }
    }

    /// Speed on a leg: its limit under the cap of the rung.
    pub fn speed(&self, way: Way, run: Run, leg: usize) -> Option<Speed> {
        let rung = self.rung(way, run, leg)?;
        let limit = self.haul.route.legs[leg].speed_limit;
        Some(limit.min(self.haul.combination.rungs[rung].cap))
    }

    /// The load state of a run.
    pub fn state(&self, way: Way, run: Run) -> &LoadState {
        match (way, run) {
            (Way::LessLoad, Run::Laden) => &self.lighter,
            _ => &self.haul.combination.load_states[run.load_state(self.haul)],
        }
    }

    /// What the tires of a group hold.
    pub fn held(&self, way: Way, run: Run, leg: usize, group: usize) -> Option<Held> {
        let combination = &self.haul.combination;
        let Some(channel) = combination.groups[group].channel else {
            let cold = combination.groups[group].fixed_pressure?;
            return Some(Held { cold, rolling: cold.at_reference() });
        };
        let set = self.cell(way, run, leg, channel)?.set.as_ref()?;
        Some(Held { cold: set.cold, rolling: set.vented })
    }

    /// The cell that a channel is on.
    pub fn cell(&self, way: Way, run: Run, leg: usize, channel: usize) -> Option<&'a Cell> {
        let rung = self.rung(way, run, leg)?;
        let load_state = match way {
            Way::Plan => run.load_state(self.haul),
            // What is held all the way must carry the load.
            _ => self.haul.laden_state,
        };
        self.ladder.cell(CellId { channel, load_state, chain_state: 0, rung })
    }

    /// Mean load on a tire of a group; `None` where it is lifted.
    pub fn tire_load(&self, way: Way, run: Run, group: usize) -> Option<Mass> {
        let state = self.state(way, run);
        let tires = state.tires_down(group, &self.haul.combination.groups[group]);
        (tires > 0).then(|| state.groups[group].mass / f64::from(tires))
    }

    /// Payload of a laden run.
    pub fn payload(&self, way: Way) -> Mass {
        self.state(way, Run::Laden).gross() - self.state(way, Run::Empty).gross()
    }

    /// The haul as a way loads it.
    pub fn loaded(&self, way: Way) -> HaulCycle {
        let mut haul = self.haul.clone();
        if way == Way::LessLoad {
            haul.combination.load_states[haul.laden_state] = self.lighter.clone();
        }
        haul
    }

    /// One rung held all the way.
    pub fn held_all_the_way(&self, way: Way) -> Option<CyclePlan> {
        let target =
            Target { rung: self.rung(way, Run::Laden, 0)?, load_state: self.haul.laden_state };
        Some(CyclePlan {
            empty_start: target,
            empty: Vec::new(),
            empty_caps: Vec::new(),
            laden_change: LadenChange::AfterLoading,
            laden_start: target,
            laden: Vec::new(),
            laden_caps: Vec::new(),
        })
    }
}

/// The laden state with a fifth of what the empty one does not carry taken off, group by group.
fn lighter(haul: &HaulCycle) -> LoadState {
    let states = &haul.combination.load_states;
    let mut state = states[haul.laden_state].clone();
    for (load, empty) in state.groups.iter_mut().zip(&states[haul.empty_state].groups) {
        let carried = (load.mass - empty.mass).max(Mass::ZERO);
        load.mass = load.mass - carried * (1.0 - LESS_LOAD);
    }
    state
}

/// The rung that is ordered in the middle of a leg, or the one wanted where nothing was driven.
fn rung_of_leg(
    haul: &HaulCycle,
    ladder: &Ladder,
    driven: Option<&Driven>,
    run: Run,
    leg: usize,
) -> Option<usize> {
    let load_state = run.load_state(haul);
    let Some(driven) = driven else {
        return ladder.usable_rung(load_state, wanted_rung(haul, load_state, leg)?);
    };
    let (start, changes) = match run {
        Run::Empty => (driven.plan.empty_start, &driven.plan.empty),
        Run::Laden => (driven.plan.laden_start, &driven.plan.laden),
    };
    let middle = travelled(haul, run, leg);
    let ordered = changes
        .iter()
        .rev()
        .find(|change| change.at <= middle && change.to.load_state == load_state);
    Some(ordered.map_or(start.rung, |change| change.to.rung))
}

fn travelled(haul: &HaulCycle, run: Run, leg: usize) -> Length {
    let leg = &haul.route.legs[leg];
    let middle = (leg.from + leg.to) / 2.0;
    if run.forward(haul) { middle } else { haul.route.length() - middle }
}
