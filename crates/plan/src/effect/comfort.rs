//! Heat in the tires, ride, and wind-up between driven axles.

use std::cell::RefCell;

use model::haul_cycle::HaulCycle;
use model::tire::deflection::DeflectionLaw;
use model::tire::ride::{RideError, Suspension, WheelEnd, ride_change};
use model::tire::stiffness::Stiffness;
use model::tire::warm_up::{AirHeat, WarmUp, judge};
use model::vehicle::AxleGroup;
use quantity::{ColdPressure, Length, Mass, Speed, Temperature, TemperatureDifference};

use super::band::{Band, Finding, NotAssessed};
use super::tire::OnTire;

/// Heat of a tire on a leg, if the leg is long enough to warm it.
#[derive(Debug, Clone, PartialEq)]
pub struct Heat {
    /// Rise of the contained air over ambient.
    pub rise: TemperatureDifference,
    /// Air in the tire on the warmest day.
    pub air: Temperature,
    /// What that means.
    pub judged: AirHeat,
    /// Whether the balance was asked outside where it holds.
    pub extrapolated: bool,
}

/// Heat of a tire.
///
/// # Errors
/// [`NotAssessed::OutOfRange`] as [`WarmUp::new`].
///
/// # Source
/// `tire-heat-balance`, `contained-air-heat`.
pub fn heat(haul: &HaulCycle, group: &AxleGroup, tire: &OnTire, speed: Speed) -> Finding<Heat> {
    let warm = WarmUp::new(&group.tire, tire.load).map_err(|error| NotAssessed::refused(&error))?;
    let rise = warm.rise(tire.pressure, speed);
    let air = haul.weather.warmest + rise.value;
    Ok(Heat { rise: rise.value, air, judged: judge(air), extrapolated: rise.extrapolated })
}

/// Mass under the springs at a wheel end: an engineering value of heavy axles.
const UNSPRUNG: Mass = Mass::from_kg(500.0);

/// A ride by group, load and the two pressures.
type Ride = (usize, Mass, [ColdPressure; 2], Finding<Band<f64>>);

/// Rides that were worked out.
#[derive(Default)]
pub(super) struct Rides {
    known: RefCell<Vec<Ride>>,
}

impl Rides {
    /// Change of body vibration over an axle against full pressure at the same speed, as a share:
    /// from steel to air springs, which the survey does not tell apart.
    pub fn of(
        &self,
        index: usize,
        group: &AxleGroup,
        load: Mass,
        full: ColdPressure,
        pressure: ColdPressure,
    ) -> Finding<Band<f64>> {
        if full == pressure {
            return Ok(Band::exact(0.0));
        }
        let key = [full, pressure];
        let found = self.known.borrow().iter().find_map(|(known, mass, pressures, ride)| {
            ((*known, *mass, *pressures) == (index, load, key)).then(|| ride.clone())
        });
        found.unwrap_or_else(|| {
            let ride = ride(group, load, full, pressure);
            self.known.borrow_mut().push((index, load, key, ride.clone()));
            ride
        })
    }
}

fn ride(
    group: &AxleGroup,
    load: Mass,
    full: ColdPressure,
    pressure: ColdPressure,
) -> Finding<Band<f64>> {
    let law = DeflectionLaw::of(&group.tire).map_err(|error| NotAssessed::refused(&error))?;
    let tires = f64::from(group.tires_per_end());
    let stiffness = |pressure| {
        law.tangent_stiffness(load, pressure)
            .map(|one| Stiffness::from_n_per_mm(tires * one.as_n_per_mm()))
            .map_err(|error| NotAssessed::refused(&error))
    };
    let (from, to) = (stiffness(full)?, stiffness(pressure)?);
    let change = |suspension| {
        let sprung = load * tires - UNSPRUNG;
        let end = WheelEnd { suspension, sprung, unsprung: UNSPRUNG };
        ride_change(end, from, to)
            .map(|change| change.body_pct / 100.0)
            .map_err(|error: RideError| NotAssessed::refused(&error))
    };
    let (air, steel) = (change(Suspension::Air)?, change(Suspension::Steel)?);
    Ok(Band::spanning(air.midpoint(steel), [air, steel]))
}

/// Slip between locked driven axles from which it is told: common practice, no source.
const WIND_UP: f64 = 0.005;

/// Difference of rolling circumference between driven axles that hold different pressures.
#[derive(Debug, Clone, PartialEq)]
pub struct WindUp {
    /// Between the largest and the smallest.
    pub difference: Band<Length>,
    /// The same over the mean circumference: the slip that locked axles must make up.
    pub slip: Band<f64>,
}

impl WindUp {
    /// Whether the expected slip is so large that locks are to be left open on firm ground.
    pub fn leave_locks_open(&self) -> bool {
        self.slip.middle >= WIND_UP
    }
}

/// Wind-up between driven groups; `None` with fewer than two of them on the road.
///
/// The rolling radius of a radial tire falls by about a third of its deflection; a fifth to a half
/// is the span taken. Common practice, no source.
pub fn wind_up(groups: &[AxleGroup], tires: &[Option<OnTire>]) -> Option<Finding<WindUp>> {
    const SHARES: [f64; 3] = [0.2, 1.0 / 3.0, 0.5];
    let driven: Vec<(&AxleGroup, &OnTire)> = groups
        .iter()
        .zip(tires)
        .filter_map(|(group, tire)| Some((group, tire.as_ref()?)))
        .filter(|(group, _)| group.driven)
        .collect();
    if driven.len() < 2 {
        return None;
    }
    let difference = |share: f64| -> Finding<(Length, f64)> {
        let around = driven.iter().map(|(group, tire)| {
            let deflection = group.tire.section_height() * tire.deflection.clone()?;
            Ok((group.tire.diameter / 2.0 - deflection * share) * std::f64::consts::TAU)
        });
        let around: Vec<Length> = around.collect::<Finding<_>>()?;
        let least = around.iter().copied().reduce(Length::min).unwrap_or(Length::ZERO);
        let most = around.iter().copied().reduce(Length::max).unwrap_or(Length::ZERO);
        Ok((most - least, (most - least) / ((most + least) / 2.0)))
    };
    let all = || {
        let [low, middle, high] = SHARES.map(difference);
        let (low, middle, high) = (low?, middle?, high?);
        Ok(WindUp {
            difference: Band { low: low.0, middle: middle.0, high: high.0 },
            slip: Band { low: low.1, middle: middle.1, high: high.1 },
        })
    };
    Some(all())
}
