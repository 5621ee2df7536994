//! Where a signal stands in its group, and how its bits become a value.

use std::borrow::Cow;
use std::fmt;

use crate::identifier::Pgn;
use crate::value::{Class, Value, class};

/// Number of a signal (SPN).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Spn(pub u32);

impl fmt::Display for Spn {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

/// How the bits of a signal are read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Coding {
    /// `scale × raw + offset`, with the usual codes for absent, error and reserved.
    Number {
        /// Unit a bit.
        scale: f64,
        /// Added after.
        offset: f64,
    },
    /// The same with a sign bit and no codes: a user's own signal.
    Signed {
        /// Unit a bit.
        scale: f64,
        /// Added after.
        offset: f64,
    },
    /// States, with the usual codes for absent and error.
    State,
    /// Every pattern counts, only all ones means absent: locations, bit maps.
    Bits,
    /// An address: FF absent, FE none.
    Address,
    /// Two letters.
    Text,
}

/// Unit of a signal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the names say it")]
pub enum Unit {
    None,
    Kilopascal,
    PascalPerSecond,
    Celsius,
    Percent,
    Count,
    Second,
    Minute,
    Hour,
    Day,
    Month,
    Year,
    Meter,
    Kilometer,
    KilometerPerHour,
    KilometerPerLiter,
    Kilogram,
    Liter,
    LiterPerHour,
    Degree,
    Radian,
    RadianPerSecond,
    MeterPerSecondSquared,
    Revolution,
    RevolutionPerMinute,
    Turn,
    Gear,
    Address,
}

impl Unit {
    /// The sign, empty for codes and plain numbers.
    pub const fn sign(self) -> &'static str {
        match self {
            Self::None | Self::Count | Self::Gear | Self::Address | Self::Month | Self::Year => "",
            Self::Kilopascal => "kPa",
            Self::PascalPerSecond => "Pa/s",
            Self::Celsius => "°C",
            Self::Percent => "%",
            Self::Second => "s",
            Self::Minute => "min",
            Self::Hour => "h",
            Self::Day => "d",
            Self::Meter => "m",
            Self::Kilometer => "km",
            Self::KilometerPerHour => "km/h",
            Self::KilometerPerLiter => "km/l",
            Self::Kilogram => "kg",
            Self::Liter => "l",
            Self::LiterPerHour => "l/h",
            Self::Degree => "°",
            Self::Radian => "rad",
            Self::RadianPerSecond => "rad/s",
            Self::MeterPerSecondSquared => "m/s²",
            Self::Revolution => "r",
            Self::RevolutionPerMinute => "rpm",
            Self::Turn => "turns",
        }
    }
}

/// Order of the bytes of a signal. J1939 is Intel throughout; a user's own file may say otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Order {
    /// Lowest byte first; `start` is the lowest bit.
    Intel,
    /// Highest byte first; `start` is the highest bit, bits counted in each byte from the lowest.
    Motorola,
}

/// A signal is there only where another one has this number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct When {
    /// First bit of the other, Intel.
    pub start: u16,
    /// Its bits, 32 at most.
    pub bits: u8,
    /// Its number.
    pub equals: u32,
}

/// A signal of a group.
#[derive(Debug, Clone, PartialEq)]
pub struct Signal {
    /// Its number.
    pub spn: Spn,
    /// Our own name for it, in lower case with underscores; `spn_` and the number where it has none.
    pub name: Cow<'static, str>,
    /// First bit, counted from the lowest bit of the first byte.
    pub start: u16,
    /// How many bits, 32 at most.
    pub bits: u8,
    /// In which order.
    pub order: Order,
    /// How they are read.
    pub coding: Coding,
    /// Unit of the number.
    pub unit: Unit,
    /// On what its being there depends.
    pub when: Option<When>,
}

impl Signal {
    /// The raw bits; `None` where the data end before them, or another signal rules this one out.
    pub fn raw(&self, data: &[u8]) -> Option<u32> {
        if let Some(When { start, bits, equals }) = self.when
            && intel(data, start, bits) != Some(equals)
        {
            return None;
        }
        match self.order {
            Order::Intel => intel(data, self.start, self.bits),
            Order::Motorola => motorola(data, self.start, self.bits),
        }
    }

    /// The raw bits in data of up to eight bytes, little-endian in one word; as [`Signal::raw`].
    pub fn raw_of_word(&self, word: u64, length: u8) -> Option<u32> {
        let needed = (self.start + u16::from(self.bits)).div_ceil(8);
        if self.order == Order::Intel
            && self.when.is_none()
            && needed <= 8
            && u16::from(length) >= needed
        {
            let mask = u64::MAX >> (64 - u32::from(self.bits));
            return u32::try_from(word >> self.start & mask).ok();
        }
        self.raw(&word.to_le_bytes()[..usize::from(length.min(8))])
    }

    /// Bytes that the data must have for it.
    pub fn bytes_needed(&self) -> usize {
        let last = match self.order {
            Order::Intel => usize::from(self.start) + usize::from(self.bits),
            Order::Motorola => {
                let above = 7 - self.start % 8;
                usize::from(self.start / 8) * 8 + usize::from(above) + usize::from(self.bits)
            }
        };
        last.div_ceil(8)
    }

