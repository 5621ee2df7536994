//! The tire pressure panel: each air channel and the lowest allowed in it.

use view::RunView;

use super::half::Half;
use super::layout::Panel;
use super::panel::{self, FRAME, direct};
use super::reader::Reader;
use crate::svg::{Frame, Stroke, Svg, solid};

const DASHES: [&str; 8] = ["", "9 5", "2 3", "13 3 2 3", "5 3", "13 3 2 3 2 3", "20 5", "5 3 2 3"];
/// Dark, told apart by most color-blind readers, and each with a lighter one.
const COLORS: [(&str, &str); 4] =
    [("#00589c", "#6f9fc4"), ("#a84300", "#cd9470"), ("#006b4a", "#6aab95"), ("#111", "#808080")];

/// The line of a channel's tire pressure; no two of sixteen have the same dash and width.
///
/// The first is a broad pale line: where channels run together, the dashes of the others
/// are seen on it.
pub(crate) fn style(channel: usize) -> Stroke {
    if channel == 0 {
        return solid("#9a9a9a", 4.0);
    }
    let round = channel / DASHES.len();
    let width = if round == 0 { 1.7 } else { 3.0 };
    let color = COLORS[(channel + round) % COLORS.len()].0;
    Stroke { color, width, dash: DASHES[channel % DASHES.len()] }
}

/// The line of the lowest allowed in a channel: the same dashes, thinner and lighter.
pub(crate) fn minimum_style(channel: usize) -> Stroke {
    if channel == 0 {
        return solid("#b8b8b8", 2.2);
    }
    let Stroke { width, dash, .. } = style(channel);
    let color = COLORS[(channel + channel / DASHES.len()) % COLORS.len()].1;
    Stroke { color, width: width / 1.7, dash }
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
) {
    panel::grid(svg, reader, panel, 7);
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
    let Some(end) = half.rightmost() else { return };
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
    svg.rect(panel.frame, "none", Some(FRAME));
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::super::check::MAX_CHANNELS;
    use super::*;

    #[test]
    fn every_channel_has_a_line_of_its_own_without_color() {
        let looks = |style: fn(usize) -> Stroke| -> BTreeSet<_> {
            (0..MAX_CHANNELS)
                .map(style)
                .map(|stroke| (stroke.dash, format!("{:.1}", stroke.width)))
                .collect()
        };
        assert_eq!(looks(style).len(), MAX_CHANNELS);
        assert_eq!(looks(minimum_style).len(), MAX_CHANNELS);
    }
}
