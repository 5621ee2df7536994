//! The ground of a leg.

use model::ground::soil_class::{Season, SoilClass};
use model::ground::strength::{Cbr, Reading, SoilType};
use model::road::layered::{Layer, Pavement};
use model::route::{Aggregate, LegGround, SoilGiven, soil_type};
use quantity::{Length, Stress};

use super::Loaded;
use crate::file::{LegFile, RouteFile, SeasonWord, SoilClassWord};
use crate::problem::{GroundFault, Problem, ProblemKind};

/// The ground of one leg; `None` where the file says nothing of it, or what it says is broken.
pub(super) fn ground(
    file: &Loaded<RouteFile>,
    index: usize,
    problems: &mut Vec<Problem>,
) -> Option<LegGround> {
    let leg = &file.data.legs[index];
    let mut tell = |key: &str, fault: GroundFault| {
        let kind = ProblemKind::Ground(fault);
        problems.push(file.problem(&format!("/legs/{index}/{key}"), kind));
    };
    let soil = soil(leg, &mut tell);
    let cbr = |pct| Cbr::from_pct(pct).ok();
    let aggregate = leg.aggregate.map(|aggregate| Aggregate {
        thickness: Length::from_m(aggregate.thickness_m),
        top: aggregate.cbr_top_pct.and_then(cbr),
    });
    let below = soil.and_then(|soil| soil.strength().ok()).map(|found| found.cbr.value);
    let top = aggregate.and_then(|aggregate| aggregate.top);
    if top.zip(below).is_some_and(|(top, below)| top <= below) {
        tell("aggregate/cbr_top_pct", GroundFault::AggregateWeaker);
    }
    let layers = leg.layers.iter().map(|layer| Layer {
        modulus: Stress::from_mpa(layer.modulus_mpa),
        poisson: layer.poisson,
        thickness: layer.thickness_m.map(Length::from_m),
    });
    let pavement = (!leg.layers.is_empty()).then(|| Pavement::new(layers.collect()));
    let pavement = pavement.and_then(|made| {
        made.map_err(|error| tell("layers", GroundFault::Layers { message: error.to_string() }))
            .ok()
    });
    let found = LegGround { soil, aggregate, pavement, grip: leg.grip };
    (found != LegGround::default()).then_some(found)
}

fn soil(leg: &LegFile, tell: &mut impl FnMut(&str, GroundFault)) -> Option<SoilGiven> {
    let class = leg.soil_class.map(class);
    let measured = [
        ("cbr_pct", leg.cbr_pct.and_then(|pct| Cbr::from_pct(pct).ok()).map(Reading::Cbr)),
        ("cone_index_kpa", leg.cone_index_kpa.map(|kpa| Reading::ConeIndex(Stress::from_kpa(kpa)))),
        ("dcp_mm_per_blow", leg.dcp_mm_per_blow.map(|mm| Reading::Dcp(Length::from_mm(mm)))),
    ];
    let mut told = measured.iter().filter_map(|(key, reading)| Some((*key, (*reading)?)));
    if let Some((first, reading)) = told.next() {
        if let Some((second, _)) = told.next() {
            tell(second, GroundFault::ToldTwice { other: first });
        }
        // Without a class the conversions of fine-grained soil are taken, the weaker ground.
        let soil = class.map_or(SoilType::FineGrained, soil_type);
        return Some(SoilGiven::Measured { reading, soil });
    }
    let given = match (class, leg.season.map(season)) {
        (Some(class), Some(season)) => SoilGiven::Judged { class, season },
        (Some(_), None) => {
            tell("soil_class", GroundFault::ClassAlone);
            return None;
        }
        (None, Some(_)) => {
            tell("season", GroundFault::SeasonAlone);
            return None;
        }
        (None, None) => return None,
    };
    if given.strength().is_err() {
        tell("season", GroundFault::NoNumber);
        return None;
    }
    Some(given)
}

fn season(word: SeasonWord) -> Season {
    match word {
        SeasonWord::Drained => Season::Drained,
        SeasonWord::Wet => Season::Wet,
        SeasonWord::Thaw => Season::Thaw,
    }
}

fn class(word: SoilClassWord) -> SoilClass {
    match word {
        SoilClassWord::Gw => SoilClass::Gw,
        SoilClassWord::Gp => SoilClass::Gp,
        SoilClassWord::Gm => SoilClass::Gm,
        SoilClassWord::Gc => SoilClass::Gc,
        SoilClassWord::Sw => SoilClass::Sw,
        SoilClassWord::Sp => SoilClass::Sp,
        SoilClassWord::Sm => SoilClass::Sm,
        SoilClassWord::Sc => SoilClass::Sc,
        SoilClassWord::Ml => SoilClass::Ml,
        SoilClassWord::Cl => SoilClass::Cl,
        SoilClassWord::Ol => SoilClass::Ol,
        SoilClassWord::Mh => SoilClass::Mh,
        SoilClassWord::Ch => SoilClass::Ch,
        SoilClassWord::Oh => SoilClass::Oh,
    }
}
