//! The tire pressure panel: each air channel and the lowest allowed in it.

use language::Kind;
use view::RunView;

use super::check::ChartError;
use super::half::Half;
use super::layout::Panel;
use super::panel;
use super::reader::Reader;
use super::speed::direct;
use crate::svg::{Frame, Stroke, Svg, solid};

const DASHES: [&str; 8] =
    ["", "9 4", "2.5 3", "12 3 2.5 3", "5 2", "12 3 2.5 3 2.5 3", "16 5", "5 2 2.5 2"];
/// Dark, told apart by most color-blind readers, and each with a lighter one.
const COLORS: [(&str, &str); 4] =
    [("#111", "#777"), ("#00589c", "#5f93bd"), ("#a84300", "#c98a60"), ("#006b4a", "#5fa58d")];

/// The line of a channel's tire pressure; no two of sixteen have the same dash and width.
pub(crate) fn style(channel: usize) -> Stroke {
    let round = channel / DASHES.len();
    let width = if round == 0 { 1.8 } else { 3.0 };
    let color = COLORS[(channel + round) % COLORS.len()].0;
    Stroke { color, width, dash: DASHES[channel % DASHES.len()] }
}

/// The line of the lowest allowed in a channel: the same dashes, thinner and lighter.
pub(crate) fn minimum_style(channel: usize) -> Stroke {
    let Stroke { width, dash, .. } = style(channel);
    let color = COLORS[(channel + channel / DASHES.len()) % COLORS.len()].1;
    Stroke { color, width: width / 2.0, dash }
}

/// Height of the bar that says a change is under way.
const BAR: f64 = 5.0;

/// Draws the panel.
pub(crate) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    half: &Half<'_>,
    panel: &Panel,
) -> Result<(), ChartError> {
    panel::grid(svg, reader, panel, 7, &reader.heading("chart-tire-pressure", Kind::Pressure)?);
    let bottom = panel.frame.bottom;
    for (from, to) in half.spans(|sample| sample.changing) {
        let (a, b) = (panel.x.at(reader.chainage(from)), panel.x.at(reader.chainage(to)));
        let (left, right) = (a.min(b), a.max(b));
        svg.rect(Frame { left, top: bottom - BAR, right, bottom }, "#111", None);
    }
    for channel in 0..run.channels.len() {
        let lowest = half.moving.iter().map(|s| {
            let lowest = s.tire_minimum_kpa[channel].map(|kpa| reader.pressure(kpa));
            (reader.chainage(s.km), lowest)
        });
        panel::curve(svg, panel, lowest, minimum_style(channel), true);
    }
    for channel in 0..run.channels.len() {
        let tire = half
            .moving
            .iter()
            .map(|s| (reader.chainage(s.km), Some(reader.pressure(s.tire_kpa[channel]))));
        panel::curve(svg, panel, tire, style(channel), false);
    }
    let Some(end) = half.rightmost() else { return Ok(()) };
    let labels: Vec<_> = run
        .channels
        .iter()
        .zip(&end.tire_kpa)
        .enumerate()
        .map(|(channel, (name, kpa))| {
            (panel.y.at(reader.pressure(*kpa)), name.clone(), style(channel))
        })
        .collect();
    direct(svg, panel, &labels);
    svg.rect(panel.frame, "none", Some(solid("#555", 1.0)));
    Ok(())
}
