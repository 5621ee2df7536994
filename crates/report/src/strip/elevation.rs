//! The elevation panel: profile, legs with their surfaces, landmarks and lay-bys.

use language::Kind;
use view::{LegView, MarkView, RunView};

use super::check::ChartError;
use super::labels::{self, Slot, Wish};
use super::layout::{LINE, NORMAL, Panel, Rows, SMALL};
use super::panel;
use super::reader::Reader;
use super::scale::Scale;
use crate::svg::{Anchor, Frame, Point, Stroke, Svg, Type, at, solid};

/// A surface: its word in the view, its text and its pattern.
pub(crate) struct Surface {
    pub(crate) word: &'static str,
    pub(crate) key: &'static str,
    pub(crate) fill: &'static str,
    id: &'static str,
    ground: &'static str,
    tile: (f64, f64),
    path: &'static str,
}

macro_rules! surface {
    ($word:literal, $id:literal, $ground:literal, $tile:expr, $path:literal) => {
        Surface {
            word: $word,
            key: concat!("chart-surface-", $id),
            fill: concat!("url(#strip-", $id, ")"),
            id: concat!("strip-", $id),
            ground: $ground,
            tile: $tile,
            path: $path,
        }
    };
}

/// Every surface, the firmest first.
pub(crate) const SURFACES: [Surface; 7] = [
    surface!("paved", "paved", "#8c8c8c", (8.0, 8.0), ""),
    surface!("sealed", "sealed", "#c4c4c4", (8.0, 6.0), "M0 3H8"),
    surface!("gravel", "gravel", "#fff", (7.0, 7.0), "M1 2H3M4.5 5.5H6.5"),
    surface!("earth", "earth", "#fff", (7.0, 7.0), "M-1 8L8 -1M-1 1L1 -1M6 8L8 6"),
    surface!("soft ground", "soft-ground", "#fff", (12.0, 6.0), "M0 3Q3 0 6 3T12 3"),
    surface!("sand", "sand", "#fff", (6.0, 6.0), "M1 1H2M4 4H5"),
    surface!(
        "snow or ice",
        "snow-or-ice",
        "#fff",
        (10.0, 10.0),
        "M5 2V8M2.4 3.5L7.6 6.5M7.6 3.5L2.4 6.5"
    ),
];

const PROFILE: Stroke = solid("#111", 1.6);
const TICK: Stroke = solid("#555", 0.8);
/// A name is at most this wide.
const NAME: f64 = 150.0;
/// A name lies at most this far from its tick.
const REACH: f64 = 60.0;
const MAX_LANES: usize = 3;

/// Surfaces that occur on the route.
pub(crate) fn present(run: &RunView) -> impl Iterator<Item = &'static Surface> {
    const ALL: &[Surface] = &SURFACES;
    ALL.iter().filter(|surface| run.legs.iter().any(|leg| leg.surface == surface.word))
}

/// Names of landmarks and lay-bys with their places.
pub(crate) struct Names<'a> {
    marks: Vec<(&'a MarkView, String, Option<Slot>)>,
    pub(crate) lanes: usize,
}

impl<'a> Names<'a> {
    /// Puts the names into lanes above the profile.
    pub(crate) fn place(run: &'a RunView, reader: Reader<'_>, x: Scale, plot: (f64, f64)) -> Self {
        let marks: Vec<_> = run
            .marks
            .iter()
            .filter(|mark| ["landmark", "lay-by"].contains(&mark.kind.as_str()))
            .map(|mark| (mark, labels::fitted(&mark.name, NAME, SMALL, false)))
            .collect();
        let wishes: Vec<_> = marks
            .iter()
            .map(|(mark, name)| {
                let width = labels::width(name, SMALL, false);
                Wish { left: x.at(reader.chainage(mark.km)) - width / 2.0, width }
            })
            .collect();
        let slots = labels::lanes(&wishes, plot, MAX_LANES, REACH);
        let lanes = slots.iter().flatten().map(|slot| slot.lane + 1).max().unwrap_or(0);
        let marks =
            marks.into_iter().zip(slots).map(|((mark, name), slot)| (mark, name, slot)).collect();
        Self { marks, lanes }
    }
}

/// Draws the panel.
pub(crate) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    (panel, rows): (&Panel, &Rows),
    names: &Names<'_>,
) -> Result<(), ChartError> {
    let frame = panel.frame;
    let heading = reader.heading("chart-elevation-and-surface", Kind::Span)?;
    panel::grid(svg, reader, panel, 4, "");
    panel::title(svg, at(frame.left, rows.names - 9.0), &heading);
    let profile: Vec<_> = run
        .elevation_km_m
        .iter()
        .map(|&(km, m)| at(panel.x.at(reader.chainage(km)), panel.y.at(reader.height(m))))
        .collect();
    if profile.is_empty() {
        let middle = at(f64::midpoint(frame.left, frame.right), frame.bottom - 40.0);
        let look = Type::of_size(NORMAL).anchored(Anchor::Middle);
        svg.text(middle, &reader.word("chart-no-elevation")?, look);
    } else {
        let (first, last) = (profile[0], profile[profile.len() - 1]);
        let ground = [at(last.x, frame.bottom), at(first.x, frame.bottom)];
        svg.polygon(&[&profile[..], &ground].concat(), "#ececec", None);
        svg.polyline(&profile, PROFILE);
    }
    let unnamed = legs(svg, reader, run, panel, rows)?;
    let hidden = unnamed + places(svg, reader, panel, rows, &profile, names);
    if hidden > 0 {
        let text = reader.filled("chart-names-hidden", &[("count", hidden.into())])?;
        let look = Type::of_size(SMALL).anchored(Anchor::End);
        svg.text(at(frame.right, rows.names - 9.0), &text, look);
    }
    Ok(())
}

