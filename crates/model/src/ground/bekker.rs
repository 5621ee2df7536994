//! Pressure and sinkage of terrain plates: an expert's second view on sand and on wide soft tires.

use quantity::{Length, Mass, Stress};

use crate::source::Key;

/// Pressure-sinkage, flattening of a tire, thrust over slip.
pub const BEKKER: Key = Key("bekker-wong");
/// Values of terrains.
pub const TERRAIN_VALUES: Key = Key("wong-terrain-values");

/// Values of one terrain, in kilonewtons and meters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Terrain {
    /// Soil.
    pub soil: &'static str,
    /// Who measured it.
    pub origin: &'static str,
    /// Moisture in percent of the dry weight, where told.
    pub moisture_pct: Option<f64>,
    n: f64,
    k_c: f64,
    k_phi: f64,
    cohesion: f64,
    friction_deg: f64,
}

macro_rules! terrain {
    ($soil:literal, $origin:literal, $moisture:expr, $n:literal, $kc:literal, $kphi:literal, $c:literal, $phi:literal) => {
        Terrain {
            soil: $soil,
            origin: $origin,
            moisture_pct: $moisture,
            n: $n,
            k_c: $kc,
            k_phi: $kphi,
            cohesion: $c,
            friction_deg: $phi,
        }
    };
}

/// Terrains whose values were read, row by row, in a copy of a textbook's table.
pub const TERRAINS: [Terrain; 21] = [
    terrain!("dry sand", "LLL", Some(0.0), 1.1, 0.99, 1528.43, 1.04, 28.0),
    terrain!("sandy loam", "LLL", Some(15.0), 0.7, 5.27, 1515.04, 1.72, 29.0),
    terrain!("sandy loam", "LLL", Some(22.0), 0.2, 2.56, 43.12, 1.38, 38.0),
    terrain!(
        "sandy loam, Michigan",
        "Strong & Buchele",
        Some(11.0),
        0.9,
        52.53,
        1127.97,
        4.83,
        20.0
    ),
    terrain!(
        "sandy loam, Michigan",
        "Strong & Buchele",
        Some(23.0),
        0.4,
        11.42,
        808.96,
        9.65,
        35.0
    ),
    terrain!("sandy loam", "Hanamoto", Some(26.0), 0.3, 2.79, 141.11, 13.79, 22.0),
    terrain!("sandy loam", "Hanamoto", Some(32.0), 0.5, 0.77, 51.91, 5.17, 11.0),
    terrain!("clayey soil", "Thailand", Some(38.0), 0.5, 13.19, 692.15, 4.14, 13.0),
    terrain!("clayey soil", "Thailand", Some(55.0), 0.7, 16.03, 1262.53, 2.07, 10.0),
    terrain!("heavy clay", "WES", Some(25.0), 0.13, 12.7, 1555.95, 68.95, 34.0),
    terrain!("heavy clay", "WES", Some(40.0), 0.11, 1.84, 103.27, 20.69, 6.0),
    terrain!("lean clay", "WES", Some(22.0), 0.2, 16.43, 1724.69, 68.95, 20.0),
    terrain!("lean clay", "WES", Some(32.0), 0.15, 1.52, 119.61, 13.79, 11.0),
    terrain!("LETE sand", "Wong", None, 0.79, 102.0, 5301.0, 1.3, 31.1),
    terrain!("upland sandy loam", "Wong", Some(51.0), 1.1, 74.6, 2080.0, 3.3, 33.7),
    terrain!("Rubicon sandy loam", "Wong", Some(43.0), 0.66, 6.9, 752.0, 3.7, 29.8),
    terrain!("North Gower clayey loam", "Wong", Some(46.0), 0.73, 41.6, 2471.0, 6.1, 26.6),
    terrain!("Grenville loam", "Wong", Some(24.0), 1.01, 0.06, 5880.0, 3.1, 29.8),
    terrain!("snow", "US (LLL)", None, 1.6, 4.37, 196.72, 1.03, 19.7),
    terrain!("snow", "Sweden", None, 1.44, 10.55, 66.08, 6.0, 20.7),
    terrain!("snow", "US (Harrison)", None, 1.6, 2.49, 245.90, 0.62, 23.2),
];

impl Terrain {
    /// The first terrain of this name and moisture.
    pub fn named(soil: &str, moisture_pct: Option<f64>) -> Option<&'static Self> {
        TERRAINS.iter().find(|t| t.soil == soil && t.moisture_pct == moisture_pct)
    }
}

