//! Large, bent and absurd hauls: an answer or a reason, never a panic.

mod common;

use common::{GRAVEL, HIGHWAY, LADEN, SPUR, nominal, route, tires};
use model::haul_cycle::HaulCycle;
use model::route::Surface;
use plan::{Caution, Detail, NotDriven, Plan};
use quantity::{GaugePressure, Length, Mass, PressureDifference, Speed, Temperature, Volume};

fn plan(haul: &HaulCycle) -> Plan {
    Plan::of(haul, &nominal()).expect("weather in range")
}

fn refusal(haul: &HaulCycle) -> String {
    let plan = plan(haul);
    let Err(why) = &plan.driven else { panic!("driven after all") };
    assert!(plan.breaks_a_limit());
    assert!(plan.cautions.iter().any(|caution| matches!(caution, Caution::NotDriven { .. })));
    why.to_string()
}

#[test]
fn a_rung_that_is_not_possible_is_replaced_by_a_slower_one_and_told() {
    // 5900 lb on a dual rated 5840: too much at 60 mph, carried by the table at 35 mph.
    let mut haul = common::quiet();
    common::tire_loads(&mut haul, 5900.0);
    haul.combination.load_states[common::EMPTY].groups[1].mass = Mass::from_lb(9000.0);
    haul.combination.load_states[common::EMPTY].groups[2].mass = Mass::from_lb(9000.0);
    let plan = plan(&haul);
    let driven = plan.driven.as_ref().unwrap();
    assert_eq!(driven.replaced, vec![(LADEN, HIGHWAY, GRAVEL)]);
    let told = Caution::SlowerRungUsed { load_state: LADEN, wanted: HIGHWAY, used: GRAVEL };
    assert!(plan.cautions.contains(&told));
    assert!(plan.breaks_a_limit(), "a rung the haul wants is not possible");
    // So nothing is raised at the highway.
    assert!(driven.points.iter().all(|p| p.load_state != LADEN || p.to.rung != HIGHWAY));
    assert!(driven.cycle.time() > Length::from_km(40.0) / Speed::from_mph(60.0));
}

#[test]
fn twelve_channels_and_sixty_sections_are_planned() {
    let mut haul = example::haul();
    let combination = &mut haul.combination;
    // Twelve axles of singles and duals, each on a channel of its own.
    let (axle, channel) = (combination.groups[1].clone(), combination.channels[0].clone());
    combination.groups.truncate(1);
    combination.channels.clear();
    for index in 0..12 {
        let mut group = axle.clone();
        group.name = format!("axle {index}");
        group.axles = 1;
        group.channel = Some(index);
        combination.groups.push(group);
        let mut channel = channel.clone();
        channel.name = format!("channel {index}");
        combination.channels.push(channel);
    }
    for state in &mut combination.load_states {
        let mut load = state.groups[1];
        load.mass = load.mass / 2.5;
        state.groups.truncate(1);
        state.groups.extend(std::iter::repeat_n(load, 12));
        state.axles_down = vec![1; state.groups.len()];
        state.axles_down = vec![1; 13];
    }
    combination.powertrain.rated_power = quantity::Power::from_kw(500.0);
    let legs: Vec<(&str, f64, f64, Surface, f64)> = (0..60)
        .map(|i| {
            let surface = if i % 2 == 0 { Surface::Gravel } else { Surface::Paved };
            (["gravel", "paved"][i % 2], i as f64, i as f64 + 1.0, surface, 60.0)
        })
        .collect();
    route(&mut haul, &legs, &[(0.0, 0.0), (60.0, 300.0)]);
    let plan = plan(&haul);
    let driven = plan.driven.as_ref().unwrap();
    assert_eq!(plan.ladder.cells().len(), 12 * 3 * (2 + 2));
    assert_eq!(driven.sections.each_ref().map(Vec::len), [60, 60]);
    // A section that is passed while the change before is still under way gets no change of its
    // own, and that change is told not to fit.
    assert!(driven.points.len() <= 2 * 59);
    assert!(driven.points.len() == 2 * 59 || driven.points.iter().any(|point| !point.fits));
    for (run, state) in driven.sections.iter().zip([common::EMPTY, LADEN]) {
        let mut points = driven.points.iter().filter(|point| point.load_state == state).peekable();
        assert!(points.peek().is_some());
        for point in points {
            let section = run.iter().find(|section| section.to > point.travelled).unwrap();
            let next = run.iter().find(|other| other.from == section.to);
            assert!(
                section.rung == point.to.rung || next.is_some_and(|n| n.rung == point.to.rung),
                "a change to a rung that neither this section nor the next wants"
            );
        }
    }
    for (index, point) in driven.points.iter().enumerate() {
        let told = plan.cautions.contains(&Caution::LeadDoesNotFit { point: index });
        assert_eq!(point.fits, !told);
    }
    // Changes follow one another in the order of travel.
    for run in [&driven.plan.empty, &driven.plan.laden] {
        assert!(run.windows(2).all(|pair| pair[0].at <= pair[1].at));
    }
}

