//! From points as written to places: exchanged, impossible, repeated and jumping points.

use quantity::Length;

use super::Position;
use super::finding::{Place, TrackFinding};
use super::raw::{Line, Raw, RawPoint};

/// Steps shorter than this are never a jump.
const LEAST_JUMP: Length = Length::from_m(200.0);
/// A jump is this many times longer than the middle step of its line.
const JUMP_OVER_STEP: f64 = 10.0;
/// Most points in a row that count as one jump there and back.
const ISLAND: usize = 5;
/// Fewest points of a line in which jumps can be told from bends.
const ENOUGH: usize = 8;
/// Places closer than this are the same place.
const SAME_PLACE: Length = Length::from_mm(10.0);

/// A point whose place is settled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Placed {
    pub place: Place,
    pub position: Position,
    pub elevation: Option<f64>,
    /// Only exchanging latitude and longitude made it a place: it must fit its neighbors.
    doubtful: bool,
}

/// A line of settled points.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct PlacedLine {
    pub name: Option<String>,
    pub recording: usize,
    pub points: Vec<Placed>,
}

/// Settles the points of every line; what was left out or changed goes to the findings.
pub(super) fn settle(raw: &mut Raw) -> Vec<PlacedLine> {
    let exchange_all = exchanged_throughout(raw);
    let mut tally = Tally::default();
    let lines = raw.lines.iter().map(|line| {
        let mut points = in_range(line, exchange_all, &mut tally);
        merge_repeated(&mut points, &mut tally);
        let mut points = leave_out_islands(&points, &mut tally);
        leave_out_ends(&mut points, &mut tally);
        PlacedLine { name: line.name.clone(), recording: line.recording, points }
    });
    let lines = lines.collect();
    if exchange_all {
        raw.findings.push(TrackFinding::ExchangedThroughout { points: raw.count });
    }
    raw.findings.extend(tally.out_of_range.into_iter().chain(tally.exchanged));
    raw.findings.extend(tally.jump.into_iter().chain(tally.repeated));
    lines
}

/// What happened to single points, each kind with its first place and a count.
#[derive(Default)]
struct Tally {
    out_of_range: Option<TrackFinding>,
    exchanged: Option<TrackFinding>,
    jump: Option<TrackFinding>,
    repeated: Option<TrackFinding>,
}

fn add(slot: &mut Option<TrackFinding>, first: impl FnOnce() -> TrackFinding) {
    match slot {
        Some(
            TrackFinding::OutOfRange { count, .. }
            | TrackFinding::Exchanged { count, .. }
            | TrackFinding::Jump { count, .. }
            | TrackFinding::Repeated { count, .. },
        ) => *count += 1,
        _ => *slot = Some(first()),
    }
}

impl Tally {
    fn out_of_range(&mut self, point: &RawPoint) {
        let value = format!("{}, {}", point.latitude, point.longitude);
        add(&mut self.out_of_range, || TrackFinding::OutOfRange {
            first: point.place,
            value,
            count: 1,
        });
    }

    fn exchanged(&mut self, first: Place) {
        add(&mut self.exchanged, || TrackFinding::Exchanged { first, count: 1 });
    }

    fn jump(&mut self, first: Place, off: Length) {
        add(&mut self.jump, || TrackFinding::Jump { first, off, count: 1 });
    }

    fn repeated(&mut self, first: Place) {
        add(&mut self.repeated, || TrackFinding::Repeated { first, count: 1 });
    }
}

/// Whether most points are places only with latitude and longitude exchanged.
///
/// # Validity
/// Only tracks beyond 90 degrees of longitude show it; nearer ones look like another place on earth.
fn exchanged_throughout(raw: &Raw) -> bool {
    let points = || raw.lines.iter().flat_map(|line| &line.points);
    let only_exchanged = |point: &&RawPoint| {
        Position::from_degrees(point.latitude, point.longitude).is_none()
            && Position::from_degrees(point.longitude, point.latitude).is_some()
    };
    2 * points().filter(only_exchanged).count() > points().count()
}

