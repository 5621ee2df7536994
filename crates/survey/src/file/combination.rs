//! `combinations/*.toml`: vehicles coupled together, their load states, chains and rungs.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Deserialize;

use super::{SurfaceWord, WeighedWord};

/// Vehicles coupled together, and the states they run in.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct CombinationFile {
    /// Vehicles front to back: names of files in `vehicles/`, or fleet numbers of units. The second of a name gets the number 2: `pup`, `pup 2`.
    #[schemars(length(min = 1, max = 8))]
    pub vehicles: Vec<String>,
    /// Drag coefficient times frontal area, where it differs from the truck's.
    #[schemars(range(min = 2, max = 25))]
    pub drag_area_m2: Option<f64>,
    /// Load states, such as empty and laden.
    #[schemars(length(min = 1, max = 12))]
    pub load_states: Vec<LoadStateFile>,
    /// Chain states; left out, there are no chains.
    #[serde(default)]
    pub chain_states: Vec<ChainStateFile>,
    /// Rungs of the ladder, lowest speed cap first; left out, every haul says in `[ladder]` what to search for.
    #[serde(default)]
    #[schemars(length(max = 16))]
    pub rungs: Vec<RungFile>,
    /// Cells whose pressure is fixed by hand.
    #[serde(default)]
    pub hand_set: Vec<HandSetFile>,
}

/// Position of the body.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum BodyPositionWord {
    /// As it is driven.
    #[default]
    Down,
    /// Raised, as while tipping.
    Raised,
}

/// A load state: known by its weights, or treated as a heavier one.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LoadStateFile {
    /// Name, such as `laden`.
    #[schemars(length(min = 1, max = 40))]
    pub name: String,
    /// Whether its loads are not known, such as a mixed load that nobody weighed.
    #[serde(default)]
    pub unknown: bool,
    /// Unknown loads: the heavier load state whose pressures are used.
    pub treat_as: Option<String>,
    /// Position of the body.
    #[serde(default)]
    pub body: BodyPositionWord,
    /// Gross mass as weighed or declared: the group masses must add up to it.
    #[schemars(range(min = 1000, max = 1_000_000))]
    pub gross_mass_kg: Option<f64>,
    /// Height of the center of mass above the road, for the side share on crossfall.
    #[schemars(range(min = 0.3, max = 5))]
    pub center_height_m: Option<f64>,
    /// Share of the heavier side for groups that do not give their own: 0.5 when even.
    #[schemars(range(min = 0.5, max = 0.75))]
    pub heavier_side_share: Option<f64>,
    /// Share of the heavier tire of a dual for groups that do not give their own: 0.5 when even.
    #[schemars(range(min = 0.5, max = 0.75))]
    pub heavier_mate_share: Option<f64>,
    /// Load of each axle group, keyed `vehicle.group`; a lifted group carries none.
    #[serde(default)]
    pub loads: BTreeMap<String, LoadFile>,
    /// Axles that stand on the road, keyed `vehicle.group`, for groups with lifted axles; 0 for a lifted group.
    #[serde(default)]
    #[schemars(inner(range(min = 0, max = 6)))]
    pub axles_down: BTreeMap<String, u32>,
    /// Chain states it may run in, the usual one first; left out, all of them.
    pub chain_states: Option<Vec<String>>,
}

/// Load of one axle group.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LoadFile {
    /// Mass carried by the group.
    #[schemars(range(min = 0, max = 250_000))]
    pub mass_kg: f64,
    /// How it was weighed.
    pub weighed: WeighedWord,
    /// Error of the weighing, in percent.
    #[schemars(range(min = 0, max = 30))]
    pub uncertainty_pct: f64,
    /// Share of the heavier side: 0.5 when even.
    #[schemars(range(min = 0.5, max = 0.75))]
    pub heavier_side_share: Option<f64>,
    /// Share of the heavier tire of a dual: 0.5 when even.
    #[schemars(range(min = 0.5, max = 0.75))]
    pub heavier_mate_share: Option<f64>,
}

/// Where chains are.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ChainStateFile {
    /// Name, such as `chains on drive`.
    #[schemars(length(min = 1, max = 40))]
    pub name: String,
    /// Axle groups that wear chains, as `vehicle.group`; empty for none.
    pub groups: Vec<String>,
}

/// A rung of the ladder.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct RungFile {
    /// Name the driver will read.
    #[schemars(length(min = 1, max = 40))]
    pub name: String,
    /// Highest speed allowed on it.
    #[schemars(range(min = 3, max = 140))]
    pub speed_cap_kmh: f64,
    /// Surfaces it is meant for, unless a leg names another rung.
    #[serde(default)]
    pub surfaces: Vec<SurfaceWord>,
    /// Hold limit of a very low rung.
    pub hold: Option<HoldFile>,
}

/// Longest time and distance a very low rung may be run.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct HoldFile {
    /// Longest time.
    #[schemars(range(min = 0.5, max = 1440))]
    pub time_min: f64,
    /// Longest distance.
    #[schemars(range(min = 0.05, max = 500))]
    pub distance_km: f64,
}

/// A cell whose pressure is fixed by hand.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct HandSetFile {
    /// Air channel.
    pub channel: String,
    /// Load state.
    pub load_state: String,
    /// Rung.
    pub rung: String,
    /// The cold pressure wanted.
    #[schemars(range(min = 50, max = 1300))]
    pub pressure_kpa: f64,
}
