//! Reading the maker's load-inflation-speed document for a load and a speed.

use quantity::{ColdPressure, Length, Mass, Speed};

use super::{Fitment, MakerRow, MakerTable};

/// What the maker's rows ask for at a load and a speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MakerPressure {
    /// Cold inflation pressure.
    pub pressure: ColdPressure,
    /// Index of the row that carries the load.
    pub row: usize,
    /// Index of the lighter row when the pressure lies between two rows.
    pub lighter_row: Option<usize>,
    /// Highest speed the rows cover.
    pub speed: Speed,
    /// Longest distance at a time, where the maker limits it.
    pub hold_distance: Option<Length>,
    /// Whether the load is under the lightest row, so that its pressure stands unreduced.
    pub under_lightest_row: bool,
}

/// Why the maker's table gives no answer.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum MakerTableError {
    /// No row for singles, or none for duals.
    #[error(
        "document '{document}' has no row for {fitment:?} tires; add the maker's rows for them"
    )]
    NoRows {
        /// Document of the table.
        document: String,
        /// Fitment asked for.
        fitment: Fitment,
    },
    /// No row covers the speed.
    #[error(
        "document '{document}' covers {fitment:?} tires up to {highest}, not {speed}; lower the speed cap"
    )]
    TooFast {
        /// Document of the table.
        document: String,
        /// Fitment asked for.
        fitment: Fitment,
        /// Speed asked for.
        speed: Speed,
        /// Highest speed of its rows.
        highest: Speed,
    },
    /// No row that covers the speed carries the load.
    #[error(
        "document '{document}' carries at most {highest} on a {fitment:?} tire at {speed}, not {load}; \
         take load off, lower the speed cap, or ask the maker"
    )]
    TooHeavy {
        /// Document of the table.
        document: String,
        /// Fitment asked for.
        fitment: Fitment,
        /// Speed asked for.
        speed: Speed,
        /// Load asked for.
        load: Mass,
        /// Highest load of the rows that cover the speed.
        highest: Mass,
    },
    /// Two rows for the same case with different pressures.
    #[error(
        "rows {first} and {second} of document '{document}' give two pressures for the same fitment, \
         speed, load and hold; keep one"
    )]
    Contradiction {
        /// Document of the table.
        document: String,
        /// First row, counted from one.
        first: usize,
        /// Second row, counted from one.
        second: usize,
    },
    /// A load below zero.
    #[error("a tire cannot carry {load}; give a load of zero or more")]
    NegativeLoad {
        /// Load asked for.
        load: Mass,
    },
}

/// The lowest pressure the maker's rows allow for a load and a speed.
///
/// Rows for more speed than asked count too, since low-speed rows with an added pressure
/// may ask for more than faster ones. Between two rows of the same fitment, speed and hold
/// the pressure is linear in load; under the lightest row it is that row's.
///
/// # Validity
/// Never outside the rows. Whether they are approved is [`MakerTable::approved`].
///
/// # Errors
/// [`MakerTableError`]: no row for the fitment, the speed or the load, or rows that contradict.
///
/// # Source
/// The document the table names.
///
/// ```
/// use model::tire::{Fitment, MakerRow, MakerTable, Recommended};
/// use model::tire::maker_table::maker_pressure;
/// use quantity::{ColdPressure, Mass, Speed};
/// let row = |kg, kpa| MakerRow {
///     fitment: Fitment::Dual,
///     load: Mass::from_kg(kg),
///     speed: Speed::from_kmh(40.0),
///     pressure: ColdPressure::from_kpa(kpa),
///     hold_distance: None,
/// };
/// let table = MakerTable {
///     document: "example".into(),
///     approved: true,
///     lapsed: None,
///     recommended: Recommended::Row,
///     rows: vec![row(2000.0, 350.0), row(2400.0, 430.0)],
/// };
/// let found = maker_pressure(&table, Fitment::Dual, Mass::from_kg(2200.0), Speed::from_kmh(35.0))?;
/// assert!((found.pressure.as_kpa() - 390.0).abs() < 1e-9);
/// # Ok::<(), model::tire::maker_table::MakerTableError>(())
/// ```
pub fn maker_pressure(
    table: &MakerTable,
    fitment: Fitment,
    load: Mass,
    speed: Speed,
) -> Result<MakerPressure, MakerTableError> {
    // maker_pressures returns at least one or an error.
    Ok(maker_pressures(table, fitment, load, speed)?[0])
}

