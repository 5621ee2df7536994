//! Blocks of a measurement file: name, length, links to other blocks, and what each says.

use std::io;

use crate::read::digest::Sought;
use crate::read::losses::Loss;

/// Bytes of name, reserve, length and number of links.
pub(super) const HEAD: u64 = 24;
/// Most bytes of a block that describes; a list of two million data blocks has no more.
const MOST: u64 = 1 << 24;
/// Most bytes of a name.
const LONGEST_NAME: u64 = 1 << 12;

/// Why a part of the file is not to be had.
#[derive(Debug, thiserror::Error)]
pub(super) enum Fault {
    /// The file cannot be read on.
    #[error(transparent)]
    Io(#[from] io::Error),
    /// A block is not what it must be; others may be.
    #[error("{what}")]
    Broken {
        /// What it counts as.
        loss: Loss,
        /// Where it begins.
        at: u64,
        /// What is wrong.
        what: &'static str,
    },
    /// What is not read here at all.
    #[error("{0}")]
    Refused(String),
}

impl Fault {
    pub(super) const fn corrupt(at: u64, what: &'static str) -> Self {
        Self::Broken { loss: Loss::Corrupt, at, what }
    }

    pub(super) const fn truncated(at: u64, what: &'static str) -> Self {
        Self::Broken { loss: Loss::Truncated, at, what }
    }
}

/// Name and lengths of a block.
#[derive(Debug, Clone, Copy)]
pub(super) struct Head {
    pub(super) at: u64,
    pub(super) kind: [u8; 2],
    /// All bytes, these among them.
    pub(super) length: u64,
    pub(super) links: u64,
}

impl Head {
    /// Where the links end and what it says begins.
    pub(super) const fn body(&self) -> u64 {
        self.at + HEAD + 8 * self.links
    }
}

/// A block that was read whole.
#[derive(Debug)]
pub(super) struct Block {
    pub(super) at: u64,
    links: Vec<u64>,
    body: Vec<u8>,
}

impl Block {
    /// A block without links of which only what it says was read.
    pub(super) const fn of(at: u64, body: Vec<u8>) -> Self {
        Self { at, links: Vec::new(), body }
    }

    /// Where a link points; zero where it points nowhere or there is no such link.
    pub(super) fn link(&self, at: usize) -> u64 {
        self.links.get(at).copied().unwrap_or(0)
    }

    /// All links.
    pub(super) fn links(&self) -> &[u64] {
        &self.links
    }

    /// Bytes of what it says.
    pub(super) fn bytes<const MANY: usize>(&self, at: usize) -> Result<[u8; MANY], Fault> {
        let bytes = self.body.get(at..).and_then(<[u8]>::first_chunk);
        bytes.copied().ok_or(Fault::corrupt(self.at, "a block is too short for what it must say"))
    }

    pub(super) fn u8(&self, at: usize) -> Result<u8, Fault> {
        Ok(self.bytes::<1>(at)?[0])
    }

    pub(super) fn u16(&self, at: usize) -> Result<u16, Fault> {
        Ok(u16::from_le_bytes(self.bytes(at)?))
    }

    pub(super) fn u32(&self, at: usize) -> Result<u32, Fault> {
        Ok(u32::from_le_bytes(self.bytes(at)?))
    }

    pub(super) fn u64(&self, at: usize) -> Result<u64, Fault> {
        Ok(u64::from_le_bytes(self.bytes(at)?))
    }

    pub(super) fn f64(&self, at: usize) -> Result<f64, Fault> {
        Ok(f64::from_le_bytes(self.bytes(at)?))
    }
}

/// The file as blocks.
pub(super) struct File {
    input: Sought,
    /// The furthest place that any link read so far points to.
    pub(super) furthest: u64,
}

impl File {
    pub(super) const fn of(input: Sought) -> Self {
        Self { input, furthest: 0 }
    }

    /// Bytes of the file.
    pub(super) const fn length(&self) -> u64 {
        self.input.length()
    }

    /// So many bytes from a place on; a fault where the file ends before.
    pub(super) fn bytes(&mut self, at: u64, many: usize) -> Result<Vec<u8>, Fault> {
        let bytes = self.input.bytes_at(at, many)?;
        if bytes.len() == many {
            Ok(bytes)
        } else {
            Err(Fault::truncated(at, "the file ends inside a block"))
        }
    }

    /// Name and lengths of the block at a place.
    pub(super) fn head(&mut self, at: u64) -> Result<Head, Fault> {
        let broken = Fault::corrupt(at, "no block where a link points");
        if at > self.length() {
            return Err(Fault::truncated(at, "a link points beyond the end of the file"));
        }
        let head = self.bytes(at, 24)?;
        let [b'#', b'#', a, b, _, _, _, _, ref rest @ ..] = head[..] else { return Err(broken) };
        let Some((length, links)) = rest.split_first_chunk::<8>() else { return Err(broken) };
        let length = u64::from_le_bytes(*length);
        let links = links.first_chunk().map_or(0, |links| u64::from_le_bytes(*links));
        let fits = links <= MOST / 8 && at.checked_add(length).is_some();
        if !fits || length < HEAD + 8 * links {
            return Err(Fault::corrupt(at, "the lengths of a block contradict each other"));
        }
        Ok(Head { at, kind: [a, b], length, links })
    }

    /// A block that describes, whole.
    pub(super) fn block(&mut self, at: u64, kind: [u8; 2]) -> Result<Block, Fault> {
        let head = self.head(at)?;
        if head.kind != kind {
            return Err(Fault::corrupt(at, "a link points to a block of another kind"));
        }
        self.list(&head)
    }

    /// The rest of a block that describes.
    pub(super) fn list(&mut self, head: &Head) -> Result<Block, Fault> {
        if head.length > MOST {
            return Err(Fault::corrupt(head.at, "a block that describes is over 16 MB long"));
        }
        self.clipped(head, MOST)
    }

    /// The rest of a block, as far as wanted.
    fn clipped(&mut self, head: &Head, most: u64) -> Result<Block, Fault> {
        let at = head.at;
        let many = usize::try_from(head.length.min(most) - HEAD);
        let many = many.map_err(|_| Fault::corrupt(at, "a block is longer than the memory"))?;
        let mut links = self.bytes(at + HEAD, many)?;
        let many = usize::try_from(8 * head.links).unwrap_or(usize::MAX).min(links.len());
        let body = links.split_off(many);
        let links: Vec<u64> = links
            .chunks_exact(8)
            .filter_map(|link| link.first_chunk().map(|link| u64::from_le_bytes(*link)))
            .collect();
        self.furthest = links.iter().copied().fold(self.furthest, u64::max);
        Ok(Block { at, links, body })
    }

    /// A name; empty where the link points nowhere.
    pub(super) fn text(&mut self, at: u64) -> Result<String, Fault> {
        if at == 0 {
            return Ok(String::new());
        }
        let head = self.head(at)?;
        if !matches!(&head.kind, b"TX" | b"MD") {
            return Err(Fault::corrupt(at, "a link to a name points to a block of another kind"));
        }
        let block = self.clipped(&head, LONGEST_NAME)?;
        let end = block.body.iter().position(|byte| *byte == 0).unwrap_or(block.body.len());
        Ok(String::from_utf8_lossy(&block.body[..end]).into_owned())
    }

    /// Reads what is left, so that the hash of the file is of the whole.
    pub(super) fn finish(&mut self) -> io::Result<()> {
        self.input.finish()
    }
}
