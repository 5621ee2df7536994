//! The speed panel: speed, speed cap, speed limit.

use language::Kind;
use view::RunView;

use super::check::ChartError;
use super::half::Half;
use super::labels;
use super::layout::{LINE, Panel, SMALL};
use super::panel;
use super::reader::Reader;
use crate::svg::{Stroke, Svg, Type, at, solid};

pub(crate) const SPEED: Stroke = solid("#111", 1.8);
pub(crate) const CAP: Stroke = Stroke { color: "#b04a00", width: 2.0, dash: "9 5" };
pub(crate) const LIMIT: Stroke = solid("#777", 0.9);

/// Draws the panel.
pub(crate) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    half: &Half<'_>,
    panel: &Panel,
) -> Result<(), ChartError> {
    panel::grid(svg, reader, panel, 6, &reader.heading("chart-speed", Kind::Speed)?);
    let limit = run.legs.iter().flat_map(|leg| {
        let limit = Some(reader.speed(leg.speed_limit_kmh));
        [leg.from_km, leg.to_km].map(|km| (reader.chainage(km), limit))
    });
    panel::curve(svg, panel, limit, LIMIT, true);
    let moving = || half.moving.iter();
    let cap = moving().map(|s| (reader.chainage(s.km), Some(reader.speed(s.cap_kmh))));
    panel::curve(svg, panel, cap, CAP, true);
    let speed = moving().map(|s| (reader.chainage(s.km), Some(reader.speed(s.speed_kmh))));
    panel::curve(svg, panel, speed, SPEED, false);

    let end = half.rightmost();
    let last_leg = run.legs.iter().max_by(|a, b| a.to_km.total_cmp(&b.to_km));
    let labels = [
        (end.map(|s| s.speed_kmh), "chart-label-speed"),
        (end.map(|s| s.cap_kmh), "chart-label-cap"),
        (last_leg.map(|leg| leg.speed_limit_kmh), "chart-label-limit"),
    ];
    let labels: Vec<_> = labels
        .into_iter()
        .filter_map(|(kmh, key)| kmh.map(|kmh| (panel.y.at(reader.speed(kmh)), key)))
        .zip([SPEED, CAP, LIMIT])
        .map(|((y, key), stroke)| Ok((y, reader.word(key)?, stroke)))
        .collect::<Result<_, ChartError>>()?;
    direct(svg, panel, &labels);
    Ok(())
}

/// Writes labels right of a panel, each beside the right end of its line.
pub(crate) fn direct(svg: &mut Svg, panel: &Panel, labels: &[(f64, String, Stroke)]) {
    let frame = panel.frame;
    let wishes: Vec<f64> = labels.iter().map(|(y, ..)| *y).collect();
    let range = (frame.top + 4.0, frame.bottom - 4.0);
    let heights = labels::column(&wishes, LINE - 1.0, range);
    for ((y, text, stroke), height) in labels.iter().zip(heights) {
        let (from, to) = (frame.right + 1.0, frame.right + 10.0);
        svg.line(at(from, *y), at(to, height), solid("#777", 0.7));
        svg.line(at(to + 1.0, height), at(to + 25.0, height), *stroke);
        let room = super::layout::LABELS - 42.0;
        let text = labels::fitted(text, room, SMALL, false);
        svg.text(at(to + 30.0, height + 4.0), &text, Type::of_size(SMALL));
    }
}
