//! Permits: the terms they put on stretches of a route, and the legs cut where terms begin and end.

use model::date::Date;
use model::route::{Leg, Permit, StatedPressure};
use quantity::{ColdPressure, GaugePressure, Length, Mass, PressureDifference, Speed, Time};

use super::date::period;
use super::{Catalog, Loaded, refer};
use crate::document::Document;
use crate::file::{PermitFile, PressuresWord, RouteFile, StretchFile};
use crate::problem::{PermitFault, Problem, ProblemKind, Reference};

/// Places closer than this are the same.
const SAME_PLACE: Length = Length::from_m(0.5);

/// A permit's terms on one stretch.
#[derive(Debug, Clone)]
pub(crate) struct Terms {
    /// Name of the route.
    pub route: String,
    from: Length,
    to: Length,
    permit: Permit,
    document: Document,
    /// Pointer of the stretch.
    at: String,
}

impl Terms {
    /// The permit's file.
    pub fn file(&self) -> &str {
        &self.document.path
    }
}

/// Terms of every stretch of a permit; what cannot be used becomes a problem.
pub(crate) fn terms(
    file: &Loaded<PermitFile>,
    routes: &Catalog<Loaded<RouteFile>>,
    today: Date,
    problems: &mut Vec<Problem>,
) -> Vec<Terms> {
    let (data, document) = (&file.data, &file.document);
    let from = ("/valid_from", data.valid_from.as_str());
    let days = period(document, from, data.expires.as_ref(), problems);
    if let Some((from, expires)) = days {
        if from > today {
            problems.push(file.problem("/valid_from", PermitFault::NotYet { from }.into()));
        }
        if let Some(on) = expires.filter(|last| *last < today) {
            problems.push(file.problem("/expires", PermitFault::Expired { on }.into()));
        }
    }
    let mut found = Vec::new();
    for (index, stretch) in data.stretches.iter().enumerate() {
        let at = format!("/stretches/{index}");
        let pointer = format!("{at}/route");
        let wanted = &stretch.route;
        let route = refer(routes, wanted, Reference::Route, document, &pointer, problems);
        let sound = bounds(file, stretch, &at, route, problems);
        let Some((from, expires)) = days.filter(|_| sound) else { continue };
        let in_force = from <= today && expires.is_none_or(|last| last >= today);
        found.push(Terms {
            route: stretch.route.clone(),
            from: Length::from_km(stretch.from_km),
            to: Length::from_km(stretch.to_km),
            permit: permit(data, stretch, in_force, expires),
            document: document.clone(),
            at,
        });
    }
    found
}

fn permit(
    data: &PermitFile,
    stretch: &StretchFile,
    in_force: bool,
    expires: Option<Date>,
) -> Permit {
    let stated = |kpa: f64| match data.pressures {
        PressuresWord::Cold => StatedPressure::Cold(ColdPressure::from_kpa(kpa)),
        PressuresWord::AsRead => StatedPressure::AsRead(GaugePressure::from_kpa(kpa)),
    };
    Permit {
        number: data.number.trim().to_owned(),
        authority: data.authority.trim().to_owned(),
        minimum: stretch.minimum_pressure_kpa.map(stated),
        maximum: stretch.maximum_pressure_kpa.map(stated),
        tolerance: stretch.tolerance_kpa.map(PressureDifference::from_kpa),
        speed: stretch.speed_kmh.map(Speed::from_kmh),
        gross_mass: stretch.gross_mass_kg.map(Mass::from_kg),
        evidence_interval: stretch.evidence_interval_s.map(Time::from_s),
        in_force,
        expires,
    }
}

