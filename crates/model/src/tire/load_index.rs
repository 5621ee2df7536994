//! Load index and service description: the numbers molded on the sidewall.

use quantity::Mass;

use super::speed_symbol::{SpeedSymbol, UnknownSpeedSymbol};
use crate::source::{Citation, Key, Standing};

/// Load indices of tires.
pub const LOAD_INDICES: Key = Key("load-index-table");

/// Load in kilograms for each index from 0.
const TABLE: [f64; 240] = [
    45.0, 46.2, 47.5, 48.7, 50.0, 51.5, 53.0, 54.5, 56.0, 58.0, // 0
    60.0, 61.5, 63.0, 65.0, 67.0, 69.0, 71.0, 73.0, 75.0, 77.5, // 10
    80.0, 82.5, 85.0, 87.5, 90.0, 92.5, 95.0, 97.5, 100.0, 103.0, // 20
    106.0, 109.0, 112.0, 115.0, 118.0, 121.0, 125.0, 128.0, 132.0, 136.0, // 30
    140.0, 145.0, 150.0, 155.0, 160.0, 165.0, 170.0, 175.0, 180.0, 185.0, // 40
    190.0, 195.0, 200.0, 206.0, 212.0, 218.0, 224.0, 230.0, 236.0, 243.0, // 50
    250.0, 257.0, 265.0, 272.0, 280.0, 290.0, 300.0, 307.0, 315.0, 325.0, // 60
    335.0, 345.0, 355.0, 365.0, 375.0, 387.0, 400.0, 412.0, 425.0, 437.0, // 70
    450.0, 462.0, 475.0, 487.0, 500.0, 515.0, 530.0, 545.0, 560.0, 580.0, // 80
    600.0, 615.0, 630.0, 650.0, 670.0, 690.0, 710.0, 730.0, 750.0, 775.0, // 90
    800.0, 825.0, 850.0, 875.0, 900.0, 925.0, 950.0, 975.0, 1000.0, 1030.0, // 100
    1060.0, 1090.0, 1120.0, 1150.0, 1180.0, 1215.0, 1250.0, 1285.0, 1320.0, 1360.0, // 110
    1400.0, 1450.0, 1500.0, 1550.0, 1600.0, 1650.0, 1700.0, 1750.0, 1800.0, 1850.0, // 120
    1900.0, 1950.0, 2000.0, 2060.0, 2120.0, 2180.0, 2240.0, 2300.0, 2360.0, 2430.0, // 130
    2500.0, 2575.0, 2650.0, 2725.0, 2800.0, 2900.0, 3000.0, 3075.0, 3150.0, 3250.0, // 140
    3350.0, 3450.0, 3550.0, 3650.0, 3750.0, 3875.0, 4000.0, 4125.0, 4250.0, 4375.0, // 150
    4500.0, 4625.0, 4750.0, 4875.0, 5000.0, 5150.0, 5300.0, 5450.0, 5600.0, 5800.0, // 160
    6000.0, 6150.0, 6300.0, 6500.0, 6700.0, 6900.0, 7100.0, 7300.0, 7500.0, 7750.0, // 170
    8000.0, 8250.0, 8500.0, 8750.0, 9000.0, 9250.0, 9500.0, 9750.0, 10000.0, 10300.0, // 180
    10600.0, 10900.0, 11200.0, 11500.0, 11800.0, 12150.0, 12500.0, 12850.0, 13200.0,
    13600.0, // 190
    14000.0, 14500.0, 15000.0, 15500.0, 16000.0, 16500.0, 17000.0, 17500.0, 18000.0,
    18500.0, // 200
    19000.0, 19500.0, 20000.0, 20600.0, 21200.0, 21800.0, 22400.0, 23000.0, 23600.0,
    24300.0, // 210
    25000.0, 25750.0, 26500.0, 27250.0, 28000.0, 29000.0, 30000.0, 30750.0, 31500.0,
    32500.0, // 220
    33500.0, 34500.0, 35500.0, 36500.0, 37500.0, 38750.0, 40000.0, 41250.0, 42500.0,
    43750.0, // 230
];

