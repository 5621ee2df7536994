//! Rungs, cells and their limits.

use model::haul_cycle::HaulCycle;
use model::source::{Citation, Standing};
use model::vehicle::{AxleGroup, Rung};
use plan::window::{Added, Basis, Impossible, Limit, MaximumKind, MinimumKind};
use plan::{Approval, Cell, DriverShows, FixedGroup, Ladder, MorningAfter};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An axle group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AxleGroupView {
    /// Vehicle and group.
    pub name: String,
    /// Tire model.
    pub tire: String,
    /// Tires.
    pub tires: u32,
    /// `single` or `dual`.
    pub fitment: String,
    /// Air channel, if it has one.
    pub channel: Option<String>,
    /// Load in each load state, in the order of the survey.
    pub loads_kg: Vec<f64>,
}

/// A rung.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RungView {
    /// Name.
    pub name: String,
    /// Speed cap.
    pub cap_kmh: f64,
    /// Hold limit in time.
    pub hold_limit_min: Option<f64>,
    /// Hold limit in distance.
    pub hold_limit_m: Option<f64>,
}

/// A limit of a window.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LimitView {
    /// What kind, such as `deflection`.
    pub governed_by: String,
    /// Axle group it comes from.
    pub axle_group: String,
    /// Tire model it comes from.
    pub tire: String,
    /// Pressure, cold.
    pub pressure_kpa: f64,
    /// Source key.
    pub source: String,
    /// Where in the source.
    pub locator: String,
    /// `read`, `given`, `common practice` or `from memory`.
    pub standing: String,
    /// Load on the worst tire, where it rests on one.
    pub load_kg: Option<f64>,
    /// Speed covered, where it rests on one.
    pub speed_kmh: Option<f64>,
    /// Load allowance used.
    pub load_allowance_pct: Option<f64>,
    /// Pressure added by the row used.
    pub pressure_addition_kpa: Option<f64>,
    /// Highest deflection, where it rests on one.
    pub deflection_pct: Option<f64>,
    /// Reading it rests on, where it rests on one.
    pub reading_kpa: Option<f64>,
    /// Temperature it rests on.
    pub temperature_c: Option<f64>,
    /// Least gap between duals.
    pub gap_mm: Option<f64>,
}

/// One item of the stack.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct StackView {
    /// Why, such as `deadband`.
    pub added_for: String,
    /// How much.
    pub pressure_kpa: f64,
}

/// One cell of the ladder.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CellView {
    /// Air channel.
    pub channel: String,
    /// Load state.
    pub load_state: String,
    /// Chain state.
    pub chain_state: String,
    /// Rung.
    pub rung: String,
    /// Whether the haul as surveyed uses the rung.
    pub used: bool,
    /// Cold pressure the cell holds; `null` where it is not possible.
    pub pressure_kpa: Option<f64>,
    /// Value to set, as the controller reads it.
    pub set_kpa: Option<f64>,
    /// Lowest, cold.
    pub min_kpa: Option<f64>,
    /// What governs it.
    pub min_governed_by: Option<String>,
    /// Its source, with place and standing.
    pub min_source: Option<String>,
    /// The next closest limit.
    pub min_runner_up: Option<LimitView>,
    /// The governing limit in full.
    pub min_limit: Option<LimitView>,
    /// Highest, cold.
    pub max_kpa: Option<f64>,
    /// What governs it.
    pub max_governed_by: Option<String>,
    /// Its source.
    pub max_source: Option<String>,
    /// What the ground would like at most (advice).
    pub ground_advice_kpa: Option<f64>,
    /// What was added to the lowest.
    pub stack: Vec<StackView>,
    /// `maker`, `standard`, `needs approval` or `not possible`.
    pub approval: String,
    /// What paper for drivers shows: `set`, `road pressure` or `dash`.
    #[serde(default = "dash")]
    pub driver: String,
    /// That value, as the controller reads it; `null` for a dash.
    #[serde(default)]
    pub driver_set_kpa: Option<f64>,
    /// Why it is not possible.
    pub not_possible_because: Option<String>,
    /// Numbers of that reason, by name with unit.
    pub not_possible_with: std::collections::BTreeMap<String, f64>,
    /// Deflection of the worst tire.
    pub deflection_pct: Option<f64>,
    /// Load on the worst tire.
    pub worst_tire_kg: Option<f64>,
    /// Mean load of the tires of its group.
    pub mean_tire_kg: Option<f64>,
    /// Air temperature in the warmest credible tire.
    pub warmest_tire_c: f64,
    /// Longest distance a maker's row allows.
    pub hold_m: Option<f64>,
}

