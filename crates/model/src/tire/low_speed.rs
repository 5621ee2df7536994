//! The TRA allowance for truck tires at restricted speed, and the pressure it leads to.
//!
//! The table grants load for less speed, and at 30 mph and less asks for added pressure with
//! it. Read for the least pressure at a given load it is therefore not monotonic in speed:
//! a cap of 25 mph is often best served by the row for 31 to 40 mph, which covers it too.

use quantity::{ColdPressure, Mass, PressureDifference, Speed};

use super::load_inflation::{Exponent, LoadInflationError, carried_load, required_pressure};
use super::{Fitment, RatedPoint, SizeClass, Tire};
use crate::source::{Citation, Key, Standing};

/// The table of service load and added pressure at restricted speed.
pub const TRA_LOW_SPEED: Key = Key("tra-low-speed");

/// What one row grants one class of sizes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Allowance {
    /// Change of the table load, percent.
    pub load_pct: f64,
    /// Added to the table pressure.
    pub pressure_addition: PressureDifference,
}

/// One row of the table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedBand {
    /// The band as the table writes it, mph.
    pub band: &'static str,
    /// Highest speed of the band; `None` for creeping, which a distance limits and no speed.
    pub top: Option<Speed>,
    /// Inch sizes.
    pub conventional: Allowance,
    /// Metric and wide-base sizes.
    pub metric_or_wide: Allowance,
}

impl SpeedBand {
    /// What the row grants a class of sizes.
    pub fn allowance(&self, class: SizeClass) -> Allowance {
        match class {
            SizeClass::Conventional => self.conventional,
            SizeClass::MetricOrWide => self.metric_or_wide,
        }
    }

    /// Whether the row may be used under this speed cap.
    pub fn covers(&self, cap: Speed) -> bool {
        self.top.is_some_and(|top| top >= cap)
    }
}

const fn grants(load_pct: f64, psi: f64) -> Allowance {
    Allowance { load_pct, pressure_addition: PressureDifference::from_psi(psi) }
}

const fn up_to(
    band: &'static str,
    mph: f64,
    conventional: Allowance,
    metric_or_wide: Allowance,
) -> SpeedBand {
    SpeedBand { band, top: Some(Speed::from_mph(mph)), conventional, metric_or_wide }
}

/// The rows, fastest first; the first two are for tires rated at 65 mph run faster.
///
/// # Source
/// [`TRA_LOW_SPEED`], from memory; +16 % at 31 to 40 mph and +9 % at 41 to 50 mph are
/// supported by a trade article and a federal rule.
pub const TRA_BANDS: [SpeedBand; 12] = [
    up_to("71-75", 75.0, grants(-12.0, 5.0), grants(-12.0, 5.0)),
    up_to("66-70", 70.0, grants(-4.0, 5.0), grants(-4.0, 5.0)),
    up_to("51-65", 65.0, grants(0.0, 0.0), grants(0.0, 0.0)),
    up_to("41-50", 50.0, grants(9.0, 0.0), grants(7.0, 0.0)),
    up_to("31-40", 40.0, grants(16.0, 0.0), grants(9.0, 0.0)),
    up_to("21-30", 30.0, grants(24.0, 10.0), grants(12.0, 10.0)),
    up_to("11-20", 20.0, grants(32.0, 15.0), grants(17.0, 15.0)),
    up_to("6-10", 10.0, grants(60.0, 30.0), grants(25.0, 20.0)),
    up_to("2.6-5", 5.0, grants(85.0, 30.0), grants(45.0, 20.0)),
    up_to("creep-2.5", 2.5, grants(115.0, 30.0), grants(55.0, 20.0)),
    SpeedBand {
        band: "creep (at most 200 ft in 30 min)",
        top: None,
        conventional: grants(140.0, 40.0),
        metric_or_wide: grants(75.0, 30.0),
    },
    up_to("stationary", 0.0, grants(185.0, 40.0), grants(105.0, 30.0)),
];

/// Why the table gives no pressure.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LowSpeedError {
    /// Faster than the table goes.
    #[error("a speed cap of {cap} is above the table's highest, 75 mph (120.7 km/h)")]
    AboveTable {
        /// Speed cap asked for.
        cap: Speed,
    },
    /// A speed below zero.
    #[error("a speed cap of {cap} is below zero")]
    NegativeSpeed {
        /// Speed cap asked for.
        cap: Speed,
    },
    /// Faster than the tire is rated for.
    #[error("a speed cap of {cap} is above the tire's rated {rated}; lower the cap")]
    AboveRatedSpeed {
        /// Speed cap asked for.
        cap: Speed,
        /// Speed of the tire's symbol.
        rated: Speed,
    },
    /// More load than any row grants.
    #[error(
        "{load} on one tire is more than {highest}, the most the table grants under a cap of {cap}"
    )]
    TooHeavy {
        /// Load asked for.
        load: Mass,
        /// Most that the rows covering the cap carry.
        highest: Mass,
        /// Speed cap asked for.
        cap: Speed,
    },
    /// The tire has no rating for this fitment.
    #[error("tire '{tire}' has no rated point for {fitment:?} fitment")]
    NotRated {
        /// Name of the tire.
        tire: String,
        /// Fitment asked for.
        fitment: Fitment,
    },
    /// The power law refused.
    #[error(transparent)]
    Law(#[from] LoadInflationError),
}

