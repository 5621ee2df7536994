//! What an equation returned, readable in any unit of its kind.

use quantity::Unit;
use toml_edit::Value;

use crate::case::number_of;

/// Named results of one evaluation.
#[derive(Debug, Default)]
pub struct Outputs(Vec<(&'static str, Output)>);

/// One result: the numbers of each unit, or a bare number.
#[derive(Debug)]
enum Output {
    Quantity(Vec<(&'static str, f64)>),
    Number(f64),
}

impl Outputs {
    /// No result yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds a quantity.
    #[must_use]
    pub fn quantity<Q: Unit>(mut self, name: &'static str, value: Q) -> Self {
        let numbers =
            Q::SYMBOLS.iter().filter_map(|symbol| Some((*symbol, value.in_unit(symbol)?)));
        self.0.push((name, Output::Quantity(numbers.collect())));
        self
    }

    /// Adds a ratio or a count.
    #[must_use]
    pub fn number(mut self, name: &'static str, value: f64) -> Self {
        self.0.push((name, Output::Number(value)));
        self
    }

    /// The expected number with ours, both in the unit that the case wrote.
    ///
    /// # Errors
    /// A text that says which name or unit is not there.
    pub fn pair(&self, name: &str, expected: &Value) -> Result<(f64, f64), String> {
        let known = || self.0.iter().map(|(name, _)| *name).collect::<Vec<_>>().join(", ");
        let (_, ours) = self
            .0
            .iter()
            .find(|(known, _)| *known == name)
            .ok_or_else(|| format!("the equation returns no '{name}', but: {}", known()))?;
        match ours {
            Output::Number(ours) => {
                let theirs = number_of(expected).ok_or(format!("'{name}' is a bare number"))?;
                Ok((theirs, *ours))
            }
            Output::Quantity(units) => {
                let text = expected.as_str().ok_or(format!("'{name}' needs a unit"))?;
                let in_unit = |(symbol, ours): &(&str, f64)| {
                    let number = text.strip_suffix(symbol)?.trim().parse().ok()?;
                    Some((number, *ours))
                };
                units.iter().find_map(in_unit).ok_or(format!("'{text}' is no unit of '{name}'"))
            }
        }
    }
}
