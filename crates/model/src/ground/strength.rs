//! Strength of soil as people measure it, carried from one measure to the others with the spread.

use quantity::{Length, Stress};

use super::Estimate;
use crate::source::{Citation, Key, Standing};

/// The reading itself.
pub const MEASUREMENT: Key = Key("soil-measurement");
/// Penetration of the 8 kg cone to CBR.
pub const DCP_TO_CBR: Key = Key("astm-d6951");
/// Another line for the same, used as the spread.
pub const DCP_TO_CBR_OTHER: Key = Key("trl-cone-penetrometer");
/// Undrained shear strength of a CBR.
pub const CBR_TO_COHESION: Key = Key("tm-5-818-8");
/// Cone index of clay over its cohesion, and cone index over CBR.
pub const CONE_TO_COHESION: Key = Key("turnage-cone-index");
/// Modulus of a CBR.
pub const CBR_TO_MODULUS: Key = Key("trl-cbr-modulus");
/// Rating cone index, its remolding, and the layer that counts.
pub const RATING_CONE_INDEX: Key = Key("erdc-sr-13-2");

/// Penetration a blow over which the falling-weight cone is not to be trusted.
pub const SOFTEST_DCP: Length = Length::from_mm(75.0);

/// California bearing ratio, percent.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Cbr(f64);

impl Cbr {
    /// A CBR in percent.
    ///
    /// # Errors
    /// [`StrengthError::Cbr`] outside 0.2 to 200 %.
    pub fn from_pct(pct: f64) -> Result<Self, StrengthError> {
        if (0.2..=200.0).contains(&pct) { Ok(Self(pct)) } else { Err(StrengthError::Cbr { pct }) }
    }

    /// Percent.
    pub const fn as_pct(self) -> f64 {
        self.0
    }

    pub(super) const fn clamped(pct: f64) -> Self {
        Self(pct.clamp(0.2, 200.0))
    }
}

/// Soils that the conversions tell apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SoilType {
    /// Low-plasticity clay (CL).
    LeanClay,
    /// High-plasticity clay (CH).
    FatClay,
    /// Silt and other fine-grained soil.
    FineGrained,
    /// Sand and gravel.
    CoarseGrained,
}

impl SoilType {
    const fn is_fine(self) -> bool {
        !matches!(self, Self::CoarseGrained)
    }
}

/// What was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading {
    /// Bearing ratio.
    Cbr(Cbr),
    /// Penetration a blow of the cone with the 8 kg hammer.
    Dcp(Length),
    /// Cone index of the 30° cone of half a square inch.
    ConeIndex(Stress),
}

/// Why a strength could not be found.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum StrengthError {
    /// No such bearing ratio.
    #[error("a CBR of {pct} % is outside 0.2 to 200; give the percent, such as 5 for soft clay")]
    Cbr {
        /// CBR offered.
        pct: f64,
    },
    /// No such penetration.
    #[error(
        "a penetration of {} mm a blow is outside 1 to 150; give millimeters a blow of the 8 kg hammer \
         (double the reading of the 4.6 kg hammer)", penetration.as_mm()
    )]
    Penetration {
        /// Penetration a blow offered.
        penetration: Length,
    },
    /// No such cone index.
    #[error("a cone index of {index} is outside 10 to 10000 kPa (about 1.5 to 1450 psi)")]
    ConeIndex {
        /// Cone index offered.
        index: Stress,
    },
    /// No such remolding index.
    #[error(
        "a remolding index of {index} is outside 0.1 to 2; give remolded over undisturbed cone index"
    )]
    RemoldingIndex {
        /// Index offered.
        index: f64,
    },
}

/// One soil told in every measure.
#[derive(Debug, Clone, PartialEq)]
pub struct Strength {
    /// Bearing ratio.
    pub cbr: Estimate<Cbr>,
    /// Penetration a blow, 8 kg hammer.
    pub dcp: Estimate<Length>,
    /// Cone index.
    pub cone_index: Estimate<Stress>,
    /// Undrained shear strength.
    pub cohesion: Estimate<Stress>,
    /// Modulus of elasticity.
    pub modulus: Estimate<Stress>,
}