/// A group at a fixed pressure.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FixedGroupView {
    /// Axle group.
    pub axle_group: String,
    /// Load state.
    pub load_state: String,
    /// Its pressure, cold.
    pub pressure_kpa: f64,
    /// What it needs, cold; `null` where no pressure would do.
    pub needed_kpa: Option<f64>,
    /// What governs the need, or why none will do.
    pub governed_by: String,
    /// Load on the worst tire.
    pub worst_tire_kg: Option<f64>,
    /// Whether it is enough.
    pub enough: bool,
}

/// A channel on the morning after.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MorningView {
    /// Air channel.
    pub channel: String,
    /// Rung it was parked on.
    pub rung: String,
    /// What a vented gauge reads at the coldest.
    pub reading_kpa: f64,
    /// What the empty truck needs there.
    pub needed_kpa: f64,
    /// Share of the need, percent.
    pub share_pct: f64,
    /// Whether it may move off.
    pub may_move: bool,
}

pub(super) fn rung(rung: &Rung) -> RungView {
    RungView {
        name: rung.name.clone(),
        cap_kmh: rung.cap.as_kmh(),
        hold_limit_min: rung.hold.map(|hold| hold.time.as_min()),
        hold_limit_m: rung.hold.map(|hold| hold.distance.as_m()),
    }
}

pub(super) fn axle_group(haul: &HaulCycle, index: usize, group: &AxleGroup) -> AxleGroupView {
    let combination = &haul.combination;
    AxleGroupView {
        name: group_name(haul, index),
        tire: group.tire.name.clone(),
        tires: group.tires(),
        fitment: match group.fitment {
            model::tire::Fitment::Single => "single",
            model::tire::Fitment::Dual => "dual",
        }
        .to_owned(),
        channel: group.channel.map(|channel| combination.channels[channel].name.clone()),
        loads_kg: combination
            .load_states
            .iter()
            .map(|state| state.groups[index].mass.as_kg())
            .collect(),
    }
}

/// `vehicle.group`, as the survey writes it.
pub(crate) fn group_name(haul: &HaulCycle, index: usize) -> String {
    let group = &haul.combination.groups[index];
    let vehicle = &haul.combination.vehicles[group.vehicle].name;
    if group.name.contains('.') { group.name.clone() } else { format!("{vehicle}.{}", group.name) }
}

fn tire_name(haul: &HaulCycle, group: usize, model: usize) -> String {
    let group = &haul.combination.groups[group];
    group.tire_models().nth(model).unwrap_or(&group.tire).name.clone()
}

pub(super) fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Read => "read",
        Standing::Given => "given",
        Standing::CommonPractice => "common practice, no source",
        Standing::FromMemory => "from memory",
    }
}

fn source(citation: &Citation) -> String {
    let place =
        if citation.locator.is_empty() { String::new() } else { format!(", {}", citation.locator) };
    format!("{}{place} ({})", citation.key, standing(citation.standing))
}

fn limit<Kind: Copy>(
    haul: &HaulCycle,
    limit: &Limit<Kind>,
    name: impl Fn(Kind) -> &'static str,
) -> LimitView {
    let mut view = LimitView {
        governed_by: name(limit.kind).to_owned(),
        axle_group: group_name(haul, limit.group),
        tire: tire_name(haul, limit.group, limit.tire),
        pressure_kpa: limit.pressure.as_kpa(),
        source: limit.citation.key.to_string(),
        locator: limit.citation.locator.clone(),
        standing: standing(limit.citation.standing).to_owned(),
        load_kg: None,
        speed_kmh: None,
        load_allowance_pct: None,
        pressure_addition_kpa: None,
        deflection_pct: None,
        reading_kpa: None,
        temperature_c: None,
        gap_mm: None,
    };
    match &limit.basis {
        Basis::Load { load, speed, allowance_pct, addition } => {
            view.load_kg = Some(load.as_kg());
            view.speed_kmh = Some(speed.as_kmh());
            view.load_allowance_pct = Some(*allowance_pct);
            view.pressure_addition_kpa = Some(addition.as_kpa());
        }
        Basis::Deflection { load, share } => {
            view.load_kg = Some(load.as_kg());
            view.deflection_pct = Some(share * 100.0);
        }
        Basis::AsRead { reading, temperature } => {
            view.reading_kpa = Some(reading.as_kpa());
            view.temperature_c = Some(temperature.as_celsius());
        }
        Basis::ShareOf { stated, .. } => view.reading_kpa = Some(stated.as_kpa()),
        Basis::Gap { least, .. } => view.gap_mm = Some(least.as_mm()),
        Basis::AirTemperature { highest, .. } => view.temperature_c = Some(highest.as_celsius()),
        Basis::Stated => {}
    }
    view
}

