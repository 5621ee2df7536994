//! The route as a strip: surfaces, landmarks, and the change points of both runs by their numbers.

use language::Round;
use view::{LegView, RouteView};

use crate::Words;
use crate::document::{Block, Chart};
use crate::paper::Material;
use crate::quantities::chainage;
use crate::strip::labels::{self, Slot, Wish};
use crate::strip::scale::Scale;
use crate::strip::surface::{SURFACES, Surface};
use crate::svg::{Anchor, Frame, Svg, Type, at, solid};

const WIDTH: f64 = 500.0;
const MARGIN: f64 = 6.0;
const TEXT: f64 = 11.5;
const LINE: f64 = 14.0;
const BAR: f64 = 18.0;
const NUMBER: f64 = 15.0;
const SIGN: f64 = 6.0;
/// Where this many lanes do not do, names are left to the table.
const MOST_LANES: usize = 12;

/// A change point on the strip.
struct Point {
    x: f64,
    number: String,
    raises: bool,
    slot: Slot,
    width: f64,
}

/// The strip; none for a route without length.
pub(in crate::paper) fn block(material: &Material<'_>, words: Words<'_>) -> Option<Block> {
    let route = material.route;
    let (first, last) = (route.legs.first()?, route.legs.last()?);
    (last.to_km > first.from_km).then(|| {
        let described = words.fill(
            "card-strip-described",
            &[("route", &route.route), ("changes", &material.plan.change_points.len())],
        );
        Block::Chart(Chart { svg: draw(material, &described, words), described })
    })
}

fn draw(material: &Material<'_>, described: &str, words: Words<'_>) -> String {
    let (plan, route) = (material.plan, material.route);
    let x = Scale::over(
        route.legs.iter().flat_map(|leg| [leg.from_km, leg.to_km]),
        0.1,
        (MARGIN, WIDTH - MARGIN),
    );
    let laden = points(material, x, &plan.laden_state);
    let empty = if plan.empty_state == plan.laden_state {
        Vec::new()
    } else {
        points(material, x, &plan.empty_state)
    };
    let (above, below) = (lanes_of(&laden), lanes_of(&empty));
    let names = Names::of(route, x);
    let legend = legend(route, words);
    let bar_top = LINE + above as f64 * NUMBER + SIGN + 4.0;
    let bar_bottom = bar_top + BAR;
    let empty_bottom = bar_bottom + SIGN + 4.0 + below as f64 * NUMBER;
    let axis = empty_bottom + LINE;
    let names_top = axis + 5.0;
    let legend_top = names_top + names.lanes as f64 * LINE + 4.0;
    let height = legend_top + legend.last().map_or(0.0, |(_, _, line)| (line + 1.0) * LINE) + 4.0;

    let mut svg = Svg::new(WIDTH, height, &words.text("card-strip"), described);
    for surface in present(route) {
        surface.pattern(&mut svg);
    }
    svg.rect(Frame { left: 0.0, top: 0.0, right: WIDTH, bottom: height }, "#fff", None);
    for leg in &route.legs {
        let bar = Frame {
            left: x.at(leg.from_km),
            top: bar_top,
            right: x.at(leg.to_km),
            bottom: bar_bottom,
        };
        for surface in SURFACES.iter().filter(|surface| surface.word == leg.surface) {
            svg.rect(bar, surface.fill, Some(solid("#111", 1.2)));
        }
    }
    let forward = route.laden_direction == "forward";
    let run = |state: &str, up: bool| {
        let run = words.fill("plan-run", &[("load_state", &state)]);
        if up { format!("{run} →") } else { format!("← {run}") }
    };
    let look = Type::of_size(TEXT).bold();
    svg.text(at(MARGIN, TEXT), &run(&plan.laden_state, forward), look);
    svg.text(at(MARGIN, axis - 2.0), &run(&plan.empty_state, !forward), look);
    mark(&mut svg, &laden, bar_top, true);
    mark(&mut svg, &empty, bar_bottom, false);
    ends(&mut svg, route, axis, words);
    names.draw(&mut svg, (bar_top, bar_bottom), names_top);
    for (surface, left, line) in &legend {
        let top = legend_top + line * LINE;
        let swatch = Frame { left: *left, top, right: left + 22.0, bottom: top + 10.0 };
        svg.rect(swatch, surface.fill, Some(solid("#111", 0.8)));
        svg.text(at(left + 26.0, top + 9.5), &words.text(surface.key), Type::of_size(TEXT));
    }
    svg.finish()
}

/// The change points of a run; each number gets a lane where it stands free.
fn points(material: &Material<'_>, x: Scale, state: &str) -> Vec<Point> {
    let of_run: Vec<(usize, &view::ChangePointView)> = material
        .plan
        .change_points
        .iter()
        .enumerate()
        .filter(|(_, point)| point.load_state == state)
        .collect();
    let wishes: Vec<Wish> = of_run
        .iter()
        .map(|(index, point)| {
            let width = labels::width(&(index + 1).to_string(), NUMBER, true);
            Wish { left: x.at(point.km) - width / 2.0, width }
        })
        .collect();
    let slots = placed(&wishes, 30.0);
    of_run
        .iter()
        .zip(&wishes)
        .zip(slots)
        .filter_map(|(((index, point), wish), slot)| {
            Some(Point {
                x: x.at(point.km),
                number: (index + 1).to_string(),
                raises: point.action == "raise",
                slot: slot?,
                width: wish.width,
            })
        })
        .collect()
}

