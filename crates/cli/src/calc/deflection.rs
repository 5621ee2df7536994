//! Deflection of a tire under load, or the cold pressure for a deflection.

use language::{Kind, Round};
use model::source::{Citation, Standing};
use model::tire::RatedPoint;
use model::tire::deflection::{DeflectionLaw, LOAD_DEFLECTION};

use super::{Answer, repeated};
use crate::args::DeflectionArgs;
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

pub(super) fn answer(args: &DeflectionArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let mut answer = Answer::to("deflection");
    let load = &args.rated_load;
    let shown = repeated(words, &load.text, load.value.0, Kind::Load);
    answer.put_in("rated-load", "kg", load.value.0.as_kg(), shown);
    let pressure = &args.rated_pressure;
    let shown = repeated(words, &pressure.text, pressure.value, Kind::Pressure);
    answer.put_in("rated-pressure", "kpa", pressure.value.as_kpa(), shown);
    for (name, size) in [
        ("diameter", &args.diameter),
        ("rim-diameter", &args.rim_diameter),
        ("loaded-radius", &args.loaded_radius),
    ] {
        let shown = repeated(words, &size.text, size.value, Kind::Size);
        answer.put_in(name, "mm", size.value.as_mm(), shown);
    }
    let load = &args.load;
    let shown = repeated(words, &load.text, load.value.0, Kind::Load);
    answer.put_in("load", "kg", load.value.0.as_kg(), shown);

    let rated = RatedPoint { load: args.rated_load.value.0, pressure: args.rated_pressure.value };
    let law = DeflectionLaw::anchored(
        rated,
        args.diameter.value,
        args.rim_diameter.value,
        args.loaded_radius.value,
    )
    .map_err(Failure::input)?;
    let extrapolated = if let Some(pressure) = &args.pressure {
        let shown = repeated(words, &pressure.text, pressure.value, Kind::Pressure);
        answer.put_in("pressure", "kpa", pressure.value.as_kpa(), shown);
        let found = law.deflection(args.load.value.0, pressure.value).map_err(Failure::input)?;
        let shown = fine(format, Kind::Size, found.value, Round::Up);
        answer.result("deflection", "mm", found.value.as_mm(), shown);
        let share = found.share_of_section_height;
        answer.result("deflection", "pct", share * 100.0, format.percent(share, 1, Round::Up));
        found.extrapolated
    } else if let Some(share) = &args.deflection_pct {
        let ratio = share.value.as_ratio();
        let shown = format.percent(ratio, 1, Round::Nearest).to_string();
        answer.put_in("deflection", "pct", share.value.as_percent(), shown);
        let found = law.pressure_for(args.load.value.0, ratio).map_err(Failure::input)?;
        let shown = fine(format, Kind::Pressure, found.pressure, Round::Up);
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
