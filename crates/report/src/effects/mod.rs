//! Effects of a plan as bars against other ways to run, and stress in the ground over depth.

mod bars;
mod depth;
#[cfg(test)]
mod layout;
mod style;

use language::{Format, Texts};
use view::PlanView;

use crate::strip::{ChartError, Reader};
use crate::svg::{Frame, Svg, Type, at};

/// Width of the page.
const WIDTH: f64 = 1200.0;
/// Width of the bars on paper: the same letters, larger against the page.
const ON_PAPER: f64 = 800.0;
/// Where the legend begins, under the title.
const LEGEND: f64 = 88.0;
/// Room of the headings and scales over the bars.
const HEADS: f64 = 42.0;
/// Edge that nothing passes.
const EDGE: f64 = 24.0;

/// Where bars stand.
#[derive(Debug, Clone, Copy)]
struct Place {
    /// Width of the drawing.
    width: f64,
    /// Where the first line begins.
    top: f64,
    /// Room for the names of the lines.
    names: f64,
}

/// Draws the effects of a plan as one SVG document, 1200 px wide, in the reader's units.
///
/// Above, a line for each leg and run: patch, what the road feels and rolling resistance over those
/// at full pressure, by way to run, each with its band. Below, stress over depth under the laden
/// truck where the plan changes the patch most. Ways differ by pattern and mark, not by color.
///
/// # Errors
/// [`ChartError`] for a plan without effects and for a missing text.
pub fn effects_chart(
    plan: &PlanView,
    texts: &Texts,
    format: &Format,
) -> Result<String, ChartError> {
    let reader = Reader { texts, format };
    if plan.effects.is_empty() {
        return Err(ChartError::NoEffects { haul: plan.haul.clone() });
    }
    let rows = bars::rows(plan);
    let legend = style::Legend::of(reader, WIDTH)?;
    let top = LEGEND + legend.height() + HEADS;
    let depth_top = top + rows.len() as f64 * bars::ROW + 96.0;
    let panels = depth::panels(plan);
    let height = depth_top + depth::height(&panels) + EDGE;

    let title = reader.word("chart-effects-title")?;
    let description = reader.word("chart-effects-description")?;
    let mut svg = Svg::new(WIDTH, height, &title, &description);
    style::patterns(&mut svg);
    svg.rect(Frame { left: 0.0, top: 0.0, right: WIDTH, bottom: height }, "#fff", None);
    svg.text(at(EDGE, 34.0), &title, Type::of_size(20.0).bold());
    let haul = [("haul", plan.haul.as_str().into()), ("route", plan.route.as_str().into())];
    svg.text(at(EDGE, 56.0), &reader.filled("chart-strip-haul", &haul)?, Type::of_size(13.0));
    legend.draw(&mut svg, LEGEND);
    bars::draw(&mut svg, reader, &rows, Place { width: WIDTH, top, names: 230.0 })?;
    depth::draw(&mut svg, reader, &panels, depth_top)?;
    Ok(svg.finish())
}

/// Draws the bars alone, for paper.
///
/// # Errors
/// As [`effects_chart`].
pub(crate) fn effects_bars(plan: &PlanView, reader: Reader<'_>) -> Result<String, ChartError> {
    if plan.effects.is_empty() {
        return Err(ChartError::NoEffects { haul: plan.haul.clone() });
    }
    let rows = bars::rows(plan);
    let legend = style::Legend::of(reader, ON_PAPER)?;
    let top = 14.0 + legend.height() + HEADS;
    let place = Place { width: ON_PAPER, top, names: 214.0 };
    let height = place.top + rows.len() as f64 * bars::ROW + 6.0;
    let title = reader.word("chart-effects-title")?;
    let description = reader.word("chart-effects-description")?;
    let mut svg = Svg::new(ON_PAPER, height, &title, &description);
    style::patterns(&mut svg);
    svg.rect(Frame { left: 0.0, top: 0.0, right: ON_PAPER, bottom: height }, "#fff", None);
    legend.draw(&mut svg, 14.0);
    bars::draw(&mut svg, reader, &rows, place)?;
    Ok(svg.finish())
}
