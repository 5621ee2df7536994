//! What the records of a measurement file hold: data groups, their channel groups, and in the groups
//! of a CAN bus where identifier, length and data stand.
//!
//! Channel names are those of the bus logging standard: `CAN_DataFrame`, `CAN_RemoteFrame` and
//! `CAN_ErrorFrame`, each with channels such as `CAN_DataFrame.ID` under it.

use std::collections::{BTreeMap, BTreeSet};

use super::block::{Block, Fault, File};
use super::field::Field;
use crate::read::losses::{Loss, Losses, Place};

/// Channels deep under one another.
const DEEPEST: usize = 4;
/// Names of other signals that are told.
const TOLD: usize = 6;

/// When a record was seen.
#[derive(Debug, Clone, Copy)]
pub(super) struct Clock {
    /// `None` where the number of the record is its time.
    field: Option<Field>,
    offset: f64,
    factor: f64,
}

impl Clock {
    /// Nanoseconds since the start of the file; `None` where the record does not tell.
    pub(super) fn ns(&self, record: &[u8], number: u64) -> Option<i64> {
        #[expect(clippy::cast_precision_loss, reason = "records are fewer than 2^53")]
        let raw = match &self.field {
            Some(field) if field.is_invalid(record) => return None,
            Some(field) => field.number(record)?,
            None => number as f64,
        };
        let ns = ((self.offset + self.factor * raw) * 1e9).round();
        #[expect(clippy::cast_possible_truncation, reason = "bounded the line before")]
        (ns.abs() < 9.2e18).then_some(ns as i64)
    }
}

/// Where the data bytes of a frame are.
#[derive(Debug, Clone, Copy)]
pub(super) enum Bytes {
    /// In the record, so many at most.
    Here(Field),
    /// Among values of their own, at the place that the record tells; the link to them.
    Apart(Field, u64),
}

/// Where the parts of a frame stand in a record.
#[derive(Debug, Clone, Copy)]
pub(super) struct Layout {
    pub(super) clock: Clock,
    pub(super) bus: Option<Field>,
    pub(super) id: Field,
    pub(super) extended: Option<Field>,
    pub(super) flexible: Option<Field>,
    /// Bytes of data.
    pub(super) length: Option<Field>,
    /// Length as the bus codes it.
    pub(super) code: Option<Field>,
    pub(super) data: Bytes,
}

/// What the records of a channel group are.
#[derive(Debug, Clone)]
pub(super) enum Records {
    /// Data frames.
    Frames(Box<Layout>),
    /// One loss each, of this kind.
    Lost(Loss),
    /// Values of a channel of another group, each after its length.
    Values,
    /// Something else.
    Other,
}

/// A channel group.
#[derive(Debug, Clone)]
pub(super) struct Group {
    pub(super) at: u64,
    /// Number that its records begin with, where several groups share their data.
    pub(super) number: u64,
    /// How many records its writer counted.
    pub(super) count: u64,
    /// Bytes of a record, and of the marks of validity after them.
    pub(super) size: usize,
    pub(super) marks: usize,
    pub(super) records: Records,
}

/// A data group: channel groups that share their data.
#[derive(Debug, Clone, Default)]
pub(super) struct DataGroup {
    pub(super) data: u64,
    /// Bytes of the number that each record begins with.
    pub(super) number_bytes: usize,
    pub(super) groups: Vec<Group>,
}

/// What a file holds.
#[derive(Debug, Default)]
pub(super) struct Contents {
    pub(super) data_groups: Vec<DataGroup>,
    /// Channel groups without frames, and the names of some of their channels.
    pub(super) others: usize,
    pub(super) names: Vec<String>,
}

/// Reads what a file holds from its first data group on. What is broken is a loss; the rest is read.
pub(super) fn contents(
    file: &mut File,
    first: u64,
    losses: &mut Losses,
) -> Result<Contents, Fault> {
    let mut reading = Reading { contents: Contents::default(), seen: BTreeSet::new() };
    let mut next = first;
    while next != 0 {
        next = told(reading.data_group(file, next, losses), losses)?.unwrap_or(0);
    }
    Ok(reading.contents)
}

