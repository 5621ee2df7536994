//! What a way to run does to a pavement.

use std::cell::RefCell;

use model::ground::soil_class::{Season, expected_cbr};
use model::road::layered::{Accuracy, Pavement};
use model::road::pavement_life::{Part, relative_life};
use model::road::pavement_strain::{PavementStrain, TireGroup, group_strain};
use model::road::thaw::{FrostGroup, support_index, thawed};
use model::route::{Leg, SoilGiven, SoilGivenError};
use model::vehicle::AxleGroup;
use quantity::{GaugePressure, Length, Mass};

use super::band::{Band, Finding, Input, NotAssessed};

/// A pavement against the same pavement under full pressure.
#[derive(Debug, Clone, PartialEq)]
pub struct PavementEffect {
    /// Strains under the tires.
    pub strain: PavementStrain,
    /// The same at full pressure.
    pub full: PavementStrain,
    /// Fatigue life of the asphalt over that at full pressure, by two exponents; a best case,
    /// because the model presses evenly.
    pub asphalt_life: Band<f64>,
    /// Life of the subgrade by load alone: no gain is counted for pressure there.
    pub subgrade_life: Band<f64>,
    /// Whether the ground under it was taken as weakened by thaw.
    pub thawed: bool,
}

/// The pavement of a leg as the season leaves it: on thawing ground if the survey names that season.
///
/// # Errors
/// [`NotAssessed::Give`] the layers; [`NotAssessed::OutOfRange`] for soils that no index of thawing
/// ground is known of.
///
/// # Source
/// `ufc-3-260-02`; which class suffers how much, from memory.
pub fn as_it_stands(leg: &Leg) -> Finding<(Pavement, bool)> {
    let ground = leg.ground.as_ref();
    let layers = ground.and_then(|ground| ground.pavement.clone());
    let layers = layers.ok_or(NotAssessed::Give(Input::Layers))?;
    let Some(SoilGiven::Judged { class, season: Season::Thaw }) = ground.and_then(|one| one.soil)
    else {
        return Ok((layers, false));
    };
    let index = expected_cbr(class, Season::Thaw).map(|cbr| cbr.value.as_pct());
    let frost = [FrostGroup::F1S1, FrostGroup::F2S2, FrostGroup::F3F4];
    let frost = frost
        .into_iter()
        .find(|group| index.is_some_and(|index| (support_index(*group) - index).abs() < 1e-9));
    let frost = frost.ok_or_else(|| NotAssessed::refused(&SoilGivenError::NoNumber))?;
    let weak = thawed(&layers, frost).map_err(|error| NotAssessed::refused(&error))?;
    Ok((weak, true))
}

/// A tire load and the pressure it rolls at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rolling {
    /// Load on the tire.
    pub load: Mass,
    /// Pressure while it rolls.
    pub pressure: GaugePressure,
}

/// A strain by pavement, dual spacing, load and pressure.
type Strain = (Pavement, Option<Length>, Rolling, Finding<PavementStrain>);

/// Strains that were worked out.
#[derive(Default)]
pub(super) struct Strains {
    known: RefCell<Vec<Strain>>,
}

impl Strains {
    fn of(&self, pavement: &Pavement, group: &AxleGroup, at: Rolling) -> Finding<PavementStrain> {
        let spacing = group.dual.map(|pair| pair.spacing);
        let found = self.known.borrow().iter().find_map(|(known, duals, rolling, strain)| {
            ((known, *duals, *rolling) == (pavement, spacing, at)).then(|| strain.clone())
        });
        found.unwrap_or_else(|| {
            let tires = TireGroup {
                wheel_load: at.load.weight(),
                pressure: at.pressure,
                dual_spacing: spacing,
                // Spacing of axles is not surveyed, and hardly changes a ratio between pressures.
                axles: 1,
                axle_spacing: Length::ZERO,
            };
            let strain = group_strain(&tires, pavement, Accuracy::Screen)
                .map_err(|error| NotAssessed::refused(&error));
            self.known.borrow_mut().push((pavement.clone(), spacing, at, strain.clone()));
            strain
        })
    }

    /// What tires do to a pavement against full pressure, and whether its ground is thawing.
    pub fn effect(
        &self,
        (pavement, thawed): (&Pavement, bool),
        group: &AxleGroup,
        full: Rolling,
        rolling: Rolling,
    ) -> Finding<PavementEffect> {
        let before = self.of(pavement, group, full)?;
        let strain = self.of(pavement, group, rolling)?;
        let at_full = self.of(pavement, group, Rolling { pressure: full.pressure, ..rolling })?;
        let life = |part, reference, strain| {
            let life = relative_life(part, reference, strain)
                .map_err(|error| NotAssessed::refused(&error))?;
            Ok(Band { low: life.low, middle: life.value, high: life.high })
        };
        Ok(PavementEffect {
            asphalt_life: life(Part::Asphalt, before.asphalt.strain, strain.asphalt.strain)?,
            subgrade_life: life(Part::Subgrade, before.subgrade.strain, at_full.subgrade.strain)?,
            strain,
            full: before,
            thawed,
        })
    }
}
