//! Words in the reader's language, from Fluent files compiled in.

use std::collections::BTreeSet;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::Entry;
use unic_langid::LanguageIdentifier;

use crate::LanguageError;

/// Language and its files, by name.
type Files = (&'static str, &'static [(&'static str, &'static str)]);

const LANGUAGES: &[Files] = &[(
    "en",
    &[
        ("ask.ftl", include_str!("../texts/en/ask.ftl")),
        ("calc.ftl", include_str!("../texts/en/calc.ftl")),
        ("cautions.ftl", include_str!("../texts/en/cautions.ftl")),
        ("commands.ftl", include_str!("../texts/en/commands.ftl")),
        ("chart.ftl", include_str!("../texts/en/chart.ftl")),
        ("issued.ftl", include_str!("../texts/en/issued.ftl")),
        ("limits.ftl", include_str!("../texts/en/limits.ftl")),
        ("now.ftl", include_str!("../texts/en/now.ftl")),
        ("plan.ftl", include_str!("../texts/en/plan.ftl")),
        ("requests.ftl", include_str!("../texts/en/requests.ftl")),
        ("units.ftl", include_str!("../texts/en/units.ftl")),
    ],
)];

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

/// The texts of one language.
pub struct Texts {
    language: &'static str,
    bundle: FluentBundle<FluentResource>,
    keys: BTreeSet<String>,
}

impl std::fmt::Debug for Texts {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Texts").field("language", &self.language).finish_non_exhaustive()
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
        let asked: LanguageIdentifier =
            tag.parse().map_err(|_| LanguageError::NotATag { tag: tag.to_owned() })?;
        let whole = asked.to_string();
        let (language, files) = [whole.as_str(), asked.language.as_str()]
            .into_iter()
            .find_map(|name| LANGUAGES.iter().find(|(language, _)| *language == name))
            .ok_or_else(|| LanguageError::NoTexts {
                tag: tag.to_owned(),
                available: Self::languages().collect::<Vec<_>>().join(", "),
            })?;
        Self::load(language, files, asked)
    }

    /// The languages that have texts.
    pub fn languages() -> impl Iterator<Item = &'static str> {
        LANGUAGES.iter().map(|(language, _)| *language)
    }

    /// The language read.
    pub fn language(&self) -> &'static str {
        self.language
    }

    /// Every key, in order.
    pub fn keys(&self) -> impl Iterator<Item = &str> {
        self.keys.iter().map(String::as_str)
    }

    /// The text of a key, filled.
    ///
    /// # Errors
    /// [`TextError::MissingKey`], or [`TextError::Unfilled`] if an argument is missing.
    pub fn try_get(&self, key: &str, args: &[(&str, Arg<'_>)]) -> Result<String, TextError> {
        let missing = || TextError::MissingKey(key.to_owned());
        let pattern = self.bundle.get_message(key).and_then(|m| m.value()).ok_or_else(missing)?;
        let mut given = FluentArgs::new();
        for (name, arg) in args {
            match arg {
                Arg::Text(text) => given.set(*name, FluentValue::from(text.as_ref())),
                Arg::Count(count) => given.set(*name, FluentValue::from(*count)),
            }
        }
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(&given), &mut errors).into_owned();
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

    fn load(
        language: &'static str,
        files: &[(&str, &str)],
        asked: LanguageIdentifier,
    ) -> Result<Self, LanguageError> {
        let broken = |file: &str, what: String| LanguageError::BrokenTexts {
            language,
            what: format!("{file}: {what}"),
        };
        let mut bundle = FluentBundle::new_concurrent(vec![asked]);
        // Isolation marks are invisible on paper and break plain terminals.
        bundle.set_use_isolating(false);
        let mut keys = BTreeSet::new();
        for (file, source) in files {
            let resource = FluentResource::try_new((*source).to_owned())
                .map_err(|(_, errors)| broken(file, format!("{errors:?}")))?;
            keys.extend(resource.entries().filter_map(|entry| match entry {
                Entry::Message(message) => Some(message.id.name.to_owned()),
                _ => None,
            }));
            bundle.add_resource(resource).map_err(|errors| broken(file, format!("{errors:?}")))?;
        }
        Ok(Self { language, bundle, keys })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_language_parses_and_has_the_keys_of_english() {
        let english: Vec<_> = Texts::new("en").unwrap().keys().map(str::to_owned).collect();
        assert!(english.len() > 100);
        for language in Texts::languages() {
            let keys: Vec<_> = Texts::new(language).unwrap().keys().map(str::to_owned).collect();
            assert_eq!(keys, english, "keys of {language}");
        }
    }

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
    fn a_language_without_texts_is_refused_with_the_choice() {
        let error = Texts::new("fi").unwrap_err();
        assert_eq!(error.to_string(), "there are no texts in 'fi'; available: en");
    }
}