/// The least pressure the table leads to under a speed cap.
#[derive(Debug, Clone, PartialEq)]
pub struct RestrictedSpeed {
    /// Cold inflation pressure, the added pressure included.
    pub pressure: ColdPressure,
    /// The row that gives it; it may be one for more speed than the cap.
    pub row: &'static SpeedBand,
    /// Change of the table load by that row, percent.
    pub load_allowance_pct: f64,
    /// Pressure the row adds.
    pub pressure_addition: PressureDifference,
    /// Whether the power law was used under the pressure where published truck tables begin.
    pub under_usual_tables: bool,
    /// The table where its row changes anything, else the source of the exponent.
    pub citation: Citation,
}

/// The rows that may be used under a speed cap, fastest first, with what they grant a class.
///
/// Creeping is never among them: no speed cap bounds it.
pub fn tra_allowance(
    class: SizeClass,
    cap: Speed,
) -> impl Iterator<Item = (&'static SpeedBand, Allowance)> {
    TRA_BANDS.iter().filter(move |row| row.covers(cap)).map(move |row| (row, row.allowance(class)))
}

/// The least cold pressure for a load under a speed cap: over every row that covers the cap,
/// `P_r (L / (L_r (1 + b)))^(1/n) + dP`, the lowest.
///
/// # Validity
/// 0 to 75 mph. Above 65 mph the rows are for a tire rated at 65 mph; for one rated faster
/// use [`restricted_speed_pressure_for`]. The table's numbers are from memory, so a pressure
/// that leans on them needs the maker's approval.
///
/// # Errors
/// [`LowSpeedError`]: a cap outside the table, or more load than it grants.
///
/// # Source
/// [`TRA_LOW_SPEED`].
///
/// ```
/// use model::tire::{Construction, RatedPoint, SizeClass, StandardsBody};
/// use model::tire::load_inflation::Exponent;
/// use model::tire::low_speed::restricted_speed_pressure;
/// use quantity::{ColdPressure, Mass, Speed};
/// let dual = RatedPoint { load: Mass::from_lb(6005.0), pressure: ColdPressure::from_psi(105.0) };
/// let n = Exponent::of(StandardsBody::Tra, Construction::Radial);
/// let found = restricted_speed_pressure(
///     dual, Mass::from_lb(5500.0), &n, SizeClass::Conventional, Speed::from_mph(35.0))?;
/// assert_eq!(found.row.band, "31-40");
/// assert!((found.pressure.as_psi() - 74.9).abs() < 0.1);
/// # Ok::<(), model::tire::low_speed::LowSpeedError>(())
/// ```
pub fn restricted_speed_pressure(
    rated: RatedPoint,
    load: Mass,
    exponent: &Exponent,
    class: SizeClass,
    cap: Speed,
) -> Result<RestrictedSpeed, LowSpeedError> {
    if cap < Speed::ZERO {
        return Err(LowSpeedError::NegativeSpeed { cap });
    }
    let mut lowest: Option<RestrictedSpeed> = None;
    let mut highest_load = None;
    for (row, allowance) in tra_allowance(class, cap) {
        let b = allowance.load_pct / 100.0;
        let granted = rated.load * (1.0 + b);
        highest_load = Some(highest_load.map_or(granted, |most: Mass| most.max(granted)));
        if load > granted {
            continue;
        }
        // Never above the rated load by rounding of the division.
        let at_rated_speed = (load / (1.0 + b)).min(rated.load);
        let required = required_pressure(rated, at_rated_speed, exponent)?;
        let pressure = required.pressure + allowance.pressure_addition;
        if lowest.as_ref().is_none_or(|found| pressure < found.pressure) {
            lowest = Some(RestrictedSpeed {
                pressure,
                row,
                load_allowance_pct: allowance.load_pct,
                pressure_addition: allowance.pressure_addition,
                under_usual_tables: required.under_usual_tables,
                citation: cite(row, allowance, exponent),
            });
        }
    }
    match (lowest, highest_load) {
        (Some(found), _) => Ok(found),
        (None, Some(highest)) => Err(LowSpeedError::TooHeavy { load, highest, cap }),
        (None, None) => Err(LowSpeedError::AboveTable { cap }),
    }
}