/// Counts what is broken, and passes on what ends the reading.
pub(super) fn told<T>(result: Result<T, Fault>, losses: &mut Losses) -> Result<Option<T>, Fault> {
    match result {
        Ok(value) => Ok(Some(value)),
        Err(Fault::Broken { loss, at, what }) => {
            losses.list(loss, Place::Byte(at), what.as_bytes());
            Ok(None)
        }
        Err(fault) => Err(fault),
    }
}

struct Reading {
    contents: Contents,
    /// Blocks that were there: a chain that comes back to one has no end.
    seen: BTreeSet<u64>,
}

impl Reading {
    fn once(&mut self, at: u64) -> Result<(), Fault> {
        let again = Fault::corrupt(at, "blocks are chained in a circle");
        if self.seen.insert(at) { Ok(()) } else { Err(again) }
    }

    /// One data group; gives the next.
    fn data_group(&mut self, file: &mut File, at: u64, losses: &mut Losses) -> Result<u64, Fault> {
        self.once(at)?;
        let block = file.block(at, *b"DG")?;
        let number_bytes = usize::from(block.u8(0)?);
        let mut group = DataGroup { data: block.link(2), number_bytes, groups: Vec::new() };
        let mut next = block.link(1);
        while next != 0 {
            let at = next;
            next = 0;
            let read = self.channel_group(file, at, losses);
            if let Some((read, after)) = told(read, losses)? {
                group.groups.push(read);
                next = after;
            }
        }
        if matches!(number_bytes, 0 | 1 | 2 | 4 | 8) {
            self.contents.data_groups.push(group);
        } else {
            let what = b"a data group numbers its records in a way there is not";
            losses.list(Loss::Corrupt, Place::Byte(at), what);
        }
        Ok(block.link(0))
    }

    fn channel_group(
        &mut self,
        file: &mut File,
        at: u64,
        losses: &mut Losses,
    ) -> Result<(Group, u64), Fault> {
        self.once(at)?;
        let block = file.block(at, *b"CG")?;
        let mut group = Group {
            at,
            number: block.u64(0)?,
            count: block.u64(8)?,
            size: block.u32(24)? as usize,
            marks: block.u32(28)? as usize,
            records: Records::Other,
        };
        let flags = block.u16(16)?;
        if flags & 1 != 0 {
            group.records = Records::Values;
            return Ok((group, block.link(0)));
        }
        let mut channels = Channels { size: group.size, ..Channels::default() };
        let read = self.channels(file, block.link(1), "", &mut channels, 0);
        // With a channel missing, lengths and identifiers could be read wrong.
        let found = read.and_then(|()| channels.records(file, at));
        if let Some(found) = told(found, losses)? {
            group.records = found;
        }
        let by_column = flags & 8 != 0 && !matches!(group.records, Records::Other);
        if by_column {
            return Err(Fault::Refused(
                "its frames are stored column by column; save it again by records".to_owned(),
            ));
        }
        if matches!(group.records, Records::Other) {
            self.contents.others += 1;
            let room = TOLD.saturating_sub(self.contents.names.len());
            self.contents.names.extend(channels.others.into_iter().take(room));
        }
        Ok((group, block.link(0)))
    }

    fn channels(
        &mut self,
        file: &mut File,
        first: u64,
        above: &str,
        channels: &mut Channels,
        depth: usize,
    ) -> Result<(), Fault> {
        let mut next = first;
        while next != 0 {
            self.once(next)?;
            let block = file.block(next, *b"CN")?;
            let mut name = file.text(block.link(2))?;
            if !above.is_empty() && !name.contains('.') {
                name = format!("{above}.{name}");
            }
            let under = block.link(1);
            if under != 0 && depth < DEEPEST && &file.head(under)?.kind == b"CN" {
                self.channels(file, under, &name, channels, depth + 1)?;
            }
            next = block.link(0);
            channels.take(name, block)?;
        }
        Ok(())
    }
}

