//! A subgrade weakened by thaw.

use super::layered::{Pavement, PavementError};
use crate::ground::strength::{Cbr, Reading, SoilType, StrengthError, strength};
use crate::source::Key;

/// Support of soils that freeze and thaw.
pub const SUPPORT_INDEX: Key = Key("ufc-3-260-02");

/// How much a soil suffers from frost; S1 and S2 are sands and gravels, F1 to F4 hold more fines.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum FrostGroup {
    /// F1 and S1.
    F1S1,
    /// F2 and S2.
    F2S2,
    /// F3 and F4.
    F3F4,
}

/// Why there is no thawed pavement.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ThawError {
    /// The layers do not go together.
    #[error(transparent)]
    Pavement(#[from] PavementError),
    /// The strength has no modulus.
    #[error(transparent)]
    Strength(#[from] StrengthError),
}

/// What is used in place of the CBR of a subgrade that freezes and thaws.
///
/// # Validity
/// A mean over the year, thaw included, weighted by wear: in the weeks of the thaw the ground is
/// weaker than this, later stronger.
///
/// # Source
/// [`SUPPORT_INDEX`], Table 3-5.
#[must_use]
pub const fn support_index(group: FrostGroup) -> f64 {
    match group {
        FrostGroup::F1S1 => 9.0,
        FrostGroup::F2S2 => 6.5,
        FrostGroup::F3F4 => 3.5,
    }
}

/// The pavement on a subgrade with the support index of its frost group, if that is weaker.
///
/// # Validity
/// As [`support_index`]; its modulus is the one of that CBR, from memory.
///
/// # Errors
/// [`ThawError`] if the contrast to the layer above becomes larger than was checked.
///
/// # Source
/// [`SUPPORT_INDEX`]; the modulus as [`strength`].
pub fn thawed(pavement: &Pavement, group: FrostGroup) -> Result<Pavement, ThawError> {
    let index = Reading::Cbr(Cbr::from_pct(support_index(group))?);
    let weak = strength(index, SoilType::FineGrained)?.modulus.value;
    match pavement.layers().last() {
        Some(last) if last.modulus <= weak => Ok(pavement.clone()),
        _ => Ok(pavement.on_subgrade(weak)?),
    }
}

#[cfg(test)]
mod tests {
    use quantity::{Length, Stress};

    use super::*;
    use crate::road::layered::Layer;

    fn road(subgrade_mpa: f64) -> Pavement {
        let layer = |mpa, mm: Option<f64>| Layer {
            modulus: Stress::from_mpa(mpa),
            poisson: 0.35,
            thickness: mm.map(Length::from_mm),
        };
        Pavement::new(vec![
            layer(6000.0, Some(75.0)),
            layer(80.0, Some(250.0)),
            layer(subgrade_mpa, None),
        ])
        .unwrap()
    }

    // UFC 3-260-02 (2001), Table 3-5.
    #[test]
    fn table_support_index() {
        for (group, value) in
            [(FrostGroup::F1S1, 9.0), (FrostGroup::F2S2, 6.5), (FrostGroup::F3F4, 3.5)]
        {
            assert!((support_index(group) - value).abs() < 1e-12);
        }
    }

    #[test]
    fn thaw_weakens_and_never_strengthens() {
        let groups = [FrostGroup::F1S1, FrostGroup::F2S2, FrostGroup::F3F4];
        let moduli = groups.map(|group| thawed(&road(100.0), group).unwrap().layers()[2].modulus);
        assert!(moduli[0] > moduli[1] && moduli[1] > moduli[2] && moduli[2].as_mpa() > 20.0);
        assert_eq!(thawed(&road(15.0), FrostGroup::F1S1).unwrap(), road(15.0));
    }
}
