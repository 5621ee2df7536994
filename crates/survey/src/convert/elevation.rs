//! Elevation along a route: from grades, from points, or from a recorded track.

use model::route::Profile;
use quantity::Length;

use super::{Loaded, inside};
use crate::file::{LegFile, RouteFile};
use crate::problem::{Condition, Problem, ProblemKind};
use crate::{Folder, track};

/// Smoothing of recorded elevation where the file says nothing: what suits satellite receivers.
const USUAL_SMOOTHING: Length = Length::from_m(150.0);
/// How far a track or a list of points may miss the ends of the legs, as a share of their length.
const LENGTH_TOLERANCE: f64 = 0.02;

/// The profile, from the one source that the file gives.
pub(super) fn elevation(
    file: &Loaded<RouteFile>,
    folder: &Folder,
    problems: &mut Vec<Problem>,
) -> Option<Profile> {
    let data = &file.data;
    let length = Length::from_km(data.legs.last()?.to_km);
    if data.track_smoothing_m.is_some() && data.track.is_none() {
        let key = "track_smoothing_m";
        let kind = ProblemKind::OutOfPlace { key, because: Condition::NoTrack };
        problems.push(file.document.problem_with_key("/track_smoothing_m", kind));
    }
    let graded = data.legs.iter().filter(|leg| leg.grade_pct.is_some()).count();
    match (graded, data.elevation.len(), &data.track) {
        (0, 0, None) => {
            problems.push(file.problem("", ProblemKind::NoElevation));
            None
        }
        (graded, 0, None) if graded == data.legs.len() => from_grades(&data.legs),
        (0, _, None) => from_points(file, length, problems),
        (0, 0, Some(path)) => from_track(file, path, length, folder, problems),
        _ => {
            let mut keys = ["/track", "/elevation"]
                .into_iter()
                .map(str::to_owned)
                .chain((0..data.legs.len()).map(|index| format!("/legs/{index}/grade_pct")));
            let at = keys.find(|key| file.document.has(key)).unwrap_or_default();
            problems.push(file.problem(&at, ProblemKind::TwoElevations));
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
        height += run * (leg.grade_pct? / 100.0);
        points.push((Length::from_km(leg.to_km), height));
    }
    // Legs that do not follow one another were reported with the route.
    Profile::new(points).ok()
}

fn from_points(
    file: &Loaded<RouteFile>,
    length: Length,
    problems: &mut Vec<Problem>,
) -> Option<Profile> {
    let points: Vec<(Length, Length)> = file
        .data
        .elevation
        .iter()
        .map(|point| (Length::from_km(point.at_km), Length::from_m(point.elevation_m)))
        .collect();
    if let Some(index) = points.windows(2).position(|pair| pair[1].0 <= pair[0].0) {
        let pointer = format!("/elevation/{}/at_km", index + 1);
        problems.push(file.problem(&pointer, ProblemKind::NotRising));
        return None;
    }
    let (from, to) = (points.first()?.0, points.last()?.0);
    let missing = (length - to).max(from);
    if missing > length * LENGTH_TOLERANCE {
        let kind = ProblemKind::ElevationShort { from, to, length };
        problems.push(file.problem("/elevation", kind));
    }
    Profile::new(points).ok()
}

fn from_track(
    file: &Loaded<RouteFile>,
    path: &str,
    legs: Length,
    folder: &Folder,
    problems: &mut Vec<Problem>,
) -> Option<Profile> {
    let pointer = "/track";
    let bytes = inside(folder, path, &file.document, pointer, problems)?;
    let failed = |message: String| file.problem(pointer, ProblemKind::ImportFailed { message });
    let recorded = match track::read(bytes, path) {
        Ok(recorded) => recorded,
        Err(error) => {
            problems.push(failed(error.to_string()));
            return None;
        }
    };
    problems.extend(recorded.findings.iter().map(|finding| {
        let message = finding.to_string();
        Problem::in_file(path, ProblemKind::ImportFinding { message, line: None })
    }));
    let track = recorded.length();
    if (track - legs).abs() > legs * LENGTH_TOLERANCE {
        problems.push(file.problem(pointer, ProblemKind::TrackLength { track, legs }));
    }
    let window = file.data.track_smoothing_m.map_or(USUAL_SMOOTHING, Length::from_m);
    match track::profile(&recorded, window) {
        Ok(profile) => Some(profile),
        Err(error) => {
            problems.push(failed(error.to_string()));
            None
        }
    }
}
