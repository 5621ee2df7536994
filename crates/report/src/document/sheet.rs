//! Sizes of paper.

use serde::Serialize;

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sheet {
    /// 148 by 210 mm.
    A5,
    /// 210 by 297 mm.
    A4,
    /// 8.5 by 11 inches.
    Letter,
    /// 5.5 by 8.5 inches.
    HalfLetter,
}

/// A name that is no size of paper.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a size of paper; use a5, a4, letter or half-letter")]
pub struct UnknownSheet(pub String);

impl Sheet {
    /// Every size.
    pub const ALL: [Self; 4] = [Self::A5, Self::A4, Self::Letter, Self::HalfLetter];

    /// The name on the command line.
    pub const fn name(self) -> &'static str {
        match self {
            Self::A5 => "a5",
            Self::A4 => "a4",
            Self::Letter => "letter",
            Self::HalfLetter => "half-letter",
        }
    }

    /// Width and height in millimeters.
    ///
    /// Sources: ISO 216 for A4 and A5; an inch is 25.4 mm.
    pub const fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A5 => (148.0, 210.0),
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
            Self::HalfLetter => (139.7, 215.9),
        }
    }

    /// Whether it is a sheet for the hand: small margins, nothing wasted.
    pub const fn is_card(self) -> bool {
        matches!(self, Self::A5 | Self::HalfLetter)
    }

    /// What is printed on where nobody asked: letter in the Americas that use it, else A4; a card
    /// takes half of either.
    ///
    /// Which countries use letter is common practice, no source.
    #[must_use]
    pub fn usual(language: &str, us_units: bool, card: bool) -> Self {
        let region = language.rsplit('-').next().unwrap_or_default();
        let letter = us_units || ["CA", "US", "MX", "CL"].contains(&region);
        match (letter, card) {
            (true, true) => Self::HalfLetter,
            (true, false) => Self::Letter,
            (false, true) => Self::A5,
            (false, false) => Self::A4,
        }
    }
}

impl std::str::FromStr for Sheet {
    type Err = UnknownSheet;
    fn from_str(text: &str) -> Result<Self, UnknownSheet> {
        let found = Self::ALL.into_iter().find(|sheet| sheet.name() == text);
        found.ok_or_else(|| UnknownSheet(text.to_owned()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_turn_round_and_others_are_refused() {
        for sheet in Sheet::ALL {
            assert_eq!(sheet.name().parse(), Ok(sheet));
        }
        let error = "a3".parse::<Sheet>().unwrap_err();
        assert_eq!(
            error.to_string(),
            "'a3' is not a size of paper; use a5, a4, letter or half-letter"
        );
    }

    #[test]
    fn the_usual_paper_follows_region_and_units() {
        assert_eq!(Sheet::usual("en", true, true), Sheet::HalfLetter);
        assert_eq!(Sheet::usual("en", false, true), Sheet::A5);
        assert_eq!(Sheet::usual("fr-CA", false, false), Sheet::Letter);
        assert_eq!(Sheet::usual("sv", false, false), Sheet::A4);
    }
}
