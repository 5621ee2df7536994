//! How the ways to run are told apart in black and white.

use crate::strip::{ChartError, Reader, broken, width};
use crate::svg::{Frame, Stroke, Svg, Type, at, solid};

use super::EDGE;

/// Marks of one way.
#[derive(Debug, Clone, Copy)]
pub(super) struct Look {
    /// The way, as the document names it.
    pub way: &'static str,
    /// Fill of its bar.
    pub fill: &'static str,
    /// Its line.
    pub line: Stroke,
}

const HATCHED: &str = "url(#effects-hatched)";

/// The ways that have bars; full pressure is the line at 1.
pub(super) const LOOKS: [Look; 3] = [
    Look { way: "plan", fill: "#444", line: solid("#111", 2.4) },
    Look {
        way: "constant-reduced",
        fill: HATCHED,
        line: Stroke { color: "#111", width: 1.6, dash: "7 4" },
    },
    Look {
        way: "less-load",
        fill: "#fff",
        line: Stroke { color: "#111", width: 1.6, dash: "2 3" },
    },
];

/// The line of full pressure.
pub(super) const FULL: Stroke = solid("#888", 3.4);

pub(super) fn patterns(svg: &mut Svg) {
    svg.pattern("effects-hatched", (6.0, 6.0), "#fff", "M-1 1L1 -1M-1 7L7 -1M5 7L7 5");
}

/// The look of a way.
pub(super) fn line(way: &str) -> Stroke {
    LOOKS.iter().find(|look| look.way == way).map_or(FULL, |look| look.line)
}

/// Room of a mark with its line, before its name.
const MARK: f64 = 62.0;
/// Room of the line of full pressure, before its name.
const BARE: f64 = 40.0;
/// Between two marks.
const APART: f64 = 26.0;
/// From one line of marks to the next.
const LINE: f64 = 18.0;
/// From one line of words to the next.
const WORDS: f64 = 14.0;

/// What the marks mean, broken into lines for a width.
pub(super) struct Legend {
    marks: Vec<Mark>,
    notes: Vec<String>,
    lines: usize,
}

struct Mark {
    look: Option<Look>,
    name: String,
    x: f64,
    line: usize,
}

impl Legend {
    pub(super) fn of(reader: Reader<'_>, across: f64) -> Result<Self, ChartError> {
        let looks = LOOKS.map(|look| (Some(look), look.way)).into_iter();
        let mut legend = Self { marks: Vec::new(), notes: Vec::new(), lines: 1 };
        let mut x = EDGE;
        for (look, way) in looks.chain([(None, "full-pressure")]) {
            let name = reader.word(&format!("effects-way-{way}"))?;
            let room = if look.is_some() { MARK } else { BARE } + width(&name, 12.0, false);
            if x + room > across - EDGE && x > EDGE {
                legend.lines += 1;
                x = EDGE;
            }
            legend.marks.push(Mark { look, name, x, line: legend.lines - 1 });
            x += room + APART;
        }
        legend.notes = broken(&reader.word("chart-effects-band")?, across - 2.0 * EDGE, 12.0);
        Ok(legend)
    }

    /// Height from the first line of marks to under the last line of words.
    pub(super) fn height(&self) -> f64 {
        (self.lines - 1) as f64 * LINE + 22.0 + self.notes.len() as f64 * WORDS
    }

    /// Draws it with its first line at a height.
    pub(super) fn draw(&self, svg: &mut Svg, y: f64) {
        let text = Type::of_size(12.0);
        for Mark { look, name, x, line } in &self.marks {
            let y = y + *line as f64 * LINE;
            if let Some(look) = look {
                let swatch = Frame { left: *x, top: y - 9.0, right: x + 22.0, bottom: y + 1.0 };
                svg.rect(swatch, look.fill, Some(solid("#111", 1.0)));
                svg.line(at(x + 28.0, y - 4.0), at(x + 56.0, y - 4.0), look.line);
                svg.text(at(x + MARK, y), name, text);
            } else {
                svg.line(at(*x, y - 4.0), at(x + 34.0, y - 4.0), FULL);
                svg.text(at(x + BARE, y), name, text);
            }
        }
        let first = y + (self.lines - 1) as f64 * LINE + 22.0;
        for (index, note) in self.notes.iter().enumerate() {
            svg.text(at(EDGE, first + index as f64 * WORDS), note, text);
        }
    }
}
