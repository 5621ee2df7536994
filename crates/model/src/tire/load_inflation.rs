//! Load against cold inflation pressure at the rated speed: the power law the standards bodies use.

use quantity::{ColdPressure, Mass};

use super::{Construction, RatedPoint, StandardsBody, Tire};
use crate::source::{Citation, Key, Standing};

/// Load-inflation rows of US truck radials, and the curve fitted to them.
pub const TRA_RADIAL: Key = Key("tra-load-inflation");
/// The load formula for US bias truck tires.
pub const TRA_BIAS: Key = Key("tra-bias-load-formula");
/// The load-inflation relation for European commercial tires.
pub const ETRTO: Key = Key("etrto-load-inflation");

/// Published truck tables usually begin here; less is the formula's word alone.
pub const USUAL_LOWEST_TABLE_PRESSURE: ColdPressure = ColdPressure::from_psi(70.0);

/// The exponent n of `L = L_r (P/P_r)^n`, with where it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Exponent {
    n: f64,
    citation: Citation,
}

impl Exponent {
    /// The exponent of a standards body for a construction.
    ///
    /// A larger n asks for more pressure. The ETRTO value is used for bias tires too: no
    /// smaller one was found for them.
    ///
    /// # Source
    /// [`TRA_RADIAL`], [`TRA_BIAS`], [`ETRTO`].
    pub fn of(body: StandardsBody, construction: Construction) -> Self {
        let (n, key, standing, locator) = match (body, construction) {
            (StandardsBody::Tra, Construction::Radial) => {
                (0.7, TRA_RADIAL, Standing::Read, "fitted to rows of 295/75R22.5 and LT235/85R16")
            }
            (StandardsBody::Tra, Construction::Bias) => {
                (0.585, TRA_BIAS, Standing::FromMemory, "supported by rows of 7.50-16")
            }
            (StandardsBody::Etrto, _) => (0.8, ETRTO, Standing::FromMemory, "commercial tires"),
        };
        Self { n, citation: Citation::of(key, standing).at(locator) }
    }

    /// The exponent of a tire's standards body and construction.
    pub fn for_tire(tire: &Tire) -> Self {
        Self::of(tire.body, tire.construction)
    }

    /// An exponent the user gives for this tire.
    ///
    /// # Validity
    /// 0.5 (US passenger formula) to 1 (pressure in proportion to load).
    ///
    /// # Errors
    /// [`LoadInflationError::Exponent`] outside that range.
    pub fn given(n: f64, citation: Citation) -> Result<Self, LoadInflationError> {
        if (0.5..=1.0).contains(&n) {
            Ok(Self { n, citation })
        } else {
            Err(LoadInflationError::Exponent { n })
        }
    }

    /// The number n.
    pub fn n(&self) -> f64 {
        self.n
    }

    /// Where it comes from.
    pub fn citation(&self) -> &Citation {
        &self.citation
    }
}

/// Why the power law gives no answer.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LoadInflationError {
    /// More load than the tire is rated for.
    #[error(
        "{load} on one tire is more than its rated {rated}; take load off, fit a larger tire, \
         or use an allowance for restricted speed"
    )]
    OverRated {
        /// Load asked for.
        load: Mass,
        /// Rated load.
        rated: Mass,
    },
    /// A load below zero.
    #[error("a tire cannot carry {load}; give a load of zero or more")]
    NegativeLoad {
        /// Load asked for.
        load: Mass,
    },
    /// A pressure of zero or less.
    #[error("{pressure} carries no load by the load-inflation law; give a pressure above zero")]
    NoPressure {
        /// Pressure asked for.
        pressure: ColdPressure,
    },
    /// A rated point that rates nothing.
    #[error("a rated point of {load} at {pressure} rates nothing; both must be above zero")]
    NoRating {
        /// Load of the rated point.
        load: Mass,
        /// Pressure of the rated point.
        pressure: ColdPressure,
    },
    /// An exponent no standards body uses.
    #[error("an exponent of {n} is outside 0.5 to 1; truck radials have 0.7 (TRA) or 0.8 (ETRTO)")]
    Exponent {
        /// The number offered.
        n: f64,
    },
}

/// A pressure that carries a load by the power law.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Required {
    /// Cold inflation pressure.
    pub pressure: ColdPressure,
    /// Whether it lies under [`USUAL_LOWEST_TABLE_PRESSURE`], where no published truck row stands behind it.
    pub under_usual_tables: bool,
}

