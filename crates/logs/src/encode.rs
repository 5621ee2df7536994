//! From values and series back to frames: the inverse of decoding.
//!
//! Values are rounded to the nearest step of their signal and nothing else is lost. A message of more
//! than eight bytes is sent to everyone by the transport protocol (BAM).
//!
//! # Source
//! `linux-j1939`, transport; the layout of its packets as an open decoder's tests have it.

use std::time::Duration;

use crate::frame::{Data, Frame, Interface, Timestamp};
use crate::identifier::{Identifier, Pgn, SourceAddress};
use crate::series::{Quality, Series};
use crate::signal::{Coding, Group, Spn};
use crate::table;
use crate::value::Value;

/// Bytes that a transported message can have at most: 255 packets of 7.
pub const LONGEST_MESSAGE: usize = 1785;
/// Time between the packets of a transported message.
const BETWEEN_PACKETS: Duration = Duration::from_millis(50); // 46 to 56 ms in an open capture
/// Control byte of a message to everyone.
const BROADCAST_ANNOUNCED: u8 = 32;
/// Least urgent priority, which transport and requests use.
const TRANSPORT_PRIORITY: u8 = 7;
const REQUEST_PRIORITY: u8 = 6;

/// Why something cannot be put into frames.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum EncodeError {
    /// The group is not in the table.
    #[error("group {0} is not in the signal table")]
    UnknownGroup(Pgn),
    /// The signal is not in the group.
    #[error("signal {spn} does not belong to group {pgn}")]
    UnknownSignal {
        /// The group.
        pgn: Pgn,
        /// The signal.
        spn: Spn,
    },
    /// The value does not fit the signal.
    #[error("{value:?} does not fit signal {spn}")]
    DoesNotFit {
        /// The signal.
        spn: Spn,
        /// The value.
        value: Value,
    },
    /// Nothing, or more than transport carries.
    #[error("a message has 1 to 1785 bytes, not {0}")]
    Length(usize),
    /// A long message to one address, which needs an answer from it.
    #[error("a message of {0} bytes can only be sent to everyone")]
    NotToEveryone(usize),
}

/// A message of one group, of any length that transport carries.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Message {
    /// When it is sent, or begun.
    pub time: Timestamp,
    /// On which bus.
    pub interface: Interface,
    /// Group, sender, receiver and priority.
    pub identifier: Identifier,
    /// Its bytes.
    pub data: Vec<u8>,
}

impl Message {
    /// A request for a group.
    ///
    /// ```
    /// use logs::{Interface, Pgn, SourceAddress, Timestamp, encode::Message};
    /// let of = Pgn::new(65146).ok_or("a group")?;
    /// let (from, to) = (SourceAddress(0xF9), SourceAddress(0x33));
    /// let asked = Message::request(Timestamp::default(), Interface(0), of, from, to);
    /// let frame = asked.frames()?[0];
    /// assert_eq!(frame.id.to_string(), "18EA33F9");
    /// assert_eq!(frame.data.bytes(), [0x7A, 0xFE, 0x00]);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn request(
        time: Timestamp,
        interface: Interface,
        group: Pgn,
        from: SourceAddress,
        to: SourceAddress,
    ) -> Self {
        let identifier = Identifier {
            priority: REQUEST_PRIORITY,
            pgn: Pgn::REQUEST,
            source: from,
            destination: to,
        };
        Self { time, interface, identifier, data: three_bytes(group).to_vec() }
    }

    /// The frames that carry it: one, or an announcement and its packets.
    ///
    /// # Errors
    /// [`EncodeError`] for an empty or too long message, or a long one to a single address.
    pub fn frames(&self) -> Result<Vec<Frame>, EncodeError> {
        let length = self.data.len();
        if length == 0 || length > LONGEST_MESSAGE {
            return Err(EncodeError::Length(length));
        }
        if let Some(data) = Data::new(&self.data) {
            return Ok(vec![self.frame(self.time, self.identifier, data)]);
        }
        if self.identifier.pgn.is_addressed() && self.identifier.destination != SourceAddress::ALL {
            return Err(EncodeError::NotToEveryone(length));
        }
        let packets = length.div_ceil(7);
        let identifier = |pgn| Identifier {
            priority: TRANSPORT_PRIORITY,
            pgn,
            source: self.identifier.source,
            destination: SourceAddress::ALL,
        };
        let [low, high, ..] = length.to_le_bytes();
        let [count, ..] = packets.to_le_bytes();
        let [p0, p1, p2] = three_bytes(self.identifier.pgn);
        let announced = [BROADCAST_ANNOUNCED, low, high, count, 0xFF, p0, p1, p2];
        let management = identifier(Pgn::TRANSPORT_MANAGEMENT);
        let mut frames = vec![self.frame(self.time, management, Data::padded(announced, 8))];
        let mut time = self.time;
        for (number, part) in (1_u8..).zip(self.data.chunks(7)) {
            time = time.after(BETWEEN_PACKETS);
            let mut packet = [0xFF; 8];
            packet[0] = number;
            packet[1..=part.len()].copy_from_slice(part);
            let data = identifier(Pgn::TRANSPORT_DATA);
            frames.push(self.frame(time, data, Data::padded(packet, 8)));
        }
        Ok(frames)
    }

    fn frame(&self, time: Timestamp, identifier: Identifier, data: Data) -> Frame {
        Frame { time, interface: self.interface, id: identifier.join(), data }
    }
}

