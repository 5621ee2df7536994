//! A named set of loads and chains the combination runs with.

use quantity::{Length, Mass};

use super::AxleGroup;

/// How a group's weight was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weighing {
    /// On a certified scale.
    Scale,
    /// With portable pads or an on-board scale.
    Portable,
    /// Taken from the legal limit or a data sheet.
    Estimate,
}

/// Load on one axle group.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroupLoad {
    /// Mass carried by the group.
    pub mass: Mass,
    /// Share of the heavier side, 0.5 when even.
    pub heavier_side_share: f64,
    /// Share of the heavier tire of a dual, 0.5 when even.
    pub heavier_mate_share: f64,
    /// How it was weighed.
    pub weighing: Weighing,
    /// Relative error of the weighing, such as 0.02.
    pub uncertainty: f64,
}

/// Where chains are.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ChainState {
    /// Name, such as `no chains` or `chains on drive`.
    pub name: String,
    /// Indices of the axle groups that wear chains.
    pub chained_groups: Vec<usize>,
}

/// A load state: which loads act on which groups.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadState {
    /// Name, such as `empty` or `laden`.
    pub name: String,
    /// Load of each axle group, in group order.
    pub groups: Vec<GroupLoad>,
    /// Axles of each group that stand on the road, in group order; 0 when the group is lifted.
    pub axles_down: Vec<u32>,
    /// Whether the body is raised, as while tipping.
    pub body_raised: bool,
    /// Index of the state whose loads stand here because its own are not known.
    pub treat_as: Option<usize>,
    /// Height of the center of mass above the road, for the side share on crossfall.
    pub center_height: Option<Length>,
    /// Chain states it may run in; the first is the usual one.
    pub chain_states: Vec<ChainState>,
}

impl LoadState {
    /// Tires of the group with this index that stand on the road; 0 when it is lifted.
    pub fn tires_down(&self, index: usize, group: &AxleGroup) -> u32 {
        self.axles_down[index] * 2 * group.tires_per_end()
    }

    /// Whether the group with this index is lifted.
    pub fn is_lifted(&self, index: usize) -> bool {
        self.axles_down[index] == 0
    }

    /// Gross mass.
    pub fn gross(&self) -> Mass {
        self.groups.iter().map(|group| group.mass).sum()
    }
}
