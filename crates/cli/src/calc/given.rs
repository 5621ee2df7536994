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
        mass_or_force(text, Self, |force: Force| Self(force.as_mass()))
    }
}

/// Load on a road as a force, which may be typed as the mass that has this weight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weight(pub Force);

impl FromStr for Weight {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        mass_or_force(text, |mass: Mass| Self(mass.weight()), Self)
    }
}

fn mass_or_force<T>(
    text: &str,
    of_mass: impl Fn(Mass) -> T,
    of_force: impl Fn(Force) -> T,
) -> Result<T, ParseError> {
    let known = || [Mass::SYMBOLS, Force::SYMBOLS].concat().join(", ");
    match text.parse::<Mass>() {
        Ok(mass) => Ok(of_mass(mass)),
        Err(ParseError::UnknownUnit { unit, .. }) if Force::SYMBOLS.contains(&&*unit) => {
            Ok(of_force(text.parse()?))
        }
        Err(ParseError::UnknownUnit { text, unit, .. }) => {
            Err(ParseError::UnknownUnit { text, unit, kind: "load", known: known() })
        }
        Err(ParseError::NoUnit { text, .. }) => {
            Err(ParseError::NoUnit { text, kind: "load", known: known() })
        }
        Err(other) => Err(other),
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
    /// From percent.
    pub const fn from_percent(percent: f64) -> Self {
        Self(percent)
    }

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

/// A ratio typed as one or in percent: 0.2 or 20%.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ratio(pub f64);

impl FromStr for Ratio {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        if text.trim_end().ends_with('%') {
            Ok(Self(text.parse::<Share>()?.as_ratio()))
        } else {
            ratio(text).map(Self)
        }
    }
}

/// Section height over section width as sizes state it; 86 and 0.86 cannot be mistaken for each
/// other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aspect(f64);

impl Aspect {
    /// In percent.
    pub fn as_percent(self) -> f64 {
        self.0
    }
}

impl FromStr for Aspect {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let Ratio(number) = text.parse()?;
        let percent = if number < 2.0 { number * 100.0 } else { number };
        if (20.0..=150.0).contains(&percent) {
            Ok(Self(percent))
        } else {
            Err(format!(
                "'{text}' is no tire's section height over width; write one like 86 or 0.86"
            ))
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
        let error = "2800".parse::<Weight>().unwrap_err().to_string();
        assert!(error.contains("kg, t, lb, N, kN, lbf, kip"), "{error}");
        let Weight(weight) = "1t".parse().unwrap();
        assert!((weight.as_kn() - 9.80665).abs() < 1e-12);
        // A limit of a table is met in the unit it is stated in.
        assert!("50kip".parse::<Weight>().is_ok_and(|load| load.0.as_kip() <= 50.0));
    }

    #[test]
    fn a_share_is_in_percent() {
        assert!(("6%".parse::<Share>().unwrap().as_ratio() - 0.06).abs() < 1e-12);
        assert!(("-6 %".parse::<Share>().unwrap().as_percent() + 6.0).abs() < 1e-12);
        assert!("steep".parse::<Share>().is_err());
        assert!("inf".parse::<Share>().is_err());
        assert!(ratio("nan").is_err());
    }

    #[test]
    fn a_ratio_may_be_typed_in_percent() {
        for text in ["0.2", "20%", " 20 % "] {
            assert!((text.parse::<Ratio>().unwrap().0 - 0.2).abs() < 1e-12, "{text}");
        }
        for text in ["86", "0.86", "86%"] {
            assert!((text.parse::<Aspect>().unwrap().as_percent() - 86.0).abs() < 1e-12, "{text}");
        }
        for text in ["3", "0.1", "860", "nan", "high"] {
            assert!(text.parse::<Aspect>().is_err(), "{text}");
        }
    }
}
