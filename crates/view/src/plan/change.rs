//! Change points and the cycle.

use haul::{LadenChange, Phase, PhaseKind};
use model::haul_cycle::HaulCycle;
use plan::change::Refusal;
use plan::{Action, ChangePoint, Consequence, Driven, LadenOption, Way, WayTaken};
use quantity::{Length, Time};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What calling late, or never, does.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ConsequenceView {
    /// Time lost against the plan.
    pub time_lost_s: f64,
    /// Road run at a pressure not meant for it.
    pub wrong_road_m: f64,
    /// Whether tires are then filled on a sustained descent.
    pub on_descent: bool,
}

/// A way to make a change.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct WayView {
    /// `rolling`, `go on slowly`, `lay-by`, `slower`, `other rung`, `more air` or `more road`.
    pub way: String,
    /// Time lost.
    pub time_lost_s: Option<f64>,
    /// Lay-by.
    pub place: Option<String>,
    /// Chainage of the lay-by.
    pub km: Option<f64>,
    /// How far past the place, or how much road is missing.
    pub distance_m: Option<f64>,
    /// Mean speed at which it fits.
    pub mean_kmh: Option<f64>,
    /// Rung that is reached in time.
    pub rung: Option<String>,
    /// Multiple of today's compressor delivery.
    pub times_the_air: Option<f64>,
}

/// A place where the driver must start a change.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ChangePointView {
    /// Chainage.
    pub km: f64,
    /// Nearest landmark or board, with the distance to it.
    pub near: Option<String>,
    /// Distance from that landmark, positive beyond it in the direction of travel.
    pub from_landmark_m: Option<f64>,
    /// Load state of the run.
    pub load_state: String,
    /// Rung before.
    pub from_rung: String,
    /// Rung after.
    pub to_rung: String,
    /// `raise` or `lower`.
    pub action: String,
    /// How long it takes: the middle of the samples, or nominally without samples.
    pub change_time_s: f64,
    /// The time that nine of ten changes keep; `null` without samples.
    pub change_time_p90_s: Option<f64>,
    /// Lead that nine of ten changes keep, or nominally without samples.
    pub lead_m: f64,
    /// Chainage where it must be complete.
    pub reach_by_km: f64,
    /// Chainage where it is complete.
    pub reached_km: f64,
    /// Speed cap while it is under way.
    pub cap_kmh: f64,
    /// Whether it is complete where it must be.
    pub fits: bool,
    /// Why it is refused where it would be complete in time: `compressor-limit` or `supply-before-descent`.
    pub refused: Option<String>,
    /// Whether nine of ten changes are; `null` without samples.
    pub fits_p90: Option<bool>,
    /// Whether a sustained descent moved it forward.
    pub before_descent: bool,
    /// Lowest service pressure meanwhile.
    pub lowest_supply_kpa: f64,
    /// Longest unbroken compressor run.
    pub longest_loaded_s: f64,
    /// How it is made.
    pub chosen: WayView,
    /// How else it could be.
    pub others: Vec<WayView>,
    /// Called 1 km late.
    pub late_1_km: Option<ConsequenceView>,
    /// Never called.
    pub never: Option<ConsequenceView>,
}

/// A way to go from the empty to the laden pressures.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LadenOptionView {
    /// `rolling`, `while loading` or `after loading`.
    pub way: String,
    /// Whether it is the one chosen.
    pub chosen: bool,
    /// Whether it can be done.
    pub possible: bool,
    /// Why it cannot: `not-allowed-while-loading`, `road-too-short` or `never-complete`.
    pub not_possible_because: Option<String>,
    /// How long the change takes.
    pub change_time_s: Option<f64>,
    /// Time lost standing.
    pub time_lost_s: Option<f64>,
    /// Chainage where it is ordered, for the rolling way.
    pub km: Option<f64>,
    /// Empty road at the laden pressures before loading.
    pub empty_road_hard_m: f64,
}

