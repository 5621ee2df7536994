//! Frames to lines of text, as `candump -L` writes them.

use crate::frame::Frame;

const HEX: &[u8; 16] = b"0123456789ABCDEF";

/// Adds the line of a frame: `(seconds.microseconds) interface ID#DATA`.
///
/// Times before 1970 are written as 1970.
///
/// ```
/// use logs::{CanId, Data, Frame, Interface, Timestamp, write::candump_line};
/// let frame = Frame {
///     time: Timestamp::from_us(1_700_000_000_000_250),
///     interface: Interface(0),
///     id: CanId::extended(0x18FEF433).ok_or("29 bits")?,
///     data: Data::new(&[0x21, 0x97]).ok_or("at most eight")?,
/// };
/// let mut text = Vec::new();
/// candump_line(&frame, "can0", &mut text);
/// assert_eq!(text, b"(1700000000.000250) can0 18FEF433#2197\n");
/// # Ok::<(), &str>(())
/// ```
pub fn candump_line(frame: &Frame, interface: &str, out: &mut Vec<u8>) {
    let us = frame.time.as_us().max(0);
    out.push(b'(');
    digits(us / 1_000_000, 10, out);
    out.push(b'.');
    digits(us % 1_000_000, 6, out);
    out.extend_from_slice(b") ");
    out.extend_from_slice(interface.as_bytes());
    out.push(b' ');
    let nibbles = if frame.id.is_extended() { 8 } else { 3 };
    for nibble in (0..nibbles).rev() {
        out.push(HEX[(frame.id.number() >> (4 * nibble) & 0xF) as usize]);
    }
    out.push(b'#');
    for byte in frame.data.bytes() {
        out.push(HEX[usize::from(byte >> 4)]);
        out.push(HEX[usize::from(byte & 0xF)]);
    }
    out.push(b'\n');
}

/// Adds a number with zeros before it, at least so many digits.
fn digits(number: i64, least: u32, out: &mut Vec<u8>) {
    let count = number.checked_ilog10().map_or(1, |log| log + 1).max(least);
    for place in (0..count).rev() {
        let digit = number / 10_i64.pow(place) % 10;
        out.push(HEX[usize::try_from(digit).unwrap_or(0)]);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::{CanId, Data, Interface, Timestamp};

    #[test]
    fn short_ids_and_empty_data_have_their_form() {
        let frame = |us| Frame {
            time: Timestamp::from_us(us),
            interface: Interface(0),
            id: CanId::standard(0x7F).unwrap(),
            data: Data::new(&[]).unwrap(),
        };
        let mut text = Vec::new();
        candump_line(&frame(1), "vcan1", &mut text);
        candump_line(&frame(-5), "vcan1", &mut text);
        assert_eq!(text, b"(0000000000.000001) vcan1 07F#\n(0000000000.000000) vcan1 07F#\n");
    }
}
