//! Thickness of aggregate that a soft subgrade needs, by one method and two to hold beside it.

use std::f64::consts::PI;

use quantity::{Area, ColdPressure, Length, Mass, Stress};

use super::strength::Cbr;
use crate::source::{Citation, Key, Standing};
use crate::tire::Fitment;

/// Thickness from wheel load, pressure, passes, rut and subgrade.
pub const GIROUD_HAN: Key = Key("giroud-han-2004");
/// Thickness at which the stress on the subgrade is permissible.
pub const PERMISSIBLE_STRESS: Key = Key("tm-5-818-8");
/// Thickness over unsurfaced soil from coverages and contact area.
pub const UNSURFACED: Key = Key("hammitt-1970");

/// Bearing-capacity factor without geosynthetic, as the source prints it.
#[allow(clippy::approx_constant, reason = "a printed factor")]
pub const UNREINFORCED: f64 = 3.14;
/// Least thickness that is ever built.
pub const LEAST_THICKNESS: Length = Length::from_m(0.10);
/// Rut that the strengths of the method belong to.
const F_S: Length = Length::from_mm(75.0);
/// Thickest layer that is answered for.
const THICKEST: f64 = 3.0;

/// Why there is no thickness.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ThicknessError {
    /// No load or pressure.
    #[error("a wheel of {load} at {pressure} is none; give a load above zero and 50 to 1000 kPa")]
    Wheel {
        /// Load offered.
        load: Mass,
        /// Pressure offered.
        pressure: ColdPressure,
    },
    /// No load.
    #[error("a load of {load} needs no thickness; give the load of a wheel, above zero")]
    Load {
        /// Load offered.
        load: Mass,
    },
    /// Passes outside the tests.
    #[error("{passes} axle passes are outside the method's 1 to 100 000")]
    Passes {
        /// Passes offered.
        passes: f64,
    },
    /// A rut outside the method.
    #[error("an allowed rut of {} mm is outside the method's 25 to 150 mm", rut.as_mm())]
    Rut {
        /// Rut offered.
        rut: Length,
    },
    /// No such factor.
    #[error(
        "a bearing-capacity factor of {factor} is outside 2 to 6; 3.14 unreinforced, 5.14 geotextile, 5.71 geogrid"
    )]
    Factor {
        /// Factor offered.
        factor: f64,
    },
    /// No such stiffness of the grid.
    #[error(
        "an aperture stability of {stability} N m/degree is outside 0 to 0.8; 0 without a geogrid"
    )]
    Aperture {
        /// Stability offered.
        stability: f64,
    },
    /// Nothing up to 3 m does.
    #[error(
        "no thickness up to 3 m carries this wheel on this subgrade; take load off, or improve the subgrade"
    )]
    TooSoft,
    /// No such cohesion.
    #[error("a cohesion of {cohesion} is outside 2 to 500 kPa")]
    Cohesion {
        /// Cohesion offered.
        cohesion: Stress,
    },
    /// No such area.
    #[error("a contact area of {area} is none; give an area above zero")]
    Area {
        /// Area offered.
        area: Area,
    },
}

/// Traffic and ground of an aggregate layer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeakSubgrade {
    /// Load of a wheel, a dual taken as one.
    pub wheel_load: Mass,
    /// Pressure.
    pub pressure: ColdPressure,
    /// Axle passes.
    pub passes: f64,
    /// Rut that is allowed.
    pub rut: Length,
    /// CBR of the subgrade.
    pub subgrade: Cbr,
    /// CBR of the aggregate.
    pub base: Cbr,
    /// Bearing-capacity factor, such as [`UNREINFORCED`].
    pub bearing_capacity_factor: f64,
    /// Aperture stability of a geogrid in N m/degree, zero without.
    pub aperture_stability: f64,
}

/// A thickness of aggregate.
#[derive(Debug, Clone, PartialEq)]
pub struct Thickness {
    /// The thickness, at least [`LEAST_THICKNESS`].
    pub value: Length,
    /// Whether the bare subgrade would carry the wheel within the rut.
    pub bare_ground_carries: bool,
    /// Whether it was asked outside what the method was made for.
    pub extrapolated: bool,
    /// Where it comes from.
    pub citation: Citation,
}