fn in_range(line: &Line, exchange_all: bool, tally: &mut Tally) -> Vec<Placed> {
    let mut placed = Vec::with_capacity(line.points.len());
    for point in &line.points {
        let (a, b) = (point.latitude, point.longitude);
        let (a, b) = if exchange_all { (b, a) } else { (a, b) };
        let straight = Position::from_degrees(a, b);
        let settled = straight.or_else(|| Position::from_degrees(b, a));
        match settled {
            Some(position) => placed.push(Placed {
                place: point.place,
                position,
                elevation: point.elevation.filter(|value| value.is_finite()),
                doubtful: straight.is_none(),
            }),
            None => tally.out_of_range(point),
        }
    }
    placed
}

fn merge_repeated(points: &mut Vec<Placed>, tally: &mut Tally) {
    points.dedup_by(|next, kept| {
        let same = next.position.distance_to(kept.position) < SAME_PLACE;
        if same {
            kept.elevation = kept.elevation.or(next.elevation);
            tally.repeated(next.place);
        }
        same
    });
}

fn apart(a: &Placed, b: &Placed) -> Length {
    a.position.distance_to(b.position)
}

/// Length from which a step of this line is a leap.
fn leap(points: &[Placed]) -> Length {
    let mut steps: Vec<Length> = points.windows(2).map(|pair| apart(&pair[0], &pair[1])).collect();
    if steps.is_empty() {
        return LEAST_JUMP;
    }
    let middle = steps.len() / 2;
    let (_, median, _) = steps.select_nth_unstable_by(middle, Length::total_cmp);
    (*median * JUMP_OVER_STEP).max(LEAST_JUMP)
}

/// Takes out short runs that the line leaps to and back from; a point that fits when latitude and
/// longitude are exchanged is put right instead.
fn leave_out_islands(points: &[Placed], tally: &mut Tally) -> Vec<Placed> {
    let leap = leap(points);
    let enough = points.len() >= ENOUGH;
    let mut kept: Vec<Placed> = Vec::with_capacity(points.len());
    let mut i = 0;
    while i < points.len() {
        let point = points[i];
        let Some(before) = kept.last().copied() else {
            kept.push(point);
            i += 1;
            continue;
        };
        let off = apart(&before, &point);
        if point.doubtful && off <= leap {
            tally.exchanged(point.place);
        } else if off > leap
            && let Some(position) = point.position.exchanged()
            && position.distance_to(before.position) <= leap
        {
            tally.exchanged(point.place);
            kept.push(Placed { position, ..point });
            i += 1;
            continue;
        } else if off > leap && enough {
            let ends = i + 1..points.len().min(i + 1 + ISLAND);
            let back = ends.into_iter().find(|&end| {
                let home = apart(&points[end - 1], &points[end]);
                home > leap && apart(&before, &points[end]) < off.min(home) * 0.5
            });
            if let Some(end) = back {
                points[i..end].iter().for_each(|lost| tally.jump(lost.place, off));
                i = end;
                continue;
            }
        }
        kept.push(point);
        i += 1;
    }
    kept
}

