//! The speed panel: speed, speed cap, speed limit.

use view::RunView;

use super::check::ChartError;
use super::half::Half;
use super::layout::Panel;
use super::panel::{self, direct};
use super::reader::Reader;
use crate::svg::{Stroke, Svg, solid};

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
    panel::grid(svg, reader, panel, 6);
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
    let ends = [
        (end.map(|s| s.speed_kmh), "chart-label-speed", SPEED),
        (end.map(|s| s.cap_kmh), "chart-label-cap", CAP),
        (last_leg.map(|leg| leg.speed_limit_kmh), "chart-label-limit", LIMIT),
    ];
    let mut labels = Vec::new();
    for (kmh, key, stroke) in ends {
        if let Some(kmh) = kmh {
            labels.push((panel.y.at(reader.speed(kmh)), reader.word(key)?, stroke));
        }
    }
    direct(svg, panel, &labels);
    Ok(())
}
