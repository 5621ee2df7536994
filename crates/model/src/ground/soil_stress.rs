//! Vertical stress in the ground under a wheel, and under a dual.

use std::f64::consts::PI;

use quantity::{Length, Mass, Stress};

use crate::source::Key;

/// Stress under a point load, and its concentration toward the axis.
pub const POINT_LOAD: Key = Key("boussinesq-froehlich");
/// Concentration factor by the state of the soil.
pub const CONCENTRATION: Key = Key("soehne-1953");

/// Steps of the integral round the field point.
const HALF_STEPS: usize = 128;

/// How wet and soft the ground is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SoilState {
    /// Hard and dry.
    Firm,
    /// As usual.
    Normal,
    /// Soft and wet.
    Soft,
}

/// Concentration factor ν: 3 is an elastic half-space, more gathers the stress under the load.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Concentration(f64);

impl Concentration {
    /// `x^nu` from `x²`: whole exponents, which are the usual ones, need no logarithm.
    fn power_of_square(self, x_squared: f64) -> f64 {
        match self.0 {
            3.0 => x_squared * x_squared.sqrt(),
            4.0 => x_squared * x_squared,
            5.0 => x_squared * x_squared * x_squared.sqrt(),
            6.0 => x_squared * x_squared * x_squared,
            nu => x_squared.powf(0.5 * nu),
        }
    }

    /// Elastic half-space.
    pub const ELASTIC: Self = Self(3.0);

    /// A factor of one's own.
    ///
    /// # Errors
    /// [`SoilStressError::Concentration`] outside 2 to 8.
    pub fn new(nu: f64) -> Result<Self, SoilStressError> {
        if (2.0..=8.0).contains(&nu) {
            Ok(Self(nu))
        } else {
            Err(SoilStressError::Concentration { nu })
        }
    }

    /// 4 firm, 5 normal, 6 soft. One manual that was read has it the other way round.
    ///
    /// # Source
    /// [`CONCENTRATION`], from memory.
    pub const fn of(state: SoilState) -> Self {
        Self(match state {
            SoilState::Firm => 4.0,
            SoilState::Normal => 5.0,
            SoilState::Soft => 6.0,
        })
    }

    /// The number.
    pub const fn get(self) -> f64 {
        self.0
    }
}

/// Why there is no stress.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SoilStressError {
    /// Not under ground.
    #[error("a depth of {depth} is not under the ground; give a depth above zero")]
    Depth {
        /// Depth offered.
        depth: Length,
    },
    /// No contact.
    #[error(
        "a contact pressure of {pressure} on a radius of {radius} presses nothing; give both above zero"
    )]
    Contact {
        /// Contact pressure offered.
        pressure: Stress,
        /// Radius offered.
        radius: Length,
    },
    /// No load.
    #[error("a load of {load} presses nothing; give a load above zero")]
    Load {
        /// Load offered.
        load: Mass,
    },
    /// Two tires in one place.
    #[error(
        "a dual spacing of {spacing} is not above zero; give the distance between tire centers"
    )]
    Spacing {
        /// Spacing offered.
        spacing: Length,
    },
    /// A factor no soil showed.
    #[error("a concentration factor of {nu} is outside 2 to 8; soils show 3 to 6")]
    Concentration {
        /// Factor offered.
        nu: f64,
    },
}

/// A uniformly loaded circle: how a tire stands on the ground for the purpose of stress below.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    q: Stress,
    a: Length,
}

impl Contact {
    /// Contact pressure on a circle of this radius.
    ///
    /// # Errors
    /// [`SoilStressError::Contact`] unless both are above zero.
    pub fn new(pressure: Stress, radius: Length) -> Result<Self, SoilStressError> {
        if pressure > Stress::ZERO && radius > Length::ZERO {
            Ok(Self { q: pressure, a: radius })
        } else {
            Err(SoilStressError::Contact { pressure, radius })
        }
    }

    /// A load at a mean contact pressure: `a = √(F/(π q))`.
    ///
    /// # Errors
    /// [`SoilStressError`] unless both are above zero.
    pub fn under(load: Mass, pressure: Stress) -> Result<Self, SoilStressError> {
        if load <= Mass::ZERO {
            return Err(SoilStressError::Load { load });
        }
        if pressure <= Stress::ZERO {
            return Err(SoilStressError::Contact { pressure, radius: Length::ZERO });
        }
        let a = (load.weight().as_kn() / (PI * pressure.as_kpa())).sqrt();
        Self::new(pressure, Length::from_m(a))
    }

    /// Contact pressure.
    pub fn pressure(self) -> Stress {
        self.q
    }

    /// Radius.
    pub fn radius(self) -> Length {
        self.a
    }

