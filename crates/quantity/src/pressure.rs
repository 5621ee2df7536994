//! Pressures that must not be mixed: absolute, gauge as read, cold inflation, and differences.

use crate::kind::{kind, linear};

/// Kilopascals in one psi: lbf/in² from the exact pound, inch and standard gravity.
pub(crate) const KPA_PER_PSI: f64 = 6.894757293168361;

kind! {
    /// Pressure above vacuum; the only kind the gas law takes.
    ///
    /// Gauge pressure does not convert to it without naming the ambient pressure:
    /// ```compile_fail
    /// let p: quantity::AbsolutePressure = quantity::GaugePressure::from_kpa(700.0).into();
    /// ```
    AbsolutePressure ("absolute pressure") {
        "kPa" = from_kpa, try_from_kpa, as_kpa, 1.0;
        "Pa" = from_pa, try_from_pa, as_pa, 0.001;
        "bar" = from_bar, try_from_bar, as_bar, 100.0;
        "psi" = from_psi, try_from_psi, as_psi, KPA_PER_PSI;
    }
}

kind! {
    /// Pressure above ambient as a gauge shows it now, at whatever temperature the air has.
    ///
    /// It is not a cold inflation pressure:
    /// ```compile_fail
    /// let cold: quantity::ColdPressure = quantity::GaugePressure::from_kpa(700.0);
    /// ```
    GaugePressure ("gauge pressure") {
        "kPa" = from_kpa, try_from_kpa, as_kpa, 1.0;
        "bar" = from_bar, try_from_bar, as_bar, 100.0;
        "psi" = from_psi, try_from_psi, as_psi, KPA_PER_PSI;
    }
}

kind! {
    /// Cold inflation pressure: gauge pressure of a tire at the named reference temperature.
    ///
    /// Tables, ratings and approvals speak of this kind. Comparing it with a warm
    /// reading does not compile:
    /// ```compile_fail
    /// use quantity::{ColdPressure, GaugePressure};
    /// let _ = ColdPressure::from_kpa(600.0) < GaugePressure::from_kpa(650.0);
    /// ```
    ColdPressure ("cold inflation pressure") {
        "kPa" = from_kpa, try_from_kpa, as_kpa, 1.0;
        "bar" = from_bar, try_from_bar, as_bar, 100.0;
        "psi" = from_psi, try_from_psi, as_psi, KPA_PER_PSI;
    }
}

kind! {
    /// A difference of two pressures of the same kind.
    PressureDifference ("pressure difference") {
        "kPa" = from_kpa, try_from_kpa, as_kpa, 1.0;
        "bar" = from_bar, try_from_bar, as_bar, 100.0;
        "psi" = from_psi, try_from_psi, as_psi, KPA_PER_PSI;
    }
}
linear!(PressureDifference);

kind! {
    /// Force per area in the ground or between tire and ground, and what is told in the same unit:
    /// contact pressure, soil stress, cone index, cohesion, modulus.
    ///
    /// A cold inflation pressure is not one; the contact model between them is named:
    /// ```compile_fail
    /// let q: quantity::Stress = quantity::ColdPressure::from_kpa(700.0);
    /// ```
    Stress ("stress") {
        "kPa" = from_kpa, try_from_kpa, as_kpa, 1.0;
        "Pa" = from_pa, try_from_pa, as_pa, 0.001;
        "MPa" = from_mpa, try_from_mpa, as_mpa, 1000.0;
        "bar" = from_bar, try_from_bar, as_bar, 100.0;
        "psi" = from_psi, try_from_psi, as_psi, KPA_PER_PSI;
    }
}
linear!(Stress);

macro_rules! differs_by {
    ($($name:ident),+) => { $(
        impl std::ops::Sub for $name {
            type Output = PressureDifference;
            fn sub(self, other: Self) -> PressureDifference {
                PressureDifference::from_kpa(self.as_kpa() - other.as_kpa())
            }
        }
        impl std::ops::Add<PressureDifference> for $name {
            type Output = Self;
            fn add(self, difference: PressureDifference) -> Self {
                Self::from_kpa(self.as_kpa() + difference.as_kpa())
            }
        }
        impl std::ops::Sub<PressureDifference> for $name {
            type Output = Self;
            fn sub(self, difference: PressureDifference) -> Self {
                Self::from_kpa(self.as_kpa() - difference.as_kpa())
            }
        }
        impl $name {
            /// This pressure times a plain ratio.
            #[must_use]
            pub fn scaled(self, ratio: f64) -> Self {
                Self::from_kpa(self.as_kpa() * ratio)
            }
        }
    )+ };
}
differs_by!(AbsolutePressure, GaugePressure, ColdPressure);

impl GaugePressure {
    /// The absolute pressure, given the ambient pressure the gauge stood in.
    #[must_use]
    pub fn to_absolute(self, ambient: AbsolutePressure) -> AbsolutePressure {
        AbsolutePressure::from_kpa(self.as_kpa() + ambient.as_kpa())
    }
}

impl AbsolutePressure {
    /// What a gauge shows in this ambient pressure.
    #[must_use]
    pub fn to_gauge(self, ambient: Self) -> GaugePressure {
        GaugePressure::from_kpa(self.as_kpa() - ambient.as_kpa())
    }

    /// This pressure over another, without unit.
    #[must_use]
    pub fn ratio_to(self, other: Self) -> f64 {
        self.as_kpa() / other.as_kpa()
    }
}

impl ColdPressure {
    /// What a gauge shows while the tire is at the reference temperature and ambient pressure.
    #[must_use]
    pub fn at_reference(self) -> GaugePressure {
        GaugePressure::from_kpa(self.as_kpa())
    }

    /// Takes a reading made at the reference temperature and ambient pressure as cold.
    #[must_use]
    pub fn read_at_reference(reading: GaugePressure) -> Self {
        Self::from_kpa(reading.as_kpa())
    }

    /// This pressure over another cold one, without unit.
    #[must_use]
    pub fn ratio_to(self, other: Self) -> f64 {
        self.as_kpa() / other.as_kpa()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // NIST SP 811 (2008), Appendix B.8: pound-force per square inch to pascal 6.894 757 E+03.
    #[test]
    fn table_psi_agrees_with_nist_sp_811() {
        assert!((GaugePressure::from_psi(1.0).as_kpa() - 6.894757).abs() < 5e-7);
    }

    #[test]
    fn a_gauge_reads_what_is_above_ambient() {
        let ambient = AbsolutePressure::from_kpa(84.56);
        let p = GaugePressure::from_kpa(700.0);
        assert!((p.to_absolute(ambient).to_gauge(ambient).as_kpa() - 700.0).abs() < 1e-9);
    }

    #[test]
    fn nan_and_infinity_are_refused() {
        assert!(GaugePressure::try_from_kpa(f64::NAN).is_err());
        assert!(ColdPressure::try_from_psi(f64::INFINITY).is_err());
    }
}
