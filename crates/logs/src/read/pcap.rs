//! Packet captures, classic and next generation, of `SocketCAN` frames.
//!
//! A packet of link type 227: identifier with flags (big-endian), length, three bytes, data.
//!
//! # Source
//! `socketcan-capture`

use std::io::Read;

use pcap_parser::traits::PcapReaderIterator;
use pcap_parser::{Block, Linktype, PcapBlockOwned, PcapError, create_reader};

use super::Frames;
use super::batch::{Batch, Interfaces};
use super::error::ReadError;
use super::losses::{Loss, Losses, Place};
use super::open::Format;
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};

const SOCKETCAN: Linktype = Linktype(227);
const EXTENDED: u32 = 0x8000_0000;
const REMOTE: u32 = 0x4000_0000;
const ERROR: u32 = 0x2000_0000;
/// Bytes before the data.
const HEADER: usize = 8;
/// Frames of a batch.
const MOST: usize = 1 << 16;
/// Bytes held at a time; a longer block is refused.
const BUFFER: usize = 1 << 16;
/// Refills without a block before a file is given up: its lengths point nowhere.
const PATIENCE: usize = 4;

/// A source of packets of a capture.
struct Bus {
    can: bool,
    number: Interface,
    /// Units of time in a second.
    resolution: u64,
    offset_s: i64,
}

/// Frames of a capture.
pub struct Capture {
    name: String,
    reader: Box<dyn PcapReaderIterator + Send>,
    buses: Vec<Bus>,
    interfaces: Interfaces,
    ended: bool,
}

impl Capture {
    /// A capture.
    ///
    /// # Errors
    /// Where its header is broken.
    pub fn open(name: &str, input: impl Read + Send + 'static) -> Result<Self, ReadError> {
        let reader = create_reader(BUFFER, input)
            .map_err(|error| ReadError::format(name, Format::Pcap, told(&error)))?;
        let (buses, interfaces) = (Vec::new(), Interfaces::default());
        Ok(Self { name: name.to_owned(), reader, buses, interfaces, ended: false })
    }
}

fn told<I>(error: &PcapError<I>) -> String {
    match error {
        PcapError::Eof | PcapError::UnexpectedEof | PcapError::Incomplete(_) => {
            "it ends inside its header".to_owned()
        }
        PcapError::HeaderNotRecognized => "its header is not one of a capture".to_owned(),
        _ => "its header is broken".to_owned(),
    }
}

impl Frames for Capture {
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError> {
        let mut batch = Batch::default();
        let mut refills = 0;
        while !self.ended && batch.frames.len() < MOST {
            let place = Place::Byte(self.reader.position() as u64);
            match self.reader.next() {
                Ok((used, block)) => {
                    refills = 0;
                    take(&block, place, &mut self.buses, &mut self.interfaces, &mut batch)
                        .map_err(|problem| ReadError::format(&self.name, Format::Pcap, problem))?;
                    self.reader.consume(used);
                }
                Err(PcapError::Eof) => self.ended = true,
                Err(PcapError::Incomplete(_)) if refills < PATIENCE => {
                    refills += 1;
                    if self.reader.refill().is_err() {
                        refills = PATIENCE;
                    }
                }
                Err(PcapError::UnexpectedEof | PcapError::Incomplete(_)) => {
                    batch.losses.list(Loss::Truncated, place, b"");
                    self.ended = true;
                }
                // Without a length that holds, the next record is nowhere.
                Err(_) => {
                    batch.losses.list(Loss::Corrupt, place, b"");
                    self.ended = true;
                }
            }
        }
        batch.interfaces = self.interfaces.clone();
        let nothing = self.ended && batch.frames.is_empty() && batch.losses == Losses::default();
        Ok(if nothing { None } else { Some(batch) })
    }
}

