//! A text in blocks that end at line ends.

use std::io::{self, Read};

/// Bytes of a block: enough for thousands of lines, and for the cache of one core.
pub const BLOCK: usize = 1 << 19;
/// A line longer than this is no line of a log; it is cut.
pub const LONGEST_LINE: usize = 1 << 16;

/// Reads blocks of whole lines.
#[derive(Debug)]
pub struct Blocks<R> {
    input: R,
    kept: Vec<u8>,
    ended: bool,
}

impl<R: Read> Blocks<R> {
    /// Blocks of a text.
    pub const fn of(input: R) -> Self {
        Self { input, kept: Vec::new(), ended: false }
    }

    /// The next block; `None` after the last. A line beyond [`LONGEST_LINE`] is broken up, so that a
    /// file without line ends stays bounded in memory.
    ///
    /// # Errors
    /// Where the file cannot be read on.
    pub fn next_block(&mut self) -> io::Result<Option<Vec<u8>>> {
        if self.ended {
            return Ok(None);
        }
        let mut block = std::mem::take(&mut self.kept);
        block.reserve_exact(BLOCK + LONGEST_LINE);
        let start = block.len();
        block.resize(BLOCK.max(start), 0);
        let mut filled = start;
        while filled < block.len() {
            match self.input.read(&mut block[filled..]) {
                Ok(0) => {
                    self.ended = true;
                    break;
                }
                Ok(read) => filled += read,
                Err(error) if error.kind() == io::ErrorKind::Interrupted => {}
                Err(error) => return Err(error),
            }
        }
        block.truncate(filled);
        if !self.ended {
            let from = block.len().saturating_sub(LONGEST_LINE);
            let end =
                memchr::memrchr(b'\n', &block[from..]).map_or(block.len(), |at| from + at + 1);
            self.kept = block.split_off(end);
        }
        Ok(if block.is_empty() { None } else { Some(block) })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blocks_end_at_line_ends_and_lose_no_byte() {
        let text: Vec<u8> = (0..200_000).flat_map(|i| format!("line {i}\n").into_bytes()).collect();
        let mut blocks = Blocks::of(&text[..]);
        let mut whole = Vec::new();
        while let Some(block) = blocks.next_block().unwrap() {
            assert_eq!(block.last(), Some(&b'\n'));
            whole.extend(block);
        }
        assert!(whole == text);
    }

    #[test]
    fn a_text_without_line_ends_comes_in_bounded_blocks() {
        let text = vec![b'x'; 3 * BLOCK + 7];
        let mut blocks = Blocks::of(&text[..]);
        let mut sum = 0;
        while let Some(block) = blocks.next_block().unwrap() {
            assert!(block.len() <= BLOCK);
            sum += block.len();
        }
        assert_eq!(sum, text.len());
    }
}
