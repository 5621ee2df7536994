//! What a signal says: a value, or one of the codes that are no value.
//!
//! # Source
//! `j1939-indicators`, ranges by width. Widths of 6, 24 bits and over 32 follow the same pattern
//! from memory.

/// What a signal said. FF is never a large pressure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Value {
    /// A number in the unit of the signal.
    Number(f64),
    /// A code of its own: a switch position, a mode, a location.
    Code(u32),
    /// Two letters of text.
    Text([u8; 2]),
    /// Not available, or not fitted.
    Absent,
    /// The sender reports an error.
    Error,
    /// A code kept for the standard or for one signal's own use; the raw number.
    Reserved(u32),
}

impl Value {
    /// The number, or the code as a number, where it is one.
    pub fn number(self) -> Option<f64> {
        match self {
            Self::Number(number) => Some(number),
            Self::Code(code) => Some(f64::from(code)),
            Self::Text(_) | Self::Absent | Self::Error | Self::Reserved(_) => None,
        }
    }
}

/// Class of a raw number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// In the range of values.
    Value,
    /// All ones, or the FF of a wider field.
    Absent,
    /// The FE range.
    Error,
    /// FB to FD: for one signal's own use, or kept.
    Reserved,
}

/// Class of a raw number by the width of its field, for signals that keep the usual codes.
pub const fn class(raw: u32, bits: u8) -> Class {
    match bits {
        // One bit has no room for codes.
        0 | 1 => Class::Value,
        2..=7 => {
            let all = (1_u32 << bits) - 1;
            if raw == all {
                Class::Absent
            } else if raw == all - 1 {
                Class::Error
            } else {
                Class::Value
            }
        }
        // From eight bits on the top byte decides.
        _ => match raw >> (bits - 8) {
            0xFF.. => Class::Absent,
            0xFE => Class::Error,
            0xFB..=0xFD => Class::Reserved,
            _ => Class::Value,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn table_of_indicator_ranges() {
        // The ranges of `j1939-indicators`, both ends of each.
        for (bits, ranges) in [
            (2, &[(0, 1, Class::Value), (2, 2, Class::Error), (3, 3, Class::Absent)][..]),
            (3, &[(0, 5, Class::Value), (6, 6, Class::Error), (7, 7, Class::Absent)]),
            (4, &[(0, 0xD, Class::Value), (0xE, 0xE, Class::Error), (0xF, 0xF, Class::Absent)]),
            (
                8,
                &[
                    (0, 0xFA, Class::Value),
                    (0xFB, 0xFD, Class::Reserved),
                    (0xFE, 0xFE, Class::Error),
                    (0xFF, 0xFF, Class::Absent),
                ],
            ),
            (
                16,
                &[
                    (0, 0xFAFF, Class::Value),
                    (0xFB00, 0xFDFF, Class::Reserved),
                    (0xFE00, 0xFEFF, Class::Error),
                    (0xFF00, 0xFFFF, Class::Absent),
                ],
            ),
            (
                32,
                &[
                    (0, 0xFAFF_FFFF, Class::Value),
                    (0xFB00_0000, 0xFDFF_FFFF, Class::Reserved),
                    (0xFE00_0000, 0xFEFF_FFFF, Class::Error),
                    (0xFF00_0000, 0xFFFF_FFFF, Class::Absent),
                ],
            ),
        ] {
            for &(first, last, expected) in ranges {
                assert_eq!(class(first, bits), expected, "{first:X} of {bits} bits");
                assert_eq!(class(last, bits), expected, "{last:X} of {bits} bits");
            }
        }
    }
}
