//! Where the rows and the two halves lie on the page.

use super::scale::Scale;
use crate::svg::Frame;

pub(crate) const WIDTH: f64 = 1400.0;
pub(crate) const MARGIN: f64 = 28.0;
const BETWEEN_HALVES: f64 = 26.0;
/// Room for the numbers of the y axes.
const TICKS: f64 = 42.0;
/// Room for direct labels right of the panels.
pub(crate) const LABELS: f64 = 118.0;

pub(crate) const SMALL: f64 = 11.0;
pub(crate) const NORMAL: f64 = 12.0;
/// Height of a line of text.
pub(crate) const LINE: f64 = 15.0;

/// Left and right edge of a half.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Columns {
    pub(crate) left: f64,
    pub(crate) plot: (f64, f64),
    pub(crate) right: f64,
}

impl Columns {
    /// The left or the right half.
    pub(crate) fn of(laden: bool) -> Self {
        let width = (WIDTH - 2.0 * MARGIN - BETWEEN_HALVES) / 2.0;
        let left = MARGIN + if laden { width + BETWEEN_HALVES } else { 0.0 };
        let right = left + width;
        Self { left, plot: (left + TICKS, right - LABELS), right }
    }
}

/// What the height of the page depends on.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Contents {
    pub(crate) flags_height: f64,
    pub(crate) name_lanes: usize,
    pub(crate) channels: usize,
    pub(crate) standing_lines: usize,
    pub(crate) list_height: f64,
    pub(crate) legend_lines: usize,
}

/// The rows, from top to bottom: tops and bottoms in px.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Rows {
    pub(crate) heading: f64,
    pub(crate) flags: (f64, f64),
    pub(crate) names: f64,
    pub(crate) elevation: (f64, f64),
    pub(crate) legs: (f64, f64),
    pub(crate) surface: (f64, f64),
    pub(crate) speed: (f64, f64),
    pub(crate) pressure: (f64, f64),
    pub(crate) supply: (f64, f64),
    pub(crate) standing: f64,
    pub(crate) list: f64,
    pub(crate) legend: f64,
    pub(crate) page: f64,
}

/// Height of a panel's heading, with the gap above it.
const HEADING: f64 = 32.0;

impl Rows {
    /// Stacks the rows.
    pub(crate) fn of(contents: &Contents) -> Self {
        let heading = 108.0;
        let flags = (heading + 14.0, heading + 14.0 + contents.flags_height);
        let names = flags.1 + HEADING;
        let elevation = below(names + contents.name_lanes as f64 * LINE, 96.0);
        let legs = below(elevation.1 + 3.0, LINE + 2.0);
        let surface = below(legs.1, 18.0);
        let speed = below(surface.1 + HEADING, 130.0);
        let pressure = below(speed.1 + HEADING, (contents.channels as f64 * LINE).max(210.0));
        let supply = below(pressure.1 + HEADING, 84.0);

        let standing = supply.1 + 58.0;
        let list = standing + contents.standing_lines as f64 * LINE + 12.0;
        let legend = list + contents.list_height;
        let page = legend + contents.legend_lines as f64 * 20.0 + MARGIN;
        Self {
            heading,
            flags,
            names,
            elevation,
            legs,
            surface,
            speed,
            pressure,
            supply,
            standing,
            list,
            legend,
            page,
        }
    }
}

fn below(top: f64, height: f64) -> (f64, f64) {
    (top, top + height)
}

/// A panel: its frame and its scales.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Panel {
    pub(crate) frame: Frame,
    pub(crate) x: Scale,
    pub(crate) y: Scale,
}
