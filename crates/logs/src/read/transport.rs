//! Messages of more than eight bytes, put together from their packets.
//!
//! Broadcast (BAM) and connection (RTS/CTS) sessions run at the same time, told apart by bus, sender and
//! receiver. A new announcement starts over; silence of three quarters of a second ends a session. The
//! extended protocol, for more than 1785 bytes, is followed by its packet offsets.
//!
//! # Source
//! `j1939-transport`

use std::collections::BTreeMap;

use super::losses::{Loss, Losses};
use crate::frame::{Frame, Interface, Timestamp};
use crate::identifier::{Identifier, Pgn, SourceAddress};

/// A session without a packet for longer than this is over; from memory.
const SILENCE_NS: i64 = 750_000_000;
/// Most bytes of a message of the plain protocol: 255 packets of seven.
const MOST_BYTES: usize = 1785;
/// Most bytes of an extended message that is kept; the protocol allows 117 MB.
const MOST_EXTENDED: usize = 1 << 20;
/// Most sessions at a time, so that a flood stays bounded.
const MOST_SESSIONS: usize = 512;

const REQUEST_TO_SEND: u8 = 16;
const CLEAR_TO_SEND: u8 = 17;
const END_OF_MESSAGE: u8 = 19;
const EXTENDED_REQUEST: u8 = 20;
const EXTENDED_CLEAR: u8 = 21;
const EXTENDED_OFFSET: u8 = 22;
const EXTENDED_END: u8 = 23;
const BROADCAST: u8 = 32;
const ABORT: u8 = 255;

/// A message that became whole.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Message {
    /// When its last packet came.
    pub time: Timestamp,
    /// On which bus.
    pub interface: Interface,
    /// Its group.
    pub pgn: Pgn,
    /// Who sent it.
    pub source: SourceAddress,
    /// To whom.
    pub destination: SourceAddress,
    /// Its bytes.
    pub data: Vec<u8>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Key {
    interface: Interface,
    source: SourceAddress,
    destination: SourceAddress,
    extended: bool,
}

#[derive(Debug, Clone)]
struct Session {
    pgn: Pgn,
    size: usize,
    /// Number of the next packet, from 1.
    next: usize,
    /// Packets before the first of this run, for the extended protocol.
    offset: usize,
    data: Vec<u8>,
    seen: Timestamp,
}

/// Sessions under way.
#[derive(Debug, Clone, Default)]
pub struct Transport {
    sessions: BTreeMap<Key, Session>,
    /// Messages that became whole.
    pub whole: u64,
}

impl Transport {
    /// Takes a frame of the transport groups; gives the message that it completes.
    pub fn take(&mut self, frame: &Frame, losses: &mut Losses) -> Option<Message> {
        let id = Identifier::split(frame.id)?;
        let extended = matches!(id.pgn, Pgn::EXTENDED_MANAGEMENT | Pgn::EXTENDED_DATA);
        let (interface, source, destination) = (frame.interface, id.source, id.destination);
        let key = Key { interface, source, destination, extended };
        let Ok(bytes) = <[u8; 8]>::try_from(frame.data.bytes()) else {
            losses.count(Loss::ShortGroup);
            return None;
        };
        match id.pgn {
            Pgn::TRANSPORT_MANAGEMENT | Pgn::EXTENDED_MANAGEMENT => {
                self.manage(key, bytes, frame.time, losses);
                None
            }
            _ => self.packet(key, bytes, frame.time, losses),
        }
    }

    /// Ends what is still under way: the log is over.
    pub fn finish(&mut self, losses: &mut Losses) {
        losses.count_many(Loss::BrokenMessage, self.sessions.len() as u64);
        self.sessions.clear();
    }

