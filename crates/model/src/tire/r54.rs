//! UN Regulation 54: change of load capacity with speed, and that change used backwards.
//!
//! The regulation grants more load at less speed and says nothing about pressure. Taking the
//! same load at less pressure instead is our inference, so its result has a type of its own.

use quantity::{ColdPressure, Mass, Speed};

use super::RatedPoint;
use super::load_inflation::{Exponent, LoadInflationError, carried_load, required_pressure};
use super::speed_symbol::{SpeedSymbol, UnknownSpeedSymbol};
use crate::source::{Citation, Key, Standing};

/// The regulation's table of load capacity against speed.
pub const UN_R54: Key = Key("un-r54-annex-8");

/// Under this speed the table must not be turned round without the tire maker's word: the US
/// table asks for added pressure there.
pub const MAKER_NEEDED_UNDER: Speed = Speed::from_kmh(50.0);

/// Columns: F, G, J, K, then L and M from index 122, then L, M, N, P up to index 121.
const COLUMNS: usize = 10;
/// No value: the tire must not be used so fast.
const NO: f64 = f64::NAN;
const STEP_KMH: f64 = 5.0;

/// Percent of load, one row for each 5 km/h from 0.
#[rustfmt::skip]
const TABLE: [[f64; COLUMNS]; 33] = [
    [150.0, 150.0, 150.0, 150.0, 150.0, 150.0, 110.0, 110.0, 110.0, 110.0], // 0
    [110.0, 110.0, 110.0, 110.0, 110.0, 110.0, 90.0, 90.0, 90.0, 90.0],
    [80.0, 80.0, 80.0, 80.0, 80.0, 80.0, 75.0, 75.0, 75.0, 75.0], // 10
    [65.0, 65.0, 65.0, 65.0, 65.0, 65.0, 60.0, 60.0, 60.0, 60.0],
    [50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0], // 20
    [35.0, 35.0, 35.0, 35.0, 35.0, 35.0, 42.0, 42.0, 42.0, 42.0],
    [25.0, 25.0, 25.0, 25.0, 25.0, 25.0, 35.0, 35.0, 35.0, 35.0], // 30
    [19.0, 19.0, 19.0, 19.0, 19.0, 19.0, 29.0, 29.0, 29.0, 29.0],
    [15.0, 15.0, 15.0, 15.0, 15.0, 15.0, 25.0, 25.0, 25.0, 25.0], // 40
    [13.0, 13.0, 13.0, 13.0, 13.0, 13.0, 22.0, 22.0, 22.0, 22.0],
    [12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 20.0, 20.0, 20.0, 20.0], // 50
    [11.0, 11.0, 11.0, 11.0, 11.0, 11.0, 17.5, 17.5, 17.5, 17.5],
    [10.0, 10.0, 10.0, 10.0, 10.0, 10.0, 15.0, 15.0, 15.0, 15.0], // 60
    [7.5, 8.5, 8.5, 8.5, 8.5, 8.5, 13.5, 13.5, 13.5, 13.5],
    [5.0, 7.0, 7.0, 7.0, 7.0, 7.0, 12.5, 12.5, 12.5, 12.5], // 70
    [2.5, 5.5, 5.5, 5.5, 5.5, 5.5, 11.0, 11.0, 11.0, 11.0],
    [0.0, 4.0, 4.0, 4.0, 4.0, 4.0, 10.0, 10.0, 10.0, 10.0], // 80
    [-3.0, 2.0, 3.0, 3.0, 3.0, 3.0, 8.5, 8.5, 8.5, 8.5],
    [-6.0, 0.0, 2.0, 2.0, 2.0, 2.0, 7.5, 7.5, 7.5, 7.5], // 90
    [-10.0, -2.5, 1.0, 1.0, 1.0, 1.0, 6.5, 6.5, 6.5, 6.5],
    [-15.0, -5.0, 0.0, 0.0, 0.0, 0.0, 5.0, 5.0, 5.0, 5.0], // 100
    [NO, -8.0, -2.0, 0.0, 0.0, 0.0, 3.75, 3.75, 3.75, 3.75],
    [NO, -13.0, -4.0, 0.0, 0.0, 0.0, 2.5, 2.5, 2.5, 2.5], // 110
    [NO, NO, -7.0, -3.0, 0.0, 0.0, 1.25, 1.25, 1.25, 1.25],
    [NO, NO, -12.0, -7.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0], // 120
    [NO, NO, NO, NO, NO, 0.0, -2.5, 0.0, 0.0, 0.0],
    [NO, NO, NO, NO, NO, 0.0, -5.0, 0.0, 0.0, 0.0], // 130
    [NO, NO, NO, NO, NO, NO, -7.5, -2.5, 0.0, 0.0],
    [NO, NO, NO, NO, NO, NO, -10.0, -5.0, 0.0, 0.0], // 140
    [NO, NO, NO, NO, NO, NO, NO, -7.5, -2.5, 0.0],
    [NO, NO, NO, NO, NO, NO, NO, -10.0, -5.0, 0.0], // 150
    [NO, NO, NO, NO, NO, NO, NO, NO, -7.5, -2.5],
    [NO, NO, NO, NO, NO, NO, NO, NO, -10.0, -5.0], // 160
];

