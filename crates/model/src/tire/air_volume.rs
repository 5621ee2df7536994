//! Air volume of a tire from its dimensions, until it is measured on the truck.

use std::f64::consts::PI;

use quantity::{Length, Volume};

use super::Tire;
use crate::source::{Citation, Key, Standing};

/// Two estimates of the air volume from outside dimensions.
pub const VOLUME_ESTIMATE: Key = Key("tire-air-volume-estimate");

/// How far an estimate may be off, as a share.
pub const TOLERANCE: f64 = 0.10;

/// Thickness of the casing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CasingThickness {
    /// At the sidewall.
    pub sidewall: Length,
    /// At the crown, tread included.
    pub crown: Length,
}

impl CasingThickness {
    /// A truck tire of usual size: 11 mm and 31 mm.
    ///
    /// # Source
    /// [`VOLUME_ESTIMATE`], from memory.
    pub const TRUCK: Self = Self { sidewall: Length::from_mm(11.0), crown: Length::from_mm(31.0) };
}

/// An estimated air volume.
#[derive(Debug, Clone, PartialEq)]
pub struct AirVolume {
    /// The volume.
    pub value: Volume,
    /// Lowest credible: the value less [`TOLERANCE`].
    pub low: Volume,
    /// Highest credible: the value and [`TOLERANCE`].
    pub high: Volume,
    /// Which estimate.
    pub citation: Citation,
}

/// Dimensions that leave no air.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error(
    "a section of {section_width} on a diameter of {diameter} over a rim of {rim_diameter} leaves no \
     room for air inside the casing; check the dimensions"
)]
pub struct NoRoomForAir {
    /// Section width.
    pub section_width: Length,
    /// Overall diameter.
    pub diameter: Length,
    /// Rim diameter.
    pub rim_diameter: Length,
}

/// Air volume from the inside section: `2π R_c · 0.83 (S - 2 t_s) h`, with
/// `h = (D/2 - t_c) - D_r/2` and `R_c = D_r/2 + h/2`.
///
/// # Validity
/// Radial truck and earthmover tires, ±10 %. No published measured truck volume was found;
/// better is a fill from a known tank. Deflection takes less than 3 %.
///
/// # Errors
/// [`NoRoomForAir`].
///
/// # Source
/// [`VOLUME_ESTIMATE`], equation A5.1.
///
/// ```
/// use model::tire::air_volume::{CasingThickness, from_casing};
/// use quantity::Length;
/// let mm = Length::from_mm;
/// let casing = CasingThickness { sidewall: mm(10.0), crown: mm(30.0) };
/// let found = from_casing(mm(279.0), mm(1054.0), mm(571.5), casing)?;
/// assert!((found.value.as_l() - 112.0).abs() < 0.5);
/// # Ok::<(), model::tire::air_volume::NoRoomForAir>(())
/// ```
pub fn from_casing(
    section_width: Length,
    diameter: Length,
    rim_diameter: Length,
    casing: CasingThickness,
) -> Result<AirVolume, NoRoomForAir> {
    let s = section_width.as_m();
    let (d, d_r) = (diameter.as_m(), rim_diameter.as_m());
    let (t_s, t_c) = (casing.sidewall.as_m(), casing.crown.as_m());
    let h = (d / 2.0 - t_c) - d_r / 2.0;
    let r_c = d_r / 2.0 + h / 2.0;
    let inside = s - 2.0 * t_s;
    if h <= 0.0 || inside <= 0.0 || d_r <= 0.0 {
        return Err(NoRoomForAir { section_width, diameter, rim_diameter });
    }
    Ok(estimate(2.0 * PI * r_c * 0.83 * inside * h, "inside section (A5.1)"))
}

