//! What a way to run comes to over the whole haul.

use haul::{Course, Cycle, NoRecord, Truck};
use model::route::Surface;
use model::tire::tkph::{Haulage, SiteTkph, site_tkph};
use quantity::{Mass, Time, Volume};

use super::band::{Band, Finding, NotAssessed};
use super::leg::{LegEffects, LegWay};
use super::means::{asphalt_damage, gravel_rut, weighted};
use super::way::{Run, Way, Ways};
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
    /// Heat load of a tire of each group, to hold against the maker's rating of that tire.
    pub tkph: Vec<(usize, Finding<SiteTkph>)>,
    /// Legs of either run on which some effect could not be assessed.
    pub legs_not_assessed: usize,
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
    for (way, driven) in Way::ALL.into_iter().zip(driven_ways) {
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
            time: driven.clone().map(|(time, _)| time),
            fuel: driven.clone().and_then(|(_, used)| fuel(ways, &of_way, used)),
            gravel_rut: mean(ways, &of_way, gravel_rut),
            asphalt_damage: mean(ways, &of_way, asphalt_damage),
            tkph: tkph(ways, way, driven.ok().map(|(time, _)| time)),
            legs_not_assessed: of_way.iter().filter(|(_, leg)| lacks(leg)).count(),
        });
    }
    found
}

/// Time and fuel of a cycle.
fn drive(
    ways: &Ways<'_>,
    ladder: &Ladder,
    driven: Option<&Driven>,
    way: Way,
    detail: &Detail,
) -> Finding<(Time, Volume)> {
    let driven = driven.ok_or(NotAssessed::NoSuchWay)?;
    if way == Way::Plan {
        return Ok((driven.cycle.time(), driven.cycle.fuel()));
    }
    let plan = ways.held_all_the_way(way).ok_or(NotAssessed::NoSuchWay)?;
    let haul = ways.loaded(way);
    let truck = Truck::new(&haul, ladder.set_pressures(&haul))
        .map_err(|error| NotAssessed::refused(&error))?;
    let (empty, laden) = Course::of_haul(&haul, detail.cell, &detail.style)
        .map_err(|error| NotAssessed::refused(&error))?;
    let cycle = Cycle::drive(&haul, &truck, (&empty, &laden), &plan, detail.style, &mut NoRecord)
        .map_err(|error| NotAssessed::refused(&error))?;
    Ok((cycle.time(), cycle.fuel()))
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
    weighted(legs.iter().flat_map(|(place, leg)| {
        let road = &ways.haul.route.legs[place.leg];
        let axles = &ways.state(leg.way, place.run).axles_down;
        let of = &of;
        leg.groups.iter().map(move |group| {
            let axles = f64::from(axles[group.group]);
            ((road.to - road.from).as_km() * axles, of(group))
        })
    }))
}

/// Heat load of each group over the cycle, on the warmest day; groups that are lifted empty carry
/// nothing then.
///
/// # Source
/// `tkph-site-rating`.
fn tkph(ways: &Ways<'_>, way: Way, time: Option<Time>) -> Vec<(usize, Finding<SiteTkph>)> {
    let groups = 0..ways.haul.combination.groups.len();
    let of_group = |group: usize| {
        let load = |run| ways.tire_load(way, run, group);
        let haulage = Haulage {
            empty_load: load(Run::Empty).or(load(Run::Laden))?,
            laden_load: load(Run::Laden)?,
            cycle_length: ways.haul.route.length() * 2.0,
            cycles: 1.0,
            hours: time?,
            ambient: ways.haul.weather.warmest,
        };
        let found = site_tkph(haulage).map_err(|error| NotAssessed::refused(&error));
        Some((group, found))
    };
    groups.filter_map(of_group).collect()
}

fn lacks(leg: &LegWay) -> bool {
    let group = |group: &super::leg::GroupEffect| {
        group.tire.contact.is_err()
            || group.contact_growth.is_err()
            || group.heat.is_err()
            || group.ride.is_err()
            || group.stress_ratio.as_ref().is_some_and(Result::is_err)
            || group.gravel.as_ref().is_some_and(Result::is_err)
            || group.soil.as_ref().is_some_and(Result::is_err)
            || group.tire.gap.as_ref().is_some_and(Result::is_err)
            || group.washboard.as_ref().is_some_and(Result::is_err)
            || group.pavement.as_ref().is_some_and(Result::is_err)
    };
    leg.resistance.is_err()
        || leg.grades.climb.is_err()
        || leg.grades.descent.is_err()
        || leg.wind_up.as_ref().is_some_and(Result::is_err)
        || leg.groups.iter().any(group)
}
