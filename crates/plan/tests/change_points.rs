//! Where the driver starts each change: leads that fit exactly, descents, air, late drivers.

mod common;

use common::{
    EMPTY, HIGHWAY, LADEN, complete, level, nominal, planned, raise, sampled, trace, two_legs,
};
use haul::LadenChange;
use model::haul_cycle::HaulCycle;
use plan::{Action, Caution, Way};
use proptest::prelude::*;
use quantity::{Length, RotationalSpeed, Time};

#[test]
fn a_lead_fits_exactly_and_five_meters_later_it_does_not() {
    let haul = level(9.0);
    let (plan, driven) = planned(&haul);
    let point = raise(&driven);
    assert!(point.fits && point.chosen.way == Way::Rolling);
    let place = Length::from_km(9.0);
    assert_eq!(point.reach_by, place);
    assert!(point.lead > Length::from_m(300.0), "{}", point.lead);
    assert!((point.lead - (place - point.travelled)).abs().as_m() < 1e-9);
    let on_time = complete(&trace(&haul, &plan, &driven.plan), HIGHWAY);
    assert!(on_time <= place + Length::from_m(0.5), "complete at {on_time}");
    assert!(on_time > place - Length::from_m(5.0), "and not needlessly early: {on_time}");
    let mut later = driven.plan.clone();
    for change in later.laden.iter_mut().filter(|change| change.to.rung == HIGHWAY) {
        change.at += Length::from_m(5.0);
    }
    let late = complete(&trace(&haul, &plan, &later), HIGHWAY);
    assert!(late > place + Length::from_m(2.0), "complete at {late}");
}

#[test]
fn nine_changes_of_ten_need_a_longer_lead_than_the_nominal_one() {
    let haul = level(9.0);
    let (_, driven) = planned(&haul);
    let exact = raise(&driven).clone();
    assert!(exact.spread.is_none() && exact.fits_p90.is_none());
    let (_, driven) = sampled(&haul, 64);
    let sure = raise(&driven);
    let spread = sure.spread.unwrap();
    assert_eq!((spread.samples, spread.incomplete, sure.fits_p90), (64, 0, Some(true)));
    assert!(spread.time_p50 < spread.time_p90 && spread.lead_p50 < spread.lead_p90);
    assert!((spread.time_p50 / exact.time - 1.0).abs() < 0.15, "{}", spread.time_p50);
    assert!(sure.travelled < exact.travelled && sure.lead > exact.lead);
    assert!((sure.lead / spread.lead_p90 - 1.0).abs() < 0.15, "{}", sure.lead);
    // The same input gives the same digits.
    assert_eq!(format!("{sure:?}"), format!("{:?}", raise(&sampled(&haul, 64).1)));
}

#[test]
fn half_the_compressor_an_idling_descent_and_a_shut_valve_each_move_the_plan() {
    // Gently downhill: the engine pulls nothing, so the compressor turns at the descent speed.
    let base = two_legs(9.0, &[(0.0, 300.0), (5.0, 300.0), (9.0, 180.0), (100.0, 180.0)]);
    let (_, driven) = planned(&base);
    let before = raise(&driven).clone();
    assert!(before.fits);

    let mut half = base.clone();
    let displacement = &mut half.combination.supply.compressor.displacement;
    *displacement = *displacement / 2.0;
    let (_, driven) = planned(&half);
    let slow = raise(&driven);
    assert!(slow.time > before.time * 1.4, "{} from {}", slow.time, before.time);
    assert!(slow.travelled < before.travelled - Length::from_m(200.0));

    let mut idling = base.clone();
    idling.combination.powertrain.descent_speed = RotationalSpeed::from_rpm(650.0);
    let (_, driven) = planned(&idling);
    let slow = raise(&driven);
    assert!(slow.time > before.time * 1.3, "{} from {}", slow.time, before.time);
    assert!(slow.travelled < before.travelled - Length::from_m(200.0));

    let mut shut = base.clone();
    shut.combination.groups[1].wheel_ends_shut = 1;
    let (plan, driven) = planned(&shut);
    let fewer = raise(&driven);
    assert!(fewer.time < before.time * 0.99, "seven eighths of the air");
    assert!(plan.cautions.contains(&Caution::WheelEndsShut { group: 1, count: 1 }));
    let (plan, _) = planned(&base);
    assert!(!plan.cautions.iter().any(|c| matches!(c, Caution::WheelEndsShut { .. })));
}

#[test]
fn a_descent_right_before_the_place_moves_the_raise_before_it() {
    // 7 % over the last kilometer.
    let haul = two_legs(9.0, &[(0.0, 200.0), (8.0, 200.0), (9.0, 130.0), (100.0, 130.0)]);
    let (plan, driven) = planned(&haul);
    let point = raise(&driven);
    assert!(point.fits && point.before_descent);
    let closed = Length::from_m(7500.0);
    assert!(point.reached <= closed + Length::from_mm(1.0), "complete at {}", point.reached);
    let samples = trace(&haul, &plan, &driven.plan);
    for sample in &samples {
        let raising = sample.changing && sample.load_state == LADEN && sample.speed.as_kmh() > 0.0;
        assert!(!raising || sample.travelled <= closed, "raising at {}", sample.travelled);
    }
    // The reservoirs have recovered at the top.
    let cut_in = haul.combination.supply.governor.cut_in;
    let top = samples
        .iter()
        .find(|s| s.load_state == LADEN && s.travelled >= Length::from_km(8.0))
        .unwrap();
    assert!(top.supply >= cut_in, "{} at the top", top.supply);
}