/// Carries a reading to the other measures; the ends of each are where other published relations land.
///
/// # Validity
/// DCP over [`SOFTEST_DCP`] and CBR under 1 % are marked: use the hand cone there. Cone index and
/// cohesion hold for fine-grained soil and are marked for coarse. The ends show how far relations
/// differ, not the scatter of a measurement.
///
/// # Errors
/// [`StrengthError`] for a reading outside what can be measured.
///
/// # Source
/// [`DCP_TO_CBR`], [`CONE_TO_COHESION`] and [`CBR_TO_MODULUS`] from memory; [`CBR_TO_COHESION`] read.
///
/// ```
/// use model::ground::strength::{Reading, SoilType, strength};
/// use quantity::Length;
/// let soil = strength(Reading::Dcp(Length::from_mm(10.0)), SoilType::FineGrained)?;
/// assert!((soil.cbr.value.as_pct() - 22.15).abs() < 0.01);
/// # Ok::<(), model::ground::strength::StrengthError>(())
/// ```
pub fn strength(reading: Reading, soil: SoilType) -> Result<Strength, StrengthError> {
    let cbr = cbr_of(reading, soil)?;
    let ends = [cbr.low, cbr.value, cbr.high];
    let over = |f: &dyn Fn(Cbr) -> [f64; 2]| {
        let [value, _] = f(ends[1]);
        let both = |cbr| f(cbr);
        let all = [both(ends[0]), both(ends[1]), both(ends[2])].concat();
        let low = all.iter().copied().fold(f64::INFINITY, f64::min);
        let high = all.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        [low, value, high]
    };
    let stress = |[low, value, high]: [f64; 3], key, standing, extrapolated| Estimate {
        value: Stress::from_kpa(value),
        low: Stress::from_kpa(low),
        high: Stress::from_kpa(high),
        extrapolated,
        citation: Citation::of(key, standing),
    };
    let coarse = !soil.is_fine() || cbr.extrapolated;
    let memory = Standing::FromMemory;
    let cone_index = match reading {
        Reading::ConeIndex(index) => exact(index, coarse),
        _ => stress(over(&cone_index_of), CONE_TO_COHESION, memory, coarse),
    };
    let cohesion = stress(
        over(&|cbr| [30.0 * cbr.0, cone_index_of(cbr)[0] / 12.5]),
        CBR_TO_COHESION,
        Standing::Read,
        coarse,
    );
    let modulus = stress(
        over(&|cbr| [1e3 * 17.6 * cbr.0.powf(0.64), 1e3 * 10.0 * cbr.0.min(10.0)]),
        CBR_TO_MODULUS,
        memory,
        cbr.extrapolated || cbr.value.0 > 12.0,
    );
    let dcp = match reading {
        Reading::Dcp(penetration) => exact(penetration, cbr.extrapolated),
        _ => dcp_of(&cbr, soil),
    };
    Ok(Strength { cbr, dcp, cone_index, cohesion, modulus })
}

fn exact<T: Copy>(value: T, extrapolated: bool) -> Estimate<T> {
    let citation = Citation::of(MEASUREMENT, Standing::Given);
    Estimate { value, low: value, high: value, extrapolated, citation }
}

