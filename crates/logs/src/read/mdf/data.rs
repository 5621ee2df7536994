//! The data of a group piece by piece: plain blocks, lists of blocks, packed blocks.
//!
//! A plain block may be as long as the file and is read in parts. A packed block must be unpacked whole:
//! one that unpacks to more than [`MOST`] is refused; the format asks for no more than 4 MB.

use std::collections::BTreeSet;
use std::io::Read;

use flate2::read::ZlibDecoder;

use super::block::{Block, Fault, File, HEAD, Head};
use crate::read::losses::Loss;

/// Most bytes that a packed block may unpack to.
pub(super) const MOST: u64 = 1 << 24;
/// Bytes of a plain block that are read at a time.
const PART: u64 = 1 << 18;
/// Bytes of a packed block that tell how it is packed.
const PACKED_HEAD: u64 = 24;

/// How a piece is packed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Packing {
    Plain,
    Deflate,
    /// Packed by columns: all first bytes of the records, then all second ones.
    Transposed(usize),
}

/// A part of the data that is read at once.
#[derive(Debug, Clone, Copy)]
pub(super) struct Piece {
    /// Where its block begins.
    pub(super) block: u64,
    /// Where its bytes begin.
    from: u64,
    /// How many bytes the file holds of it.
    held: usize,
    /// How many it stands for.
    pub(super) length: usize,
    packing: Packing,
    /// Whether its records stand without their marks of validity.
    pub(super) without_marks: bool,
}

impl Piece {
    /// Where a byte of it lies: its own place, or that of the packed block.
    pub(super) const fn place(&self, byte: usize) -> u64 {
        match self.packing {
            Packing::Plain => self.from.saturating_add(byte as u64),
            Packing::Deflate | Packing::Transposed(_) => self.block,
        }
    }

    /// Its bytes.
    pub(super) fn load(&self, file: &mut File) -> Result<Vec<u8>, Fault> {
        let held = file.bytes(self.from, self.held)?;
        let columns = match self.packing {
            Packing::Plain => return Ok(held),
            Packing::Deflate => 0,
            Packing::Transposed(columns) => columns,
        };
        let mut bytes = Vec::new();
        let whole =
            ZlibDecoder::new(&held[..]).take(self.length as u64 + 1).read_to_end(&mut bytes);
        if whole.is_err() || bytes.len() != self.length {
            return Err(Fault::corrupt(self.block, "a packed block does not unpack"));
        }
        Ok(if columns > 1 { by_rows(&bytes, columns) } else { bytes })
    }
}

/// Turns columns back to rows; what is left over after the last whole row stands as it is.
fn by_rows(bytes: &[u8], columns: usize) -> Vec<u8> {
    let rows = bytes.len() / columns;
    let mut turned = Vec::with_capacity(bytes.len());
    for row in 0..rows {
        turned.extend((0..columns).map(|column| bytes[column * rows + row]));
    }
    turned.extend(&bytes[rows * columns..]);
    turned
}

/// The pieces of the data of one group, or of the values of one channel, in order.
#[derive(Debug, Default)]
pub(super) struct Pieces {
    /// Blocks of the current list that are still to come, the next one last.
    blocks: Vec<u64>,
    next_list: u64,
    /// What is left of a plain block: its head, place, bytes.
    plain: Option<(Head, u64, u64)>,
    /// Blocks that were there: one that comes again would be read without end.
    seen: BTreeSet<u64>,
    /// Whether the last block may go on to the end of the file.
    open_end: bool,
    /// What is told after the current plain block.
    fault: Option<Fault>,
}

impl Pieces {
    /// What a link to data points to: nothing, a block, or a list of blocks. `open_end` where the writer
    /// did not get to write how long the last block is.
    pub(super) fn of(file: &mut File, link: u64, open_end: bool) -> Result<Self, Fault> {
        let mut pieces = Self { open_end, ..Self::default() };
        if link == 0 {
            return Ok(pieces);
        }
        file.furthest = file.furthest.max(link);
        let head = file.head(link)?;
        match &head.kind {
            b"HL" => pieces.next_list = file.list(&head)?.link(0),
            b"DL" | b"LD" => pieces.next_list = link,
            _ => pieces.blocks = vec![link],
        }
        Ok(pieces)
    }

