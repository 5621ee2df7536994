//! What a call from the road and a question to the plan have in common: names as people say them.

use model::haul_cycle::HaulCycle;
use plan::now::{Load, Whose};
use quantity::{GaugePressure, Unit};
use study::{Named, NamedError, Opened, haul_of, haul_with_rungs};
use survey::Survey;

use crate::outcome::Failure;

/// The survey, where it is sound enough to be asked.
pub(super) fn survey_of(opened: &Opened) -> Result<&Survey, Failure> {
    opened.survey.as_ref().ok_or_else(|| Failure::input(NamedError::NoneSound))
}

/// The haul named, with the rungs of its ladder.
pub(super) fn haul(survey: &Survey, named: Named<'_>) -> Result<HaulCycle, Failure> {
    let haul = haul_of(survey, named).map_err(|error| match error {
        NamedError::NoneSound => Failure::input(error),
        other => Failure::call(other),
    })?;
    haul_with_rungs(survey, &haul.name).map_err(Failure::input)
}

/// A load as it was said: a state by its name, the empty or laden one of the haul, or unknown.
pub(super) fn load(haul: &HaulCycle, said: &str) -> Result<Load, Failure> {
    match (load_state(haul, said), said) {
        (Ok(state), _) => Ok(Load::State(state)),
        (Err(_), "unknown") => Ok(Load::Unknown),
        (Err(error), _) => Err(error),
    }
}

/// A load state by its name, or the haul's empty or laden one.
pub(super) fn load_state(haul: &HaulCycle, said: &str) -> Result<usize, Failure> {
    let states = &haul.combination.load_states;
    let by_name = states.iter().position(|state| state.name == said);
    let of_haul = match said {
        "empty" => Some(haul.empty_state),
        "laden" => Some(haul.laden_state),
        _ => None,
    };
    by_name.or(of_haul).ok_or_else(|| {
        let known: Vec<&str> = states.iter().map(|state| state.name.as_str()).collect();
        Failure::call(anyhow::anyhow!(
            "there is no load state '{said}'; there are: {}, unknown",
            known.join(", ")
        ))
    })
}

/// An air channel by its name.
pub(super) fn channel(haul: &HaulCycle, said: &str) -> Result<usize, Failure> {
    let channels = &haul.combination.channels;
    channels.iter().position(|channel| channel.name == said).ok_or_else(|| {
        let known: Vec<&str> = channels.iter().map(|channel| channel.name.as_str()).collect();
        Failure::call(anyhow::anyhow!(
            "there is no air channel '{said}'; there are: {}",
            known.join(", ")
        ))
    })
}

/// An air channel, or an axle group with or without its vehicle.
pub(super) fn whose(haul: &HaulCycle, said: &str) -> Result<Whose, Failure> {
    let combination = &haul.combination;
    if let Some(channel) = combination.channels.iter().position(|channel| channel.name == said) {
        return Ok(Whose::Channel(channel));
    }
    let full = |index: usize| {
        let group = &combination.groups[index];
        format!("{}.{}", combination.vehicles[group.vehicle].name, group.name)
    };
    let groups = 0..combination.groups.len();
    let found: Vec<usize> = groups
        .clone()
        .filter(|&index| full(index) == said || combination.groups[index].name == said)
        .collect();
    match found[..] {
        [group] => Ok(Whose::Group(group)),
        [] => {
            let channels = combination.channels.iter().map(|channel| channel.name.clone());
            let known: Vec<String> = channels.chain(groups.map(full)).collect();
            Err(Failure::call(anyhow::anyhow!(
                "no air channel or axle group is called '{said}'; there are: {}",
                known.join(", ")
            )))
        }
        _ => {
            let known: Vec<String> = found.into_iter().map(full).collect();
            Err(Failure::call(anyhow::anyhow!(
                "more than one axle group is called '{said}'; say which: {}",
                known.join(", ")
            )))
        }
    }
}

/// The unit of a reading, as quantities know it.
pub(super) fn unit(typed: &str) -> Option<&'static str> {
    GaugePressure::SYMBOLS.iter().copied().find(|symbol| *symbol == typed)
}
