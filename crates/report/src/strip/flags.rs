//! Change points: a line through all panels, a shaded span to where the change must be
//! complete, and a flag; where flags are too many, a number on the flag and a list below.

use language::Round;
use view::MarkView;

use super::check::ChartError;
use super::half::Half;
use super::labels::{self, Slot, Wish};
use super::layout::{Columns, LINE, MARGIN, NORMAL, Rows, SMALL, WIDTH};
use super::reader::Reader;
use super::scale::Scale;
use crate::svg::{Frame, Stroke, Svg, Type, at, solid};

pub(crate) const SPAN: &str = "#dedede";
pub(crate) const POLE: Stroke = solid("#111", 1.2);
pub(crate) const COMPLETE: Stroke = Stroke { color: "#111", width: 0.9, dash: "2 3" };

/// Lanes of whole flags before they become numbers.
const WHOLE_LANES: usize = 3;
/// A whole flag lies at most this far from its line.
const REACH: f64 = 120.0;
const FLAG: f64 = 235.0;
const WHOLE_HEIGHT: f64 = 34.0;
const NUMBER_HEIGHT: f64 = 17.0;
const LIST_COLUMNS: usize = 3;

/// A flag of a change point.
struct Flag<'a> {
    half: usize,
    mark: &'a MarkView,
    words: [String; 2],
    slot: Slot,
    width: f64,
}

/// The flags of both halves.
pub(crate) struct Flags<'a> {
    all: Vec<Flag<'a>>,
    numbered: bool,
    lanes: usize,
}

impl<'a> Flags<'a> {
    /// Puts the flags above the panels.
    pub(crate) fn place(
        reader: Reader<'_>,
        halves: &[Half<'a>; 2],
        x: &[Scale; 2],
    ) -> Result<Self, ChartError> {
        let mut marks = Vec::new();
        for (half, run) in halves.iter().enumerate() {
            for &mark in &run.changes {
                marks.push((half, mark, words(reader, run, mark)?));
            }
        }
        let whole = |words: &[String; 2]| {
            let width = labels::width(&words[0], NORMAL, true);
            width.max(labels::width(&words[1], SMALL, false)) + 10.0
        };
        let count = marks.len();
        let number = |_: &[String; 2]| labels::width(&format!("{count}↑"), SMALL, true) + 6.0;
        let placed = slots(reader, &marks, x, WHOLE_LANES, REACH, whole);
        let numbered = placed.is_none();
        let slots = placed
            .or_else(|| {
                let far = f64::INFINITY;
                (1..=count).find_map(|lanes| slots(reader, &marks, x, lanes, far, number))
            })
            .expect("each flag fits a lane of its own");
        let flags: Vec<_> = marks
            .into_iter()
            .zip(slots)
            .map(|((half, mark, words), slot)| {
                let width = if numbered { number(&words) } else { whole(&words) };
                Flag { half, mark, words, slot, width }
            })
            .collect();
        let lanes = flags.iter().map(|flag| flag.slot.lane + 1).max().unwrap_or(0);
        Ok(Self { all: flags, numbered, lanes })
    }

    /// Height of the row of flags.
    pub(crate) fn height(&self) -> f64 {
        self.lanes as f64 * (self.flag_height() + 3.0)
    }

    /// Height of the list below the panels.
    pub(crate) fn list_height(&self) -> f64 {
        let lines = self.all.len().div_ceil(LIST_COLUMNS) as f64 + 2.5;
        if self.numbered { lines * LINE } else { 0.0 }
    }

    fn flag_height(&self) -> f64 {
        if self.numbered { NUMBER_HEIGHT } else { WHOLE_HEIGHT }
    }

    /// Shades from each change point to where it must be complete.
    pub(crate) fn spans(&self, svg: &mut Svg, reader: Reader<'_>, x: &[Scale; 2], rows: &Rows) {
        for flag in &self.all {
            let Some(reach) = flag.mark.reach_by_km else { continue };
            let scale = x[flag.half];
            let (from, to) =
                (scale.at(reader.chainage(flag.mark.km)), scale.at(reader.chainage(reach)));
            for (top, bottom) in [rows.elevation, rows.speed, rows.pressure, rows.supply] {
                let frame = Frame { left: from.min(to), top, right: from.max(to), bottom };
                svg.rect(frame, SPAN, None);
            }
        }
    }

    /// Draws the lines through all panels.
    pub(crate) fn poles(&self, svg: &mut Svg, reader: Reader<'_>, x: &[Scale; 2], rows: &Rows) {
        let bottom = rows.supply.1;
        for flag in &self.all {
            let scale = x[flag.half];
            let pole = scale.at(reader.chainage(flag.mark.km));
            let frame = self.frame(flag, rows);
            let foot = pole.clamp(frame.left, frame.right);
            svg.polyline(
                &[at(foot, frame.bottom), at(pole, rows.flags.1 + 2.0), at(pole, bottom)],
                POLE,
            );
            if let Some(reach) = flag.mark.reach_by_km {
                let end = scale.at(reader.chainage(reach));
                svg.line(at(end, rows.elevation.0), at(end, bottom), COMPLETE);
            }
        }
    }

    /// Draws the flags.
    pub(crate) fn draw(&self, svg: &mut Svg, rows: &Rows) {
        for (index, flag) in self.all.iter().enumerate() {
            let frame = self.frame(flag, rows);
            let raise = flag.mark.kind == "raise";
            let (ground, ink) = if raise { ("#111", "#fff") } else { ("#fff", "#111") };
            svg.rect(frame, ground, Some(solid("#111", 1.2)));
            let look = Type::of_size(NORMAL).bold().colored(ink);
            let left = frame.left + 5.0;
            if self.numbered {
                let arrow = arrow(flag.mark);
                let small = Type { size: SMALL, ..look };
                let place = at(frame.left + 3.0, frame.bottom - 5.0);
                svg.text(place, &format!("{}{arrow}", index + 1), small);
            } else {
                svg.text(at(left, frame.top + 14.0), &flag.words[0], look);
                let second = Type::of_size(SMALL).colored(ink);
                svg.text(at(left, frame.top + 28.0), &flag.words[1], second);
            }
        }
    }

    /// Writes the list that the numbers on the flags point to.
    pub(crate) fn list(
        &self,
        svg: &mut Svg,
        reader: Reader<'_>,
        top: f64,
    ) -> Result<(), ChartError> {
        if !self.numbered {
            return Ok(());
        }
        let heading = reader.word("chart-flag-list")?;
        svg.text(at(MARGIN, top + 12.0), &heading, Type::of_size(NORMAL).bold());
        let lines = self.all.len().div_ceil(LIST_COLUMNS);
        let column = (WIDTH - 2.0 * MARGIN) / LIST_COLUMNS as f64;
        for (index, flag) in self.all.iter().enumerate() {
            let left = MARGIN + (index / lines) as f64 * column;
            let y = top + 12.0 + (index % lines + 1) as f64 * LINE;
            let [what, place] = &flag.words;
            let text = format!("{} {what}: {place}", index + 1);
            let text = labels::fitted(&text, column - 12.0, SMALL, false);
            svg.text(at(left, y), &text, Type::of_size(SMALL));
        }
        Ok(())
    }

    fn frame(&self, flag: &Flag<'_>, rows: &Rows) -> Frame {
        let height = self.flag_height();
        let top = rows.flags.0 + flag.slot.lane as f64 * (height + 3.0);
        let left = flag.slot.left;
        Frame { left, top, right: left + flag.width, bottom: top + height }
    }
}

fn arrow(mark: &MarkView) -> &'static str {
    if mark.kind == "raise" { "↑" } else { "↓" }
}