/// Thickness by Giroud and Han: `h = (0.868 + (0.661 - 1.006 J²)(r/h)^1.5 log N)/(1 + 0.204 (R_E - 1))
/// (√(P/(π r² m N_c c_u)) - 1) r`, with `m = (s/f_s)(1 - 0.9 e^(-(r/h)²))` and
/// `R_E = min(3.48 CBR_bc^0.3/CBR_sg, 5)`.
///
/// # Validity
/// Subgrade under CBR 5, rut 50 to 100 mm, aperture stability under 0.8, to about 10 000 passes;
/// outside it is marked. The saving by low pressure grows as the contact pressure nears what the
/// bare soil carries: small on very soft ground.
///
/// # Errors
/// [`ThicknessError`]: inputs that are none, or no thickness up to 3 m.
///
/// # Source
/// [`GIROUD_HAN`], equation read in lecture slides of the authors; factors for geosynthetics from memory.
///
/// ```
/// use model::ground::gravel_thickness::{UNREINFORCED, WeakSubgrade, giroud_han};
/// use model::ground::strength::Cbr;
/// use quantity::{ColdPressure, Force, Length};
/// let case = WeakSubgrade {
///     wheel_load: Force::from_kn(40.0).as_mass(),
///     pressure: ColdPressure::from_kpa(550.0),
///     passes: 5000.0,
///     rut: Length::from_mm(75.0),
///     subgrade: Cbr::from_pct(1.0)?,
///     base: Cbr::from_pct(15.0)?,
///     bearing_capacity_factor: UNREINFORCED,
///     aperture_stability: 0.0,
/// };
/// assert!((giroud_han(&case)?.value.as_m() - 0.504).abs() < 0.001);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn giroud_han(case: &WeakSubgrade) -> Result<Thickness, ThicknessError> {
    let &WeakSubgrade { wheel_load, pressure, passes, rut, .. } = case;
    check_wheel(wheel_load, pressure)?;
    if !(1.0..=100_000.0).contains(&passes) {
        return Err(ThicknessError::Passes { passes });
    }
    if !(25.0..=150.0).contains(&rut.as_mm()) {
        return Err(ThicknessError::Rut { rut });
    }
    let n_c = case.bearing_capacity_factor;
    if !(2.0..=6.0).contains(&n_c) {
        return Err(ThicknessError::Factor { factor: n_c });
    }
    let j = case.aperture_stability;
    if !(0.0..=0.8).contains(&j) {
        return Err(ThicknessError::Aperture { stability: j });
    }
    let (p_wheel, p) = (wheel_load.weight().as_kn(), pressure.as_kpa());
    let (sg, bc) = (case.subgrade.as_pct(), case.base.as_pct());
    let r = (p_wheel / (PI * p)).sqrt();
    let c_u = 30.0 * sg;
    let r_e = (3.48 * bc.powf(0.3) / sg).min(5.0);
    let s_over_f = rut / F_S;
    let by_equation = |h: f64| {
        let m = s_over_f * (1.0 - 0.9 * (-(r / h).powi(2)).exp());
        let traffic = (0.661 - 1.006 * j * j) * (r / h).powf(1.5) * passes.log10();
        (0.868 + traffic) / (1.0 + 0.204 * (r_e - 1.0))
            * ((p_wheel / (PI * r * r * m * n_c * c_u)).sqrt() - 1.0)
            * r
    };
    let bare_ground_carries = s_over_f * n_c * c_u * PI * r * r >= p_wheel;
    let least = LEAST_THICKNESS.as_m();
    let value = if bare_ground_carries || by_equation(least) <= least {
        least
    } else if by_equation(THICKEST) > THICKEST {
        return Err(ThicknessError::TooSoft);
    } else {
        let (mut thin, mut thick) = (least, THICKEST);
        for _ in 0..60 {
            let h = f64::midpoint(thin, thick);
            if by_equation(h) > h { thin = h } else { thick = h }
        }
        thick
    };
    let standing = if (n_c - UNREINFORCED).abs() < 0.005 && j == 0.0 {
        Standing::Read
    } else {
        Standing::FromMemory
    };
    Ok(Thickness {
        value: Length::from_m(value),
        bare_ground_carries,
        extrapolated: sg >= 5.0
            || bc <= sg
            || passes > 10_000.0
            || !(50.0..=100.0).contains(&rut.as_mm()),
        citation: Citation::of(GIROUD_HAN, standing),
    })
}

