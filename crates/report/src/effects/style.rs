//! How the ways to run are told apart in black and white.

use crate::strip::{ChartError, Reader};
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

/// What the marks mean, in one line.
pub(super) fn legend(
    svg: &mut Svg,
    reader: Reader<'_>,
    width: f64,
    y: f64,
) -> Result<(), ChartError> {
    let mut x = EDGE;
    let text = Type::of_size(12.0);
    for look in LOOKS {
        let (top, bottom) = (y - 9.0, y + 1.0);
        let swatch = Frame { left: x, top, right: x + 22.0, bottom };
        svg.rect(swatch, look.fill, Some(solid("#111", 1.0)));
        svg.line(at(x + 28.0, y - 4.0), at(x + 56.0, y - 4.0), look.line);
        let name = reader.word(&format!("effects-way-{}", look.way))?;
        svg.text(at(x + 62.0, y), &name, text);
        x += 62.0 + crate::strip::width(&name, 12.0, false) + 26.0;
    }
    svg.line(at(x, y - 4.0), at(x + 34.0, y - 4.0), FULL);
    let name = reader.word("effects-way-full-pressure")?;
    svg.text(at(x + 40.0, y), &name, text);
    let note =
        crate::strip::fitted(&reader.word("chart-effects-band")?, width - 2.0 * EDGE, 12.0, false);
    svg.text(at(EDGE, y + 22.0), &note, text);
    Ok(())
}
