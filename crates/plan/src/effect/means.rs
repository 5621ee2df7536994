//! Means over the axles on a leg: what a short table tells of it.

use super::band::{Band, Finding};
use super::leg::GroupEffect;

/// Effects on a leg, mean over the axles on the road; `None` where the surface has no use for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Means {
    /// Area of the patch over that at full pressure.
    pub contact_growth: Option<Finding<Band<f64>>>,
    /// Stress at 0.3 m likewise.
    pub stress_ratio: Option<Finding<Band<f64>>>,
    /// Rut of aggregate likewise.
    pub gravel_rut: Option<Finding<Band<f64>>>,
    /// Rut in soil likewise.
    pub soil_rut: Option<Finding<Band<f64>>>,
    /// Fatigue damage a pass does to asphalt likewise.
    pub asphalt_damage: Option<Finding<Band<f64>>>,
    /// Change of body vibration, as a share.
    pub ride: Option<Finding<Band<f64>>>,
}

impl Means {
    pub(super) fn of(groups: &[GroupEffect], axles_down: &[u32]) -> Self {
        let over = |of: fn(&GroupEffect) -> Option<Finding<Band<f64>>>| {
            weighted(groups.iter().map(|group| (f64::from(axles_down[group.group]), of(group))))
        };
        Self {
            contact_growth: over(|group| Some(group.contact_growth.clone())),
            stress_ratio: over(|group| group.stress_ratio.clone()),
            gravel_rut: over(gravel_rut),
            soil_rut: over(|group| Some(group.soil.clone()?.map(|soil| soil.rut))),
            asphalt_damage: over(asphalt_damage),
            ride: over(|group| Some(group.ride.clone())),
        }
    }
}

/// Rut of aggregate under a group over that at full pressure.
pub(super) fn gravel_rut(group: &GroupEffect) -> Option<Finding<Band<f64>>> {
    Some(group.gravel.clone()?.map(|gravel| gravel.rut))
}

/// Fatigue damage a pass of a group does to asphalt over that at full pressure.
pub(super) fn asphalt_damage(group: &GroupEffect) -> Option<Finding<Band<f64>>> {
    Some(group.pavement.clone()?.map(|pavement| {
        let life = pavement.asphalt_life;
        Band { low: 1.0 / life.high, middle: 1.0 / life.middle, high: 1.0 / life.low }
    }))
}

/// The mean of bands that there are; one that could not be assessed makes the mean so.
pub(super) fn weighted(
    parts: impl Iterator<Item = (f64, Option<Finding<Band<f64>>>)>,
) -> Option<Finding<Band<f64>>> {
    let known: Finding<Vec<(f64, Band<f64>)>> =
        parts.filter_map(|(weight, part)| Some(part?.map(|band| (weight, band)))).collect();
    match known {
        Ok(parts) => Band::weighted_mean(&parts).map(Ok),
        Err(why) => Some(Err(why)),
    }
}
