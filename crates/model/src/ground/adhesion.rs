//! Grip on hard and on slippery surfaces: the grade a combination climbs, and the one its brakes hold.

use super::Estimate;
use crate::source::{Citation, Key, Standing};

/// Adhesion of vehicles in general.
pub const GENERAL: Key = Key("noon-1994");
/// Trucks on packed snow and ice.
pub const SNOW_AND_ICE: Key = Key("navin-1996");
/// Crushed-stone and earth roads, dry and wet.
pub const UNPAVED: Key = Key("earth-road-adhesion");
/// Haul-road handbooks.
pub const HANDBOOKS: Key = Key("haul-road-handbooks");

/// What the wheels grip.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum GripSurface {
    /// Asphalt, dry.
    DryAsphalt,
    /// Asphalt, wet.
    WetAsphalt,
    /// Concrete, dry.
    DryConcrete,
    /// Concrete, wet.
    WetConcrete,
    /// Crushed stone or gravel, dry.
    DryGravel,
    /// Crushed stone or gravel, wet.
    WetGravel,
    /// Earth or clay road, dry.
    DryEarth,
    /// Earth or clay road, wet.
    WetEarth,
    /// Grass, wet.
    WetGrass,
    /// Sand, dry.
    DrySand,
    /// Sand, wet.
    WetSand,
    /// Packed snow.
    PackedSnow,
    /// Ice.
    Ice,
}

/// Whether the wheels drive or brake.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum WheelForce {
    /// They drive.
    Driving,
    /// They brake.
    Braking,
}

/// Coefficient of adhesion of a surface; plan by the low end.
///
/// # Validity
/// Published numbers differ up to twofold, most on wet earth; a number measured on the spot goes
/// before these. No gain from lower pressure is counted on firm gravel, none was published; on ice and hard snow
/// lower pressure is not for grip at all.
///
/// # Source
/// [`GENERAL`], [`SNOW_AND_ICE`] and [`UNPAVED`], read; sand by [`HANDBOOKS`], from memory.
pub fn adhesion(surface: GripSurface, force: WheelForce) -> Estimate<f64> {
    use GripSurface::{
        DryAsphalt, DryConcrete, DryEarth, DryGravel, DrySand, Ice, PackedSnow, WetAsphalt,
        WetConcrete, WetEarth, WetGrass, WetGravel, WetSand,
    };
    use WheelForce::{Braking, Driving};
    let (low, value, high, key) = match (surface, force) {
        (DryAsphalt, _) => (0.65, 0.65, 0.65, GENERAL),
        (WetAsphalt, _) => (0.50, 0.50, 0.50, GENERAL),
        (DryConcrete, _) => (0.75, 0.75, 0.75, GENERAL),
        (WetConcrete, _) => (0.60, 0.60, 0.60, GENERAL),
        // One source has 0.35 for gravel and dirt, whether dry or wet; the other is far higher.
        (DryGravel, _) => (0.35, 0.35, 0.70, GENERAL),
        (WetGravel, _) => (0.35, 0.35, 0.50, GENERAL),
        (DryEarth, _) => (0.35, 0.50, 0.60, UNPAVED),
        (WetEarth, _) => (0.15, 0.20, 0.45, UNPAVED),
        (WetGrass, _) => (0.20, 0.20, 0.20, GENERAL),
        (DrySand, _) => (0.20, 0.20, 0.20, HANDBOOKS),
        (WetSand, _) => (0.40, 0.40, 0.40, HANDBOOKS),
        (PackedSnow, Driving) => (0.15, 0.15, 0.35, SNOW_AND_ICE),
        (PackedSnow, Braking) => (0.20, 0.23, 0.35, SNOW_AND_ICE),
        (Ice, Driving) => (0.04, 0.04, 0.15, SNOW_AND_ICE),
        (Ice, Braking) => (0.05, 0.06, 0.15, SNOW_AND_ICE),
    };
    let standing = if key == HANDBOOKS { Standing::FromMemory } else { Standing::Read };
    Estimate { value, low, high, extrapolated: false, citation: Citation::of(key, standing) }
}

/// Why there is no grade.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum AdhesionError {
    /// No such adhesion.
    #[error("an adhesion of {mu} is outside 0.01 to 1.2")]
    Adhesion {
        /// Coefficient offered.
        mu: f64,
    },
    /// No such share of weight.
    #[error("a share of {share} of the weight is outside zero to one")]
    Share {
        /// Share offered.
        share: f64,
    },
    /// No such resistance.
    #[error(
        "a rolling resistance of {coefficient} is outside 0 to 0.5; give it as a ratio, such as 0.02"
    )]
    Resistance {
        /// Coefficient offered.
        coefficient: f64,
    },
    /// No such reserve.
    #[error(
        "a braking reserve of {reserve} g is outside 0 to 0.8; give it as a share of gravity, such as 0.1"
    )]
    Reserve {
        /// Reserve offered.
        reserve: f64,
    },
}

