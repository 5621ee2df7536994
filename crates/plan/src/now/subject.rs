//! The truck as it stands, made ready to be judged: what is coupled, which states count, who was read.

use std::borrow::Cow;

use model::haul_cycle::HaulCycle;
use model::tire::Fitment;
use model::vehicle::{ChainState, LoadState};
use quantity::{GaugePressure, Speed, Temperature};

use super::question::{Call, CallError, Gauged, Load, Reading, Trailer, Whose};
use crate::ladder::Ladder;
use crate::window::{Approval, CellId, Site};

/// Readings above this are not of a tire.
const HIGHEST_READING: GaugePressure = GaugePressure::from_kpa(2000.0);

/// The truck as it stands.
pub(crate) struct Subject<'a> {
    pub haul: Cow<'a, HaulCycle>,
    pub site: Site,
    pub ladder: Ladder,
    /// Load states that must be stood, each with the chain state in force.
    pub states: Vec<(usize, usize)>,
    /// Air around the truck.
    pub ambient: Temperature,
}

impl<'a> Subject<'a> {
    pub fn of(haul: &'a HaulCycle, call: &Call) -> Result<Self, CallError> {
        let haul = as_coupled(haul, &call.trailer);
        let site = Site::new(&haul.weather).map_err(crate::PlanError::from)?;
        let ambient = call.ambient.unwrap_or(site.warmest);
        site.reference.with_temperature(ambient)?;
        let (ladder, _) = Ladder::of(&haul)?;
        if call.cap_step <= Speed::ZERO {
            return Err(CallError::NoStep { step: call.cap_step });
        }
        if haul.combination.rungs.is_empty() {
            return Err(CallError::NoRungs);
        }
        let states = states(&haul, call)?;
        let subject = Self { haul, site, ladder, states, ambient };
        for reading in &call.readings {
            subject.fits(reading, &call.trailer)?;
        }
        if let Trailer::OtherLoadStateSelected(index) = call.trailer {
            subject.state(index)?;
        }
        Ok(subject)
    }

    /// Axle groups that stand on the road in a state that counts, trailers left out if none is coupled.
    pub fn groups(&self, trailer: &Trailer) -> Vec<usize> {
        let combination = &self.haul.combination;
        (0..combination.groups.len())
            .filter(|&group| *trailer != Trailer::None || !self.is_on_trailer(group))
            .filter(|&group| {
                self.states
                    .iter()
                    .any(|&(state, _)| !combination.load_states[state].is_lifted(group))
            })
            .collect()
    }

    /// Whether a group belongs to a trailer.
    pub fn is_on_trailer(&self, group: usize) -> bool {
        let combination = &self.haul.combination;
        !combination.vehicles[combination.groups[group].vehicle].is_truck
    }

    /// A load state with the chain state in force.
    pub fn state_of(&self, (state, chains): (usize, usize)) -> (&LoadState, &ChainState) {
        let state = &self.haul.combination.load_states[state];
        (state, &state.chain_states[chains])
    }

    /// The heaviest state that counts.
    pub fn heaviest(&self) -> usize {
        let gross = |state: usize| self.haul.combination.load_states[state].gross();
        let states = self.states.iter().map(|(state, _)| *state);
        states.max_by(|&a, &b| gross(a).total_cmp(&gross(b))).unwrap_or(self.haul.laden_state)
    }

