//! Frames sorted into rows: one list for each group that is known, the rest counted.

use super::losses::{Loss, Losses};
use super::senders::{Role, Senders};
use crate::definitions::Definitions;
use crate::frame::{Frame, Interface, Timestamp};
use crate::identifier::SourceAddress;

/// A gap of more than this between two frames is told.
pub const GAP_NS: i64 = 5_000_000_000;

/// One frame of a known group, as eight bytes in a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Row {
    /// When.
    pub time: Timestamp,
    /// The data, little-endian, zeros after the last byte.
    pub word: u64,
    /// Who sent it.
    pub source: SourceAddress,
    /// On which bus.
    pub interface: Interface,
    /// How many bytes count.
    pub length: u8,
}

/// A message of more than eight bytes, or one that came in packets.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LongRow {
    /// When its last packet came.
    pub time: Timestamp,
    /// Who sent it.
    pub source: SourceAddress,
    /// On which bus.
    pub interface: Interface,
    /// The bytes.
    pub data: Vec<u8>,
}

/// Rows of one group.
#[derive(Debug, Clone, Default)]
pub struct Lane {
    /// Single frames.
    pub rows: Vec<Row>,
    /// Messages in packets.
    pub long: Vec<LongRow>,
}

/// How time ran.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Clock {
    /// Earliest time.
    pub earliest: Option<Timestamp>,
    /// Latest time.
    pub latest: Option<Timestamp>,
    /// Time of the first frame in the log.
    pub first: Option<Timestamp>,
    /// Time of the last frame in the log.
    pub last: Option<Timestamp>,
    /// How often time went back from one frame to the next.
    pub steps_back: u64,
    /// How often it jumped by more than five seconds.
    pub gaps: u64,
}

impl Clock {
    fn see(&mut self, time: Timestamp) {
        if let Some(last) = self.last {
            let step = time.ns_since(last);
            self.steps_back += u64::from(step < 0);
            self.gaps += u64::from(step > GAP_NS);
        } else {
            self.first = Some(time);
            self.earliest = Some(time);
            self.latest = Some(time);
        }
        self.last = Some(time);
        self.earliest = self.earliest.min(Some(time));
        self.latest = self.latest.max(Some(time));
    }

    /// Goes on with the part that follows.
    pub fn append(&mut self, part: &Self) {
        let Some(first) = part.first else { return };
        self.see(first);
        self.steps_back += part.steps_back;
        self.gaps += part.gaps;
        self.last = part.last;
        self.earliest = self.earliest.min(part.earliest);
        self.latest = self.latest.max(part.latest);
    }

    /// From the earliest to the latest time, in nanoseconds.
    pub fn span_ns(&self) -> i64 {
        self.latest.zip(self.earliest).map_or(0, |(latest, first)| latest.ns_since(first))
    }
}

/// A stretch of a log, sorted.
#[derive(Debug, Clone)]
pub struct Sorted {
    /// How many frames went in, duplicates among them.
    pub frames: u64,
    /// Who sent how much.
    pub senders: Senders,
    /// One lane for each group of the definitions.
    pub lanes: Vec<Lane>,
    /// Parts of multi-packet messages, in order.
    pub transport: Vec<Frame>,
    /// Single-frame trouble codes, in order.
    pub codes: Vec<Frame>,
    /// How time ran.
    pub clock: Clock,
    /// What was lost on the way.
    pub losses: Losses,
}

/// Sorts frames.
pub fn sort(frames: &[Frame], definitions: &Definitions) -> Sorted {
    let mut sorted = Sorted {
        frames: frames.len() as u64,
        senders: Senders::default(),
        lanes: vec![Lane::default(); definitions.groups().len()],
        transport: Vec::new(),
        codes: Vec::new(),
        clock: Clock::default(),
        losses: Losses::default(),
    };
    let mut before: Option<&Frame> = None;
    for frame in frames {
        sorted.clock.see(frame.time);
        if before == Some(frame) {
            sorted.losses.count(Loss::Duplicate);
            continue;
        }
        before = Some(frame);
        match sorted.senders.count(frame, definitions) {
            Some(Role::Group(at)) => sorted.lanes[at].rows.push(row(frame)),
            Some(Role::Transport) => sorted.transport.push(*frame),
            Some(Role::Codes) => sorted.codes.push(*frame),
            Some(Role::Counted) => {}
            None => sorted.losses.count(Loss::TooManySenders),
        }
    }
    sorted
}

#[allow(clippy::cast_possible_truncation, reason = "the low byte of an identifier is the source")]
fn row(frame: &Frame) -> Row {
    Row {
        time: frame.time,
        word: frame.data.word(),
        source: SourceAddress(frame.id.number() as u8),
        interface: frame.interface,
        length: frame.data.length() as u8,
    }
}
