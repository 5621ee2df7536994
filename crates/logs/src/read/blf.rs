//! The binary log of Vector tools: objects in containers that are packed by zlib.
//!
//! # Source
//! `blf-layout`

use std::io::{self, Read};

use flate2::read::ZlibDecoder;

use super::Frames;
use super::batch::{Batch, Interfaces};
use super::clock::day_number;
use super::error::ReadError;
use super::losses::{Loss, Losses, Place};
use super::open::Format;
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};

const HEADER: usize = 144;
const BASE: usize = 16;
/// Bytes of an object with its time, before what it says.
const WITH_TIME: usize = 32;
const CONTAINER: u32 = 10;
/// Most bytes of an object of the file, and of what a container unpacks to.
const MOST: usize = 1 << 26;
/// Frames of a batch, checked after each container.
const BATCH: usize = 1 << 15;
const EXTENDED: u32 = 0x8000_0000;
const REMOTE: u8 = 0x80;

/// Frames of a binary log.
pub struct Blf<R> {
    input: R,
    name: String,
    /// Bytes read so far.
    at: u64,
    start_ns: i64,
    /// What the last container began and did not end.
    tail: Vec<u8>,
    interfaces: Interfaces,
    ended: bool,
}

impl<R: Read + Send> Blf<R> {
    /// A binary log.
    ///
    /// # Errors
    /// Where its header is broken.
    pub fn open(name: &str, mut input: R) -> Result<Self, ReadError> {
        let mut header = [0; HEADER];
        let broken = |problem: &str| ReadError::format(name, Format::Blf, problem);
        input.read_exact(&mut header).map_err(|_| broken("it ends inside its header"))?;
        let size = u32_at(&header, 4).map_or(0, |size| size as usize);
        if !(HEADER..=1 << 16).contains(&size) {
            return Err(broken("the size of its header is not one"));
        }
        let more = io::copy(&mut input.by_ref().take((size - HEADER) as u64), &mut io::sink());
        more.map_err(|error| ReadError::io(name, error))?;
        Ok(Self {
            input,
            name: name.to_owned(),
            at: size as u64,
            start_ns: start_of(&header).unwrap_or(0),
            tail: Vec::new(),
            interfaces: Interfaces::default(),
            ended: false,
        })
    }

    /// One object of the file; `None` at its end.
    fn object(&mut self, losses: &mut Losses) -> Result<Option<(u32, Vec<u8>)>, ReadError> {
        let place = Place::Byte(self.at);
        let base = self.bytes(BASE)?;
        if base.len() < BASE {
            // Fillers may stand after the last object.
            if base.iter().any(|byte| *byte != 0) {
                losses.list(Loss::Truncated, place, b"");
            }
            return Ok(None);
        }
        let (size, kind) = (u32_at(&base, 8).unwrap_or(0) as usize, u32_at(&base, 12).unwrap_or(0));
        if !base.starts_with(b"LOBJ") || !(BASE..=MOST).contains(&size) {
            losses.list(Loss::Corrupt, place, &base[..4]);
            return Ok(None);
        }
        let body = self.bytes(size - BASE)?;
        if body.len() < size - BASE {
            losses.list(Loss::Truncated, place, b"");
            return Ok(None);
        }
        self.bytes(size % 4)?;
        Ok(Some((kind, body)))
    }

    /// So many bytes, or what is left.
    fn bytes(&mut self, many: usize) -> Result<Vec<u8>, ReadError> {
        let mut bytes = Vec::new();
        let read = self.input.by_ref().take(many as u64).read_to_end(&mut bytes);
        read.map_err(|error| ReadError::io(&self.name, error))?;
        self.at += bytes.len() as u64;
        Ok(bytes)
    }

    /// Objects of a container, after what the one before left.
    fn unpack(&mut self, body: &[u8], place: Place, batch: &mut Batch) {
        let mut data = std::mem::take(&mut self.tail);
        let Some((head, packed)) = body.split_first_chunk::<16>() else {
            batch.losses.list(Loss::Corrupt, place, b"");
            return;
        };
        match u16::from_le_bytes([head[0], head[1]]) {
            0 => data.extend_from_slice(packed),
            2 => {
                let room = (MOST - data.len()) as u64;
                let unpacked = ZlibDecoder::new(packed).take(room).read_to_end(&mut data);
                if unpacked.is_err() {
                    batch.losses.list(Loss::Corrupt, place, b"");
                }
            }
            _ => batch.losses.list(Loss::Unsupported, place, b""),
        }
        let used = self.objects(&data, place, batch);
        self.tail = data.split_off(used);
    }

    /// Reads whole objects; gives the bytes used.
    fn objects(&mut self, data: &[u8], place: Place, batch: &mut Batch) -> usize {
        let mut at = 0;
        while let Some(rest) = data.get(at..).filter(|rest| rest.len() >= BASE) {
            // Up to seven bytes of filling stand between objects.
            let Some(skip) = rest.windows(4).take(8).position(|four| four == b"LOBJ") else {
                batch.losses.list(Loss::Corrupt, place, b"");
                let next = rest[1..].windows(4).position(|four| four == b"LOBJ");
                match next {
                    Some(next) => at += next + 1,
                    None => return data.len(),
                }
                continue;
            };
            let object = &rest[skip..];
            let Some(size) = u32_at(object, 8).map(|size| size as usize) else { break };
            if !(BASE..=MOST).contains(&size) {
                batch.losses.list(Loss::Corrupt, place, b"");
                at += skip + 4;
                continue;
            }
            let Some(whole) = object.get(..size) else { break };
            self.take(whole, place, batch);
            at += skip + size;
        }
        at.min(data.len())
    }

