//! Length, mass, force, time, and what is made of them.

use crate::kind::{kind, linear};
use crate::pressure::Stress;

/// Standard gravity, m/s², exact by definition (NIST SP 811, Appendix B.8).
const STANDARD_GRAVITY: f64 = 9.80665;
const KG_PER_LB: f64 = 0.45359237;
const KW_PER_HP: f64 = 0.7456998715822702;

kind! {
    /// Distance or size.
    Length ("length") {
        "m" = from_m, try_from_m, as_m, 1.0;
        "km" = from_km, try_from_km, as_km, 1000.0;
        "mm" = from_mm, try_from_mm, as_mm, 0.001;
        "ft" = from_ft, try_from_ft, as_ft, 0.3048;
        "in" = from_in, try_from_in, as_in, 0.0254;
        "mi" = from_mi, try_from_mi, as_mi, 1609.344;
    }
}

kind! {
    /// Area.
    Area ("area") {
        "m2" = from_m2, try_from_m2, as_m2, 1.0;
        "cm2" = from_cm2, try_from_cm2, as_cm2, 1e-4;
        "mm2" = from_mm2, try_from_mm2, as_mm2, 1e-6;
        "in2" = from_in2, try_from_in2, as_in2, 0.0254 * 0.0254;
    }
}

kind! {
    /// Volume.
    Volume ("volume") {
        "m3" = from_m3, try_from_m3, as_m3, 1.0;
        "l" = from_l, try_from_l, as_l, 0.001;
        "cm3" = from_cm3, try_from_cm3, as_cm3, 1e-6;
        "ft3" = from_ft3, try_from_ft3, as_ft3, 0.028316846592;
        "in3" = from_in3, try_from_in3, as_in3, 0.0254 * 0.0254 * 0.0254;
        "gal" = from_gal, try_from_gal, as_gal, 0.003785411784;
    }
}

kind! {
    /// Mass; also the load on a tire or axle group, as tables and scales state it.
    Mass ("mass") {
        "kg" = from_kg, try_from_kg, as_kg, 1.0;
        "t" = from_t, try_from_t, as_t, 1000.0;
        "lb" = from_lb, try_from_lb, as_lb, KG_PER_LB;
    }
}

kind! {
    /// Force.
    Force ("force") {
        "N" = from_n, try_from_n, as_n, 1.0;
        "kN" = from_kn, try_from_kn, as_kn, 1000.0;
        "lbf" = from_lbf, try_from_lbf, as_lbf, KG_PER_LB * STANDARD_GRAVITY;
        "kip" = from_kip, try_from_kip, as_kip, 1000.0 * KG_PER_LB * STANDARD_GRAVITY;
    }
}

kind! {
    /// A span of time.
    Time ("time") {
        "s" = from_s, try_from_s, as_s, 1.0;
        "min" = from_min, try_from_min, as_min, 60.0;
        "h" = from_h, try_from_h, as_h, 3600.0;
    }
}

kind! {
    /// Speed along the road.
    Speed ("speed") {
        "m/s" = from_m_per_s, try_from_m_per_s, as_m_per_s, 1.0;
        "km/h" = from_kmh, try_from_kmh, as_kmh, 1.0 / 3.6;
        "mph" = from_mph, try_from_mph, as_mph, 0.44704;
    }
}

kind! {
    /// Power.
    Power ("power") {
        "W" = from_w, try_from_w, as_w, 1.0;
        "kW" = from_kw, try_from_kw, as_kw, 1000.0;
        "hp" = from_hp, try_from_hp, as_hp, 745.6998715822702;
    }
}

kind! {
    /// Power over the mass it moves.
    SpecificPower ("power to weight") {
        "kW/t" = from_kw_per_t, try_from_kw_per_t, as_kw_per_t, 1.0;
        "hp/t" = from_hp_per_t, try_from_hp_per_t, as_hp_per_t, KW_PER_HP;
        "hp/ton" = from_hp_per_short_ton, try_from_hp_per_short_ton, as_hp_per_short_ton, KW_PER_HP / (2.0 * KG_PER_LB);
    }
}

kind! {
    /// Energy.
    Energy ("energy") {
        "J" = from_j, try_from_j, as_j, 1.0;
        "kJ" = from_kj, try_from_kj, as_kj, 1000.0;
        "kWh" = from_kwh, try_from_kwh, as_kwh, 3.6e6;
    }
}

kind! {
    /// Mass per volume.
    Density ("density") {
        "kg/m3" = from_kg_per_m3, try_from_kg_per_m3, as_kg_per_m3, 1.0;
    }
}

kind! {
    /// Speed of a shaft.
    RotationalSpeed ("rotational speed") {
        "rpm" = from_rpm, try_from_rpm, as_rpm, 1.0;
        "1/s" = from_per_s, try_from_per_s, as_per_s, 60.0;
    }
}

linear!(
    Length,
    Area,
    Volume,
    Mass,
    Force,
    Time,
    Speed,
    Power,
    SpecificPower,
    Energy,
    Density,
    RotationalSpeed
);

impl Mass {
    /// The weight of this mass under standard gravity.
    #[must_use]
    pub fn weight(self) -> Force {
        Force::from_n(self.as_kg() * STANDARD_GRAVITY)
    }
}

impl Force {
    /// This force spread evenly over an area.
    ///
    /// # Panics
    /// If the area is zero.
    #[must_use]
    pub fn over(self, area: Area) -> Stress {
        Stress::from_kpa(self.as_kn() / area.as_m2())
    }

    /// The mass that has this weight under standard gravity.
    #[must_use]
    pub fn as_mass(self) -> Mass {
        Mass::from_kg(self.as_n() / STANDARD_GRAVITY)
    }
}

impl std::ops::Mul<Time> for Speed {
    type Output = Length;
    fn mul(self, time: Time) -> Length {
        Length::from_m(self.as_m_per_s() * time.as_s())
    }
}

impl std::ops::Div<Speed> for Length {
    type Output = Time;
    fn div(self, speed: Speed) -> Time {
        Time::from_s(self.as_m() / speed.as_m_per_s())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // NIST SP 811 (2008), Appendix B.8, conversion factors as printed there.
    #[test]
    fn table_factors_agree_with_nist_sp_811() {
        let near = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 5e-7, "{a} against {b}");
        near(Mass::from_lb(1.0).as_kg(), 4.535924e-1);
        near(Length::from_in(1.0).as_m(), 2.54e-2);
        near(Length::from_mi(1.0).as_m(), 1.609344e3);
        near(Speed::from_mph(1.0).as_m_per_s(), 4.4704e-1);
        near(Force::from_lbf(1.0).as_n(), 4.448222);
        near(Force::from_kip(1.0).as_n(), 4.448222e3);
        near(Power::from_hp(1.0).as_w(), 7.456999e2);
        // 2000 lb to the short ton.
        near(SpecificPower::from_hp_per_short_ton(1.0).as_kw_per_t(), 0.8219934);
        near(Volume::from_ft3(1.0).as_m3(), 2.831685e-2);
        near(Volume::from_in3(1.0).as_m3(), 1.638706e-5);
        near(Volume::from_gal(1.0).as_m3(), 3.785412e-3);
    }

    #[test]
    fn weight_and_mass_turn_round() {
        assert!((Mass::from_kg(3150.0).weight().as_mass().as_kg() - 3150.0).abs() < 1e-9);
    }
}
