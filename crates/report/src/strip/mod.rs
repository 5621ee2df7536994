//! A run along its route: the empty run beside the laden run, over the chainage.

mod check;
mod elevation;
mod flags;
mod half;
mod heading;
pub(crate) mod labels;
mod layout;
mod legend;
mod panel;
mod places;
mod pressure;
mod reader;
pub(crate) mod scale;
mod speed;
mod standing;
mod supply;
pub(crate) mod surface;

#[cfg(test)]
mod tests;

use language::{Format, Texts};
use view::RunView;

pub use check::ChartError;
pub(crate) use labels::{broken, fitted, width};
pub(crate) use reader::Reader;
pub(crate) use scale::Scale;

use flags::Flags;
use half::Half;
use layout::{Columns, Contents, Panel, Rows, WIDTH};
use legend::Legend;
use places::Names;

use crate::svg::{Frame, at};

/// Draws a run along its route as one SVG document, 1400 px wide, in the reader's units.
///
/// Readable in black and white; a name without room is shortened with an ellipsis.
///
/// # Validity
/// Chainage -10,000 to 100,000 km, speeds to 500 km/h, pressures -150 to 5,000 kPa, at most
/// 16 air channels.
///
/// # Errors
/// [`ChartError`] for a run without samples, with a value outside the validity range or with
/// a word the chart does not know; and for a missing text.
///
/// ```
/// use language::{Format, Texts, UnitProfile};
///
/// let detail = plan::Detail::default();
/// let haul = example::haul();
/// let plan = plan::Plan::of(&haul, &detail)?;
/// let planned = study::Planned { haul, plan, search: None, planned_for: study::PlannedFor::default() };
/// let simulated = study::simulate(&planned, quantity::Time::from_s(5.0), &detail)?;
/// let run = view::run_view(&planned, &simulated);
/// let (texts, format) = (Texts::new("en")?, Format::new(UnitProfile::Us, "en")?);
/// let svg = report::run_strip(&run, &texts, &format)?;
/// assert!(svg.contains("START RAISING ↑ highway"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn run_strip(run: &RunView, texts: &Texts, format: &Format) -> Result<String, ChartError> {
    check::check(run)?;
    let reader = Reader { texts, format };
    let halves = Half::both(run);
    let columns = [false, true].map(Columns::of);
    let x = columns.map(|columns| chainages(reader, run, columns.plot));
    let flags = Flags::place(reader, &halves, &x)?;
    let names = [0, 1].map(|i| Names::place(run, reader, x[i], columns[i].plot));
    let legend = Legend::of(reader, run)?;
    let mut standing = Vec::new();
    for (half, columns) in halves.iter().zip(columns) {
        standing.push(standing::lines(reader, half, columns.right - columns.plot.0)?);
    }
    let rows = Rows::of(&Contents {
        flags_height: flags.height(),
        name_lanes: names[0].lanes.max(names[1].lanes),
        channels: run.channels.len(),
        standing_lines: standing.iter().map(Vec::len).max().unwrap_or(0),
        list_height: flags.list_height(),
        legend_lines: legend.lines,
    });

    let mut svg = heading::begin(reader, run, rows.page)?;
    surface::patterns(&mut svg, run);
    supply::pattern(&mut svg);
    svg.rect(Frame { left: 0.0, top: 0.0, right: WIDTH, bottom: rows.page }, "#fff", None);
    heading::title(&mut svg, reader, run)?;
    let panels =
        [0, 1].map(|i| Panels { run, reader, half: &halves[i], columns: columns[i], x: x[i] });
    for panels in &panels {
        elevation::ground(&mut svg, reader, run, &panels.elevation(&rows));
    }
    flags.spans(&mut svg, reader, &x, &rows);
    for (index, half) in halves.iter().enumerate() {
        let panels = &panels[index];
        heading::half(&mut svg, reader, half, columns[index], rows.heading)?;
        elevation::draw(&mut svg, reader, run, (&panels.elevation(&rows), &rows), &names[index])?;
        speed::draw(&mut svg, reader, run, half, &panels.speed(&rows, &halves))?;
        pressure::draw(&mut svg, reader, run, half, &panels.pressure(&rows));
        let supply = panels.supply(&rows, &halves);
        supply::draw(&mut svg, reader, half, &supply)?;
        heading::axis(&mut svg, reader, &supply)?;
        for (line, text) in standing[index].iter().enumerate() {
            let y = rows.standing + line as f64 * layout::LINE;
            let look = crate::svg::Type::of_size(layout::SMALL);
            svg.text(at(columns[index].plot.0, y), text, look);
        }
        if half.moving.is_empty() {
            heading::no_run(&mut svg, reader, columns[index], &rows)?;
        }
    }
    flags.poles(&mut svg, reader, &x, &rows);
    for (index, panels) in panels.iter().enumerate() {
        let elevation = (&panels.elevation(&rows), &rows);
        elevation::write_names(&mut svg, reader, run, elevation, &names[index])?;
        panel::headings(&mut svg, reader, columns[index].plot.0, &rows)?;
    }
    flags.draw(&mut svg, &rows);
    flags.list(&mut svg, reader, rows.list)?;
    legend.draw(&mut svg, rows.legend);
    Ok(svg.finish())
}