fn words(reader: Reader<'_>, half: &Half<'_>, mark: &MarkView) -> Result<[String; 2], ChartError> {
    let key = if mark.kind == "raise" { "plan-start-raising" } else { "plan-start-lowering" };
    let start = format!("{} {} ", reader.word(key)?, arrow(mark));
    let room = FLAG - 10.0 - labels::width(&start, NORMAL, true);
    let first = start + &labels::fitted(&mark.name, room, NORMAL, true);
    // A place read from paper must not be later on the way than the place computed.
    let round = if half.forward { Round::Down } else { Round::Up };
    let from = reader.place(mark.km, round);
    let second = match mark.reach_by_km {
        Some(reach) => {
            let to = reader.place(reach, round);
            reader.filled("chart-flag-place", &[("from", from.into()), ("to", to.into())])?
        }
        None => reader.filled("chart-flag-place-open", &[("from", from.into())])?,
    };
    Ok([first, second])
}

/// Slots for all flags, or `None` where they need more lanes or more reach.
fn slots(
    reader: Reader<'_>,
    marks: &[(usize, &MarkView, [String; 2])],
    x: &[Scale; 2],
    lanes: usize,
    reach: f64,
    width: impl Fn(&[String; 2]) -> f64,
) -> Option<Vec<Slot>> {
    let mut slots = Vec::new();
    for (half, x) in x.iter().enumerate() {
        let wishes: Vec<_> = marks
            .iter()
            .filter(|(of, ..)| *of == half)
            .map(|(_, mark, words)| Wish {
                left: x.at(reader.chainage(mark.km)),
                width: width(words),
            })
            .collect();
        let columns = Columns::of(half == 1);
        slots.extend(labels::lanes(&wishes, (columns.left, columns.right), lanes, reach));
    }
    slots.into_iter().collect()
}
