//! Flow through a restriction, and the time to fill or vent a volume through it.

use language::{Kind, Round};
use model::air::sources::{CLOSED_FORMS, REFERENCE_AIR, RESTRICTION};
use model::air::{Restriction, adiabatic_fill_time, adiabatic_vent, fill_time, vent_time};
use quantity::{AbsolutePressure, SonicConductance, Time, Volume};

use super::{Answer, Given, repeated};
use crate::args::{FillTimeArgs, FlowArgs, VentTimeArgs};
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

pub(super) fn flow(args: &FlowArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let mut answer = Answer::to("flow");
    let restriction = restriction(&mut answer, words, &args.conductance, args.critical_ratio)?;
    pressure(&mut answer, words, "upstream-abs", &args.upstream_abs);
    pressure(&mut answer, words, "downstream-abs", &args.downstream_abs);
    let temperature = &args.temperature;
    let shown = repeated(words, &temperature.text, temperature.value, Kind::Temperature);
    answer.put_in("temperature", "c", temperature.value.as_celsius(), shown);
    let found = restriction
        .mass_flow(args.upstream_abs.value, temperature.value, args.downstream_abs.value)
        .map_err(Failure::input)?;
    let shown = fine(format, Kind::MassFlow, found, Round::Nearest);
    answer.result("mass-flow", "kg_s", found.as_kg_per_s(), shown);
    let ratio = args.downstream_abs.value.ratio_to(args.upstream_abs.value);
    answer.result("pressure-ratio", "", ratio, format.number(ratio, 3, Round::Nearest));
    if ratio <= args.critical_ratio {
        answer.warn(words.text("calc-warn-choked"));
    }
    answer.cite_key(RESTRICTION);
    answer.cite_key(REFERENCE_AIR);
    Ok(answer)
}

pub(super) fn fill(args: &FillTimeArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("fill-time");
    volume(&mut answer, words, &args.volume);
    let restriction = restriction(&mut answer, words, &args.conductance, args.critical_ratio)?;
    pressure(&mut answer, words, "supply-abs", &args.supply_abs);
    pressure(&mut answer, words, "from-abs", &args.from_abs);
    pressure(&mut answer, words, "to-abs", &args.to_abs);
    let volume = args.volume.value;
    let (supply, from, to) = (args.supply_abs.value, args.from_abs.value, args.to_abs.value);
    let found = fill_time(volume, restriction, supply, from, to).map_err(Failure::input)?;
    time(&mut answer, words, "time", found);
    // The bound exists only while the flow stays choked.
    if let Ok(shortest) = adiabatic_fill_time(volume, restriction, supply, from, to) {
        time(&mut answer, words, "time-without-heat", shortest);
    }
    answer.warn(words.text("calc-warn-steady-supply"));
    answer.cite_key(CLOSED_FORMS);
    answer.cite_key(RESTRICTION);
    Ok(answer)
}

pub(super) fn vent(args: &VentTimeArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("vent-time");
    volume(&mut answer, words, &args.volume);
    let restriction = restriction(&mut answer, words, &args.conductance, args.critical_ratio)?;
    pressure(&mut answer, words, "ambient-abs", &args.ambient_abs);
    pressure(&mut answer, words, "from-abs", &args.from_abs);
    pressure(&mut answer, words, "to-abs", &args.to_abs);
    let volume = args.volume.value;
    let (ambient, from, to) = (args.ambient_abs.value, args.from_abs.value, args.to_abs.value);
    let found = vent_time(volume, restriction, ambient, from, to).map_err(Failure::input)?;
    time(&mut answer, words, "time", found);
    // The bound exists only while the flow stays choked.
    if let Ok(shortest) = adiabatic_vent(volume, restriction, ambient, from, to) {
        time(&mut answer, words, "time-without-heat", shortest.time);
    }
    answer.cite_key(CLOSED_FORMS);
    answer.cite_key(RESTRICTION);
    Ok(answer)
}

fn restriction(
    answer: &mut Answer,
    words: &Words,
    c: &Given<SonicConductance>,
    b: f64,
) -> Result<Restriction, Failure> {
    let shown = repeated(words, &c.text, c.value, Kind::Conductance);
    answer.put_in("conductance", "dm3_s_bar", c.value.as_dm3_per_s_bar(), shown);
    answer.put_in_plain("critical-ratio", b, b);
    Restriction::new(c.value, b).map_err(Failure::input)
}

fn volume(answer: &mut Answer, words: &Words, given: &Given<Volume>) {
    let shown = repeated(words, &given.text, given.value, Kind::AirVolume);
    answer.put_in("volume", "l", given.value.as_l(), shown);
}

fn pressure(
    answer: &mut Answer,
    words: &Words,
    name: &'static str,
    given: &Given<AbsolutePressure>,
) {
    let shown = repeated(words, &given.text, given.value, Kind::Pressure);
    answer.put_in(name, "kpa", given.value.as_kpa(), shown);
}

fn time(answer: &mut Answer, words: &Words, name: &'static str, found: Time) {
    let shown = fine(&words.format, Kind::Seconds, found, Round::Nearest);
    answer.result(name, "s", found.as_s(), shown);
}