#[test]
fn absurd_inputs_are_told_with_their_reason() {
    let mut haul = example::haul();
    haul.route.legs.clear();
    assert!(refusal(&haul).contains("has no legs"));

    let mut haul = example::haul();
    haul.combination.rungs.clear();
    haul.shift_start.parked_rung = 0;
    let why = refusal(&haul);
    assert!(why.contains("no rung is meant for leg"), "{why}");

    let mut haul = example::haul();
    for rung in &mut haul.combination.rungs {
        rung.surfaces.clear();
    }
    assert!(matches!(plan(&haul).driven, Err(NotDriven::NoRung(_))));

    let mut haul = example::haul();
    for state in &mut haul.combination.load_states {
        for load in &mut state.groups {
            load.mass = Mass::ZERO;
        }
    }
    let why = refusal(&haul);
    assert!(why.contains("weighs nothing"), "{why}");

    let mut haul = example::haul();
    for state in &mut haul.combination.load_states {
        state.chain_states.clear();
    }
    let why = refusal(&haul);
    assert!(why.contains("no possible rung"), "{why}");

    let mut haul = example::haul();
    haul.combination.groups[1].wheel_ends_shut = 99;
    let why = refusal(&haul);
    assert!(why.contains("feeds no open tire"), "{why}");

    let mut haul = example::haul();
    haul.combination.supply.compressor.displacement = Volume::ZERO;
    refusal(&haul);

    let mut haul = example::haul();
    haul.combination.powertrain.rated_power = haul.combination.powertrain.accessory_power;
    let why = refusal(&haul);
    assert!(why.contains("cannot climb at"), "{why}");

    let mut haul = example::haul();
    haul.combination.rungs[SPUR].cap = Speed::ZERO;
    haul.route.legs[0].speed_limit = Speed::ZERO;
    assert!(refusal(&haul).contains("speed limit above zero"));

    let mut haul = example::haul();
    haul.weather.coldest = Temperature::from_celsius(-200.0);
    assert!(Plan::of(&haul, &nominal()).is_err());

    let haul = example::haul();
    let fine = Detail { cell: Length::from_mm(0.001), ..nominal() };
    let why = Plan::of(&haul, &fine).unwrap().driven.unwrap_err().to_string();
    assert!(why.contains("cells"), "{why}");
    let none = Detail { cell: Length::ZERO, ..nominal() };
    assert!(Plan::of(&haul, &none).unwrap().driven.is_err());
}

#[test]
fn a_supply_that_never_reaches_the_pressure_set_ends_with_a_reason() {
    // The governor never cuts in as high as the protection valve opens: tires get no air.
    let mut haul = example::haul();
    haul.combination.supply.protection.opens = GaugePressure::from_psi(140.0);
    haul.shift_start.parked_rung = SPUR;
    let why = refusal(&haul);
    assert!(why.contains("still not complete"), "{why}");

    let mut haul = example::haul();
    haul.combination.supply.brakes.leakage = quantity::VolumeFlow::from_l_per_min(5000.0);
    let why = refusal(&haul);
    assert!(why.contains("still not complete"), "{why}");
}

#[test]
fn a_hold_limit_of_a_rung_or_of_a_makers_row_is_told_when_the_road_is_longer() {
    let mut haul = common::quiet();
    let held = |haul: &HaulCycle| {
        plan(haul).cautions.into_iter().find_map(|caution| match caution {
            Caution::HeldTooLong { rung, load_state, road, limit } => {
                Some((rung, load_state, road, limit))
            }
            _ => None,
        })
    };
    assert_eq!(held(&haul), None);
    let limit = Length::from_km(2.0);
    haul.combination.rungs[SPUR].hold =
        Some(model::vehicle::HoldLimit { time: quantity::Time::from_min(20.0), distance: limit });
    let found = held(&haul).unwrap();
    assert_eq!((found.0, found.3), (SPUR, limit));
    // The spur itself, and the road on which the change to it is called before it.
    assert!((3.0..3.6).contains(&found.2.as_km()), "{}", found.2);

    haul.combination.rungs[SPUR].hold = None;
    tires(&mut haul, common::maker(true, &[(5000.0, 25.0, 60.0), (6500.0, 65.0, 100.0)]));
    tires(&mut haul, |tire| {
        let table = tire.maker_table.as_mut().unwrap();
        for row in table.rows.iter_mut().filter(|row| row.speed < Speed::from_mph(30.0)) {
            row.hold_distance = Some(limit);
        }
    });
    let found = held(&haul).unwrap();
    assert_eq!((found.0, found.3), (SPUR, limit));
}

#[test]
fn a_coarse_controller_step_may_empty_a_window_and_says_so() {
    let mut haul = example::haul();
    haul.combination.controller.step = PressureDifference::from_psi(60.0);
    let plan = plan(&haul);
    assert!(plan.cautions.iter().any(|c| matches!(c, Caution::NotPossible { wanted: true, .. })));
}
