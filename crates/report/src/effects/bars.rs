//! Bars of ratios against full pressure: a line for each leg and run, a panel for each effect.

use view::{BandView, LegEffectsView, LegWayView, PlanView};

use super::style::{FULL, LOOKS};
use super::{EDGE, Place};
use crate::strip::{ChartError, Reader, Scale, broken, fitted, width};
use crate::svg::{Anchor, Frame, Svg, Type, at, solid};

/// Height of a line.
pub(super) const ROW: f64 = 42.0;
const BETWEEN: f64 = 22.0;
const BAR: f64 = 9.0;

type Reads = fn(&LegEffectsView, &LegWayView) -> Option<BandView>;

/// Key of its heading, and its ratio.
const PANELS: [(&str, Reads); 3] = [
    ("chart-effects-patch", |_, way| way.means.contact_area_ratio),
    ("chart-effects-road", road),
    ("chart-effects-rolling", |_, way| way.resistance_ratio),
];

/// The effect a surface is judged by.
fn road(leg: &LegEffectsView, way: &LegWayView) -> Option<BandView> {
    match leg.surface.as_str() {
        "gravel" => way.means.gravel_rut_ratio,
        "earth" | "soft ground" => way.means.soil_rut_ratio,
        "paved" | "sealed" => way.means.asphalt_damage_ratio,
        _ => way.means.stress_below_ratio,
    }
}

/// Legs and runs; of a leg cut in pieces that do not differ, the first.
pub(super) fn rows(plan: &PlanView) -> Vec<&LegEffectsView> {
    let mut rows: Vec<&LegEffectsView> = Vec::new();
    for leg in &plan.effects {
        let same = |other: &&LegEffectsView| {
            let told = |leg: &LegEffectsView| -> Vec<Option<BandView>> {
                let ways = leg.ways.iter();
                ways.flat_map(|way| PANELS.map(|(_, reads)| reads(leg, way))).collect()
            };
            (&other.leg, &other.run) == (&leg.leg, &leg.run) && told(other) == told(leg)
        };
        if !rows.iter().any(same) {
            rows.push(leg);
        }
    }
    rows
}

pub(super) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    rows: &[&LegEffectsView],
    Place { width: across, top, names }: Place,
) -> Result<(), ChartError> {
    let bottom = top + rows.len() as f64 * ROW;
    for (index, leg) in rows.iter().enumerate() {
        let y = top + index as f64 * ROW;
        if index % 2 == 1 {
            let frame = Frame { left: EDGE, top: y, right: across - EDGE, bottom: y + ROW };
            svg.rect(frame, "#f4f4f4", None);
        }
        let room = names - EDGE - 14.0;
        let name = fitted(&leg.leg, room, 13.0, true);
        svg.text(at(EDGE + 4.0, y + 18.0), &name, Type::of_size(13.0).bold());
        let run = reader.word(&format!("plan-{}", leg.run))?;
        let surface = leg.surface.replace(' ', "-");
        let surface = reader.word(&format!("chart-surface-{surface}"))?;
        let run = format!("{run}, {surface}");
        let fits = |size: &f64| width(&run, *size, false) <= room;
        let size = [12.0, 11.0, 10.0].into_iter().find(fits).unwrap_or(10.0);
        let run = fitted(&run, room, size, false);
        svg.text(at(EDGE + 4.0, y + 34.0), &run, Type::of_size(size));
    }
    let panel_width = (across - EDGE - names - 2.0 * BETWEEN) / 3.0;
    for (index, (key, reads)) in PANELS.into_iter().enumerate() {
        let left = names + index as f64 * (panel_width + BETWEEN);
        let frame = Frame { left, top, right: left + panel_width, bottom };
        panel(svg, reader, rows, (key, reads), frame)?;
    }
    Ok(())
}

fn panel(
    svg: &mut Svg,
    reader: Reader<'_>,
    rows: &[&LegEffectsView],
    (key, reads): (&str, Reads),
    frame: Frame,
) -> Result<(), ChartError> {
    let all = rows.iter().flat_map(|leg| leg.ways.iter().filter_map(|way| reads(leg, way)));
    let ends = all.flat_map(|band| [band.low, band.high]).chain([1.0]);
    let x = Scale::over(ends, 0.1, (frame.left + 4.0, frame.right - 4.0)).with_air(0.03, 0.05);
    let size = if frame.width() < 200.0 { 11.0 } else { 13.0 };
    // Bold letters are wider than those that lines are broken by.
    let head = broken(&reader.word(key)?, 0.93 * (frame.width() + BETWEEN - 6.0), size);
    let first = frame.top - if head.len() > 1 { 33.0 } else { 30.0 };
    for (index, line) in head.iter().enumerate() {
        let place = at(frame.left, first + 13.0 * index as f64);
        svg.text(place, line, Type::of_size(size).bold());
    }
    let look = Type::of_size(11.0).anchored(Anchor::Middle);
    for (value, digits) in x.ticks(4, reader.format) {
        let place = x.at(value);
        svg.line(at(place, frame.top), at(place, frame.bottom), solid("#d4d4d4", 0.7));
        svg.text(at(place, frame.top - 8.0), &digits, look);
    }
    let one = x.at(1.0);
    svg.line(at(one, frame.top), at(one, frame.bottom), FULL);
    for (index, leg) in rows.iter().enumerate() {
        let y = frame.top + index as f64 * ROW + 5.0;
        let unknown = leg.ways.iter().all(|way| reads(leg, way).is_none());
        if unknown {
            let text = reader.word("chart-effects-unknown")?;
            svg.text(at(frame.left + 6.0, y + 20.0), &text, Type::of_size(12.0));
        }
        for (number, way) in LOOKS.iter().enumerate() {
            let found = leg.ways.iter().find(|one| one.way == way.way);
            let Some(band) = found.and_then(|found| reads(leg, found)) else { continue };
            bar(svg, &x, (one, y + number as f64 * (BAR + 2.0)), band, way.fill);
        }
    }
    svg.rect(frame, "none", Some(solid("#555", 1.0)));
    Ok(())
}

/// A bar from 1 to the middle, with a whisker over the band.
fn bar(svg: &mut Svg, x: &Scale, (one, top): (f64, f64), band: BandView, fill: &str) {
    let [low, middle, high] = [band.low, band.middle, band.high].map(|value| x.at(value));
    let (left, right) = (one.min(middle), one.max(middle));
    let (left, right) = if right - left < 1.5 { (one - 1.5, one + 1.5) } else { (left, right) };
    let edge = solid("#111", 1.0);
    svg.rect(Frame { left, top, right, bottom: top + BAR }, fill, Some(edge));
    let y = top + BAR / 2.0;
    if high - low > 1.0 {
        // White under the whisker keeps it in sight on a dark bar.
        svg.line(at(low, y), at(high, y), solid("#fff", 3.6));
        svg.line(at(low, y), at(high, y), solid("#111", 1.4));
        for end in [low, high] {
            svg.line(at(end, y - 3.5), at(end, y + 3.5), solid("#111", 1.4));
        }
    }
}
