//! A route: legs that follow one another, and places that lie on it.

use quantity::{Length, Speed};

use super::names;
use crate::convert::Loaded;
use crate::file::{JurisdictionWord, RouteFile, SurfaceWord};
use crate::problem::{Problem, ProblemKind};

/// Chainages closer than this are the same place.
const SAME_PLACE_KM: f64 = 0.000_5;

/// Checks a route's file.
pub(crate) fn route_file(file: &Loaded<RouteFile>, problems: &mut Vec<Problem>) {
    let data = &file.data;
    let names = data.legs.iter().map(|leg| leg.name.as_str());
    names::unique(&file.document, names, |index| format!("/legs/{index}/name"), problems);
    legs(file, problems);
    miles_an_hour(file, problems);
    places(file, problems);
}

/// US speed limits are multiples of 5 mph: a number that is one only as it stands is suspicious.
fn miles_an_hour(file: &Loaded<RouteFile>, problems: &mut Vec<Problem>) {
    const POSTED: std::ops::RangeInclusive<f64> = 45.0..=80.0;
    const STEP: f64 = 5.0;
    const NEAR: f64 = 0.5;
    for (index, leg) in file.data.legs.iter().enumerate() {
        let pointer = format!("/legs/{index}/speed_limit_kmh");
        let given = Speed::from_kmh(leg.speed_limit_kmh);
        let off_step = (given.as_mph() / STEP - (given.as_mph() / STEP).round()).abs() * STEP;
        let road = leg.jurisdiction == JurisdictionWord::UsPublic
            && matches!(leg.surface, SurfaceWord::Paved | SurfaceWord::Sealed);
        let written_as_kmh = file.document.place(&pointer).unit.is_none();
        if road
            && written_as_kmh
            && POSTED.contains(&leg.speed_limit_kmh)
            && leg.speed_limit_kmh % STEP == 0.0
            && off_step > NEAR
        {
            let kind = ProblemKind::SpeedInMilesAnHour { given, key: "speed_limit_mph".to_owned() };
            problems.push(file.problem(&pointer, kind));
        }
    }
}

fn legs(file: &Loaded<RouteFile>, problems: &mut Vec<Problem>) {
    let legs = &file.data.legs;
    if let Some(first) = legs.first().filter(|leg| leg.from_km.abs() > SAME_PLACE_KM) {
        let kind = ProblemKind::RouteStart { at: Length::from_km(first.from_km) };
        problems.push(file.problem("/legs/0/from_km", kind));
    }
    for (index, leg) in legs.iter().enumerate() {
        if leg.to_km <= leg.from_km {
            problems.push(file.problem(&format!("/legs/{index}/to_km"), ProblemKind::LegBackwards));
        }
    }
    for (index, pair) in legs.windows(2).enumerate() {
        let (end, begin) = (pair[0].to_km, pair[1].from_km);
        let kind = if begin > end + SAME_PLACE_KM {
            ProblemKind::LegGap { from: Length::from_km(end), to: Length::from_km(begin) }
        } else if begin < end - SAME_PLACE_KM {
            ProblemKind::LegOverlap { from: Length::from_km(begin), to: Length::from_km(end) }
        } else {
            continue;
        };
        problems.push(file.problem(&format!("/legs/{}/from_km", index + 1), kind));
    }
}

fn places(file: &Loaded<RouteFile>, problems: &mut Vec<Problem>) {
    let data = &file.data;
    let Some(length) = data.legs.last().map(|leg| leg.to_km) else { return };
    let lay_bys = data.lay_bys.iter().map(|place| ("lay_bys", place.at_km)).enumerate();
    let landmarks = data.landmarks.iter().map(|place| ("landmarks", place.at_km)).enumerate();
    for (index, (list, at)) in lay_bys.chain(landmarks) {
        if at > length + SAME_PLACE_KM {
            let kind =
                ProblemKind::OffRoute { at: Length::from_km(at), length: Length::from_km(length) };
            problems.push(file.problem(&format!("/{list}/{index}/at_km"), kind));
        }
    }
}
