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
mod tests {
    use proptest::prelude::*;
    use quantity::Force;

    use super::*;
    use crate::tire::fixture;

    fn kpa(value: f64) -> ColdPressure {
        ColdPressure::from_kpa(value)
    }

    fn kn(value: f64) -> Mass {
        Force::from_kn(value).as_mass()
    }

    fn section() -> Section {
        Section::of(&fixture::tire_11r22_5()).unwrap()
    }

    fn of(load: f64, p: f64) -> Footprint {
        footprint_of(&fixture::tire_11r22_5(), ContactModel::RoadTruck, kn(load), kpa(p)).unwrap()
    }

    // van Vuuren 1974, line fit of prints of several commercial truck tires.
    #[test]
    fn table_truck_line() {
        for (p, observed) in [(350.0, 359.0), (500.0, 450.0), (720.0, 584.0), (1000.0, 755.0)] {
            let p_m = mean_contact_pressure(section(), ContactModel::RoadTruck, kpa(p)).unwrap();
            assert!((p_m.as_kpa() - observed).abs() < 1.0, "{p}: {p_m}");
        }
    }

    // TM 5-850-1 Table B-2, p. B-5: tandem military tractor, 5610 lb a tire at 80 psi on 82.5 in².
    #[test]
    fn table_army_highway_tire_within_four_percent() {
        let p_m =
            mean_contact_pressure(section(), ContactModel::RoadTruck, ColdPressure::from_psi(80.0));
        assert!((p_m.unwrap() / Stress::from_psi(68.0) - 1.0).abs() < 0.04);
    }

    // 11R22.5 by hand: load, pressure, area cm², length mm.
    #[test]
    fn worked_11r22_5() {
        for (load, p, area, length) in
            [(27.46, 720.0, 470.0, 267.0), (18.9, 758.0, 311.0, 177.0), (18.9, 310.0, 566.0, 322.0)]
        {
            let patch = of(load, p);
            assert!((patch.area.as_cm2() - area).abs() < 1.0, "{}", patch.area);
            assert!((patch.length.as_mm() - length).abs() < 1.0, "{}", patch.length);
            assert!(!patch.length_capped);
        }
    }

    #[test]
    fn worked_overloaded_tire_runs_out_of_length() {
        let patch = of(27.46, 310.0);
        assert!(patch.length_capped && patch.extrapolated);
        assert!((patch.length.as_mm() - 449.0).abs() < 1.0);
        assert!((patch.mean_pressure.as_kpa() - 348.0).abs() < 1.0);
    }

    #[test]
    fn worked_growth_is_a_band() {
        let growth = area_growth(section(), kpa(758.0), kpa(310.0)).unwrap();
        assert!((growth.low - 1.82).abs() < 0.01 && (growth.high - 2.33).abs() < 0.01);
        assert!((growth.expected - 1.82).abs() < 0.01);
        let half =
            area_growth(section(), ColdPressure::from_psi(100.0), ColdPressure::from_psi(50.0))
                .unwrap();
        assert!((half.low - 1.59).abs() < 0.01 && (half.high - 1.92).abs() < 0.02, "{half:?}");
    }

    // Implement makers' figures in the farm press: 800/45R26.5 at 160 kPa 163 kPa, 710/45R22.5 at
    // 260 kPa 216 kPa.
    #[test]
    fn table_flotation_tires_press_with_their_pressure() {
        for (p, observed) in [(160.0, 163.0), (260.0, 216.0)] {
            let p_m = mean_contact_pressure(section(), ContactModel::Flotation, kpa(p)).unwrap();
            assert!((p_m.as_kpa() / observed - 1.0).abs() < 0.25);
        }
    }

    #[test]
    fn what_leaves_no_patch_is_refused() {
        let try_of = |load, p, mm| {
            let delta = Length::from_mm(mm);
            footprint(section(), ContactModel::RoadTruck, kn(load), kpa(p), delta)
        };
        assert!(matches!(try_of(0.0, 500.0, 30.0), Err(FootprintError::Load { .. })));
        assert!(matches!(try_of(18.9, 20.0, 30.0), Err(FootprintError::Pressure { .. })));
        assert!(matches!(try_of(18.9, 1500.0, 30.0), Err(FootprintError::Pressure { .. })));
        assert!(matches!(try_of(18.9, 500.0, 0.0), Err(FootprintError::Deflection { .. })));
        assert!(matches!(try_of(18.9, 500.0, 150.0), Err(FootprintError::Deflection { .. })));
    }

    #[test]
    fn dimensions_alone_land_near_the_data_sheet() {
        let delta = deflection_from_dimensions(section(), kn(18.9), kpa(720.0)).unwrap();
        assert!((delta.as_mm() / 23.9 - 1.0).abs() < 0.1, "{delta}");
    }

    #[test]
    fn an_aspect_ratio_stands_for_the_rim() {
        let mm = Length::from_mm;
        let by_aspect = Section::with_aspect(mm(279.0), mm(1052.0), 240.25 / 2.79).unwrap();
        assert!((by_aspect.height() / section().height() - 1.0).abs() < 1e-9);
        assert!(Section::with_aspect(mm(279.0), mm(1052.0), f64::NAN).is_err());
        assert!(Section::with_aspect(mm(279.0), mm(1052.0), 200.0).is_err());
    }

    proptest! {
        #[test]
        fn more_pressure_gives_less_area(load in 8.0..25.0f64, p in 250.0..800.0f64, more in 5.0..90.0f64) {
            prop_assert!(of(load, p + more).area < of(load, p).area);
            prop_assert!(of(load, p + more).mean_pressure >= of(load, p).mean_pressure);
        }

        #[test]
        fn the_patch_carries_the_load(load in 8.0..25.0f64, p in 250.0..900.0f64) {
            let patch = of(load, p);
            prop_assert!((patch.mean_pressure.as_kpa() * patch.area.as_m2() - load).abs() < 1e-9);
            prop_assert!(patch.low < patch.area && patch.area < patch.high);
            prop_assert!(patch.lowest_pressure() < patch.highest_pressure());
            // An overloaded tire presses with its inflation pressure and more: the band must hold it.
            prop_assert!(patch.highest_pressure().as_kpa() >= p);
        }

        #[test]
        fn the_model_grows_within_the_band(from in 400.0..1000.0f64, to in 60.0..400.0f64) {
            let growth = area_growth(section(), kpa(from), kpa(to)).unwrap();
            prop_assert!(growth.low <= growth.expected + 1e-12);
            prop_assert!(growth.expected <= growth.high + 1e-12);
        }
    }
}