/// As [`restricted_speed_pressure`], for a tire model: one rated faster than 65 mph keeps the
/// ordinary table up to its rated speed, and one rated at 50 mph or less gets no allowance, for
/// its rated load is already one for low speed.
///
/// # Validity
/// As [`restricted_speed_pressure`]; from nothing to the tire's rated speed.
///
/// # Errors
/// [`LowSpeedError`], also where the tire has no rating for the fitment or the cap is above its rated speed.
pub fn restricted_speed_pressure_for(
    tire: &Tire,
    fitment: Fitment,
    load: Mass,
    cap: Speed,
) -> Result<RestrictedSpeed, LowSpeedError> {
    if cap > tire.rated_speed {
        return Err(LowSpeedError::AboveRatedSpeed { cap, rated: tire.rated_speed });
    }
    let rated = tire
        .rated(fitment)
        .ok_or_else(|| LowSpeedError::NotRated { tire: tire.name.clone(), fitment })?;
    let ordinary_top = Speed::from_mph(65.0);
    let slow_tire = tire.rated_speed <= Speed::from_mph(50.0);
    let cap = if slow_tire { ordinary_top } else { cap.min(ordinary_top) };
    restricted_speed_pressure(rated, load, &Exponent::for_tire(tire), tire.size_class, cap)
}

/// The most that a pressure carries under a speed cap.
#[derive(Debug, Clone, PartialEq)]
pub struct RestrictedSpeedLoad {
    /// Load on one tire.
    pub load: Mass,
    /// The row that gives it; it may be one for more speed than the cap.
    pub row: &'static SpeedBand,
    /// Change of the table load by that row, percent.
    pub load_allowance_pct: f64,
    /// Pressure the row asks for on top of the table's.
    pub pressure_addition: PressureDifference,
    /// Whether the power law was used under the pressure where published truck tables begin.
    pub under_usual_tables: bool,
    /// The table where its row changes anything, else the source of the exponent.
    pub citation: Citation,
}

/// The most load that a cold pressure carries under a speed cap: over every row that covers the
/// cap, `L_r ((P - dP)/P_r)^n (1 + b)`, the highest.
///
/// # Validity
/// As [`restricted_speed_pressure`], of which it is the inverse; more than the rated pressure and
/// the row's addition carries no more.
///
/// # Errors
/// [`LowSpeedError`]: a cap outside the table, or a pressure that no row covering the cap leaves
/// anything of.
///
/// # Source
/// [`TRA_LOW_SPEED`].
///
/// ```
/// use model::tire::{Construction, RatedPoint, SizeClass, StandardsBody};
/// use model::tire::load_inflation::Exponent;
/// use model::tire::low_speed::restricted_speed_load;
/// use quantity::{ColdPressure, Mass, Speed};
/// let dual = RatedPoint { load: Mass::from_lb(6005.0), pressure: ColdPressure::from_psi(105.0) };
/// let n = Exponent::of(StandardsBody::Tra, Construction::Radial);
/// let found = restricted_speed_load(
///     dual, ColdPressure::from_psi(74.9), &n, SizeClass::Conventional, Speed::from_mph(35.0))?;
/// assert_eq!(found.row.band, "31-40");
/// assert!((found.load.as_lb() - 5500.0).abs() < 5.0);
/// # Ok::<(), model::tire::low_speed::LowSpeedError>(())
/// ```
pub fn restricted_speed_load(
    rated: RatedPoint,
    pressure: ColdPressure,
    exponent: &Exponent,
    class: SizeClass,
    cap: Speed,
) -> Result<RestrictedSpeedLoad, LowSpeedError> {
    if cap < Speed::ZERO {
        return Err(LowSpeedError::NegativeSpeed { cap });
    }
    let mut rows = tra_allowance(class, cap).peekable();
    if rows.peek().is_none() {
        return Err(LowSpeedError::AboveTable { cap });
    }
    let mut highest: Option<RestrictedSpeedLoad> = None;
    for (row, allowance) in rows {
        let table_pressure = pressure - allowance.pressure_addition;
        if table_pressure <= ColdPressure::ZERO {
            continue;
        }
        let carried = carried_load(rated, table_pressure, exponent)?;
        let load = carried.load * (1.0 + allowance.load_pct / 100.0);
        if highest.as_ref().is_none_or(|found| load > found.load) {
            highest = Some(RestrictedSpeedLoad {
                load,
                row,
                load_allowance_pct: allowance.load_pct,
                pressure_addition: allowance.pressure_addition,
                under_usual_tables: carried.under_usual_tables,
                citation: cite(row, allowance, exponent),
            });
        }
    }
    highest.ok_or(LowSpeedError::Law(LoadInflationError::NoPressure { pressure }))
}

fn cite(row: &SpeedBand, allowance: Allowance, exponent: &Exponent) -> Citation {
    if allowance.load_pct == 0.0 && allowance.pressure_addition == PressureDifference::ZERO {
        exponent.citation().clone()
    } else {
        Citation::of(TRA_LOW_SPEED, Standing::FromMemory).at(format!("row {} mph", row.band))
    }
}

#[cfg(test)]
mod tests;
