//! What a case puts in, handed out by name and kind.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::str::FromStr;

use toml_edit::Value;

use crate::CaseError;
use crate::case::number_of;

/// The inputs of a case; remembers which were asked for.
#[derive(Debug)]
pub struct Inputs<'a> {
    given: &'a [(String, Value)],
    asked: RefCell<BTreeSet<String>>,
}

impl<'a> Inputs<'a> {
    /// The inputs as the case file gives them.
    pub fn new(given: &'a [(String, Value)]) -> Self {
        Self { given, asked: RefCell::default() }
    }

    /// A quantity, written like `85 psi`.
    ///
    /// # Errors
    /// [`CaseError::Input`] if it is missing or of another kind.
    pub fn quantity<Q>(&self, name: &str) -> Result<Q, CaseError>
    where
        Q: FromStr,
        Q::Err: std::fmt::Display,
    {
        self.word(name)?.parse().map_err(|error: Q::Err| CaseError::Input {
            name: name.to_owned(),
            what: error.to_string(),
        })
    }

    /// A ratio or a count, written as a bare number.
    ///
    /// # Errors
    /// [`CaseError::Input`] if it is missing or no number.
    pub fn number(&self, name: &str) -> Result<f64, CaseError> {
        number_of(self.value(name)?).ok_or_else(|| wrong(name, "is not a number"))
    }

    /// A word, such as the name of a class.
    ///
    /// # Errors
    /// [`CaseError::Input`] if it is missing or no text.
    pub fn word(&self, name: &str) -> Result<&'a str, CaseError> {
        self.value(name)?.as_str().ok_or_else(|| wrong(name, "is not a text"))
    }

    /// Whether the case gives it.
    pub fn has(&self, name: &str) -> bool {
        self.given.iter().any(|(given, _)| given == name)
    }

    /// Lists of texts, such as the parts of a path.
    ///
    /// # Errors
    /// [`CaseError::Input`] if it is missing or no list of texts.
    pub fn words(&self, name: &str) -> Result<Vec<&'a str>, CaseError> {
        let list = self.value(name)?.as_array().ok_or_else(|| wrong(name, "is not a list"))?;
        list.iter().map(|v| v.as_str().ok_or_else(|| wrong(name, "holds no text"))).collect()
    }

    /// The inputs nobody asked for.
    pub fn unused(&self) -> Vec<&str> {
        let asked = self.asked.borrow();
        self.given
            .iter()
            .map(|(name, _)| name.as_str())
            .filter(|name| !asked.contains(*name))
            .collect()
    }

    fn value(&self, name: &str) -> Result<&'a Value, CaseError> {
        self.asked.borrow_mut().insert(name.to_owned());
        let found = self.given.iter().find(|(given, _)| given == name);
        found.map(|(_, value)| value).ok_or_else(|| wrong(name, "is not given"))
    }
}

/// An input that is not as it must be.
pub fn wrong(name: &str, what: &str) -> CaseError {
    CaseError::Input { name: name.to_owned(), what: what.to_owned() }
}
