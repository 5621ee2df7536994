//! The records of one data group in the order of the file, to frames.

use std::collections::{BTreeMap, VecDeque};

use super::block::{Fault, File};
use super::channels::{Bytes, DataGroup, Group, Records};
use super::data::{Piece, Pieces};
use super::record::{Envelope, data_in};
use super::values::{LENGTH, LONGEST, Values};
use crate::frame::{Frame, Timestamp};
use crate::read::batch::Interfaces;
use crate::read::losses::{Loss, Losses, Place};

/// Most frames that wait for data of their own, and most data that wait for their frame.
const MOST_WAITING: usize = 1 << 14;
/// Most bytes of a record, and of a value among records.
const LONGEST_RECORD: usize = 1 << 20;

/// What a writer that did not finish left undone.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Undone {
    /// Records are not counted.
    pub(super) counts: bool,
    /// The last block of data does not tell its length.
    pub(super) last_length: bool,
    /// Records do not tell the place of their values: they come in the same order.
    pub(super) places: bool,
}

/// Where the data of the frames of a group come from.
enum Apart {
    /// They stand in the record, or the group has no frames.
    Nowhere,
    /// Blocks of their own.
    Blocks(Box<Values>),
    /// Records of another group of the same data, by its place in the list of groups.
    Group(usize),
}

/// Values of a group that wait for their frames.
#[derive(Default)]
struct Kept {
    /// By place among the values, or by order.
    values: BTreeMap<u64, Vec<u8>>,
    next: u64,
    wanted: bool,
}

/// A frame, or one whose data have not come yet.
enum Waiting {
    Ready(Frame),
    Wants { envelope: Envelope, group: usize, key: u64, place: u64 },
}

/// The records of one data group.
pub(super) struct Stream {
    groups: Vec<Group>,
    apart: Vec<Apart>,
    kept: Vec<Kept>,
    counted: Vec<u64>,
    by_number: BTreeMap<u64, usize>,
    number_bytes: usize,
    undone: Undone,
    start: Timestamp,
    pieces: Pieces,
    /// Bytes at hand; those before `used` are done with.
    bytes: Vec<u8>,
    used: usize,
    /// The piece that stands last in `bytes`, and bytes of pieces so far.
    piece: Option<Piece>,
    passed: u64,
    /// Bytes still to leave out: the rest of a record that began in a lost block.
    skip: usize,
    waiting: VecDeque<Waiting>,
    ended: bool,
}

impl Stream {
    /// The stream of a data group.
    pub(super) fn of(
        file: &mut File,
        group: DataGroup,
        undone: Undone,
        start: Timestamp,
    ) -> Result<Self, Fault> {
        let DataGroup { data, number_bytes, groups } = group;
        let mut kept: Vec<Kept> = groups.iter().map(|_| Kept::default()).collect();
        let mut apart = Vec::new();
        for group in &groups {
            let Records::Frames(layout) = &group.records else {
                apart.push(Apart::Nowhere);
                continue;
            };
            let Bytes::Apart(_, link) = layout.data else {
                apart.push(Apart::Nowhere);
                continue;
            };
            let other = groups.iter().position(|other| other.at == link && link != 0);
            apart.push(match other {
                Some(at) => {
                    kept[at].wanted = true;
                    Apart::Group(at)
                }
                None => Apart::Blocks(Box::new(Values::of(Pieces::of(file, link, false)?))),
            });
        }
        Ok(Self {
            counted: vec![0; groups.len()],
            by_number: groups.iter().enumerate().map(|(at, group)| (group.number, at)).collect(),
            pieces: Pieces::of(file, data, undone.last_length)?,
            groups,
            apart,
            kept,
            number_bytes,
            undone,
            start,
            bytes: Vec::new(),
            used: 0,
            piece: None,
            passed: 0,
            skip: 0,
            waiting: VecDeque::new(),
            ended: false,
        })
    }

    /// Bytes held.
    pub(super) fn held(&self) -> usize {
        let apart = self.apart.iter().map(|apart| match apart {
            Apart::Blocks(values) => values.held(),
            Apart::Nowhere | Apart::Group(_) => 0,
        });
        self.bytes.len() + apart.sum::<usize>()
    }