/// Why there is no sinkage.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum BekkerError {
    /// No wheel.
    #[error(
        "a wheel {width} wide and {diameter} high under {load} pressing {pressure} is none; all must be above zero"
    )]
    Wheel {
        /// Load.
        load: Mass,
        /// Contact pressure on hard ground.
        pressure: Stress,
        /// Width.
        width: Length,
        /// Diameter.
        diameter: Length,
    },
    /// No slip or no shear length.
    #[error(
        "a slip of {slip} with a shear length of {shear_length} gives no thrust; give a slip of 0.01 to 1 and a length above zero"
    )]
    Shear {
        /// Slip offered.
        slip: f64,
        /// Shear length offered.
        shear_length: Length,
    },
}

/// A tire as this method sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlateWheel {
    /// Load.
    pub load: Mass,
    /// Inflation and carcass pressure together: what the tire presses with while it is flat.
    pub pressure: Stress,
    /// Width.
    pub width: Length,
    /// Diameter.
    pub diameter: Length,
}

/// How a tire stands in a terrain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlateSinkage {
    /// Depth.
    pub depth: Length,
    /// Resistance of pressing the soil down, over the load.
    pub resistance: f64,
    /// Pressure from which the tire no longer flattens.
    pub critical_pressure: Stress,
    /// Whether the tire is stiffer than the soil, so that its pressure has no effect at all.
    pub rigid: bool,
    /// Whether it sinks more than a sixth of its diameter, where the method ends.
    pub extrapolated: bool,
}

/// Sinkage and compaction resistance: `p = (k_c/b_s + k_φ) z^n`, flat while the pressure is under
/// `p_gcr = K^(1/(2n+1)) [3W/((3-n) b √d)]^(2n/(2n+1))`, else a rigid wheel.
///
/// # Validity
/// Not for highway truck tires as a default: at their pressures the rigid branch governs in most terrains, with no effect
/// of pressure. For sand and wide low-pressure tires. Over a sixth of the diameter it is marked.
///
/// # Errors
/// [`BekkerError::Wheel`] unless everything is above zero.
///
/// # Source
/// [`BEKKER`], from memory; [`TERRAIN_VALUES`], read second-hand.
pub fn sinkage(wheel: PlateWheel, terrain: &Terrain) -> Result<PlateSinkage, BekkerError> {
    let PlateWheel { load, pressure, width, diameter } = wheel;
    let lengths = width > Length::ZERO && diameter > Length::ZERO;
    if load <= Mass::ZERO || pressure <= Stress::ZERO || !lengths {
        return Err(BekkerError::Wheel { load, pressure, width, diameter });
    }
    let (w, p) = (load.weight().as_kn(), pressure.as_kpa());
    let (b, d, n) = (width.as_m(), diameter.as_m(), terrain.n);
    let k = |side: f64| terrain.k_c / side + terrain.k_phi;
    let k_flat = k(b.min(w / (p * b)));
    let by_load = 3.0 * w / ((3.0 - n) * b * d.sqrt());
    let p_gcr = k_flat.powf(1.0 / (2.0 * n + 1.0)) * by_load.powf(2.0 * n / (2.0 * n + 1.0));
    let rigid = p >= p_gcr;
    let (k, z) = if rigid {
        (k(b), (by_load / k(b)).powf(2.0 / (2.0 * n + 1.0)))
    } else {
        (k_flat, (p / k_flat).powf(1.0 / n))
    };
    Ok(PlateSinkage {
        depth: Length::from_m(z),
        resistance: b * k * z.powf(n + 1.0) / (n + 1.0) / w,
        critical_pressure: Stress::from_kpa(p_gcr),
        rigid,
        extrapolated: z > d / 6.0,
    })
}

