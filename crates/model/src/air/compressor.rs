//! What an engine-driven piston compressor delivers.

use quantity::{
    AbsolutePressure, GaugePressure, PressureDifference, RotationalSpeed, Volume, VolumeFlow,
};

use super::cubic_table::CubicTable;
use crate::source::Key;

/// Volumetric efficiency with clearance re-expansion.
pub const SOURCE: Key = Key("reciprocating-compressor-textbook");
/// A rating in cfm is swept volume at 1250 rpm.
pub const RATING_SOURCE: Key = Key("tm-5-3805-263-14-p-3");

/// Shaft speed at which ratings are stated.
const RATING_SPEED_RPM: f64 = 1250.0;

/// What the compressor breathes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CompressorInlet {
    /// Ambient air.
    Ambient,
    /// Engine boost, this much above ambient while the engine pulls at full power.
    Boosted {
        /// Boost at full power.
        at_full_power: PressureDifference,
    },
}

/// An engine-driven compressor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compressor {
    /// Swept volume a revolution.
    pub displacement: Volume,
    /// Turns of the compressor for one of the engine.
    pub speed_ratio: f64,
    /// k of the volumetric efficiency: valves, leakage, suction heating.
    pub efficiency: f64,
    /// c: clearance volume over swept volume.
    pub clearance: f64,
    /// n: polytropic exponent of re-expansion.
    pub polytropic: f64,
    /// What it breathes.
    pub inlet: CompressorInlet,
}

/// The governor's two pressures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Governor {
    /// The compressor starts to load under this.
    pub cut_in: GaugePressure,
    /// It stops loading at this.
    pub cut_out: GaugePressure,
}

/// Why a compressor is not one.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum CompressorError {
    /// Nothing is swept.
    #[error("compressor displacement {0} must be above zero")]
    Displacement(Volume),
    /// It does not turn.
    #[error("compressor speed ratio {0} must be above zero")]
    SpeedRatio(f64),
    /// k is out of range.
    #[error("compressor efficiency factor {0} must be above 0 and at most 1")]
    Efficiency(f64),
    /// c is out of range.
    #[error("compressor clearance {0} must be at least 0 and under 0.5 of the swept volume")]
    Clearance(f64),
    /// n is out of range.
    #[error("compressor polytropic exponent {0} must be from 1 to 1.67")]
    Polytropic(f64),
    /// Boost is negative.
    #[error("compressor boost {0} must not be negative")]
    Boost(PressureDifference),
}

impl Compressor {
    /// Checks that the numbers can be a compressor's.
    ///
    /// # Errors
    /// [`CompressorError`] with the first that cannot.
    pub fn check(&self) -> Result<(), CompressorError> {
        if self.displacement.as_m3() <= 0.0 {
            return Err(CompressorError::Displacement(self.displacement));
        }
        if !(self.speed_ratio > 0.0 && self.speed_ratio.is_finite()) {
            return Err(CompressorError::SpeedRatio(self.speed_ratio));
        }
        if !(self.efficiency > 0.0 && self.efficiency <= 1.0) {
            return Err(CompressorError::Efficiency(self.efficiency));
        }
        if !(0.0..0.5).contains(&self.clearance) {
            return Err(CompressorError::Clearance(self.clearance));
        }
        if !(1.0..=1.67).contains(&self.polytropic) {
            return Err(CompressorError::Polytropic(self.polytropic));
        }
        match self.inlet {
            CompressorInlet::Boosted { at_full_power } if at_full_power.as_kpa() < 0.0 => {
                Err(CompressorError::Boost(at_full_power))
            }
            _ => Ok(()),
        }
    }

    /// Pressure it breathes at this share of full engine power.
    ///
    /// # Validity
    /// `engine_load` from 0 to 1; boost is taken as proportional to load.
    #[must_use]
    pub fn inlet_pressure(&self, ambient: AbsolutePressure, engine_load: f64) -> AbsolutePressure {
        match self.inlet {
            CompressorInlet::Ambient => ambient,
            CompressorInlet::Boosted { at_full_power } => ambient + at_full_power * engine_load,
        }
    }