/// Draws legs and surfaces; returns how many legs had no room for a name.
fn legs(
    svg: &mut Svg,
    reader: Reader<'_>,
    run: &RunView,
    panel: &Panel,
    rows: &Rows,
) -> Result<usize, ChartError> {
    let mut unnamed = 0;
    for leg in &run.legs {
        let (left, right) = ends(reader, panel, leg);
        let band = Frame { left, top: rows.surface.0, right, bottom: rows.surface.1 };
        let middle = f64::midpoint(left, right);
        let centered = Type::of_size(SMALL).anchored(Anchor::Middle);
        for surface in SURFACES.iter().filter(|surface| surface.word == leg.surface) {
            svg.rect(band, surface.fill, Some(TICK));
            let word = reader.word(surface.key)?;
            let width = labels::width(&word, SMALL, false) + 8.0;
            if width < band.width() - 6.0 {
                let half = width / 2.0;
                let (left, right) = (middle - half, middle + half);
                let plate = Frame { left, right, top: band.top + 2.0, bottom: band.bottom - 2.0 };
                svg.rect(plate, "#fff", None);
                svg.text(at(middle, band.bottom - 5.0), &word, centered);
            }
        }
        for x in [left, right] {
            svg.line(at(x, rows.legs.0 - 3.0), at(x, rows.surface.0), TICK);
        }
        let name = labels::fitted(&leg.name, band.width() - 6.0, SMALL, true);
        unnamed += usize::from(name.is_empty());
        svg.text(at(middle, rows.legs.1 - 4.5), &name, centered.bold());
    }
    Ok(unnamed)
}

fn ends(reader: Reader<'_>, panel: &Panel, leg: &LegView) -> (f64, f64) {
    (panel.x.at(reader.chainage(leg.from_km)), panel.x.at(reader.chainage(leg.to_km)))
}

/// Draws landmarks and lay-bys; returns how many had no room for a name.
fn places(
    svg: &mut Svg,
    reader: Reader<'_>,
    panel: &Panel,
    rows: &Rows,
    profile: &[Point],
    names: &Names<'_>,
) -> usize {
    let top = panel.frame.top;
    let look = Type::of_size(SMALL);
    for (mark, name, slot) in &names.marks {
        let x = panel.x.at(reader.chainage(mark.km));
        let ground = height_at(profile, x).unwrap_or(panel.frame.bottom);
        symbol(svg, &mark.kind, at(x, ground));
        let Some(slot) = slot else { continue };
        let width = labels::width(name, SMALL, false);
        let base = rows.names + slot.lane as f64 * LINE + 10.0;
        let foot = x.clamp(slot.left + 2.0, (slot.left + width - 2.0).max(slot.left + 2.0));
        svg.polyline(&[at(foot, base + 3.0), at(x, top), at(x, ground - 7.0)], TICK);
    }
    for (_, name, slot) in &names.marks {
        let Some(slot) = slot else { continue };
        let width = labels::width(name, SMALL, false);
        let base = rows.names + slot.lane as f64 * LINE + 10.0;
        let (left, right) = (slot.left - 1.0, slot.left + width + 1.0);
        svg.rect(Frame { left, right, top: base - 10.0, bottom: base + 3.0 }, "#fff", None);
        svg.text(at(slot.left, base), name, look);
    }
    names.marks.iter().filter(|(_, _, slot)| slot.is_none()).count()
}

/// Draws the sign of a landmark or a lay-by with its foot at a place.
pub(crate) fn symbol(svg: &mut Svg, kind: &str, foot: Point) {
    let Point { x, y } = foot;
    if kind == "landmark" {
        svg.polygon(&[at(x - 4.0, y - 7.0), at(x + 4.0, y - 7.0), foot], "#111", None);
    } else {
        let frame = Frame { left: x - 4.0, top: y - 8.0, right: x + 4.0, bottom: y };
        svg.rect(frame, "#fff", Some(solid("#111", 1.4)));
    }
}

fn height_at(profile: &[Point], x: f64) -> Option<f64> {
    let pair = profile.windows(2).find(|pair| pair[0].x <= x && x <= pair[1].x)?;
    let share = if pair[1].x > pair[0].x { (x - pair[0].x) / (pair[1].x - pair[0].x) } else { 0.0 };
    Some(pair[0].y + share * (pair[1].y - pair[0].y))
}

/// Makes the patterns of the surfaces that occur.
pub(crate) fn patterns(svg: &mut Svg, run: &RunView) {
    for surface in present(run) {
        svg.pattern(surface.id, surface.tile, surface.ground, surface.path);
    }
}