/// Thrust of a flat tire over its load at a slip:
/// `F = (A c + W tan φ) [1 - (k_j/(s l)) (1 - e^(-s l/k_j))]`.
///
/// # Validity
/// Contact of full width at the pressure given. Shear lengths: about 6 mm clay, 10 mm firm sand, 25 mm loose
/// sand, 25 to 50 mm snow.
///
/// # Errors
/// [`BekkerError`]: something not above zero, a slip outside 0.01 to 1.
///
/// # Source
/// [`BEKKER`], from memory; [`TERRAIN_VALUES`], read second-hand.
pub fn thrust(
    wheel: PlateWheel,
    terrain: &Terrain,
    slip: f64,
    shear_length: Length,
) -> Result<f64, BekkerError> {
    let PlateWheel { load, pressure, width, diameter } = wheel;
    if load <= Mass::ZERO || pressure <= Stress::ZERO || width <= Length::ZERO {
        return Err(BekkerError::Wheel { load, pressure, width, diameter });
    }
    if !(0.01..=1.0).contains(&slip) || shear_length <= Length::ZERO {
        return Err(BekkerError::Shear { slip, shear_length });
    }
    let (w, b) = (load.weight().as_kn(), width.as_m());
    let area = w / pressure.as_kpa();
    let l = area / b;
    let x = slip * l / shear_length.as_m();
    let full = area * terrain.cohesion + w * terrain.friction_deg.to_radians().tan();
    Ok(full * (1.0 - (1.0 - (-x).exp()) / x) / w)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::Force;

    use super::*;

    fn wheel(kpa: f64) -> PlateWheel {
        PlateWheel {
            load: Force::from_kn(20.0).as_mass(),
            pressure: Stress::from_kpa(kpa),
            width: Length::from_m(0.28),
            diameter: Length::from_m(1.05),
        }
    }

    fn terrain(soil: &str, moisture: Option<f64>) -> &'static Terrain {
        Terrain::named(soil, moisture).unwrap()
    }

    // 20 kN, 0.28 by 1.05 m, by hand: sinkage in mm at 690, 414 and 276 kPa.
    #[test]
    fn worked_sinkages() {
        for (soil, moisture, depths) in [
            ("LETE sand", None, [42.0, 35.0, 22.0]),
            ("Grenville loam", Some(24.0), [70.0, 70.0, 48.0]),
            ("North Gower clayey loam", Some(46.0), [66.0, 66.0, 46.0]),
            ("dry sand", Some(0.0), [193.0, 193.0, 193.0]),
            ("lean clay", Some(32.0), [440.0, 440.0, 440.0]),
        ] {
            for (kpa, mm) in [690.0, 414.0, 276.0].into_iter().zip(depths) {
                let found = sinkage(wheel(kpa), terrain(soil, moisture)).unwrap();
                assert!((found.depth.as_mm() / mm - 1.0).abs() < 0.015, "{soil} {kpa} {found:?}");
            }
        }
    }

    #[test]
    fn worked_resistances() {
        let sand = terrain("LETE sand", None);
        for (kpa, resistance) in [(690.0, 0.15), (414.0, 0.11), (276.0, 0.05)] {
            let found = sinkage(wheel(kpa), sand).unwrap();
            assert!((found.resistance - resistance).abs() < 0.006, "{found:?}");
        }
        let clay = sinkage(wheel(276.0), terrain("lean clay", Some(32.0))).unwrap();
        assert!((clay.resistance - 0.59).abs() < 0.01 && clay.rigid && clay.extrapolated);
    }

    #[test]
    fn worked_thrusts() {
        let of = |soil, moisture, kpa, mm| {
            thrust(wheel(kpa), terrain(soil, moisture), 0.2, Length::from_mm(mm)).unwrap()
        };
        assert!((of("LETE sand", None, 690.0, 12.0) - 0.317).abs() < 0.001);
        assert!((of("LETE sand", None, 276.0, 12.0) - 0.469).abs() < 0.001);
        assert!((of("heavy clay", Some(40.0), 690.0, 6.0) - 0.097).abs() < 0.001);
        assert!((of("heavy clay", Some(40.0), 276.0, 6.0) - 0.159).abs() < 0.001);
    }

    #[test]
    fn no_wheel_is_refused() {
        let sand = terrain("LETE sand", None);
        assert!(sinkage(PlateWheel { load: Mass::ZERO, ..wheel(300.0) }, sand).is_err());
        assert!(sinkage(PlateWheel { width: Length::ZERO, ..wheel(300.0) }, sand).is_err());
        assert!(thrust(wheel(300.0), sand, 0.0, Length::from_mm(10.0)).is_err());
        assert!(thrust(wheel(300.0), sand, 0.2, Length::ZERO).is_err());
        assert_eq!(Terrain::named("moon dust", None), None);
    }

    proptest! {
        #[test]
        fn lower_pressure_never_sinks_deeper(soil in 0usize..21, kpa in 60.0..800.0f64, less in 0.5..0.99f64) {
            let terrain = &TERRAINS[soil];
            let (hard, soft) =
                (sinkage(wheel(kpa), terrain).unwrap(), sinkage(wheel(kpa * less), terrain).unwrap());
            // The branches meet within what the change of the smaller side makes.
            prop_assert!(soft.depth.as_m() <= hard.depth.as_m() * 1.1);
        }

        #[test]
        fn a_rigid_wheel_does_not_feel_its_pressure(soil in 0usize..21, kpa in 700.0..1000.0f64) {
            let terrain = &TERRAINS[soil];
            let (one, other) = (sinkage(wheel(kpa), terrain).unwrap(), sinkage(wheel(kpa + 50.0), terrain).unwrap());
            if one.rigid && other.rigid {
                prop_assert_eq!(one.depth, other.depth);
            }
        }

        #[test]
        fn thrust_grows_with_slip(soil in 0usize..21, slip in 0.02..0.9f64) {
            let at = |s| thrust(wheel(300.0), &TERRAINS[soil], s, Length::from_mm(10.0)).unwrap();
            prop_assert!(at(slip + 0.05) > at(slip));
        }
    }
}