    /// Volumetric efficiency `η_v = k·(1 − c·((p_d/p_i)^(1/n) − 1))`, never below zero.
    ///
    /// # Validity
    /// k 0.9 to 0.97, c 0.04 to 0.06, n 1.25 to 1.35 for brake compressors; fit k and c
    /// to a timed build-up. With `p_d` under `p_i` there is no re-expansion: `η_v` = k.
    ///
    /// # Source
    /// `reciprocating-compressor-textbook`, from memory.
    #[must_use]
    pub fn volumetric_efficiency(&self, p_i: AbsolutePressure, p_d: AbsolutePressure) -> f64 {
        self.efficiency_at(p_d.ratio_to(p_i))
    }

    fn efficiency_at(&self, ratio: f64) -> f64 {
        let (k, c, n) = (self.efficiency, self.clearance, self.polytropic);
        (k * (1.0 - c * (ratio.max(1.0).powf(1.0 / n) - 1.0))).max(0.0)
    }

    /// Free air delivered, counted at ambient pressure, while loaded.
    ///
    /// # Validity
    /// As [`Self::volumetric_efficiency`].
    ///
    /// ```
    /// use model::air::{Compressor, CompressorInlet};
    /// use quantity::{AbsolutePressure, GaugePressure, RotationalSpeed, Volume};
    /// let compressor = Compressor {
    ///     displacement: Volume::from_cm3(299.0),
    ///     speed_ratio: 1.0,
    ///     efficiency: 0.95,
    ///     clearance: 0.05,
    ///     polytropic: 1.3,
    ///     inlet: CompressorInlet::Ambient,
    /// };
    /// let ambient = AbsolutePressure::from_psi(14.696);
    /// let back = GaugePressure::from_psi(120.0).to_absolute(ambient);
    /// let fad = compressor.free_air_delivery(RotationalSpeed::from_rpm(1600.0), ambient, 0.0, back);
    /// assert!((fad.as_l_per_min() - 352.0).abs() < 0.5);
    /// ```
    #[must_use]
    pub fn free_air_delivery(
        &self,
        engine_speed: RotationalSpeed,
        ambient: AbsolutePressure,
        engine_load: f64,
        back: AbsolutePressure,
    ) -> VolumeFlow {
        let inlet = self.inlet_pressure(ambient, engine_load);
        let swept = self.displacement.as_m3() * engine_speed.as_per_s() * self.speed_ratio;
        let delivered = swept * self.volumetric_efficiency(inlet, back) * inlet.ratio_to(ambient);
        VolumeFlow::from_m3_per_s(delivered)
    }
}

/// Swept volume of a compressor from its rating, which is swept volume at 1250 rpm.
///
/// # Source
/// `tm-5-3805-263-14-p-3`
#[must_use]
pub fn displacement_of_rating(rating: VolumeFlow) -> Volume {
    Volume::from_m3(rating.as_m3_per_s() * 60.0 / RATING_SPEED_RPM)
}

/// `η_v` tabulated over the pressure ratio, because a power costs too much in a time step.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct EfficiencyCurve(CubicTable);

impl EfficiencyCurve {
    const HIGHEST_RATIO: f64 = 33.0;
    const CELLS: usize = 128;

    pub(super) fn new(compressor: &Compressor) -> Self {
        let nodes: Vec<_> = (0..=Self::CELLS)
            .map(|node| {
                let ratio = 1.0 + (Self::HIGHEST_RATIO - 1.0) * node as f64 / Self::CELLS as f64;
                let (k, c, n) =
                    (compressor.efficiency, compressor.clearance, compressor.polytropic);
                let power = ratio.powf(1.0 / n);
                (k * (1.0 - c * (power - 1.0)), -k * c * power / (n * ratio))
            })
            .collect();
        Self(CubicTable::new(1.0, Self::HIGHEST_RATIO, &nodes))
    }

