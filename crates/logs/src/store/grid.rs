//! The grid of seconds: for each signal the last, lowest and highest number of each second, and what the
//! last is worth.

use std::collections::BTreeMap;
use std::path::Path;

use arrow_array::{ArrayRef, UInt32Array};
use arrow_schema::Field;

use super::column::{QUALITY, Storage, numbers, qualities, quality};
use super::file::Target;
use super::import::{Choice, ImportError};
use super::native::{time_field, times};
use super::route::{Day, Fix, OnRoute, RouteTold};
use crate::definitions::Definitions;
use crate::frame::Timestamp;
use crate::identifier::SourceAddress;
use crate::measured::Measured;
use crate::read::Lane;
use crate::read::clock::day_of;
use crate::series::Quality;
use crate::signal::{Coding, Group, Rate, Signal, Spn};

/// A number is stale after three times its interval, and not before this many seconds.
const STALE_AFTER_S: i64 = 3;
const LATITUDE: Spn = Spn(584);
const LONGITUDE: Spn = Spn(585);
const WHEEL_SPEED: Spn = Spn(84);
/// Most columns of a grid; a flood of locations is counted beyond.
const MOST_CELLS: usize = 512;

/// What a signal did in a second in which it was sent.
#[derive(Debug, Clone, Copy)]
struct Second {
    at: i64,
    last: u32,
    min: u32,
    max: u32,
    quality: Quality,
}

/// Seconds of the signals of one group, of one sender and location.
type Cell = Vec<Vec<Second>>;

/// Seconds of one group.
#[derive(Default)]
pub struct GroupGrid {
    cells: BTreeMap<(SourceAddress, Option<u32>), Cell>,
    /// Rows that found no place: too many locations, or a second that was over.
    pub lost: u64,
}

impl GroupGrid {
    /// Takes the rows of a stretch.
    pub fn take(&mut self, group: &Group, lane: &Lane) {
        for row in &lane.rows {
            let raw = |signal: &Signal| signal.raw_of_word(row.word, row.length);
            self.row(group, row.time, row.source, raw);
        }
        for row in &lane.long {
            self.row(group, row.time, row.source, |signal| signal.raw(&row.data));
        }
    }

    fn row(
        &mut self,
        group: &Group,
        time: Timestamp,
        source: SourceAddress,
        raw: impl Fn(&Signal) -> Option<u32>,
    ) {
        let location = group.location_signal().and_then(&raw);
        let full = self.cells.len() >= MOST_CELLS;
        let key = (source, location);
        if full && !self.cells.contains_key(&key) {
            self.lost += 1;
            return;
        }
        let cell = self.cells.entry(key).or_insert_with(|| vec![Vec::new(); group.signals.len()]);
        let second = time.second();
        for (seconds, signal) in cell.iter_mut().zip(group.signals.iter()) {
            let Some(raw) = raw(signal) else { continue };
            let worth = quality(signal, raw);
            // A signal that never had a value needs no memory.
            if seconds.is_empty() && matches!(worth, Quality::Absent | Quality::Reserved) {
                continue;
            }
            if !see(seconds, signal, second, raw, worth) {
                self.lost += 1;
            }
        }
    }

    /// Seconds before one, taken out.
    fn before(&mut self, end: i64) -> BTreeMap<(SourceAddress, Option<u32>), Cell> {
        let take = |seconds: &mut Vec<Second>| {
            let at = seconds.partition_point(|one| one.at < end);
            let rest = seconds.split_off(at);
            std::mem::replace(seconds, rest)
        };
        let cells = self.cells.iter_mut();
        cells.map(|(key, cell)| (*key, cell.iter_mut().map(take).collect())).collect()
    }
}

/// Order of raw numbers by what they mean.
fn rank(signal: &Signal, raw: u32) -> u32 {
    match signal.coding {
        Coding::Signed { .. } => raw ^ 1 << (signal.bits - 1),
        _ => raw,
    }
}

/// Notes a number; `false` where its second is over.
fn see(seconds: &mut Vec<Second>, signal: &Signal, second: i64, raw: u32, worth: Quality) -> bool {
    match seconds.last_mut() {
        Some(now) if now.at == second => {
            if worth == Quality::Value {
                if now.quality == Quality::Value {
                    if rank(signal, raw) < rank(signal, now.min) {
                        now.min = raw;
                    }
                    if rank(signal, raw) > rank(signal, now.max) {
                        now.max = raw;
                    }
                } else {
                    (now.min, now.max) = (raw, raw);
                }
                now.last = raw;
            }
            now.quality = worth;
            true
        }
        Some(now) if now.at > second => false,
        _ => {
            seconds.push(Second { at: second, last: raw, min: raw, max: raw, quality: worth });
            true
        }
    }
}