/// Whether the stretch lies on its route and its terms agree with each other.
fn bounds(
    file: &Loaded<PermitFile>,
    stretch: &StretchFile,
    at: &str,
    route: Option<&Loaded<RouteFile>>,
    problems: &mut Vec<Problem>,
) -> bool {
    let told = problems.len();
    let mut tell = |key: &str, kind| problems.push(file.problem(&format!("{at}/{key}"), kind));
    let (from, to) = (Length::from_km(stretch.from_km), Length::from_km(stretch.to_km));
    if to <= from {
        tell("to_km", ProblemKind::LegBackwards);
    }
    let end = route.and_then(|route| route.data.legs.last());
    let length = end.map(|leg| Length::from_km(leg.to_km));
    if let Some(length) = length.filter(|length| to > *length + SAME_PLACE) {
        tell("to_km", ProblemKind::OffRoute { at: to, length });
    }
    if let (Some(low), Some(high)) = (stretch.minimum_pressure_kpa, stretch.maximum_pressure_kpa)
        && low > high
    {
        tell("minimum_pressure_kpa", PermitFault::PressuresCross.into());
    }
    route.is_some() && problems.len() == told
}

/// Reports stretches of one route that two permits in force cover.
pub(crate) fn overlaps(terms: &[Terms], problems: &mut Vec<Problem>) {
    for (index, later) in terms.iter().enumerate() {
        for earlier in &terms[..index] {
            let (from, to) = (later.from.max(earlier.from), later.to.min(earlier.to));
            let both = later.permit.in_force && earlier.permit.in_force;
            if both && later.route == earlier.route && to > from + SAME_PLACE {
                let file = earlier.document.path.clone();
                let line = earlier.document.line(&format!("{}/from_km", earlier.at));
                let fault = PermitFault::Overlaps { file, line, from, to };
                problems
                    .push(later.document.problem(&format!("{}/from_km", later.at), fault.into()));
            }
        }
    }
}

/// Legs cut where terms begin and end, each with the permit over it and the index of the leg it
/// was cut from. A permit's speed is kept where the leg's limit is higher.
pub(super) fn cut(
    legs: Vec<Leg>,
    terms: &[&Terms],
    problems: &mut Vec<Problem>,
) -> Vec<(usize, Leg)> {
    let mut found = Vec::with_capacity(legs.len());
    for (origin, leg) in legs.into_iter().enumerate() {
        let within =
            |place: &Length| *place > leg.from + SAME_PLACE && *place < leg.to - SAME_PLACE;
        let mut places: Vec<Length> =
            terms.iter().flat_map(|terms| [terms.from, terms.to]).filter(within).collect();
        places.sort_by(Length::total_cmp);
        places.dedup_by(|later, earlier| *later - *earlier < SAME_PLACE);
        let begins = std::iter::once(leg.from).chain(places.iter().copied());
        let ends = places.iter().copied().chain(std::iter::once(leg.to));
        for (from, to) in begins.zip(ends) {
            let middle = from + (to - from) / 2.0;
            let over = terms.iter().filter(|terms| (terms.from..terms.to).contains(&middle));
            let over = over.max_by_key(|terms| (terms.permit.in_force, terms.permit.expires));
            let mut part = Leg { from, to, ..leg.clone() };
            if let Some(terms) = over {
                part.permit = Some(terms.permit.clone());
                keep_speed(&mut part, terms, problems);
            }
            found.push((origin, part));
        }
    }
    found
}

fn keep_speed(leg: &mut Leg, terms: &Terms, problems: &mut Vec<Problem>) {
    let allowed = terms.permit.speed.filter(|_| terms.permit.in_force);
    if let Some(allowed) = allowed.filter(|allowed| *allowed < leg.speed_limit) {
        let fault =
            PermitFault::SpeedAbove { leg: leg.name.clone(), limit: leg.speed_limit, allowed };
        problems.push(terms.document.problem(&format!("{}/speed_kmh", terms.at), fault.into()));
        leg.speed_limit = allowed;
    }
}

impl From<PermitFault> for ProblemKind {
    fn from(fault: PermitFault) -> Self {
        Self::Permit(fault)
    }
}
