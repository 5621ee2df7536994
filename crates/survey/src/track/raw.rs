//! Points as a file gives them, before anything is judged.

use super::finding::{Format, Place, TrackFinding};

/// A point as written: degrees and meters, perhaps out of range, never judged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct RawPoint {
    pub place: Place,
    pub latitude: f64,
    pub longitude: f64,
    pub elevation: Option<f64>,
}

/// An unbroken line of points.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Line {
    pub name: Option<String>,
    /// Lines of one recording share it: they follow each other even where reception was lost.
    pub recording: usize,
    pub points: Vec<RawPoint>,
}

/// Everything a reader found in a file.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Raw {
    pub format: Format,
    pub lines: Vec<Line>,
    /// Points seen so far, readable or not.
    pub count: usize,
    pub single_points: usize,
    pub planned_routes: usize,
    pub areas: usize,
    pub findings: Vec<TrackFinding>,
}

impl Raw {
    pub fn new(format: Format) -> Self {
        Self {
            format,
            lines: Vec::new(),
            count: 0,
            single_points: 0,
            planned_routes: 0,
            areas: 0,
            findings: Vec::new(),
        }
    }

    /// Counts a point and says where it stands.
    pub fn next_place(&mut self, line: Option<usize>) -> Place {
        self.count += 1;
        Place { point: self.count, line }
    }

    /// Counts a point that has no readable number.
    pub fn unreadable(&mut self, place: Place, text: &str) {
        for finding in &mut self.findings {
            if let TrackFinding::Unreadable { count, .. } = finding {
                *count += 1;
                return;
            }
        }
        let value = text.trim().to_owned();
        self.findings.push(TrackFinding::Unreadable { first: place, value, count: 1 });
    }

    /// Puts a point at the end of the last line.
    pub fn push(&mut self, point: RawPoint) {
        match self.lines.last_mut() {
            Some(line) => line.points.push(point),
            None => self.lines.push(Line { points: vec![point], ..Line::default() }),
        }
    }
}

/// A finite number, or nothing.
pub(super) fn number(text: &str) -> Option<f64> {
    text.trim().parse().ok().filter(|value: &f64| value.is_finite())
}
