//! Pull and resistance of a tire on soft soil, by three models side by side.

use language::{Kind, Round};
use model::ground::wheel_pull::{
    BRIXIUS, CLAY_NUMERIC, GEE_CLOUGH, MACLAURIN, MACLAURIN_SLIP, Pull, SECTION_HEIGHT, SoilWheel,
    WheelPullError, pulls,
};
use quantity::Length;
use serde_json::json;

use super::Answer;
use crate::args::WheelPullArgs;
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

pub(super) fn answer(args: &WheelPullArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("wheel-pull");
    let slip = args.slip.value.0;
    let mut wheel = SoilWheel::new(
        args.load.value.0,
        args.cone_index.value,
        args.width.value,
        args.diameter.value,
        args.deflection_ratio.value.0,
    )
    .map_err(Failure::input)?;
    if let Some(height) = &args.section_height {
        wheel = wheel.with_section_height(height.value).map_err(Failure::input)?;
    }
    note_inputs(args, &wheel, words, &mut answer);
    let found = pulls(&wheel, slip).map_err(Failure::input)?;

    let models = [
        ("brixius", Ok(&found.brixius)),
        ("maclaurin", found.maclaurin.as_ref()),
        ("gee-clough", found.gee_clough.as_ref()),
    ];
    for (name, pull) in models {
        note_pull(name, pull, words, &mut answer);
    }
    let (low, high) = found.net_span();
    for (name, net, round) in [("net-low", low, Round::Down), ("net-high", high, Round::Up)] {
        answer.result(name, "", net, words.format.number(net, 3, round));
    }
    let outside = models.into_iter().filter(|(_, pull)| pull.is_ok_and(|pull| pull.extrapolated));
    let outside: Vec<String> =
        outside.map(|(name, _)| words.text(&format!("calc-{name}"))).collect();
    if !outside.is_empty() {
        let models = outside.join(", ");
        answer.warn(words.fill("calc-warn-pull-outside", &[("models", &models)]));
    }
    if (slip - MACLAURIN_SLIP).abs() > 1e-9 {
        answer.warn(words.text("calc-warn-maclaurin-slip"));
    }
    answer.warn(words.text("calc-warn-pull-models-differ"));
    for key in [BRIXIUS, MACLAURIN, GEE_CLOUGH, CLAY_NUMERIC] {
        answer.cite_key(key);
    }
    if args.section_height.is_none() {
        answer.cite_key(SECTION_HEIGHT);
    }
    Ok(answer)
}

/// One model, or why it has no answer.
fn note_pull(
    name: &'static str,
    pull: Result<&Pull, &WheelPullError>,
    words: &Words,
    answer: &mut Answer,
) {
    match pull {
        Ok(pull) => {
            let value = json!({
                "net": pull.net,
                "resistance": pull.resistance,
                "towed_resistance": pull.towed_resistance,
                "extrapolated": pull.extrapolated,
            });
            let net = words.format.number(pull.net, 3, Round::Down);
            let resistance = words.format.number(pull.resistance, 3, Round::Up);
            let shown = words.fill("calc-pull", &[("net", &net), ("resistance", &resistance)]);
            answer.result(name, "", value, shown);
        }
        Err(error) => {
            let why = error.to_string();
            let value = json!({ "net": null, "resistance": null, "no_answer": why });
            answer.result(name, "", value, why);
        }
    }
}

fn note_inputs(args: &WheelPullArgs, wheel: &SoilWheel, words: &Words, answer: &mut Answer) {
    answer.put_in_load(words, "load", &args.load);
    answer.put_in_cone_index(words, &args.cone_index);
    let mm = Length::as_mm;
    answer.put_in_given(words, "width", "mm", &args.width, mm, Kind::Size);
    answer.put_in_given(words, "diameter", "mm", &args.diameter, mm, Kind::Size);
    if let Some(height) = &args.section_height {
        answer.put_in_given(words, "section-height", "mm", height, mm, Kind::Size);
    } else {
        let height = wheel.section_height();
        let shown = fine(&words.format, Kind::Size, height, Round::Nearest);
        let shown = words.fill("calc-section-height-default", &[("value", &shown)]);
        answer.put_in("section-height", "mm", height.as_mm(), shown);
    }
    for (name, given) in [("deflection-ratio", &args.deflection_ratio), ("slip", &args.slip)] {
        answer.put_in_plain(name, given.value.0, &given.text);
    }
}