    /// Time of the next frame; `None` where there is none any more.
    pub(super) fn time(
        &mut self,
        file: &mut File,
        interfaces: &mut Interfaces,
        losses: &mut Losses,
    ) -> Result<Option<Timestamp>, Fault> {
        loop {
            match self.waiting.front() {
                Some(Waiting::Ready(frame)) => return Ok(Some(frame.time)),
                Some(Waiting::Wants { envelope, group, key, place }) => {
                    let (envelope, place) = (*envelope, *place);
                    if let Some(data) = self.kept[*group].values.remove(key) {
                        match envelope.with(&data) {
                            Ok(frame) => self.waiting[0] = Waiting::Ready(frame),
                            Err(loss) => {
                                lost(loss, place, losses);
                                self.waiting.pop_front();
                            }
                        }
                        continue;
                    }
                    if self.ended || self.waiting.len() > MOST_WAITING {
                        losses.list(Loss::Truncated, Place::Byte(place), b"its data never came");
                        self.waiting.pop_front();
                        continue;
                    }
                }
                None if self.ended => return Ok(None),
                None => {}
            }
            let read = self.record(file, interfaces, losses);
            match read {
                Ok(()) => {}
                Err(Fault::Broken { loss, at, what }) => {
                    losses.list(loss, Place::Byte(at), what.as_bytes());
                    self.end(losses);
                }
                Err(fault) => return Err(fault),
            }
        }
    }

    /// The frame whose time was told.
    pub(super) fn take(&mut self) -> Option<Frame> {
        match self.waiting.pop_front()? {
            Waiting::Ready(frame) => Some(frame),
            Waiting::Wants { .. } => None,
        }
    }

    /// One record.
    fn record(
        &mut self,
        file: &mut File,
        interfaces: &mut Interfaces,
        losses: &mut Losses,
    ) -> Result<(), Fault> {
        let numbered = self.number_bytes > 0;
        // Bytes after the last record that was counted are filling.
        let full = !numbered && !self.undone.counts;
        if full && self.groups.first().is_none_or(|group| self.counted[0] >= group.count) {
            self.end(losses);
            return Ok(());
        }
        let more = self.have(file, self.number_bytes.max(1), losses)?;
        let place = self.place();
        if !more {
            if self.used < self.bytes.len() {
                losses.list(Loss::Truncated, Place::Byte(place), b"data end inside a record");
            }
            self.end(losses);
            return Ok(());
        }
        let mut number = [0; 8];
        number[..self.number_bytes]
            .copy_from_slice(&self.bytes[self.used..self.used + self.number_bytes]);
        let number = u64::from_le_bytes(number);
        let at = if numbered { self.by_number.get(&number).copied() } else { Some(0) };
        let unknown = Fault::corrupt(place, "a record of a group that there is not");
        let at = at.ok_or(unknown)?;
        let group = &self.groups[at];
        let (is_value, fixed) =
            (matches!(group.records, Records::Values), group.size + group.marks);
        let head = self.number_bytes;
        let size = if is_value {
            let whole = self.have(file, head + LENGTH, losses)?;
            let from = self.used + head;
            let length = self.bytes.get(from..).and_then(<[u8]>::first_chunk).filter(|_| whole);
            length.map_or(0, |length| u32::from_le_bytes(*length) as usize).saturating_add(LENGTH)
        } else {
            fixed
        };
        if size + head == 0 || size > LONGEST_RECORD {
            return Err(Fault::corrupt(place, "a record is empty or over 1 MB long"));
        }
        if !self.have(file, head + size, losses)? {
            losses.list(Loss::Truncated, Place::Byte(place), b"data end inside a record");
            self.end(losses);
            return Ok(());
        }
        let from = self.used + head;
        self.used = from + size;
        let number = self.counted[at];
        self.counted[at] += 1;
        self.take_record(file, at, from..from + size, (number, place), interfaces, losses)
    }