    /// Stress on the axis: `σ_z = q (1 - cos^ν α)`, `cos α = z/√(z² + a²)`.
    ///
    /// # Validity
    /// ±25 % at 0.3 m and deeper, a judgement; there it overstates what lower pressure gains. Tires
    /// press unevenly: near the surface expect peaks of 1.4 times this.
    ///
    /// # Errors
    /// [`SoilStressError::Depth`] unless the depth is above zero.
    ///
    /// # Source
    /// [`POINT_LOAD`].
    ///
    /// ```
    /// use model::ground::soil_stress::{Concentration, Contact};
    /// use quantity::{Length, Stress};
    /// let contact = Contact::new(Stress::from_kpa(690.0), Length::from_m(0.15))?;
    /// let stress = contact.on_axis(Length::from_m(0.15), Concentration::ELASTIC)?;
    /// assert!((stress.as_kpa() - 446.05).abs() < 0.01);
    /// # Ok::<(), model::ground::soil_stress::SoilStressError>(())
    /// ```
    pub fn on_axis(self, depth: Length, nu: Concentration) -> Result<Stress, SoilStressError> {
        check_depth(depth)?;
        let (z, a) = (depth.as_m(), self.a.as_m());
        Ok(self.q * (1.0 - (z / z.hypot(a)).powf(nu.0)))
    }

    /// Stress below a point beside the axis: the same law integrated over the circle.
    ///
    /// # Validity
    /// As [`on_axis`](Self::on_axis). The integral is good to four digits from a twentieth of the
    /// radius downward.
    ///
    /// # Errors
    /// [`SoilStressError::Depth`] unless the depth is above zero.
    ///
    /// # Source
    /// [`POINT_LOAD`].
    pub fn beside(
        self,
        offset: Length,
        depth: Length,
        nu: Concentration,
    ) -> Result<Stress, SoilStressError> {
        check_depth(depth)?;
        let (r, a, z) = (offset.abs().as_m(), self.a.as_m(), depth.as_m());
        // In polar coordinates round the field point the radial integral is closed.
        let kept = |rho: f64| nu.power_of_square(z * z / (z * z + rho * rho));
        // Both integrands are even: half the way round, counted twice.
        let twice = |f: &dyn Fn(f64) -> f64, to: f64| {
            let step = to / HALF_STEPS as f64;
            (0..HALF_STEPS).map(|i| f((i as f64 + 0.5) * step)).sum::<f64>() * step / PI
        };
        let share = if r < a {
            let ring =
                |phi: f64| 1.0 - kept((a * a - (r * phi.sin()).powi(2)).sqrt() - r * phi.cos());
            twice(&ring, PI)
        } else {
            let chord = |t: f64| {
                let sin_phi = a / r * t.sin();
                let cos_phi = (1.0 - sin_phi * sin_phi).sqrt();
                let (middle, half) = (r * cos_phi, a * t.cos());
                (kept((middle - half).max(0.0)) - kept(middle + half)) * half / middle
            };
            twice(&chord, PI / 2.0)
        };
        Ok(self.q * share)
    }

    /// Stress under a dual of two such tires, under one of them and under the gap.
    ///
    /// # Validity
    /// As [`beside`](Self::beside); the stresses of the two add.
    ///
    /// # Errors
    /// [`SoilStressError`]: a depth or spacing not above zero.
    ///
    /// # Source
    /// [`POINT_LOAD`].
    pub fn dual(
        self,
        spacing: Length,
        depth: Length,
        nu: Concentration,
    ) -> Result<DualStress, SoilStressError> {
        if spacing <= Length::ZERO {
            return Err(SoilStressError::Spacing { spacing });
        }
        Ok(DualStress {
            under_tire: self.on_axis(depth, nu)? + self.beside(spacing, depth, nu)?,
            mid_gap: self.beside(spacing / 2.0, depth, nu)? * 2.0,
        })
    }
}

/// Stress under a dual at one depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DualStress {
    /// Under the center of one tire.
    pub under_tire: Stress,
    /// Under the middle of the gap.
    pub mid_gap: Stress,
}

impl DualStress {
    /// The larger of the two.
    pub fn worst(self) -> Stress {
        self.under_tire.max(self.mid_gap)
    }
}

/// Stress at one depth, for a profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtDepth {
    /// Depth.
    pub depth: Length,
    /// Vertical stress.
    pub stress: Stress,
}

/// Stress on the axis at each of some depths.
///
/// # Errors
/// [`SoilStressError::Depth`] for the first that is not above zero.
///
/// # Source
/// [`POINT_LOAD`].
pub fn profile(
    contact: Contact,
    depths: &[Length],
    nu: Concentration,
) -> Result<Vec<AtDepth>, SoilStressError> {
    depths.iter().map(|&depth| Ok(AtDepth { depth, stress: contact.on_axis(depth, nu)? })).collect()
}

/// Stress under a point load: `σ_z = ν Q z^ν / (2π R^(ν+2))`.
///
/// # Validity
/// Further from the load than about three times the size of the patch.
///
/// # Errors
/// [`SoilStressError`]: no load, or a depth not above zero.
///
/// # Source
/// [`POINT_LOAD`].
pub fn under_point(
    load: Mass,
    offset: Length,
    depth: Length,
    nu: Concentration,
) -> Result<Stress, SoilStressError> {
    if load <= Mass::ZERO {
        return Err(SoilStressError::Load { load });
    }
    check_depth(depth)?;
    let z = depth.as_m();
    let r = z.hypot(offset.as_m());
    let sigma = nu.0 * load.weight().as_kn() / (2.0 * PI * r * r) * (z / r).powf(nu.0);
    Ok(Stress::from_kpa(sigma))
}

fn check_depth(depth: Length) -> Result<(), SoilStressError> {
    if depth > Length::ZERO { Ok(()) } else { Err(SoilStressError::Depth { depth }) }
}

#[cfg(test)]
mod tests;