/// Takes out a few points at either end that lie farther off than the rest of the line is long,
/// other leaps left aside.
fn leave_out_ends(points: &mut Vec<Placed>, tally: &mut Tally) {
    for _ in 0..2 {
        if points.len() >= ENOUGH {
            let leap = leap(points);
            let steps: Vec<Length> =
                points.windows(2).map(|pair| apart(&pair[0], &pair[1])).collect();
            let rest = |i: usize| steps[i + 1..].iter().copied().filter(|step| *step <= leap).sum();
            let far = (0..ISLAND.min(steps.len())).find(|&i| steps[i] > leap.max(rest(i)));
            if let Some(i) = far {
                points.drain(..=i).for_each(|lost| tally.jump(lost.place, steps[i]));
            }
        }
        points.reverse();
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::track::finding::Format;

    /// A line of points about 14 m apart.
    fn raw(change: impl Fn(usize, &mut RawPoint)) -> Raw {
        let mut raw = Raw::new(Format::Gpx);
        for i in 0..60_u32 {
            let place = raw.next_place(None);
            let step = f64::from(i) * 1e-4;
            let mut point = RawPoint {
                place,
                latitude: 50.0 + step,
                longitude: -110.0 - step,
                elevation: None,
            };
            change(i as usize, &mut point);
            raw.push(point);
        }
        raw
    }

    fn settled(mut raw: Raw) -> (usize, Vec<String>) {
        let lines = settle(&mut raw);
        (lines[0].points.len(), raw.findings.iter().map(ToString::to_string).collect())
    }

    #[test]
    fn a_sound_line_is_left_alone() {
        assert_eq!(settled(raw(|_, _| ())), (60, vec![]));
    }

    #[test]
    fn exchanged_coordinates_are_put_right_and_told() {
        let swap = |point: &mut RawPoint| std::mem::swap(&mut point.latitude, &mut point.longitude);
        let (left, told) = settled(raw(|_, point| swap(point)));
        assert_eq!(left, 60);
        assert!(told[0].starts_with("latitude and longitude are exchanged throughout"), "{told:?}");
        let (left, told) = settled(raw(|i, point| {
            if i == 7 {
                swap(point);
            }
        }));
        assert_eq!(left, 60);
        assert_eq!(
            told,
            ["latitude and longitude exchanged at 1 points, first point 8; put right"]
        );
    }

    #[test]
    fn a_leap_that_ends_when_exchanged_is_an_exchange() {
        let near = |i: usize, point: &mut RawPoint| {
            point.longitude = 10.0 + (point.latitude - 50.0);
            if i == 20 || i == 21 {
                std::mem::swap(&mut point.latitude, &mut point.longitude);
            }
        };
        let (left, told) = settled(raw(near));
        assert_eq!((left, told.len()), (60, 1));
        assert!(told[0].contains("exchanged at 2 points, first point 21"), "{told:?}");
    }

    #[test]
    fn jumps_inside_and_at_the_ends_are_left_out_with_a_count() {
        let (left, told) = settled(raw(|i, point| {
            if [0, 30, 31, 59].contains(&i) {
                (point.latitude, point.longitude) = (0.0, 0.0);
            }
        }));
        assert_eq!(left, 56);
        assert!(
            told[0].starts_with("3 jumping points left out") || told[0].starts_with("4 jumping"),
            "{told:?}"
        );
    }

    #[test]
    fn a_bend_and_a_long_straight_are_no_jumps() {
        let (left, told) = settled(raw(|i, point| {
            if i >= 30 {
                point.latitude += 0.05;
            }
        }));
        assert_eq!((left, told.len()), (60, 0));
    }

    #[test]
    fn no_place_on_earth_is_left_out() {
        let (left, told) = settled(raw(|i, point| {
            if i == 3 {
                point.longitude = 200.0;
            }
        }));
        assert_eq!(left, 59);
        assert_eq!(told, ["1 points left out: no place on earth, first '50.0003, 200' at point 4"]);
    }

    proptest! {
        #[test]
        fn every_point_is_kept_or_told(bad in prop::collection::btree_map(0_usize..60, (-100.0..100.0, -200.0..200.0), 0..6)) {
            let mut raw = raw(|i, point| {
                if let Some(&(latitude, longitude)) = bad.get(&i) {
                    (point.latitude, point.longitude) = (latitude, longitude);
                }
            });
            let lines = settle(&mut raw);
            let told: usize = raw.findings.iter().map(|finding| match finding {
                TrackFinding::OutOfRange { count, .. } | TrackFinding::Jump { count, .. } | TrackFinding::Repeated { count, .. } => *count,
                _ => 0,
            }).sum();
            prop_assert_eq!(lines[0].points.len() + told, 60);
        }
    }
}