/// Why the table gives no allowance.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum R54Error {
    /// The letters are no speed symbol.
    #[error(transparent)]
    Unknown(#[from] UnknownSpeedSymbol),
    /// A symbol without a column.
    #[error(
        "the table has no column for symbol {symbol} with load index {load_index}: A1 to E are outside \
         the regulation, and N and above stand only up to index 121; use the maker's document"
    )]
    NoColumn {
        /// Speed symbol.
        symbol: &'static str,
        /// Load index of single fitment.
        load_index: u16,
    },
    /// Faster than the column goes.
    #[error(
        "a tire with symbol {symbol} and load index {load_index} must not be used at {speed}; lower the speed cap"
    )]
    TooFast {
        /// Speed symbol.
        symbol: &'static str,
        /// Load index of single fitment.
        load_index: u16,
        /// Speed asked for.
        speed: Speed,
    },
    /// A speed below zero.
    #[error("a speed of {speed} is below zero")]
    NegativeSpeed {
        /// Speed asked for.
        speed: Speed,
    },
    /// The power law refused.
    #[error(transparent)]
    Law(#[from] LoadInflationError),
}

/// Change of load capacity at a speed.
#[derive(Debug, Clone, PartialEq)]
pub struct R54Allowance {
    /// Percent of the load that belongs to the load index.
    pub load_pct: f64,
    /// Speed of the row used: the table's first at or above the speed asked for.
    pub row_speed: Speed,
    /// The table with its row.
    pub citation: Citation,
}

/// The change of load capacity for a tire at a speed, by the row at or above it.
///
/// # Validity
/// Commercial vehicle tires with symbols F and above; no interpolation. `load_index` is the
/// single-fitment index, which picks the column; the load changed is the fitment's own.
///
/// # Errors
/// [`R54Error`] for symbols without a column and speeds the column leaves blank.
///
/// # Source
/// [`UN_R54`], read in a national law that prints it.
///
/// ```
/// use model::tire::r54::r54_allowance;
/// use quantity::Speed;
/// assert!((r54_allowance(156, "L", Speed::from_kmh(40.0))?.load_pct - 15.0).abs() < 1e-12);
/// # Ok::<(), model::tire::r54::R54Error>(())
/// ```
pub fn r54_allowance(
    load_index: u16,
    symbol: &str,
    speed: Speed,
) -> Result<R54Allowance, R54Error> {
    let symbol: SpeedSymbol = symbol.parse()?;
    let letters = symbol.letters();
    if speed < Speed::ZERO {
        return Err(R54Error::NegativeSpeed { speed });
    }
    let column = column(letters, symbol.speed(), load_index)
        .ok_or(R54Error::NoColumn { symbol: letters, load_index })?;
    let rows = TABLE.iter().enumerate().map(|(row, cells)| (row as f64 * STEP_KMH, cells[column]));
    // A cap typed in mph and turned into km/h may pass its row by rounding.
    let found = rows.into_iter().find(|(kmh, _)| kmh + 1e-9 >= speed.as_kmh());
    match found {
        Some((kmh, load_pct)) if load_pct.is_finite() => Ok(R54Allowance {
            load_pct,
            row_speed: Speed::from_kmh(kmh),
            citation: Citation::of(UN_R54, Standing::Read)
                .at(format!("{kmh} km/h, symbol {letters}, index {load_index}")),
        }),
        _ => Err(R54Error::TooFast { symbol: letters, load_index, speed }),
    }
}