    /// The next piece; `None` after the last.
    pub(super) fn next(&mut self, file: &mut File) -> Result<Option<Piece>, Fault> {
        loop {
            if let Some((head, from, left)) = self.plain.take() {
                let part = left.min(PART);
                if left > part {
                    self.plain = Some((head, from + part, left - part));
                }
                let held = usize::try_from(part).unwrap_or(0);
                return Ok(Some(Piece {
                    block: head.at,
                    from,
                    held,
                    length: held,
                    packing: Packing::Plain,
                    without_marks: &head.kind == b"DV",
                }));
            }
            if let Some(fault) = self.fault.take() {
                return Err(fault);
            }
            let Some(at) = self.blocks.pop() else {
                if self.next_list == 0 {
                    return Ok(None);
                }
                self.take_list(file)?;
                continue;
            };
            if at == 0 {
                continue;
            }
            self.once(at)?;
            let head = file.head(at)?;
            match &head.kind {
                b"DT" | b"DV" | b"SD" => self.take_plain(file, &head),
                b"DZ" => return packed(file, &head).map(Some),
                _ => return Err(Fault::corrupt(at, "a link to data points to something else")),
            }
        }
    }

    fn once(&mut self, at: u64) -> Result<(), Fault> {
        let again = Fault::corrupt(at, "a block of data comes twice");
        if self.seen.insert(at) { Ok(()) } else { Err(again) }
    }

    fn take_list(&mut self, file: &mut File) -> Result<(), Fault> {
        let at = std::mem::take(&mut self.next_list);
        self.once(at)?;
        let head = file.head(at)?;
        let by_column = match &head.kind {
            b"DL" => false,
            b"LD" => true,
            _ => return Err(Fault::corrupt(at, "a list of data goes on with something else")),
        };
        let list = file.list(&head)?;
        // The links of a list by columns that stand after its data lead to marks of validity.
        let many = if by_column { list.u32(4)? as usize } else { list.links().len() };
        self.blocks = list.links().iter().copied().skip(1).take(many).collect();
        self.blocks.reverse();
        self.next_list = list.link(0);
        Ok(())
    }

    fn take_plain(&mut self, file: &File, head: &Head) {
        let from = head.body();
        let there = file.length().saturating_sub(from);
        let mut bytes = head.length - (from - head.at);
        let last = self.blocks.is_empty() && self.next_list == 0;
        if self.open_end && last && head.at >= file.furthest {
            bytes = there;
        }
        if bytes > there {
            let what = "the file ends inside a block of data";
            self.fault = Some(Fault::truncated(head.at, what));
        }
        let bytes = bytes.min(there);
        self.plain = (bytes > 0).then_some((*head, from, bytes));
    }
}

/// A packed block: what it holds, how it is packed, and the lengths of both.
fn packed(file: &mut File, head: &Head) -> Result<Piece, Fault> {
    let at = head.at;
    let said = Block::of(at, file.bytes(at + HEAD, 24)?);
    let kind: [u8; 2] = said.bytes(0)?;
    if !matches!(&kind, b"DT" | b"DV" | b"SD") {
        return Err(Fault::corrupt(at, "a packed block holds no data"));
    }
    let columns = said.u32(4)? as usize;
    let packing = match said.u8(2)? {
        0 => Packing::Deflate,
        1 => Packing::Transposed(columns),
        other => {
            return Err(Fault::Refused(format!(
                "its data are packed in a way that is not read here (number {other}, in the block at \
                 byte {at}); save it again packed by deflate, or not packed"
            )));
        }
    };
    let (length, held) = (said.u64(8)?, said.u64(16)?);
    if length > MOST || held > 2 * MOST {
        return Err(Fault::Refused(format!(
            "its packed block at byte {at} unpacks to {length} bytes, and no more than {MOST} are \
             unpacked at a time; save it again with blocks of 4 MB or less"
        )));
    }
    if held > head.length.saturating_sub(HEAD + PACKED_HEAD) {
        let what = "a packed block says it holds more than it is long";
        return Err(Fault::Broken { loss: Loss::Corrupt, at, what });
    }
    Ok(Piece {
        block: at,
        from: at + HEAD + PACKED_HEAD,
        held: usize::try_from(held).unwrap_or(0),
        length: usize::try_from(length).unwrap_or(0),
        packing,
        without_marks: &kind == b"DV",
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn worked_columns_become_rows() {
        // Three rows of two columns and one byte over.
        assert_eq!(by_rows(b"ACEBDFx", 2), b"ABCDEFx");
        assert_eq!(by_rows(b"AB", 3), b"AB");
    }
}
