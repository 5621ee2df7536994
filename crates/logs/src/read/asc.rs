//! The text log of Vector tools.
//!
//! `base hex timestamps absolute` at the head, then lines such as
//! `0.010000 2 CF00400x Rx d 8 25 30 3B 46 51 5C 67 72`; an `x` after the identifier means 29 bits.
//!
//! # Source
//! `asc-layout`

use std::io::Read;

use super::Frames;
use super::batch::{Batch, Interfaces};
use super::blocks::Blocks;
use super::clock::{day_number, time_of_day};
use super::error::ReadError;
use super::hex;
use super::losses::{Loss, Losses, Place};
use crate::frame::{CanId, Data, Frame, Interface, Timestamp};

/// Words that begin lines without frames.
const HEAD_WORDS: [&[u8]; 8] =
    [b"date", b"base", b"internal", b"no", b"begin", b"end", b"previous", b"//"];

/// Frames of a text log.
pub struct Asc<R> {
    blocks: Blocks<R>,
    name: String,
    decimal: bool,
    relative: bool,
    start_ns: i64,
    last_ns: i64,
    interfaces: Interfaces,
}

impl<R: Read + Send> Asc<R> {
    /// A text log.
    pub fn of(name: &str, input: R) -> Self {
        Self {
            blocks: Blocks::of(input),
            name: name.to_owned(),
            decimal: false,
            relative: false,
            start_ns: 0,
            last_ns: 0,
            interfaces: Interfaces::default(),
        }
    }

    fn line(&mut self, line: &[u8]) -> Result<Option<Frame>, Loss> {
        let mut words = line.split(u8::is_ascii_whitespace).filter(|word| !word.is_empty());
        let Some(first) = words.next() else { return Ok(None) };
        let Some(ns) = hex::seconds(first) else {
            let word = first.to_ascii_lowercase();
            if HEAD_WORDS.iter().any(|head| word.starts_with(head)) {
                self.head(line);
                return Ok(None);
            }
            return Err(Loss::Malformed);
        };
        self.last_ns = if self.relative { self.last_ns.saturating_add(ns) } else { ns };
        let Some(second) = words.next() else { return Err(Loss::Truncated) };
        if second == b"CANFD" {
            return Err(Loss::FlexibleRate);
        }
        // Events of the tool have a word where a bus has its number.
        if hex::decimal(second).is_none() {
            return Ok(None);
        }
        let id = words.next().ok_or(Loss::Truncated)?;
        match id {
            b"ErrorFrame" => return Err(Loss::ErrorFrame),
            b"Statistic:" => return Ok(None),
            _ => {}
        }
        let id = self.identifier(id)?;
        let direction = words.next().ok_or(Loss::Truncated)?;
        if !matches!(direction, b"Rx" | b"Tx" | b"TxRq") {
            return Err(Loss::Malformed);
        }
        match words.next() {
            Some(b"d") => {}
            Some(b"r") => return Err(Loss::Remote),
            Some(_) => return Err(Loss::Malformed),
            None => return Err(Loss::Truncated),
        }
        let length = hex::number(words.next().ok_or(Loss::Truncated)?).ok_or(Loss::Malformed)?;
        let length = usize::try_from(length).unwrap_or(usize::MAX).min(8);
        let mut bytes = [0; 8];
        for byte in &mut bytes[..length] {
            *byte = self.byte(words.next().ok_or(Loss::Truncated)?)?;
        }
        let data = Data::new(&bytes[..length]).ok_or(Loss::Malformed)?;
        let interface = self.interfaces.number(second).unwrap_or(Interface(254));
        let time = Timestamp::from_ns(self.start_ns.saturating_add(self.last_ns));
        Ok(Some(Frame { time, interface, id, data }))
    }

    fn identifier(&self, word: &[u8]) -> Result<CanId, Loss> {
        let (digits, extended) = match word {
            [digits @ .., b'x' | b'X'] => (digits, true),
            _ => (word, false),
        };
        let number = if self.decimal {
            hex::decimal(digits).and_then(|number| u32::try_from(number).ok())
        } else {
            hex::number(digits)
        };
        let number = number.ok_or(Loss::Malformed)?;
        let id = if extended { CanId::extended(number) } else { CanId::standard(number) };
        id.ok_or(Loss::Malformed)
    }

