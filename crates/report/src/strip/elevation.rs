//! The elevation panel: profile, legs with their surfaces, landmarks and lay-bys.

use view::RunView;

use super::check::ChartError;
use super::labels;
use super::layout::{NORMAL, Panel, Rows, SMALL};
use super::panel;
use super::places::Names;
use super::reader::Reader;
use super::surface;
use crate::svg::{Anchor, Point, Stroke, Svg, Type, at, solid};

const PROFILE: Stroke = solid("#111", 1.6);
const GROUND: &str = "#f0f0f0";

fn profile(reader: Reader<'_>, run: &RunView, panel: &Panel) -> Vec<Point> {
    run.elevation_km_m
        .iter()
        .map(|&(km, m)| at(panel.x.at(reader.chainage(km)), panel.y.at(reader.height(m))))
        .collect()
}

/// Fills the ground under the profile; shading goes over it.
pub(crate) fn ground(svg: &mut Svg, reader: Reader<'_>, run: &RunView, panel: &Panel) {
    let profile = profile(reader, run, panel);
    if let [first, .., last] = profile[..] {
        let bottom = panel.frame.bottom;
        let below = [at(last.x, bottom), at(first.x, bottom)];
        svg.polygon(&[&profile[..], &below].concat(), GROUND, None);
    }
}

/// Draws the profile, the surfaces and the signs.
pub(crate) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    (panel, rows): (&Panel, &Rows),
    names: &Names<'_>,
) -> Result<(), ChartError> {
    let frame = panel.frame;
    let profile = profile(reader, run, panel);
    panel::grid(svg, reader, panel, 4);
    if profile.len() > 1 {
        svg.polyline(&profile, PROFILE);
    } else {
        let middle = at(f64::midpoint(frame.left, frame.right), frame.bottom - 40.0);
        let look = Type::of_size(NORMAL).anchored(Anchor::Middle);
        svg.text(middle, &reader.word("chart-no-elevation")?, look);
    }
    surface::band(svg, reader, run, panel, rows);
    names.signs(svg, reader, (panel, rows), &profile);
    Ok(())
}

/// Writes the names, over the lines of the change points.
pub(crate) fn write_names(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    (panel, rows): (&Panel, &Rows),
    names: &Names<'_>,
) -> Result<(), ChartError> {
    names.write(svg, rows);
    let hidden = surface::names(svg, reader, run, panel, rows)? + names.hidden();
    if hidden > 0 {
        let text = reader.filled("chart-names-hidden", &[("count", hidden.into())])?;
        let left = panel.frame.right - labels::width(&text, SMALL, false);
        panel::plated(svg, at(left, rows.names - 9.0), &text, Type::of_size(SMALL));
    }
    Ok(())
}
