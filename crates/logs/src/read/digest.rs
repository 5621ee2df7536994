//! Hash and count of the bytes of a log while it is read.

use std::io::{self, Read, Seek, SeekFrom};
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex};

use sha2::{Digest, Sha256};

use super::input::Input;

/// Hash of all bytes read so far, and their count.
#[derive(Clone, Default)]
pub(super) struct Digested {
    hash: Arc<Mutex<Sha256>>,
    pub(super) read: Arc<AtomicU64>,
}

impl Digested {
    pub(super) fn watch(&self, input: Input) -> Watched {
        Watched { input, digest: self.clone() }
    }

    pub(super) fn follow(&self, input: Input) -> Sought {
        Sought { length: input.length(), input, digest: self.clone(), owed: 0, hashed: 0 }
    }

    /// The hash in hexadecimal digits.
    pub(super) fn sha256(&self) -> String {
        let hash = self.hash.lock().map(|hash| hash.clone().finalize()).unwrap_or_default();
        hash.iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}"))
    }

    fn take(&self, bytes: &[u8]) {
        if let Ok(mut hash) = self.hash.lock() {
            hash.update(bytes);
        }
        self.read.fetch_add(bytes.len() as u64, Ordering::Relaxed);
    }
}

/// Counts and hashes what is read through it, from the beginning to the end.
pub(super) struct Watched {
    input: Input,
    digest: Digested,
}

impl Read for Watched {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        let read = self.input.read(buffer)?;
        self.digest.take(&buffer[..read]);
        Ok(read)
    }
}

/// A log that is read here and there. Its hash is of the file in its own order all the same: it follows
/// from the beginning by as many bytes as were read elsewhere.
pub(super) struct Sought {
    input: Input,
    digest: Digested,
    length: u64,
    /// Bytes read and not yet followed.
    owed: u64,
    /// Bytes followed, from the beginning.
    hashed: u64,
}

/// Bytes after which the hash follows.
const STEP: u64 = 1 << 20;

impl Sought {
    /// Bytes of the file.
    pub(super) const fn length(&self) -> u64 {
        self.length
    }

    /// So many bytes from a place on, or what is left there.
    pub(super) fn bytes_at(&mut self, at: u64, many: usize) -> io::Result<Vec<u8>> {
        self.input.seek(SeekFrom::Start(at))?;
        let mut bytes = Vec::new();
        self.input.by_ref().take(many as u64).read_to_end(&mut bytes)?;
        self.owed += bytes.len() as u64;
        if self.owed >= STEP {
            let owed = std::mem::take(&mut self.owed);
            self.hash_on(owed)?;
        }
        Ok(bytes)
    }

    /// Hashes what is left.
    pub(super) fn finish(&mut self) -> io::Result<()> {
        self.hash_on(u64::MAX)
    }

    fn hash_on(&mut self, many: u64) -> io::Result<()> {
        self.input.seek(SeekFrom::Start(self.hashed))?;
        let mut left = many;
        let mut buffer = vec![0; 1 << 16];
        while left > 0 {
            let most = usize::try_from(left).map_or(buffer.len(), |left| left.min(buffer.len()));
            let read = self.input.read(&mut buffer[..most])?;
            if read == 0 {
                break;
            }
            self.digest.take(&buffer[..read]);
            self.hashed += read as u64;
            left -= read as u64;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_read_here_and_there_has_the_hash_of_the_whole() {
        let bytes: Vec<u8> =
            (0..3_000_000_u32).map(|at| at.to_le_bytes()[at as usize % 3]).collect();
        let (whole, parts) = (Digested::default(), Digested::default());
        io::copy(&mut whole.watch(Input::memory(bytes.clone())), &mut io::sink()).unwrap();
        let mut sought = parts.follow(Input::memory(bytes.clone()));
        for at in [2_000_000, 5, 1_000_000] {
            let part = sought.bytes_at(at as u64, 700_000).unwrap();
            assert_eq!(part, bytes[at..at + 700_000]);
        }
        sought.finish().unwrap();
        assert_eq!(parts.sha256(), whole.sha256());
        assert_eq!(parts.read.load(Ordering::Relaxed), bytes.len() as u64);
    }
}
