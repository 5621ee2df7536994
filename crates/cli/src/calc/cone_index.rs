//! Cone index that a vehicle needs.

use language::{Kind, Round};
use model::ground::cone_index::{
    LIMITING, SoilVehicle, limiting_cone_index, mobility_index, vehicle_cone_index,
};
use quantity::{Length, SpecificPower, Stress};

use super::Answer;
use crate::args::ConeIndexArgs;
use crate::outcome::Failure;
use crate::page::cone_index;
use crate::words::Words;

pub(super) fn answer(args: &ConeIndexArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("cone-index");
    note_inputs(args, words, &mut answer);
    let vehicle = SoilVehicle {
        gross: args.gross_weight.value.0,
        axles: args.axles,
        driven_axles: args.driven_axles.unwrap_or(args.axles),
        tires: args.tires,
        tire_width: args.tire_width.value,
        tire_diameter: args.tire_diameter.value,
        clearance: args.clearance.value,
        power_to_weight: args.power_to_weight.value,
        automatic: args.automatic,
        chains: args.chains,
    };
    let index = mobility_index(&vehicle).map_err(Failure::input)?;
    let found = vehicle_cone_index(index, args.deflection_ratio.value.0).map_err(Failure::input)?;

    let index = found.mobility_index;
    answer.result("mobility-index", "", index, words.format.number(index, 2, Round::Nearest));
    for (name, needed) in [("vci1", found.one_pass), ("vci50", found.fifty_passes)] {
        answer.result(name, "psi", needed.as_psi(), in_psi(needed, words));
    }
    if let Some(height) = &args.section_height {
        let bent = height.value * args.deflection_ratio.value.0;
        let limiting = limiting_cone_index(&vehicle, bent).map_err(Failure::input)?;
        answer.result("vlci", "psi", limiting.as_psi(), in_psi(limiting, words));
    }
    if found.extrapolated {
        answer.warn(words.text("calc-warn-cone-index-deflection"));
    }
    answer.warn(words.text("calc-warn-fifty-passes"));
    answer.cite(found.one_pass_citation);
    answer.cite(found.fifty_passes_citation);
    if args.section_height.is_some() {
        answer.cite_key(LIMITING);
    }
    Ok(answer)
}

/// In psi, as cone indexes are told, and in the reader's unit where that is another.
fn in_psi(needed: Stress, words: &Words) -> String {
    let psi = format!("{} psi", words.format.number(needed.as_psi(), 1, Round::Up));
    if words.format.unit(Kind::Pressure) == "psi" {
        psi
    } else {
        format!("{psi} = {}", cone_index(&words.format, needed, Round::Up))
    }
}

fn note_inputs(args: &ConeIndexArgs, words: &Words, answer: &mut Answer) {
    answer.put_in_load(words, "gross-weight", &args.gross_weight);
    answer.put_in_plain("axles", args.axles, args.axles);
    if let Some(driven) = args.driven_axles {
        answer.put_in_plain("driven-axles", driven, driven);
    } else {
        let all = words.fill("calc-by-default", &[("value", &args.axles)]);
        answer.put_in_plain("driven-axles", args.axles, all);
    }
    answer.put_in_plain("tires", args.tires, args.tires);
    for (name, size) in [
        ("tire-width", &args.tire_width),
        ("tire-diameter", &args.tire_diameter),
        ("clearance", &args.clearance),
    ] {
        answer.put_in_given(words, name, "mm", size, Length::as_mm, Kind::Size);
    }
    if let Some(height) = &args.section_height {
        answer.put_in_given(words, "section-height", "mm", height, Length::as_mm, Kind::Size);
    }
    let power = &args.power_to_weight;
    let number = SpecificPower::as_kw_per_t(power.value);
    answer.put_in("power-to-weight", "kw_t", number, power.text.clone());
    let yes_or_no = |given| words.text(if given { "calc-yes" } else { "calc-no" });
    answer.put_in_plain("automatic", args.automatic, yes_or_no(args.automatic));
    answer.put_in_plain("chains", args.chains, yes_or_no(args.chains));
    let ratio = &args.deflection_ratio;
    answer.put_in_plain("deflection-ratio", ratio.value.0, &ratio.text);
}
