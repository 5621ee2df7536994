//! Deflection of a tire under load, or the cold pressure for a deflection.

use language::Round;
use model::source::{Citation, Standing};
use model::tire::RatedPoint;
use model::tire::deflection::{DeflectionLaw, LOAD_DEFLECTION};

use super::Answer;
use crate::args::DeflectionArgs;
use crate::outcome::Failure;
use crate::words::Words;

pub(super) fn answer(args: &DeflectionArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let near = Round::Nearest;
    let mut answer = Answer::to("deflection");
    let load = &args.rated_load;
    answer.put_in("rated-load", "kg", load, load.value.0.as_kg(), &format.load(load.value.0, near));
    let pressure = &args.rated_pressure;
    let shown = format.pressure(pressure.value, near);
    answer.put_in("rated-pressure", "kpa", pressure, pressure.value.as_kpa(), &shown);
    for (name, size) in [
        ("diameter", &args.diameter),
        ("rim-diameter", &args.rim_diameter),
        ("loaded-radius", &args.loaded_radius),
    ] {
        answer.put_in(name, "mm", size, size.value.as_mm(), &format.size(size.value, near));
    }
    let load = &args.load;
    answer.put_in("load", "kg", load, load.value.0.as_kg(), &format.load(load.value.0, near));

    let rated = RatedPoint { load: args.rated_load.value.0, pressure: args.rated_pressure.value };
    let law = DeflectionLaw::anchored(
        rated,
        args.diameter.value,
        args.rim_diameter.value,
        args.loaded_radius.value,
    )
    .map_err(Failure::input)?;
    let extrapolated = if let Some(pressure) = &args.pressure {
        let shown = format.pressure(pressure.value, near);
        answer.put_in("pressure", "kpa", pressure, pressure.value.as_kpa(), &shown);
        let found = law.deflection(args.load.value.0, pressure.value).map_err(Failure::input)?;
        let shown = format.size(found.value, Round::Up);
        answer.result("deflection", "mm", found.value.as_mm(), shown);
        let share = found.share_of_section_height;
        answer.result("deflection", "pct", share * 100.0, format.percent(share, 1, Round::Up));
        found.extrapolated
    } else if let Some(share) = &args.deflection_pct {
        let ratio = share.value.as_ratio();
        let shown = format.percent(ratio, 1, near);
        answer.put_in("deflection", "pct", share, share.value.as_percent(), &shown);
        let found = law.pressure_for(args.load.value.0, ratio).map_err(Failure::input)?;
        let shown = format.pressure(found.pressure, Round::Up);
        answer.result("pressure", "kpa", found.pressure.as_kpa(), shown);
        answer.warn(words.text("calc-warn-deflection-approves-nothing"));
        found.extrapolated
    } else {
        return Err(Failure::call(anyhow::anyhow!("give --pressure or --deflection-pct")));
    };
    if extrapolated {
        answer.warn(words.text("calc-warn-deflection-outside"));
    }
    answer.cite(Citation::of(LOAD_DEFLECTION, Standing::Read));
    answer.cite(law.anchor().clone());
    Ok(answer)
}
