//! Words and numbers in the reader's language and units.

use std::fmt::Display;

use language::{Arg, Format, LanguageError, Texts, UnitProfile};

use crate::args::GlobalArgs;
use crate::outcome::Failure;
use crate::terminal::Terminal;

/// The language used where neither the call nor the survey names one.
const DEFAULT_LANGUAGE: &str = "en";

/// Texts and number forms of one reader.
#[derive(Debug)]
pub struct Words {
    /// Texts.
    pub texts: Texts,
    /// Numbers with their units.
    pub format: Format,
}

impl Words {
    /// The words a call asks for, where no survey has a say.
    pub fn of_call(global: &GlobalArgs) -> Result<Self, Failure> {
        let language = global.language.as_deref().unwrap_or(DEFAULT_LANGUAGE);
        Self::new(global.units.unwrap_or_default(), language).map_err(Failure::call)
    }

    /// The words a call asks for, else those of the survey; a survey in a language without texts
    /// is told in the default one, and that is said.
    pub fn of_survey(
        global: &GlobalArgs,
        survey: Option<&survey::Survey>,
        terminal: Terminal,
    ) -> Result<Self, Failure> {
        let own = survey.map(|survey| match survey.units {
            survey::UnitProfile::Si => UnitProfile::Si,
            survey::UnitProfile::Us => UnitProfile::Us,
            survey::UnitProfile::MetricBar => UnitProfile::MetricBar,
        });
        let units = global.units.or(own).unwrap_or_default();
        if let Some(language) = &global.language {
            return Self::new(units, language).map_err(Failure::call);
        }
        let Some(survey) = survey else {
            return Self::new(units, DEFAULT_LANGUAGE).map_err(Failure::call);
        };
        match Self::new(units, &survey.language) {
            Ok(words) => Ok(words),
            Err(error @ LanguageError::BrokenTexts { .. }) => Err(Failure::input(error)),
            Err(error) => {
                terminal.note(&format!("survey.toml: {error}; going on in English"))?;
                Self::new(units, DEFAULT_LANGUAGE).map_err(Failure::call)
            }
        }
    }

    fn new(units: UnitProfile, language: &str) -> Result<Self, LanguageError> {
        Ok(Self { texts: Texts::new(language)?, format: Format::new(units, language)? })
    }

    /// The language tag asked for.
    pub fn language(&self) -> &str {
        self.format.language()
    }

    /// The same words for a document.
    pub fn of_paper(&self) -> report::Words<'_> {
        report::Words { texts: &self.texts, format: &self.format }
    }

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
}