fn column(letters: &str, rated: Speed, load_index: u16) -> Option<usize> {
    let heavy = load_index >= 122;
    match (letters, heavy) {
        ("F", _) => Some(0),
        ("G", _) => Some(1),
        ("J", _) => Some(2),
        ("K", _) => Some(3),
        ("L", true) => Some(4),
        ("M", true) => Some(5),
        ("L", false) => Some(6),
        ("M", false) => Some(7),
        ("N", false) => Some(8),
        (_, false) if rated >= Speed::from_kmh(150.0) => Some(9),
        _ => None,
    }
}

/// A pressure inferred by using the load-only allowance backwards: same load, less pressure.
///
/// No standard grants it. A plan may show it as needing approval, never as standard.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadOnlyBackwards {
    /// Cold inflation pressure.
    pub pressure: ColdPressure,
    /// The load allowance it rests on.
    pub allowance: R54Allowance,
    /// Whether the cap is under [`MAKER_NEEDED_UNDER`].
    pub maker_needed: bool,
    /// Whether the power law was used under the pressure where published truck tables begin.
    pub under_usual_tables: bool,
}

/// The pressure for a load under a speed cap if the regulation's load allowance is used
/// backwards: `P_r (L / (L_r (1 + b)))^(1/n)`.
///
/// # Validity
/// As [`r54_allowance`]; see [`LoadOnlyBackwards`].
///
/// # Errors
/// [`R54Error`], also for more load than the allowance grants.
///
/// # Source
/// [`UN_R54`] for b, the exponent's citation for n.
pub fn load_only_backwards(
    rated: RatedPoint,
    load: Mass,
    exponent: &Exponent,
    load_index: u16,
    symbol: &str,
    cap: Speed,
) -> Result<LoadOnlyBackwards, R54Error> {
    let allowance = r54_allowance(load_index, symbol, cap)?;
    let b = allowance.load_pct / 100.0;
    let required = required_pressure(rated, load / (1.0 + b), exponent)?;
    Ok(LoadOnlyBackwards {
        pressure: required.pressure,
        allowance,
        maker_needed: cap < MAKER_NEEDED_UNDER,
        under_usual_tables: required.under_usual_tables,
    })
}

/// A load that a pressure carries with the regulation's allowance.
#[derive(Debug, Clone, PartialEq)]
pub struct R54Load {
    /// Load on one tire.
    pub load: Mass,
    /// The load allowance in it.
    pub allowance: R54Allowance,
    /// Whether the power law was used under the pressure where published truck tables begin.
    pub under_usual_tables: bool,
}