/// Every pressure the maker's rows allow for a load and a speed, lowest first, at least one.
///
/// A longer hold may cost more pressure: take the first whose `hold_distance` is long enough.
///
/// # Errors
/// As [`maker_pressure`].
pub fn maker_pressures(
    table: &MakerTable,
    fitment: Fitment,
    load: Mass,
    speed: Speed,
) -> Result<Vec<MakerPressure>, MakerTableError> {
    if load < Mass::ZERO {
        return Err(MakerTableError::NegativeLoad { load });
    }
    refuse_contradictions(table)?;
    let document = || table.document.clone();
    let fitted = || table.rows.iter().enumerate().filter(move |(_, row)| row.fitment == fitment);
    let highest = fitted()
        .map(|(_, row)| row.speed)
        .reduce(Speed::max)
        .ok_or_else(|| MakerTableError::NoRows { document: document(), fitment })?;
    if speed > highest {
        return Err(MakerTableError::TooFast { document: document(), fitment, speed, highest });
    }
    let covering: Vec<_> = fitted().filter(|(_, row)| row.speed >= speed).collect();
    let mut found: Vec<_> = covering
        .iter()
        .filter(|(_, row)| row.load >= load)
        .map(|&(index, row)| carried_by(index, row, &covering, load))
        .collect();
    if found.is_empty() {
        let highest = covering.iter().fold(Mass::ZERO, |most, (_, row)| most.max(row.load));
        return Err(MakerTableError::TooHeavy {
            document: document(),
            fitment,
            speed,
            load,
            highest,
        });
    }
    found.sort_by(|a, b| a.pressure.total_cmp(&b.pressure));
    Ok(found)
}

/// The pressure a row asks for, brought down between it and the next lighter row like it.
fn carried_by(
    index: usize,
    row: &MakerRow,
    covering: &[(usize, &MakerRow)],
    load: Mass,
) -> MakerPressure {
    let lighter = covering
        .iter()
        .filter(|(_, other)| alike(row, other) && other.load < row.load)
        .max_by(|(_, a), (_, b)| a.load.total_cmp(&b.load));
    let mut found = MakerPressure {
        pressure: row.pressure,
        row: index,
        lighter_row: None,
        speed: row.speed,
        hold_distance: row.hold_distance,
        under_lightest_row: lighter.is_none() && load < row.load,
    };
    if let Some(&(lighter_index, lighter)) = lighter
        && lighter.load < load
        && load < row.load
    {
        let share = (load - lighter.load) / (row.load - lighter.load);
        found.pressure = lighter.pressure + (row.pressure - lighter.pressure) * share;
        found.lighter_row = Some(lighter_index);
    }
    found
}

fn alike(a: &MakerRow, b: &MakerRow) -> bool {
    a.fitment == b.fitment && a.speed == b.speed && a.hold_distance == b.hold_distance
}