fn cbr_of(reading: Reading, soil: SoilType) -> Result<Estimate<Cbr>, StrengthError> {
    match reading {
        Reading::Cbr(cbr) => Ok(exact(cbr, cbr.0 < 1.0)),
        Reading::Dcp(penetration) => {
            let d = penetration.as_mm();
            if !(1.0..=150.0).contains(&d) {
                return Err(StrengthError::Penetration { penetration });
            }
            let [value, ends @ ..] = [cbr_by_dcp(d, soil), general(d), other(d)];
            Ok(Estimate {
                value: Cbr::clamped(value),
                low: Cbr::clamped(ends.into_iter().fold(value, f64::min)),
                high: Cbr::clamped(ends.into_iter().fold(value, f64::max)),
                extrapolated: penetration > SOFTEST_DCP || !(1.0..=100.0).contains(&value),
                citation: Citation::of(DCP_TO_CBR, Standing::FromMemory),
            })
        }
        Reading::ConeIndex(index) => {
            let kpa = index.as_kpa();
            if !(10.0..=10_000.0).contains(&kpa) {
                return Err(StrengthError::ConeIndex { index });
            }
            let (value, by_cohesion) = (index.as_psi() / 50.0, kpa / (12.5 * 30.0));
            Ok(Estimate {
                value: Cbr::clamped(value),
                low: Cbr::clamped(value.min(by_cohesion)),
                high: Cbr::clamped(value.max(by_cohesion)),
                extrapolated: !soil.is_fine() || value < 1.0,
                citation: Citation::of(CONE_TO_COHESION, Standing::FromMemory)
                    .at("CI/50, CI in psi"),
            })
        }
    }
}

/// Cone index by CBR = CI/50 (psi) first, by cohesion second; kPa.
fn cone_index_of(cbr: Cbr) -> [f64; 2] {
    [Stress::from_psi(50.0 * cbr.0).as_kpa(), 12.5 * 30.0 * cbr.0]
}

fn general(d: f64) -> f64 {
    292.0 / d.powf(1.12)
}

fn other(d: f64) -> f64 {
    10_f64.powf(2.48 - 1.057 * d.log10())
}

fn cbr_by_dcp(d: f64, soil: SoilType) -> f64 {
    match soil {
        SoilType::FatClay => 1.0 / (0.002871 * d),
        SoilType::LeanClay => {
            let lean = (0.017019 * d).powi(-2);
            if lean < 10.0 { lean } else { general(d) }
        }
        SoilType::FineGrained | SoilType::CoarseGrained => general(d),
    }
}

fn dcp_of(cbr: &Estimate<Cbr>, soil: SoilType) -> Estimate<Length> {
    let by_general = |c: f64| (292.0 / c).powf(1.0 / 1.12);
    let by_other = |c: f64| 10_f64.powf((2.48 - c.log10()) / 1.057);
    let by_soil = |c: f64| match soil {
        SoilType::FatClay => 1.0 / (0.002871 * c),
        SoilType::LeanClay if c < 10.0 => 1.0 / (0.017019 * c.sqrt()),
        _ => by_general(c),
    };
    let value = by_soil(cbr.value.0);
    let all = [cbr.low.0, cbr.value.0, cbr.high.0]
        .map(|c| [by_soil(c), by_general(c), by_other(c)])
        .concat();
    Estimate {
        value: Length::from_mm(value),
        low: Length::from_mm(all.iter().copied().fold(value, f64::min)),
        high: Length::from_mm(all.iter().copied().fold(value, f64::max)),
        extrapolated: cbr.extrapolated || !(1.0..=SOFTEST_DCP.as_mm()).contains(&value),
        citation: Citation::of(DCP_TO_CBR, Standing::FromMemory),
    }
}

/// Rating cone index: cone index times remolding index.
///
/// # Validity
/// Fine-grained soil and sand that remolds. In fat clay a remolding index under 0.5 is suspect.
///
/// # Errors
/// [`StrengthError`]: a cone index outside 10 to 10000 kPa, a remolding index outside 0.1 to 2.
///
/// # Source
/// [`RATING_CONE_INDEX`], read.
pub fn rating_cone_index(index: Stress, remolding_index: f64) -> Result<Stress, StrengthError> {
    if !(10.0..=10_000.0).contains(&index.as_kpa()) {
        return Err(StrengthError::ConeIndex { index });
    }
    if !(0.1..=2.0).contains(&remolding_index) {
        return Err(StrengthError::RemoldingIndex { index: remolding_index });
    }
    Ok(index * remolding_index)
}

#[cfg(test)]
mod tests;