/// One column of the grid, chosen among its senders.
struct Chosen<'a> {
    name: String,
    signal: &'a Signal,
    source: SourceAddress,
    stale_s: i64,
    seconds: &'a [Second],
}

impl Chosen<'_> {
    fn measured(&self) -> Option<Measured> {
        Measured::of(self.signal.spn)
    }
}

/// The earliest second that waits to be written.
pub fn earliest(grids: &[GroupGrid]) -> Option<i64> {
    let cells = grids.iter().flat_map(|grid| grid.cells.values()).flatten();
    cells.filter_map(|seconds| seconds.first()).map(|one| one.at).min()
}

/// Drops the seconds before one: their file is closed already. Gives how many there were.
pub fn drop_before(grids: &mut [GroupGrid], end: i64) -> u64 {
    let taken = grids.iter_mut().flat_map(|grid| grid.before(end).into_values()).flatten();
    taken.map(|seconds| seconds.len() as u64).sum()
}

/// A day that was written, its file still open for the metadata.
pub struct Written {
    /// The file.
    pub file: Target,
    /// What its columns hold.
    pub notes: Vec<String>,
    /// How its pressures of tires came to be.
    pub measured: Vec<String>,
    /// What the drive did on the route.
    pub route: RouteTold,
}

/// Writes the seconds before `end`, all of one day, into a file; nothing where there were none.
pub fn write_day(
    folder: &Path,
    grids: &mut [GroupGrid],
    definitions: &Definitions,
    choice: &Choice,
    on_route: Option<&OnRoute<'_>>,
    end: i64,
) -> Result<Option<Written>, ImportError> {
    let taken: Vec<_> = grids.iter_mut().map(|grid| grid.before(end)).collect();
    let all = || taken.iter().flat_map(BTreeMap::values).flatten().flatten();
    let Some(first) = all().map(|one| one.at).min() else { return Ok(None) };
    let last = all().map(|one| one.at).max().unwrap_or(first);
    let mut chosen = Vec::new();
    for (cells, group) in taken.iter().zip(definitions.groups()) {
        for at in 0..group.signals.len() {
            choose(&mut chosen, cells, group, at, choice);
        }
    }
    let mut fields = vec![time_field()];
    let mut columns: Vec<ArrayRef> =
        vec![times((first..=last).map(|second| second * 1_000_000).collect())];
    for column in &chosen {
        fields.extend(column_fields(&column.name, column.signal));
        columns.extend(column_arrays(column, first, last));
        if column.measured().is_some() {
            let name = format!("{}{AGE}", column.name);
            fields.push(Field::new(name, arrow_schema::DataType::UInt32, true));
            columns.push(std::sync::Arc::new(ages(column, first, last)));
        }
    }
    let day = on_route.map(|on_route| on_route_of(on_route, &chosen));
    if let Some(day) = &day {
        fields.extend(Day::fields());
        columns.extend(day.columns(first, last));
    }
    let date = day_of(Timestamp::from_us(first * 1_000_000));
    let path = folder.join("grid").join(format!("{date}.parquet"));
    let mut file = Target::create(&path, fields)?;
    file.write(columns)?;
    file.flush()?;
    let notes = chosen.iter().map(|one| {
        let unit = one.signal.unit.sign();
        format!("{}={},{unit},{}", one.name, one.signal.spn, one.source)
    });
    let of_route = day.iter().flat_map(|_| Day::notes());
    let notes = notes.chain(of_route).collect();
    let measured =
        chosen.iter().filter_map(|one| Some(format!("{}={}", one.name, one.measured()?)));
    let measured = measured.collect();
    Ok(Some(Written { file, notes, measured, route: day.map(|day| day.told).unwrap_or_default() }))
}

/// Positions of the chosen senders on the route, beside the speed of the wheels.
fn on_route_of(on_route: &OnRoute<'_>, chosen: &[Chosen<'_>]) -> Day {
    let numbers = |spn| {
        let column = chosen.iter().find(|one| one.signal.spn == spn);
        let number = |one: &&Second| one.quality == Quality::Value;
        let seconds = column.into_iter().flat_map(|column| {
            let seconds = column.seconds.iter().filter(number);
            seconds.filter_map(|one| Some((one.at, column.signal.value_of(one.last).number()?)))
        });
        seconds.collect::<BTreeMap<i64, f64>>()
    };
    let longitudes = numbers(LONGITUDE);
    let fixes = numbers(LATITUDE).into_iter().filter_map(|(second, latitude_deg)| {
        let longitude_deg = *longitudes.get(&second)?;
        Some(Fix { second, latitude_deg, longitude_deg })
    });
    Day::of(on_route, &fixes.collect::<Vec<_>>(), &numbers(WHEEL_SPEED))
}

