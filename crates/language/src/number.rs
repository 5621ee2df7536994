//! Digits in the form of a language.

use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_locale_core::Locale;

use crate::{LanguageError, Round};

/// Writes numbers with the decimal mark and grouping of a language.
#[derive(Debug, Clone)]
pub struct NumberForm {
    plain: DecimalFormatter,
    grouped: DecimalFormatter,
}

impl NumberForm {
    /// The form of a language, such as `en` or `fr-CA`.
    ///
    /// # Errors
    /// [`LanguageError::NotATag`] for what is no language tag.
    pub fn new(language: &str) -> Result<Self, LanguageError> {
        let not_a_tag = || LanguageError::NotATag { tag: language.to_owned() };
        let locale: Locale = language.parse().map_err(|_| not_a_tag())?;
        let with = |grouping| {
            let mut options = DecimalFormatterOptions::default();
            options.grouping_strategy = Some(grouping);
            DecimalFormatter::try_new((&locale).into(), options).map_err(|_| not_a_tag())
        };
        Ok(Self { plain: with(GroupingStrategy::Never)?, grouped: with(GroupingStrategy::Auto)? })
    }

    /// A number without thousands marks: on a card a mark can be taken for a decimal one.
    #[must_use]
    pub fn plain(&self, value: f64, decimals: u8, round: Round) -> String {
        self.plain.format(&digits(value, decimals, round)).to_string()
    }

    /// A number with the thousands marks of the language: for money and counts in reports.
    #[must_use]
    pub fn grouped(&self, value: f64, decimals: u8, round: Round) -> String {
        self.grouped.format(&digits(value, decimals, round)).to_string()
    }
}

fn digits(value: f64, decimals: u8, round: Round) -> Decimal {
    let text = format!("{:.*}", usize::from(decimals), round.at(value, decimals));
    text.parse().expect("a finite float prints as a decimal number")
}

#[cfg(test)]
mod tests {
    use super::*;

    // Unicode CLDR number data, as any browser's Intl.NumberFormat prints it.
    #[test]
    fn table_marks_of_languages_agree_with_cldr() {
        let grouped =
            |language| NumberForm::new(language).unwrap().grouped(12345.5, 1, Round::Nearest);
        assert_eq!(grouped("en"), "12,345.5");
        assert_eq!(grouped("en-CA"), "12,345.5");
        assert_eq!(grouped("fr-CA"), "12\u{a0}345,5");
        assert_eq!(grouped("fr"), "12\u{202f}345,5");
        assert_eq!(grouped("fi"), "12\u{a0}345,5");
        assert_eq!(grouped("de"), "12.345,5");
        assert_eq!(grouped("es-CL"), "12.345,5");
        assert_eq!(grouped("es-MX"), "12,345.5");
        assert_eq!(grouped("pt-BR"), "12.345,5");
    }

    #[test]
    fn cards_have_no_thousands_mark() {
        assert_eq!(NumberForm::new("de").unwrap().plain(12345.5, 1, Round::Nearest), "12345,5");
        assert_eq!(NumberForm::new("en").unwrap().plain(-0.04, 1, Round::Nearest), "0.0");
    }

    #[test]
    fn a_wrong_tag_is_refused() {
        assert!(matches!(NumberForm::new("??"), Err(LanguageError::NotATag { .. })));
    }
}
