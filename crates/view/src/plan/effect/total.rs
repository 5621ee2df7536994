//! A way to run over the whole haul, and what the effects rest on.

use model::haul_cycle::HaulCycle;
use model::source::Standing;
use plan::effect::{Kind, Total};
use quantity::{Time, Volume};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::band::{BandView, Lacking, NotAssessedView, kind_name};
use super::leg::way_name;
use crate::plan::ladder::group_name;

/// A way over the whole haul, a cycle at a time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct EffectTotalView {
    /// `plan`, `full-pressure`, `constant-reduced` or `less-load`.
    pub way: String,
    /// Payload of a trip.
    pub payload_kg: f64,
    /// Trips for what the plan carries in one.
    pub trips_for_the_same: f64,
    /// Time of a cycle.
    pub time_s: Option<f64>,
    /// Fuel of a cycle.
    pub fuel_l: Option<BandView>,
    /// Rut of aggregate over that at full pressure, mean over its length and axles.
    pub gravel_rut_ratio: Option<BandView>,
    /// Fatigue damage of a pass to asphalt likewise.
    pub asphalt_damage_ratio: Option<BandView>,
    /// Heat load of the tires of each group on the warmest day, with its corrections.
    pub heat_load: Vec<GroupHeatView>,
    /// Legs, each run for itself, on which some effect was not assessed.
    pub legs_not_assessed: usize,
    /// What was not assessed of the whole.
    pub not_assessed: Vec<NotAssessedView>,
}

/// Heat load of the tires of a group; to be at most the maker's rating of that tire.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct GroupHeatView {
    /// Axle group.
    pub axle_group: String,
    /// Metric tons times km/h.
    pub tkph: f64,
    /// The same for the length of the cycle and the warmest day.
    pub tkph_corrected: f64,
    /// Whether the mean speed is above what ratings are made for.
    pub extrapolated: bool,
}

pub(in crate::plan) fn total(haul: &HaulCycle, found: &Total) -> EffectTotalView {
    let mut lacking = Lacking::default();
    let ratio = |band: &plan::effect::Band<f64>| BandView::of(band, |value| value);
    let mut heat_load = Vec::new();
    for (group, heat) in &found.tkph {
        heat_load.extend(lacking.read("heat-load", heat, |heat| GroupHeatView {
            axle_group: group_name(haul, *group),
            tkph: heat.site.as_tkph(),
            tkph_corrected: heat.corrected.as_tkph(),
            extrapolated: heat.extrapolated,
        }));
    }
    EffectTotalView {
        way: way_name(found.way).to_owned(),
        payload_kg: found.payload.as_kg(),
        trips_for_the_same: found.trips_for_the_same,
        time_s: lacking.read("time", &found.time, |time: &Time| time.as_s()),
        fuel_l: lacking.read("rolling", &found.fuel, |band| BandView::of(band, Volume::as_l)),
        gravel_rut_ratio: lacking.maybe("gravel-rut", found.gravel_rut.as_ref(), ratio),
        asphalt_damage_ratio: lacking.maybe("pavement", found.asphalt_damage.as_ref(), ratio),
        heat_load,
        legs_not_assessed: found.legs_not_assessed,
        not_assessed: lacking.list(),
    }
}

/// What a kind of effect rests on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct EffectSourceView {
    /// The effect, such as `climb`.
    pub effect: String,
    /// Source key.
    pub source: String,
    /// `read`, `given`, `common practice` or `from memory`.
    pub standing: String,
}

/// Sources of every effect.
pub(in crate::plan) fn sources() -> Vec<EffectSourceView> {
    let of = |kind: Kind| {
        kind.citations().into_iter().map(move |citation| EffectSourceView {
            effect: kind_name(kind).to_owned(),
            source: citation.key.to_string(),
            standing: match citation.standing {
                Standing::Read => "read",
                Standing::Given => "given",
                Standing::CommonPractice => "common practice",
                Standing::FromMemory => "from memory",
            }
            .to_owned(),
        })
    };
    Kind::ALL.into_iter().flat_map(of).collect()
}