fn choose<'a>(
    chosen: &mut Vec<Chosen<'a>>,
    cells: &'a BTreeMap<(SourceAddress, Option<u32>), Cell>,
    group: &'a Group,
    at: usize,
    choice: &Choice,
) {
    let signal = &group.signals[at];
    let mut by_location: BTreeMap<Option<u32>, Vec<(SourceAddress, &[Second])>> = BTreeMap::new();
    for ((source, location), cell) in cells {
        if !cell[at].is_empty() {
            by_location.entry(*location).or_default().push((*source, &cell[at]));
        }
    }
    let stale_s = match group.rate {
        Rate::EveryMs(ms) => (3 * i64::from(ms)).div_euclid(1_000).max(STALE_AFTER_S),
        Rate::OnRequest => 0,
    };
    for (location, senders) in by_location {
        let values =
            |seconds: &[Second]| seconds.iter().filter(|one| one.quality == Quality::Value).count();
        // The register's order goes first; then who had most values, the lower address of equals.
        let best = senders.into_iter().max_by_key(|(source, seconds)| {
            let had = values(seconds);
            let place = choice.sources.iter().position(|known| known == source);
            let listed = place.filter(|_| had > 0).map(|place| usize::MAX - place);
            (listed, had, std::cmp::Reverse(*source))
        });
        let Some((source, seconds)) = best else { continue };
        let place = location.map_or_else(String::new, |place| format!("_at_{place:02x}"));
        let name = format!("{}{place}", signal.name);
        chosen.push(Chosen { name, signal, source, stale_s, seconds });
    }
}

fn column_fields(name: &str, signal: &Signal) -> [Field; 4] {
    let data_type = Storage::of(signal).data_type();
    [
        Field::new(name, data_type.clone(), true),
        Field::new(format!("{name}_min"), data_type.clone(), true),
        Field::new(format!("{name}_max"), data_type, true),
        Field::new(format!("{name}{QUALITY}"), arrow_schema::DataType::UInt8, false),
    ]
}

/// Ending of the column that says how many seconds old a number is.
const AGE: &str = "_age";

/// Seconds since the signal last had a value; null before it had one.
fn ages(column: &Chosen<'_>, first: i64, last: i64) -> UInt32Array {
    let values = column.seconds.iter().filter(|one| one.quality == Quality::Value);
    let mut values = values.filter(|one| one.at >= first).peekable();
    let mut had = None;
    (first..=last)
        .map(|second| {
            if let Some(one) = values.next_if(|one| one.at == second) {
                had = Some(one.at);
            }
            u32::try_from(second - had?).ok()
        })
        .collect()
}

fn column_arrays(column: &Chosen<'_>, first: i64, last: i64) -> [ArrayRef; 4] {
    let rows = usize::try_from(last - first + 1).unwrap_or(0);
    let mut raws = [vec![0; rows], vec![0; rows], vec![0; rows]];
    let mut worth = vec![Quality::NeverSent.byte(); rows];
    let mut known = vec![false; rows];
    let mut sent = column.seconds.iter().filter(|one| one.at >= first).peekable();
    let mut held: Option<(Second, Option<u32>)> = None;
    for (row, second) in (first..=last).enumerate() {
        if let Some(one) = sent.next_if(|one| one.at == second) {
            let value = one.quality == Quality::Value;
            let before = held.and_then(|(_, value)| value);
            held = Some((*one, if value { Some(one.last) } else { before }));
            worth[row] = one.quality.byte();
            if value {
                known[row] = true;
                (raws[0][row], raws[1][row], raws[2][row]) = (one.last, one.min, one.max);
            }
        } else if let Some((one, value)) = held {
            let stale = second - one.at > column.stale_s;
            let quality = if stale { Quality::Stale } else { one.quality };
            worth[row] = quality.byte();
            if let Some(value) = value.filter(|_| stale || one.quality == Quality::Value) {
                known[row] = true;
                (raws[0][row], raws[1][row], raws[2][row]) = (value, value, value);
            }
        }
    }
    let array = |raws: &[u32]| numbers(column.signal, raws, |row| known[row]);
    [array(&raws[0]), array(&raws[1]), array(&raws[2]), qualities(worth)]
}
