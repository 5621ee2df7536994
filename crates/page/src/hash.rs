//! SHA-256 as hexadecimal text.

use sha2::{Digest, Sha256};

/// Digest of bytes.
pub fn of(bytes: &[u8]) -> String {
    text(&Sha256::digest(bytes))
}

/// Digest of a folder: paths and bytes, each with its length before it.
pub fn of_folder(folder: &survey::Folder) -> String {
    let mut hasher = Sha256::new();
    for (path, bytes) in folder.files() {
        hasher.update((path.len() as u64).to_le_bytes());
        hasher.update(path);
        hasher.update((bytes.len() as u64).to_le_bytes());
        hasher.update(bytes);
    }
    text(&hasher.finalize())
}

/// Bytes as hexadecimal digits.
pub fn text(bytes: &[u8]) -> String {
    use std::fmt::Write;
    bytes.iter().fold(String::with_capacity(2 * bytes.len()), |mut text, byte| {
        // Writing to a String cannot fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}
