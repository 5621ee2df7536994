//! Stress in the ground over depth.

use model::haul_cycle::HaulCycle;
use plan::effect::DepthProfile;
use quantity::Stress;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::band::BandView;
use super::leg::way_name;
use crate::plan::ladder::group_name;

/// Stress under the tires of a group over depth.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct StressProfileView {
    /// Leg.
    pub leg: String,
    /// Axle group.
    pub axle_group: String,
    /// `plan`, `full-pressure`, `constant-reduced` or `less-load`.
    pub way: String,
    /// From the top down.
    pub points: Vec<StressPointView>,
}

/// Largest vertical stress at a depth.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct StressPointView {
    /// Depth.
    pub depth_m: f64,
    /// Stress: firm ground the least, soft ground the most.
    pub stress_kpa: BandView,
}

pub(in crate::plan) fn profile(haul: &HaulCycle, found: &DepthProfile) -> StressProfileView {
    StressProfileView {
        leg: haul.route.legs[found.leg].name.clone(),
        axle_group: group_name(haul, found.group),
        way: way_name(found.way).to_owned(),
        points: found
            .points
            .iter()
            .map(|(depth, stress)| StressPointView {
                depth_m: depth.as_m(),
                stress_kpa: BandView::of(stress, Stress::as_kpa),
            })
            .collect(),
    }
}