/// A load that a pressure carries by the power law.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Carried {
    /// Load on one tire.
    pub load: Mass,
    /// Whether the pressure lies under [`USUAL_LOWEST_TABLE_PRESSURE`].
    pub under_usual_tables: bool,
}

/// The cold pressure that carries `load` at the rated speed: `P = P_r (L/L_r)^(1/n)`.
///
/// # Validity
/// Up to the rated load. Published truck tables begin near 70 psi; a lower answer is marked.
/// Conventional inch sizes' rows under 90 psi are recalled to lie 2 to 3 % under the curve
/// in load, so the maker's rows go first where there are any.
///
/// # Errors
/// [`LoadInflationError`] for more than the rated load, a negative load, or an empty rating.
///
/// # Source
/// The exponent's citation.
///
/// ```
/// use model::tire::{Construction, RatedPoint, StandardsBody};
/// use model::tire::load_inflation::{Exponent, required_pressure};
/// use quantity::{ColdPressure, Mass};
/// let rated = RatedPoint { load: Mass::from_lb(6175.0), pressure: ColdPressure::from_psi(110.0) };
/// let n = Exponent::of(StandardsBody::Tra, Construction::Radial);
/// let needed = required_pressure(rated, Mass::from_lb(5980.0), &n)?;
/// assert!((needed.pressure.as_psi() - 105.0).abs() < 0.1);
/// # Ok::<(), model::tire::load_inflation::LoadInflationError>(())
/// ```
pub fn required_pressure(
    rated: RatedPoint,
    load: Mass,
    exponent: &Exponent,
) -> Result<Required, LoadInflationError> {
    check_rating(rated)?;
    if load < Mass::ZERO {
        return Err(LoadInflationError::NegativeLoad { load });
    }
    if load > rated.load {
        return Err(LoadInflationError::OverRated { load, rated: rated.load });
    }
    let pressure = rated.pressure.scaled((load / rated.load).powf(1.0 / exponent.n));
    Ok(Required { pressure, under_usual_tables: pressure < USUAL_LOWEST_TABLE_PRESSURE })
}

/// The load that a cold pressure carries at the rated speed: `L = L_r (P/P_r)^n`.
///
/// More than the rated pressure carries no more than the rated load.
///
/// # Validity
/// As [`required_pressure`].
///
/// # Errors
/// [`LoadInflationError`] for a pressure of zero or less, or an empty rating.
///
/// # Source
/// The exponent's citation.
pub fn carried_load(
    rated: RatedPoint,
    pressure: ColdPressure,
    exponent: &Exponent,
) -> Result<Carried, LoadInflationError> {
    check_rating(rated)?;
    if pressure <= ColdPressure::ZERO {
        return Err(LoadInflationError::NoPressure { pressure });
    }
    let share = pressure.ratio_to(rated.pressure).min(1.0);
    Ok(Carried {
        load: rated.load * share.powf(exponent.n),
        under_usual_tables: pressure < USUAL_LOWEST_TABLE_PRESSURE,
    })
}

