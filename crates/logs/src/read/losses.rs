//! What a log did not give: counted by kind, and the first of them listed with their place.

use std::fmt;

/// Most losses that are listed; the rest are only counted.
pub const LISTED: usize = 100;
/// Most characters of a broken record that are shown.
const EXCERPT: usize = 60;

/// Why a record gave no frame, or a frame no data.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Loss {
    /// Not of the format's form.
    Malformed,
    /// The file ends inside it.
    Truncated,
    /// A packed part that does not unpack, or whose lengths contradict each other.
    Corrupt,
    /// Of a kind that is not read here.
    Unsupported,
    /// An error frame of the bus.
    ErrorFrame,
    /// A remote frame: it asks and holds no data.
    Remote,
    /// A CAN FD frame: J1939 as read here has none.
    FlexibleRate,
    /// The same frame again: time, bus, identifier and data.
    Duplicate,
    /// A multi-packet message that never became whole.
    BrokenMessage,
    /// A group too short for its signals.
    ShortGroup,
    /// One identifier more than are told apart.
    TooManySenders,
    /// One trouble code more than are told apart.
    TooManyCodes,
}

impl Loss {
    /// Every kind.
    pub const ALL: [Self; 12] = [
        Self::Malformed,
        Self::Truncated,
        Self::Corrupt,
        Self::Unsupported,
        Self::ErrorFrame,
        Self::Remote,
        Self::FlexibleRate,
        Self::Duplicate,
        Self::BrokenMessage,
        Self::ShortGroup,
        Self::TooManySenders,
        Self::TooManyCodes,
    ];

    /// Whether the record itself was bad, rather than of a kind that holds no J1939 data.
    pub const fn is_bad_record(self) -> bool {
        matches!(self, Self::Malformed | Self::Truncated | Self::Corrupt)
    }

    /// Short name, as files and documents have it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Malformed => "malformed",
            Self::Truncated => "truncated",
            Self::Corrupt => "corrupt",
            Self::Unsupported => "unsupported",
            Self::ErrorFrame => "error_frame",
            Self::Remote => "remote",
            Self::FlexibleRate => "flexible_rate",
            Self::Duplicate => "duplicate",
            Self::BrokenMessage => "broken_message",
            Self::ShortGroup => "short_group",
            Self::TooManySenders => "too_many_senders",
            Self::TooManyCodes => "too_many_codes",
        }
    }
}

impl fmt::Display for Loss {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

/// Where in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// A line of a text, or a row of columns, from 1.
    Line(u64),
    /// A byte of a binary file, from 0.
    Byte(u64),
}

/// A loss with its place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Listed {
    /// Why.
    pub loss: Loss,
    /// Where.
    pub place: Place,
    /// The beginning of the record, or what was wrong.
    pub excerpt: String,
}

/// Losses of a log, or of a part of it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Losses {
    counts: [u64; Loss::ALL.len()],
    listed: Vec<Listed>,
}

impl Losses {
    /// Counts one that has no place worth telling.
    pub fn count(&mut self, loss: Loss) {
        self.count_many(loss, 1);
    }

    /// Counts some.
    pub fn count_many(&mut self, loss: Loss, many: u64) {
        self.counts[loss as usize] += many;
    }

    /// Counts one and lists it while there is room.
    pub fn list(&mut self, loss: Loss, place: Place, record: &[u8]) {
        self.count(loss);
        if self.listed.len() < LISTED {
            let shown = &record[..record.len().min(EXCERPT)];
            let text = String::from_utf8_lossy(shown);
            let excerpt = text.chars().map(|c| if c.is_control() { '·' } else { c }).collect();
            self.listed.push(Listed { loss, place, excerpt });
        }
    }

    /// How many of a kind.
    pub const fn of(&self, loss: Loss) -> u64 {
        self.counts[loss as usize]
    }

    /// How many records were bad.
    pub fn bad_records(&self) -> u64 {
        Loss::ALL.into_iter().filter(|loss| loss.is_bad_record()).map(|loss| self.of(loss)).sum()
    }

    /// The first of them with their places.
    pub fn listed(&self) -> &[Listed] {
        &self.listed
    }

    /// Counts that came after those of `before`, without their list.
    #[must_use]
    pub fn since(&self, before: &Self) -> Self {
        let mut since = Self::default();
        for ((count, now), then) in since.counts.iter_mut().zip(self.counts).zip(before.counts) {
            *count = now.saturating_sub(then);
        }
        since
    }

    /// Adds those of the part that follows, whose lines count from `lines` on.
    pub fn append(&mut self, part: Self, lines: u64) {
        for (sum, more) in self.counts.iter_mut().zip(part.counts) {
            *sum += more;
        }
        let room = LISTED.saturating_sub(self.listed.len());
        self.listed.extend(part.listed.into_iter().take(room).map(|mut listed| {
            if let Place::Line(line) = &mut listed.place {
                *line += lines;
            }
            listed
        }));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_keep_their_places_and_lists_stay_short() {
        let mut whole = Losses::default();
        for _ in 0..3 {
            let mut part = Losses::default();
            for line in 1..=60 {
                part.list(Loss::Malformed, Place::Line(line), b"x\ty");
            }
            whole.append(part, 100);
        }
        assert_eq!((whole.bad_records(), whole.listed().len()), (180, LISTED));
        assert_eq!(whole.listed()[0].place, Place::Line(101));
        assert_eq!(whole.listed()[0].excerpt, "x·y");
    }
}
