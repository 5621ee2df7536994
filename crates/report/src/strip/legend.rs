//! The legend: what each line, pattern and sign means, in words.

use view::RunView;

use super::check::ChartError;
use super::flags::{COMPLETE, POLE, SPAN};
use super::labels;
use super::layout::{MARGIN, SMALL, WIDTH};
use super::places;
use super::pressure;
use super::reader::Reader;
use super::speed::{CAP, LIMIT, SPEED};
use super::supply::DELIVERS;
use super::surface;
use crate::svg::{Frame, Stroke, Svg, Type, at, solid};

enum Swatch {
    Line(Stroke),
    Fill(&'static str),
    Change,
    Bar,
    Symbol(&'static str),
}

const SWATCH: f64 = 26.0;
const LINE_HEIGHT: f64 = 20.0;

/// Entries, each with its line and its left edge.
pub(crate) struct Legend {
    entries: Vec<(Swatch, String, usize, f64)>,
    pub(crate) lines: usize,
}

impl Legend {
    /// Sets the entries into lines.
    pub(crate) fn of(reader: Reader<'_>, run: &RunView) -> Result<Self, ChartError> {
        let has = |kind: &str| run.marks.iter().any(|mark| mark.kind == kind);
        let mut items = vec![
            (Swatch::Line(SPEED), "chart-legend-speed"),
            (Swatch::Line(CAP), "chart-legend-cap"),
            (Swatch::Line(LIMIT), "chart-legend-limit"),
        ];
        if !run.channels.is_empty() {
            items.push((Swatch::Line(pressure::style(0)), "chart-legend-tire"));
            items.push((Swatch::Line(pressure::minimum_style(0)), "chart-legend-minimum"));
            items.push((Swatch::Bar, "chart-legend-changing"));
        }
        if has("raise") || has("lower") {
            items.push((Swatch::Change, "chart-legend-change"));
        }
        items.push((Swatch::Fill(DELIVERS), "chart-legend-compressor"));
        for (kind, key) in
            [("landmark", "chart-legend-landmark"), ("lay-by", "chart-legend-lay-by")]
        {
            if has(kind) {
                items.push((Swatch::Symbol(kind), key));
            }
        }
        items.extend(surface::present(run).map(|s| (Swatch::Fill(s.fill), s.key)));

        let mut entries = Vec::new();
        let (mut line, mut left) = (0, MARGIN);
        for (swatch, key) in items {
            let text = reader.word(key)?;
            let width = SWATCH + 6.0 + labels::width(&text, SMALL, false);
            if left + width > WIDTH - MARGIN && left > MARGIN {
                (line, left) = (line + 1, MARGIN);
            }
            entries.push((swatch, text, line, left));
            left += width + 16.0;
        }
        Ok(Self { entries, lines: line + 1 })
    }

    /// Draws the entries.
    pub(crate) fn draw(&self, svg: &mut Svg, top: f64) {
        let rule = solid("#999", 0.8);
        svg.line(at(MARGIN, top - 8.0), at(WIDTH - MARGIN, top - 8.0), rule);
        for (swatch, text, line, left) in &self.entries {
            let (left, y) = (*left, top + *line as f64 * LINE_HEIGHT + 8.0);
            let right = left + SWATCH;
            let frame = Frame { left, top: y - 6.0, right, bottom: y + 6.0 };
            match swatch {
                Swatch::Line(stroke) => svg.line(at(left, y), at(right, y), *stroke),
                Swatch::Fill(fill) => svg.rect(frame, fill, Some(solid("#555", 0.8))),
                Swatch::Change => {
                    svg.rect(frame, SPAN, None);
                    svg.line(at(left, y - 7.0), at(left, y + 7.0), POLE);
                    svg.line(at(right, y - 7.0), at(right, y + 7.0), COMPLETE);
                }
                Swatch::Bar => {
                    svg.rect(Frame { left, top: y - 2.5, right, bottom: y + 2.5 }, "#111", None);
                }
                Swatch::Symbol(kind) => {
                    places::sign(svg, kind, at(f64::midpoint(left, right), y + 4.0));
                }
            }
            let room = WIDTH - MARGIN - right - 6.0;
            let text = labels::fitted(text, room, SMALL, false);
            svg.text(at(right + 6.0, y + 4.0), &text, Type::of_size(SMALL));
        }
    }
}