    fn take(&mut self, object: &[u8], place: Place, batch: &mut Batch) {
        let kind = u32_at(object, 12).unwrap_or(0);
        let message = match kind {
            1 | 86 => self.message(object),
            // Classic frames may come in the form for flexible rates.
            100 if object.get(WITH_TIME + 17).is_some_and(|flags| flags & 1 == 0) => {
                self.message(object)
            }
            100 | 101 => Err(Loss::FlexibleRate),
            2 | 73 => Err(Loss::ErrorFrame),
            // Markers, statistics and other buses hold no frames.
            _ => return,
        };
        match message {
            Ok(frame) => batch.frames.push(frame),
            Err(loss) if loss.is_bad_record() => batch.losses.list(loss, place, b""),
            Err(loss) => batch.losses.count(loss),
        }
    }

    fn message(&mut self, object: &[u8]) -> Result<Frame, Loss> {
        let body = object.get(WITH_TIME..).ok_or(Loss::Truncated)?;
        let ticks = u64_at(object, 24).ok_or(Loss::Truncated)?;
        let unit = if u32_at(object, 16) == Some(1) { 10_000 } else { 1 };
        let ns = i64::try_from(ticks).ok().and_then(|ticks| ticks.checked_mul(unit));
        let ns = ns.and_then(|ns| ns.checked_add(self.start_ns)).ok_or(Loss::Malformed)?;
        let channel = u16_at(body, 0).ok_or(Loss::Truncated)?;
        let (flags, length) = (*body.get(2).ok_or(Loss::Truncated)?, body.get(3).copied());
        let length = usize::from(length.ok_or(Loss::Truncated)?).min(8);
        let id = u32_at(body, 4).ok_or(Loss::Truncated)?;
        if flags & REMOTE != 0 {
            return Err(Loss::Remote);
        }
        // The form for flexible rates has more between identifier and data.
        let from = if u32_at(object, 12) == Some(100) { 20 } else { 8 };
        let data = body.get(from..from + length).and_then(Data::new).ok_or(Loss::Truncated)?;
        let id =
            if id & EXTENDED != 0 { CanId::extended(id & !EXTENDED) } else { CanId::standard(id) };
        Ok(Frame {
            time: Timestamp::from_ns(ns),
            interface: self.bus(channel),
            id: id.ok_or(Loss::Malformed)?,
            data,
        })
    }

    fn bus(&mut self, channel: u16) -> Interface {
        let name = format!("{channel}");
        self.interfaces.number(name.as_bytes()).unwrap_or(Interface(254))
    }
}

impl<R: Read + Send> Frames for Blf<R> {
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError> {
        let mut batch = Batch::default();
        while !self.ended && batch.frames.len() < BATCH {
            let place = Place::Byte(self.at);
            match self.object(&mut batch.losses)? {
                Some((CONTAINER, body)) => self.unpack(&body, place, &mut batch),
                // An object outside containers; its head is put before it again.
                Some((kind, body)) => {
                    let mut whole = b"LOBJ\x20\0\x01\0".to_vec();
                    let size = u32::try_from(body.len() + BASE).unwrap_or(u32::MAX);
                    whole.extend(size.to_le_bytes());
                    whole.extend(kind.to_le_bytes());
                    whole.extend(body);
                    self.take(&whole, place, &mut batch);
                }
                None => {
                    self.ended = true;
                    if !self.tail.iter().all(|byte| *byte == 0) {
                        batch.losses.list(Loss::Truncated, place, b"");
                    }
                }
            }
        }
        batch.interfaces = self.interfaces.clone();
        let nothing = self.ended && batch.frames.is_empty() && batch.losses == Losses::default();
        Ok(if nothing { None } else { Some(batch) })
    }
}

/// When the measurement began, in nanoseconds since 1970; the eight words of a system time.
fn start_of(header: &[u8]) -> Option<i64> {
    let word = |at: usize| u16_at(header, 40 + 2 * at).map(i64::from);
    let day = day_number(word(0)?, word(1)?, word(3)?)?;
    let (hour, minute, second, ms) = (word(4)?, word(5)?, word(6)?, word(7)?);
    Some((((day * 24 + hour) * 60 + minute) * 60 + second) * 1_000_000_000 + ms * 1_000_000)
}

fn u16_at(bytes: &[u8], at: usize) -> Option<u16> {
    Some(u16::from_le_bytes(*bytes.get(at..)?.first_chunk()?))
}

fn u32_at(bytes: &[u8], at: usize) -> Option<u32> {
    Some(u32::from_le_bytes(*bytes.get(at..)?.first_chunk()?))
}

fn u64_at(bytes: &[u8], at: usize) -> Option<u64> {
    Some(u64::from_le_bytes(*bytes.get(at..)?.first_chunk()?))
}
