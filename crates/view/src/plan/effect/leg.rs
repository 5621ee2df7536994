//! Effects on one leg in one run, by way.

use model::haul_cycle::HaulCycle;
use model::tire::warm_up::AirHeat;
use plan::effect::{
    DEPTH, Grade, GroupEffect, LegEffects, LegWay, Run, SoilSpread, Spread, Uncertain, Verdict, Way,
};
use quantity::{Area, ColdPressure, Length, Stress, Volume};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::band::{BandView, Lacking, NotAssessedView};
use crate::plan::ladder::group_name;

/// One leg in one run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LegEffectsView {
    /// Leg.
    pub leg: String,
    /// Where it begins.
    pub from_km: f64,
    /// Where it ends.
    pub to_km: f64,
    /// Its surface, such as `gravel`.
    pub surface: String,
    /// `empty` or `laden`.
    pub run: String,
    /// The ways to run there are, the plan first.
    pub ways: Vec<LegWayView>,
}

/// One way to run on a leg.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LegWayView {
    /// `plan`, `full-pressure`, `constant-reduced` or `less-load`.
    pub way: String,
    /// Rung.
    pub rung: String,
    /// Speed.
    pub speed_kmh: f64,
    /// Means over the axles, against full pressure.
    pub means: MeansView,
    /// Climb.
    pub climb: Option<GradeView>,
    /// Descent that can be held, with a reserve to slow down.
    pub descent: Option<GradeView>,
    /// Whether by the least it climbs steeper than it holds going down.
    pub climbs_more_than_it_holds: bool,
    /// Rolling resistance over that at full pressure.
    pub resistance_ratio: Option<BandView>,
    /// Fuel that adds on the leg; below zero it saves.
    pub fuel_added_l: Option<BandView>,
    /// Difference of rolling circumference between driven axles.
    pub wind_up_mm: Option<BandView>,
    /// The same over the circumference.
    pub wind_up_slip_pct: Option<BandView>,
    /// Whether that is so much that locks are to be left open on firm ground.
    pub leave_locks_open: Option<bool>,
    /// How sure climb and resistance are, on soft ground in the plan's way.
    pub spread: Option<SoilSpreadView>,
    /// Axle groups that stand on the road.
    pub groups: Vec<GroupEffectView>,
    /// What was not assessed of the leg as a whole.
    pub not_assessed: Vec<NotAssessedView>,
}

/// Means over the axles on a leg; `null` where the surface has no use for it or it was not assessed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MeansView {
    /// Area of the patch over that at full pressure.
    pub contact_area_ratio: Option<BandView>,
    /// Stress at depth likewise.
    pub stress_below_ratio: Option<BandView>,
    /// Rut of aggregate likewise.
    pub gravel_rut_ratio: Option<BandView>,
    /// Rut in soil likewise.
    pub soil_rut_ratio: Option<BandView>,
    /// Fatigue damage of a pass to asphalt likewise.
    pub asphalt_damage_ratio: Option<BandView>,
    /// Change of body vibration at the same speed.
    pub ride_change_pct: Option<BandView>,
}

/// A grade that can be had against one that is there.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct GradeView {
    /// Steepest that can be had; below zero it does not move on the level.
    pub possible_pct: BandView,
    /// Steepest there is.
    pub needed_pct: f64,
    /// `go`, `doubtful` or `no-go`.
    pub verdict: String,
}

/// How sure two numbers are on soft ground.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SoilSpreadView {
    /// Steepest climb.
    pub climb_pct: Option<SpreadView>,
    /// Rolling resistance over that at full pressure.
    pub resistance_ratio: Option<SpreadView>,
}

/// Samples of a number.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SpreadView {
    /// One in ten lies under it.
    pub p10: f64,
    /// Half lie under it.
    pub p50: f64,
    /// Nine in ten lie under it.
    pub p90: f64,
    /// What the spread comes from, the most first.
    pub narrows: Vec<NarrowsView>,
}

/// What would make a number surer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct NarrowsView {
    /// `strength`, `moisture`, `load`, `grip` or `model`.
    pub input: String,
    /// Share of the variance that would go.
    pub share_pct: f64,
}

