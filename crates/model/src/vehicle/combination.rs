//! Vehicles coupled together.

use quantity::Area;

use super::{AirChannel, AxleGroup, Controller, HandSetCell, LoadState, Powertrain, Rung};
use crate::air::AirSupply;

/// A truck or trailer type in the combination.
#[derive(Debug, Clone, PartialEq)]
pub struct Vehicle {
    /// Name in the survey.
    pub name: String,
    /// Whether it carries the engine and the air supply.
    pub is_truck: bool,
}

/// A truck with its trailers, as it runs on the road.
#[derive(Debug, Clone, PartialEq)]
pub struct Combination {
    /// Name in the survey.
    pub name: String,
    /// Vehicles, front to back.
    pub vehicles: Vec<Vehicle>,
    /// Axle groups, front to back.
    pub groups: Vec<AxleGroup>,
    /// Air channels.
    pub channels: Vec<AirChannel>,
    /// What the controller can do.
    pub controller: Controller,
    /// Compressor, governor, reservoirs, protection valve.
    pub supply: AirSupply,
    /// Engine, driveline, brakes.
    pub powertrain: Powertrain,
    /// Drag area, coefficient times frontal area.
    pub drag_area: Area,
    /// Load states, such as empty and laden.
    pub load_states: Vec<LoadState>,
    /// Rungs of the ladder, lowest speed cap first.
    pub rungs: Vec<Rung>,
    /// Cells fixed by hand.
    pub hand_set: Vec<HandSetCell>,
}

impl Combination {
    /// Groups fed by the channel with this index.
    pub fn groups_of(&self, channel: usize) -> impl Iterator<Item = (usize, &AxleGroup)> {
        self.groups.iter().enumerate().filter(move |(_, group)| group.channel == Some(channel))
    }

    /// Groups fed by the channel that stand on the road in a load state; where all of them are
    /// lifted, all of them, because lifted tires must keep their bead too.
    pub fn standing_groups_of<'a>(
        &'a self,
        channel: usize,
        state: &'a LoadState,
    ) -> impl Iterator<Item = (usize, &'a AxleGroup)> {
        let none_stands = self.groups_of(channel).all(|(index, _)| state.is_lifted(index));
        self.groups_of(channel).filter(move |(index, _)| none_stands || !state.is_lifted(*index))
    }
}
