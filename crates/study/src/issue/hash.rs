//! Hashes that anybody can check with ordinary tools.

use std::fmt;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use sha2::{Digest, Sha256};

/// A SHA-256 as `sha256:` and 64 hexadecimal digits.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(transparent)]
pub struct Hash(String);

impl Hash {
    /// Of bytes.
    ///
    /// ```
    /// let empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    /// assert_eq!(study::Hash::of_bytes(b"").to_string(), format!("sha256:{empty}"));
    /// ```
    pub fn of_bytes(bytes: &[u8]) -> Self {
        use fmt::Write;
        let mut text = "sha256:".to_owned();
        for byte in Sha256::digest(bytes) {
            write!(text, "{byte:02x}").expect("a string takes what it is given");
        }
        Self(text)
    }

    /// Of a JSON value in the canonical form of RFC 8785, whatever its order and spacing.
    ///
    /// # Panics
    /// Never: numbers of a JSON value in memory are finite and its keys are text.
    pub fn of_json(value: &Value) -> Self {
        let bytes = serde_json_canonicalizer::to_vec(value)
            .expect("a JSON value in memory has finite numbers and text keys");
        Self::of_bytes(&bytes)
    }

    /// The hexadecimal digits alone.
    pub fn digits(&self) -> &str {
        self.0.strip_prefix("sha256:").unwrap_or(&self.0)
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
