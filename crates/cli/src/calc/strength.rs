//! Strength of a soil from one measure to the others.

use language::{Amount, Kind, Round};
use model::ground::Estimate;
use model::ground::strength::{Cbr, Reading, SoilType, strength};
use quantity::{Length, Stress};

use super::Answer;
use crate::args::{SoilKind, StrengthArgs};
use crate::outcome::Failure;
use crate::page::{cone_index, fine};
use crate::words::Words;

pub(super) fn answer(args: &StrengthArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("strength");
    let reading = reading(args, words, &mut answer)?;
    let soil = soil(args.soil, words, &mut answer);
    let found = strength(reading, soil).map_err(Failure::input)?;

    let format = &words.format;
    let stress = |stress: Stress, round| fine(format, Kind::Pressure, stress, round).to_string();
    let percent = |cbr: Cbr, round| format!("{} %", format.number(cbr.as_pct(), 1, round));
    let a_blow = |size: Length, round| {
        words.fill("calc-a-blow", &[("size", &fine(format, Kind::Size, size, round))])
    };
    let modulus = |modulus: Stress, round| modulus_shown(modulus, round, words).to_string();
    answer.result_band(words, ("cbr", "pct"), band(&found.cbr), Cbr::as_pct, percent);
    answer.result_band(words, ("dcp", "mm_per_blow"), band(&found.dcp), Length::as_mm, a_blow);
    let index = band(&found.cone_index);
    let as_read = |index: Stress, round| cone_index(format, index, round).to_string();
    answer.result_band(words, ("cone-index", "kpa"), index, Stress::as_kpa, as_read);
    answer.result_band(words, ("modulus", "mpa"), band(&found.modulus), Stress::as_mpa, modulus);
    let cohesion = band(&found.cohesion);
    answer.result_band(words, ("cohesion", "kpa"), cohesion, Stress::as_kpa, stress);

    let outside: Vec<String> = [
        ("calc-cbr", found.cbr.extrapolated),
        ("calc-dcp", found.dcp.extrapolated),
        ("calc-cone-index", found.cone_index.extrapolated),
        ("calc-modulus", found.modulus.extrapolated),
        ("calc-cohesion", found.cohesion.extrapolated),
    ]
    .into_iter()
    .filter(|(_, extrapolated)| *extrapolated)
    .map(|(name, _)| words.text(name))
    .collect();
    if !outside.is_empty() {
        let what = outside.join(", ");
        answer.warn(words.fill("calc-warn-strength-outside", &[("what", &what)]));
    }
    // The reading itself is nobody's equation, and comes last.
    let mut citations = vec![
        found.cbr.citation,
        found.dcp.citation,
        found.cone_index.citation,
        found.modulus.citation,
        found.cohesion.citation,
    ];
    citations.sort_by_key(|citation| citation.key == model::ground::strength::MEASUREMENT);
    for citation in citations {
        answer.cite(citation);
    }
    Ok(answer)
}

fn band<T: Copy>(estimate: &Estimate<T>) -> [T; 3] {
    [estimate.value, estimate.low, estimate.high]
}

/// Moduli are told in megapascals, but to readers of psi.
fn modulus_shown(modulus: Stress, round: Round, words: &Words) -> Amount {
    if words.format.unit(Kind::Pressure) == "psi" {
        Amount {
            number: words.format.number(modulus.as_psi(), 0, round),
            ..words.format.in_unit(modulus.as_psi(), 0, round, "psi")
        }
    } else {
        Amount {
            number: words.format.number(modulus.as_mpa(), 1, round),
            ..words.format.in_unit(modulus.as_mpa(), 1, round, "MPa")
        }
    }
}

fn reading(args: &StrengthArgs, words: &Words, answer: &mut Answer) -> Result<Reading, Failure> {
    match (&args.dcp, &args.cbr, &args.cone_index) {
        (Some(dcp), _, _) => {
            answer.put_in_given(words, "dcp", "mm_per_blow", dcp, Length::as_mm, Kind::Size);
            Ok(Reading::Dcp(dcp.value))
        }
        (_, Some(share), _) => Ok(Reading::Cbr(answer.put_in_cbr("cbr", share)?)),
        (_, _, Some(index)) => {
            answer.put_in_cone_index(words, index);
            Ok(Reading::ConeIndex(index.value))
        }
        _ => Err(Failure::call(anyhow::anyhow!("give --dcp, --cbr or --cone-index"))),
    }
}

fn soil(given: Option<SoilKind>, words: &Words, answer: &mut Answer) -> SoilType {
    let (name, soil) = match given.unwrap_or(SoilKind::FineGrained) {
        SoilKind::LeanClay => ("lean-clay", SoilType::LeanClay),
        SoilKind::FatClay => ("fat-clay", SoilType::FatClay),
        SoilKind::FineGrained => ("fine-grained", SoilType::FineGrained),
        SoilKind::CoarseGrained => ("coarse-grained", SoilType::CoarseGrained),
    };
    let text = words.text(&format!("calc-soil-{name}"));
    let shown = match given {
        Some(_) => text,
        None => words.fill("calc-by-default", &[("value", &text)]),
    };
    answer.put_in_plain("soil", name, shown);
    soil
}
