//! The patch a tire stands on: area, length, width and mean contact pressure on a hard surface.

use quantity::{Area, ColdPressure, Length, Mass, Stress};

use super::Tire;
use super::deflection::{DeflectionError, DeflectionLaw};
use super::stiffness::{RHYNE, Section, StiffnessError, rhyne};
use crate::source::{Citation, Key, Standing};

/// Mean contact pressure of commercial truck tires, from dirty prints.
pub const DIRTY_PRINTS: Key = Key("van-vuuren-1974");
/// Contact pressure of wide agricultural tires, about the inflation pressure.
pub const WIDE_TIRES: Key = Key("arvidsson-keller-2007");
/// Shape of the patch: tread width, area factor, longest length over the chord.
pub const PATCH_SHAPE: Key = Key("contact-patch-shape");

/// Half the width of the band round the area, a judgement.
pub const BAND: f64 = 0.25;
/// Share of length times tread width that a truck radial covers.
pub const AREA_FACTOR: f64 = 0.92;
/// Longest patch over the chord at the deflection.
pub const LONGEST_OVER_CHORD: f64 = 0.9;
/// Deflection, as a share of the section height, from which the tread bears over its whole width.
pub const FULL_WIDTH_FROM: f64 = 0.08;
/// Peak stress in soft topsoil over mean contact pressure, for design.
pub const TOPSOIL_PEAK: f64 = 1.4;

/// What truck tires are softer by than the stiffness formula says.
const RHYNE_EXCESS: f64 = 1.10;

/// Which contact model a tire follows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ContactModel {
    /// Road-type truck tires, whose tread and carcass take part of the pressure.
    RoadTruck,
    /// Flotation and agricultural tires at recommended load: contact pressure is inflation pressure.
    Flotation,
}