    fn take_record(
        &mut self,
        file: &mut File,
        at: usize,
        range: std::ops::Range<usize>,
        (number, place): (u64, u64),
        interfaces: &mut Interfaces,
        losses: &mut Losses,
    ) -> Result<(), Fault> {
        let record = &self.bytes[range];
        let layout = match &self.groups[at].records {
            Records::Other => return Ok(()),
            Records::Lost(loss) => {
                losses.count(*loss);
                return Ok(());
            }
            Records::Values => {
                self.kept[at].take(&record[LENGTH..], self.undone.places);
                return Ok(());
            }
            Records::Frames(layout) => layout,
        };
        let envelope = match Envelope::of(layout, record, number, self.start, interfaces) {
            Ok(envelope) => envelope,
            Err(loss) => {
                lost(loss, place, losses);
                return Ok(());
            }
        };
        let key = match &layout.data {
            Bytes::Here(_) => None,
            Bytes::Apart(field, _) => field.place(record),
        };
        let data = match (&mut self.apart[at], key) {
            (Apart::Nowhere, _) => data_in(&layout.data, record),
            (_, None) => Err(Loss::Malformed),
            (Apart::Blocks(values), Some(key)) => match values.get(file, key) {
                Err(Fault::Broken { loss, .. }) => Err(loss),
                value => Ok(value?),
            },
            (Apart::Group(group), Some(key)) => {
                let (group, key) = (*group, if self.undone.places { number } else { key });
                self.waiting.push_back(Waiting::Wants { envelope, group, key, place });
                return Ok(());
            }
        };
        match data.and_then(|data| envelope.with(&data)) {
            Ok(frame) => self.waiting.push_back(Waiting::Ready(frame)),
            Err(loss) => lost(loss, place, losses),
        }
        Ok(())
    }

    /// Whether so many bytes are at hand, after reading on for them.
    fn have(&mut self, file: &mut File, many: usize, losses: &mut Losses) -> Result<bool, Fault> {
        while self.bytes.len() - self.used < many {
            let Some(piece) = self.pieces.next(file)? else { return Ok(false) };
            self.bytes.drain(..self.used);
            self.used = 0;
            self.passed += piece.length as u64;
            if piece.without_marks && self.groups.iter().any(|group| group.marks > 0) {
                let what =
                    "its marks of validity are stored apart from its records; save it again as 4.1";
                return Err(Fault::Refused(what.to_owned()));
            }
            match piece.load(file) {
                Ok(bytes) => {
                    let over = self.skip.min(bytes.len());
                    self.skip -= over;
                    self.bytes.extend(&bytes[over..]);
                    self.piece = Some(piece);
                }
                // Records of one size are found again behind the block; others are not.
                Err(Fault::Broken { loss, at, what }) if self.number_bytes == 0 => {
                    losses.list(loss, Place::Byte(at), what.as_bytes());
                    self.lose_block();
                }
                Err(fault) => return Err(fault),
            }
        }
        Ok(true)
    }

    /// After a block that is lost: goes on where the next whole record begins.
    fn lose_block(&mut self) {
        self.bytes.clear();
        let size = self.groups.first().map_or(0, |group| (group.size + group.marks) as u64).max(1);
        self.counted[0] = self.passed.div_ceil(size);
        self.skip = usize::try_from(self.counted[0] * size - self.passed).unwrap_or(0);
    }

    /// Where in the file the next record lies.
    fn place(&self) -> u64 {
        let before = self.bytes.len() - self.used;
        self.piece.map_or(0, |piece| piece.place(piece.length.saturating_sub(before)))
    }

    /// No more records: tells where there are fewer than were counted.
    fn end(&mut self, losses: &mut Losses) {
        self.ended = true;
        self.bytes = Vec::new();
        self.used = 0;
        for (group, read) in self.groups.iter().zip(&self.counted) {
            let ours = matches!(group.records, Records::Frames(_) | Records::Lost(_));
            if ours && *read < group.count && !self.undone.counts {
                let said = format!("{read} records where its group counts {}", group.count);
                losses.list(Loss::Truncated, Place::Byte(group.at), said.as_bytes());
            }
        }
    }
}

impl Kept {
    fn take(&mut self, value: &[u8], by_order: bool) {
        let key = self.next;
        self.next += if by_order { 1 } else { (LENGTH + value.len()) as u64 };
        if self.wanted {
            self.values.insert(key, value[..value.len().min(LONGEST + 1)].to_vec());
            if self.values.len() > MOST_WAITING {
                self.values.pop_first();
            }
        }
    }
}

/// Frames of other kinds are only counted; a bad record is listed.
fn lost(loss: Loss, place: u64, losses: &mut Losses) {
    if loss.is_bad_record() {
        losses.list(loss, Place::Byte(place), b"");
    } else {
        losses.count(loss);
    }
}