/// Thickness at which the stress on the axis falls to 2.8 times the cohesion of the subgrade (5.0 with
/// geotextile), by the US Army's rules for wheel load and contact pressure.
///
/// The wheel load is half the axle's, times 1.2 on a tandem; the contact pressure is the
/// inflation pressure, for duals 0.75 of it.
///
/// # Validity
/// Soft cohesive soil under CBR 4, little rutting, over 1000 axles. A second opinion: the manual
/// uses charts, and the stress of an elastic half-space stands for them here.
///
/// # Errors
/// [`ThicknessError`] for a wheel or a cohesion that is none.
///
/// # Source
/// [`PERMISSIBLE_STRESS`], read.
pub fn permissible_stress_thickness(
    wheel_load: Mass,
    tandem: bool,
    fitment: Fitment,
    pressure: ColdPressure,
    cohesion: Stress,
    geotextile: bool,
) -> Result<Thickness, ThicknessError> {
    check_wheel(wheel_load, pressure)?;
    if !(2.0..=500.0).contains(&cohesion.as_kpa()) {
        return Err(ThicknessError::Cohesion { cohesion });
    }
    let s = cohesion.as_kpa() * if geotextile { 5.0 } else { 2.8 };
    let l = wheel_load.weight().as_kn() * if tandem { 1.2 } else { 1.0 };
    let q = pressure.as_kpa() * if fitment == Fitment::Dual { 0.75 } else { 1.0 };
    let bare_ground_carries = q <= s;
    let z = if bare_ground_carries {
        0.0
    } else {
        let a = (l / (PI * q)).sqrt();
        a / ((1.0 - s / q).powf(-2.0 / 3.0) - 1.0).sqrt()
    };
    Ok(Thickness {
        value: Length::from_m(z).max(LEAST_THICKNESS),
        bare_ground_carries,
        // Cohesion of 30 kPa for each percent: CBR 4.
        extrapolated: cohesion.as_kpa() > 120.0,
        citation: Citation::of(PERMISSIBLE_STRESS, Standing::Read)
            .at("2.8 C, 5.0 C with geotextile"),
    })
}

/// Thickness of better material over soil for unsurfaced traffic:
/// `t = (0.176 log C + 0.12) √(P/(8.1 CBR) - A/π)`, lb, in².
///
/// # Validity
/// To about 10 000 coverages; taking passes for coverages errs thick, by up to 16 % on the printed rows.
///
/// # Errors
/// [`ThicknessError`] for a load, area or number of coverages that is none.
///
/// # Source
/// [`UNSURFACED`]; constants from memory, confirmed on a printed table.
pub fn unsurfaced_thickness(
    wheel_load: Mass,
    contact_area: Area,
    coverages: f64,
    soil: Cbr,
) -> Result<Thickness, ThicknessError> {
    if wheel_load <= Mass::ZERO {
        return Err(ThicknessError::Load { load: wheel_load });
    }
    if contact_area <= Area::ZERO {
        return Err(ThicknessError::Area { area: contact_area });
    }
    if !(1.0..=100_000.0).contains(&coverages) {
        return Err(ThicknessError::Passes { passes: coverages });
    }
    let (p, a) = (wheel_load.weight().as_lbf(), contact_area.as_in2());
    let under_root = p / (8.1 * soil.as_pct()) - a / PI;
    let t = (0.176 * coverages.log10() + 0.12) * under_root.max(0.0).sqrt();
    Ok(Thickness {
        value: Length::from_in(t),
        bare_ground_carries: under_root <= 0.0,
        extrapolated: coverages > 10_000.0,
        citation: Citation::of(UNSURFACED, Standing::FromMemory),
    })
}

fn check_wheel(load: Mass, pressure: ColdPressure) -> Result<(), ThicknessError> {
    if load > Mass::ZERO && (50.0..=1000.0).contains(&pressure.as_kpa()) {
        Ok(())
    } else {
        Err(ThicknessError::Wheel { load, pressure })
    }
}

#[cfg(test)]
mod tests;