/// Why there is no footprint.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum FootprintError {
    /// No load.
    #[error("a load of {load} leaves no footprint; give the load on one tire, above zero")]
    Load {
        /// Load offered.
        load: Mass,
    },
    /// Pressure no such tire runs at.
    #[error("{pressure} is outside the footprint model's 50 to 1000 kPa")]
    Pressure {
        /// Pressure offered.
        pressure: ColdPressure,
    },
    /// A deflection that this tire cannot have.
    #[error("a deflection of {deflection} is outside zero to {most}, 45 % of the section height")]
    Deflection {
        /// Deflection offered.
        deflection: Length,
        /// Most that is answered for.
        most: Length,
    },
    /// The stiffness formula refused.
    #[error(transparent)]
    Stiffness(#[from] StiffnessError),
    /// The deflection law refused.
    #[error(transparent)]
    Law(#[from] DeflectionError),
}

/// The patch under one tire on a hard surface, gross of tread grooves.
#[derive(Debug, Clone, PartialEq)]
pub struct Footprint {
    /// Gross area.
    pub area: Area,
    /// Least credible area, [`BAND`] under.
    pub low: Area,
    /// Largest credible area, [`BAND`] over.
    pub high: Area,
    /// Load over area.
    pub mean_pressure: Stress,
    /// Length along the road.
    pub length: Length,
    /// Width that bears.
    pub width: Length,
    /// Whether the patch ran out of length, so that carcass and sidewall carry the rest and the
    /// mean pressure is higher than the model's.
    pub length_capped: bool,
    /// Whether the pressure lies where no print of a truck tire was read: under 350 kPa, or the
    /// length is capped.
    pub extrapolated: bool,
    /// What the contact pressure rests on.
    pub citation: Citation,
}

impl Footprint {
    /// Radius of the circle of the same area.
    pub fn equivalent_radius(&self) -> Length {
        Length::from_m((self.area.as_m2() / std::f64::consts::PI).sqrt())
    }

    /// Highest credible mean pressure: the load on the least area.
    pub fn highest_pressure(&self) -> Stress {
        self.mean_pressure / (1.0 - BAND)
    }

    /// Lowest credible mean pressure: the load on the largest area.
    pub fn lowest_pressure(&self) -> Stress {
        self.mean_pressure / (1.0 + BAND)
    }
}

/// Part of the contact pressure that the carcass carries: `p_c = 12310 / √(W D)` kPa.
///
/// # Validity
/// Belted road radials, 22 to 28 kPa; an all-terrain tire showed 75 to 95 kPa.
///
/// # Source
/// [`RHYNE`], from memory: its intercept over its slope.
pub fn carcass_pressure(section: Section) -> Stress {
    let (w, d) = (section.tread_width().as_mm(), section.diameter().as_mm());
    Stress::from_kpa(12_310.0 / (w * d).sqrt())
}

/// Mean contact pressure before the patch runs out of length:
/// `p_m = min(p + p_c, 0.61 p + 145 kPa)` for truck tires, `p_m = p` for flotation tires.
///
/// # Validity
/// ±25 %, a judgement. The line was measured at the loads that makers recommend for the pressure; a
/// tire that carries more than its table allows can reach 1.4 p.
///
/// # Errors
/// [`FootprintError::Pressure`] outside 50 to 1000 kPa.
///
/// # Source
/// [`DIRTY_PRINTS`], read; [`RHYNE`] for the carcass, from memory; [`WIDE_TIRES`].
pub fn mean_contact_pressure(
    section: Section,
    model: ContactModel,
    pressure: ColdPressure,
) -> Result<Stress, FootprintError> {
    let p = pressure.as_kpa();
    if !(50.0..=1000.0).contains(&p) {
        return Err(FootprintError::Pressure { pressure });
    }
    Ok(match model {
        ContactModel::Flotation => Stress::from_kpa(p),
        ContactModel::RoadTruck => {
            let p_c = carcass_pressure(section);
            (Stress::from_kpa(p) + p_c).min(dirty_print_line(p))
        }
    })
}

fn dirty_print_line(p: f64) -> Stress {
    Stress::from_kpa(0.61 * p + 145.0)
}

/// Deflection from dimensions alone: load over the stiffness formula less a tenth.
///
/// # Errors
/// [`FootprintError::Stiffness`] outside 100 to 1000 kPa.
///
/// # Source
/// [`RHYNE`], from memory.
pub fn deflection_from_dimensions(
    section: Section,
    load: Mass,
    pressure: ColdPressure,
) -> Result<Length, FootprintError> {
    Ok(rhyne(section, pressure)?.deflection_under(load.weight()) * RHYNE_EXCESS)
}

/// The patch under one tire at a known deflection: `A = F/p_m`, `L = A/(0.92 W_c)`, no longer
/// than 0.9 of the chord `2 √(D δ - δ²)`.
///
/// # Validity
/// Hard surface, standing or rolling freely. Area and length ±25 %, a judgement: no measured print
/// of a truck tire against load and pressure could be read. The tread bears over its whole width
/// from 8 % deflection.
///
/// # Errors
/// [`FootprintError`]: no load, a pressure outside 50 to 1000 kPa, a deflection over 45 % of the section height.
///
/// # Source
/// [`DIRTY_PRINTS`] for the pressure, [`PATCH_SHAPE`] for the shape.
///
/// ```
/// use model::tire::footprint::{ContactModel, footprint};
/// use model::tire::stiffness::Section;
/// use quantity::{ColdPressure, Force, Length};
/// let mm = Length::from_mm;
/// let section = Section::new(mm(279.0), mm(1052.0), mm(571.5))?;
/// let load = Force::from_kn(18.9).as_mass();
/// let patch =
///     footprint(section, ContactModel::RoadTruck, load, ColdPressure::from_kpa(310.0), mm(45.5))?;
/// assert!((patch.area.as_cm2() - 566.0).abs() < 1.0);
/// assert!((patch.length.as_mm() - 322.0).abs() < 1.0);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn footprint(
    section: Section,
    model: ContactModel,
    load: Mass,
    pressure: ColdPressure,
    deflection: Length,
) -> Result<Footprint, FootprintError> {
    if load <= Mass::ZERO {
        return Err(FootprintError::Load { load });
    }
    let most = section.height() * super::deflection::LARGEST_SHARE;
    if deflection <= Length::ZERO || deflection > most {
        return Err(FootprintError::Deflection { deflection, most });
    }
    let f = load.weight();
    let p_m = mean_contact_pressure(section, model, pressure)?;
    let share = deflection / section.height();
    let width = section.tread_width() * (share / FULL_WIDTH_FROM).sqrt().min(1.0);
    let (d, delta, w_c) = (section.diameter().as_m(), deflection.as_m(), width.as_m());
    let wanted = f.as_kn() / p_m.as_kpa() / (AREA_FACTOR * w_c);
    let longest = LONGEST_OVER_CHORD * 2.0 * (d * delta - delta * delta).sqrt();
    let length = wanted.min(longest);
    let area = Area::from_m2(AREA_FACTOR * w_c * length);
    let length_capped = wanted > longest;
    let citation = match model {
        ContactModel::RoadTruck if p_m < dirty_print_line(pressure.as_kpa()) => {
            Citation::of(RHYNE, Standing::FromMemory).at("pressure and carcass")
        }
        ContactModel::RoadTruck => Citation::of(DIRTY_PRINTS, Standing::Read),
        ContactModel::Flotation => Citation::of(WIDE_TIRES, Standing::Read),
    };
    Ok(Footprint {
        area,
        low: area * (1.0 - BAND),
        high: area * (1.0 + BAND),
        mean_pressure: f.over(area),
        length: Length::from_m(length),
        width,
        length_capped,
        extrapolated: length_capped
            || (model == ContactModel::RoadTruck && pressure < ColdPressure::from_kpa(350.0)),
        citation,
    })
}

