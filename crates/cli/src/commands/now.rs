//! `airtide now`

use std::sync::Arc;

use language::UnitProfile;
use model::haul_cycle::HaulCycle;
use plan::now::{Call, CallError, Gauged, Load, Reading, Trailer, Verdict, Warmth, answer, card};
use quantity::PressureDifference;
use study::{Named, NamedError};
use survey::Survey;
use view::{NowDocument, NowTableDocument, SubjectView};

use super::opened::{driven_by, open, tell_problems};
use super::road;
use crate::args::{GlobalArgs, NowArgs, ReadFlag, TrailerFlag};
use crate::outcome::{Failure, Outcome};
use crate::page;
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &NowArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    if args.unit.is_none() && args.combination.is_none() && args.haul.is_none() {
        return Err(Failure::call(anyhow::anyhow!(
            "which truck? give --unit with its fleet number, or --combination"
        )));
    }
    let opened = open(&args.survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    // On the phone, only what keeps the answer from being given is told.
    if opened.errors().next().is_some() {
        tell_problems(&opened, &words, terminal)?;
    }
    road::survey_of(&opened)?;
    let units: Vec<String> = args.unit.iter().cloned().collect();
    let survey = driven_by(&opened, &units, args.haul.as_deref())?;
    let survey = &survey.ok_or_else(|| Failure::input(NamedError::NoneSound))?;
    let named = Named { combination: args.combination.as_deref(), haul: args.haul.as_deref() };
    let haul = road::haul(survey, named)?;
    let call = call(args, survey, &haul)?;
    let subject = SubjectView {
        unit: args.unit.clone(),
        haul: haul.name.clone(),
        combination: haul.combination.name.clone(),
        chain_state: args.chains.clone(),
        with_unapproved: args.with_unapproved,
    };
    if args.table {
        return table(args, &haul, &call, subject, global, terminal, &words);
    }
    let answer = answer(&haul, &call).map_err(refused)?;
    let document = NowDocument::new(&haul, subject, &answer);
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&page::now(&document, &words))?;
    }
    Ok(if answer.verdict == Verdict::Go { Outcome::Done } else { Outcome::Problems })
}

fn table(
    args: &NowArgs,
    haul: &HaulCycle,
    call: &Call,
    subject: SubjectView,
    global: &GlobalArgs,
    terminal: Terminal,
    words: &Words,
) -> Result<Outcome, Failure> {
    let (warmth, tires) = match warmth(args) {
        Warmth::Cold if !args.tires.ran_last_hour => (Warmth::Cold, "cold"),
        Warmth::NotKnown if !args.tires.ran_last_hour => (Warmth::NotKnown, "not-known"),
        _ => (Warmth::Warm, "warm"),
    };
    let rows = card(haul, call, warmth, gauge_step(words)).map_err(refused)?;
    let document = NowTableDocument::new(haul, subject, tires, &rows);
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&page::now_table(&document, words))?;
    }
    Ok(Outcome::Done)
}

/// Steps that a gauge in the reader's unit shows.
pub(super) fn gauge_step(words: &Words) -> PressureDifference {
    match words.format.profile() {
        UnitProfile::Us => PressureDifference::from_psi(5.0),
        UnitProfile::Si => PressureDifference::from_kpa(25.0),
        UnitProfile::MetricBar => PressureDifference::from_bar(0.25),
    }
}

/// Weather outside the gas law is the survey's; everything else is the caller's.
fn refused(error: CallError) -> Failure {
    match error {
        CallError::Plan(_) | CallError::NoRungs => Failure::input(error),
        other => Failure::call(other),
    }
}

fn warmth(args: &NowArgs) -> Warmth {
    match (args.tires.cold, args.tires.warm) {
        (true, _) => Warmth::Cold,
        (_, true) => Warmth::Warm,
        _ => Warmth::NotKnown,
    }
}

fn call(args: &NowArgs, survey: &Survey, haul: &HaulCycle) -> Result<Call, Failure> {
    let load = match &args.load {
        Some(said) => road::load(haul, said)?,
        None => Load::Unknown,
    };
    let reading = |flag: &ReadFlag| -> Result<Reading, Failure> {
        Ok(Reading {
            whose: road::whose(haul, &flag.who)?,
            gauged: match flag.mate {
                Some(mate) => Gauged::Mates(flag.one, mate),
                None => Gauged::One(flag.one),
            },
            warmth: warmth(args),
            typed_in: road::unit(&flag.unit),
        })
    };
    Ok(Call {
        load,
        chains: args.chains.clone(),
        readings: args.readings.iter().map(reading).collect::<Result<_, _>>()?,
        ran_last_hour: args.tires.ran_last_hour,
        ambient: args.ambient,
        trailer: trailer(&args.trailer, survey, haul)?,
        with_unapproved: args.with_unapproved,
        cap_step: survey.speed_cap_step,
    })
}

fn trailer(flag: &TrailerFlag, survey: &Survey, haul: &HaulCycle) -> Result<Trailer, Failure> {
    Ok(match flag {
        TrailerFlag::Planned => Trailer::AsPlanned,
        TrailerFlag::None => Trailer::None,
        TrailerFlag::Unknown => Trailer::Unknown,
        TrailerFlag::LeftLow => Trailer::LeftLow,
        TrailerFlag::LeftShut => Trailer::LeftShut,
        TrailerFlag::Tires(model) => {
            let tire = survey.tires.get(model).ok_or_else(|| {
                let known: Vec<&str> = survey.tires.keys().map(String::as_str).collect();
                Failure::call(anyhow::anyhow!(
                    "there is no sound tire model '{model}'; there are: {}. A tire that the \
                     survey does not know is --trailer unknown",
                    known.join(", ")
                ))
            })?;
            Trailer::OtherTires(Arc::clone(tire))
        }
        TrailerFlag::SetFor(state) => {
            Trailer::OtherLoadStateSelected(road::load_state(haul, state)?)
        }
    })
}
