//! Values as typed: the text is kept, so that an answer can repeat what was put in.

use std::str::FromStr;

use language::{Kind, Round};
use quantity::{Force, Mass, ParseError, Unit};

use crate::page::fine;
use crate::words::Words;

/// A value with the text it was read from.
#[derive(Debug, Clone)]
pub struct Given<T> {
    /// As typed.
    pub text: String,
    /// What it means.
    pub value: T,
}

impl<T: FromStr> FromStr for Given<T> {
    type Err = T::Err;

    fn from_str(text: &str) -> Result<Self, T::Err> {
        Ok(Self { text: text.trim().to_owned(), value: text.parse()? })
    }
}

/// Load on a tire: a mass as tables state it, or the force on the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TireLoad(pub Mass);

impl FromStr for TireLoad {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        match text.parse::<Mass>() {
            Ok(mass) => Ok(Self(mass)),
            Err(ParseError::UnknownUnit { unit, .. }) if Force::SYMBOLS.contains(&&*unit) => {
                Ok(Self(text.parse::<Force>()?.as_mass()))
            }
            Err(ParseError::UnknownUnit { text, unit, .. }) => Err(ParseError::UnknownUnit {
                text,
                unit,
                kind: "load",
                known: [Mass::SYMBOLS, Force::SYMBOLS].concat().join(", "),
            }),
            Err(other) => Err(other),
        }
    }
}

/// A value as typed, and in the reader's unit where it was typed in another.
pub fn repeated<Q: Unit>(words: &Words, typed: &str, value: Q, kind: Kind) -> String {
    let shown = kind.shown(words.format.profile());
    let own = typed.strip_suffix(shown.symbol).map(str::trim_end);
    match own.filter(|number| number.parse::<f64>().is_ok()) {
        Some(number) => format!("{number} {}", shown.label),
        None => format!("{typed} = {}", fine(&words.format, kind, value, Round::Nearest)),
    }
}

/// A share typed in percent, with or without the sign.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share(f64);

impl Share {
    /// As a ratio.
    pub fn as_ratio(self) -> f64 {
        self.0 / 100.0
    }

    /// In percent.
    pub fn as_percent(self) -> f64 {
        self.0
    }
}

impl FromStr for Share {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let number = text.trim();
        let number = number.strip_suffix('%').unwrap_or(number).trim_end();
        match number.parse::<f64>() {
            Ok(percent) if percent.is_finite() => Ok(Self(percent)),
            _ => Err(format!("'{text}' is not a percentage; write one like 6% or 6")),
        }
    }
}

/// A plain number without unit.
pub fn ratio(text: &str) -> Result<f64, String> {
    match text.trim().parse::<f64>() {
        Ok(number) if number.is_finite() => Ok(number),
        _ => Err(format!("'{text}' is not a number; write one like 0.3, without unit")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // A mass of 1 kg weighs 9.80665 N (standard gravity, exact).
    #[test]
    fn table_a_load_may_be_a_mass_or_a_force() {
        let force: TireLoad = "18.9kN".parse().unwrap();
        assert!((force.0.as_kg() - 18_900.0 / 9.80665).abs() < 1e-9);
        let mass: TireLoad = "2800 kg".parse().unwrap();
        assert!((mass.0.as_kg() - 2800.0).abs() < 1e-9);
        let error = "2800psi".parse::<TireLoad>().unwrap_err().to_string();
        assert!(error.contains("kg, t, lb, N, kN, lbf, kip"), "{error}");
    }

    #[test]
    fn a_share_is_in_percent() {
        assert!(("6%".parse::<Share>().unwrap().as_ratio() - 0.06).abs() < 1e-12);
        assert!(("-6 %".parse::<Share>().unwrap().as_percent() + 6.0).abs() < 1e-12);
        assert!("steep".parse::<Share>().is_err());
        assert!("inf".parse::<Share>().is_err());
        assert!(ratio("nan").is_err());
    }
}
