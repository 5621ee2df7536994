//! Forces, power and fuel along the road.

use quantity::{AbsolutePressure, Area, Density, Force, Length, Mass, Power, Speed, Temperature};

use crate::source::Key;

/// Road-load form of 40 CFR 1066.210 with rolling and drag coefficients.
pub const ROAD_LOAD: Key = Key("cfr-40-1066-210");
/// Ideal-gas density of dry air.
pub const DRY_AIR: Key = Key("iso-2533");
/// Point-mass curve speed.
pub const CURVE: Key = Key("aashto-point-mass-curve");

const G: f64 = 9.80665; // m/s², standard gravity
const R_AIR: f64 = 287.05287; // J/(kg K), ISO 2533

/// What resists the combination on one stretch of road.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoadLoad {
    /// Mass of the combination.
    pub mass: Mass,
    /// Rolling-resistance coefficient.
    pub rolling_resistance: f64,
    /// Grade as rise over run, uphill positive.
    pub grade: f64,
    /// Drag coefficient times frontal area.
    pub drag_area: Area,
    /// Air density.
    pub air_density: Density,
}

/// Why a speed could not be found.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum MotionError {
    /// Mass must be positive.
    #[error("a mass of {mass} cannot be driven; give a mass above zero")]
    NoMass {
        /// The mass given.
        mass: Mass,
    },
    /// Power must be positive.
    #[error("a power of {power} moves nothing; give the power that reaches the wheels")]
    NoPower {
        /// The power given.
        power: Power,
    },
    /// The road pushes harder than it resists: no steady speed under power exists.
    #[error(
        "downhill grade {grade_pct:.1} % pushes more than rolling resistance holds; brakes set the speed, not power"
    )]
    RunsAway {
        /// The grade in percent.
        grade_pct: f64,
    },
}

impl RoadLoad {
    /// Force needed to hold a speed: `F = m g (C_rr cos a + sin a) + 0.5 rho CdA v²`.
    ///
    /// # Validity
    /// Steady speed in still air; rolling resistance independent of speed.
    ///
    /// # Source
    /// `cfr-40-1066-210`.
    ///
    /// # Example
    /// ```
    /// use model::motion::RoadLoad;
    /// use quantity::{Area, Density, Mass, Speed};
    /// let load = RoadLoad {
    ///     mass: Mass::from_t(10.0),
    ///     rolling_resistance: 0.01,
    ///     grade: 0.0,
    ///     drag_area: Area::from_m2(6.0),
    ///     air_density: Density::from_kg_per_m3(1.2),
    /// };
    /// let f = load.force(Speed::from_m_per_s(20.0));
    /// assert!((f.as_n() - (980.665 + 1440.0)).abs() < 1e-9);
    /// ```
    pub fn force(&self, speed: Speed) -> Force {
        let v = speed.as_m_per_s();
        Force::from_n(self.grade_and_rolling() + self.drag_per_v2() * v * v)
    }

    fn grade_and_rolling(&self) -> f64 {
        let a = self.grade.atan();
        self.mass.as_kg() * G * (self.rolling_resistance * a.cos() + a.sin())
    }

    fn drag_per_v2(&self) -> f64 {
        0.5 * self.air_density.as_kg_per_m3() * self.drag_area.as_m2()
    }

    /// Highest steady speed that a power at the wheels holds: the root of `F(v) v = P`.
    ///
    /// # Validity
    /// No gear gaps, no adhesion limit, no curve or comfort limit.
    ///
    /// # Errors
    /// [`MotionError`] for no mass, no power, or a grade that needs brakes.
    ///
    /// # Source
    /// `cfr-40-1066-210`.
    pub fn steady_speed(&self, wheel_power: Power) -> Result<Speed, MotionError> {
        if self.mass <= Mass::ZERO {
            return Err(MotionError::NoMass { mass: self.mass });
        }
        if wheel_power <= Power::ZERO {
            return Err(MotionError::NoPower { power: wheel_power });
        }
        let (f0, k, p) = (self.grade_and_rolling(), self.drag_per_v2(), wheel_power.as_w());
        if f0 <= 0.0 && k <= 0.0 {
            return Err(MotionError::RunsAway { grade_pct: self.grade * 100.0 });
        }
        // k v³ + f0 v − p rises beyond its only positive root, so a bracket always closes on it.
        let excess = |v: f64| (k * v * v + f0) * v - p;
        let mut high = 1.0;
        while excess(high) < 0.0 {
            high *= 2.0;
            if high > 1e6 {
                return Err(MotionError::RunsAway { grade_pct: self.grade * 100.0 });
            }
        }
        let mut low = 0.0;
        for _ in 0..200 {
            let middle = 0.5 * (low + high);
            if excess(middle) < 0.0 {
                low = middle;
            } else {
                high = middle;
            }
            if high - low < 1e-12 * high {
                break;
            }
        }
        Ok(Speed::from_m_per_s(0.5 * (low + high)))
    }
}

/// Density of dry air: `rho = p / (R T)`.
///
/// # Source
/// `iso-2533` (specific gas constant of dry air).
///
/// # Example
/// ```
/// use quantity::{AbsolutePressure, Temperature};
/// let rho = model::motion::air_density(
///     AbsolutePressure::from_kpa(101.325),
///     Temperature::from_celsius(15.0),
/// );
/// assert!((rho.as_kg_per_m3() - 1.225).abs() < 1e-3);
/// ```
pub fn air_density(ambient: AbsolutePressure, temperature: Temperature) -> Density {
    Density::from_kg_per_m3(ambient.as_pa() / (R_AIR * temperature.as_kelvin()))
}

/// Speed at which a curve uses up its side friction on level crossfall: `v² = g R f`.
///
/// # Validity
/// Point mass: says nothing about rollover, which is not assessed.
///
/// # Source
/// `aashto-point-mass-curve` (form); the side friction is the caller's.
pub fn curve_speed(radius: Length, side_friction: f64) -> Speed {
    Speed::from_m_per_s((G * radius.as_m() * side_friction).max(0.0).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn load(mass_t: f64, rolling_resistance: f64, grade: f64) -> RoadLoad {
        RoadLoad {
            mass: Mass::from_t(mass_t),
            rolling_resistance,
            grade,
            drag_area: Area::from_m2(8.0),
            air_density: Density::from_kg_per_m3(1.17),
        }
    }

    #[test]
    fn the_root_closes_the_power_balance() {
        let l = load(63.5, 0.015, 0.04);
        let p = Power::from_kw(300.0);
        let v = l.steady_speed(p).unwrap();
        assert!((l.force(v).as_n() * v.as_m_per_s() / p.as_w() - 1.0).abs() < 1e-9);
    }

    #[test]
    fn impossible_cases_say_what_to_give() {
        assert!(matches!(
            load(0.0, 0.01, 0.0).steady_speed(Power::from_kw(1.0)),
            Err(MotionError::NoMass { .. })
        ));
        assert!(matches!(
            load(10.0, 0.01, 0.0).steady_speed(Power::ZERO),
            Err(MotionError::NoPower { .. })
        ));
    }
}
