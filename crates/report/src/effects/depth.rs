//! Stress in the ground over depth, a panel an axle group.

use language::Kind;
use quantity::{Length, Stress, Unit};
use view::{PlanView, StressProfileView};

use super::{EDGE, WIDTH, style};
use crate::strip::{ChartError, Reader, Scale, broken, fitted};
use crate::svg::{Anchor, Frame, Svg, Type, at, solid};

const PANEL: f64 = 300.0;
const ACROSS: usize = 3;
const LEFT: f64 = 62.0;
const BETWEEN: f64 = 66.0;
const DOWN: f64 = 96.0;

/// Profiles by axle group.
pub(super) type Panels<'a> = Vec<(&'a str, Vec<&'a StressProfileView>)>;

pub(super) fn panels(plan: &PlanView) -> Panels<'_> {
    let mut panels: Panels<'_> = Vec::new();
    for profile in &plan.stress_profiles {
        match panels.iter_mut().find(|(group, _)| *group == profile.axle_group) {
            Some((_, profiles)) => profiles.push(profile),
            None => panels.push((&profile.axle_group, vec![profile])),
        }
    }
    panels
}

/// Height of all the panels with their heading; nothing where there are none.
pub(super) fn height(panels: &Panels<'_>) -> f64 {
    if panels.is_empty() { 0.0 } else { panels.len().div_ceil(ACROSS) as f64 * (PANEL + DOWN) }
}

pub(super) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    panels: &Panels<'_>,
    top: f64,
) -> Result<(), ChartError> {
    let Some((_, first)) = panels.first() else { return Ok(()) };
    let leg = first.first().map_or("", |profile| profile.leg.as_str());
    let heading = reader.filled("chart-effects-depth", &[("leg", leg.into())])?;
    let heading = fitted(&heading, WIDTH - 2.0 * EDGE, 15.0, true);
    svg.text(at(EDGE, top - 34.0), &heading, Type::of_size(15.0).bold());
    let note = broken(&reader.word("chart-effects-depth-note")?, WIDTH - 2.0 * EDGE, 12.0);
    for (index, line) in note.iter().enumerate() {
        svg.text(at(EDGE, top - 14.0 + 14.0 * index as f64), line, Type::of_size(12.0));
    }
    let width = (WIDTH - EDGE - LEFT - BETWEEN * (ACROSS - 1) as f64) / ACROSS as f64;
    let pressure = |kpa| in_reader(reader, Stress::from_kpa(kpa), Kind::Pressure);
    let most = panels.iter().flat_map(|(_, all)| all).flat_map(|one| &one.points);
    let most = most.map(|point| pressure(point.stress_kpa.high)).fold(0.0, f64::max);
    for (index, (group, profiles)) in panels.iter().enumerate() {
        let left = LEFT + (index % ACROSS) as f64 * (width + BETWEEN);
        let panel_top = top + 44.0 + (index / ACROSS) as f64 * (PANEL + DOWN);
        let frame = Frame { left, top: panel_top, right: left + width, bottom: panel_top + PANEL };
        panel(svg, reader, (group, profiles), frame, most)?;
    }
    Ok(())
}

fn panel(
    svg: &mut Svg,
    reader: Reader<'_>,
    (group, profiles): (&str, &[&StressProfileView]),
    frame: Frame,
    most: f64,
) -> Result<(), ChartError> {
    let pressure = |kpa| in_reader(reader, Stress::from_kpa(kpa), Kind::Pressure);
    let depth = |m| in_reader(reader, Length::from_m(m), Kind::Size);
    let depths = profiles.iter().flat_map(|one| &one.points).map(|point| depth(point.depth_m));
    let x = Scale::over([0.0, most], 1.0, (frame.left, frame.right));
    let y = Scale::over(depths.chain([0.0]), 1.0, (frame.top, frame.bottom));
    let name = fitted(group, frame.width(), 13.0, true);
    svg.text(at(frame.left, frame.top - 26.0), &name, Type::of_size(13.0).bold());
    for (value, digits) in x.ticks(4, reader.format) {
        svg.line(at(x.at(value), frame.top), at(x.at(value), frame.bottom), solid("#d4d4d4", 0.7));
        let look = Type::of_size(11.0).anchored(Anchor::Middle);
        svg.text(at(x.at(value), frame.top - 7.0), &digits, look);
    }
    for (value, digits) in y.ticks(5, reader.format) {
        svg.line(at(frame.left, y.at(value)), at(frame.right, y.at(value)), solid("#d4d4d4", 0.7));
        let look = Type::of_size(11.0).anchored(Anchor::End);
        svg.text(at(frame.left - 6.0, y.at(value) + 4.0), &digits, look);
    }
    let across = reader.heading("chart-effects-stress", Kind::Pressure)?;
    let down = reader.heading("chart-effects-below", Kind::Size)?;
    let axes = format!("{across} →   {down} ↓");
    let look = Type::of_size(12.0);
    svg.text(at(frame.left, frame.bottom + 18.0), &fitted(&axes, frame.width(), 12.0, false), look);
    // The plan's band as a shade, its expected stress and those of the other ways as lines.
    if let Some(plan) = profiles.iter().find(|one| one.way == "plan") {
        let low = plan
            .points
            .iter()
            .map(|p| at(x.at(pressure(p.stress_kpa.low)), y.at(depth(p.depth_m))));
        let high = plan
            .points
            .iter()
            .map(|p| at(x.at(pressure(p.stress_kpa.high)), y.at(depth(p.depth_m))));
        let around: Vec<_> = low.chain(high.rev()).collect();
        svg.polygon(&around, "#dedede", None);
    }
    // Full pressure lies widest and lowest, the plan on top.
    for way in ["full-pressure", "less-load", "constant-reduced", "plan"] {
        let Some(profile) = profiles.iter().find(|one| one.way == way) else { continue };
        let points: Vec<_> = profile
            .points
            .iter()
            .map(|p| at(x.at(pressure(p.stress_kpa.middle)), y.at(depth(p.depth_m))))
            .collect();
        svg.polyline(&points, style::line(way));
    }
    svg.rect(frame, "none", Some(solid("#555", 1.0)));
    Ok(())
}

fn in_reader<Q: Unit>(reader: Reader<'_>, value: Q, kind: Kind) -> f64 {
    value
        .in_unit(kind.shown(reader.format.profile()).symbol)
        .expect("each kind is shown in a unit of its quantity")
}
