//! Every effect on one leg in one run, by way.

use model::route::{Leg, Surface};
use quantity::{ColdPressure, Mass, Speed, Volume};

use super::band::{Band, Finding, NotAssessed};
use super::climb::{Grades, grades};
use super::comfort::{Heat, Rides, WindUp, heat, wind_up};
use super::gravel::{GravelEffect, Wheel, gravel_effect, washboard};
use super::least_resistance::{LeastResistance, least_resistance};
use super::means::Means;
use super::pavement::{PavementEffect, Rolling, Strains, as_it_stands};
use super::rolling::{Rolls, fuel_added, resistance};
use super::soil::{SoilEffect, is_soft, soil_effect};
use super::spread::SoilSpread;
use super::tire::{OnTire, Tires};
use super::way::{Held, Run, Way, Ways};

/// What one axle group does on a leg. An effect that its surface has no use for is `None`.
#[derive(Debug, Clone, PartialEq)]
pub struct GroupEffect {
    /// Index of the group.
    pub group: usize,
    /// A tire of it.
    pub tire: OnTire,
    /// Cold pressure in the full-pressure way.
    pub full_pressure: ColdPressure,
    /// Area of the patch over that at full pressure.
    pub contact_growth: Finding<Band<f64>>,
    /// Stress at 0.3 m over that at full pressure: least by the model, most where measurements
    /// found next to no difference.
    pub stress_ratio: Option<Finding<Band<f64>>>,
    /// Aggregate road.
    pub gravel: Option<Finding<GravelEffect>>,
    /// Soil that wheels sink into.
    pub soil: Option<Finding<SoilEffect>>,
    /// Where within its window the tire rolls easiest on a soft leg, in the plan's way.
    pub least_resistance: Option<Finding<LeastResistance>>,
    /// Whether the empty tires are likely to corrugate the road.
    pub washboard: Option<Finding<bool>>,
    /// Pavement.
    pub pavement: Option<Finding<PavementEffect>>,
    /// Heat.
    pub heat: Finding<Heat>,
    /// Change of body vibration over the axle at the same speed, as a share.
    pub ride: Finding<Band<f64>>,
}

/// One way on one leg in one run.
#[derive(Debug, Clone, PartialEq)]
pub struct LegWay {
    /// The way.
    pub way: Way,
    /// Index of the rung.
    pub rung: usize,
    /// Speed on the leg.
    pub speed: Speed,
    /// The groups that stand on the road.
    pub groups: Vec<GroupEffect>,
    /// Grades it climbs and holds.
    pub grades: Grades,
    /// Rolling resistance over that at full pressure, under the same load.
    pub resistance: Finding<Band<f64>>,
    /// Fuel that adds on the leg; below zero it saves.
    pub fuel_added: Finding<Band<Volume>>,
    /// Means over the axles on the road.
    pub means: Means,
    /// How sure climb and resistance are, on soft ground in the plan's way.
    pub spread: Option<SoilSpread>,
    /// Wind-up between driven axles, where there are two or more groups of them.
    pub wind_up: Option<Finding<WindUp>>,
}

/// One leg in one run.
#[derive(Debug, Clone, PartialEq)]
pub struct LegEffects {
    /// Index of the leg.
    pub leg: usize,
    /// The run.
    pub run: Run,
    /// The ways there are, the plan first.
    pub ways: Vec<LegWay>,
}

/// Work done once for many legs.
#[derive(Default)]
pub(super) struct Known {
    pub tires: Tires,
    strains: Strains,
    rides: Rides,
}

impl Known {
    /// The tires of a way on a leg, by group.
    pub fn tires_of(&self, ways: &Ways<'_>, way: Way, run: Run, leg: usize) -> Vec<Option<OnTire>> {
        let groups = &ways.haul.combination.groups;
        let tire = |index: usize| {
            let load = ways.tire_load(way, run, index)?;
            let held = ways.held(way, run, leg, index)?;
            Some(self.tires.of(index, &groups[index], load, held.cold))
        };
        (0..groups.len()).map(tire).collect()
    }
}

/// The effects on one leg in one run.
pub(super) fn leg_effects(ways: &Ways<'_>, known: &Known, run: Run, index: usize) -> LegEffects {
    let found = Way::ALL.into_iter().filter_map(|way| leg_way(ways, known, way, run, index));
    LegEffects { leg: index, run, ways: found.collect() }
}