fn refuse_contradictions(table: &MakerTable) -> Result<(), MakerTableError> {
    for (first, a) in table.rows.iter().enumerate() {
        for (second, b) in table.rows.iter().enumerate().skip(first + 1) {
            if alike(a, b) && a.load == b.load && a.pressure != b.pressure {
                return Err(MakerTableError::Contradiction {
                    document: table.document.clone(),
                    first: first + 1,
                    second: second + 1,
                });
            }
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tire::Recommended;

    fn row(lb: f64, mph: f64, psi: f64) -> MakerRow {
        MakerRow {
            fitment: Fitment::Single,
            load: Mass::from_lb(lb),
            speed: Speed::from_mph(mph),
            pressure: ColdPressure::from_psi(psi),
            hold_distance: None,
        }
    }

    fn table(rows: Vec<MakerRow>) -> MakerTable {
        MakerTable {
            document: "data sheet 7".into(),
            approved: true,
            lapsed: None,
            recommended: Recommended::Row,
            rows,
        }
    }

    // A published low-speed matrix of a 12-16.5 loader tire: pressure and speed against load.
    fn loader() -> MakerTable {
        table(vec![
            row(6119.0, 6.0, 69.0),
            row(6306.0, 6.0, 73.0),
            row(6527.0, 6.0, 76.0),
            row(6670.0, 6.0, 80.0),
            row(4487.0, 19.0, 69.0),
            row(4631.0, 19.0, 73.0),
            row(4774.0, 19.0, 76.0),
            row(4895.0, 19.0, 80.0),
        ])
    }

    fn ask(table: &MakerTable, lb: f64, mph: f64) -> Result<MakerPressure, MakerTableError> {
        maker_pressure(table, Fitment::Single, Mass::from_lb(lb), Speed::from_mph(mph))
    }

    #[test]
    fn table_rows_of_a_loader_tire_are_given_back() {
        let found = ask(&loader(), 4774.0, 19.0).unwrap();
        assert!((found.pressure.as_psi() - 76.0).abs() < 1e-9);
        assert_eq!((found.row, found.lighter_row), (6, None));
        let between = ask(&loader(), 4559.0, 15.0).unwrap();
        assert!((between.pressure.as_psi() - 71.0).abs() < 1e-9);
        assert_eq!((between.row, between.lighter_row), (5, Some(4)));
    }

    #[test]
    fn nothing_is_extrapolated() {
        let light = ask(&loader(), 1000.0, 19.0).unwrap();
        assert!((light.pressure.as_psi() - 69.0).abs() < 1e-9);
        assert!(light.under_lightest_row);
        assert!(matches!(ask(&loader(), 5000.0, 10.0), Err(MakerTableError::TooHeavy { .. })));
        assert!(matches!(ask(&loader(), 4000.0, 20.0), Err(MakerTableError::TooFast { .. })));
        let dual =
            maker_pressure(&loader(), Fitment::Dual, Mass::from_kg(1.0), Speed::from_mph(1.0));
        assert!(matches!(dual, Err(MakerTableError::NoRows { .. })));
    }

    #[test]
    fn a_faster_row_with_less_pressure_wins() {
        let rows = table(vec![row(6000.0, 20.0, 77.0), row(6000.0, 40.0, 75.0)]);
        let found = ask(&rows, 6000.0, 15.0).unwrap();
        assert_eq!(found.row, 1);
        assert!((found.pressure.as_psi() - 75.0).abs() < 1e-9);
    }

    #[test]
    fn rows_with_different_holds_are_not_mixed() {
        let mut short = row(6000.0, 20.0, 45.0);
        short.hold_distance = Some(Length::from_km(2.0));
        let rows = table(vec![short, row(5000.0, 20.0, 50.0), row(7000.0, 20.0, 70.0)]);
        let all =
            maker_pressures(&rows, Fitment::Single, Mass::from_lb(6000.0), Speed::from_mph(20.0))
                .unwrap();
        assert_eq!(all[0].hold_distance, Some(Length::from_km(2.0)));
        assert!((all[0].pressure.as_psi() - 45.0).abs() < 1e-9);
        assert!((all[1].pressure.as_psi() - 60.0).abs() < 1e-9);
        assert_eq!(all[1].hold_distance, None);
    }

    #[test]
    fn two_pressures_for_one_case_are_refused() {
        let rows = table(vec![row(6000.0, 20.0, 45.0), row(6000.0, 20.0, 50.0)]);
        assert!(matches!(
            ask(&rows, 6000.0, 20.0),
            Err(MakerTableError::Contradiction { first: 1, second: 2, .. })
        ));
    }

    proptest! {
        #[test]
        fn more_load_never_needs_less_pressure(a in 0.0..6670.0f64, b in 0.0..6670.0f64) {
            let at = |lb| ask(&loader(), lb, 6.0).unwrap().pressure;
            prop_assert!(at(a.min(b)) <= at(a.max(b)));
        }
    }
}
