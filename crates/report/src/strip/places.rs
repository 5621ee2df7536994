//! Landmarks and lay-bys: a sign on the profile and a name above it.

use view::{MarkView, RunView};

use super::labels::{self, Slot, Wish};
use super::layout::{LINE, Panel, Rows, SMALL};
use super::panel;
use super::reader::Reader;
use super::scale::Scale;
use crate::svg::{Frame, Point, Stroke, Svg, Type, at, solid};

const TICK: Stroke = solid("#555", 0.8);
/// A name is at most this wide; the narrower where the wider leave some without room.
const NAMES: [f64; 3] = [150.0, 100.0, 62.0];
/// A name lies at most this far from its tick.
const REACH: f64 = 60.0;
const MAX_LANES: usize = 3;

/// A landmark or lay-by, its name as it fits, and where the name lies.
struct Place<'a> {
    mark: &'a MarkView,
    name: String,
    width: f64,
    slot: Option<Slot>,
}

/// Names of landmarks and lay-bys with their places.
pub(crate) struct Names<'a> {
    places: Vec<Place<'a>>,
    pub(crate) lanes: usize,
}

impl<'a> Names<'a> {
    /// Puts the names into lanes above the profile.
    pub(crate) fn place(run: &'a RunView, reader: Reader<'_>, x: Scale, plot: (f64, f64)) -> Self {
        let marks: Vec<_> = run
            .marks
            .iter()
            .filter(|mark| ["landmark", "lay-by"].contains(&mark.kind.as_str()))
            .collect();
        let tried = NAMES.map(|room| Self::within(&marks, reader, x, plot, room));
        let best = tried.into_iter().min_by_key(Self::hidden);
        best.expect("a width was tried")
    }

    /// The names, none wider than `room`.
    fn within(
        marks: &[&'a MarkView],
        reader: Reader<'_>,
        x: Scale,
        plot: (f64, f64),
        room: f64,
    ) -> Self {
        let (mut places, mut wishes) = (Vec::new(), Vec::new());
        for &mark in marks {
            let name = labels::fitted(&mark.name, room, SMALL, false);
            let width = labels::width(&name, SMALL, false);
            wishes.push(Wish { left: x.at(reader.chainage(mark.km)) - width / 2.0, width });
            places.push(Place { mark, name, width, slot: None });
        }
        let slots = labels::lanes(&wishes, plot, MAX_LANES, REACH);
        let lanes = slots.iter().flatten().map(|slot| slot.lane + 1).max().unwrap_or(0);
        for (place, slot) in places.iter_mut().zip(slots) {
            place.slot = slot;
        }
        Self { places, lanes }
    }

    /// How many names had no room.
    pub(crate) fn hidden(&self) -> usize {
        self.places.iter().filter(|place| place.slot.is_none()).count()
    }

    /// Draws the signs on the profile, each with a line up to its name.
    pub(crate) fn signs(
        &self,
        svg: &mut Svg,
        reader: Reader<'_>,
        (panel, rows): (&Panel, &Rows),
        profile: &[Point],
    ) {
        for Place { mark, width, slot, .. } in &self.places {
            let x = panel.x.at(reader.chainage(mark.km));
            let ground = height_at(profile, x).unwrap_or(panel.frame.bottom);
            sign(svg, &mark.kind, at(x, ground));
            let Some(slot) = slot else { continue };
            let foot = x.clamp(slot.left, slot.left + width);
            let below_name = at(foot, self.base(slot, rows) + 3.0);
            svg.polyline(&[below_name, at(x, panel.frame.top), at(x, ground - 7.0)], TICK);
        }
    }

    /// Foot of a name's letters; the first lane is the one nearest to the profile.
    fn base(&self, slot: &Slot, rows: &Rows) -> f64 {
        rows.names + (self.lanes - 1 - slot.lane) as f64 * LINE + 10.0
    }

    /// Writes the names.
    pub(crate) fn write(&self, svg: &mut Svg, rows: &Rows) {
        for place in &self.places {
            if let Some(slot) = &place.slot {
                let start = at(slot.left, self.base(slot, rows));
                panel::plated(svg, start, &place.name, Type::of_size(SMALL));
            }
        }
    }
}

/// Draws the sign of a landmark or a lay-by with its foot at a place.
pub(crate) fn sign(svg: &mut Svg, kind: &str, foot: Point) {
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