/// What one axle group does on a leg.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct GroupEffectView {
    /// Axle group.
    pub axle_group: String,
    /// Mean load on a tire.
    pub tire_load_kg: f64,
    /// Cold pressure.
    pub pressure_kpa: f64,
    /// Cold pressure at full pressure.
    pub full_pressure_kpa: f64,
    /// Deflection over section height.
    pub deflection_pct: Option<f64>,
    /// Area of the patch.
    pub contact_area_cm2: Option<BandView>,
    /// Length of the patch.
    pub contact_length_mm: Option<f64>,
    /// Width of the patch.
    pub contact_width_mm: Option<f64>,
    /// Mean pressure in the patch.
    pub contact_pressure_kpa: Option<BandView>,
    /// Whether no print of such a tire at such a pressure was read.
    pub contact_extrapolated: bool,
    /// Area of the patch over that at full pressure.
    pub contact_area_ratio: Option<BandView>,
    /// Depth of the next two.
    pub stress_depth_m: f64,
    /// Largest vertical stress there.
    pub stress_below_kpa: Option<BandView>,
    /// The same over that at full pressure.
    pub stress_below_ratio: Option<BandView>,
    /// Gap between the duals; below zero they touch.
    pub dual_gap_mm: Option<BandView>,
    /// Whether that gap must be measured on the truck.
    pub measure_the_gap: bool,
    /// Rut of aggregate over that at full pressure.
    pub gravel_rut_ratio: Option<BandView>,
    /// Passes to the same rut over those at full pressure.
    pub gravel_passes_ratio: Option<BandView>,
    /// Whether the gain was cut at what was measured.
    pub gravel_gain_cut: Option<bool>,
    /// Thickness of the aggregate.
    pub aggregate_m: Option<f64>,
    /// Thickness that gives the same rut.
    pub aggregate_same_rut_m: Option<f64>,
    /// Rut in soil over that at full pressure.
    pub soil_rut_ratio: Option<BandView>,
    /// Passes to the same rut over those at full pressure.
    pub soil_passes_ratio: Option<BandView>,
    /// Cold pressure within the window at which the tire rolls easiest on this soft ground, from the
    /// weak end of its strength to the strong one.
    pub least_resistance_kpa: Option<BandView>,
    /// Whether that is the lowest of the window.
    pub least_resistance_at_lowest: Option<bool>,
    /// Resistance at the pressure held over the least.
    pub resistance_over_least: Option<f64>,
    /// Whether the empty tires are likely to corrugate the road.
    pub washboard_likely: Option<bool>,
    /// Strain at the bottom of the asphalt.
    pub asphalt_strain_ue: Option<f64>,
    /// Strain at the top of the ground.
    pub subgrade_strain_ue: Option<f64>,
    /// Fatigue life of the asphalt over that at full pressure.
    pub asphalt_life_ratio: Option<BandView>,
    /// Life of the ground over that at full pressure, by load alone.
    pub subgrade_life_ratio: Option<BandView>,
    /// Whether the ground was taken as weakened by thaw.
    pub thawed: Option<bool>,
    /// Air in the tire on the warmest day, if the leg is long enough to warm it.
    pub air_c: Option<f64>,
    /// `cool`, `warn` or `stop`.
    pub heat: Option<String>,
    /// Change of body vibration at the same speed.
    pub ride_change_pct: Option<BandView>,
    /// What was not assessed of the group.
    pub not_assessed: Vec<NotAssessedView>,
}

const fn ratio(value: f64) -> f64 {
    value
}

const fn percent(value: f64) -> f64 {
    value * 100.0
}

/// A way to run.
pub(in crate::plan) fn way_name(way: Way) -> &'static str {
    match way {
        Way::Plan => "plan",
        Way::FullPressure => "full-pressure",
        Way::ConstantReduced => "constant-reduced",
        Way::LessLoad => "less-load",
    }
}

fn verdict_name(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Go => "go",
        Verdict::Doubtful => "doubtful",
        Verdict::NoGo => "no-go",
    }
}