/// The bytes of a group with some signals set, all others not available.
///
/// It is eight bytes long, or as long as its last signal needs.
///
/// # Errors
/// [`EncodeError`] for a signal the group does not have, or a value that does not fit.
pub fn data_of(group: &Group, values: &[(Spn, Value)]) -> Result<Vec<u8>, EncodeError> {
    let mut data = vec![0xFF; length_of(group)];
    for &(spn, value) in values {
        let unknown = EncodeError::UnknownSignal { pgn: group.pgn, spn };
        let signal = group.signal(spn).ok_or(unknown)?;
        let does_not_fit = || EncodeError::DoesNotFit { spn, value };
        let raw = signal.encode(value).ok_or_else(does_not_fit)?;
        if !signal.set_raw(&mut data, raw) {
            return Err(does_not_fit());
        }
    }
    Ok(data)
}

/// Bytes that a group is sent in.
fn length_of(group: &Group) -> usize {
    let ends = group
        .signals
        .iter()
        .map(|signal| (usize::from(signal.start) + usize::from(signal.bits)).div_ceil(8));
    ends.max().unwrap_or(0).max(8)
}

/// The messages of a series, one for each row.
///
/// # Errors
/// [`EncodeError`] for a group or signal that the table does not have, or a value that does not fit.
pub fn messages_of(series: &Series, priority: u8) -> Result<Vec<Message>, EncodeError> {
    let group = table::group(series.pgn).ok_or(EncodeError::UnknownGroup(series.pgn))?;
    let location = group.location_signal();
    let identifier = Identifier {
        priority,
        pgn: series.pgn,
        source: series.source,
        destination: SourceAddress::ALL,
    };
    let message = |(row, &time): (usize, &Timestamp)| {
        let mut values = Vec::with_capacity(series.columns.len() + 1);
        for column in &series.columns {
            let (Some(&number), Some(&quality)) = (column.values.get(row), column.quality.get(row))
            else {
                continue;
            };
            let spn = column.channel.spn;
            let signal =
                group.signal(spn).ok_or(EncodeError::UnknownSignal { pgn: series.pgn, spn })?;
            let whole = matches!(signal.coding, Coding::State | Coding::Bits | Coding::Address);
            match quality {
                Quality::Value | Quality::Stale if whole => values.push((spn, code(spn, number)?)),
                Quality::Value | Quality::Stale => values.push((spn, Value::Number(number))),
                Quality::Error => values.push((spn, Value::Error)),
                Quality::Absent | Quality::NeverSent | Quality::Reserved => {
                    values.push((spn, Value::Absent));
                }
            }
            if let (Some(at), Some(signal)) = (column.channel.location, location) {
                values.push((signal.spn, Value::Code(u32::from(at))));
            }
        }
        let data = data_of(group, &values)?;
        Ok(Message { time, interface: series.interface, identifier, data })
    };
    series.times.iter().enumerate().map(message).collect()
}

fn code(spn: Spn, number: f64) -> Result<Value, EncodeError> {
    let whole = number.round();
    if !(0.0..=f64::from(u32::MAX)).contains(&whole) {
        return Err(EncodeError::DoesNotFit { spn, value: Value::Number(number) });
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "checked above")]
    Ok(Value::Code(whole as u32))
}

