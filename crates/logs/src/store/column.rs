//! Rows of a group to columns: a number or nothing, and what it is worth.

use std::sync::Arc;

use arrow_array::{ArrayRef, Float32Array, Float64Array, UInt8Array, UInt32Array};
use arrow_buffer::{BooleanBuffer, NullBuffer, ScalarBuffer};
use arrow_schema::{DataType, Field};

use crate::series::Quality;
use crate::signal::{Coding, Signal};
use crate::value::{Class, Value, class};

/// Suffix of the column that says what a number is worth.
pub const QUALITY: &str = "_q";

/// How the numbers of a signal are stored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Storage {
    /// Numbers whose steps all fit four bytes.
    Float,
    /// Positions, distances, counters of hours.
    Double,
    /// Codes.
    Code,
}

impl Storage {
    /// How a signal is stored.
    pub const fn of(signal: &Signal) -> Self {
        match signal.coding {
            Coding::Number { .. } | Coding::Signed { .. } if signal.bits <= 16 => Self::Float,
            Coding::Number { .. } | Coding::Signed { .. } => Self::Double,
            Coding::State | Coding::Bits | Coding::Address | Coding::Text => Self::Code,
        }
    }

    /// Type of the column.
    pub const fn data_type(self) -> DataType {
        match self {
            Self::Float => DataType::Float32,
            Self::Double => DataType::Float64,
            Self::Code => DataType::UInt32,
        }
    }
}

/// The two fields of a signal under a name.
pub fn fields(name: &str, signal: &Signal) -> [Field; 2] {
    [
        Field::new(name, Storage::of(signal).data_type(), true),
        Field::new(format!("{name}{QUALITY}"), DataType::UInt8, false),
    ]
}

/// What a raw number is worth.
pub fn quality(signal: &Signal, raw: u32) -> Quality {
    match signal.coding {
        Coding::Number { .. } | Coding::State => match class(raw, signal.bits) {
            Class::Value => Quality::Value,
            Class::Absent => Quality::Absent,
            Class::Error => Quality::Error,
            Class::Reserved => Quality::Reserved,
        },
        _ => Quality::from(signal.value_of(raw)),
    }
}

/// Raw numbers of a signal in rows of eight bytes, with their quality; a row too short for the signal
/// is not available.
pub fn raw_of_words(
    signal: &Signal,
    words: impl ExactSizeIterator<Item = (u64, u8)>,
) -> (Vec<u32>, Vec<u8>) {
    let mut raws = Vec::with_capacity(words.len());
    let mut qualities = Vec::with_capacity(words.len());
    for (word, length) in words {
        let raw = signal.raw_of_word(word, length);
        raws.push(raw.unwrap_or(0));
        qualities.push(raw.map_or(Quality::Absent, |raw| quality(signal, raw)).byte());
    }
    (raws, qualities)
}

/// Raw numbers of a signal in messages of any length.
pub fn raw_of_messages<'a>(
    signal: &Signal,
    messages: impl Iterator<Item = &'a [u8]>,
) -> (Vec<u32>, Vec<u8>) {
    messages
        .map(|data| {
            let raw = signal.raw(data);
            let worth = raw.map_or(Quality::Absent, |raw| quality(signal, raw));
            (raw.unwrap_or(0), worth.byte())
        })
        .unzip()
}

/// The array of the numbers of a signal; nothing where `known` says so.
pub fn numbers(signal: &Signal, raws: &[u32], known: impl Fn(usize) -> bool) -> ArrayRef {
    let nulls = NullBuffer::new(BooleanBuffer::collect_bool(raws.len(), known));
    match (Storage::of(signal), signal.coding) {
        (Storage::Float, Coding::Number { scale, offset }) => {
            #[allow(clippy::cast_possible_truncation, reason = "sixteen bits fit")]
            let number = |raw: &u32| (f64::from(*raw) * scale + offset) as f32;
            let values: ScalarBuffer<f32> = raws.iter().map(number).collect();
            Arc::new(Float32Array::new(values, Some(nulls)))
        }
        (Storage::Double, Coding::Number { scale, offset }) => {
            let number = |raw: &u32| f64::from(*raw) * scale + offset;
            let values: ScalarBuffer<f64> = raws.iter().map(number).collect();
            Arc::new(Float64Array::new(values, Some(nulls)))
        }
        (Storage::Code, _) => {
            let values: ScalarBuffer<u32> = raws.iter().copied().collect();
            Arc::new(UInt32Array::new(values, Some(nulls)))
        }
        (storage, _) => {
            let number = |raw: &u32| match signal.value_of(*raw) {
                Value::Number(number) => number,
                _ => 0.0,
            };
            let values = raws.iter().map(number);
            if storage == Storage::Double {
                Arc::new(Float64Array::new(values.collect(), Some(nulls)))
            } else {
                #[allow(clippy::cast_possible_truncation, reason = "sixteen bits fit")]
                let narrow = values.map(|number| number as f32).collect();
                Arc::new(Float32Array::new(narrow, Some(nulls)))
            }
        }
    }
}

/// The array of what numbers are worth.
pub fn qualities(bytes: Vec<u8>) -> ArrayRef {
    Arc::new(UInt8Array::from(bytes))
}
