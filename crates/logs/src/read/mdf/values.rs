//! Values of changing length that stand apart from the records: each four bytes of length, then itself.

use std::ops::Range;

use super::block::{Fault, File};
use super::data::{Piece, Pieces};

/// Bytes of a length.
pub(super) const LENGTH: usize = 4;
/// Most bytes of a value that is kept: no frame has more.
pub(super) const LONGEST: usize = 64;
/// How often a value may stand before the one read last. Writers store them in order; a file that leaps
/// to and fro would unpack the same blocks without end.
const MOST_LEAPS: u32 = 1000;

/// Values of one channel, read at the places that records tell.
#[derive(Debug, Default)]
pub(super) struct Values {
    pieces: Pieces,
    /// Pieces seen so far, by where they begin among the values.
    seen: Vec<(u64, Piece)>,
    /// Bytes now at hand, and where among the values they begin.
    bytes: Vec<u8>,
    start: u64,
    /// How many of `seen` stand before the end of `bytes`.
    at_hand: usize,
    leaps: u32,
    /// Where among the values the last block lies that does not unpack.
    lost: Range<u64>,
}

impl Values {
    /// Values that a channel links to.
    pub(super) fn of(pieces: Pieces) -> Self {
        Self { pieces, ..Self::default() }
    }

    /// Bytes held.
    pub(super) fn held(&self) -> usize {
        self.bytes.len()
    }

    /// The value that begins at a place; no more than [`LONGEST`] bytes of it and one.
    pub(super) fn get(&mut self, file: &mut File, at: u64) -> Result<Vec<u8>, Fault> {
        if self.lost.contains(&at) {
            return Err(Fault::corrupt(self.place(), "a frame's data are in a broken block"));
        }
        if at < self.start {
            self.go_back(at)?;
        }
        let head = self.range(file, at, LENGTH)?;
        let length = head.first_chunk().map_or(0, |length| u32::from_le_bytes(*length)) as usize;
        let from = at.saturating_add(LENGTH as u64);
        Ok(self.range(file, from, length.min(LONGEST + 1))?.to_vec())
    }

    /// Bytes from a place on, read as far as needed.
    fn range(&mut self, file: &mut File, at: u64, many: usize) -> Result<&[u8], Fault> {
        let end = at.saturating_add(many as u64);
        while self.end() < end {
            if self.at_hand == self.seen.len() {
                let missing = Fault::truncated(self.place(), "data end before a frame's own");
                let from = self.seen.last().map_or(0, |(from, piece)| from + piece.length as u64);
                self.seen.push((from, self.pieces.next(file)?.ok_or(missing)?));
            }
            let (from, piece) = self.seen[self.at_hand];
            self.at_hand += 1;
            // What stands before the place is not asked for again.
            let done = usize::try_from(at.saturating_sub(self.start)).unwrap_or(usize::MAX);
            self.bytes.drain(..done.min(self.bytes.len()));
            self.start = from - self.bytes.len() as u64;
            let end = from + piece.length as u64;
            if end <= at {
                self.bytes.clear();
                self.start = end;
                continue;
            }
            match piece.load(file) {
                Ok(bytes) => self.bytes.extend(bytes),
                Err(fault) => {
                    self.lost = from..end;
                    self.bytes.clear();
                    self.start = end;
                    return Err(fault);
                }
            }
        }
        let from = usize::try_from(at - self.start).unwrap_or(usize::MAX);
        self.bytes
            .get(from..from.saturating_add(many))
            .ok_or(Fault::corrupt(self.place(), "a frame's data are not where it says"))
    }

    fn end(&self) -> u64 {
        self.start + self.bytes.len() as u64
    }

    fn place(&self) -> u64 {
        self.seen.last().map_or(0, |(_, piece)| piece.block)
    }

    fn go_back(&mut self, at: u64) -> Result<(), Fault> {
        self.leaps += 1;
        if self.leaps > MOST_LEAPS {
            return Err(Fault::Refused(format!(
                "the data of its frames stand in another order than the frames, to and fro more than \
                 {MOST_LEAPS} times; save it again with the frames in order"
            )));
        }
        self.at_hand = self.seen.partition_point(|(from, _)| *from <= at).saturating_sub(1);
        self.bytes.clear();
        self.start = self.seen.get(self.at_hand).map_or(0, |(from, _)| *from);
        Ok(())
    }
}
