//! Wear of a paved road by an axle group.

use language::{Kind, Round};
use model::road::axle_factor::{AASHTO, Fitment, axle_factor, fourth_power, group_reference};
use quantity::Force;

use super::{Answer, Given};
use crate::args::{AxleFactorArgs, WheelFitment};
use crate::outcome::Failure;
use crate::words::Words;

/// Where the pavement is not known.
const USUAL_STRUCTURAL_NUMBER: f64 = 5.0;
const USUAL_TERMINAL: f64 = 2.5;

pub(super) fn answer(args: &AxleFactorArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("axle-factor");
    let load = args.axle_load.value.0;
    let given = Given { text: args.axle_load.text.clone(), value: load };
    answer.put_in_given(words, "axle-load", "kn", &given, Force::as_kn, Kind::Force);
    answer.put_in_plain("axles", args.axles, args.axles);
    let number = args.structural_number;
    let number = answer.put_in_or(words, "structural-number", number, USUAL_STRUCTURAL_NUMBER);
    let terminal = answer.put_in_or(words, "terminal", args.terminal, USUAL_TERMINAL);
    let found = axle_factor(load, args.axles, number, terminal).map_err(Failure::input)?;
    answer.result("lef", "", found, shown(found, Round::Nearest, words));
    answer.cite_key(AASHTO);

    if let Some(fitment) = args.fitment {
        let (name, fitment) = match fitment {
            WheelFitment::Single => ("single", Fitment::Single),
            WheelFitment::Dual => ("dual", Fitment::Dual),
        };
        answer.put_in_plain("fitment", name, words.text(&format!("calc-fitment-{name}")));
        if group_reference(args.axles, fitment).is_some() {
            let beside = fourth_power(load, args.axles, fitment).map_err(Failure::input)?;
            let band = [beside.value, beside.low, beside.high];
            let number = |factor, round| shown(factor, round, words);
            answer.result_band(words, ("lef-fourth-power", ""), band, |factor| factor, number);
            answer.cite(beside.citation);
        } else {
            answer.warn(words.text("calc-warn-no-fourth-power"));
        }
        if fitment == Fitment::Single {
            answer.warn(words.text("calc-warn-single-tires"));
        }
    }
    Ok(answer)
}

/// Factors of light axles are small.
fn shown(factor: f64, round: Round, words: &Words) -> String {
    words.format.number(factor, if factor < 0.1 { 5 } else { 3 }, round)
}