/// One part of the cycle.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PhaseView {
    /// `shift start`, `empty`, `loading`, `laden` or `unloading`.
    pub phase: String,
    /// Time.
    pub time_s: f64,
    /// Time waited for pressure alone.
    pub waited_s: f64,
    /// Fuel.
    pub fuel_l: f64,
    /// Compressor time.
    pub compressor_loaded_s: f64,
    /// Lowest service pressure.
    pub lowest_supply_kpa: f64,
}

/// The cycle.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CycleView {
    /// Time of a cycle without the start of shift.
    pub time_s: f64,
    /// Added against the highest rung all the way.
    pub time_added_s: f64,
    /// Waited for pressure alone.
    pub waited_s: f64,
    /// Fuel.
    pub fuel_l: f64,
    /// Compressor time.
    pub compressor_loaded_s: f64,
    /// Lowest service pressure.
    pub lowest_supply_kpa: f64,
    /// Water taken in by the compressor, for the dryer.
    pub water_g: Option<f64>,
    /// Cycles a day.
    pub cycles_per_day: f64,
    /// Parts.
    pub phases: Vec<PhaseView>,
}

/// Seconds; what lies under a millisecond is noise of sums, and zero.
fn seconds(time: Time) -> f64 {
    if time.abs() < Time::from_s(1e-3) { 0.0 } else { time.as_s() }
}

/// Meters; what lies under a millimeter is noise of sums, and zero.
fn meters(length: Length) -> f64 {
    if length.abs() < Length::from_mm(1.0) { 0.0 } else { length.as_m() }
}

fn consequence(found: &Consequence) -> ConsequenceView {
    ConsequenceView {
        time_lost_s: seconds(found.time_lost),
        wrong_road_m: meters(found.wrong_road),
        on_descent: found.on_descent,
    }
}

fn way(haul: &HaulCycle, taken: &WayTaken) -> WayView {
    let mut view = WayView {
        way: String::new(),
        time_lost_s: taken.time_lost.map(seconds),
        place: None,
        km: None,
        distance_m: None,
        mean_kmh: None,
        rung: None,
        times_the_air: None,
    };
    let name = match &taken.way {
        Way::Rolling => "rolling",
        Way::GoOnSlowly { past } => {
            view.distance_m = Some(past.as_m());
            "go on slowly"
        }
        Way::LayBy(stop) => {
            view.place = Some(stop.name.clone());
            view.km = Some(stop.at.as_km());
            "lay-by"
        }
        Way::Slower { mean } => {
            view.mean_kmh = Some(mean.as_kmh());
            "slower"
        }
        Way::OtherRung { rung } => {
            view.rung = Some(haul.combination.rungs[*rung].name.clone());
            "other rung"
        }
        Way::MoreAir { times } => {
            view.times_the_air = Some(*times);
            "more air"
        }
        Way::MoreRoad { missing } => {
            view.distance_m = Some(missing.as_m());
            "more road"
        }
    };
    name.clone_into(&mut view.way);
    view
}

fn refused(why: Refusal) -> &'static str {
    match why {
        Refusal::CompressorLimit => "compressor-limit",
        Refusal::SupplyBeforeDescent => "supply-before-descent",
    }
}

