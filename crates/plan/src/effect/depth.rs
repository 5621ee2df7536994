//! Vertical stress in the ground over depth, on the leg where the plan changes the patch most.

use model::route::Surface;
use quantity::{Length, Stress};

use super::band::Band;
use super::leg::{LegEffects, LegWay};
use super::tire::stress_at;
use super::way::{Run, Way, Ways};

/// Stress under the tires of a group over depth.
#[derive(Debug, Clone, PartialEq)]
pub struct DepthProfile {
    /// Index of the leg.
    pub leg: usize,
    /// The way.
    pub way: Way,
    /// Index of the group.
    pub group: usize,
    /// Depth and largest vertical stress there, from the top down.
    pub points: Vec<(Length, Band<Stress>)>,
}

/// Shallowest depth told: above it tires press unevenly.
const SHALLOWEST: Length = Length::from_m(0.1);
/// Step, and how many of them.
const STEP: Length = Length::from_m(0.05);
const STEPS: usize = 19;

/// Profiles of every controlled group of the laden truck, by way, on the unpaved leg where the
/// plan's patch grows most; none on a route that is paved all along.
///
/// # Source
/// As [`on_tire`](super::on_tire).
pub(super) fn profiles(ways: &Ways<'_>, legs: &[LegEffects]) -> Vec<DepthProfile> {
    let laden = legs.iter().filter(|leg| leg.run == Run::Laden && unpaved(ways, leg.leg));
    let most = laden.max_by(|a, b| growth(a).total_cmp(&growth(b)));
    let Some(leg) = most else { return Vec::new() };
    leg.ways.iter().flat_map(|way| of_way(ways, leg.leg, way)).collect()
}

fn unpaved(ways: &Ways<'_>, leg: usize) -> bool {
    !matches!(ways.haul.route.legs[leg].surface, Surface::Paved | Surface::Sealed)
}

fn growth(leg: &LegEffects) -> f64 {
    let plan = leg.ways.iter().find(|way| way.way == Way::Plan);
    let mean = plan.and_then(|way| way.means.contact_growth.as_ref()?.as_ref().ok());
    mean.map_or(0.0, |band| band.middle)
}

fn of_way(ways: &Ways<'_>, leg: usize, way: &LegWay) -> Vec<DepthProfile> {
    let groups = &ways.haul.combination.groups;
    let controlled = way.groups.iter().filter(|one| groups[one.group].channel.is_some());
    let profile = |one: &super::leg::GroupEffect| {
        let contact = one.tire.contact.as_ref().ok()?;
        let depths = (0..STEPS).map(|step| SHALLOWEST + STEP * step as f64);
        let points = depths.map(|depth| {
            let stress = stress_at(&groups[one.group], one.tire.load, contact, depth).ok()?;
            Some((depth, stress))
        });
        let points: Option<Vec<_>> = points.collect();
        Some(DepthProfile { leg, way: way.way, group: one.group, points: points? })
    };
    controlled.filter_map(profile).collect()
}
