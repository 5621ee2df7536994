//! The frame, grid and heading every panel has, and lines of values along the chainage.

use super::layout::{NORMAL, Panel, SMALL};
use super::reader::Reader;
use crate::svg::{Anchor, Point, Stroke, Svg, Type, at, solid};

const GRID: Stroke = solid("#d4d4d4", 0.7);
pub(crate) const FRAME: Stroke = solid("#555", 1.0);

/// Draws grid and frame, the numbers left of them and the heading above.
pub(crate) fn grid(svg: &mut Svg, reader: Reader<'_>, panel: &Panel, lines: usize, heading: &str) {
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
    title(svg, at(frame.left, frame.top - 7.0), heading);
}

/// Writes a panel's heading.
pub(crate) fn title(svg: &mut Svg, place: Point, heading: &str) {
    svg.text(place, heading, Type::of_size(NORMAL).bold());
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
        if let Some(last) = points.last().filter(|last| stepped && last.y != y) {
            points.push(at(x, last.y));
        }
        // Of a level stretch of a step only the ends are kept.
        if let [.., before, last] = points[..]
            && stepped
            && before.y == last.y
            && last.y == y
        {
            points.pop();
        }
        points.push(at(x, y));
    }
    lines.push(points);
    for line in lines.iter().filter(|line| line.len() > 1) {
        svg.polyline(line, stroke);
    }
}
