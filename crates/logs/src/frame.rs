//! One frame of a bus, as every log format tells it.

use std::fmt;
use std::time::Duration;

/// A place in time, in nanoseconds: since 1970-01-01 UTC where the log tells the date, since the
/// start of the log where it does not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Timestamp(i64);

impl Timestamp {
    /// From nanoseconds.
    pub const fn from_ns(ns: i64) -> Self {
        Self(ns)
    }

    /// From microseconds; beyond the years 1677 to 2262 it stops at the end of the range.
    pub const fn from_us(us: i64) -> Self {
        Self(us.saturating_mul(1_000))
    }

    /// In nanoseconds.
    pub const fn as_ns(self) -> i64 {
        self.0
    }

    /// In microseconds, rounded down.
    pub const fn as_us(self) -> i64 {
        self.0.div_euclid(1_000)
    }

    /// The whole second it lies in.
    pub const fn second(self) -> i64 {
        self.0.div_euclid(1_000_000_000)
    }

    /// Nanoseconds from `earlier` to here; negative where the clock went back.
    pub const fn ns_since(self, earlier: Self) -> i64 {
        self.0.saturating_sub(earlier.0)
    }

    /// Later by nanoseconds, earlier where they are negative; stops at the end of the range.
    #[must_use]
    pub const fn after_ns(self, ns: i64) -> Self {
        Self(self.0.saturating_add(ns))
    }

    /// Later by a duration; stops at the end of the range.
    #[must_use]
    pub fn after(self, wait: Duration) -> Self {
        Self(self.0.saturating_add(i64::try_from(wait.as_nanos()).unwrap_or(i64::MAX)))
    }
}

/// Number of a bus in a log, in the order in which the log names them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Interface(pub u8);

/// A CAN identifier of 11 or 29 bits.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct CanId(u32);

impl CanId {
    const EXTENDED: u32 = 0x8000_0000;

    /// 29 bits; `None` where the number has more.
    pub const fn extended(id: u32) -> Option<Self> {
        if id < 1 << 29 { Some(Self(id | Self::EXTENDED)) } else { None }
    }

    /// 11 bits; `None` where the number has more.
    pub const fn standard(id: u32) -> Option<Self> {
        if id < 1 << 11 { Some(Self(id)) } else { None }
    }

    /// Whether it has 29 bits.
    pub const fn is_extended(self) -> bool {
        self.0 & Self::EXTENDED != 0
    }

    /// The number alone.
    pub const fn number(self) -> u32 {
        self.0 & !Self::EXTENDED
    }
}

impl fmt::Debug for CanId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "CanId({self})")
    }
}

/// Eight hexadecimal digits for 29 bits, three for 11, as candump prints them.
impl fmt::Display for CanId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let number = self.number();
        if self.is_extended() { write!(f, "{number:08X}") } else { write!(f, "{number:03X}") }
    }
}

/// Up to eight bytes of data.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Data {
    bytes: [u8; 8],
    length: u8,
}

impl Data {
    /// From at most eight bytes; `None` where there are more.
    pub fn new(bytes: &[u8]) -> Option<Self> {
        let mut padded = [0; 8];
        padded.get_mut(..bytes.len())?.copy_from_slice(bytes);
        Some(Self { bytes: padded, length: u8::try_from(bytes.len()).ok()? })
    }

    /// From eight bytes of which the first `length` count; the rest become zero.
    pub const fn padded(bytes: [u8; 8], length: u8) -> Self {
        let length = if length > 8 { 8 } else { length };
        let keep = if length == 0 { 0 } else { u64::MAX >> (64 - 8 * length as u32) };
        Self { bytes: (u64::from_le_bytes(bytes) & keep).to_le_bytes(), length }
    }

    /// The bytes that count.
    pub fn bytes(&self) -> &[u8] {
        &self.bytes[..usize::from(self.length)]
    }

    /// All eight as one little-endian number, zeros after the last that counts.
    pub const fn word(&self) -> u64 {
        u64::from_le_bytes(self.bytes)
    }

    /// How many bytes count.
    pub const fn length(&self) -> usize {
        self.length as usize
    }
}

impl fmt::Debug for Data {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02X?}", self.bytes())
    }
}

/// One data frame of a bus.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Frame {
    /// When it was seen.
    pub time: Timestamp,
    /// On which bus of the log.
    pub interface: Interface,
    /// What it is called.
    pub id: CanId,
    /// What it says.
    pub data: Data,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_beyond_their_bits_are_refused() {
        assert!(CanId::extended(0x1FFF_FFFF).is_some_and(CanId::is_extended));
        assert_eq!(CanId::extended(0x2000_0000), None);
        assert_eq!(CanId::standard(0x800), None);
        assert_eq!(CanId::standard(0x7FF).map(|id| id.to_string()).as_deref(), Some("7FF"));
    }

    #[test]
    fn data_beyond_their_length_are_zero() {
        let data = Data::padded([1, 2, 3, 4, 5, 6, 7, 8], 3);
        assert_eq!((data.bytes(), data.word()), (&[1, 2, 3][..], 0x03_0201));
        assert_eq!(Data::padded([9; 8], 0).word(), 0);
        assert_eq!(Data::new(&[0; 9]), None);
    }

    #[test]
    fn a_second_before_the_start_is_negative() {
        assert_eq!(Timestamp::from_ns(-1).second(), -1);
        assert_eq!(Timestamp::from_us(1_999_999).second(), 1);
    }
}