fn three_bytes(pgn: Pgn) -> [u8; 3] {
    let [low, middle, high, _] = pgn.number().to_le_bytes();
    [low, middle, high]
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::series::{Channel, Column, Measured};

    fn pgn(number: u32) -> Pgn {
        Pgn::new(number).unwrap()
    }

    // The constructed vector of our notes for tire condition: row 2, position 1, 604 kPa, 40 °C,
    // enabled, no fault, 5 Pa/s, in range.
    #[test]
    fn table_tire_condition_of_known_bytes() {
        let group = table::group(pgn(65268)).unwrap();
        let values = [
            (Spn(929), Value::Code(0x21)),
            (Spn(241), Value::Number(604.0)),
            (Spn(242), Value::Number(40.0)),
            (Spn(1699), Value::Code(1)),
            (Spn(1698), Value::Code(0)),
            (Spn(1697), Value::Code(0)),
            (Spn(2586), Value::Number(5.0)),
            (Spn(2587), Value::Code(2)),
        ];
        let data = data_of(group, &values).unwrap();
        assert_eq!(data, [0x21, 0x97, 0x20, 0x27, 0xC1, 0x32, 0x00, 0x5F]);
    }

    #[test]
    fn a_long_message_is_announced_and_cut_into_sevens() {
        let identifier = Identifier {
            priority: 6,
            pgn: pgn(65260),
            source: SourceAddress(0),
            destination: SourceAddress::ALL,
        };
        let data = b"MADE-LOG-NOT-REAL*".to_vec();
        let time = Timestamp::from_us(10);
        let message = Message { time, interface: Interface(0), identifier, data: data.clone() };
        let frames = message.frames().unwrap();
        assert_eq!(frames.len(), 4);
        assert_eq!(frames[0].id.to_string(), "1CECFF00");
        assert_eq!(frames[0].data.bytes(), [32, 18, 0, 3, 0xFF, 0xEC, 0xFE, 0x00]);
        assert_eq!(frames[3].id.to_string(), "1CEBFF00");
        assert_eq!(frames[3].data.bytes(), [3, b'E', b'A', b'L', b'*', 0xFF, 0xFF, 0xFF]);
        let together: Vec<u8> =
            frames[1..].iter().flat_map(|frame| frame.data.bytes()[1..].to_vec()).collect();
        assert_eq!(together[..18], data[..]);
        assert_eq!(frames[1].time.ns_since(time), 50_000_000);
    }

    #[test]
    fn what_cannot_be_sent_is_refused() {
        let group = table::group(pgn(65268)).unwrap();
        let too_high = data_of(group, &[(Spn(241), Value::Number(1200.0))]);
        assert!(matches!(too_high, Err(EncodeError::DoesNotFit { .. })));
        let foreign = data_of(group, &[(Spn(84), Value::Number(20.0))]);
        assert!(matches!(foreign, Err(EncodeError::UnknownSignal { .. })));
        let identifier = Identifier {
            priority: 6,
            pgn: pgn(44544),
            source: SourceAddress(0),
            destination: SourceAddress(0x33),
        };
        let message = |length| Message {
            time: Timestamp::default(),
            interface: Interface(0),
            identifier,
            data: vec![0; length],
        };
        assert_eq!(message(0).frames(), Err(EncodeError::Length(0)));
        assert_eq!(message(1786).frames(), Err(EncodeError::Length(1786)));
        assert_eq!(message(9).frames(), Err(EncodeError::NotToEveryone(9)));
    }

    proptest! {
        #[test]
        fn whatever_is_encoded_is_decoded_again_within_half_a_step(
            which in 0..table::GROUPS.len(),
            shares in prop::collection::vec(0.0..1.0f64, 64),
            absent in prop::collection::vec(prop::bool::weighted(0.2), 64),
        ) {
            let group = table::GROUPS[which];
            let mut columns = Vec::new();
            for (index, signal) in group.signals.iter().enumerate() {
                let (share, absent) = (shares[index % 64], absent[index % 64]);
                // A place in the range of values, under the codes.
                let all = u32::MAX >> (32 - u32::from(signal.bits));
                let top = match signal.bits {
                    1 => 1.0,
                    2..=7 => f64::from(all - 2),
                    _ => (f64::from(all) * 0.97).floor(),
                };
                let number = match signal.coding {
                    Coding::Number { scale, offset } => share * top * scale + offset,
                    Coding::State | Coding::Bits | Coding::Address => {
                        (share * f64::from((1_u32 << signal.bits.min(16)) - 3).max(0.0)).floor()
                    }
                    // No group of the table has signed numbers.
                    Coding::Text | Coding::Signed { .. } => continue,
                };
                columns.push(Column {
                    channel: Channel {
                        spn: signal.spn,
                        name: signal.name.clone(),
                        unit: signal.unit,
                        location: None,
                        measured: Some(Measured::InTire),
                    },
                    values: vec![number],
                    quality: vec![if absent { Quality::Absent } else { Quality::Value }],
                });
            }
            let series = Series {
                unit: "T-1".into(),
                interface: Interface(0),
                pgn: group.pgn,
                source: SourceAddress(0x33),
                times: vec![Timestamp::from_us(5)],
                columns,
            };
            let messages = messages_of(&series, 6).unwrap();
            for column in &series.columns {
                let signal = group.signal(column.channel.spn).unwrap();
                let decoded = signal.decode(&messages[0].data).unwrap();
                if column.quality[0] == Quality::Absent {
                    prop_assert!(signal.bits == 1 || decoded == Value::Absent);
                    continue;
                }
                let step = match signal.coding {
                    Coding::Number { scale, .. } => scale,
                    _ => 0.0,
                };
                let off = (decoded.number().unwrap() - column.values[0]).abs();
                prop_assert!(off <= 0.5 * step * (1.0 + 1e-9), "{} {off}", signal.name);
            }
        }
    }
}
