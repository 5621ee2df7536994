//! The haul that the benches measure: 100 km out and back, four air channels.

use model::haul_cycle::HaulCycle;
use model::route::{Profile, Surface};
use model::vehicle::{AxleGroup, Combination, GroupLoad};
use quantity::Length;

use crate::{combination, haul, leg, route};

/// The combination of [`combination`] with drive and trailer each on two channels.
pub fn four_channels() -> Combination {
    let mut four = combination();
    let mut groups: Vec<AxleGroup> = vec![four.groups[0].clone()];
    let mut channels = Vec::new();
    for (index, channel) in four.channels.iter().enumerate() {
        for half in ["front", "rear"] {
            let mut group = four.groups[index + 1].clone();
            group.name = format!("{} {half}", group.name);
            group.axles = 1;
            group.axle_rating = group.axle_rating / 2.0;
            group.channel = Some(channels.len());
            groups.push(group);
            let mut channel = channel.clone();
            channel.name = format!("{} {half}", channel.name);
            channels.push(channel);
        }
    }
    for state in &mut four.load_states {
        let half = |load: &GroupLoad| GroupLoad { mass: load.mass / 2.0, ..*load };
        let [steer, drive, trailer] = [&state.groups[0], &state.groups[1], &state.groups[2]];
        state.groups = vec![*steer, half(drive), half(drive), half(trailer), half(trailer)];
        state.axles_down = vec![1; state.groups.len()];
        for chains in &mut state.chain_states {
            if !chains.chained_groups.is_empty() {
                chains.chained_groups = vec![1, 2];
            }
        }
    }
    four.groups = groups;
    four.channels = channels;
    four
}

/// A cycle of 100 km with four channels.
///
/// # Panics
/// Never: the chainages are written here.
pub fn hundred_km_cycle() -> HaulCycle {
    let points = (0..=100)
        .map(|i| {
            let x = f64::from(i) * 0.5;
            (Length::from_km(x), Length::from_m(400.0 + 25.0 * (0.74 * x).sin()))
        })
        .collect();
    let mut long = route();
    long.name = "50 km of rolling country".into();
    long.legs = vec![
        leg("spur", 0.0, 4.0, Surface::SoftGround, 20.0),
        leg("main gravel", 4.0, 22.0, Surface::Gravel, 50.0),
        leg("highway", 22.0, 50.0, Surface::Paved, 85.0),
    ];
    long.profile = Profile::new(points).expect("chainage rises");
    HaulCycle {
        name: "hundred kilometers".into(),
        combination: four_channels(),
        route: long,
        ..haul()
    }
}
