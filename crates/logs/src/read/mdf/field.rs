//! A number that stands in a record: its bits, their order, and whether its writer calls it invalid.

use super::block::{Block, Fault};

/// How the bits are meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Unsigned,
    Signed,
    Float,
    /// Not a number: only its place is of use.
    Bytes,
}

/// A number in a record.
#[derive(Debug, Clone, Copy)]
pub(super) struct Field {
    /// First byte of it, from the first byte after the record's own number.
    pub(super) byte: usize,
    bit: u32,
    pub(super) bits: u32,
    kind: Kind,
    big_endian: bool,
    /// The bit of the record that marks it as invalid.
    invalid: Option<usize>,
}

impl Field {
    /// What a channel block says, in a record with so many bytes of data before the marks of validity.
    pub(super) fn of(channel: &Block, data_bytes: usize) -> Result<Self, Fault> {
        let kind = channel.u8(2)?;
        let (kind, big_endian) = match kind {
            0 | 1 => (Kind::Unsigned, kind == 1),
            2 | 3 => (Kind::Signed, kind == 3),
            4 | 5 => (Kind::Float, kind == 5),
            _ => (Kind::Bytes, false),
        };
        let mark = channel.u32(16)? as usize;
        Ok(Self {
            byte: channel.u32(4)? as usize,
            bit: u32::from(channel.u8(3)?),
            bits: channel.u32(8)?,
            kind,
            big_endian,
            invalid: (channel.u32(12)? & 2 != 0)
                .then(|| data_bytes.saturating_mul(8).saturating_add(mark)),
        })
    }

    /// Whether the writer of the record calls this part of it invalid.
    pub(super) fn is_invalid(&self, record: &[u8]) -> bool {
        self.invalid
            .is_some_and(|bit| record.get(bit / 8).is_some_and(|byte| byte & (1 << (bit % 8)) != 0))
    }

    /// Its bits; `None` where the record is too short, or it is no number of up to 64 bits.
    pub(super) fn raw(&self, record: &[u8]) -> Option<u64> {
        if self.kind == Kind::Bytes { None } else { self.place(record) }
    }

    /// Its bits, whatever they stand for: of values apart, where they are.
    pub(super) fn place(&self, record: &[u8]) -> Option<u64> {
        let wanted = (1..=64).contains(&self.bits) && self.bit < 8;
        let many = (self.bit + self.bits.min(64)).div_ceil(8) as usize;
        let bytes = record.get(self.byte..)?.get(..many).filter(|_| wanted)?;
        let join = |number: u128, byte: &u8| number << 8 | u128::from(*byte);
        let number = if self.big_endian {
            bytes.iter().fold(0, join)
        } else {
            bytes.iter().rev().fold(0, join)
        };
        let mask = u64::MAX >> (64 - self.bits);
        #[expect(clippy::cast_possible_truncation, reason = "the mask keeps 64 bits at most")]
        Some((number >> self.bit) as u64 & mask)
    }

    /// Its number.
    pub(super) fn number(&self, record: &[u8]) -> Option<f64> {
        let raw = self.raw(record)?;
        #[expect(
            clippy::cast_precision_loss,
            reason = "times of 53 bits are exact to the nanosecond for 104 days"
        )]
        match (self.kind, self.bits) {
            (Kind::Float, 64) => Some(f64::from_bits(raw)),
            (Kind::Float, 32) => u32::try_from(raw).ok().map(|raw| f64::from(f32::from_bits(raw))),
            (Kind::Float | Kind::Bytes, _) => None,
            (Kind::Unsigned, _) => Some(raw as f64),
            (Kind::Signed, bits) => {
                Some(((raw << (64 - bits)).cast_signed() >> (64 - bits)) as f64)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A channel block: kind of data, bit, byte, bits.
    fn field(kind: u8, bit: u8, byte: u32, bits: u32) -> Field {
        let mut body = vec![0, 0, kind, bit];
        body.extend([byte, bits, 0, 0].map(u32::to_le_bytes).concat());
        Field::of(&Block::of(0, body), 8).unwrap()
    }

    #[test]
    fn worked_bits_in_either_order() {
        let record = [0x12, 0x34, 0x56, 0xF8];
        assert_eq!(field(0, 0, 0, 16).raw(&record), Some(0x3412));
        assert_eq!(field(1, 0, 0, 16).raw(&record), Some(0x1234));
        assert_eq!(field(0, 4, 0, 8).raw(&record), Some(0x41));
        assert_eq!(field(2, 3, 3, 5).number(&record), Some(-1.0));
        assert_eq!(field(4, 0, 0, 32).number(&1.5_f32.to_le_bytes()), Some(1.5));
    }

    #[test]
    fn what_does_not_fit_is_none() {
        let record = [0; 4];
        assert_eq!(field(0, 0, 3, 9).raw(&record), None);
        assert_eq!(field(0, 0, u32::MAX, 8).raw(&record), None);
        assert_eq!(field(0, 0, 0, 0).raw(&record), None);
        assert_eq!(field(0, 0, 0, u32::MAX).raw(&record), None);
        assert_eq!(field(0, 200, 0, 8).raw(&record), None);
        assert_eq!(field(10, 0, 0, 8).raw(&record), None);
    }
}
