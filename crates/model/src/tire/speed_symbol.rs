//! Speed symbols: the letters molded after the load index, and the speed they stand for.

use quantity::Speed;

use crate::source::{Citation, Key, Standing};

/// Speed symbols of tires.
pub const SPEED_SYMBOLS: Key = Key("iso-4223-1-speed-symbol");

/// Symbol and km/h, slowest first.
const TABLE: [(&str, f64); 29] = [
    ("A1", 5.0),
    ("A2", 10.0),
    ("A3", 15.0),
    ("A4", 20.0),
    ("A5", 25.0),
    ("A6", 30.0),
    ("A7", 35.0),
    ("A8", 40.0),
    ("B", 50.0),
    ("C", 60.0),
    ("D", 65.0),
    ("E", 70.0),
    ("F", 80.0),
    ("G", 90.0),
    ("J", 100.0),
    ("K", 110.0),
    ("L", 120.0),
    ("M", 130.0),
    ("N", 140.0),
    ("P", 150.0),
    ("Q", 160.0),
    ("R", 170.0),
    ("S", 180.0),
    ("T", 190.0),
    ("U", 200.0),
    ("H", 210.0),
    ("V", 240.0),
    ("W", 270.0),
    ("Y", 300.0),
];

/// Letters that are no speed symbol.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error(
    "'{text}' is not a speed symbol; write the letters molded after the load index, such as K or A2"
)]
pub struct UnknownSpeedSymbol {
    /// What was written.
    pub text: String,
}

/// A speed symbol.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedSymbol {
    letters: &'static str,
    speed: Speed,
}

impl SpeedSymbol {
    /// Every symbol, slowest first.
    pub fn all() -> impl Iterator<Item = Self> {
        TABLE.iter().map(|&(letters, kmh)| Self { letters, speed: Speed::from_kmh(kmh) })
    }

    /// The letters as molded.
    pub fn letters(self) -> &'static str {
        self.letters
    }

    /// The speed it stands for.
    ///
    /// # Source
    /// [`SPEED_SYMBOLS`]; see [`citation`](Self::citation).
    pub fn speed(self) -> Speed {
        self.speed
    }

    /// A1 and A3 to A7 are from memory, the others read.
    pub fn citation(self) -> Citation {
        let standing = match self.letters {
            "A1" | "A3" | "A4" | "A5" | "A6" | "A7" => Standing::FromMemory,
            _ => Standing::Read,
        };
        Citation::of(SPEED_SYMBOLS, standing).at(self.letters)
    }
}

impl std::str::FromStr for SpeedSymbol {
    type Err = UnknownSpeedSymbol;

    /// Reads the letters, in either case.
    ///
    /// ```
    /// use model::tire::speed_symbol::SpeedSymbol;
    /// let k: SpeedSymbol = "K".parse()?;
    /// assert!((k.speed().as_kmh() - 110.0).abs() < 1e-9);
    /// # Ok::<(), model::tire::speed_symbol::UnknownSpeedSymbol>(())
    /// ```
    fn from_str(text: &str) -> Result<Self, UnknownSpeedSymbol> {
        let wanted = text.trim();
        Self::all()
            .find(|symbol| symbol.letters.eq_ignore_ascii_case(wanted))
            .ok_or_else(|| UnknownSpeedSymbol { text: text.to_owned() })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // Public tables of ISO 4223-1 / UN R54: B 50, G 90, K 110, L 120, H 210 km/h; A2 in ISO 4250-2.
    #[test]
    fn table_symbols() {
        for (letters, kmh) in
            [("A2", 10.0), ("B", 50.0), ("G", 90.0), ("K", 110.0), ("l", 120.0), ("H", 210.0)]
        {
            let symbol: SpeedSymbol = letters.parse().unwrap();
            assert!((symbol.speed().as_kmh() - kmh).abs() < 1e-9, "{letters}");
            assert_eq!(symbol.citation().standing, Standing::Read);
        }
        assert_eq!("A5".parse::<SpeedSymbol>().unwrap().citation().standing, Standing::FromMemory);
    }

    #[test]
    fn other_letters_are_refused() {
        for text in ["I", "O", "", "K1", "110"] {
            assert!(text.parse::<SpeedSymbol>().is_err(), "{text}");
        }
    }

    #[test]
    fn symbols_rise_in_speed() {
        let speeds: Vec<_> = SpeedSymbol::all().map(SpeedSymbol::speed).collect();
        assert!(speeds.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
