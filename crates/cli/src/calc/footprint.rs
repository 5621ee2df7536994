//! The patch a tire stands on.

use language::{Kind, Round};
use model::source::{Citation, Standing};
use model::tire::footprint::{ContactModel, PATCH_SHAPE, deflection_from_dimensions, footprint};
use model::tire::stiffness::{RHYNE, Section};
use quantity::{Area, ColdPressure, Length, Stress};

use super::Answer;
use crate::args::{FootprintArgs, TireKind};
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

pub(super) fn answer(args: &FootprintArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("footprint");
    note_inputs(args, words, &mut answer);
    let (load, pressure) = (args.load.value.0, args.pressure.value);
    let aspect = args.aspect_ratio.value.as_percent();
    let section = Section::with_aspect(args.section_width.value, args.diameter.value, aspect)
        .map_err(Failure::input)?;
    let model = match args.tire_kind {
        TireKind::RoadTruck => ContactModel::RoadTruck,
        TireKind::Flotation => ContactModel::Flotation,
    };
    let deflection = match &args.deflection {
        Some(given) => given.value,
        None => deflection_from_dimensions(section, load, pressure).map_err(|error| {
            let why = "no deflection from the dimensions alone (give --deflection)";
            Failure::input(anyhow::Error::new(error).context(why))
        })?,
    };
    let found = footprint(section, model, load, pressure, deflection).map_err(Failure::input)?;

    let format = &words.format;
    let area = |area: Area, round| fine(format, Kind::Area, area, round).to_string();
    let band = [found.area, found.low, found.high];
    answer.result_band(words, ("area", "cm2"), band, Area::as_cm2, area);
    let stress = |stress: Stress, round| fine(format, Kind::Pressure, stress, round).to_string();
    let band = [found.mean_pressure, found.lowest_pressure(), found.highest_pressure()];
    answer.result_band(words, ("mean-pressure", "kpa"), band, Stress::as_kpa, stress);
    let mut sizes = vec![
        ("length", found.length),
        ("width", found.width),
        ("equivalent-radius", found.equivalent_radius()),
    ];
    if args.deflection.is_none() {
        sizes.push(("deflection", deflection));
    }
    for (name, size) in sizes {
        let shown = fine(format, Kind::Size, size, Round::Nearest);
        answer.result(name, "mm", size.as_mm(), shown);
    }
    if found.length_capped {
        answer.warn(words.text("calc-warn-patch-capped"));
    }
    if found.extrapolated {
        answer.warn(words.text("calc-warn-patch-outside"));
    }
    answer.cite(found.citation);
    answer.cite_key(PATCH_SHAPE);
    if args.deflection.is_none() {
        answer.cite(Citation::of(RHYNE, Standing::FromMemory).at("deflection from the dimensions"));
    }
    Ok(answer)
}

fn note_inputs(args: &FootprintArgs, words: &Words, answer: &mut Answer) {
    answer.put_in_load(words, "load", &args.load);
    let (pressure, kpa) = (&args.pressure, ColdPressure::as_kpa);
    answer.put_in_given(words, "pressure", "kpa", pressure, kpa, Kind::Pressure);
    let width = &args.section_width;
    answer.put_in_given(words, "section-width", "mm", width, Length::as_mm, Kind::Size);
    let aspect = args.aspect_ratio.value.as_percent();
    let shown = format!("{} %", words.format.number(aspect, 1, Round::Nearest));
    answer.put_in("aspect-ratio", "pct", aspect, shown);
    answer.put_in_given(words, "diameter", "mm", &args.diameter, Length::as_mm, Kind::Size);
    if let Some(deflection) = &args.deflection {
        answer.put_in_given(words, "deflection", "mm", deflection, Length::as_mm, Kind::Size);
    }
    let (name, text) = match args.tire_kind {
        TireKind::RoadTruck => ("road-truck", "calc-tire-road-truck"),
        TireKind::Flotation => ("flotation", "calc-tire-flotation"),
    };
    answer.put_in_plain("tire-kind", name, words.text(text));
}
