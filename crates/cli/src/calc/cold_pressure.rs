//! A gauge reading carried to another temperature and altitude.

use language::{Kind, Round};
use model::tire::cold_warm::{Conditions, GAS_LAW, ISO_2533, carried_over};

use super::{Answer, repeated};
use crate::args::ColdPressureArgs;
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

pub(super) fn answer(args: &ColdPressureArgs, words: &Words) -> Result<Answer, Failure> {
    let to_altitude = args.to_altitude.as_ref().unwrap_or(&args.from_altitude);
    let from = Conditions::at_altitude(args.from_temperature.value, args.from_altitude.value)
        .map_err(Failure::input)?;
    let to = Conditions::at_altitude(args.to_temperature.value, to_altitude.value)
        .map_err(Failure::input)?;
    let found = carried_over(args.pressure.value, from, to);

    let mut answer = Answer::to("cold-pressure");
    let pressure = &args.pressure;
    let shown = repeated(words, &pressure.text, pressure.value, Kind::Pressure);
    answer.put_in("pressure", "kpa", pressure.value.as_kpa(), shown);
    for (name, given) in
        [("from-temperature", &args.from_temperature), ("to-temperature", &args.to_temperature)]
    {
        let shown = repeated(words, &given.text, given.value, Kind::Temperature);
        answer.put_in(name, "c", given.value.as_celsius(), shown);
    }
    for (name, given) in [("from-altitude", &args.from_altitude), ("to-altitude", to_altitude)] {
        let shown = repeated(words, &given.text, given.value, Kind::Span);
        answer.put_in(name, "m", given.value.as_m(), shown);
    }
    let shown = fine(&words.format, Kind::Pressure, found, Round::Nearest);
    answer.result("pressure", "kpa", found.as_kpa(), shown);
    if found.as_kpa() < 0.0 {
        answer.warn(words.text("calc-warn-below-ambient"));
    }
    answer.cite_key(GAS_LAW);
    answer.cite_key(ISO_2533);
    Ok(answer)
}