pub(crate) fn minimum_name(kind: MinimumKind) -> &'static str {
    match kind {
        MinimumKind::LoadTable => "load-table",
        MinimumKind::RestrictedSpeed => "restricted-speed",
        MinimumKind::MakerRow => "maker-row",
        MinimumKind::Deflection => "deflection",
        MinimumKind::Bead => "bead",
        MinimumKind::LowestRow => "lowest-row",
        MinimumKind::WheelValve => "wheel-valve",
        MinimumKind::FlatRule => "flat-rule",
        MinimumKind::RoadsideHot => "roadside-hot",
        MinimumKind::DualGap => "dual-gap",
        MinimumKind::Chains => "chains",
        MinimumKind::TurningScrub => "turning-scrub",
        MinimumKind::Heat => "tire-heat",
        MinimumKind::Permit => "permit-minimum",
    }
}

pub(crate) fn maximum_name(kind: MaximumKind) -> &'static str {
    match kind {
        MaximumKind::MoldedMaximum => "tire-maximum",
        MaximumKind::Rim => "rim-maximum",
        MaximumKind::Permit => "permit-maximum",
        MaximumKind::Supply => "supply",
        MaximumKind::Ground => "ground",
    }
}

pub(crate) fn approval(approval: Approval) -> &'static str {
    match approval {
        Approval::Maker => "maker",
        Approval::Standard => "standard",
        Approval::NeedsApproval => "needs approval",
        Approval::NotPossible => "not possible",
    }
}

fn added(added: Added) -> &'static str {
    match added {
        Added::Gauge => "gauge",
        Added::Deadband => "deadband",
        Added::DualMismatch => "duals",
        Added::WarmestTire => "warmest",
        Added::Step => "snap",
        Added::SealedGauge => "sealed-gauge",
        Added::HandSet => "hand-set",
    }
}

