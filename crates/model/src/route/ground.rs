//! What the ground under a leg bears, as people measured or judged it.

use quantity::{Length, Stress};

use crate::ground::Estimate;
use crate::ground::soil_class::{Season, SoilClass, expected_cbr};
use crate::ground::strength::{Cbr, Reading, SoilType, StrengthError, strength};
use crate::road::layered::Pavement;

/// How the strength of the soil is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SoilGiven {
    /// Measured on the leg.
    Measured {
        /// What was read.
        reading: Reading,
        /// The soil it was read in.
        soil: SoilType,
    },
    /// Judged from the class of the soil and the season.
    Judged {
        /// Class of the soil.
        class: SoilClass,
        /// How wet it is.
        season: Season,
    },
}

/// Why a soil has no strength.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SoilGivenError {
    /// A reading outside what can be measured.
    #[error(transparent)]
    Reading(#[from] StrengthError),
    /// No number was read for the class in that season.
    #[error(
        "no published strength of this soil class in this season was read; measure it and give \
         cbr_pct, cone_index_kpa or dcp_mm_per_blow"
    )]
    NoNumber,
}

/// Strength of a soil with its credible span.
#[derive(Debug, Clone, PartialEq)]
pub struct SoilStrength {
    /// Bearing ratio.
    pub cbr: Estimate<Cbr>,
    /// Cone index.
    pub cone_index: Estimate<Stress>,
}

impl SoilGiven {
    /// The strength in the two measures that effects are worked out from.
    ///
    /// # Validity
    /// As [`strength`] and [`expected_cbr`].
    ///
    /// # Errors
    /// [`SoilGivenError`]: a reading that is none, a class without a number in that season.
    ///
    /// # Source
    /// As [`strength`] and [`expected_cbr`].
    ///
    /// ```
    /// use model::ground::soil_class::{Season, SoilClass};
    /// use model::route::SoilGiven;
    /// let soil = SoilGiven::Judged { class: SoilClass::Ml, season: Season::Wet };
    /// assert!((soil.strength()?.cbr.value.as_pct() - 5.0).abs() < 1e-9);
    /// # Ok::<(), model::route::SoilGivenError>(())
    /// ```
    pub fn strength(&self) -> Result<SoilStrength, SoilGivenError> {
        match *self {
            Self::Measured { reading, soil } => {
                let found = strength(reading, soil)?;
                Ok(SoilStrength { cbr: found.cbr, cone_index: found.cone_index })
            }
            Self::Judged { class, season } => {
                let cbr = expected_cbr(class, season).ok_or(SoilGivenError::NoNumber)?;
                let cone = |cbr| strength(Reading::Cbr(cbr), soil_type(class));
                let (low, middle, high) = (cone(cbr.low)?, cone(cbr.value)?, cone(cbr.high)?);
                Ok(SoilStrength {
                    cone_index: Estimate {
                        low: low.cone_index.low,
                        high: high.cone_index.high,
                        ..middle.cone_index
                    },
                    cbr,
                })
            }
        }
    }
}

/// The soil type that conversions take for a class.
pub const fn soil_type(class: SoilClass) -> SoilType {
    use SoilClass::{Ch, Cl, Gc, Gm, Gp, Gw, Mh, Ml, Oh, Ol, Sc, Sm, Sp, Sw};
    match class {
        Cl => SoilType::LeanClay,
        Ch => SoilType::FatClay,
        Ml | Mh | Ol | Oh => SoilType::FineGrained,
        Gw | Gp | Gm | Gc | Sw | Sp | Sm | Sc => SoilType::CoarseGrained,
    }
}

/// Aggregate on the soil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aggregate {
    /// Thickness.
    pub thickness: Length,
    /// Bearing ratio of the aggregate, where known.
    pub top: Option<Cbr>,
}

/// What is known of the ground under a leg; what is not known is not assumed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LegGround {
    /// The soil, under the aggregate or the pavement where there is one.
    pub soil: Option<SoilGiven>,
    /// Aggregate on it.
    pub aggregate: Option<Aggregate>,
    /// Layers of the pavement.
    pub pavement: Option<Pavement>,
    /// Coefficient of adhesion measured on the leg, driving and braking alike.
    pub grip: Option<f64>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_class_without_a_number_is_refused_and_never_guessed() {
        let soil = SoilGiven::Judged { class: SoilClass::Ol, season: Season::Wet };
        assert_eq!(soil.strength(), Err(SoilGivenError::NoNumber));
    }

    #[test]
    fn what_is_judged_is_wider_than_what_is_measured() {
        let cbr = Cbr::from_pct(5.0).unwrap();
        let soil = SoilType::FineGrained;
        let measured = SoilGiven::Measured { reading: Reading::Cbr(cbr), soil };
        let judged = SoilGiven::Judged { class: SoilClass::Ml, season: Season::Drained };
        let width = |soil: SoilGiven| {
            let found = soil.strength().unwrap().cone_index;
            assert!(found.low <= found.value && found.value <= found.high);
            found.high / found.low
        };
        assert!(width(judged) > width(measured));
    }
}
