//! How numbers and words reach a reader: texts, number forms, unit profiles, safe rounding.
//!
//! Nothing here decides anything. A quantity arrives, with the word that says on which
//! side it must not be wrong, and leaves as digits in the reader's unit:
//!
//! ```
//! use language::{Format, Round, UnitProfile};
//! use quantity::ColdPressure;
//!
//! let format = Format::new(UnitProfile::Us, "en")?;
//! let minimum = ColdPressure::from_kpa(483.0); // 70.05 psi
//! assert_eq!(format.pressure(minimum, Round::Up).to_string(), "71 psi");
//! # Ok::<(), language::LanguageError>(())
//! ```

mod format;
mod languages;
mod number;
mod round;
mod scale;
mod texts;
mod units;

pub use format::{Amount, Format, Pressure};
pub use languages::{FIRST, OFFERED, with_texts};
pub use number::NumberForm;
pub use round::Round;
pub use texts::{Arg, TextError, Texts};
pub use units::{Kind, Shown, UnitProfile, UnknownProfile};

/// A language that cannot be served.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum LanguageError {
    /// Not a language tag at all.
    #[error("'{tag}' is not a language tag; write one like 'en' or 'fr-CA'")]
    NotATag {
        /// What was given.
        tag: String,
    },
    /// A language without texts here.
    #[error("there are no texts in '{tag}'; available: {available}")]
    NoTexts {
        /// What was asked.
        tag: String,
        /// The languages with texts.
        available: String,
    },
    /// A text file that does not parse or repeats a key.
    #[error("the texts of '{language}' are broken: {what}")]
    BrokenTexts {
        /// Whose texts.
        language: &'static str,
        /// What is wrong.
        what: String,
    },
}
