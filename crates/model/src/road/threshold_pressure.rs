//! The pressure up to which a weak road is strained no more than permitted.

use quantity::{GaugePressure, PressureDifference};

use super::layered::{Accuracy, Pavement};
use super::pavement_life::Part;
use super::pavement_strain::{PavementStrain, PavementStrainError, TireGroup, group_strain};
use super::strain::Strain;
use crate::source::Key;

/// That such a pressure exists in the thaw, and that load does more.
pub const THRESHOLD: Key = Key("kestler-1997");

/// What a road may be strained.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Permitted {
    /// Tension at the bottom of the first layer.
    pub asphalt: Strain,
    /// Compression at the top of the last.
    pub subgrade: Strain,
}

/// What was found between the lowest and the highest pressure asked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Threshold {
    /// Even the highest strains the road no more than permitted.
    EveryPressure,
    /// Up to this one.
    UpTo {
        /// Highest pressure permitted, to 1 kPa, rounded down.
        pressure: GaugePressure,
        /// Which part would be strained too much above it.
        limited_by: Part,
    },
    /// Not even the lowest: pressure cannot help, less load could.
    NoPressure {
        /// Which part is strained too much at the lowest.
        limited_by: Part,
        /// The strain of that part there.
        strain: Strain,
    },
}

/// The highest pressure of a group, between two, that keeps to the permitted strains.
///
/// What is permitted is for the user to say: the strains of the same axles in the strong season,
/// or of the reduced axle load that the authority allows in the thaw. The strain of the
/// subgrade hardly answers to pressure, so where it governs the answer is mostly one of the ends.
///
/// # Validity
/// As [`group_strain`]. Authorities have accepted lower pressure to shorten a restriction at its
/// late end, not to ignore it: no permission follows from a strain.
///
/// # Errors
/// As [`group_strain`].
///
/// # Source
/// [`THRESHOLD`] for the notion; the strains as [`group_strain`].
pub fn threshold_pressure(
    group: &TireGroup,
    pavement: &Pavement,
    permitted: Permitted,
    lowest: GaugePressure,
    highest: GaugePressure,
) -> Result<Threshold, PavementStrainError> {
    let limited_by = |pressure| {
        let strain = group_strain(&TireGroup { pressure, ..*group }, pavement, Accuracy::Screen)?;
        Ok::<_, PavementStrainError>(permitted.exceeded(&strain))
    };
    if let Some((limited_by, strain)) = limited_by(lowest)? {
        return Ok(Threshold::NoPressure { limited_by, strain });
    }
    let Some((mut part, _)) = limited_by(highest)? else {
        return Ok(Threshold::EveryPressure);
    };
    let (mut within, mut above) = (lowest, highest);
    while above - within > PressureDifference::from_kpa(1.0) {
        let middle = within + (above - within) / 2.0;
        match limited_by(middle)? {
            Some((exceeded, _)) => (above, part) = (middle, exceeded),
            None => within = middle,
        }
    }
    Ok(Threshold::UpTo { pressure: within, limited_by: part })
}

impl Permitted {
    fn exceeded(&self, found: &PavementStrain) -> Option<(Part, Strain)> {
        if found.subgrade.strain > self.subgrade {
            Some((Part::Subgrade, found.subgrade.strain))
        } else if found.asphalt.strain > self.asphalt {
            Some((Part::Asphalt, found.asphalt.strain))
        } else {
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use quantity::{Force, Length, Stress};

    use super::*;
    use crate::road::layered::Layer;

    fn thawing() -> Pavement {
        let layer = |mpa, poisson, mm: Option<f64>| Layer {
            modulus: Stress::from_mpa(mpa),
            poisson,
            thickness: mm.map(Length::from_mm),
        };
        Pavement::new(vec![
            layer(6000.0, 0.35, Some(75.0)),
            layer(80.0, 0.35, Some(250.0)),
            layer(15.0, 0.4, None),
        ])
        .unwrap()
    }

    fn group(kpa: f64) -> TireGroup {
        TireGroup {
            wheel_load: Force::from_kn(20.0),
            pressure: GaugePressure::from_kpa(kpa),
            dual_spacing: Some(Length::from_mm(340.0)),
            axles: 2,
            axle_spacing: Length::from_m(1.3),
        }
    }

    fn search(asphalt: f64, subgrade: f64) -> Threshold {
        let [asphalt, subgrade] = [asphalt, subgrade].map(Strain::from_microstrain);
        let [lowest, highest] = [276.0, 690.0].map(GaugePressure::from_kpa);
        let permitted = Permitted { asphalt, subgrade };
        threshold_pressure(&group(690.0), &thawing(), permitted, lowest, highest).unwrap()
    }

    #[test]
    fn the_strain_at_the_threshold_is_the_permitted_one() {
        let at_450 = group_strain(&group(450.0), &thawing(), Accuracy::Fine).unwrap();
        let found = search(at_450.asphalt.strain.as_microstrain(), 1e5);
        let Threshold::UpTo { pressure, limited_by } = found else { panic!("{found:?}") };
        assert_eq!(limited_by, Part::Asphalt);
        assert!((pressure.as_kpa() - 450.0).abs() < 1.5, "{pressure}");
    }

    #[test]
    fn both_ends_are_told() {
        assert_eq!(search(1e5, 1e5), Threshold::EveryPressure);
        let found = search(1e5, 100.0);
        assert!(matches!(found, Threshold::NoPressure { limited_by: Part::Subgrade, .. }));
        let found = search(10.0, 1e5);
        assert!(matches!(found, Threshold::NoPressure { limited_by: Part::Asphalt, .. }));
    }
}