/// Air volume as a share of the full ring: `0.65 · 2π (d/2 + H/2) S H`.
///
/// # Validity
/// As [`from_casing`]; factor 0.60 to 0.70. It agrees with the other estimate within 3 %, though
/// both rest on recalled dimensions.
///
/// # Errors
/// [`NoRoomForAir`].
///
/// # Source
/// [`VOLUME_ESTIMATE`], equation 2.1.
pub fn from_ring(
    section_width: Length,
    diameter: Length,
    rim_diameter: Length,
) -> Result<AirVolume, NoRoomForAir> {
    let c_v = 0.65;
    let (s, d) = (section_width.as_m(), rim_diameter.as_m());
    let h = (diameter.as_m() - d) / 2.0;
    if h <= 0.0 || s <= 0.0 || d <= 0.0 {
        return Err(NoRoomForAir { section_width, diameter, rim_diameter });
    }
    Ok(estimate(c_v * 2.0 * PI * (d / 2.0 + h / 2.0) * s * h, "share of the ring (2.1)"))
}

/// Air volume of a tire model by its dimensions, whatever volume the survey gives.
///
/// # Errors
/// [`NoRoomForAir`].
///
/// # Source
/// [`VOLUME_ESTIMATE`], equation 2.1.
pub fn estimated_for(tire: &Tire) -> Result<AirVolume, NoRoomForAir> {
    from_ring(tire.section_width, tire.diameter, tire.rim_diameter)
}

fn estimate(m3: f64, how: &str) -> AirVolume {
    let value = Volume::from_m3(m3);
    AirVolume {
        value,
        low: value * (1.0 - TOLERANCE),
        high: value * (1.0 + TOLERANCE),
        citation: Citation::of(VOLUME_ESTIMATE, Standing::FromMemory).at(how),
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tire::fixture;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    // Both estimates worked by hand: diameter, width, rim, sidewall, crown; liters by either way.
    const SIZES: [(f64, f64, f64, f64, f64, f64); 5] = [
        (1054.0, 279.0, 571.5, 10.0, 30.0, 112.0),
        (1084.0, 300.0, 571.5, 11.0, 31.0, 130.0),
        (1076.0, 312.0, 571.5, 11.0, 31.0, 133.0),
        (1072.0, 389.0, 571.5, 11.0, 31.0, 166.0),
        (1226.0, 315.0, 609.6, 12.0, 34.0, 184.0),
    ];

    #[test]
    fn worked_inside_section() {
        for (d, s, rim, sidewall, crown, liters) in SIZES {
            let casing = CasingThickness { sidewall: mm(sidewall), crown: mm(crown) };
            let found = from_casing(mm(s), mm(d), mm(rim), casing).unwrap();
            assert!((found.value.as_l() - liters).abs() < 0.6, "{d}: {}", found.value.as_l());
        }
    }

    #[test]
    fn worked_ring_agrees_within_four_percent() {
        for (d, s, rim, _, _, liters) in SIZES {
            let found = from_ring(mm(s), mm(d), mm(rim)).unwrap();
            assert!((found.value.as_l() / liters - 1.0).abs() < 0.04, "{d}");
            assert!(found.low.as_l() < liters && liters < found.high.as_l());
        }
        let tire = estimated_for(&fixture::tire_11r22_5()).unwrap();
        assert!((tire.value.as_l() - 111.0).abs() < 0.6);
    }

    // Water ballast tables imply about 560 l for an 18.4-38 (from memory; 1750 mm, 467 mm, 965 mm).
    #[test]
    fn regress_water_ballast_of_a_farm_tire() {
        let casing = CasingThickness { sidewall: mm(8.0), crown: mm(30.0) };
        let found = from_casing(mm(467.0), mm(1750.0), mm(965.2), casing).unwrap();
        assert!(found.low.as_l() < 560.0 && 560.0 < found.high.as_l(), "{}", found.value.as_l());
    }

    #[test]
    fn no_room_is_said() {
        assert!(from_ring(mm(279.0), mm(500.0), mm(571.5)).is_err());
        assert!(from_casing(mm(20.0), mm(1054.0), mm(571.5), CasingThickness::TRUCK).is_err());
    }

    proptest! {
        #[test]
        fn a_larger_tire_holds_more(s in 200.0..500.0f64, d in 900.0..1300.0f64, more in 1.0..50.0f64) {
            let at = |s, d| from_ring(mm(s), mm(d), mm(571.5)).unwrap().value;
            prop_assert!(at(s + more, d) > at(s, d));
            prop_assert!(at(s, d + more) > at(s, d));
        }
    }
}