/// Steepest grade that the grip of the driven wheels climbs at a steady crawl:
/// `tan θ = μ w_driven - RR`; below zero the combination does not move on the level.
///
/// # Validity
/// Hard or slippery surface; straight; weight shares as on the level, so pulling axles behind the
/// middle have a little more on a climb. Engine power may stop it sooner.
///
/// # Errors
/// [`AdhesionError`] for a coefficient or share that is none.
///
/// # Source
/// `wheel-by-wheel-balance`.
///
/// ```
/// use model::ground::adhesion::steepest_climb;
/// assert!((steepest_climb(0.35, 0.4, 0.02)? - 0.12).abs() < 1e-12);
/// # Ok::<(), model::ground::adhesion::AdhesionError>(())
/// ```
pub fn steepest_climb(
    mu: f64,
    driven_share: f64,
    rolling_resistance: f64,
) -> Result<f64, AdhesionError> {
    check(mu, driven_share)?;
    if !(0.0..=0.5).contains(&rolling_resistance) {
        return Err(AdhesionError::Resistance { coefficient: rolling_resistance });
    }
    Ok(mu * driven_share - rolling_resistance)
}

/// Steepest grade on which the grip of the braked wheels still slows the combination by a
/// reserve: `tan θ = μ w_braked - a/g`; below zero there is none.
///
/// # Validity
/// Grip only: heat of the brakes, jackknifing and trailer swing are not looked at, and rolling resistance is
/// not counted as help.
///
/// # Errors
/// [`AdhesionError`] for a coefficient, share or reserve that is none.
///
/// # Source
/// `wheel-by-wheel-balance`.
pub fn steepest_descent(
    mu: f64,
    braked_share: f64,
    reserve_over_gravity: f64,
) -> Result<f64, AdhesionError> {
    check(mu, braked_share)?;
    if !(0.0..=0.8).contains(&reserve_over_gravity) {
        return Err(AdhesionError::Reserve { reserve: reserve_over_gravity });
    }
    Ok(mu * braked_share - reserve_over_gravity)
}

fn check(mu: f64, share: f64) -> Result<(), AdhesionError> {
    if !(0.01..=1.2).contains(&mu) {
        return Err(AdhesionError::Adhesion { mu });
    }
    if !(0.0..=1.0).contains(&share) {
        return Err(AdhesionError::Share { share });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    const ALL: [GripSurface; 13] = [
        GripSurface::DryAsphalt,
        GripSurface::WetAsphalt,
        GripSurface::DryConcrete,
        GripSurface::WetConcrete,
        GripSurface::DryGravel,
        GripSurface::WetGravel,
        GripSurface::DryEarth,
        GripSurface::WetEarth,
        GripSurface::WetGrass,
        GripSurface::DrySand,
        GripSurface::WetSand,
        GripSurface::PackedSnow,
        GripSurface::Ice,
    ];

    // Noon 1994; Navin and others 1996 (straight truck at -6 °C).
    #[test]
    fn table_rows() {
        let of = |surface, force| adhesion(surface, force).value;
        assert!((of(GripSurface::DryGravel, WheelForce::Driving) - 0.35).abs() < 1e-12);
        assert!((of(GripSurface::PackedSnow, WheelForce::Driving) - 0.15).abs() < 1e-12);
        assert!((of(GripSurface::PackedSnow, WheelForce::Braking) - 0.23).abs() < 1e-12);
        assert!((of(GripSurface::Ice, WheelForce::Driving) - 0.04).abs() < 1e-12);
        assert!((of(GripSurface::Ice, WheelForce::Braking) - 0.06).abs() < 1e-12);
    }

    #[test]
    fn every_span_holds_its_value() {
        for surface in ALL {
            for force in [WheelForce::Driving, WheelForce::Braking] {
                let found = adhesion(surface, force);
                assert!(found.low <= found.value && found.value <= found.high, "{surface:?}");
            }
        }
    }

    #[test]
    fn what_is_no_grip_is_refused() {
        assert!(steepest_climb(0.0, 0.4, 0.02).is_err());
        assert!(steepest_climb(0.35, 1.4, 0.02).is_err());
        assert!(steepest_climb(0.35, 0.4, 2.0).is_err());
        assert!(steepest_descent(0.35, 0.9, 5.0).is_err());
        assert!(steepest_descent(f64::NAN, 0.9, 0.1).is_err());
    }

    proptest! {
        #[test]
        fn more_grip_and_more_drive_climb_more(mu in 0.05..0.9f64, share in 0.1..0.9f64, more in 0.001..0.1f64) {
            let at = |mu, share| steepest_climb(mu, share, 0.02).unwrap();
            prop_assert!(at(mu + more, share) > at(mu, share));
            prop_assert!(at(mu, share + more) > at(mu, share));
        }

        #[test]
        fn a_larger_reserve_leaves_a_gentler_descent(mu in 0.05..0.9f64, reserve in 0.0..0.6f64, more in 0.001..0.1f64) {
            let at = |reserve| steepest_descent(mu, 0.9, reserve).unwrap();
            prop_assert!(at(reserve + more) < at(reserve));
        }
    }
}
