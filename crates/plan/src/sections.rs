//! The stretches of a run that want one rung.

use haul::Course;
use model::haul_cycle::HaulCycle;
use quantity::Length;

/// The rung a leg wants in a load state: the one assigned to the run, else the one it names,
/// else the slowest whose surfaces include its own.
pub fn wanted_rung(haul: &HaulCycle, load_state: usize, leg: usize) -> Option<usize> {
    if let Some(assigned) = &haul.leg_rungs {
        let run = if load_state == haul.laden_state { &assigned.laden } else { &assigned.empty };
        return run.get(leg).copied();
    }
    let leg = &haul.route.legs[leg];
    leg.rung.or_else(|| {
        haul.combination
            .rungs
            .iter()
            .enumerate()
            .filter(|(_, rung)| rung.surfaces.contains(&leg.surface))
            .min_by(|a, b| a.1.cap.total_cmp(&b.1.cap))
            .map(|(index, _)| index)
    })
}

/// A stretch in the direction of travel that wants one rung.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Section {
    /// Travel distance where it begins.
    pub from: Length,
    /// Travel distance where it ends.
    pub to: Length,
    /// The rung.
    pub rung: usize,
    /// Index of the first leg met.
    pub leg: usize,
}

/// A leg that no rung suits.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error(
    "no rung is meant for leg '{leg}' of route '{route}'; name a rung on the leg or list its surface in one"
)]
pub struct NoRung {
    /// The route.
    pub route: String,
    /// The leg.
    pub leg: String,
}

/// Joins the legs of a run into sections, in the order of travel.
///
/// # Errors
/// [`NoRung`] for a leg without a rung.
pub fn sections(
    haul: &HaulCycle,
    load_state: usize,
    course: &Course,
) -> Result<Vec<Section>, NoRung> {
    let route = &haul.route;
    let mut found: Vec<Section> = Vec::new();
    let forward = course.direction() == haul::Direction::Forward;
    let order: Vec<usize> = if forward {
        (0..route.legs.len()).collect()
    } else {
        (0..route.legs.len()).rev().collect()
    };
    for index in order {
        let leg = &route.legs[index];
        let rung = wanted_rung(haul, load_state, index)
            .ok_or_else(|| NoRung { route: route.name.clone(), leg: leg.name.clone() })?;
        let (from, to) = if forward {
            (leg.from, leg.to)
        } else {
            (course.length() - leg.to, course.length() - leg.from)
        };
        match found.last_mut() {
            Some(last) if last.rung == rung => last.to = to,
            _ => found.push(Section { from, to, rung, leg: index }),
        }
    }
    Ok(found)
}