/// The kind of reason, with its numbers by name with unit.
pub(crate) fn impossible(why: &Impossible) -> (String, Vec<(&'static str, f64)>) {
    let (name, with): (&str, Vec<(&'static str, f64)>) = match why {
        Impossible::Overloaded { load, highest, cap, .. } => (
            "overloaded",
            vec![
                ("load_kg", load.as_kg()),
                ("highest_kg", highest.as_kg()),
                ("cap_kmh", cap.as_kmh()),
            ],
        ),
        Impossible::TooFast { cap, rated, .. } => {
            ("too-fast", vec![("cap_kmh", cap.as_kmh()), ("rated_kmh", rated.as_kmh())])
        }
        Impossible::TooHot { highest, .. } => {
            ("too-hot", vec![("highest_c", highest.as_celsius())])
        }
        Impossible::DualsTouch { spacing, .. } => {
            ("duals-touch", vec![("spacing_mm", spacing.as_mm())])
        }
        Impossible::NoDeflection { share, .. } => {
            ("no-deflection", vec![("deflection_pct", share * 100.0)])
        }
        Impossible::Empty { lowest, highest, by } => {
            let name = match by {
                MaximumKind::Supply => "empty-supply",
                MaximumKind::Rim => "empty-rim",
                MaximumKind::Permit => "empty-permit",
                MaximumKind::MoldedMaximum | MaximumKind::Ground => "empty-tire",
            };
            (name, vec![("lowest_kpa", lowest.as_kpa()), ("highest_kpa", highest.as_kpa())])
        }
        Impossible::NotRated { .. } => ("not-rated", vec![]),
        Impossible::Refused { reason, .. } => return (reason.clone(), vec![]),
    };
    (name.to_owned(), with)
}

/// Where a document from before the mark says nothing, a driver is shown nothing.
fn dash() -> String {
    "dash".to_owned()
}

/// The mark of a cell and the cell whose value is shown.
fn driver<'a>(ladder: &'a Ladder, cell: &'a Cell) -> (&'static str, Option<&'a Cell>) {
    match ladder.driver_shows(cell.id) {
        Some(DriverShows::Set) => ("set", Some(cell)),
        Some(DriverShows::RoadPressure) => ("road pressure", ladder.road_cell(cell.id)),
        Some(DriverShows::Dash) | None => ("dash", None),
    }
}

pub(super) fn cell(haul: &HaulCycle, ladder: &Ladder, cell: &Cell) -> CellView {
    let combination = &haul.combination;
    let used = ladder.uses[cell.id.rung].used;
    let (driver, shown) = driver(ladder, cell);
    let state = &combination.load_states[cell.id.load_state];
    let minimum = cell.window.as_ref().map(plan::Window::governing_minimum);
    let maximum = cell.window.as_ref().map(plan::Window::governing_maximum);
    let why = cell.impossible.as_ref().map(impossible);
    CellView {
        channel: combination.channels[cell.id.channel].name.clone(),
        load_state: state.name.clone(),
        chain_state: state.chain_states[cell.id.chain_state].name.clone(),
        rung: combination.rungs[cell.id.rung].name.clone(),
        used,
        pressure_kpa: cell.set.as_ref().map(|set| set.cold.as_kpa()),
        set_kpa: cell.set.as_ref().map(|set| set.as_controller_reads.as_kpa()),
        min_kpa: minimum.map(|limit| limit.pressure.as_kpa()),
        min_governed_by: minimum.map(|limit| minimum_name(limit.kind).to_owned()),
        min_source: minimum.map(|limit| source(&limit.citation)),
        min_runner_up: cell
            .window
            .as_ref()
            .and_then(|window| window.minimum_runner_up())
            .map(|found| limit(haul, found, minimum_name)),
        min_limit: minimum.map(|found| limit(haul, found, minimum_name)),
        max_kpa: maximum.map(|limit| limit.pressure.as_kpa()),
        max_governed_by: maximum.map(|limit| maximum_name(limit.kind).to_owned()),
        max_source: maximum.map(|limit| source(&limit.citation)),
        ground_advice_kpa: cell
            .window
            .as_ref()
            .and_then(|window| window.ground_advice())
            .map(|advice| advice.pressure.as_kpa()),
        stack: cell
            .set
            .iter()
            .flat_map(|set| &set.stack)
            .map(|item| StackView {
                added_for: added(item.added).to_owned(),
                pressure_kpa: item.amount.as_kpa(),
            })
            .collect(),
        approval: approval(cell.approval).to_owned(),
        driver: driver.to_owned(),
        driver_set_kpa: shown
            .and_then(|cell| cell.set.as_ref())
            .map(|set| set.as_controller_reads.as_kpa()),
        not_possible_because: why.as_ref().map(|why| why.0.clone()),
        not_possible_with: why
            .into_iter()
            .flat_map(|why| why.1)
            .map(|(name, value)| (name.to_owned(), value))
            .collect(),
        deflection_pct: cell.deflection_share.map(|share| share * 100.0),
        worst_tire_kg: cell.worst.map(|worst| worst.load.as_kg()),
        mean_tire_kg: cell.worst.map(|worst| worst.mean.as_kg()),
        warmest_tire_c: cell.warmest_tire.as_celsius(),
        hold_m: cell.hold.map(quantity::Length::as_m),
    }
}

pub(super) fn fixed(haul: &HaulCycle, group: &FixedGroup) -> FixedGroupView {
    FixedGroupView {
        axle_group: group_name(haul, group.group),
        load_state: haul.combination.load_states[group.load_state].name.clone(),
        pressure_kpa: group.pressure.as_kpa(),
        needed_kpa: group.needed.as_ref().ok().map(|limit| limit.pressure.as_kpa()),
        governed_by: match &group.needed {
            Ok(limit) => minimum_name(limit.kind).to_owned(),
            Err(why) => impossible(why).0,
        },
        worst_tire_kg: group.load.map(quantity::Mass::as_kg),
        enough: group.is_enough(),
    }
}

pub(super) fn morning(haul: &HaulCycle, morning: &MorningAfter) -> MorningView {
    MorningView {
        channel: haul.combination.channels[morning.channel].name.clone(),
        rung: haul.combination.rungs[morning.rung].name.clone(),
        reading_kpa: morning.reading.as_kpa(),
        needed_kpa: morning.needed.as_kpa(),
        share_pct: morning.share * 100.0,
        may_move: morning.may_move(),
    }
}