    /// Efficiency and its slope against the pressure ratio.
    #[inline]
    pub(super) fn at(&self, ratio: f64) -> (f64, f64) {
        if ratio < 1.0 {
            return (self.0.at(1.0).0, 0.0);
        }
        let (efficiency, slope) = self.0.at(ratio);
        if efficiency > 0.0 { (efficiency, slope) } else { (0.0, 0.0) }
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;

    pub(crate) fn fixture(displacement: Volume) -> Compressor {
        Compressor {
            displacement,
            speed_ratio: 1.0,
            efficiency: 0.95,
            clearance: 0.05,
            polytropic: 1.3,
            inlet: CompressorInlet::Ambient,
        }
    }

    const AMBIENT: AbsolutePressure = AbsolutePressure::from_psi(14.696);

    fn back(psi: f64) -> AbsolutePressure {
        GaugePressure::from_psi(psi).to_absolute(AMBIENT)
    }

    #[test]
    fn worked_volumetric_efficiency() {
        let compressor = fixture(Volume::from_cm3(299.0));
        for (psi, eta) in
            [(0.0, 0.95), (60.0, 0.832), (90.0, 0.782), (120.0, 0.736), (150.0, 0.693)]
        {
            let got = compressor.volumetric_efficiency(AMBIENT, back(psi));
            assert!((got - eta).abs() < 6e-4, "{got} at {psi} psi");
        }
    }

    // Rating from TM 5-3805-263-14&P-3; delivery from the efficiency formula.
    #[test]
    fn worked_delivery_of_rated_compressors() {
        for (cfm, cc, rpm, at_90, at_120) in [
            (12.0, 272.0, 700.0, 149.0, 140.0),
            (13.2, 299.0, 1250.0, 292.0, 275.0),
            (15.9, 360.0, 1600.0, 451.0, 424.0),
            (18.7, 424.0, 2000.0, 663.0, 624.0),
        ] {
            let swept = displacement_of_rating(VolumeFlow::from_cfm(cfm));
            assert!((swept.as_cm3() - cc).abs() < 0.5);
            let compressor = fixture(swept);
            for (psi, l_min) in [(90.0, at_90), (120.0, at_120)] {
                let speed = RotationalSpeed::from_rpm(rpm);
                let fad = compressor.free_air_delivery(speed, AMBIENT, 0.0, back(psi));
                assert!((fad.as_l_per_min() - l_min).abs() < 1.0, "{cfm} cfm at {rpm}: {fad}");
            }
        }
    }

    #[test]
    fn boost_helps_only_while_the_engine_pulls() {
        let boosted = Compressor {
            inlet: CompressorInlet::Boosted { at_full_power: PressureDifference::from_kpa(100.0) },
            ..fixture(Volume::from_cm3(299.0))
        };
        let speed = RotationalSpeed::from_rpm(1600.0);
        let coasting = boosted.free_air_delivery(speed, AMBIENT, 0.0, back(110.0));
        let pulling = boosted.free_air_delivery(speed, AMBIENT, 1.0, back(110.0));
        let plain =
            fixture(Volume::from_cm3(299.0)).free_air_delivery(speed, AMBIENT, 1.0, back(110.0));
        assert_eq!(coasting, plain);
        assert!(pulling / plain > 2.0);
    }

    #[test]
    fn the_tabulated_efficiency_is_the_efficiency() {
        let compressor = fixture(Volume::from_cm3(299.0));
        let curve = EfficiencyCurve::new(&compressor);
        for k in 0..3000 {
            let ratio = 0.5 + f64::from(k) * 0.01;
            assert!(
                (curve.at(ratio).0 - compressor.efficiency_at(ratio)).abs() < 2e-6,
                "at {ratio}"
            );
        }
    }

    #[test]
    fn impossible_compressors_are_refused() {
        let good = fixture(Volume::from_cm3(299.0));
        assert_eq!(good.check(), Ok(()));
        assert!(Compressor { efficiency: 1.2, ..good }.check().is_err());
        assert!(Compressor { clearance: f64::NAN, ..good }.check().is_err());
        assert!(Compressor { polytropic: 0.9, ..good }.check().is_err());
        assert!(Compressor { displacement: Volume::ZERO, ..good }.check().is_err());
    }
}