    /// Readings of a group: its own where there are any, else those of its channel.
    pub fn readings<'r>(&self, call: &'r Call, group: usize) -> Vec<&'r Reading> {
        let own: Vec<&Reading> =
            call.readings.iter().filter(|one| one.whose == Whose::Group(group)).collect();
        let Some(channel) = self.haul.combination.groups[group].channel.filter(|_| own.is_empty())
        else {
            return own;
        };
        call.readings.iter().filter(|one| one.whose == Whose::Channel(channel)).collect()
    }

    /// The slowest rung of a channel that may be set in every state that counts, with the value.
    pub fn slowest_settable(
        &self,
        channel: usize,
        with_unapproved: bool,
    ) -> Option<(usize, GaugePressure)> {
        let counts = |approval: Approval| {
            with_unapproved || matches!(approval, Approval::Maker | Approval::Standard)
        };
        (0..self.haul.combination.rungs.len()).find_map(|rung| {
            let values: Option<Vec<GaugePressure>> = self
                .states
                .iter()
                .map(|&(load_state, chain_state)| {
                    let id = CellId { channel, load_state, chain_state, rung };
                    let cell = self.ladder.cell(id).filter(|cell| counts(cell.approval))?;
                    Some(cell.set.as_ref()?.as_controller_reads)
                })
                .collect();
            Some((rung, values?.into_iter().max_by(GaugePressure::total_cmp)?))
        })
    }

    fn state(&self, index: usize) -> Result<(), CallError> {
        let known = self.haul.combination.load_states.len();
        if index < known { Ok(()) } else { Err(CallError::NoSuchLoadState { index, known }) }
    }

    fn fits(&self, reading: &Reading, trailer: &Trailer) -> Result<(), CallError> {
        let combination = &self.haul.combination;
        for gauge in [reading.gauged.softer(), reading.gauged.harder()] {
            if !(GaugePressure::ZERO..=HIGHEST_READING).contains(&gauge) {
                return Err(CallError::NotAReading { reading: gauge });
            }
        }
        let groups: Vec<usize> = match reading.whose {
            Whose::Channel(index) if index >= combination.channels.len() => {
                return Err(CallError::NoSuchPlace { what: "air channel", index });
            }
            Whose::Group(index) if index >= combination.groups.len() => {
                return Err(CallError::NoSuchPlace { what: "axle group", index });
            }
            Whose::Channel(channel) => {
                combination.groups_of(channel).map(|(index, _)| index).collect()
            }
            Whose::Group(group) => vec![group],
        };
        for index in groups {
            let group = &combination.groups[index];
            let name = || group.name.clone();
            if *trailer == Trailer::None && self.is_on_trailer(index) {
                return Err(CallError::NotCoupled { group: name() });
            }
            let mates = matches!(reading.gauged, Gauged::Mates(..));
            if mates && group.fitment == Fitment::Single {
                return Err(CallError::NoMates { group: name() });
            }
        }
        Ok(())
    }
}

/// The haul with the tires that are coupled.
fn as_coupled<'a>(haul: &'a HaulCycle, trailer: &Trailer) -> Cow<'a, HaulCycle> {
    let Trailer::OtherTires(tire) = trailer else { return Cow::Borrowed(haul) };
    let mut coupled = haul.clone();
    let combination = &mut coupled.combination;
    for group in &mut combination.groups {
        if !combination.vehicles[group.vehicle].is_truck {
            group.tire = tire.clone();
            group.also_fitted.clear();
        }
    }
    Cow::Owned(coupled)
}

fn states(haul: &HaulCycle, call: &Call) -> Result<Vec<(usize, usize)>, CallError> {
    let states = &haul.combination.load_states;
    let asked: Vec<usize> = match call.load {
        Load::State(index) if index >= states.len() => {
            return Err(CallError::NoSuchLoadState { index, known: states.len() });
        }
        Load::State(index) => vec![index],
        Load::Unknown => (0..states.len()).collect(),
    };
    let chained = |state: usize| -> Option<usize> {
        let names = &states[state].chain_states;
        match &call.chains {
            None => (!names.is_empty()).then_some(0),
            Some(wanted) => names.iter().position(|chains| chains.name == *wanted),
        }
    };
    let found: Vec<(usize, usize)> =
        asked.iter().filter_map(|&state| Some((state, chained(state)?))).collect();
    // An unknown load need not be one that runs on chains, but one of them must.
    let all_there = found.len() == asked.len() || call.load == Load::Unknown;
    match asked.first() {
        Some(&first) if found.is_empty() || !all_there => {
            let names = states[first].chain_states.iter();
            Err(CallError::NoSuchChainState {
                load_state: states[first].name.clone(),
                wanted: call.chains.clone().unwrap_or_default(),
                known: names.map(|chains| chains.name.clone()).collect(),
            })
        }
        _ => Ok(found),
    }
}