/// Why a text or number is no load index or service description.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LoadIndexError {
    /// Not in the table.
    #[error("load index {index} is not in the table, which goes from 0 to 239")]
    Index {
        /// Number offered.
        index: u32,
    },
    /// Heavier than any index.
    #[error("{load} is outside what load indices 0 to 239 state (0 to 43750 kg)")]
    Load {
        /// Load offered.
        load: Mass,
    },
    /// Not a service description.
    #[error(
        "'{text}' is not a service description; write it as molded, such as 154/150 K or 160 K"
    )]
    Form {
        /// What was written.
        text: String,
    },
    /// A dual index above the single one.
    #[error(
        "in '{text}' the dual index {dual} is above the single index {single}; single comes first"
    )]
    Order {
        /// What was written.
        text: String,
        /// Index before the stroke.
        single: u16,
        /// Index after the stroke.
        dual: u16,
    },
    /// The letters are no speed symbol.
    #[error(transparent)]
    Symbol(#[from] UnknownSpeedSymbol),
}

/// A load index from 0 to 239.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LoadIndex(u8);

impl LoadIndex {
    /// The index with this number.
    ///
    /// # Errors
    /// [`LoadIndexError::Index`] over 239.
    pub fn new(index: u16) -> Result<Self, LoadIndexError> {
        match u8::try_from(index) {
            Ok(small) if usize::from(small) < TABLE.len() => Ok(Self(small)),
            _ => Err(LoadIndexError::Index { index: index.into() }),
        }
    }

    /// The lowest index that states at least this load.
    ///
    /// # Errors
    /// [`LoadIndexError::Load`] for a negative load or one over 43 750 kg.
    pub fn carrying(load: Mass) -> Result<Self, LoadIndexError> {
        // A load made from pounds or tonnes may miss its own row by rounding.
        let kg = load.as_kg() - 1e-6;
        if load < Mass::ZERO {
            return Err(LoadIndexError::Load { load });
        }
        (0..=239u8)
            .find(|&index| TABLE[usize::from(index)] >= kg)
            .map(Self)
            .ok_or(LoadIndexError::Load { load })
    }

    /// The number.
    pub fn number(self) -> u16 {
        self.0.into()
    }

    /// The load it states, on one tire.
    ///
    /// # Source
    /// [`LOAD_INDICES`]; see [`citation`](Self::citation).
    ///
    /// ```
    /// use model::tire::load_index::LoadIndex;
    /// assert!((LoadIndex::new(150)?.load().as_kg() - 3350.0).abs() < 1e-9);
    /// # Ok::<(), model::tire::load_index::LoadIndexError>(())
    /// ```
    pub fn load(self) -> Mass {
        Mass::from_kg(TABLE[usize::from(self.0)])
    }

    /// Read up to 204 and for some indices above; the others are from memory, checked against
    /// the R80 series of preferred numbers.
    pub fn citation(self) -> Citation {
        let standing = match self.0 {
            205..=208 | 210..=215 | 217 | 219..=222 | 224..=228 | 230.. => Standing::FromMemory,
            _ => Standing::Read,
        };
        Citation::of(LOAD_INDICES, standing).at(format!("index {}", self.0))
    }
}

/// Load indices for single and dual fitment with the speed symbol, such as `154/150 K`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ServiceDescription {
    /// Index of a single tire.
    pub single: LoadIndex,
    /// Index of each tire of a dual, if it may be fitted so.
    pub dual: Option<LoadIndex>,
    /// Speed symbol.
    pub symbol: SpeedSymbol,
}

impl std::str::FromStr for ServiceDescription {
    type Err = LoadIndexError;

