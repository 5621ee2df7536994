//! Reading a quantity as people write it: `85 psi`, `5.9bar`, `-25C`.

use crate::NotFinite;

/// A quantity that knows its units by symbol.
pub trait Unit: Sized + Copy {
    /// What it is called in messages, such as `gauge pressure`.
    const KIND: &'static str;
    /// The symbols it understands, base unit first.
    const SYMBOLS: &'static [&'static str];

    /// Makes it from a number in the unit with this symbol; `None` for an unknown symbol.
    fn from_unit(value: f64, symbol: &str) -> Option<Result<Self, NotFinite>>;

    /// Its number in the unit with this symbol; `None` for an unknown symbol.
    fn in_unit(self, symbol: &str) -> Option<f64>;
}

/// Why a text is not a quantity.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ParseError {
    /// No number at the front.
    #[error("'{text}' does not start with a number; write a {kind} like '12.5 {example}'")]
    NoNumber {
        /// What was written.
        text: String,
        /// What was wanted.
        kind: &'static str,
        /// A unit that would do.
        example: &'static str,
    },
    /// A number without a unit.
    #[error("'{text}' has no unit; write a {kind} with one of: {known}")]
    NoUnit {
        /// What was written.
        text: String,
        /// What was wanted.
        kind: &'static str,
        /// The units that would do.
        known: String,
    },
    /// A unit that does not belong to this kind.
    #[error("'{unit}' in '{text}' is not a unit of {kind}; use one of: {known}")]
    UnknownUnit {
        /// What was written.
        text: String,
        /// The unit part of it.
        unit: String,
        /// What was wanted.
        kind: &'static str,
        /// The units that would do.
        known: String,
    },
    /// NaN, infinity or overflow.
    #[error(transparent)]
    NotFinite(#[from] NotFinite),
}

pub(crate) fn parse<Q: Unit>(text: &str) -> Result<Q, ParseError> {
    let trimmed = text.trim();
    let split = number_length(trimmed);
    let (number, symbol) = trimmed.split_at(split);
    let known = || Q::SYMBOLS.join(", ");
    let value: f64 = number.parse().map_err(|_| ParseError::NoNumber {
        text: text.to_owned(),
        kind: Q::KIND,
        example: Q::SYMBOLS[0],
    })?;
    let symbol = symbol.trim();
    if symbol.is_empty() {
        return Err(ParseError::NoUnit { text: text.to_owned(), kind: Q::KIND, known: known() });
    }
    let symbol = symbol.replace('³', "3").replace('²', "2").replace('°', "");
    match Q::from_unit(value, &symbol) {
        Some(result) => Ok(result?),
        None => Err(ParseError::UnknownUnit {
            text: text.to_owned(),
            unit: symbol,
            kind: Q::KIND,
            known: known(),
        }),
    }
}

/// How many bytes at the front belong to the number; an `e` counts only before digits.
fn number_length(text: &str) -> usize {
    let bytes = text.as_bytes();
    let mut end = 0;
    while end < bytes.len() {
        match bytes[end] {
            b'0'..=b'9' | b'.' => end += 1,
            b'+' | b'-' if end == 0 => end += 1,
            b'e' | b'E' => {
                let digits = end + 1 + usize::from(matches!(bytes.get(end + 1), Some(b'+' | b'-')));
                if !bytes.get(digits).is_some_and(u8::is_ascii_digit) {
                    break;
                }
                end = digits;
            }
            _ => break,
        }
    }
    end
}

#[cfg(test)]
mod tests {
    use crate::{GaugePressure, Mass, ParseError, SonicConductance, Speed, Temperature};

    #[test]
    fn units_stick_or_stand_apart() {
        assert_eq!("85psi".parse::<GaugePressure>(), "85 psi".parse::<GaugePressure>());
        assert!(("11 t".parse::<Mass>().unwrap().as_kg() - 11_000.0).abs() < 1e-9);
        assert!(("40mph".parse::<Speed>().unwrap().as_kmh() - 64.373_76).abs() < 1e-9);
        assert!(("-25C".parse::<Temperature>().unwrap().as_kelvin() - 248.15).abs() < 1e-9);
        let c: SonicConductance = "1.5dm3/s/bar".parse().unwrap();
        assert!((c.as_m3_per_s_pa() - 1.5e-8).abs() < 1e-20);
    }

    #[test]
    fn what_is_wrong_is_named() {
        assert!(matches!("85".parse::<GaugePressure>(), Err(ParseError::NoUnit { .. })));
        assert!(matches!("85 kg".parse::<GaugePressure>(), Err(ParseError::UnknownUnit { .. })));
        assert!(matches!("psi".parse::<GaugePressure>(), Err(ParseError::NoNumber { .. })));
        assert!(matches!("1e400 psi".parse::<GaugePressure>(), Err(ParseError::NotFinite(_))));
        assert!(matches!("nan psi".parse::<GaugePressure>(), Err(ParseError::NoNumber { .. })));
        assert!(matches!("".parse::<GaugePressure>(), Err(ParseError::NoNumber { .. })));
    }
}