#[test]
fn the_laden_change_is_compared_three_ways_and_the_truck_never_moves_off_before_it() {
    let mut haul = example::haul();
    for allowed in [false, true] {
        haul.loading.change_while_loading = allowed;
        let (plan, driven) = planned(&haul);
        let choice = &driven.laden_change;
        let ways: Vec<_> = choice.options.iter().map(|option| option.way).collect();
        let all = [LadenChange::Rolling, LadenChange::WhileLoading, LadenChange::AfterLoading];
        assert_eq!(ways, all);
        let option = |way| choice.options.iter().find(|option| option.way == way).unwrap();
        assert_eq!(option(LadenChange::WhileLoading).time_lost.is_some(), allowed);
        let chosen = option(choice.chosen).time_lost.unwrap();
        for other in choice.options.iter().filter_map(|option| option.time_lost) {
            assert!(chosen <= other);
        }
        if allowed {
            // Half an hour of loading at high idle is time enough.
            assert_eq!(choice.chosen, LadenChange::WhileLoading);
            assert_eq!(chosen, Time::ZERO);
        }
        let samples = trace(&haul, &plan, &driven.plan);
        let moved =
            samples.iter().find(|s| s.load_state == LADEN && s.speed.as_kmh() > 0.0).unwrap();
        assert!(!moved.changing && moved.rung == choice.to.rung);
        for channel in 0..2 {
            let cell = common::id(channel, LADEN, 0, choice.to.rung);
            let set = plan.ladder.cell(cell).unwrap().set.as_ref().unwrap().vented;
            let off = (moved.tires[channel] - set).abs();
            assert!(off <= haul.combination.controller.deadband * 1.5, "{off} off");
        }
    }
}

#[test]
fn late_costs_and_never_costs_more_on_a_highway() {
    let (_, driven) = planned(&level(9.0));
    let point = raise(&driven);
    let late = point.late_1_km.unwrap();
    let never = point.never.unwrap();
    assert!(late.time_lost > Time::ZERO && never.time_lost > late.time_lost);
    // Called a kilometer late it is complete about a kilometer past the place.
    assert!((0.7..1.4).contains(&late.wrong_road.as_km()), "{}", late.wrong_road);
    assert!((never.wrong_road.as_km() - 15.0).abs() < 1e-6);
    // 15 km at 35 mph in place of 85 km/h is 5.4 min.
    assert!((never.time_lost.as_min() - 5.4).abs() < 0.7, "{}", never.time_lost);
    let lower = driven.points.iter().find(|point| point.action == Action::Lower).unwrap();
    assert_eq!(lower.never.unwrap().time_lost, Time::ZERO);
    assert_eq!(lower.load_state, EMPTY);
}

#[test]
fn lowering_on_the_good_road_is_done_under_the_lower_cap() {
    let haul = example::haul();
    let (plan, driven) = planned(&haul);
    let samples = trace(&haul, &plan, &driven.plan);
    let lowering: Vec<_> =
        driven.points.iter().filter(|point| point.action == Action::Lower).collect();
    assert!(lowering.len() >= 2);
    for point in lowering {
        assert!(point.fits);
        let cap = haul.combination.rungs[point.to.rung].cap;
        assert_eq!(point.cap, cap);
        for sample in samples.iter().filter(|sample| {
            sample.load_state == EMPTY
                && sample.changing
                && sample.rung == point.to.rung
                && sample.travelled > Length::from_m(1.0)
        }) {
            assert!(sample.speed.as_m_per_s() <= cap.as_m_per_s() + 1e-6, "{}", sample.travelled);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 6,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn splitting_a_leg_leaves_the_plan_identical(leg in 0usize..3, share in 0.001..0.999f64) {
        let whole = example::haul();
        let mut split = whole.clone();
        let first = split.route.legs[leg].clone();
        let at = first.from + (first.to - first.from) * share;
        split.route.legs[leg].to = at;
        let mut rest = first;
        rest.name = "second part".into();
        rest.from = at;
        split.route.legs.insert(leg + 1, rest);
        let digits = |haul: &HaulCycle| {
            let (plan, driven) = planned(haul);
            format!("{:?} {:?} {:?}", plan.ladder, driven.points, driven.cycle)
        };
        prop_assert_eq!(digits(&whole), digits(&split));
    }

    #[test]
    fn no_raise_is_under_way_on_a_descent_or_its_approach(
        heights in proptest::collection::vec(-80.0..80.0f64, 12),
        gravel_km in 4.0..9.0f64,
        air in 0.4..2.0f64,
    ) {
        let mut height = 1000.0;
        let mut profile = Vec::new();
        for (km, step) in (0u32..).zip(&heights) {
            height += step;
            profile.push((f64::from(km), height));
        }
        let mut haul = two_legs(gravel_km, &profile);
        let displacement = &mut haul.combination.supply.compressor.displacement;
        *displacement = *displacement * air;
        let (plan, driven) = sampled(&haul, 16);
        let style = nominal().style;
        let (_, laden) = haul::Course::of_haul(&haul, nominal().cell, &style).unwrap();
        for sample in trace(&haul, &plan, &driven.plan) {
            if !sample.changing || sample.load_state != LADEN || sample.speed.as_kmh() <= 0.0 {
                continue;
            }
            let inside = laden.descents().iter().any(|descent| {
                sample.travelled > descent.closed_from + Length::from_m(11.0)
                    && sample.travelled < descent.foot
            });
            prop_assert!(!inside, "raising at {}", sample.travelled);
        }
    }
}