    fn manage(&mut self, key: Key, bytes: [u8; 8], time: Timestamp, losses: &mut Losses) {
        let back = Key { source: key.destination, destination: key.source, ..key };
        match bytes[0] {
            BROADCAST | REQUEST_TO_SEND if !key.extended => {
                let size = usize::from(u16::from_le_bytes([bytes[1], bytes[2]]));
                let fits =
                    (9..=MOST_BYTES).contains(&size) && size.div_ceil(7) == usize::from(bytes[3]);
                self.open(key, fits.then_some(size), bytes, time, losses);
            }
            EXTENDED_REQUEST if key.extended => {
                let size = u32::from_le_bytes([bytes[1], bytes[2], bytes[3], bytes[4]]);
                let size = usize::try_from(size).ok();
                let size = size.filter(|size| (MOST_BYTES + 1..=MOST_EXTENDED).contains(size));
                self.open(key, size, bytes, time, losses);
            }
            EXTENDED_OFFSET if key.extended => {
                if let Some(session) = self.sessions.get_mut(&key) {
                    let offset = u32::from_le_bytes([bytes[2], bytes[3], bytes[4], 0]);
                    session.offset = usize::try_from(offset).unwrap_or(usize::MAX);
                    session.seen = time;
                }
            }
            // The receiver says go on, perhaps again from an earlier packet.
            CLEAR_TO_SEND if !key.extended => {
                if let Some(session) = self.sessions.get_mut(&back) {
                    session.seen = time;
                    let from = usize::from(bytes[2]);
                    if bytes[1] > 0 && (1..session.next).contains(&from) {
                        session.next = from;
                        session.data.truncate((from - 1) * 7);
                    }
                }
            }
            ABORT => {
                for key in [key, back] {
                    if self.sessions.remove(&key).is_some() {
                        losses.count(Loss::BrokenMessage);
                    }
                }
            }
            // The receiver of an extended message waits or goes on; the end adds nothing either: the
            // last packet has completed the message.
            EXTENDED_CLEAR | END_OF_MESSAGE | EXTENDED_END => {
                if let Some(session) = self.sessions.get_mut(&back) {
                    session.seen = time;
                }
            }
            _ => losses.count(Loss::BrokenMessage),
        }
    }

    fn open(
        &mut self,
        key: Key,
        size: Option<usize>,
        bytes: [u8; 8],
        time: Timestamp,
        losses: &mut Losses,
    ) {
        if self.sessions.remove(&key).is_some() {
            losses.count(Loss::BrokenMessage);
        }
        let pgn = Pgn::new(u32::from_le_bytes([bytes[5], bytes[6], bytes[7], 0]));
        if self.sessions.len() >= MOST_SESSIONS {
            let before = self.sessions.len();
            self.sessions.retain(|_, session| time.ns_since(session.seen).abs() <= SILENCE_NS);
            losses.count_many(Loss::BrokenMessage, (before - self.sessions.len()) as u64);
        }
        match (pgn, size) {
            (Some(pgn), Some(size)) if self.sessions.len() < MOST_SESSIONS => {
                let data = Vec::with_capacity(size.min(MOST_BYTES));
                let session = Session { pgn, size, next: 1, offset: 0, data, seen: time };
                self.sessions.insert(key, session);
            }
            _ => losses.count(Loss::BrokenMessage),
        }
    }

    fn packet(
        &mut self,
        key: Key,
        bytes: [u8; 8],
        time: Timestamp,
        losses: &mut Losses,
    ) -> Option<Message> {
        // A packet whose announcement was before the log, or whose session is over: not counted,
        // its message never began here.
        let session = self.sessions.get_mut(&key)?;
        let number = session.offset.saturating_add(usize::from(bytes[0]));
        let late = time.ns_since(session.seen).abs() > SILENCE_NS;
        if !late && number + 1 == session.next {
            // Sent again: the receiver did not hear it.
            session.seen = time;
            return None;
        }
        if late || number != session.next {
            self.sessions.remove(&key);
            losses.count(Loss::BrokenMessage);
            return None;
        }
        session.next += 1;
        session.seen = time;
        let room = session.size - session.data.len();
        session.data.extend_from_slice(&bytes[1..=room.min(7)]);
        if session.data.len() < session.size {
            return None;
        }
        let session = self.sessions.remove(&key)?;
        self.whole += 1;
        Some(Message {
            time,
            interface: key.interface,
            pgn: session.pgn,
            source: key.source,
            destination: key.destination,
            data: session.data,
        })
    }
}
