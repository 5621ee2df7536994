//! The ladder: air channel by load state by chain state by rung.

use haul::SetPressures;
use model::haul_cycle::HaulCycle;
use quantity::GaugePressure;

use crate::PlanError;
use crate::window::{Cell, CellId, FixedGroup, RungUse, Site, cell, fixed_groups};

/// Every cell of a combination on a route.
#[derive(Debug, Clone, PartialEq)]
pub struct Ladder {
    cells: Vec<Cell>,
    /// Where each rung is used on the route.
    pub uses: Vec<RungUse>,
}

impl Ladder {
    /// Works out every cell, and tests the groups at a fixed pressure.
    ///
    /// # Errors
    /// [`PlanError::Weather`].
    pub fn of(haul: &HaulCycle) -> Result<(Self, Vec<FixedGroup>), PlanError> {
        let site = Site::new(&haul.weather)?;
        let combination = &haul.combination;
        let mut uses: Vec<RungUse> =
            (0..combination.rungs.len()).map(|rung| RungUse::of(haul, rung)).collect();
        // A rung that no leg wants may be used anywhere, so it is judged on the steepest crossfall.
        let steepest = haul.route.legs.iter().map(|leg| leg.crossfall.abs()).fold(0.0, f64::max);
        for used in uses.iter_mut().filter(|used| !used.used) {
            used.crossfall = steepest;
        }
        let mut cells = Vec::new();
        for (load_state, state) in combination.load_states.iter().enumerate() {
            for chain_state in 0..state.chain_states.len() {
                for (rung, used) in uses.iter().enumerate() {
                    for channel in 0..combination.channels.len() {
                        let id = CellId { channel, load_state, chain_state, rung };
                        cells.push(cell(haul, &site, *used, id));
                    }
                }
            }
        }
        let fixed = fixed_groups(haul, &site, &uses);
        Ok((Self { cells, uses }, fixed))
    }

    /// The cells, by load state, chain state, rung and channel.
    pub fn cells(&self) -> &[Cell] {
        &self.cells
    }

    /// One cell.
    pub fn cell(&self, id: CellId) -> Option<&Cell> {
        self.cells.iter().find(|cell| cell.id == id)
    }

    /// The rung itself, or the next slower one that is possible on every channel.
    ///
    /// A truck that may not use a rung runs slower, never harder to stop.
    pub fn usable_rung(&self, load_state: usize, rung: usize) -> Option<usize> {
        (0..=rung).rev().find(|&rung| {
            let mut of_rung = self
                .cells
                .iter()
                .filter(|cell| {
                    (cell.id.load_state, cell.id.chain_state, cell.id.rung) == (load_state, 0, rung)
                })
                .peekable();
            of_rung.peek().is_some() && of_rung.all(|cell| cell.set.is_some())
        })
    }

    /// Pressures to set in the usual chain state, as a vented gauge reads them.
    ///
    /// A cell that is not possible is never ordered; it holds its nearest neighbor's value.
    pub fn set_pressures(&self, haul: &HaulCycle) -> SetPressures {
        let combination = &haul.combination;
        let rungs = combination.rungs.len();
        SetPressures::new(
            combination.channels.len(),
            combination.load_states.len(),
            rungs,
            |channel, load_state, rung| {
                let set = |rung: usize| -> Option<GaugePressure> {
                    let id = CellId { channel, load_state, chain_state: 0, rung };
                    Some(self.cell(id)?.set.as_ref()?.vented)
                };
                (0..=rung)
                    .rev()
                    .chain(rung..rungs)
                    .find_map(set)
                    .unwrap_or_else(|| rated_pressure(haul, channel))
            },
        )
    }
}

#[cfg(test)]
impl Ladder {
    /// The same with every cell that has a value approved by the maker.
    pub(crate) fn approved(mut self) -> Self {
        for cell in self.cells.iter_mut().filter(|cell| cell.set.is_some()) {
            cell.approval = crate::Approval::Maker;
        }
        self
    }
}

fn rated_pressure(haul: &HaulCycle, channel: usize) -> GaugePressure {
    haul.combination
        .groups_of(channel)
        .map(|(_, group)| group.tire.single.pressure.at_reference())
        .min_by(GaugePressure::total_cmp)
        .unwrap_or(GaugePressure::from_kpa(700.0))
}