/// The load that a cold pressure carries under a speed cap: `L_r (P/P_r)^n (1 + b)`.
///
/// # Validity
/// As [`r54_allowance`]. The regulation states b at the rated pressure; at less it is our reading.
///
/// # Errors
/// [`R54Error`], also for a pressure of zero or less.
///
/// # Source
/// [`UN_R54`] for b, the exponent's citation for n.
pub fn r54_load(
    rated: RatedPoint,
    pressure: ColdPressure,
    exponent: &Exponent,
    load_index: u16,
    symbol: &str,
    cap: Speed,
) -> Result<R54Load, R54Error> {
    let allowance = r54_allowance(load_index, symbol, cap)?;
    let carried = carried_load(rated, pressure, exponent)?;
    Ok(R54Load {
        load: carried.load * (1.0 + allowance.load_pct / 100.0),
        allowance,
        under_usual_tables: carried.under_usual_tables,
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tire::{Construction, StandardsBody};

    fn pct(load_index: u16, symbol: &str, kmh: f64) -> Result<f64, R54Error> {
        r54_allowance(load_index, symbol, Speed::from_kmh(kmh)).map(|found| found.load_pct)
    }

    // Netherlands vehicle regulation (Regeling voertuigen), Bijlage VIII, Annex 5 to article 50.
    #[test]
    fn table_cells() {
        for (index, symbol, kmh, expected) in [
            (150, "K", 40.0, 15.0),
            (150, "F", 90.0, -6.0),
            (118, "L", 100.0, 5.0),
            (156, "L", 40.0, 15.0),
            (150, "G", 0.0, 150.0),
            (150, "J", 120.0, -12.0),
            (121, "P", 160.0, -5.0),
            (121, "T", 155.0, -2.5),
            (121, "N", 160.0, -10.0),
            (122, "M", 130.0, 0.0),
        ] {
            assert!((pct(index, symbol, kmh).unwrap() - expected).abs() < 1e-12, "{symbol} {kmh}");
        }
    }

    // Each column passes through nothing at the symbol's own speed.
    #[test]
    fn table_is_zero_at_the_rated_speed() {
        for symbol in ["F", "G", "J", "K", "L", "M"] {
            let rated: SpeedSymbol = symbol.parse().unwrap();
            let at = r54_allowance(150, symbol, rated.speed()).unwrap();
            assert!(at.load_pct.abs() < 1e-12, "{symbol}");
        }
    }

    #[test]
    fn the_row_at_or_above_is_taken() {
        assert!((pct(150, "K", 40.1).unwrap() - 13.0).abs() < 1e-12);
        let at = r54_allowance(150, "K", Speed::from_mph(25.0)).unwrap();
        assert!((at.row_speed.as_kmh() - 45.0).abs() < 1e-9);
    }

    #[test]
    fn outside_the_table_is_refused() {
        assert!(matches!(pct(150, "E", 40.0), Err(R54Error::NoColumn { .. })));
        assert!(matches!(pct(150, "A8", 40.0), Err(R54Error::NoColumn { .. })));
        assert!(matches!(pct(150, "N", 40.0), Err(R54Error::NoColumn { .. })));
        assert!(matches!(pct(150, "F", 101.0), Err(R54Error::TooFast { .. })));
        assert!(matches!(pct(121, "P", 161.0), Err(R54Error::TooFast { .. })));
        assert!(matches!(pct(150, "O", 40.0), Err(R54Error::Unknown(_))));
        assert!(matches!(pct(150, "K", -1.0), Err(R54Error::NegativeSpeed { .. })));
    }

    // 315/80R22.5 dual 3350 kg at 850 kPa (recalled), 2500 kg, worked by hand for n 0.8 and 0.7.
    #[test]
    fn worked_backwards_pressures() {
        let rated =
            RatedPoint { load: Mass::from_kg(3350.0), pressure: ColdPressure::from_kpa(850.0) };
        for (kmh, etrto, tra) in [
            (80.0, 561.0, 529.0),
            (60.0, 523.0, 488.0),
            (40.0, 495.0, 458.0),
            (30.0, 446.0, 407.0),
            (20.0, 355.0, 314.0),
        ] {
            for (body, expected) in [(StandardsBody::Etrto, etrto), (StandardsBody::Tra, tra)] {
                let n = Exponent::of(body, Construction::Radial);
                let load = Mass::from_kg(2500.0);
                let cap = Speed::from_kmh(kmh);
                let found = load_only_backwards(rated, load, &n, 156, "L", cap).unwrap();
                assert!((found.pressure.as_kpa() - expected).abs() < 1.0, "{kmh}");
                assert_eq!(found.maker_needed, kmh < 50.0);
                let back = r54_load(rated, found.pressure, &n, 156, "L", cap).unwrap();
                assert!((back.load / load - 1.0).abs() < 1e-12, "{kmh}");
            }
        }
    }

    proptest! {
        #[test]
        fn more_speed_never_grants_more(a in 0.0..120.0f64, b in 0.0..120.0f64, index in 100..180u16) {
            let (slow, fast) = (a.min(b), a.max(b));
            prop_assert!(pct(index, "L", slow).unwrap() >= pct(index, "L", fast).unwrap());
        }
    }
}
