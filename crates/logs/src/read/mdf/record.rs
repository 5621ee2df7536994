//! One record to one frame.

use super::channels::{Bytes, Layout};
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};
use crate::read::batch::Interfaces;
use crate::read::losses::Loss;

/// Marks an identifier of 29 bits where no channel of its own does.
const EXTENDED: u64 = 0x8000_0000;

/// A frame whose data may still be missing.
#[derive(Debug, Clone, Copy)]
pub(super) struct Envelope {
    time: Timestamp,
    interface: Interface,
    id: CanId,
    flexible: bool,
    length: Option<u64>,
}

impl Envelope {
    /// What a record says besides the data.
    pub(super) fn of(
        layout: &Layout,
        record: &[u8],
        number: u64,
        start: Timestamp,
        interfaces: &mut Interfaces,
    ) -> Result<Self, Loss> {
        if layout.id.is_invalid(record) {
            return Err(Loss::Malformed);
        }
        let optional = |field: &Option<_>| match field {
            Some(field) => Self::number(field, record).map(Some),
            None => Ok(None),
        };
        let id = layout.id.raw(record).ok_or(Loss::Malformed)?;
        let extended = match optional(&layout.extended)? {
            Some(extended) => extended != 0,
            None => id & EXTENDED != 0 || id > 0x7FF,
        };
        let id = u32::try_from(id & !EXTENDED).ok();
        let id = if extended { id.and_then(CanId::extended) } else { id.and_then(CanId::standard) };
        let bus = optional(&layout.bus)?.unwrap_or(0);
        let bus = interfaces.number(format!("{bus}").as_bytes());
        let time = layout.clock.ns(record, number).ok_or(Loss::Malformed)?;
        Ok(Self {
            time: start.after_ns(time),
            interface: bus.unwrap_or(Interface(254)),
            id: id.ok_or(Loss::Malformed)?,
            flexible: optional(&layout.flexible)?.is_some_and(|flexible| flexible != 0),
            // The length code of a classic frame goes up to 15 and means 8 from there on.
            length: optional(&layout.length)?.or(optional(&layout.code)?.map(|code| code.min(8))),
        })
    }

    fn number(field: &super::field::Field, record: &[u8]) -> Result<u64, Loss> {
        field.raw(record).ok_or(Loss::Malformed)
    }

    /// The frame with its data, which may stand with more bytes than count.
    pub(super) fn with(self, data: &[u8]) -> Result<Frame, Loss> {
        let length = self.length.map_or(data.len(), |length| usize::try_from(length).unwrap_or(9));
        if self.flexible || length > 8 {
            return Err(Loss::FlexibleRate);
        }
        let data = data.get(..length).and_then(Data::new).ok_or(Loss::Malformed)?;
        Ok(Frame { time: self.time, interface: self.interface, id: self.id, data })
    }
}

/// The bytes that stand in the record for its data.
pub(super) fn data_in(bytes: &Bytes, record: &[u8]) -> Result<Vec<u8>, Loss> {
    let Bytes::Here(field) = bytes else { return Ok(Vec::new()) };
    if field.is_invalid(record) {
        return Err(Loss::Malformed);
    }
    let many = (field.bits / 8).min(64) as usize;
    let data = record.get(field.byte..).and_then(|data| data.get(..many));
    data.map(<[u8]>::to_vec).ok_or(Loss::Malformed)
}
