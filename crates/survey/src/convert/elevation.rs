//! Elevation along a route: from grades, from points, or from a recorded track.

use model::route::Profile;
use quantity::Length;

use super::Loaded;
use crate::Folder;
use crate::file::{LegFile, RouteFile};
use crate::problem::{Problem, ProblemKind};

/// The profile, from the one source the file gives.
pub(super) fn elevation(
    file: &Loaded<RouteFile>,
    _folder: &Folder,
    problems: &mut Vec<Problem>,
) -> Option<Profile> {
    let data = &file.data;
    let graded = data.legs.iter().all(|leg| leg.grade_pct.is_some());
    let sources = [data.legs.iter().any(|leg| leg.grade_pct.is_some()), !data.elevation.is_empty(), data.track.is_some()];
    match sources.iter().filter(|given| **given).count() {
        0 => {
            problems.push(file.problem("", ProblemKind::NoElevation));
            None
        }
        1 if graded => from_grades(&data.legs),
        1 if !data.elevation.is_empty() => {
            let points = data
                .elevation
                .iter()
                .map(|point| (Length::from_km(point.at_km), Length::from_m(point.elevation_m)))
                .collect();
            match Profile::new(points) {
                Ok(profile) => Some(profile),
                Err(_) => {
                    problems.push(file.problem("/elevation", ProblemKind::NotRising));
                    None
                }
            }
        }
        _ => {
            problems.push(file.problem("", ProblemKind::TwoElevations));
            None
        }
    }
}

/// Elevation from the grades of the legs, from zero at the start.
fn from_grades(legs: &[LegFile]) -> Option<Profile> {
    let mut height = Length::ZERO;
    let mut points = vec![(Length::from_km(legs.first()?.from_km), height)];
    for leg in legs {
        let run = Length::from_km(leg.to_km) - Length::from_km(leg.from_km);
        height = height + run * (leg.grade_pct? / 100.0);
        points.push((Length::from_km(leg.to_km), height));
    }
    // Legs that do not follow one another were reported with the route.
    Profile::new(points).ok()
}
