//! Words and numbers of one reader.

use std::fmt::Display;

use language::{Arg, Format, Kind, Texts};

/// The texts and the number forms a document is written in.
#[derive(Debug, Clone, Copy)]
pub struct Words<'a> {
    /// Texts.
    pub texts: &'a Texts,
    /// Numbers with their units.
    pub format: &'a Format,
}

impl Words<'_> {
    /// A text without arguments.
    pub fn text(&self, key: &str) -> String {
        self.texts.get(key, &[])
    }

    /// A text with arguments; each is put in as it prints.
    pub fn fill(&self, key: &str, args: &[(&str, &dyn Display)]) -> String {
        let args: Vec<(&str, Arg<'_>)> =
            args.iter().map(|(name, value)| (*name, value.to_string().into())).collect();
        self.texts.get(key, &args)
    }

    /// A text that counts something.
    pub fn count(&self, key: &str, count: usize) -> String {
        self.texts.get(key, &[("count", count.into())])
    }

    /// A heading with the unit of the numbers under it.
    pub fn with_unit(&self, key: &str, kind: Kind) -> String {
        format!("{}, {}", self.text(key), self.format.unit(kind))
    }
}
