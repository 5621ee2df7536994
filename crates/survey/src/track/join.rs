//! From settled lines to one track: joining, chainage, gaps and elevation.

use quantity::Length;

use super::clean::{Placed, PlacedLine, settle};
use super::finding::{Place, TrackError, TrackFinding, TrackPart, Unused};
use super::raw::Raw;
use super::{Track, TrackPoint, profile};

/// Ends closer than this meet.
const MEET: Length = Length::from_m(100.0);
/// A step longer than this is told as a gap.
const GAP: Length = Length::from_m(500.0);
/// Elevations beyond these are no road's: the shore of the Dead Sea, the highest summits.
const LOWEST: f64 = -450.0;
const HIGHEST: f64 = 9000.0;
/// A step of elevation is told from this height and this grade on.
const STEP_HEIGHT: Length = Length::from_m(4.0);
const STEP_GRADE: f64 = 0.5;
/// Steepest smoothed grade that goes without a word, and the window it is smoothed over.
const STEEP: f64 = 0.25;
const WINDOW: Length = Length::from_m(150.0);
/// A track whose ends are nearer than this share of its length comes back.
const BACK: f64 = 0.02;

/// Settles, joins and measures.
pub(super) fn assemble(mut raw: Raw, file: &str) -> Result<Track, TrackError> {
    if raw.count == 0 {
        let (points, areas) = (raw.single_points, raw.areas);
        return Err(TrackError::NoLine { file: file.to_owned(), points, areas });
    }
    let lines = settle(&mut raw);
    let mut findings = std::mem::take(&mut raw.findings);
    let unused = [
        (Unused::Points, raw.single_points),
        (Unused::PlannedRoutes, raw.planned_routes),
        (Unused::Areas, raw.areas),
    ];
    for (what, count) in unused.into_iter().filter(|(_, count)| *count > 0) {
        findings.push(TrackFinding::NotUsed { what, count });
    }
    let mut placed = choose(lines, &mut findings);
    if placed.len() < 2 {
        let (points, usable, file) = (raw.count, placed.len(), file.to_owned());
        return Err(TrackError::TooFewPoints { file, points, usable, findings });
    }
    judge_elevations(&mut placed, &mut findings);
    let points = measure(&placed, &mut findings);
    let mut track = Track { points, findings };
    let steep = steepest(&track);
    track.findings.extend(steep);
    Ok(track)
}

fn length(points: &[Placed]) -> Length {
    points.windows(2).map(|pair| pair[0].position.distance_to(pair[1].position)).sum()
}

/// Joins lines of one recording and lines whose ends meet; of what remains takes the longest.
fn choose(lines: Vec<PlacedLine>, findings: &mut Vec<TrackFinding>) -> Vec<Placed> {
    let mut parts: Vec<PlacedLine> = Vec::new();
    let mut joined = 0;
    for line in lines.into_iter().filter(|line| !line.points.is_empty()) {
        let before = parts.last_mut().and_then(|part| Some((part.points.last().copied()?, part)));
        let Some((end, part)) = before else {
            parts.push(line);
            continue;
        };
        let apart = end.position.distance_to(line.points[0].position);
        if part.recording == line.recording || apart <= MEET {
            joined += usize::from(part.recording != line.recording);
            part.recording = line.recording;
            let repeats = usize::from(apart < Length::from_mm(10.0));
            part.points.extend(line.points.into_iter().skip(repeats));
        } else {
            parts.push(line);
        }
    }
    if joined > 0 {
        findings.push(TrackFinding::Joined { parts: joined + 1 });
    }
    let measured: Vec<Length> = parts.iter().map(|part| length(&part.points)).collect();
    let Some(longest) = (0..parts.len()).rev().max_by(|a, b| measured[*a].total_cmp(&measured[*b]))
    else {
        return Vec::new();
    };
    if parts.len() > 1 {
        let part = |i: usize| TrackPart {
            name: parts[i].name.clone().unwrap_or_else(|| format!("track {}", i + 1)),
            length: measured[i],
        };
        let left_out = (0..parts.len()).filter(|i| *i != longest).map(part).collect();
        findings.push(TrackFinding::SeveralTracks { used: part(longest), left_out });
    }
    parts.swap_remove(longest).points
}

fn judge_elevations(points: &mut [Placed], findings: &mut Vec<TrackFinding>) {
    let count = points.len();
    let mut absurd: Vec<(Place, f64)> = Vec::new();
    for point in &mut *points {
        if let Some(value) = point.elevation
            && !(LOWEST..=HIGHEST).contains(&value)
        {
            absurd.push((point.place, value));
            point.elevation = None;
        }
    }
    if let Some(&(first, value)) = absurd.first() {
        let (value, count) = (Length::from_m(value), absurd.len());
        findings.push(TrackFinding::ElevationImplausible { first, value, count });
    }
    if points.iter().all(|point| point.elevation == Some(0.0)) {
        for point in points {
            point.elevation = None;
        }
        findings.push(TrackFinding::ElevationAllZero { points: count });
        return;
    }
    let without = points.iter().filter(|point| point.elevation.is_none()).count();
    if without > 0 {
        findings.push(TrackFinding::ElevationMissing { without, points: count });
    }
}

