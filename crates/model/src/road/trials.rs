//! What trials of lower tire pressure found, those that found nothing among them.

use crate::source::Key;

/// What was compared: low pressure over high, all else as it was.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Effect {
    /// Traffic until a pavement failed.
    TrafficToFailure,
    /// Tensile strain under the asphalt.
    AsphaltStrain,
    /// Fatigue life of the asphalt.
    AsphaltLife,
    /// Depth of ruts.
    Rutting,
    /// Thickness of aggregate needed.
    AggregateThickness,
    /// Upkeep of the surface.
    Maintenance,
    /// Sediment that runs off the road.
    Sediment,
    /// Vertical stress deep in the ground.
    DeepStress,
}

/// Under what the tires ran.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Ground {
    /// Asphalt.
    Asphalt,
    /// Thin asphalt on peat.
    AsphaltOnPeat,
    /// A paved low-volume road in the thaw.
    ThawedPavement,
    /// A thin membrane on gravel.
    ThinMembrane,
    /// Aggregate surface.
    Aggregate,
    /// Gravel, dry and strong in autumn.
    DryStrongGravel,
    /// Soil at 30 cm and deeper.
    Subsoil,
}

/// What a trial found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Found {
    /// A ratio of low pressure over high, between two ends.
    Between(f64, f64),
    /// A ratio up to this; the other end was not told.
    UpTo(f64),
    /// Less, without a number.
    Less,
    /// No difference worth telling.
    NoDifference,
}

/// How much of the report was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Extent {
    /// Its abstract.
    Abstract,
    /// A newspaper's account.
    News,
}

/// One trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trial {
    /// Where it is reported.
    pub source: Key,
    /// How much of that was read.
    pub extent: Extent,
    /// What was compared.
    pub effect: Effect,
    /// On what.
    pub ground: Ground,
    /// What it found.
    pub found: Found,
}

const fn trial(source: Key, extent: Extent, effect: Effect, ground: Ground, found: Found) -> Trial {
    Trial { source, extent, effect, ground, found }
}

/// Every trial whose report was read, in part.
pub const TRIALS: [Trial; 15] = {
    use Effect::{
        AggregateThickness, AsphaltLife, AsphaltStrain, DeepStress, Maintenance, Rutting, Sediment,
        TrafficToFailure,
    };
    use Extent::{Abstract, News};
    use Found::{Between, Less, NoDifference, UpTo};
    use Ground::{
        Aggregate, Asphalt, AsphaltOnPeat, DryStrongGravel, Subsoil, ThawedPavement, ThinMembrane,
    };
    const GRAU: Key = Key("grau-1991");
    const STEWARD: Key = Key("steward-1994");
    const FOLTZ: Key = Key("foltz-1995");
    const SHALABY: Key = Key("shalaby-reggin-2002");
    const SASKATCHEWAN: Key = Key("saskatchewan-1999-demonstration");
    const MANITOBA: Key = Key("manitoba-2009-strain");
    const PEAT: Key = Key("asphalt-on-peat-2001");
    const ACCELERATED: Key = Key("bonaquist-1989");
    const SUBSOIL: Key = Key("arvidsson-keller-2007");
    [
        trial(GRAU, Abstract, TrafficToFailure, Asphalt, Between(1.5, 21.0)),
        // 39 psi against 100: upkeep of grades that unloaded trucks had corrugated.
        trial(GRAU, Abstract, Maintenance, Aggregate, Less),
        trial(STEWARD, Abstract, AggregateThickness, Aggregate, Between(0.70, 0.80)),
        trial(STEWARD, Abstract, Maintenance, Aggregate, Between(0.10, 0.50)),
        trial(STEWARD, Abstract, Sediment, Aggregate, Between(0.15, 0.90)),
        // Constant reduced pressure 0.55; low on the road only, 0.20.
        trial(FOLTZ, Abstract, Sediment, Aggregate, Between(0.20, 0.55)),
        // Up to twice the traffic less rut; at ten times no worse, that is no difference.
        trial(SHALABY, Abstract, Rutting, ThinMembrane, Less),
        trial(SHALABY, Abstract, Rutting, ThinMembrane, NoDifference),
        trial(SHALABY, Abstract, Rutting, Aggregate, Less),
        trial(SASKATCHEWAN, News, Rutting, DryStrongGravel, NoDifference),
        trial(MANITOBA, Abstract, AsphaltStrain, ThawedPavement, Between(0.80, 0.85)),
        // 770 to 350 kPa: duals up to 3 times, steer tires up to 4.
        trial(PEAT, Abstract, AsphaltLife, AsphaltOnPeat, UpTo(4.0)),
        trial(PEAT, Abstract, AsphaltLife, AsphaltOnPeat, UpTo(3.0)),
        // 76 to 140 psi a fifth more damage; twice the load eleven times the damage.
        trial(ACCELERATED, Abstract, AsphaltLife, Asphalt, UpTo(1.2)),
        trial(SUBSOIL, Abstract, DeepStress, Subsoil, NoDifference),
    ]
};

/// The ends over all trials of an effect: a trial that found no difference counts as a ratio of
/// 1, and so does the end that a trial did not tell. None where no trial told a number.
#[must_use]
pub fn span(effect: Effect) -> Option<(f64, f64)> {
    let ends = TRIALS.iter().filter(|trial| trial.effect == effect);
    let ends = ends.filter_map(|trial| match trial.found {
        Found::Between(low, high) => Some((low, high)),
        Found::UpTo(high) => Some((1.0, high)),
        Found::NoDifference => Some((1.0, 1.0)),
        Found::Less => None,
    });
    ends.reduce(|(low, high), (lower, higher)| (low.min(lower), high.max(higher)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn trials_that_found_nothing_are_among_them() {
        let none = TRIALS.iter().filter(|trial| trial.found == Found::NoDifference).count();
        assert!(none >= 3);
    }

    #[test]
    fn a_number_is_never_given_without_its_band() {
        for trial in &TRIALS {
            let numbered = matches!(trial.found, Found::Between(..) | Found::UpTo(_));
            let (low, high) = span(trial.effect).unwrap();
            assert!(low < high || !numbered, "{trial:?}");
        }
        assert_eq!(span(Effect::AsphaltLife), Some((1.0, 4.0)));
        assert_eq!(span(Effect::DeepStress), Some((1.0, 1.0)));
    }
}
