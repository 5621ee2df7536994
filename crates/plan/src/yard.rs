//! Changes made standing in the yard: how long each channel should take, for acceptance tests.

use haul::{Course, Envelope, NoRecord, SetPressures, StandUntil, Stepper, Target, Truck};
use model::haul_cycle::HaulCycle;
use quantity::{GaugePressure, Length, PressureDifference, Time};

use crate::drive::NotDriven;
use crate::{Action, CellId, Detail, DriverShows, Ladder};

/// How far a measured time may lie from the predicted one, as a share; common practice, no source.
pub const ACCEPTED_SHARE: f64 = 0.2;

/// Longest time a change in the yard is followed.
const PATIENCE: Time = Time::from_s(2.0 * 3600.0);
/// Time between two looks at the tires.
const LOOK: Time = Time::from_s(1.0);
/// What a gauge in the yard cannot tell from the pressure wanted.
const THERE: PressureDifference = PressureDifference::from_kpa(1.0);

/// One change between neighboring rungs, standing, with the engine at high idle.
#[derive(Debug, Clone, PartialEq)]
pub struct YardChange {
    /// Index of the load state.
    pub load_state: usize,
    /// Index of the rung before.
    pub from: usize,
    /// Index of the rung after.
    pub to: usize,
    /// Raise or lower.
    pub action: Action,
    /// The channels that move.
    pub channels: Vec<YardChannel>,
}

/// What one channel should do in a change.
#[derive(Debug, Clone, PartialEq)]
pub struct YardChannel {
    /// Index of the channel.
    pub channel: usize,
    /// Value stored for the rung before, as the controller reads it.
    pub from: GaugePressure,
    /// Value stored for the rung after.
    pub to: GaugePressure,
    /// Time from the order until its tires are there; `None` where the air does not get there.
    pub time: Option<Time>,
}

impl YardChannel {
    /// Least and most time that a test accepts.
    pub fn accepted(&self) -> Option<[Time; 2]> {
        let time = self.time?;
        Some([time * (1.0 - ACCEPTED_SHARE), time * (1.0 + ACCEPTED_SHARE)])
    }
}

/// Every change between neighboring rungs, up and down, in the haul's load states and the usual
/// chain state.
///
/// Only what a driver may be shown is ordered: a cell that nobody approved holds road pressure, and
/// a rung with a dash is left out. Tires at the ambient temperature of the haul, reservoirs full.
///
/// # Errors
/// [`NotDriven`] where the combination or the route cannot be made ready.
pub fn yard_changes(
    haul: &HaulCycle,
    ladder: &Ladder,
    detail: &Detail,
) -> Result<Vec<YardChange>, NotDriven> {
    let truck = Truck::new(haul, shown(haul, ladder))?;
    let (course, _) = Course::of_haul(haul, detail.cell.max(Length::from_m(50.0)), &detail.style)?;
    let envelope = Envelope::new(&course, &[], &detail.style);
    let stepper = Stepper::new(&truck, &course, &envelope, detail.style);
    let mut states = vec![haul.empty_state, haul.laden_state];
    states.dedup();
    let mut found = Vec::new();
    for load_state in states {
        let rungs: Vec<usize> = (0..haul.combination.rungs.len())
            .filter(|&rung| stored_on_every_channel(haul, ladder, load_state, rung))
            .collect();
        for pair in rungs.windows(2) {
            for (from, to) in [(pair[0], pair[1]), (pair[1], pair[0])] {
                let change = change(haul, ladder, &stepper, load_state, (from, to))?;
                found.extend(change);
            }
        }
    }
    Ok(found)
}

/// The value that stands in the controller for a cell, vented and as it reads.
fn stored(ladder: &Ladder, id: CellId) -> Option<(GaugePressure, GaugePressure)> {
    let cell = match ladder.driver_shows(id)? {
        DriverShows::Set => ladder.cell(id)?,
        DriverShows::RoadPressure => ladder.road_cell(id)?,
        DriverShows::Dash => return None,
    };
    let set = cell.set.as_ref()?;
    Some((set.vented, set.as_controller_reads))
}

fn id(channel: usize, load_state: usize, rung: usize) -> CellId {
    CellId { channel, load_state, chain_state: 0, rung }
}

fn stored_on_every_channel(
    haul: &HaulCycle,
    ladder: &Ladder,
    load_state: usize,
    rung: usize,
) -> bool {
    let mut channels = 0..haul.combination.channels.len();
    channels.all(|channel| stored(ladder, id(channel, load_state, rung)).is_some())
}

