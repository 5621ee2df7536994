//! The two texts of candump: the log form and the screen form.
//!
//! Log form `(1700000000.123456) can0 18FEF100#FF6436FCFF6800CF`, screen form
//! ` (000.000000)  can0  18FEF100   [8]  FF 64 36 FC FF 68 00 CF`; eight digits of identifier mean 29
//! bits, three mean 11. A line at a time, in any order, so that blocks cut at line ends can be read at
//! once on several cores.
//!
//! # Source
//! `can-utils-log-form`

use super::batch::{Batch, Interfaces};
use super::hex;
use super::losses::{Loss, Losses, Place};
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};

/// Bit of an identifier that marks an error frame.
const ERROR_FRAME: u32 = 0x2000_0000;
/// Bytes of the longest line the fast way reads, padded to whole words.
const WINDOW: usize = 64;

/// Reads a block of whole lines; the last one may lack its end.
pub fn read_block(block: &[u8], interfaces: Interfaces) -> Batch {
    let mut batch = Batch {
        // A line of eight bytes has about fifty.
        frames: Vec::with_capacity(block.len() / 48 + 1),
        interfaces,
        ..Batch::default()
    };
    let mut last = Last::default();
    let mut rest = block;
    while !rest.is_empty() {
        batch.lines += 1;
        if let Some((frame, used)) = usual_line(rest, &mut last) {
            batch.frames.push(frame);
            rest = &rest[used..];
            continue;
        }
        let end = memchr::memchr(b'\n', rest).unwrap_or(rest.len());
        let (line, after) = rest.split_at(end);
        rest = after.get(1..).unwrap_or_default();
        let trimmed = line.trim_ascii();
        if trimmed.is_empty() {
            continue;
        }
        match any_line(trimmed, &mut batch.interfaces) {
            Ok((frame, name)) => {
                last.remember(name, frame.interface);
                batch.frames.push(frame);
            }
            Err(loss) => lost(&mut batch.losses, loss, batch.lines, trimmed),
        }
    }
    batch
}

/// Whether a line reads as a frame, or as a record that candump writes and that holds no data.
pub fn looks_like(line: &[u8]) -> bool {
    match any_line(line.trim_ascii(), &mut Interfaces::default()) {
        Ok(_) => true,
        Err(loss) => loss != Loss::Malformed,
    }
}

fn lost(losses: &mut Losses, loss: Loss, line: u64, text: &[u8]) {
    if loss.is_bad_record() {
        losses.list(loss, Place::Line(line), text);
    } else {
        losses.count(loss);
    }
}

/// What the line before had: most lines share the second and the bus.
#[derive(Default)]
struct Last {
    digits: [u8; 10],
    second: i64,
    /// Name and a blank, in the low bytes; `mask` covers them.
    name: u64,
    mask: u64,
    length: usize,
    interface: Interface,
}

impl Last {
    fn remember(&mut self, name: &[u8], interface: Interface) {
        let length = name.len() + 1;
        if length <= 8 {
            let mut word = [0; 8];
            word[..name.len()].copy_from_slice(name);
            word[name.len()] = b' ';
            self.name = u64::from_le_bytes(word);
            self.mask = u64::MAX >> (64 - 8 * length);
            self.length = length;
            self.interface = interface;
        }
    }
}

/// The line that nearly all are: ten digits of seconds, six of the fraction, the same bus as before,
/// 29 bits, eight bytes, no more. Gives the frame and the bytes used.
fn usual_line(rest: &[u8], last: &mut Last) -> Option<(Frame, usize)> {
    let line: &[u8; WINDOW] = rest.first_chunk()?;
    if last.length == 0 || line[0] != b'(' || line[11] != b'.' || line[18] != b')' {
        return None;
    }
    let digits: [u8; 10] = *line[1..].first_chunk()?;
    if digits != last.digits {
        last.second = hex::decimal(&digits)?;
        last.digits = digits;
    }
    // The dot goes out, two leading zeros come in.
    let fraction = (word(line, 11)? >> 8 << 16) | 0x3030;
    let us = hex::eight_digits(fraction.to_le_bytes())?;
    if line[19] != b' ' || word(line, 20)? & last.mask != last.name {
        return None;
    }
    let at = 20 + last.length;
    let id = hex::four_bytes(word(line, at)?.to_le_bytes())?.swap_bytes();
    if line[at + 8] != b'#' || line[at + 25] != b'\n' {
        return None;
    }
    let low = hex::four_bytes(word(line, at + 9)?.to_le_bytes())?;
    let high = hex::four_bytes(word(line, at + 17)?.to_le_bytes())?;
    let word = u64::from(low) | u64::from(high) << 32;
    let time = Timestamp::from_ns(last.second * 1_000_000_000 + i64::from(us) * 1_000);
    let id = CanId::extended(id)?;
    let data = Data::padded(word.to_le_bytes(), 8);
    Some((Frame { time, interface: last.interface, id, data }, at + 26))
}

fn word(line: &[u8; WINDOW], at: usize) -> Option<u64> {
    line.get(at..).and_then(<[u8]>::first_chunk).map(|chunk| u64::from_le_bytes(*chunk))
}