pub(super) fn point(haul: &HaulCycle, point: &ChangePoint) -> ChangePointView {
    let combination = &haul.combination;
    let rung = |index: usize| combination.rungs[index].name.clone();
    let nearest = haul
        .route
        .landmarks
        .iter()
        .min_by(|a, b| (a.at - point.at).abs().total_cmp(&(b.at - point.at).abs()));
    let forward = point.reach_by >= point.at;
    let beyond = nearest.map(|landmark| {
        let along = point.at - landmark.at;
        meters(if forward { along } else { -along })
    });
    ChangePointView {
        km: point.at.as_km(),
        near: nearest.map(|landmark| landmark.name.clone()),
        from_landmark_m: beyond,
        load_state: combination.load_states[point.load_state].name.clone(),
        from_rung: rung(point.from.rung),
        to_rung: rung(point.to.rung),
        action: match point.action {
            Action::Raise => "raise",
            Action::Lower => "lower",
        }
        .to_owned(),
        change_time_s: point.spread.map_or(point.time, |spread| spread.time_p50).as_s(),
        change_time_p90_s: point.spread.map(|spread| spread.time_p90.as_s()),
        refused: point.refused.map(|why| refused(why).to_owned()),
        fits_p90: point.fits_p90,
        lead_m: point.lead.as_m(),
        reach_by_km: point.reach_by.as_km(),
        reached_km: point.reached.as_km(),
        cap_kmh: point.cap.as_kmh(),
        fits: point.fits,
        before_descent: point.before_descent,
        lowest_supply_kpa: point.lowest_supply.as_kpa(),
        longest_loaded_s: point.longest_loaded.as_s(),
        chosen: way(haul, &point.chosen),
        others: point.others.iter().map(|other| way(haul, other)).collect(),
        late_1_km: point.late_1_km.as_ref().map(consequence),
        never: point.never.as_ref().map(consequence),
    }
}

fn laden_way(way: LadenChange) -> &'static str {
    match way {
        LadenChange::Rolling => "rolling",
        LadenChange::WhileLoading => "while loading",
        LadenChange::AfterLoading => "after loading",
    }
}

fn laden_refused(haul: &HaulCycle, way: LadenChange) -> &'static str {
    match way {
        LadenChange::Rolling => "road-too-short",
        LadenChange::WhileLoading if !haul.loading.change_while_loading => {
            "not-allowed-while-loading"
        }
        LadenChange::WhileLoading | LadenChange::AfterLoading => "never-complete",
    }
}

pub(super) fn laden_option(
    haul: &HaulCycle,
    option: &LadenOption,
    chosen: LadenChange,
) -> LadenOptionView {
    let possible = option.time_lost.is_some();
    LadenOptionView {
        way: laden_way(option.way).to_owned(),
        chosen: option.way == chosen,
        possible,
        not_possible_because: (!possible).then(|| laden_refused(haul, option.way).to_owned()),
        change_time_s: option.change_time.map(quantity::Time::as_s),
        time_lost_s: option.time_lost.map(quantity::Time::as_s),
        km: option.at.map(quantity::Length::as_km),
        empty_road_hard_m: meters(option.empty_road_hard),
    }
}

fn phase(phase: &Phase) -> PhaseView {
    PhaseView {
        phase: match phase.kind {
            PhaseKind::ShiftStart => "shift start",
            PhaseKind::Empty => "empty",
            PhaseKind::Loading => "loading",
            PhaseKind::Laden => "laden",
            PhaseKind::Unloading => "unloading",
        }
        .to_owned(),
        time_s: phase.time.as_s(),
        waited_s: seconds(phase.waited),
        fuel_l: phase.fuel.as_l(),
        compressor_loaded_s: phase.compressor_loaded.as_s(),
        lowest_supply_kpa: phase.lowest_supply.as_kpa(),
    }
}

pub(super) fn cycle(haul: &HaulCycle, driven: &Driven) -> CycleView {
    let cycle = &driven.cycle;
    CycleView {
        time_s: cycle.time().as_s(),
        time_added_s: seconds(cycle.time() - driven.full_pressure_time),
        waited_s: seconds(cycle.waited()),
        fuel_l: cycle.fuel().as_l(),
        compressor_loaded_s: cycle.compressor_loaded().as_s(),
        lowest_supply_kpa: cycle.lowest_supply().map_or(0.0, quantity::GaugePressure::as_kpa),
        water_g: driven.water.map(|water| water.as_kg() * 1e3),
        cycles_per_day: haul.cycles_per_day,
        phases: cycle.phases.iter().map(phase).collect(),
    }
}