fn measure(placed: &[Placed], findings: &mut Vec<TrackFinding>) -> Vec<TrackPoint> {
    let mut points: Vec<TrackPoint> = Vec::with_capacity(placed.len());
    let mut at = Length::ZERO;
    let mut steps = None;
    for (i, point) in placed.iter().enumerate() {
        let elevation = point.elevation.map(Length::from_m);
        if let Some(before) = points.last() {
            let step = before.position.distance_to(point.position);
            if step > GAP {
                findings.push(TrackFinding::Gap { after: placed[i - 1].place, at, length: step });
            }
            at += step;
            if let Some((from, to)) = before.elevation.zip(elevation) {
                let rise = to - from;
                if rise.abs() > STEP_HEIGHT && (rise / step).abs() > STEP_GRADE {
                    add_step(&mut steps, point.place, at, rise, step);
                }
            }
        }
        points.push(TrackPoint { at, position: point.position, elevation });
    }
    findings.extend(steps);
    let apart = placed[0].position.distance_to(placed[placed.len() - 1].position);
    if apart < at * BACK {
        findings.push(TrackFinding::EndsAtStart { apart, length: at });
    }
    points
}

fn add_step(
    steps: &mut Option<TrackFinding>,
    first: Place,
    at: Length,
    rise: Length,
    within: Length,
) {
    match steps {
        Some(TrackFinding::ElevationStep { count, .. }) => *count += 1,
        _ => *steps = Some(TrackFinding::ElevationStep { first, at, rise, within, count: 1 }),
    }
}

/// The steepest place of the smoothed track, if no haul road is so steep.
fn steepest(track: &Track) -> Option<TrackFinding> {
    let profile = profile(track, WINDOW).ok()?;
    let pairs = profile.points().windows(2);
    let grades = pairs.map(|pair| (pair[0].0, profile.grade(pair[0].0, pair[1].0)));
    let (at, grade) = grades.max_by(|a, b| a.1.abs().total_cmp(&b.1.abs()))?;
    (grade.abs() > STEEP).then_some(TrackFinding::Steep { at, grade })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::track::read;

    fn told(text: &str, name: &str) -> (Track, Vec<String>) {
        let track = read(text.as_bytes(), name).unwrap();
        let told = track.findings.iter().map(ToString::to_string).collect();
        (track, told)
    }

    fn gpx(tracks: &[&[&[(f64, f64)]]]) -> String {
        let point = |&(lat, lon): &(f64, f64)| {
            format!("<trkpt lat='{lat}' lon='{lon}'><ele>5</ele></trkpt>")
        };
        let segment = |points: &&[(f64, f64)]| {
            format!("<trkseg>{}</trkseg>", points.iter().map(point).collect::<String>())
        };
        let track = |segments: &&[&[(f64, f64)]]| {
            format!("<trk>{}</trk>", segments.iter().map(segment).collect::<String>())
        };
        format!("<gpx>{}</gpx>", tracks.iter().map(track).collect::<String>())
    }

    #[test]
    fn tracks_that_meet_are_joined_and_the_gap_of_a_recording_is_told() {
        let (track, told) = told(
            &gpx(&[
                &[&[(50.0, 10.0), (50.001, 10.0)], &[(50.01, 10.0), (50.011, 10.0)]],
                &[&[(50.011, 10.0), (50.012, 10.0)]],
            ]),
            "a.gpx",
        );
        assert_eq!(track.points.len(), 5);
        assert_eq!(told[0], "2 tracks whose ends meet were joined");
        assert_eq!(
            told[1],
            "no points for 1001 m from km 0.111 (after point 2); taken as straight"
                .replace("point 2", "point 2 (line 1)")
        );
        assert!(track.points.windows(2).all(|pair| pair[0].at < pair[1].at));
    }

    #[test]
    fn of_tracks_that_do_not_meet_the_longest_is_used_and_the_others_told() {
        let (track, told) = told(
            &gpx(&[&[&[(50.0, 10.0), (50.001, 10.0)]], &[&[(51.0, 10.0), (51.004, 10.0)]]]),
            "a.gpx",
        );
        assert_eq!(
            told,
            ["several tracks do not meet: track 2 (0.44 km) used, left out: track 1 (0.11 km)"]
        );
        assert!((track.length().as_m() - 445.0).abs() < 1.0);
    }

    #[test]
    fn elevations_missing_zero_or_absurd_are_told() {
        let (_, some) = told("lat,lon,ele m\n50,10,5\n50.001,10,\n", "a.csv");
        assert_eq!(some, ["1 of 2 points have no elevation"]);
        let (track, zero) = told("lat,lon,ele m\n50,10,0\n50.001,10,0\n", "a.csv");
        assert_eq!(zero, ["all 2 elevations are zero; taken as missing"]);
        assert_eq!(track.points[0].elevation, None);
        let (track, absurd) = told("lat,lon,ele m\n50,10,-9999\n50.001,10,3\n", "a.csv");
        assert_eq!(absurd[0], "1 elevations taken as missing, first -9999 m at point 1 (line 2)");
        assert_eq!(track.points[0].elevation, None);
        let (_, step) = told("lat,lon,ele m\n50,10,5\n50.001,10,105\n", "a.csv");
        assert_eq!(
            step,
            [
                "elevation steps 1 times as no road does, first by 100.0 m within 111.2 m at km 0.111 (point 2 (line 3)); kept",
                "grade of 90 % at km 0.090, steeper than haul roads are; check the elevations",
            ]
        );
    }

    #[test]
    fn a_round_trip_is_told() {
        let (_, told) = told("lat,lon,ele m\n50,10,5\n50.004,10,5\n50.00001,10,5\n", "a.csv");
        assert!(told[0].starts_with("the track ends 1 m from its start after 0.89 km"), "{told:?}");
    }
}
