//! Where a number comes from.

/// A key of `docs/sources.toml`; the tidy check refuses keys that are not there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Key(pub &'static str);

impl std::fmt::Display for Key {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.0)
    }
}

/// How a number stands to its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Standing {
    /// Read in the source's text, or computed from what was read.
    Read,
    /// Given by the user for this fleet: a maker's document, a weighing, a measurement.
    Given,
    /// A habit of the trade; no source was found.
    CommonPractice,
    /// Recalled; to be compared with the source before anyone relies on it.
    FromMemory,
}

/// A source with how the number used stands to it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Citation {
    /// The key in the register.
    pub key: Key,
    /// Row, page, document number: where in the source.
    pub locator: String,
    /// Read, given, practice or memory.
    pub standing: Standing,
}

impl Citation {
    /// A citation without a closer place.
    pub fn of(key: Key, standing: Standing) -> Self {
        Self { key, locator: String::new(), standing }
    }

    /// The same with a place in the source.
    #[must_use]
    pub fn at(mut self, locator: impl Into<String>) -> Self {
        self.locator = locator.into();
        self
    }
}