    /// What these raw bits say.
    pub fn value_of(&self, raw: u32) -> Value {
        match self.coding {
            Coding::Bits | Coding::Text if raw == self.all_ones() => Value::Absent,
            Coding::Bits => Value::Code(raw),
            Coding::Text => {
                let [first, second, ..] = raw.to_le_bytes();
                Value::Text([first, second])
            }
            Coding::Address => match raw {
                0xFF => Value::Absent,
                0xFE => Value::Error,
                _ => Value::Code(raw),
            },
            Coding::Signed { scale, offset } => {
                let unused = 32 - u32::from(self.bits);
                let signed = (raw << unused).cast_signed() >> unused;
                Value::Number(f64::from(signed) * scale + offset)
            }
            Coding::Number { .. } | Coding::State => match class(raw, self.bits) {
                Class::Value => self.in_unit(raw),
                Class::Absent => Value::Absent,
                Class::Error => Value::Error,
                Class::Reserved => Value::Reserved(raw),
            },
        }
    }

    fn in_unit(&self, raw: u32) -> Value {
        match self.coding {
            Coding::Number { scale, offset } => Value::Number(f64::from(raw) * scale + offset),
            _ => Value::Code(raw),
        }
    }

    /// What the data say; `None` where they end before the signal.
    pub fn decode(&self, data: &[u8]) -> Option<Value> {
        self.raw(data).map(|raw| self.value_of(raw))
    }

    /// The raw bits for a value, rounded to the nearest step; `None` where the value does not fit.
    pub fn encode(&self, value: Value) -> Option<u32> {
        let all = self.all_ones();
        let raw = match (value, self.coding) {
            (Value::Absent, _) => return Some(all),
            (Value::Error, Coding::Address) => return Some(0xFE),
            (Value::Error, Coding::Number { .. } | Coding::State) if self.bits >= 8 => {
                return Some(0xFE << (self.bits - 8) | (all >> 8));
            }
            (Value::Error, Coding::Number { .. } | Coding::State) => return Some(all - 1),
            (Value::Reserved(raw), _) if raw <= all => return Some(raw),
            (Value::Number(number), Coding::Number { scale, offset }) => {
                let steps = ((number - offset) / scale).round();
                if !(0.0..=f64::from(all)).contains(&steps) {
                    return None;
                }
                #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
                {
                    steps as u32
                }
            }
            (Value::Code(code), Coding::State | Coding::Bits | Coding::Address) => code,
            (Value::Text([first, second]), Coding::Text) => {
                u32::from_le_bytes([first, second, 0, 0])
            }
            _ => return None,
        };
        let same_kind = match self.value_of(raw) {
            Value::Number(_) | Value::Code(_) | Value::Text(_) => true,
            Value::Absent | Value::Error | Value::Reserved(_) => false,
        };
        (raw <= all && same_kind).then_some(raw)
    }

    /// Sets the bits of this signal in the data; `false` where the data end before them, or where the
    /// signal is not in Intel order.
    pub fn set_raw(&self, data: &mut [u8], raw: u32) -> bool {
        let start = usize::from(self.start);
        let bits = usize::from(self.bits);
        if data.len() * 8 < start + bits || self.order != Order::Intel {
            return false;
        }
        for bit in 0..bits {
            let (byte, shift) = ((start + bit) / 8, (start + bit) % 8);
            let set = u8::from(raw >> bit & 1 == 1);
            data[byte] = data[byte] & !(1 << shift) | set << shift;
        }
        true
    }

    const fn all_ones(&self) -> u32 {
        u32::MAX >> (32 - self.bits as u32)
    }
}

fn intel(data: &[u8], start: u16, bits: u8) -> Option<u32> {
    let first = usize::from(start / 8);
    let last = (usize::from(start) + usize::from(bits)).div_ceil(8);
    let bytes = data.get(first..last)?;
    let word = bytes.iter().rev().fold(0_u64, |word, byte| (word << 8) | u64::from(*byte));
    u32::try_from((word >> (start % 8)) & ((1 << bits) - 1)).ok()
}

fn motorola(data: &[u8], start: u16, bits: u8) -> Option<u32> {
    let first = usize::from(start / 8);
    // Bits of the first byte above `start` do not belong to the signal.
    let above = 7 - start % 8;
    let used = usize::from(above) + usize::from(bits);
    let bytes = data.get(first..first + used.div_ceil(8))?;
    let word = bytes.iter().fold(0_u64, |word, byte| (word << 8) | u64::from(*byte));
    let below = bytes.len() * 8 - used;
    u32::try_from((word >> below) & ((1 << bits) - 1)).ok()
}

/// How often a group is sent.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rate {
    /// Every so many milliseconds.
    EveryMs(u32),
    /// Only when asked for, or as needed: its absence from a log is normal.
    OnRequest,
}

impl Rate {
    /// Every so many milliseconds.
    pub const fn every_ms(ms: u32) -> Self {
        Self::EveryMs(ms)
    }
}

/// A parameter group with its signals.
#[derive(Debug, Clone, PartialEq)]
pub struct Group {
    /// Its number.
    pub pgn: Pgn,
    /// Our own name for it.
    pub name: Cow<'static, str>,
    /// How often it is sent.
    pub rate: Rate,
    /// The signal that says which tire or axle the others are about, where one does.
    pub location: Option<u32>,
    /// Its signals by place.
    pub signals: Cow<'static, [Signal]>,
}

impl Group {
    /// The signal with a number.
    pub fn signal(&self, spn: Spn) -> Option<&Signal> {
        self.signals.iter().find(|signal| signal.spn == spn)
    }

    /// The signal that says which tire or axle the others are about.
    pub fn location_signal(&self) -> Option<&Signal> {
        self.location.and_then(|spn| self.signal(Spn(spn)))
    }
}