    fn byte(&self, word: &[u8]) -> Result<u8, Loss> {
        let number = if self.decimal {
            hex::decimal(word).and_then(|number| u8::try_from(number).ok())
        } else {
            hex::number(word).and_then(|number| u8::try_from(number).ok())
        };
        number.ok_or(Loss::Malformed)
    }

    fn head(&mut self, line: &[u8]) {
        let text = String::from_utf8_lossy(line).to_ascii_lowercase();
        if text.starts_with("base") {
            self.decimal = text.contains("base dec");
            self.relative = text.contains("timestamps relative");
        }
        let date = text.strip_prefix("date ").or_else(|| text.strip_prefix("begin triggerblock "));
        if let Some(start) = date.and_then(start_of) {
            self.start_ns = start;
        }
    }
}

impl<R: Read + Send> Frames for Asc<R> {
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError> {
        let block = self.blocks.next_block().map_err(|error| ReadError::io(&self.name, error))?;
        let Some(block) = block else { return Ok(None) };
        let mut batch = Batch::default();
        let text = block.strip_suffix(b"\n").unwrap_or(&block);
        for line in text.split(|byte| *byte == b'\n') {
            batch.lines += 1;
            match self.line(line.trim_ascii()) {
                Ok(frame) => batch.frames.extend(frame),
                Err(loss) => lost(&mut batch.losses, loss, batch.lines, line.trim_ascii()),
            }
        }
        batch.interfaces = self.interfaces.clone();
        Ok(Some(batch))
    }
}

fn lost(losses: &mut Losses, loss: Loss, line: u64, text: &[u8]) {
    if loss.is_bad_record() {
        losses.list(loss, Place::Line(line), text);
    } else {
        losses.count(loss);
    }
}

/// `tue nov 14 22:13:20.0 2023`, perhaps with `am` or `pm` before the year, in nanoseconds since 1970,
/// taken as UTC.
fn start_of(text: &str) -> Option<i64> {
    const HALF_DAY: i64 = 43_200_000_000_000;
    const MONTHS: [&str; 12] =
        ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
    let words: Vec<&str> = text.split_whitespace().collect();
    let [_, month, day, clock, rest @ ..] = &words[..] else { return None };
    let month = MONTHS.iter().position(|name| month.starts_with(name))?;
    let mut time = time_of_day(clock.as_bytes())?;
    match rest.first() {
        Some(&"pm") if time < HALF_DAY => time += HALF_DAY,
        Some(&"am") if time >= HALF_DAY => time -= HALF_DAY,
        _ => {}
    }
    let year = rest.last()?.parse().ok()?;
    let days = day_number(year, i64::try_from(month).ok()? + 1, day.parse().ok()?)?;
    days.checked_mul(86_400_000_000_000)?.checked_add(time)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn worked_dates_of_headers() {
        // 2023-11-14 22:13:20 UTC is 1,700,000,000 s.
        assert_eq!(start_of("tue nov 14 22:13:20.0 2023"), Some(1_700_000_000_000_000_000));
        assert_eq!(start_of("tue nov 14 10:13:20.000 pm 2023"), Some(1_700_000_000_000_000_000));
        assert_eq!(start_of("tue foo 14 10:13:20.000 pm 2023"), None);
    }

    #[test]
    fn relative_stamps_add_up_and_decimal_numbers_are_decimal() {
        let text = b"base dec  timestamps relative\n0.5 1 419361843x Rx d 2 255 16\n\
            0.25 1 100 Rx d 1 7\n0.25 1 100 Rx d 1 300\n0.25 CANFD 1 Rx 100 1 0 8 8 00\n";
        let batch = Asc::of("test", &text[..]).next_batch().unwrap().unwrap();
        assert_eq!(batch.frames.len(), 2);
        assert_eq!(batch.frames[0].id.to_string(), "18FEF433");
        assert_eq!(batch.frames[0].data.bytes(), [255, 16]);
        assert_eq!(batch.frames[1].time.as_us(), 750_000);
        assert_eq!(batch.losses.listed()[0].place, Place::Line(4));
        assert_eq!(batch.losses.of(Loss::FlexibleRate), 1);
    }
}
