//! A track as a line on a plane, with the stretches near a place found without looking at all of them.

use std::collections::BTreeMap;

use super::{Position, Track};

/// Side of a square of the plane, m.
const SQUARE_M: f64 = 200.0;
/// Most places for one position; where a track tangles, the nearest of them.
const MOST: usize = 12;

/// A place of the line near a position.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Candidate {
    /// Chainage, m.
    pub at: f64,
    /// Distance of the position, m.
    pub off: f64,
}

/// A track on a plane that touches the earth at its middle.
pub(super) struct Line {
    /// East, north and chainage, m.
    points: Vec<[f64; 3]>,
    /// Stretches by the squares that they cross.
    squares: BTreeMap<(i64, i64), Vec<usize>>,
    middle: Position,
    /// Meters of a degree of longitude and of latitude.
    degree: [f64; 2],
}

impl Line {
    /// The line of a track; `None` where it has no middle to lay it flat from.
    pub fn of(track: &Track) -> Option<Self> {
        let middle = track.points.get(track.points.len() / 2)?.position;
        let (latitude, longitude) = (middle.latitude_deg(), middle.longitude_deg());
        let step = if latitude > 0.0 { -0.01 } else { 0.01 };
        let beside = if longitude > 0.0 { -0.01 } else { 0.01 };
        let above = Position::from_degrees(latitude + step, longitude)?;
        let beside = Position::from_degrees(latitude, longitude + beside)?;
        let degree =
            [middle.distance_to(beside).as_m() * 100.0, middle.distance_to(above).as_m() * 100.0];
        let mut line = Self { points: Vec::new(), squares: BTreeMap::new(), middle, degree };
        for point in &track.points {
            let [east, north] = line.flat(point.position);
            line.points.push([east, north, point.at.as_m()]);
        }
        for (index, pair) in line.points.windows(2).enumerate() {
            let length = (pair[1][0] - pair[0][0]).hypot(pair[1][1] - pair[0][1]);
            let parts = (length / (SQUARE_M / 2.0)).ceil().max(1.0);
            let mut share = 0.0;
            while share <= parts {
                let between =
                    |axis: usize| pair[0][axis] + (pair[1][axis] - pair[0][axis]) * share / parts;
                let stretches = line.squares.entry(square(between(0), between(1))).or_default();
                if stretches.last() != Some(&index) {
                    stretches.push(index);
                }
                share += 1.0;
            }
        }
        Some(line)
    }

    /// Distance of two positions on the plane, m.
    pub fn between(&self, a: Position, b: Position) -> f64 {
        let (a, b) = (self.flat(a), self.flat(b));
        (a[0] - b[0]).hypot(a[1] - b[1])
    }

    /// The places where the line comes nearest to a position, within `reach` meters, by chainage. Going along
    /// the line, the distance falls before each of them and rises after.
    pub fn near(&self, position: Position, reach: f64) -> Vec<Candidate> {
        let [east, north] = self.flat(position);
        let (column, row) = square(east, north);
        // A stretch is noted at every half square: it may pass through one between two of its notes.
        #[allow(clippy::cast_possible_truncation, reason = "a reach of some squares")]
        let around = (reach / SQUARE_M).ceil() as i64 + 1;
        let mut stretches = Vec::new();
        for column in column - around..=column + around {
            let rows = (column, row - around)..=(column, row + around);
            stretches.extend(self.squares.range(rows).flat_map(|(_, found)| found).copied());
        }
        stretches.sort_unstable();
        stretches.dedup();
        let last = self.points.len().saturating_sub(2);
        let mut found = Vec::new();
        for index in stretches {
            let (candidate, share) = self.project(index, east, north);
            // The end of a stretch is a place of its own only where the next one leads away.
            let is_nearest = if share <= 0.0 {
                index == 0
            } else if share >= 1.0 {
                index == last || self.project(index + 1, east, north).1 <= 0.0
            } else {
                true
            };
            if is_nearest && candidate.off <= reach {
                found.push(candidate);
            }
        }
        found.sort_by(|a, b| a.off.total_cmp(&b.off));
        found.truncate(MOST);
        found.sort_by(|a, b| a.at.total_cmp(&b.at));
        found
    }

    /// The nearest place of a stretch, and which share of it lies before.
    fn project(&self, index: usize, east: f64, north: f64) -> (Candidate, f64) {
        let (a, b) = (self.points[index], self.points[index + 1]);
        let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
        let square = dx * dx + dy * dy;
        let share =
            if square > 0.0 { ((east - a[0]) * dx + (north - a[1]) * dy) / square } else { 0.0 };
        let share = share.clamp(0.0, 1.0);
        let off = (east - a[0] - dx * share).hypot(north - a[1] - dy * share);
        (Candidate { at: a[2] + (b[2] - a[2]) * share, off }, share)
    }

    fn flat(&self, position: Position) -> [f64; 2] {
        let east = position.longitude_deg() - self.middle.longitude_deg();
        let north = position.latitude_deg() - self.middle.latitude_deg();
        [east * self.degree[0], north * self.degree[1]]
    }
}

#[allow(clippy::cast_possible_truncation, reason = "no plane of the earth has so many squares")]
fn square(east: f64, north: f64) -> (i64, i64) {
    ((east / SQUARE_M).floor() as i64, (north / SQUARE_M).floor() as i64)
}
