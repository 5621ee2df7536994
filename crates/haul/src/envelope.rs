//! The fastest speed from which every limit ahead can still be met by braking.

use quantity::{Length, Speed};

use crate::{Course, DrivingStyle};

/// A stretch on which a speed cap holds from a known place on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CappedStretch {
    /// Travel distance where it begins.
    pub from: Length,
    /// Travel distance where it ends.
    pub to: Length,
    /// The cap.
    pub cap: Speed,
}

/// Squares of the highest speeds at the ends of cells, with braking in advance.
#[derive(Debug, Clone, PartialEq)]
pub struct Envelope {
    /// At the start of each cell, and one more for the end of the last, m²/s².
    v2: Vec<f64>,
    /// Limit within each cell, caps included.
    limit_v2: Vec<f64>,
    braking: f64,
}

impl Envelope {
    /// Builds it backward from the end of the course, where the truck stops.
    pub fn new(course: &Course, capped: &[CappedStretch], style: &DrivingStyle) -> Self {
        let cells = &course.cells;
        let n = cells.len();
        let mut limit: Vec<f64> = cells.iter().map(|cell| cell.limit_v2).collect();
        for stretch in capped {
            let (from, to) = (stretch.from.as_m(), stretch.to.as_m());
            let cap_v2 = stretch.cap.as_m_per_s().powi(2);
            let first = course.cell_at(from);
            for i in first..n {
                if cells[i].from >= to {
                    break;
                }
                limit[i] = limit[i].min(cap_v2);
            }
        }
        let mut v2 = vec![0.0; n + 1];
        for i in (0..n).rev() {
            let ahead = v2[i + 1] + 2.0 * style.braking * (cells[i].to - cells[i].from);
            // A place belongs to both cells that meet there: the lower limit holds.
            let here = if i > 0 { limit[i].min(limit[i - 1]) } else { limit[i] };
            v2[i] = ahead.min(here);
        }
        Self { v2, limit_v2: limit, braking: style.braking }
    }

    /// The same for a driver who is faster or slower everywhere by a factor.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        let square = factor * factor;
        let scale = |values: &[f64]| values.iter().map(|v2| v2 * square).collect();
        Self {
            v2: scale(&self.v2),
            limit_v2: scale(&self.limit_v2),
            braking: self.braking * square,
        }
    }

    /// Highest v² at a place inside a cell.
    pub(crate) fn v2_at(&self, course: &Course, index: usize, s: f64) -> f64 {
        let left = (course.cells[index].to - s).max(0.0);
        (self.v2[index + 1] + 2.0 * self.braking * left).min(self.limit_v2[index])
    }
}
