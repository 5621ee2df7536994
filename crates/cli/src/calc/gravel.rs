//! Gravel roads: the rut a wheel makes, and the thickness a soft subgrade needs.

use language::{Kind, Round};
use model::ground::gravel::{AggregateRoad, rut};
use model::ground::gravel_thickness::{
    Thickness, UNREINFORCED, WeakSubgrade, giroud_han, permissible_stress_thickness,
    unsurfaced_thickness,
};
use model::tire::Fitment;
use quantity::{Area, ColdPressure, Length, Stress};

use super::{Answer, Given, Share};
use crate::args::{GravelRutArgs, GravelThicknessArgs};
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

/// Cohesion for each percent of CBR, as in the equation of the topic.
const KPA_A_PERCENT: f64 = 30.0;
/// CBR of aggregate where none is given.
const USUAL_AGGREGATE: Share = Share::from_percent(15.0);

pub(super) fn rut_depth(args: &GravelRutArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("gravel-rut");
    answer.put_in_load(words, "wheel-load", &args.wheel_load);
    let (pressure, kpa) = (&args.pressure, ColdPressure::as_kpa);
    answer.put_in_given(words, "pressure", "kpa", pressure, kpa, Kind::Pressure);
    answer.put_in_given(words, "thickness", "mm", &args.thickness, Length::as_mm, Kind::Size);
    let road = AggregateRoad {
        thickness: args.thickness.value,
        top: answer.put_in_cbr("cbr-top", &args.cbr_top)?,
        bottom: answer.put_in_cbr("cbr-bottom", &args.cbr_bottom)?,
    };
    answer.put_in_plain("passes", args.passes, args.passes);
    let found = rut(&road, args.wheel_load.value.0, args.pressure.value, args.passes)
        .map_err(Failure::input)?;

    let size = |size: Length, round| fine(&words.format, Kind::Size, size, round).to_string();
    let band = [found.value, found.low, found.high];
    answer.result_band(words, ("rut", "mm"), band, Length::as_mm, size);
    answer.warn(words.text("calc-warn-rut-not-calibrated"));
    if found.extrapolated {
        answer.warn(words.text("calc-warn-rut-outside"));
    }
    answer.cite(found.citation);
    Ok(answer)
}

pub(super) fn thickness(args: &GravelThicknessArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("gravel-thickness");
    answer.put_in_load(words, "wheel-load", &args.wheel_load);
    let (pressure, kpa) = (&args.pressure, ColdPressure::as_kpa);
    answer.put_in_given(words, "pressure", "kpa", pressure, kpa, Kind::Pressure);
    answer.put_in_plain("passes", args.passes, args.passes);
    answer.put_in_given(words, "rut", "mm", &args.rut, Length::as_mm, Kind::Size);
    let subgrade = answer.put_in_cbr("cbr", &args.cbr)?;
    let base = if let Some(given) = &args.aggregate_cbr {
        answer.put_in_cbr("aggregate-cbr", given)?
    } else {
        let usual = format!("{} %", USUAL_AGGREGATE.as_percent());
        let text = words.fill("calc-by-default", &[("value", &usual)]);
        answer.put_in_cbr("aggregate-cbr", &Given { text, value: USUAL_AGGREGATE })?
    };
    let case = WeakSubgrade {
        wheel_load: args.wheel_load.value.0,
        pressure: args.pressure.value,
        passes: args.passes,
        rut: args.rut.value,
        subgrade,
        base,
        bearing_capacity_factor: answer.put_in_or(
            words,
            "bearing-capacity-factor",
            args.bearing_capacity_factor,
            UNREINFORCED,
        ),
        aperture_stability: answer.put_in_or(
            words,
            "aperture-stability",
            args.aperture_stability,
            0.0,
        ),
    };
    let found = giroud_han(&case).map_err(Failure::input)?;

    // Two other methods stand beside; where one has no answer, the band is without it.
    let cohesion = Stress::from_kpa(KPA_A_PERCENT * subgrade.as_pct());
    let (load, pressure) = (case.wheel_load, case.pressure);
    let army =
        permissible_stress_thickness(load, false, Fitment::Single, pressure, cohesion, false);
    let area = Area::from_m2(load.weight().as_kn() / pressure.as_kpa());
    let bare = unsurfaced_thickness(load, area, args.passes, subgrade);
    let others = [("permissible-stress-thickness", army), ("unsurfaced-thickness", bare)];
    let others: Vec<(&'static str, Thickness)> =
        others.into_iter().filter_map(|(name, other)| Some((name, other.ok()?))).collect();
    let all = || others.iter().map(|(_, other)| other.value).chain([found.value]);
    let low = all().fold(found.value, Length::min);
    let high = all().fold(found.value, Length::max);
    let size = |size: Length, round| fine(&words.format, Kind::Size, size, round).to_string();
    answer.result_band(words, ("thickness", "m"), [found.value, low, high], Length::as_m, size);
    for (name, other) in &others {
        answer.result(name, "m", other.value.as_m(), size(other.value, Round::Up));
    }
    answer.warn(words.text("calc-warn-thickness-methods"));
    if found.bare_ground_carries {
        answer.warn(words.text("calc-warn-bare-ground-carries"));
    }
    if found.extrapolated {
        answer.warn(words.text("calc-warn-thickness-outside"));
    }
    answer.cite(found.citation);
    for (_, other) in others {
        answer.cite(other.citation);
    }
    Ok(answer)
}