/// Pressures to set, with what is stored for drivers in place of what nobody approved.
fn shown(haul: &HaulCycle, ladder: &Ladder) -> SetPressures {
    let all = ladder.set_pressures(haul);
    let combination = &haul.combination;
    SetPressures::new(
        combination.channels.len(),
        combination.load_states.len(),
        combination.rungs.len(),
        |channel, load_state, rung| {
            stored(ladder, id(channel, load_state, rung))
                .map_or_else(|| all.get(channel, load_state, rung), |(vented, _)| vented)
        },
    )
}

fn change(
    haul: &HaulCycle,
    ladder: &Ladder,
    stepper: &Stepper<'_>,
    load_state: usize,
    (from, to): (usize, usize),
) -> Result<Option<YardChange>, NotDriven> {
    let mut channels = Vec::new();
    for channel in 0..haul.combination.channels.len() {
        let of = |rung: usize| stored(ladder, id(channel, load_state, rung));
        let (Some((before, reads)), Some((after, will_read))) = (of(from), of(to)) else {
            return Ok(None);
        };
        if (after - before).abs() > haul.combination.controller.deadband {
            channels.push((after, YardChannel { channel, from: reads, to: will_read, time: None }));
        }
    }
    if channels.is_empty() {
        return Ok(None);
    }
    let target = |rung: usize| Target { rung, load_state };
    let full = haul.combination.supply.governor.cut_out;
    let start = stepper.start(target(from), load_state, full);
    let mut state = start.map_err(haul::TruckError::Air)?;
    stepper.order(&mut state, target(to));
    let ambient = haul.weather.ambient_pressure;
    while state.clock() < PATIENCE {
        stepper.stand(&mut state, StandUntil::Passed(LOOK), true, &mut NoRecord)?;
        for (wanted, channel) in &mut channels {
            let off = state.tire_pressure(channel.channel, ambient) - *wanted;
            if channel.time.is_none() && off.abs() <= THERE {
                channel.time = Some(state.clock());
            }
        }
        if !state.is_changing() {
            break;
        }
    }
    Ok(Some(YardChange {
        load_state,
        from,
        to,
        action: if to > from { Action::Raise } else { Action::Lower },
        channels: channels.into_iter().map(|(_, channel)| channel).collect(),
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn changes(haul: &HaulCycle) -> Vec<YardChange> {
        let ladder = Ladder::of(haul).unwrap().0.approved();
        yard_changes(haul, &ladder, &Detail::default()).unwrap()
    }

    fn longest(change: &YardChange) -> Time {
        change.channels.iter().filter_map(|one| one.time).fold(Time::ZERO, Time::max)
    }

    #[test]
    fn every_change_goes_up_and_down_and_has_a_time_within_what_is_accepted() {
        let changes = changes(&example::haul());
        let raises = changes.iter().filter(|change| change.action == Action::Raise).count();
        assert!(raises > 0 && changes.len() == 2 * raises);
        for channel in changes.iter().flat_map(|change| &change.channels) {
            let time = channel.time.expect("the invented truck reaches what is stored");
            let [least, most] = channel.accepted().unwrap();
            assert!(Time::ZERO < least && least < time && time < most);
        }
    }

    #[test]
    fn with_half_the_air_raising_takes_longer_and_lowering_as_long() {
        let mut haul = example::haul();
        let before = changes(&haul);
        haul.combination.supply.measured_delivery *= 0.5;
        let after = changes(&haul);
        assert_eq!(before.len(), after.len());
        for (one, two) in before.iter().zip(&after) {
            match one.action {
                Action::Raise => assert!(longest(two) >= longest(one)),
                Action::Lower => assert!((longest(two) - longest(one)).abs() <= LOOK),
            }
        }
        let sum =
            |changes: &[YardChange]| changes.iter().map(longest).fold(Time::ZERO, |a, b| a + b);
        assert!(sum(&after) > sum(&before));
    }

    #[test]
    fn what_nobody_approved_is_not_ordered() {
        let haul = example::haul();
        let (ladder, _) = Ladder::of(&haul).unwrap();
        let set: Vec<GaugePressure> = ladder
            .cells()
            .iter()
            .filter(|cell| ladder.driver_shows(cell.id) == Some(DriverShows::Set))
            .filter_map(|cell| Some(cell.set.as_ref()?.as_controller_reads))
            .collect();
        for change in yard_changes(&haul, &ladder, &Detail::default()).unwrap() {
            for channel in change.channels {
                assert!(set.contains(&channel.from) && set.contains(&channel.to));
            }
        }
    }
}