/// The scale on which all of the route and the run lies.
fn chainages(reader: Reader<'_>, run: &RunView, plot: (f64, f64)) -> Scale {
    let legs = run.legs.iter().flat_map(|leg| [leg.from_km, leg.to_km]);
    let marks = run.marks.iter().flat_map(|mark| [Some(mark.km), mark.reach_by_km]).flatten();
    let all = legs
        .chain(marks)
        .chain(run.elevation_km_m.iter().map(|(km, _)| *km))
        .chain(run.samples.iter().map(|sample| sample.km));
    Scale::over(all.map(|km| reader.chainage(km)), 0.1, plot)
}

/// What the panels of a half have in common.
struct Panels<'a> {
    run: &'a RunView,
    reader: Reader<'a>,
    half: &'a Half<'a>,
    columns: Columns,
    x: Scale,
}

impl Panels<'_> {
    fn panel(&self, (top, bottom): (f64, f64), y: Scale) -> Panel {
        let (left, right) = self.columns.plot;
        Panel { frame: Frame { left, top, right, bottom }, x: self.x, y }
    }

    fn elevation(&self, rows: &Rows) -> Panel {
        let (top, bottom) = rows.elevation;
        let heights = self.run.elevation_km_m.iter().map(|(_, m)| self.reader.height(*m));
        self.panel(rows.elevation, Scale::over(heights, 10.0, (bottom, top)).with_air(0.1, 0.2))
    }

    /// Both halves share the scale.
    fn speed(&self, rows: &Rows, halves: &[Half<'_>; 2]) -> Panel {
        let (top, bottom) = rows.speed;
        let limits = self.run.legs.iter().map(|leg| leg.speed_limit_kmh);
        let driven = halves.iter().flat_map(|h| &h.moving).flat_map(|s| [s.speed_kmh, s.cap_kmh]);
        let all = limits.chain(driven).map(|kmh| self.reader.speed(kmh)).chain([0.0]);
        self.panel(rows.speed, Scale::over(all, 10.0, (bottom, top)).with_air(0.0, 0.06))
    }

    fn pressure(&self, rows: &Rows) -> Panel {
        let (top, bottom) = rows.pressure;
        let all = self.half.moving.iter().flat_map(|s| {
            s.tire_kpa.iter().copied().chain(s.tire_minimum_kpa.iter().copied().flatten())
        });
        let least = self.reader.pressure(20.0);
        let all = all.map(|kpa| self.reader.pressure(kpa));
        self.panel(rows.pressure, Scale::over(all, least, (bottom, top)).with_air(0.1, 0.06))
    }

    /// Both halves share the scale.
    fn supply(&self, rows: &Rows, halves: &[Half<'_>; 2]) -> Panel {
        let (top, bottom) = rows.supply;
        let all = halves.iter().flat_map(|h| &h.moving).map(|s| s.supply_kpa);
        let least = self.reader.pressure(20.0);
        let all = all.map(|kpa| self.reader.pressure(kpa));
        self.panel(rows.supply, Scale::over(all, least, (bottom, top)).with_air(0.1, 0.1))
    }
}
