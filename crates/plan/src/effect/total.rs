//! What a way to run comes to over the whole haul.

use haul::{Course, Cycle, NoRecord, Truck};
use model::route::Surface;
use quantity::{Mass, Time, Volume};

use super::band::{Band, Finding, NotAssessed};
use super::leg::{LegEffects, LegWay};
use super::way::{Way, Ways};
use crate::Detail;
use crate::drive::Driven;
use crate::ladder::Ladder;
use crate::workers::{Workers, collect};

/// A way over the whole haul, a cycle at a time.
#[derive(Debug, Clone, PartialEq)]
pub struct Total {
    /// The way.
    pub way: Way,
    /// Payload of a trip.
    pub payload: Mass,
    /// Trips for what the plan carries in one.
    pub trips_for_the_same: f64,
    /// Time of the cycle.
    pub time: Finding<Time>,
    /// Fuel of the cycle: driven whole, with what unpaved ground adds or spares as a band.
    pub fuel: Finding<Band<Volume>>,
    /// Rut of aggregate over that at full pressure, mean over its length and axles.
    pub gravel_rut: Option<Finding<Band<f64>>>,
    /// Fatigue damage a pass to asphalt over that at full pressure, likewise.
    pub asphalt_damage: Option<Finding<Band<f64>>>,
    /// Legs of either run on which some effect could not be assessed.
    pub legs_not_assessed: usize,
}

/// Time and fuel of a cycle.
struct DrivenWay {
    time: Time,
    fuel: Volume,
}

pub(super) fn totals(
    ways: &Ways<'_>,
    ladder: &Ladder,
    driven: Option<&Driven>,
    legs: &[LegEffects],
    detail: &Detail,
    workers: &dyn Workers,
) -> Vec<Total> {
    let driven_ways = collect(workers, Way::ALL.len(), |index| {
        drive(ways, ladder, driven, Way::ALL[index], detail)
    });
    let planned = ways.payload(Way::Plan);
    let mut found = Vec::new();
    for (way, cycle) in Way::ALL.into_iter().zip(driven_ways) {
        let of_way: Vec<(&LegEffects, &LegWay)> = legs
            .iter()
            .filter_map(|leg| Some((leg, leg.ways.iter().find(|one| one.way == way)?)))
            .collect();
        if of_way.is_empty() {
            continue;
        }
        let payload = ways.payload(way);
        let trips_for_the_same = if payload > Mass::ZERO { planned / payload } else { 1.0 };
        found.push(Total {
            way,
            payload,
            trips_for_the_same,
            time: cycle.as_ref().map(|cycle| cycle.time).map_err(Clone::clone),
            fuel: cycle.and_then(|cycle| fuel(ways, &of_way, cycle.fuel)),
            gravel_rut: mean(ways, &of_way, |group| {
                Some(group.gravel.clone()?.map(|gravel| gravel.rut))
            }),
            asphalt_damage: mean(ways, &of_way, |group| {
                Some(group.pavement.clone()?.map(|pavement| {
                    let life = pavement.asphalt_life;
                    Band { low: 1.0 / life.high, middle: 1.0 / life.middle, high: 1.0 / life.low }
                }))
            }),
            legs_not_assessed: of_way.iter().filter(|(_, leg)| lacks(leg)).count(),
        });
    }
    found
}

fn drive(
    ways: &Ways<'_>,
    ladder: &Ladder,
    driven: Option<&Driven>,
    way: Way,
    detail: &Detail,
) -> Finding<DrivenWay> {
    let driven = driven.ok_or(NotAssessed::NoSuchWay)?;
    if way == Way::Plan {
        return Ok(DrivenWay { time: driven.cycle.time(), fuel: driven.cycle.fuel() });
    }
    let plan = ways.held_all_the_way(way).ok_or(NotAssessed::NoSuchWay)?;
    let haul = ways.loaded(way);
    let truck = Truck::new(&haul, ladder.set_pressures(&haul))
        .map_err(|error| NotAssessed::refused(&error))?;
    let (empty, laden) = Course::of_haul(&haul, detail.cell, &detail.style)
        .map_err(|error| NotAssessed::refused(&error))?;
    let cycle = Cycle::drive(&haul, &truck, (&empty, &laden), &plan, detail.style, &mut NoRecord)
        .map_err(|error| NotAssessed::refused(&error))?;
    Ok(DrivenWay { time: cycle.time(), fuel: cycle.fuel() })
}

/// The driven cycle knows what pavement does to resistance, and takes all other ground as it is.
fn fuel(ways: &Ways<'_>, legs: &[(&LegEffects, &LegWay)], driven: Volume) -> Finding<Band<Volume>> {
    let unpaved = legs.iter().filter(|(leg, _)| {
        let surface = ways.haul.route.legs[leg.leg].surface;
        !matches!(surface, Surface::Paved | Surface::Sealed)
    });
    let mut whole = Band::exact(driven);
    for (_, leg) in unpaved {
        let added = leg.fuel_added.clone()?;
        whole = Band {
            low: whole.low + added.low,
            middle: whole.middle + added.middle,
            high: whole.high + added.high,
        };
    }
    Ok(whole)
}

/// A band of the groups, mean over length and axles; `None` where no leg has it.
fn mean(
    ways: &Ways<'_>,
    legs: &[(&LegEffects, &LegWay)],
    of: impl Fn(&super::leg::GroupEffect) -> Option<Finding<Band<f64>>>,
) -> Option<Finding<Band<f64>>> {
    let mut parts = Vec::new();
    for (place, leg) in legs {
        let road = &ways.haul.route.legs[place.leg];
        let state = ways.state(leg.way, place.run);
        for group in &leg.groups {
            let Some(band) = of(group) else { continue };
            match band {
                Ok(band) => {
                    let axles = f64::from(state.axles_down[group.group]);
                    parts.push(((road.to - road.from).as_km() * axles, band));
                }
                Err(why) => return Some(Err(why)),
            }
        }
    }
    Band::weighted_mean(&parts).map(Ok)
}

fn lacks(leg: &LegWay) -> bool {
    let group = |group: &super::leg::GroupEffect| {
        group.tire.contact.is_err()
            || group.contact_growth.is_err()
            || group.heat.is_err()
            || group.ride.is_err()
            || group.stress_ratio.as_ref().is_some_and(Result::is_err)
            || group.gravel.as_ref().is_some_and(Result::is_err)
            || group.washboard.as_ref().is_some_and(Result::is_err)
            || group.pavement.as_ref().is_some_and(Result::is_err)
    };
    leg.resistance.is_err()
        || leg.grades.climb.is_err()
        || leg.grades.descent.is_err()
        || leg.wind_up.as_ref().is_some_and(Result::is_err)
        || leg.groups.iter().any(group)
}
