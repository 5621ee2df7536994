//! What a tire does under its load at a pressure: contact and stress below.

use std::cell::RefCell;

use model::ground::soil_stress::{Concentration, Contact as Circle, SoilState};
use model::tire::deflection::DeflectionLaw;
use model::tire::duals::{self, MEASURE_UNDER};
use model::tire::footprint::{ContactModel, footprint};
use model::tire::stiffness::Section;
use model::vehicle::AxleGroup;
use quantity::{Area, ColdPressure, Length, Mass, Stress};

use super::band::{Band, Finding, NotAssessed};

/// Depth at which the stress in the ground is told.
pub const DEPTH: Length = Length::from_m(0.3);

/// How a tire stands on the ground.
#[derive(Debug, Clone, PartialEq)]
pub struct Contact {
    /// Gross area of the patch.
    pub area: Band<Area>,
    /// Length along the road, of the expected patch.
    pub length: Length,
    /// Width that bears, of the expected patch.
    pub width: Length,
    /// Mean pressure in it.
    pub pressure: Band<Stress>,
    /// Whether no print of such a tire at such a pressure was read.
    pub extrapolated: bool,
}

/// A tire under its mean load at one pressure.
#[derive(Debug, Clone, PartialEq)]
pub struct OnTire {
    /// Load on the tire, the mean of its group.
    pub load: Mass,
    /// Cold pressure.
    pub pressure: ColdPressure,
    /// Deflection over section height.
    pub deflection: Finding<f64>,
    /// Contact.
    pub contact: Finding<Contact>,
    /// Largest vertical stress at [`DEPTH`], under a tire or between the two of a dual.
    pub stress_below: Finding<Band<Stress>>,
    /// Gap left between the sidewalls of a dual at the bottom; `None` for singles.
    pub gap: Option<Finding<Band<Length>>>,
}

impl OnTire {
    /// Whether the least credible gap is so small that it must be measured on the truck.
    ///
    /// # Source
    /// [`MEASURE_UNDER`], an engineering choice.
    pub fn measure_the_gap(&self) -> bool {
        matches!(&self.gap, Some(Ok(gap)) if gap.low < MEASURE_UNDER)
    }
}

/// Tires that were worked out; the same load at the same pressure is worked out once.
#[derive(Default)]
pub(super) struct Tires {
    known: RefCell<Vec<(usize, OnTire)>>,
}

impl Tires {
    /// A tire of a group, by its index.
    pub fn of(
        &self,
        index: usize,
        group: &AxleGroup,
        load: Mass,
        pressure: ColdPressure,
    ) -> OnTire {
        let same = |(known, tire): &&(usize, OnTire)| {
            *known == index && tire.load == load && tire.pressure == pressure
        };
        if let Some((_, tire)) = self.known.borrow().iter().find(same) {
            return tire.clone();
        }
        let tire = on_tire(group, load, pressure);
        self.known.borrow_mut().push((index, tire.clone()));
        tire
    }
}

/// A tire of a group under a load at a pressure.
///
/// # Validity
/// As the laws it is made from; stress at 0.3 m ±25 % and more by the state of the soil, and there
/// the model overstates what pressure does.
///
/// # Source
/// `van-vuuren-1974`, `chrono-335-65r22-5`, `boussinesq-froehlich`, `soehne-1953`, `sidewall-bulge`.
pub fn on_tire(group: &AxleGroup, load: Mass, pressure: ColdPressure) -> OnTire {
    let bent = DeflectionLaw::of(&group.tire).and_then(|law| law.deflection(load, pressure));
    let contact = bent.as_ref().map_err(NotAssessed::refused);
    let contact = contact.and_then(|bent| {
        let section = Section::of(&group.tire).map_err(|error| NotAssessed::refused(&error))?;
        let patch = footprint(section, ContactModel::RoadTruck, load, pressure, bent.value)
            .map_err(|error| NotAssessed::refused(&error))?;
        Ok(Contact {
            area: Band { low: patch.low, middle: patch.area, high: patch.high },
            length: patch.length,
            width: patch.width,
            pressure: Band {
                low: patch.lowest_pressure(),
                middle: patch.mean_pressure,
                high: patch.highest_pressure(),
            },
            extrapolated: patch.extrapolated || bent.extrapolated,
        })
    });
    let stress_below = contact.clone().and_then(|contact| stress_at(group, load, &contact, DEPTH));
    let gap = group.dual.map(|pair| {
        let bent = bent.as_ref().map_err(NotAssessed::refused)?;
        let left = duals::gap(pair.spacing, group.tire.section_width, bent.value);
        Ok(Band { low: left.low, middle: left.expected, high: left.high })
    });
    OnTire {
        load,
        pressure,
        deflection: bent
            .map(|bent| bent.share_of_section_height)
            .map_err(|error| NotAssessed::refused(&error)),
        contact,
        stress_below,
        gap,
    }
}

/// Stress at a depth: firm ground under the largest patch to soft ground under the smallest.
pub(super) fn stress_at(
    group: &AxleGroup,
    load: Mass,
    contact: &Contact,
    depth: Length,
) -> Finding<Band<Stress>> {
    let at = |pressure: Stress, soil: SoilState| {
        let circle = Circle::under(load, pressure)?;
        let nu = Concentration::of(soil);
        match group.dual {
            Some(pair) => Ok(circle.dual(pair.spacing, depth, nu)?.worst()),
            None => circle.on_axis(depth, nu),
        }
    };
    let Band { low, middle, high } = contact.pressure;
    let all = || {
        Ok(Band {
            low: at(low, SoilState::Firm)?,
            middle: at(middle, SoilState::Normal)?,
            high: at(high, SoilState::Soft)?,
        })
    };
    all().map_err(|error: model::ground::soil_stress::SoilStressError| NotAssessed::refused(&error))
}