/// As few lanes as hold every label.
fn placed(wishes: &[Wish], reach: f64) -> Vec<Option<Slot>> {
    let range = (MARGIN, WIDTH - MARGIN);
    let with = |lanes| labels::lanes(wishes, range, lanes, reach);
    let enough = (1..MOST_LANES).map(with).find(|slots| slots.iter().all(Option::is_some));
    enough.unwrap_or_else(|| with(MOST_LANES))
}

fn lanes_of(points: &[Point]) -> usize {
    points.iter().map(|point| point.slot.lane + 1).max().unwrap_or(0)
}

/// A triangle at the bar, up for raising and down for lowering, with its number away from the bar.
fn mark(svg: &mut Svg, points: &[Point], bar: f64, above: bool) {
    for point in points {
        let (base, tip) = match (above, point.raises) {
            (true, true) => (bar - 1.0, bar - 1.0 - SIGN * 1.6),
            (true, false) => (bar - 1.0 - SIGN * 1.6, bar - 1.0),
            (false, true) => (bar + 1.0 + SIGN * 1.6, bar + 1.0),
            (false, false) => (bar + 1.0, bar + 1.0 + SIGN * 1.6),
        };
        let sign = [at(point.x - SIGN, base), at(point.x + SIGN, base), at(point.x, tip)];
        let edge = solid("#111", 1.2);
        svg.polygon(&sign, if point.raises { "#111" } else { "#fff" }, Some(edge));
        let lane = point.slot.lane as f64;
        let foot = if above {
            bar - SIGN * 1.6 - 3.0 - lane * NUMBER
        } else {
            bar + SIGN * 1.6 + 1.0 + NUMBER * 0.85 + lane * NUMBER
        };
        let middle = point.slot.left + point.width / 2.0;
        let look = Type::of_size(NUMBER).bold().anchored(Anchor::Middle);
        svg.text(at(middle, foot), &point.number, look);
    }
}

/// Chainage at both ends.
fn ends(svg: &mut Svg, route: &RouteView, axis: f64, words: Words<'_>) {
    let [Some(first), Some(last)] = [route.legs.first(), route.legs.last()] else { return };
    let shown = |km: f64| chainage(words.format, km, Round::Nearest).to_string();
    let ends = format!("{} – {}", shown(first.from_km), shown(last.to_km));
    let look = Type::of_size(TEXT).anchored(Anchor::End);
    svg.text(at(WIDTH - MARGIN, axis - 2.0), &ends, look);
}

fn present(route: &RouteView) -> impl Iterator<Item = &'static Surface> {
    const ALL: &[Surface] = &SURFACES;
    let occurs =
        |surface: &&Surface| route.legs.iter().any(|leg: &LegView| leg.surface == surface.word);
    ALL.iter().filter(occurs)
}

/// Surfaces with the place of their swatch and their line.
fn legend(route: &RouteView, words: Words<'_>) -> Vec<(&'static Surface, f64, f64)> {
    let (mut left, mut line) = (MARGIN, 0.0);
    let mut placed = Vec::new();
    for surface in present(route) {
        let width = 26.0 + labels::width(&words.text(surface.key), TEXT, false) + 14.0;
        if left + width > WIDTH && left > MARGIN {
            (left, line) = (MARGIN, line + 1.0);
        }
        placed.push((surface, left, line));
        left += width;
    }
    placed
}

/// Names of landmarks under the strip.
struct Names<'a> {
    placed: Vec<(f64, String, Slot, f64, &'a str)>,
    lanes: usize,
}

impl<'a> Names<'a> {
    fn of(route: &'a RouteView, x: Scale) -> Self {
        let names: Vec<(f64, String, &str)> = route
            .marks
            .iter()
            .map(|mark| {
                let name = labels::fitted(&mark.name, WIDTH / 3.0, TEXT, false);
                (x.at(mark.km), name, &*mark.kind)
            })
            .collect();
        let wishes: Vec<Wish> = names
            .iter()
            .map(|(x, name, _)| {
                let width = labels::width(name, TEXT, false);
                Wish { left: x - width / 2.0, width }
            })
            .collect();
        let slots = placed(&wishes, WIDTH / 6.0);
        let placed: Vec<_> = names
            .into_iter()
            .zip(&wishes)
            .zip(slots)
            .filter_map(|(((x, name, kind), wish), slot)| Some((x, name, slot?, wish.width, kind)))
            .collect();
        let lanes = placed.iter().map(|(_, _, slot, ..)| slot.lane + 1).max().unwrap_or(0);
        Self { placed, lanes }
    }

    fn draw(&self, svg: &mut Svg, (top, bottom): (f64, f64), names_top: f64) {
        for (x, name, slot, width, kind) in &self.placed {
            let base = names_top + slot.lane as f64 * LINE + TEXT;
            let foot = x.clamp(slot.left, slot.left + width);
            let line = solid("#777", 0.7);
            svg.polyline(&[at(*x, bottom), at(*x, names_top), at(foot, base - TEXT + 1.0)], line);
            svg.line(at(*x, top), at(*x, bottom), solid("#111", 2.0));
            let frame = Frame {
                left: slot.left - 1.0,
                top: base - TEXT + 1.0,
                right: slot.left + width + 1.0,
                bottom: base + 3.0,
            };
            svg.rect(frame, "#fff", None);
            let look = Type::of_size(TEXT);
            svg.text(at(slot.left, base), name, if *kind == "lay-by" { look.bold() } else { look });
        }
    }
}
