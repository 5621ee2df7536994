//! Legs and their surfaces: a band of patterns, with the names of the legs above it.

use view::{LegView, RunView};

use super::check::ChartError;
use super::labels::{self, Wish};
use super::layout::{Panel, Rows, SMALL};
use super::panel;
use super::reader::Reader;
use crate::svg::{Frame, Stroke, Svg, Type, at, solid};

/// A leg's name may be wider than the leg, or moved, by this much.
const OVER: f64 = 14.0;
const EDGE: Stroke = solid("#555", 0.8);

/// A surface: its word in the view, its text and its pattern.
pub(crate) struct Surface {
    pub(crate) word: &'static str,
    pub(crate) key: &'static str,
    pub(crate) fill: &'static str,
    id: &'static str,
    ground: &'static str,
    tile: (f64, f64),
    path: &'static str,
}

macro_rules! surface {
    ($word:literal, $id:literal, $ground:literal, $tile:expr, $path:literal) => {
        Surface {
            word: $word,
            key: concat!("chart-surface-", $id),
            fill: concat!("url(#strip-", $id, ")"),
            id: concat!("strip-", $id),
            ground: $ground,
            tile: $tile,
            path: $path,
        }
    };
}

/// Every surface, the firmest first.
pub(crate) const SURFACES: [Surface; 7] = [
    surface!("paved", "paved", "#8c8c8c", (8.0, 8.0), ""),
    surface!("sealed", "sealed", "#c4c4c4", (8.0, 6.0), "M0 3H8"),
    surface!("gravel", "gravel", "#fff", (7.0, 7.0), "M1 2H3M4.5 5.5H6.5"),
    surface!("earth", "earth", "#fff", (7.0, 7.0), "M-1 8L8 -1M-1 1L1 -1M6 8L8 6"),
    surface!("soft ground", "soft-ground", "#fff", (12.0, 6.0), "M0 3Q3 0 6 3T12 3"),
    surface!("sand", "sand", "#fff", (6.0, 6.0), "M1 1H2M4 4H5"),
    surface!(
        "snow or ice",
        "snow-or-ice",
        "#fff",
        (10.0, 10.0),
        "M5 2V8M2.4 3.5L7.6 6.5M7.6 3.5L2.4 6.5"
    ),
];

impl Surface {
    /// Makes its pattern.
    pub(crate) fn pattern(&self, svg: &mut Svg) {
        svg.pattern(self.id, self.tile, self.ground, self.path);
    }
}

/// Surfaces that occur on the route.
pub(crate) fn present(run: &RunView) -> impl Iterator<Item = &'static Surface> {
    const ALL: &[Surface] = &SURFACES;
    ALL.iter().filter(|surface| run.legs.iter().any(|leg| leg.surface == surface.word))
}

/// Makes the patterns of the surfaces that occur.
pub(crate) fn patterns(svg: &mut Svg, run: &RunView) {
    for surface in present(run) {
        surface.pattern(svg);
    }
}

/// Draws the band.
pub(crate) fn band(svg: &mut Svg, reader: Reader<'_>, run: &RunView, panel: &Panel, rows: &Rows) {
    for leg in &run.legs {
        let (left, right) = ends(reader, panel, leg);
        let band = Frame { left, top: rows.surface.0, right, bottom: rows.surface.1 };
        for surface in SURFACES.iter().filter(|surface| surface.word == leg.surface) {
            svg.rect(band, surface.fill, Some(EDGE));
        }
        for x in [left, right] {
            svg.line(at(x, rows.elevation.1), at(x, rows.surface.0), EDGE);
        }
    }
}

/// Writes the names of legs and surfaces; returns how many legs had no room for a name.
pub(crate) fn names(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    panel: &Panel,
    rows: &Rows,
) -> Result<usize, ChartError> {
    let look = Type::of_size(SMALL);
    let (mut names, mut wishes) = (Vec::new(), Vec::new());
    for leg in &run.legs {
        let (left, right) = ends(reader, panel, leg);
        let middle = f64::midpoint(left, right);
        let name = labels::fitted(&leg.name, right - left + OVER, SMALL, true);
        let width = labels::width(&name, SMALL, true);
        wishes.push(Wish { left: middle - width / 2.0, width });
        names.push(name);
        for surface in SURFACES.iter().filter(|surface| surface.word == leg.surface) {
            let word = reader.word(surface.key)?;
            let width = labels::width(&word, SMALL, false);
            if width + 16.0 <= right - left {
                let start = at(middle - width / 2.0, rows.surface.1 - 5.0);
                panel::plated(svg, start, &word, look);
            }
        }
    }
    let range = (panel.frame.left, panel.frame.right);
    let mut unnamed = 0;
    for (name, slot) in names.iter().zip(labels::lanes(&wishes, range, 1, OVER)) {
        match slot {
            Some(slot) if !name.is_empty() => {
                let start = at(slot.left, rows.legs.1 - 4.5);
                panel::plated(svg, start, name, look.bold());
            }
            _ => unnamed += 1,
        }
    }
    Ok(unnamed)
}

fn ends(reader: Reader<'_>, panel: &Panel, leg: &LegView) -> (f64, f64) {
    (panel.x.at(reader.chainage(leg.from_km)), panel.x.at(reader.chainage(leg.to_km)))
}
