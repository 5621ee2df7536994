//! `vehicles/*.toml`: a type of truck or trailer, its axle groups and its air.

use schemars::JsonSchema;
use serde::Deserialize;

use super::{AirFile, ControllerFile, EngineFile, FitmentWord};

/// Truck or trailer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum VehicleKindWord {
    /// Carries the engine, the air supply and the controller.
    Truck,
    /// Is pulled, and takes its tire air from the truck.
    Trailer,
}

/// Where a trailer's tire air comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum TrailerAirWord {
    /// A line of its own from the truck's tire controller.
    TireLine,
    /// The line that feeds the trailer's brakes.
    BrakeSupplyLine,
}

/// What stands between the air line and the tire at a wheel end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum WheelValveWord {
    /// A wheel shut-off, opened and shut by hand.
    ByHand,
    /// A valve that closes itself when line pressure falls.
    SelfClosing,
}

/// A type of truck or trailer.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct VehicleFile {
    /// Truck or trailer.
    pub kind: VehicleKindWord,
    /// Trailers with air channels: where their tire air comes from.
    pub air_from: Option<TrailerAirWord>,
    /// Trucks: drag coefficient times frontal area of the whole combination behind it.
    #[schemars(range(min = 2, max = 25))]
    pub drag_area_m2: Option<f64>,
    /// Axle groups, front to back.
    #[schemars(length(min = 1, max = 12))]
    pub axle_groups: Vec<AxleGroupFile>,
    /// Air channels; a trailer names the truck's channel and adds its own lines to it.
    #[serde(default)]
    pub channels: Vec<ChannelFile>,
    /// Trucks: engine and driveline.
    pub engine: Option<EngineFile>,
    /// Trucks: compressor, governor, reservoirs, brakes, protection valve.
    pub air: Option<AirFile>,
    /// Trucks: the pressure controller.
    pub controller: Option<ControllerFile>,
}

/// Axles that share a load, with their tires.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct AxleGroupFile {
    /// Name of the group, such as `drive`.
    #[schemars(length(min = 1, max = 40))]
    pub name: String,
    /// Number of axles.
    #[schemars(range(min = 1, max = 6))]
    pub axles: u32,
    /// Tire fitted: the name of a file in `tires/`, without `.toml`.
    pub tire: String,
    /// Single or dual.
    pub fitment: FitmentWord,
    /// Duals: how the two tires stand to each other.
    pub dual: Option<DualFile>,
    /// Whether the engine drives it.
    #[serde(default)]
    pub driven: bool,
    /// Whether it steers.
    #[serde(default)]
    pub steered: bool,
    /// Whether it can be lifted.
    #[serde(default)]
    pub liftable: bool,
    /// Distance between the wheel-end centers of an axle.
    #[schemars(range(min = 1200, max = 6000))]
    pub track_mm: f64,
    /// Highest load the axles of the group may carry together.
    #[schemars(range(min = 1000, max = 250_000))]
    pub axle_rating_kg: f64,
    /// Air channel that feeds it; a group without one has `fixed_pressure_kpa`.
    pub channel: Option<String>,
    /// Cold pressure a group without a channel is kept at.
    #[schemars(range(min = 150, max = 1300))]
    pub fixed_pressure_kpa: Option<f64>,
    /// Groups on a channel: what stands at each wheel end.
    pub wheel_valve: Option<WheelValveWord>,
    /// Self-closing wheel valves: line pressure under which they shut.
    #[schemars(range(min = 5, max = 500))]
    pub wheel_valve_closes_below_kpa: Option<f64>,
    /// Wheel ends that are shut by hand now.
    #[serde(default)]
    #[schemars(range(min = 0, max = 12))]
    pub wheel_ends_shut: u32,
    /// Least cold pressure for turning on the spot, where the maker or practice sets one.
    #[schemars(range(min = 40, max = 1000))]
    pub scrub_minimum_kpa: Option<f64>,
}

/// How the two tires of a dual stand to each other.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[expect(clippy::struct_field_names, reason = "keys carry their unit")]
pub(crate) struct DualFile {
    /// Center-to-center spacing.
    #[schemars(range(min = 150, max = 1600))]
    pub spacing_mm: f64,
    /// Measured difference of the two free diameters.
    #[schemars(range(min = 0, max = 50))]
    pub diameter_difference_mm: f64,
    /// Least gap wanted between the sidewalls at the bottom.
    #[schemars(range(min = 0, max = 100))]
    pub least_gap_mm: f64,
}

/// An air channel, or what a trailer adds to one.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ChannelFile {
    /// Name of the channel; the same name in two vehicles of a combination is the same channel.
    #[schemars(length(min = 1, max = 40))]
    pub name: String,
    /// Lines and parts from the supply (on a trailer: from the coupling) to the wheel ends, in order.
    #[schemars(length(min = 1, max = 40))]
    pub path: Vec<ElementFile>,
    /// Lines and parts of one wheel end: rotary seal, hose, wheel valve.
    pub wheel_end: Option<Vec<ElementFile>>,
    /// What the channel vents through when it lowers.
    pub exhaust: Option<RestrictionFile>,
}

/// One line or part: a tube has `bore_mm` and `length_m`, a part has `c_dm3_s_bar` and `b`.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ElementFile {
    /// What it is, such as `rotary seal`.
    #[expect(dead_code, reason = "for whoever reads the file; the model has no use for it")]
    pub name: Option<String>,
    /// Part: sonic conductance C (ISO 6358).
    #[schemars(range(min = 0.01, max = 100))]
    pub c_dm3_s_bar: Option<f64>,
    /// Part: critical pressure ratio b (ISO 6358).
    #[schemars(range(min = 0.05, max = 0.6))]
    pub b: Option<f64>,
    /// Tube: bore.
    #[schemars(range(min = 1, max = 60))]
    pub bore_mm: Option<f64>,
    /// Tube: length.
    #[schemars(range(min = 0.05, max = 100))]
    pub length_m: Option<f64>,
}

/// A part given by its ISO 6358 characteristics.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct RestrictionFile {
    /// Sonic conductance C.
    #[schemars(range(min = 0.01, max = 100))]
    pub c_dm3_s_bar: f64,
    /// Critical pressure ratio b.
    #[schemars(range(min = 0.05, max = 0.6))]
    pub b: f64,
}