fn check_rating(rated: RatedPoint) -> Result<(), LoadInflationError> {
    if rated.load > Mass::ZERO && rated.pressure > ColdPressure::ZERO {
        Ok(())
    } else {
        Err(LoadInflationError::NoRating { load: rated.load, pressure: rated.pressure })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn point(lb: f64, psi: f64) -> RatedPoint {
        RatedPoint { load: Mass::from_lb(lb), pressure: ColdPressure::from_psi(psi) }
    }

    fn tra() -> Exponent {
        Exponent::of(StandardsBody::Tra, Construction::Radial)
    }

    // Trade article quoting TRA rows of 295/75R22.5 load range G, single: 5780 lb at 100 psi,
    // 5980 lb at 105 psi, 6175 lb at 110 psi.
    #[test]
    fn table_rows_of_295_75r22_5_g_single_lie_on_the_curve() {
        for (psi, lb) in [(100.0, 5780.0), (105.0, 5980.0), (110.0, 6175.0)] {
            let carried =
                carried_load(point(6175.0, 110.0), ColdPressure::from_psi(psi), &tra()).unwrap();
            assert!((carried.load.as_lb() - lb).abs() < 5.0, "{psi} psi: {}", carried.load.as_lb());
        }
    }

    // Vehicle-manual scan of a maker's table, LT235/85R16 load range E, single, 35 to 80 psi.
    #[test]
    fn table_rows_of_lt235_85r16_lie_within_one_percent() {
        let rows = [
            (35.0, 1700.0),
            (40.0, 1870.0),
            (45.0, 2030.0),
            (50.0, 2205.0),
            (60.0, 2485.0),
            (70.0, 2765.0),
            (75.0, 2905.0),
        ];
        for (psi, lb) in rows {
            let carried =
                carried_load(point(3042.0, 80.0), ColdPressure::from_psi(psi), &tra()).unwrap();
            assert!((carried.load.as_lb() / lb - 1.0).abs() < 0.01, "{psi} psi");
        }
    }

    // Vehicle-manual scan (1990), 7.50-16 bias, single, 30 to 75 psi.
    #[test]
    fn table_rows_of_7_50_16_bias_lie_within_two_percent() {
        let bias = Exponent::of(StandardsBody::Tra, Construction::Bias);
        for (psi, lb) in [(30.0, 1620.0), (45.0, 2060.0), (60.0, 2440.0), (70.0, 2670.0)] {
            let carried =
                carried_load(point(2780.0, 75.0), ColdPressure::from_psi(psi), &bias).unwrap();
            assert!((carried.load.as_lb() / lb - 1.0).abs() < 0.02, "{psi} psi");
        }
        assert_eq!(bias.citation().standing, Standing::FromMemory);
    }

    // 315/80R22.5 dual, 3350 kg at 850 kPa (pressure recalled), 2500 kg: worked by hand with 0.8 and 0.7.
    #[test]
    fn worked_etrto_asks_for_more_than_tra() {
        let rated =
            RatedPoint { load: Mass::from_kg(3350.0), pressure: ColdPressure::from_kpa(850.0) };
        let etrto = Exponent::of(StandardsBody::Etrto, Construction::Radial);
        let at = |n: &Exponent| {
            required_pressure(rated, Mass::from_kg(2500.0), n).unwrap().pressure.as_kpa()
        };
        assert!((at(&etrto) - 590.0).abs() < 1.0);
        assert!((at(&tra()) - 560.0).abs() < 1.0);
    }

    #[test]
    fn more_than_the_rating_is_refused_and_low_answers_are_marked() {
        let rated = point(6175.0, 105.0);
        assert!(matches!(
            required_pressure(rated, Mass::from_lb(6176.0), &tra()),
            Err(LoadInflationError::OverRated { .. })
        ));
        assert!(required_pressure(rated, Mass::from_lb(-1.0), &tra()).is_err());
        assert!(carried_load(rated, ColdPressure::ZERO, &tra()).is_err());
        assert!(required_pressure(point(0.0, 105.0), Mass::ZERO, &tra()).is_err());
        assert!(
            required_pressure(rated, Mass::from_lb(3412.0), &tra()).unwrap().under_usual_tables
        );
        assert!(
            !required_pressure(rated, Mass::from_lb(5000.0), &tra()).unwrap().under_usual_tables
        );
    }

    #[test]
    fn more_than_the_rated_pressure_carries_no_more() {
        let over =
            carried_load(point(6175.0, 105.0), ColdPressure::from_psi(120.0), &tra()).unwrap();
        assert!((over.load.as_lb() - 6175.0).abs() < 1e-9);
    }

    #[test]
    fn a_given_exponent_stays_in_its_range() {
        let citation = Citation::of(TRA_RADIAL, Standing::Given);
        assert!(Exponent::given(0.65, citation.clone()).is_ok());
        assert!(Exponent::given(0.3, citation.clone()).is_err());
        assert!(Exponent::given(f64::NAN, citation).is_err());
    }

    proptest! {
        #[test]
        fn more_load_never_needs_less_pressure(a in 0.0..1.0f64, b in 0.0..1.0f64) {
            let rated = point(6005.0, 105.0);
            let at = |share| required_pressure(rated, rated.load * share, &tra()).unwrap().pressure;
            prop_assert!(at(a.min(b)) <= at(a.max(b)));
        }

        #[test]
        fn load_and_pressure_turn_round(share in 0.01..1.0f64, n in 0.5..1.0f64) {
            let rated = point(6005.0, 105.0);
            let n = Exponent::given(n, Citation::of(TRA_RADIAL, Standing::Given)).unwrap();
            let needed = required_pressure(rated, rated.load * share, &n).unwrap().pressure;
            let back = carried_load(rated, needed, &n).unwrap().load / rated.load;
            prop_assert!((back - share).abs() < 1e-9);
        }
    }
}
