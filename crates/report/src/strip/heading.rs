//! The title of the page, the headings of the halves, and the chainage axis.

use language::Kind;
use view::RunView;

use super::check::ChartError;
use super::half::Half;
use super::labels;
use super::layout::{Columns, MARGIN, NORMAL, Panel, Rows, SMALL, WIDTH};
use super::panel::FRAME;
use super::reader::Reader;
use crate::svg::{Anchor, Svg, Type, at, solid};

const TITLE: f64 = 20.0;
const SUBTITLE: f64 = 14.0;

fn haul_and_route(reader: Reader<'_>, run: &RunView) -> Result<String, ChartError> {
    let args = [("haul", run.haul.as_str().into()), ("route", run.route.as_str().into())];
    reader.filled("chart-strip-haul", &args)
}

/// Begins the document with the words that are read aloud.
pub(crate) fn begin(reader: Reader<'_>, run: &RunView, height: f64) -> Result<Svg, ChartError> {
    let title = reader.word("chart-strip-title")? + ": " + &haul_and_route(reader, run)?;
    let changes = run.marks.iter().filter(|m| super::check::CHANGES.contains(&m.kind.as_str()));
    let args = [("changes", changes.count().into())];
    let description = reader.filled("chart-strip-description", &args)?;
    Ok(Svg::new(WIDTH, height, &title, &description))
}

/// Writes the title block.
pub(crate) fn title(svg: &mut Svg, reader: Reader<'_>, run: &RunView) -> Result<(), ChartError> {
    let room = WIDTH - 2.0 * MARGIN;
    let title = reader.word("chart-strip-title")?;
    svg.text(at(MARGIN, 44.0), &title, Type::of_size(TITLE).bold());
    let names = labels::fitted(&haul_and_route(reader, run)?, room, SUBTITLE, false);
    svg.text(at(MARGIN, 68.0), &names, Type::of_size(SUBTITLE));
    svg.line(at(MARGIN, 80.0), at(WIDTH - MARGIN, 80.0), solid("#999", 0.8));
    Ok(())
}

/// Writes a half's heading, with an arrow that points the way it is driven.
pub(crate) fn half(
    svg: &mut Svg,
    reader: Reader<'_>,
    half: &Half<'_>,
    columns: Columns,
    y: f64,
) -> Result<(), ChartError> {
    let key = if half.laden { "chart-laden-run" } else { "chart-empty-run" };
    let size = NORMAL + 3.0;
    let name = reader.word(key)?;
    svg.text(at(columns.plot.0, y), &name, Type::of_size(size).bold());
    let after = columns.plot.0 + labels::width(&name, size, true) + 14.0;
    let way = if half.forward { "chart-travel-up" } else { "chart-travel-down" };
    let way = reader.word(way)?;
    let way_width = labels::width(&way, SMALL, false);
    let way_left = columns.plot.1 - way_width;
    svg.text(at(way_left, y), &way, Type::of_size(SMALL));
    let (left, right) = (way_left - 96.0, way_left - 10.0);
    let middle = y - 5.0;
    let (tail, head, barb) = if half.forward { (left, right, -11.0) } else { (right, left, 11.0) };
    svg.line(at(tail, middle), at(head + barb / 2.0, middle), solid("#111", 2.4));
    let wings = [at(head + barb, middle - 5.5), at(head, middle), at(head + barb, middle + 5.5)];
    svg.polygon(&wings, "#111", None);
    let state = reader.filled("chart-load-state", &[("name", half.load_state.into())])?;
    let state = labels::fitted(&state, left - 14.0 - after, NORMAL, false);
    svg.text(at(after, y), &state, Type::of_size(NORMAL));
    Ok(())
}

/// Writes the chainage below the last panel.
pub(crate) fn axis(svg: &mut Svg, reader: Reader<'_>, panel: &Panel) -> Result<(), ChartError> {
    let bottom = panel.frame.bottom;
    for (value, digits) in panel.x.ticks(8, reader.format) {
        let x = panel.x.at(value);
        svg.line(at(x, bottom), at(x, bottom + 5.0), FRAME);
        let look = Type::of_size(SMALL).anchored(Anchor::Middle);
        svg.text(at(x, bottom + 18.0), &digits, look);
    }
    let middle = f64::midpoint(panel.frame.left, panel.frame.right);
    let name = reader.heading("chart-chainage", Kind::Distance)?;
    let look = Type::of_size(NORMAL).bold().anchored(Anchor::Middle);
    svg.text(at(middle, bottom + 35.0), &name, look);
    Ok(())
}

/// Says that there is nothing to see in a half.
pub(crate) fn no_run(
    svg: &mut Svg,
    reader: Reader<'_>,
    columns: Columns,
    rows: &Rows,
) -> Result<(), ChartError> {
    let middle = f64::midpoint(columns.plot.0, columns.plot.1);
    let text = reader.word("chart-no-run")?;
    let look = Type::of_size(NORMAL).anchored(Anchor::Middle);
    svg.text(at(middle, f64::midpoint(rows.pressure.0, rows.pressure.1)), &text, look);
    Ok(())
}