fn take(
    block: &PcapBlockOwned<'_>,
    place: Place,
    buses: &mut Vec<Bus>,
    interfaces: &mut Interfaces,
    batch: &mut Batch,
) -> Result<(), String> {
    match block {
        PcapBlockOwned::LegacyHeader(header) => {
            if header.network != SOCKETCAN {
                return Err(not_can(header.network));
            }
            let resolution =
                if header.is_nanosecond_precision() { 1_000_000_000 } else { 1_000_000 };
            let number = interfaces.number(b"can0").unwrap_or_default();
            buses.push(Bus { can: true, number, resolution, offset_s: 0 });
        }
        PcapBlockOwned::Legacy(packet) => {
            let Some(bus) = buses.first() else { return Ok(()) };
            let whole = i64::from(packet.ts_sec).saturating_mul(1_000_000_000);
            let part = u64::from(packet.ts_usec) * (1_000_000_000 / bus.resolution);
            let ns = whole.saturating_add(i64::try_from(part).unwrap_or(0));
            packet_of(packet.data, ns, bus.number, place, batch);
        }
        PcapBlockOwned::NG(Block::InterfaceDescription(bus)) => {
            let given = bus.if_name().and_then(Result::ok).map(|name| name.as_bytes().to_vec());
            let name = given.unwrap_or_else(|| format!("can{}", buses.len()).into_bytes());
            let number = interfaces.number(&name).unwrap_or_default();
            buses.push(Bus {
                can: bus.linktype == SOCKETCAN,
                number,
                resolution: bus.ts_resolution().filter(|unit| *unit > 0).unwrap_or(1_000_000),
                offset_s: bus.ts_offset(),
            });
        }
        PcapBlockOwned::NG(Block::EnhancedPacket(packet)) => {
            let bus = usize::try_from(packet.if_id).ok().and_then(|at| buses.get(at));
            let Some(bus) = bus.filter(|bus| bus.can) else {
                batch.losses.count(Loss::Unsupported);
                return Ok(());
            };
            let ticks = u64::from(packet.ts_high) << 32 | u64::from(packet.ts_low);
            let ns = u128::from(ticks) * 1_000_000_000 / u128::from(bus.resolution);
            let offset = bus.offset_s.saturating_mul(1_000_000_000);
            let ns = i64::try_from(ns).unwrap_or(i64::MAX).saturating_add(offset);
            let length = usize::try_from(packet.caplen).unwrap_or(0).min(packet.data.len());
            packet_of(&packet.data[..length], ns, bus.number, place, batch);
        }
        PcapBlockOwned::NG(Block::SimplePacket(_)) => batch.losses.count(Loss::Unsupported),
        PcapBlockOwned::NG(_) => {}
    }
    Ok(())
}

fn not_can(link: Linktype) -> String {
    format!("its link type is {}; only SocketCAN (227) is read", link.0)
}

fn packet_of(bytes: &[u8], ns: i64, interface: Interface, place: Place, batch: &mut Batch) {
    let Some((header, data)) = bytes.split_first_chunk::<HEADER>() else {
        batch.losses.list(Loss::Truncated, place, b"");
        return;
    };
    let [a, b, c, d, length, flags, ..] = *header;
    let id = u32::from_be_bytes([a, b, c, d]);
    let length = usize::from(length);
    if id & ERROR != 0 {
        batch.losses.count(Loss::ErrorFrame);
    } else if id & REMOTE != 0 {
        batch.losses.count(Loss::Remote);
    } else if length > 8 || flags & 4 != 0 {
        batch.losses.count(Loss::FlexibleRate);
    } else if data.len() < length {
        batch.losses.list(Loss::Truncated, place, b"");
    } else {
        let id = if id & EXTENDED != 0 {
            CanId::extended(id & 0x1FFF_FFFF)
        } else {
            CanId::standard(id & !EXTENDED)
        };
        match (id, Data::new(&data[..length])) {
            (Some(id), Some(data)) => {
                let time = Timestamp::from_ns(ns);
                batch.frames.push(Frame { time, interface, id, data });
            }
            _ => batch.losses.list(Loss::Malformed, place, b""),
        }
    }
}
