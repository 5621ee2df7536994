//! The register of sources, compiled in.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

/// One source as registered.
#[derive(Debug, Clone, Deserialize)]
pub struct Entry {
    /// Title.
    pub title: String,
    /// Who wrote it.
    pub authors: Option<String>,
    /// How our numbers stand to it.
    pub standing: String,
}

#[derive(Debug, Deserialize)]
struct Register {
    source: BTreeMap<String, Entry>,
}

static REGISTER: LazyLock<Register> = LazyLock::new(|| {
    toml_edit::de::from_str(include_str!("../../../docs/sources.toml"))
        .expect("the register is compiled in, and a test reads it")
});

/// The source with this key.
pub fn entry(key: &str) -> Option<&'static Entry> {
    REGISTER.source.get(key)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_register_is_read_with_title_and_standing() {
        assert!(REGISTER.source.len() > 20);
        for (key, entry) in &REGISTER.source {
            assert!(!entry.title.is_empty() && !entry.standing.is_empty(), "{key}");
        }
        assert_eq!(entry("un-r54-annex-8").map(|entry| entry.standing.as_str()), Some("read"));
        assert!(entry("no-such-source").is_none());
    }
}