/// The channels of a group that tell of frames.
#[derive(Default)]
struct Channels {
    size: usize,
    clock: Option<Block>,
    /// Parts of frames by kind of frame and name.
    parts: BTreeMap<(Kind, String), Block>,
    others: Vec<String>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Kind {
    Data,
    Remote,
    Error,
}

impl Kind {
    fn of(name: &str) -> Option<Self> {
        match name.rsplit('.').next()? {
            "CAN_DataFrame" => Some(Self::Data),
            "CAN_RemoteFrame" => Some(Self::Remote),
            "CAN_ErrorFrame" => Some(Self::Error),
            _ => None,
        }
    }
}

impl Channels {
    fn take(&mut self, name: String, block: Block) -> Result<(), Fault> {
        let is_time = matches!(block.u8(0)?, 2 | 3) && block.u8(1)? == 1;
        let part = name.rsplit_once('.').and_then(|(of, part)| Some((Kind::of(of)?, part)));
        if is_time {
            self.clock = Some(block);
        } else if let Some((kind, part)) = part {
            self.parts.insert((kind, part.to_owned()), block);
        } else if let Some(kind) = Kind::of(&name) {
            self.parts.insert((kind, String::new()), block);
        } else if self.others.len() < TOLD {
            self.others.push(name);
        }
        Ok(())
    }

    /// What the records are by their channels.
    fn records(&self, file: &mut File, at: u64) -> Result<Records, Fault> {
        let has = |kind: Kind| self.parts.keys().any(|(of, _)| *of == kind);
        if !has(Kind::Data) {
            return Ok(match (has(Kind::Remote), has(Kind::Error)) {
                (true, _) => Records::Lost(Loss::Remote),
                (_, true) => Records::Lost(Loss::ErrorFrame),
                _ => Records::Other,
            });
        }
        let lacks = |what| Fault::Broken { loss: Loss::Malformed, at, what };
        let part = |name: &str| self.parts.get(&(Kind::Data, name.to_owned()));
        let field = |name| part(name).map(|block| Field::of(block, self.size)).transpose();
        let clock = self.clock.as_ref().ok_or(lacks("a group of frames has no time channel"))?;
        let bytes = part("DataBytes").ok_or(lacks("a group of frames has no DataBytes"))?;
        let place = Field::of(bytes, self.size)?;
        let is_apart = bytes.u8(0)? == 1;
        Ok(Records::Frames(Box::new(Layout {
            clock: clock_of(file, clock, self.size)?,
            bus: field("BusChannel")?,
            id: field("ID")?.ok_or(lacks("a group of frames has no ID"))?,
            extended: field("IDE")?,
            flexible: field("EDL")?,
            length: field("DataLength")?,
            code: field("DLC")?,
            data: if is_apart { Bytes::Apart(place, bytes.link(5)) } else { Bytes::Here(place) },
        })))
    }
}

/// A time channel with its conversion to seconds.
fn clock_of(file: &mut File, channel: &Block, size: usize) -> Result<Clock, Fault> {
    let field = if channel.u8(0)? == 2 { Some(Field::of(channel, size)?) } else { None };
    let conversion = channel.link(4);
    if conversion == 0 {
        return Ok(Clock { field, offset: 0.0, factor: 1.0 });
    }
    let block = file.block(conversion, *b"CC")?;
    match block.u8(0)? {
        0 => Ok(Clock { field, offset: 0.0, factor: 1.0 }),
        1 => Ok(Clock { field, offset: block.f64(24)?, factor: block.f64(32)? }),
        _ => Err(Fault::corrupt(conversion, "the conversion of a time channel is not linear")),
    }
}