    /// Reads it as molded.
    ///
    /// ```
    /// use model::tire::load_index::ServiceDescription;
    /// let read: ServiceDescription = "154/150 K".parse()?;
    /// assert_eq!((read.single.number(), read.dual.unwrap().number()), (154, 150));
    /// # Ok::<(), model::tire::load_index::LoadIndexError>(())
    /// ```
    fn from_str(text: &str) -> Result<Self, LoadIndexError> {
        let form = || LoadIndexError::Form { text: text.to_owned() };
        let trimmed = text.trim();
        let letters = trimmed.find(|c: char| c.is_ascii_alphabetic()).ok_or_else(form)?;
        let (numbers, letters) = trimmed.split_at(letters);
        let index = |number: &str| -> Result<LoadIndex, LoadIndexError> {
            let index: u32 = number.trim().parse().map_err(|_| form())?;
            u16::try_from(index)
                .map_err(|_| LoadIndexError::Index { index })
                .and_then(LoadIndex::new)
        };
        let (single, dual) = match numbers.split_once('/') {
            Some((single, dual)) => (index(single)?, Some(index(dual)?)),
            None => (index(numbers)?, None),
        };
        if let Some(dual) = dual
            && dual > single
        {
            return Err(LoadIndexError::Order {
                text: text.to_owned(),
                single: single.number(),
                dual: dual.number(),
            });
        }
        Ok(Self { single, dual, symbol: letters.parse()? })
    }
}

impl std::fmt::Display for ServiceDescription {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}", self.single.number())?;
        if let Some(dual) = self.dual {
            write!(f, "/{}", dual.number())?;
        }
        write!(f, " {}", self.symbol.letters())
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    // Netherlands vehicle regulation (Regeling voertuigen), Bijlage VIII, Annex 4, and tire-maker
    // sheets for the earthmover indices.
    #[test]
    fn table_indices() {
        for (index, kg) in [
            (0, 45.0),
            (100, 800.0),
            (121, 1450.0),
            (122, 1500.0),
            (143, 2725.0),
            (150, 3350.0),
            (156, 4000.0),
            (161, 4625.0),
            (163, 4875.0),
            (173, 6500.0),
            (200, 14000.0),
            (209, 18500.0),
            (229, 32500.0),
        ] {
            let found = LoadIndex::new(index).unwrap();
            assert!((found.load().as_kg() - kg).abs() < 1e-9, "{index}");
            assert_eq!(found.citation().standing, Standing::Read);
        }
        assert_eq!(LoadIndex::new(214).unwrap().citation().standing, Standing::FromMemory);
        assert!(LoadIndex::new(240).is_err());
        assert!(LoadIndex::new(300).is_err());
    }

    // ISO 3, series R80: 45 · 10^(LI/80) kg, from which the rounded table never strays over 1.95 %.
    #[test]
    fn table_follows_the_r80_series() {
        for (index, kg) in TABLE.iter().enumerate() {
            let series = 45.0 * 10f64.powf(index as f64 / 80.0);
            assert!((kg / series - 1.0).abs() < 0.0195, "{index}");
        }
    }

    #[test]
    fn descriptions_as_molded() {
        for text in ["154/150 K", "154/150K", " 154 / 150 k "] {
            let read: ServiceDescription = text.parse().unwrap();
            assert_eq!(read.to_string(), "154/150 K", "{text}");
        }
        let single: ServiceDescription = "175 A2".parse().unwrap();
        assert_eq!((single.dual, single.to_string()), (None, "175 A2".to_owned()));
    }

    #[test]
    fn what_is_wrong_is_named() {
        let read = |text: &str| text.parse::<ServiceDescription>().unwrap_err();
        assert!(matches!(read("154/150"), LoadIndexError::Form { .. }));
        assert!(matches!(read("K"), LoadIndexError::Form { .. }));
        assert!(matches!(read("154/ K"), LoadIndexError::Form { .. }));
        assert!(matches!(read("150/154 K"), LoadIndexError::Order { single: 150, dual: 154, .. }));
        assert!(matches!(read("350/154 K"), LoadIndexError::Index { index: 350 }));
        assert!(matches!(read("154/150 O"), LoadIndexError::Symbol(_)));
    }

    proptest! {
        #[test]
        fn index_and_load_turn_round(index in 0..240u16) {
            let index = LoadIndex::new(index).unwrap();
            prop_assert_eq!(LoadIndex::carrying(index.load()).unwrap(), index);
        }

        #[test]
        fn the_index_found_carries_the_load(kg in 0.0..43750.0f64) {
            let found = LoadIndex::carrying(Mass::from_kg(kg)).unwrap();
            prop_assert!(found.load().as_kg() >= kg - 1e-6);
        }
    }
}
