//! Which languages there are, and whose texts a language tag reads.
//!
//! A folder of `texts` holds the words of one language for all its regions; the region chooses
//! the number form: `es-CL` writes 5,5 where `es-MX` writes 5.5, in the same words.

use include_dir::{Dir, include_dir};
use unic_langid::LanguageIdentifier;

use crate::LanguageError;

static TEXTS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/texts");

/// The language whose texts are written first, and read where another has none yet.
pub const FIRST: &str = "en";

/// The tags a reader is offered; other regions of these languages are understood too.
pub const OFFERED: [&str; 11] =
    ["en-US", "en-CA", "en-AU", "fr-CA", "es-CL", "es-MX", "sv", "fi", "de", "pt-BR", "en"];

/// The languages that have texts, by folder, in order.
pub fn with_texts() -> impl Iterator<Item = &'static str> {
    let mut names: Vec<&str> = TEXTS.dirs().filter_map(|dir| dir.path().to_str()).collect();
    names.sort_unstable();
    names.into_iter()
}

/// The text files of a language: name and source, in order.
pub(crate) fn files(language: &str) -> Vec<(&'static str, &'static str)> {
    let Some(dir) = TEXTS.get_dir(language) else { return Vec::new() };
    let mut files: Vec<_> = dir
        .files()
        .filter_map(|file| Some((file.path().file_name()?.to_str()?, file.contents_utf8()?)))
        .collect();
    files.sort_unstable();
    files
}

/// The languages read for a tag, nearest first: its own texts, then those of [`FIRST`].
///
/// # Errors
/// [`LanguageError::NotATag`], or [`LanguageError::NoTexts`] for a language without texts.
pub(crate) fn chain(tag: &str) -> Result<Vec<&'static str>, LanguageError> {
    let asked: LanguageIdentifier =
        tag.parse().map_err(|_| LanguageError::NotATag { tag: tag.to_owned() })?;
    let whole = asked.to_string();
    let nearest = [whole.as_str(), asked.language.as_str()]
        .into_iter()
        .find_map(|name| with_texts().find(|language| *language == name))
        .ok_or_else(|| LanguageError::NoTexts {
            tag: tag.to_owned(),
            available: OFFERED.join(", "),
        })?;
    let mut chain = vec![nearest];
    chain.extend((nearest != FIRST).then_some(FIRST));
    Ok(chain)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_region_reads_the_texts_of_its_language_then_english() {
        assert_eq!(chain("fr-CA").unwrap(), ["fr", "en"]);
        assert_eq!(chain("es-CL").unwrap(), chain("es-MX").unwrap());
        assert_eq!(chain("pt-BR").unwrap(), ["pt", "en"]);
        assert_eq!(chain("en-AU").unwrap(), ["en"]);
        assert_eq!(chain("sv-FI").unwrap(), ["sv", "en"]);
    }

    #[test]
    fn every_offered_tag_has_texts_and_every_language_is_offered() {
        let read: Vec<&str> = OFFERED.iter().map(|tag| chain(tag).unwrap()[0]).collect();
        for language in with_texts() {
            assert!(read.contains(&language), "{language} is not offered");
            assert!(!files(language).is_empty(), "{language} has no files");
        }
    }

    #[test]
    fn what_is_no_tag_or_has_no_texts_is_refused_with_the_choice() {
        assert!(matches!(chain("??"), Err(LanguageError::NotATag { .. })));
        let error = chain("nl").unwrap_err().to_string();
        assert!(error.contains("'nl'"), "{error}");
        assert!(OFFERED.iter().all(|tag| error.contains(tag)), "{error}");
    }
}