fn uncertain_name(input: Uncertain) -> &'static str {
    match input {
        Uncertain::Strength => "strength",
        Uncertain::Moisture => "moisture",
        Uncertain::Load => "load",
        Uncertain::Grip => "grip",
        Uncertain::Model => "model",
    }
}

fn grade(found: &Grade) -> GradeView {
    GradeView {
        possible_pct: BandView::of(&found.possible, percent),
        needed_pct: percent(found.needed),
        verdict: verdict_name(found.verdict).to_owned(),
    }
}

fn spread(found: &Spread, unit: impl Fn(f64) -> f64) -> SpreadView {
    SpreadView {
        p10: unit(found.tenths.p10),
        p50: unit(found.tenths.p50),
        p90: unit(found.tenths.p90),
        narrows: found
            .narrows
            .iter()
            .map(|(input, share)| NarrowsView {
                input: uncertain_name(*input).to_owned(),
                share_pct: percent(*share),
            })
            .collect(),
    }
}

fn soil_spread(found: &SoilSpread) -> SoilSpreadView {
    SoilSpreadView {
        climb_pct: found.climb.as_ref().ok().map(|found| spread(found, percent)),
        resistance_ratio: found.resistance.as_ref().ok().map(|found| spread(found, ratio)),
    }
}

pub(in crate::plan) fn leg(haul: &HaulCycle, found: &LegEffects) -> LegEffectsView {
    let leg = &haul.route.legs[found.leg];
    LegEffectsView {
        leg: leg.name.clone(),
        from_km: leg.from.as_km(),
        to_km: leg.to.as_km(),
        surface: crate::route::surface(leg.surface).to_owned(),
        run: match found.run {
            Run::Empty => "empty",
            Run::Laden => "laden",
        }
        .to_owned(),
        ways: found.ways.iter().map(|one| way(haul, one)).collect(),
    }
}

fn way(haul: &HaulCycle, found: &LegWay) -> LegWayView {
    let mut lacking = Lacking::default();
    let wind_up = lacking.maybe("wind-up", found.wind_up.as_ref(), Clone::clone);
    let means = &found.means;
    let mean = |band: &Option<plan::effect::Finding<plan::effect::Band<f64>>>,
                unit: fn(f64) -> f64| {
        let band = band.as_ref().and_then(|band| band.as_ref().ok());
        band.map(|band| BandView::of(band, unit))
    };
    LegWayView {
        way: way_name(found.way).to_owned(),
        rung: haul.combination.rungs[found.rung].name.clone(),
        speed_kmh: found.speed.as_kmh(),
        means: MeansView {
            contact_area_ratio: mean(&means.contact_growth, ratio),
            stress_below_ratio: mean(&means.stress_ratio, ratio),
            gravel_rut_ratio: mean(&means.gravel_rut, ratio),
            soil_rut_ratio: mean(&means.soil_rut, ratio),
            asphalt_damage_ratio: mean(&means.asphalt_damage, ratio),
            ride_change_pct: mean(&means.ride, percent),
        },
        climb: lacking.read("climb", &found.grades.climb, grade),
        descent: lacking.read("descent", &found.grades.descent, grade),
        climbs_more_than_it_holds: found.grades.climbs_more_than_it_holds,
        resistance_ratio: lacking
            .read("rolling", &found.resistance, |band| BandView::of(band, ratio)),
        fuel_added_l: lacking
            .read("rolling", &found.fuel_added, |band| BandView::of(band, Volume::as_l)),
        wind_up_mm: wind_up.as_ref().map(|one| BandView::of(&one.difference, Length::as_mm)),
        wind_up_slip_pct: wind_up.as_ref().map(|one| BandView::of(&one.slip, percent)),
        leave_locks_open: wind_up.as_ref().map(plan::effect::WindUp::leave_locks_open),
        spread: found.spread.as_ref().map(soil_spread),
        groups: found.groups.iter().map(|one| group(haul, one)).collect(),
        not_assessed: lacking.list(),
    }
}

