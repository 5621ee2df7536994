//! The frame, grid and heading every panel has, and lines of values along the chainage.

use language::Kind;

use super::check::ChartError;
use super::labels;
use super::layout::{LABELS, LINE, NORMAL, Panel, Rows, SMALL};
use super::reader::Reader;
use crate::svg::{Anchor, Frame, Point, Stroke, Svg, Type, at, solid};

const GRID: Stroke = solid("#d4d4d4", 0.7);
pub(crate) const FRAME: Stroke = solid("#555", 1.0);

/// Draws grid and frame and the numbers left of them.
pub(crate) fn grid(svg: &mut Svg, reader: Reader<'_>, panel: &Panel, lines: usize) {
    let frame = panel.frame;
    for (value, _) in panel.x.ticks(8, reader.format) {
        let x = panel.x.at(value);
        svg.line(at(x, frame.top), at(x, frame.bottom), GRID);
    }
    let look = Type::of_size(SMALL).anchored(Anchor::End);
    for (value, digits) in panel.y.ticks(lines, reader.format) {
        let y = panel.y.at(value);
        svg.line(at(frame.left, y), at(frame.right, y), GRID);
        svg.text(at(frame.left - 6.0, y + 4.0), &digits, look);
    }
    svg.rect(frame, "none", Some(FRAME));
}

/// Writes a text on a white plate, which lines that pass below do not cross.
pub(crate) fn plated(svg: &mut Svg, place: Point, text: &str, look: Type) {
    let width = labels::width(text, look.size, look.bold);
    let (left, right) = (place.x - 1.0, place.x + width + 1.0);
    let (top, bottom) = (place.y - look.size + 1.0, place.y + 3.0);
    svg.rect(Frame { left, top, right, bottom }, "#fff", None);
    svg.text(place, text, look);
}

/// Writes the headings of the panels of a half.
pub(crate) fn headings(
    svg: &mut Svg,
    reader: Reader<'_>,
    left: f64,
    rows: &Rows,
) -> Result<(), ChartError> {
    for (bottom, key, kind) in [
        (rows.names - 9.0, "chart-elevation-and-surface", Kind::Span),
        (rows.speed.0 - 7.0, "chart-speed", Kind::Speed),
        (rows.pressure.0 - 7.0, "chart-tire-pressure", Kind::Pressure),
        (rows.supply.0 - 7.0, "chart-supply-pressure", Kind::Pressure),
    ] {
        let heading = reader.heading(key, kind)?;
        plated(svg, at(left, bottom), &heading, Type::of_size(NORMAL).bold());
    }
    let heading = reader.heading("chart-tire-pressure", Kind::Pressure)?;
    let beside = at(left + labels::width(&heading, NORMAL, true) + 10.0, rows.pressure.0 - 7.0);
    plated(svg, beside, &reader.word("chart-own-scale")?, Type::of_size(SMALL));
    Ok(())
}

/// Draws values as they change along the chainage; a gap where there is none.
pub(crate) fn curve(
    svg: &mut Svg,
    panel: &Panel,
    values: impl Iterator<Item = (f64, Option<f64>)>,
    stroke: Stroke,
    stepped: bool,
) {
    let mut points: Vec<Point> = Vec::new();
    let mut lines = Vec::new();
    for (km, value) in values {
        let x = panel.x.at(km);
        let Some(value) = value else {
            lines.push(std::mem::take(&mut points));
            continue;
        };
        let y = panel.y.at(value);
        if let Some(last) = points.last().filter(|_| stepped) {
            points.push(at(x, last.y));
        }
        points.push(at(x, y));
    }
    lines.push(points);
    for line in lines.iter().filter(|line| line.len() > 1) {
        svg.polyline(line, stroke);
    }
}

/// Writes labels right of a panel, each beside the right end of its line.
pub(crate) fn direct(svg: &mut Svg, panel: &Panel, labels: &[(f64, String, Stroke)]) {
    let frame = panel.frame;
    let wishes: Vec<f64> = labels.iter().map(|(y, ..)| *y).collect();
    let range = (frame.top + 4.0, frame.bottom - 4.0);
    let heights = labels::column(&wishes, LINE - 1.0, range);
    for ((y, text, stroke), height) in labels.iter().zip(heights) {
        let (from, to) = (frame.right + 1.0, frame.right + 10.0);
        svg.line(at(from, *y), at(to, height), solid("#777", 0.7));
        svg.line(at(to + 1.0, height), at(to + 25.0, height), *stroke);
        let room = LABELS - 42.0;
        let text = labels::fitted(text, room, SMALL, false);
        svg.text(at(to + 30.0, height + 4.0), &text, Type::of_size(SMALL));
    }
}
