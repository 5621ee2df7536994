//! Heat load of an earthmover tire.

use language::{Kind, Round};
use model::tire::tkph::{Haulage, TKPH, TKPH_AMBIENT, TKPH_DISTANCE, site_tkph};

use super::{Answer, repeated};
use crate::args::TkphArgs;
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

pub(super) fn answer(args: &TkphArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let near = Round::Nearest;
    let mut answer = Answer::to("tkph");
    for (name, load) in [("empty-load", &args.empty_load), ("laden-load", &args.laden_load)] {
        let shown = repeated(words, &load.text, load.value.0, Kind::Load);
        answer.put_in(name, "kg", load.value.0.as_kg(), shown);
    }
    let length = &args.cycle_length;
    let shown = repeated(words, &length.text, length.value, Kind::Distance);
    answer.put_in("cycle-length", "km", length.value.as_km(), shown);
    answer.put_in_plain("cycles", args.cycles, args.cycles);
    let hours = &args.hours;
    let shown = repeated(words, &hours.text, hours.value, Kind::Hours);
    answer.put_in("hours", "h", hours.value.as_h(), shown);
    let ambient = &args.ambient;
    let shown = repeated(words, &ambient.text, ambient.value, Kind::Temperature);
    answer.put_in("ambient", "c", ambient.value.as_celsius(), shown);

    let found = site_tkph(Haulage {
        empty_load: args.empty_load.value.0,
        laden_load: args.laden_load.value.0,
        cycle_length: length.value,
        cycles: args.cycles,
        hours: hours.value,
        ambient: ambient.value,
    })
    .map_err(Failure::input)?;
    for (name, value) in [("tkph", found.site), ("tkph-corrected", found.corrected)] {
        let shown = format!(
            "{} t·km/h = {} ton·mi/h",
            format.number(value.as_tkph(), 1, Round::Up),
            format.number(value.as_tmph(), 1, Round::Up)
        );
        answer.result(name, "", value.as_tkph(), shown);
    }
    let load = format.load(found.mean_load, near);
    answer.result("mean-load", "kg", found.mean_load.as_kg(), load);
    let speed = fine(format, Kind::Speed, found.mean_speed, near);
    answer.result("mean-speed", "kmh", found.mean_speed.as_kmh(), speed);
    answer.result("distance-factor", "", found.k1, format.number(found.k1, 3, near));
    let factor = found.ambient.largest();
    answer.result("ambient-factor", "", factor, format.number(factor, 3, near));
    if found.extrapolated {
        answer.warn(words.text("calc-warn-tkph-speed"));
    }
    answer.cite_key(TKPH);
    answer.cite_key(TKPH_DISTANCE);
    answer.cite_key(TKPH_AMBIENT);
    Ok(answer)
}