/// The patch under a tire model, its deflection from its own law.
///
/// # Errors
/// As [`footprint`] and [`DeflectionLaw::deflection`].
///
/// # Source
/// As [`footprint`].
pub fn footprint_of(
    tire: &Tire,
    model: ContactModel,
    load: Mass,
    pressure: ColdPressure,
) -> Result<Footprint, FootprintError> {
    if load <= Mass::ZERO {
        return Err(FootprintError::Load { load });
    }
    let deflection = DeflectionLaw::of(tire)?.deflection(load, pressure)?.value;
    footprint(Section::of(tire)?, model, load, pressure, deflection)
}

/// How an area grows with a change of pressure under the same load, as ratios.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Growth {
    /// By the line of measured prints: the least.
    pub low: f64,
    /// By the model used here, before any cap of the length.
    pub expected: f64,
    /// By pressure and carcass alone: the most.
    pub high: f64,
}

/// Growth of the area of a truck tire from one pressure to another.
///
/// # Validity
/// Published growth figures disagree, so it is a band; "100 to 50 psi nearly doubles it"
/// lies at the high end.
///
/// # Errors
/// [`FootprintError::Pressure`] outside 50 to 1000 kPa.
///
/// # Source
/// [`DIRTY_PRINTS`] for the low end, [`RHYNE`] for the high.
pub fn area_growth(
    section: Section,
    from: ColdPressure,
    to: ColdPressure,
) -> Result<Growth, FootprintError> {
    let hybrid = |p| mean_contact_pressure(section, ContactModel::RoadTruck, p);
    let expected = hybrid(from)? / hybrid(to)?;
    let line = dirty_print_line(from.as_kpa()) / dirty_print_line(to.as_kpa());
    let p_c = carcass_pressure(section).as_kpa();
    let carcass = (from.as_kpa() + p_c) / (to.as_kpa() + p_c);
    Ok(Growth { low: line.min(carcass), expected, high: line.max(carcass) })
}

#[cfg(test)]
mod tests;