fn leg_way(ways: &Ways<'_>, known: &Known, way: Way, run: Run, index: usize) -> Option<LegWay> {
    let leg = &ways.haul.route.legs[index];
    let (rung, speed) = (ways.rung(way, run, index)?, ways.speed(way, run, index)?);
    let tires = known.tires_of(ways, way, run, index);
    let full = known.tires_of(ways, Way::FullPressure, run, index);
    let laden = known.tires_of(ways, way, Run::Laden, index);
    let state = ways.state(way, run);
    let mut groups = Vec::new();
    let mut rolls = Vec::new();
    for (group, (tire, full)) in tires.iter().zip(&full).enumerate() {
        let (Some(tire), Some(full)) = (tire, full) else { continue };
        let place = Place { ways, known, way, run, index, leg, group, speed };
        groups.push(place.effect(tire, full, laden[group].as_ref()));
        rolls.push(Rolls {
            group: &ways.haul.combination.groups[group],
            carried: state.groups[group].mass,
            full: full.pressure,
            pressure: tire.pressure,
        });
    }
    let resistance = resistance(leg, &rolls);
    let gross = state.gross();
    Some(LegWay {
        way,
        rung,
        speed,
        grades: grades(ways, run, leg, state, &tires),
        fuel_added: resistance.clone().map(|ratio| fuel_added(ways, run, leg, gross, ratio)),
        resistance,
        means: Means::of(&groups, &state.axles_down),
        groups,
        spread: None,
        wind_up: wind_up(&ways.haul.combination.groups, &tires),
    })
}

/// A group on a leg in a way.
struct Place<'a> {
    ways: &'a Ways<'a>,
    known: &'a Known,
    way: Way,
    run: Run,
    index: usize,
    leg: &'a Leg,
    group: usize,
    speed: Speed,
}

impl Place<'_> {
    fn effect(&self, tire: &OnTire, full: &OnTire, laden: Option<&OnTire>) -> GroupEffect {
        let group = &self.ways.haul.combination.groups[self.group];
        let unpaved = !matches!(self.leg.surface, Surface::Paved | Surface::Sealed);
        let gravel = self.leg.surface == Surface::Gravel;
        let wheel = |tire: &OnTire| Wheel { load: tire.load, pressure: tire.pressure };
        let deflection = |tire: &OnTire| tire.deflection.clone();
        GroupEffect {
            group: self.group,
            full_pressure: full.pressure,
            contact_growth: contact_growth(tire, full, group),
            stress_ratio: unpaved.then(|| stress_ratio(tire, full)),
            gravel: gravel.then(|| gravel_effect(self.leg, wheel(full), wheel(tire))),
            soil: is_soft(self.leg.surface).then(|| soil_effect(self.leg, group, full, tire)),
            least_resistance: (self.way == Way::Plan)
                .then(|| least_resistance(self.ways, self.run, (self.index, self.leg), group, tire))
                .flatten(),
            washboard: (gravel && self.run == Run::Empty)
                .then_some(laden)
                .flatten()
                .map(|laden| washboard(&deflection(laden), &deflection(tire))),
            pavement: (!unpaved).then(|| self.pavement(tire.load, full.load)),
            heat: heat(self.ways.haul, group, tire, self.speed),
            ride: self.known.rides.of(self.group, group, tire.load, full.pressure, tire.pressure),
            tire: tire.clone(),
        }
    }

    fn pavement(&self, load: Mass, full_load: Mass) -> Finding<PavementEffect> {
        let (layers, thawed) = as_it_stands(self.leg)?;
        let held = |way| -> Finding<Held> {
            self.ways.held(way, self.run, self.index, self.group).ok_or(NotAssessed::NoSuchWay)
        };
        let at = |load, held: Held| Rolling { load, pressure: held.rolling };
        let group = &self.ways.haul.combination.groups[self.group];
        let (full, now) = (held(Way::FullPressure)?, held(self.way)?);
        self.known.strains.effect((&layers, thawed), group, at(full_load, full), at(load, now))
    }
}

/// Growth of the patch: by measured prints the least, by pressure and carcass the most.
fn contact_growth(
    tire: &OnTire,
    full: &OnTire,
    group: &model::vehicle::AxleGroup,
) -> Finding<Band<f64>> {
    let (now, before) = (tire.contact.clone()?, full.contact.clone()?);
    let ratio = now.area.middle / before.area.middle;
    let section = model::tire::stiffness::Section::of(&group.tire)
        .map_err(|error| NotAssessed::refused(&error))?;
    let grown = model::tire::footprint::area_growth(section, full.pressure, tire.pressure)
        .map_err(|error| NotAssessed::refused(&error))?;
    let by_load = tire.load / full.load;
    Ok(Band::spanning(ratio, [grown.low * by_load, grown.high * by_load]))
}

fn stress_ratio(tire: &OnTire, full: &OnTire) -> Finding<Band<f64>> {
    let ratio = tire.stress_below.clone()?.middle / full.stress_below.clone()?.middle;
    // Measured: at this depth load rules, and pressure does next to nothing.
    Ok(Band::spanning(ratio, [tire.load / full.load]))
}