fn group(haul: &HaulCycle, found: &GroupEffect) -> GroupEffectView {
    let mut lacking = Lacking::default();
    let as_ratio = |band: &plan::effect::Band<f64>| BandView::of(band, ratio);
    let contact = lacking.read("contact", &found.tire.contact, Clone::clone);
    let gravel = lacking.maybe("gravel-rut", found.gravel.as_ref(), Clone::clone);
    let soil = lacking.maybe("soil-rut", found.soil.as_ref(), Clone::clone);
    let least = lacking.maybe("rolling", found.least_resistance.as_ref(), Clone::clone);
    let pavement = lacking.maybe("pavement", found.pavement.as_ref(), Clone::clone);
    let heat = lacking.read("heat", &found.heat, Clone::clone);
    let thickness = gravel.as_ref().and_then(|gravel| gravel.thickness);
    GroupEffectView {
        axle_group: group_name(haul, found.group),
        tire_load_kg: found.tire.load.as_kg(),
        pressure_kpa: found.tire.pressure.as_kpa(),
        full_pressure_kpa: found.full_pressure.as_kpa(),
        deflection_pct: lacking.read("contact", &found.tire.deflection, |share| percent(*share)),
        contact_area_cm2: contact.as_ref().map(|one| BandView::of(&one.area, Area::as_cm2)),
        contact_length_mm: contact.as_ref().map(|one| one.length.as_mm()),
        contact_width_mm: contact.as_ref().map(|one| one.width.as_mm()),
        contact_pressure_kpa: contact
            .as_ref()
            .map(|one| BandView::of(&one.pressure, Stress::as_kpa)),
        contact_extrapolated: contact.as_ref().is_some_and(|one| one.extrapolated),
        contact_area_ratio: lacking.read("contact", &found.contact_growth, as_ratio),
        stress_depth_m: DEPTH.as_m(),
        stress_below_kpa: lacking.read("stress-below", &found.tire.stress_below, |band| {
            BandView::of(band, Stress::as_kpa)
        }),
        stress_below_ratio: lacking.maybe("stress-below", found.stress_ratio.as_ref(), as_ratio),
        dual_gap_mm: lacking
            .maybe("dual-gap", found.tire.gap.as_ref(), |band| BandView::of(band, Length::as_mm)),
        measure_the_gap: found.tire.measure_the_gap(),
        gravel_rut_ratio: gravel.as_ref().map(|one| as_ratio(&one.rut)),
        gravel_passes_ratio: gravel.as_ref().map(|one| as_ratio(&one.passes)),
        gravel_gain_cut: gravel.as_ref().map(|one| one.capped),
        aggregate_m: thickness.map(|one| one.now.as_m()),
        aggregate_same_rut_m: thickness.map(|one| one.same_rut.as_m()),
        soil_rut_ratio: soil.as_ref().map(|one| as_ratio(&one.rut)),
        soil_passes_ratio: soil.as_ref().map(|one| as_ratio(&one.passes)),
        least_resistance_kpa: least
            .as_ref()
            .map(|one| BandView::of(&one.pressure, ColdPressure::as_kpa)),
        least_resistance_at_lowest: least.as_ref().map(|one| one.at_lowest),
        resistance_over_least: least.as_ref().map(|one| one.held_over_least),
        washboard_likely: lacking.maybe("washboard", found.washboard.as_ref(), |likely| *likely),
        asphalt_strain_ue: pavement.as_ref().map(|one| one.strain.asphalt.strain.as_microstrain()),
        subgrade_strain_ue: pavement
            .as_ref()
            .map(|one| one.strain.subgrade.strain.as_microstrain()),
        asphalt_life_ratio: pavement.as_ref().map(|one| as_ratio(&one.asphalt_life)),
        subgrade_life_ratio: pavement.as_ref().map(|one| as_ratio(&one.subgrade_life)),
        thawed: pavement.as_ref().map(|one| one.thawed),
        air_c: heat.as_ref().map(|one| one.air.as_celsius()),
        heat: heat.as_ref().map(|one| heat_name(one.judged).to_owned()),
        ride_change_pct: lacking.read("ride", &found.ride, |band| BandView::of(band, percent)),
        not_assessed: lacking.list(),
    }
}

fn heat_name(heat: AirHeat) -> &'static str {
    match heat {
        AirHeat::Stop => "stop",
        AirHeat::Warn => "warn",
        AirHeat::Usual => "cool",
    }
}
