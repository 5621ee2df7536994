//! Heat load of an earthmover tire.

use language::Round;
use model::tire::tkph::{Haulage, TKPH, TKPH_AMBIENT, TKPH_DISTANCE, site_tkph};

use super::Answer;
use crate::args::TkphArgs;
use crate::outcome::Failure;
use crate::words::Words;

pub(super) fn answer(args: &TkphArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let near = Round::Nearest;
    let mut answer = Answer::to("tkph");
    for (name, load) in [("empty-load", &args.empty_load), ("laden-load", &args.laden_load)] {
        answer.put_in(name, "kg", load, load.value.0.as_kg(), &format.load(load.value.0, near));
    }
    let length = &args.cycle_length;
    let shown = format.distance(length.value, near);
    answer.put_in("cycle-length", "km", length, length.value.as_km(), &shown);
    answer.put_in_plain("cycles", args.cycles, args.cycles);
    let hours = &args.hours;
    answer.put_in("hours", "h", hours, hours.value.as_h(), &format.hours(hours.value, near));
    let ambient = &args.ambient;
    let shown = format.temperature(ambient.value, near);
    answer.put_in("ambient", "c", ambient, ambient.value.as_celsius(), &shown);

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
            format.number(value.as_tkph(), 0, Round::Up),
            format.number(value.as_tmph(), 0, Round::Up)
        );
        answer.result(name, "", value.as_tkph(), shown);
    }
    let load = format.load(found.mean_load, near);
    answer.result("mean-load", "kg", found.mean_load.as_kg(), load);
    let speed = format.speed(found.mean_speed, near);
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
