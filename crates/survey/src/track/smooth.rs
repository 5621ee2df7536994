//! Elevation along a track, smoothed by distance, for grades.
//!
//! Satellite elevations scatter by meters from point to point, so a grade between two neighbors
//! means nothing. The recorded elevations are joined by straight lines, averaged over cells of one
//! [`RESAMPLING_STEP`] (so that a truck standing still does not weigh more than one rolling), and a
//! straight line is fitted around each place with tricube weights that end half a window away.
//! A straight ramp comes out as it went in, to its ends; scatter that drifts over more than the
//! window stays in.

use model::route::Profile;
use model::route::profile::ProfileError;
use quantity::Length;

use super::Track;

/// Distance between the points of a smoothed profile.
pub const RESAMPLING_STEP: Length = Length::from_m(10.0);

/// Longest track that is smoothed.
const LONGEST: Length = Length::from_km(10_000.0);

/// Why a track has no profile.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum NoProfile {
    /// Fewer than two points carry an elevation.
    #[error(
        "{with} of {points} points have an elevation: the grades of this track are unknown; record it with elevation or give the profile by hand"
    )]
    NoElevation {
        /// Points with an elevation.
        with: usize,
        /// Points of the track.
        points: usize,
    },
    /// A window under two steps smooths nothing.
    #[error("a window of {window} is too short to smooth elevations; give 100 to 200 m")]
    ShortWindow {
        /// The window asked for.
        window: Length,
    },
    /// The track is longer than any haul route, so its points must be wrong.
    #[error("a track of {:.0} km is no haul route; check its points for leaps", .length.as_km())]
    TooLong {
        /// Its length.
        length: Length,
    },
    /// The points do not lie in order.
    #[error(transparent)]
    NotRising(#[from] ProfileError),
}

/// Smooths the elevations of a track over a window of distance and resamples them each
/// [`RESAMPLING_STEP`] and at the end.
///
/// # Validity
/// A window of 100 to 200 m suits satellite receivers; vertical curves much shorter than the window
/// are flattened. Where points lie farther apart than the window, the line between them counts.
///
/// # Errors
/// [`NoProfile`] if fewer than two points carry an elevation, the window is under two steps, or the
/// track is longer than any route.
///
/// # Source
/// `cleveland-local-regression`.
///
/// ```
/// use quantity::Length;
/// let text = "lat,lon,ele (m)\n61.50,-120.00,210\n61.51,-120.00,250\n";
/// let track = survey::track::read(text.as_bytes(), "spur.csv").map_err(|e| e.to_string())?;
/// let profile = survey::track::profile(&track, Length::from_m(150.0)).map_err(|e| e.to_string())?;
/// let grade = profile.grade(Length::ZERO, Length::from_m(500.0));
/// assert!((grade - 40.0 / 1114.6).abs() < 1e-4);
/// # Ok::<(), String>(())
/// ```
pub fn profile(track: &Track, window: Length) -> Result<Profile, NoProfile> {
    let half = window.as_m() / 2.0;
    let step = RESAMPLING_STEP.as_m();
    if half < step {
        return Err(NoProfile::ShortWindow { window });
    }
    if track.length() > LONGEST {
        return Err(NoProfile::TooLong { length: track.length() });
    }
    let known: Vec<(f64, f64)> = track
        .points
        .iter()
        .filter_map(|point| Some((point.at.as_m(), point.elevation?.as_m())))
        .collect();
    if known.len() < 2 {
        return Err(NoProfile::NoElevation { with: known.len(), points: track.points.len() });
    }
    let places = places(track.length().as_m(), step);
    let cells = cell_means(&known, &places);
    let smoothed =
        places.iter().map(|&x| (Length::from_m(x), Length::from_m(fit(&cells, x, half))));
    Ok(Profile::new(smoothed.collect())?)
}

/// Every step from the start, and the end; a last step shorter than half is merged with the one before.
fn places(end: f64, step: f64) -> Vec<f64> {
    let mut places = vec![0.0];
    let mut index = 1.0;
    while index * step < end - 0.5 * step {
        places.push(index * step);
        index += 1.0;
    }
    places.push(end);
    places
}

/// Mean elevation of the line through the known points over each cell between places: (middle, mean).
fn cell_means(known: &[(f64, f64)], places: &[f64]) -> Vec<(f64, f64)> {
    let mut areas = Areas { known, next: 0, area: 0.0 };
    let mut before = areas.up_to(places[0]);
    let cells = places.windows(2).map(|pair| {
        let area = areas.up_to(pair[1]);
        let mean = (area - before) / (pair[1] - pair[0]);
        before = area;
        (0.5 * (pair[0] + pair[1]), mean)
    });
    cells.collect()
}

/// Area under the line through the known points, level beyond its ends, up to rising places.
struct Areas<'a> {
    known: &'a [(f64, f64)],
    next: usize,
    area: f64,
}

impl Areas<'_> {
    fn up_to(&mut self, x: f64) -> f64 {
        let known = self.known;
        while self.next < known.len() && known[self.next].0 <= x {
            if self.next > 0 {
                let ((x0, z0), (x1, z1)) = (known[self.next - 1], known[self.next]);
                self.area += 0.5 * (z0 + z1) * (x1 - x0);
            }
            self.next += 1;
        }
        match self.next {
            0 => known[0].1 * (x - known[0].0),
            n if n == known.len() => self.area + known[n - 1].1 * (x - known[n - 1].0),
            n => {
                let ((x0, z0), (x1, z1)) = (known[n - 1], known[n]);
                let z = z0 + (z1 - z0) * (x - x0) / (x1 - x0);
                self.area + 0.5 * (z0 + z) * (x - x0)
            }
        }
    }
}

