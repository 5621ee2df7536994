//! What paper for drivers may show of a cell.

use crate::{Approval, Cell, CellId, Ladder};

/// What stands in place of a cell's pressure on paper for drivers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DriverShows {
    /// The cell's own value to set.
    Set,
    /// The value of the fastest rung, which somebody stands behind.
    RoadPressure,
    /// Nothing: the rung is not run so.
    Dash,
}

impl Ladder {
    /// What a driver is shown of a cell; `None` for a cell the ladder does not hold.
    ///
    /// An unapproved pressure is never shown. Road pressure stands in for it where the maker or a
    /// standard covers that, and where it lies under what the unapproved cell bears at most.
    pub fn driver_shows(&self, id: CellId) -> Option<DriverShows> {
        let cell = self.cell(id)?;
        Some(match cell.approval {
            Approval::Maker | Approval::Standard => DriverShows::Set,
            Approval::NotPossible => DriverShows::Dash,
            Approval::NeedsApproval => match self.road_cell(id) {
                Some(road) if stands_in(road, cell) => DriverShows::RoadPressure,
                _ => DriverShows::Dash,
            },
        })
    }

    /// The cell of the fastest rung, for the same channel, load and chains.
    pub fn road_cell(&self, id: CellId) -> Option<&Cell> {
        let rung = self.uses.len().checked_sub(1)?;
        self.cell(CellId { rung, ..id })
    }
}

fn stands_in(road: &Cell, cell: &Cell) -> bool {
    let backed = matches!(road.approval, Approval::Maker | Approval::Standard);
    let bears = match (&road.set, &cell.window) {
        (Some(set), Some(window)) => set.cold <= window.governing_maximum().pressure,
        _ => false,
    };
    backed && bears
}
