//! Words in the reader's language, from Fluent files compiled in.

use std::collections::BTreeSet;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::Entry;
use unic_langid::LanguageIdentifier;

use crate::{LanguageError, languages};

/// The text that says that nobody who grew up with a language has read its safety texts.
const UNREVIEWED: &str = "caution-unreviewed";

/// Why a text could not be made.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum TextError {
    /// No text has this key.
    #[error("no text has the key '{0}'")]
    MissingKey(String),
    /// The text asks for something that was not given.
    #[error("the text '{key}' cannot be filled: {what}")]
    Unfilled {
        /// Key of the text.
        key: String,
        /// What is missing, as the Fluent resolver says it.
        what: String,
    },
}

/// What is put into a text: words, or a count that chooses the plural.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg<'a> {
    /// Words or digits already in their form.
    Text(std::borrow::Cow<'a, str>),
    /// A whole number.
    Count(usize),
}

impl<'a> From<&'a str> for Arg<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(text.into())
    }
}

impl From<String> for Arg<'_> {
    fn from(text: String) -> Self {
        Self::Text(text.into())
    }
}

impl From<crate::Amount> for Arg<'_> {
    fn from(amount: crate::Amount) -> Self {
        amount.to_string().into()
    }
}

impl From<usize> for Arg<'_> {
    fn from(count: usize) -> Self {
        Self::Count(count)
    }
}

/// The texts of one language, then those of English for keys that have no translation yet.
pub struct Texts {
    read: Vec<Language>,
}

/// The texts of one folder.
struct Language {
    name: &'static str,
    bundle: FluentBundle<FluentResource>,
    keys: BTreeSet<String>,
}

impl std::fmt::Debug for Texts {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Texts").field("language", &self.language()).finish_non_exhaustive()
    }
}

impl Texts {
    /// The texts for a language tag; a region without its own texts reads its language's.
    ///
    /// # Errors
    /// [`LanguageError::NotATag`], or [`LanguageError::NoTexts`] for a language without texts.
    ///
    /// ```
    /// let texts = language::Texts::new("en-CA")?;
    /// assert_eq!(texts.get("plan-ladder", &[]), "Ladder");
    /// assert!(language::Texts::new("tlh").is_err());
    /// # Ok::<(), language::LanguageError>(())
    /// ```
    pub fn new(tag: &str) -> Result<Self, LanguageError> {
        let chain = languages::chain(tag)?;
        Ok(Self { read: chain.into_iter().map(Language::load).collect::<Result<_, _>>()? })
    }

    /// The source texts that a reader of this tag needs, first those to fall back on: for a page
    /// that fills texts itself.
    ///
    /// # Errors
    /// As [`Self::new`].
    pub fn sources(tag: &str) -> Result<Vec<&'static str>, LanguageError> {
        let chain = languages::chain(tag)?;
        let files = chain.into_iter().rev().flat_map(languages::files);
        Ok(files.map(|(_, source)| source).collect())
    }

    /// The language read.
    pub fn language(&self) -> &'static str {
        self.read.first().map_or(languages::FIRST, |language| language.name)
    }

    /// What stands beside safety texts as long as no native speaker has reviewed them; none for
    /// a language whose texts say that one has.
    ///
    /// The file `cautions.ftl` of the language decides: `caution-unreviewed` is the mark, and its
    /// attribute `reviewed` is `yes` or `no`.
    #[must_use]
    pub fn unreviewed(&self) -> Option<String> {
        let reviewed = self.read.first()?.attribute(UNREVIEWED, "reviewed");
        (reviewed.as_deref() != Some("yes")).then(|| self.get(UNREVIEWED, &[]))
    }

    /// Every key of the language itself, in order.
    pub fn keys(&self) -> impl Iterator<Item = &str> {
        self.read.first().into_iter().flat_map(|language| language.keys.iter().map(String::as_str))
    }

    /// The text of a key, filled.
    ///
    /// # Errors
    /// [`TextError::MissingKey`], or [`TextError::Unfilled`] if an argument is missing.
    pub fn try_get(&self, key: &str, args: &[(&str, Arg<'_>)]) -> Result<String, TextError> {
        let (bundle, pattern) = self
            .read
            .iter()
            .find_map(|Language { bundle, .. }| Some((bundle, bundle.get_message(key)?.value()?)))
            .ok_or_else(|| TextError::MissingKey(key.to_owned()))?;
        let mut given = FluentArgs::new();
        for (name, arg) in args {
            match arg {
                Arg::Text(text) => given.set(*name, FluentValue::from(text.as_ref())),
                Arg::Count(count) => given.set(*name, FluentValue::from(*count)),
            }
        }
        let mut errors = Vec::new();
        let text = bundle.format_pattern(pattern, Some(&given), &mut errors).into_owned();
        match errors.first() {
            None => Ok(text),
            Some(error) => {
                Err(TextError::Unfilled { key: key.to_owned(), what: error.to_string() })
            }
        }
    }

    /// The text of a key, filled; where that fails the reader sees what failed, never a blank.
    #[must_use]
    pub fn get(&self, key: &str, args: &[(&str, Arg<'_>)]) -> String {
        self.try_get(key, args).unwrap_or_else(|error| match error {
            TextError::MissingKey(key) => format!("[{key}]"),
            TextError::Unfilled { key, what } => format!("[{key}: {what}]"),
        })
    }
}

impl Language {
    fn load(name: &'static str) -> Result<Self, LanguageError> {
        let broken = |file: &str, what: String| LanguageError::BrokenTexts {
            language: name,
            what: format!("{file}: {what}"),
        };
        let plurals: LanguageIdentifier =
            name.parse().map_err(|_| LanguageError::NotATag { tag: name.to_owned() })?;
        let mut bundle = FluentBundle::new_concurrent(vec![plurals]);
        // Isolation marks are invisible on paper and break plain terminals.
        bundle.set_use_isolating(false);
        let mut keys = BTreeSet::new();
        for (file, source) in languages::files(name) {
            let resource = FluentResource::try_new(source.to_owned())
                .map_err(|(_, errors)| broken(file, format!("{errors:?}")))?;
            keys.extend(resource.entries().filter_map(|entry| match entry {
                Entry::Message(message) => Some(message.id.name.to_owned()),
                _ => None,
            }));
            bundle.add_resource(resource).map_err(|errors| broken(file, format!("{errors:?}")))?;
        }
        Ok(Self { name, bundle, keys })
    }

    fn attribute(&self, key: &str, name: &str) -> Option<String> {
        let pattern = self.bundle.get_message(key)?.get_attribute(name)?.value();
        Some(self.bundle.format_pattern(pattern, None, &mut Vec::new()).into_owned())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_missing_key_or_argument_is_seen() {
        let texts = Texts::new("en").unwrap();
        assert_eq!(texts.get("no-such-text", &[]), "[no-such-text]");
        assert!(matches!(texts.try_get("no-such-text", &[]), Err(TextError::MissingKey(_))));
        assert!(matches!(texts.try_get("plan-for-haul", &[]), Err(TextError::Unfilled { .. })));
        assert!(texts.get("plan-for-haul", &[]).starts_with("[plan-for-haul: "));
    }

    #[test]
    fn counts_choose_the_plural() {
        let texts = Texts::new("en").unwrap();
        assert_eq!(texts.get("plan-change-count", &[("count", 1.into())]), "1 change point");
        assert_eq!(texts.get("plan-change-count", &[("count", 4.into())]), "4 change points");
    }

    #[test]
    fn english_safety_texts_carry_no_mark() {
        assert_eq!(Texts::new("en-AU").unwrap().unreviewed(), None);
    }
}