/// The value at `x` of the straight line fitted to the cells within `half` of it.
fn fit(cells: &[(f64, f64)], x: f64, half: f64) -> f64 {
    let from = cells.partition_point(|cell| cell.0 <= x - half);
    let to = cells.partition_point(|cell| cell.0 < x + half);
    let (mut w0, mut w1, mut w2, mut z0, mut z1) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for &(at, z) in &cells[from..to] {
        let d = at - x;
        let tricube = 1.0 - (d.abs() / half).powi(3);
        let w = tricube * tricube * tricube;
        w0 += w;
        w1 += w * d;
        w2 += w * d * d;
        z0 += w * z;
        z1 += w * z * d;
    }
    let determinant = w0 * w2 - w1 * w1;
    // A track shorter than a few cells has no slope to fit: its mean is all there is.
    if determinant > 1e-9 * w0 * w0 { (w2 * z0 - w1 * z1) / determinant } else { z0 / w0 }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::track::{Position, TrackPoint};

    fn track(points: impl IntoIterator<Item = (f64, Option<f64>)>) -> Track {
        let position = Position::from_degrees(0.0, 0.0).unwrap();
        let points = points.into_iter().map(|(at, elevation)| TrackPoint {
            at: Length::from_m(at),
            position,
            elevation: elevation.map(Length::from_m),
        });
        Track { points: points.collect(), findings: Vec::new() }
    }

    const WINDOW: Length = Length::from_m(150.0);

    #[test]
    fn a_clean_ramp_comes_out_as_it_went_in_to_its_ends() {
        let ramp =
            track((0..=401_u32).map(|i| (f64::from(i) * 2.5, Some(100.0 - f64::from(i) * 0.2))));
        let profile = profile(&ramp, WINDOW).unwrap();
        for pair in profile.points().windows(2) {
            assert!((profile.grade(pair[0].0, pair[1].0) + 0.08).abs() < 1e-9);
        }
        assert!((profile.points()[0].1.as_m() - 100.0).abs() < 1e-9);
        assert_eq!(profile.points().last().unwrap().0, ramp.length());
    }

    #[test]
    fn a_crest_is_kept_within_what_the_window_rounds_off() {
        let hill = track((0..=400_u32).map(|i| {
            let at = f64::from(i) * 5.0;
            (at, Some(60.0 - 0.06 * (at - 1000.0).abs()))
        }));
        let profile = profile(&hill, WINDOW).unwrap();
        let top = profile.elevation(Length::from_m(1000.0)).as_m();
        assert!((58.5..60.0).contains(&top), "{top}");
        let side = profile.grade(Length::from_m(1100.0), Length::from_m(1300.0));
        assert!((side + 0.06).abs() < 1e-9, "{side}");
    }

    #[test]
    fn missing_and_sparse_elevations_are_bridged_and_none_is_refused() {
        let sparse = track([(0.0, Some(10.0)), (400.0, None), (1000.0, Some(60.0))]);
        let profile_of_sparse = profile(&sparse, WINDOW).unwrap();
        assert!((profile_of_sparse.elevation(Length::from_m(400.0)).as_m() - 30.0).abs() < 1e-6);
        let none = track([(0.0, Some(10.0)), (400.0, None)]);
        assert_eq!(profile(&none, WINDOW), Err(NoProfile::NoElevation { with: 1, points: 2 }));
        assert!(matches!(
            profile(&sparse, Length::from_m(5.0)),
            Err(NoProfile::ShortWindow { .. })
        ));
    }

    #[test]
    fn a_truck_standing_still_does_not_bend_the_road() {
        let creep = (0..200_u32).map(|i| (500.0 + f64::from(i) * 0.01, Some(27.0)));
        let road = (0..=100_u32).map(|i| (f64::from(i) * 10.0 + 0.5, Some(f64::from(i) * 0.5)));
        let mut points: Vec<_> = road.chain(creep).collect();
        points.sort_by(|a, b| a.0.total_cmp(&b.0));
        let profile = profile(&track(points), WINDOW).unwrap();
        assert!((profile.elevation(Length::from_m(501.0)).as_m() - 25.0).abs() < 0.5);
    }

    proptest! {
        #[test]
        fn a_noisy_ramp_gives_its_grade_within_0_3_points(
            grade in -0.12..0.12_f64,
            noise in prop::collection::vec(-1.0..1.0_f64, 400),
        ) {
            let ramp = track(noise.iter().zip(0_u32..).map(|(z, i)| {
                let at = f64::from(i) * 5.0;
                (at, Some(300.0 + grade * at + z))
            }));
            let profile = profile(&ramp, Length::from_m(200.0)).unwrap();
            // Points 5 m apart that scatter evenly by ±1 m; any stretch as long as two windows.
            for start in (0..=1590).step_by(53) {
                let (from, to) = (f64::from(start), f64::from(start) + 400.0);
                let found = profile.grade(Length::from_m(from), Length::from_m(to));
                prop_assert!((found - grade).abs() < 0.003, "{found} for {grade} from {from}");
            }
        }

        #[test]
        fn chainage_rises_and_elevation_stays_in_bounds(
            steps in prop::collection::vec((0.02..300.0, -50.0..50.0), 2..40),
        ) {
            let mut at = 0.0;
            let points: Vec<_> = steps.iter().map(|(step, z)| { at += step; (at - steps[0].0, Some(*z)) }).collect();
            let profile = profile(&track(points.clone()), WINDOW).unwrap();
            prop_assert!(profile.points().windows(2).all(|pair| pair[0].0 < pair[1].0));
            prop_assert!(profile.points().iter().all(|point| point.1.as_m().abs() < 150.0));
        }
    }
}