/// Any line of either form, and the name of its bus.
fn any_line<'a>(line: &'a [u8], interfaces: &mut Interfaces) -> Result<(Frame, &'a [u8]), Loss> {
    let inside = line.strip_prefix(b"(").ok_or(Loss::Malformed)?;
    let close = inside.iter().take(32).position(|byte| *byte == b')').ok_or(Loss::Malformed)?;
    let time = time(&inside[..close]).ok_or(Loss::Malformed)?;
    let (name, rest) = next_word(&inside[close + 1..]);
    if name.is_empty() || name.len() > 32 {
        return Err(Loss::Malformed);
    }
    let (word, _) = next_word(rest);
    let (id, data) = match word.iter().position(|byte| *byte == b'#') {
        Some(at) => (&word[..at], log_form(&rest.trim_ascii_start()[at + 1..])),
        None => screen_form(rest)?,
    };
    let id = identifier(id)?;
    let data = data?;
    let interface = interfaces.number(name).ok_or(Loss::Malformed)?;
    Ok((Frame { time, interface, id, data }, name))
}

/// Seconds, or a date and a time of day as the screen form can show them, taken as UTC.
fn time(text: &[u8]) -> Option<Timestamp> {
    if let Some(ns) = hex::seconds(text) {
        return Some(Timestamp::from_ns(ns));
    }
    let (date, clock) = next_word(text);
    super::clock::date_and_time(date, clock.trim_ascii())
}

fn identifier(digits: &[u8]) -> Result<CanId, Loss> {
    let number = hex::number(digits).ok_or(Loss::Malformed)?;
    match digits.len() {
        3 => CanId::standard(number).ok_or(Loss::Malformed),
        8 if number & ERROR_FRAME != 0 => Err(Loss::ErrorFrame),
        8 => CanId::extended(number).ok_or(Loss::Malformed),
        _ => Err(Loss::Malformed),
    }
}

/// Data after the `#`: pairs of digits, then perhaps a direction.
fn log_form(text: &[u8]) -> Result<Data, Loss> {
    // No blank is skipped: a frame without data has its direction next.
    let end = text.iter().position(u8::is_ascii_whitespace).unwrap_or(text.len());
    let (digits, rest) = text.split_at(end);
    let direction = rest.trim_ascii();
    if !(direction.is_empty() || direction == b"R" || direction == b"T") {
        return Err(Loss::Malformed);
    }
    match digits.first() {
        Some(b'#') => return Err(Loss::FlexibleRate),
        Some(b'R') => return Err(Loss::Remote),
        _ => {}
    }
    // A length code beyond eight may follow eight bytes.
    let digits = match digits {
        [pairs @ .., b'_', code] if pairs.len() == 16 && hex::nibble(*code).is_some() => pairs,
        _ => digits,
    };
    let paired = digits.len().is_multiple_of(2);
    if digits.len() > 16 || !paired {
        return Err(if paired { Loss::Malformed } else { Loss::Truncated });
    }
    let mut bytes = [0; 8];
    for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
        *byte = pair_of(pair[0], pair[1])?;
    }
    Data::new(&bytes[..digits.len() / 2]).ok_or(Loss::Malformed)
}

type IdAndData<'a> = (&'a [u8], Result<Data, Loss>);

/// Identifier, length in brackets and bytes in columns, perhaps with a direction before and letters
/// after.
fn screen_form(text: &[u8]) -> Result<IdAndData<'_>, Loss> {
    let open = text.iter().position(|byte| *byte == b'[').ok_or(Loss::Malformed)?;
    let close = text[open..].iter().position(|byte| *byte == b']').ok_or(Loss::Truncated)? + open;
    // "RX - -" may stand before the identifier: the word next to the bracket is it.
    let before = text[..open].trim_ascii_end();
    let start = before.iter().rposition(u8::is_ascii_whitespace).map_or(0, |at| at + 1);
    let id = &before[start..];
    let length = &text[open + 1..close];
    if length.len() == 2 {
        return Ok((id, Err(Loss::FlexibleRate)));
    }
    let length = match length {
        [digit @ b'0'..=b'8'] => usize::from(digit - b'0'),
        _ => return Err(Loss::Malformed),
    };
    let mut rest = &text[close + 1..];
    let mut bytes = [0; 8];
    for byte in &mut bytes[..length] {
        let (digits, after) = next_word(rest);
        if digits == b"remote" {
            return Ok((id, Err(Loss::Remote)));
        }
        *byte = match digits {
            [high, low] => pair_of(*high, *low)?,
            [] | [_] => return Err(Loss::Truncated),
            _ => return Err(Loss::Malformed),
        };
        rest = after;
    }
    let data = match next_word(rest).0 {
        b"remote" => Err(Loss::Remote),
        [] | [b'\'', ..] => Data::new(&bytes[..length]).ok_or(Loss::Malformed),
        b"ERRORFRAME" => Err(Loss::ErrorFrame),
        _ => Err(Loss::Malformed),
    };
    Ok((id, data))
}

fn pair_of(high: u8, low: u8) -> Result<u8, Loss> {
    match (hex::nibble(high), hex::nibble(low)) {
        (Some(high), Some(low)) => Ok(high << 4 | low),
        _ => Err(Loss::Malformed),
    }
}

/// The next word and what follows it.
fn next_word(text: &[u8]) -> (&[u8], &[u8]) {
    let text = text.trim_ascii_start();
    let end = text.iter().position(u8::is_ascii_whitespace).unwrap_or(text.len());
    text.split_at(end)
}
