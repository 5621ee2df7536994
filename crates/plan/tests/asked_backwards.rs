//! The plan asked backwards: every answer is put in and planned again.

mod common;

use common::{
    DRIVE, EMPTY, GRAVEL, HIGHWAY, LADEN, id, level, nominal, psi, raise, sampled, two_legs,
};
use plan::inverse::{CapAsked, InverseError, enough_supply, highest_cap, too_late};
use plan::now::{CallError, Load};
use plan::{Action, ChangePoint, Detail, Ladder, OneByOne, Plan, Way};
use quantity::{Length, Speed};

fn number_of(plan: &Plan, point: &ChangePoint) -> usize {
    let points = &plan.driven.as_ref().unwrap().points;
    points.iter().position(|one| one == point).unwrap() + 1
}

fn asked(channel: usize, load_state: usize, kpa: f64) -> CapAsked {
    CapAsked {
        channel,
        load: Load::State(load_state),
        chains: None,
        pressure: quantity::ColdPressure::from_kpa(kpa),
        cap_step: Speed::from_mph(5.0),
    }
}

#[test]
fn the_lowest_of_a_window_allows_its_cap_and_a_little_less_does_not() {
    let haul = example::haul();
    let (ladder, _) = Ladder::of(&haul).unwrap();
    for rung in [GRAVEL, HIGHWAY] {
        let cell = ladder.cell(id(DRIVE, LADEN, 0, rung)).unwrap();
        let lowest = cell.window.as_ref().unwrap().governing_minimum().pressure.as_kpa();
        let cap = haul.combination.rungs[rung].cap;
        let enough = highest_cap(&haul, &asked(DRIVE, LADEN, lowest + 0.01)).unwrap();
        assert!(enough.by_window >= Some(cap), "{enough:?}");
        let short = highest_cap(&haul, &asked(DRIVE, LADEN, lowest - 0.5)).unwrap();
        assert!(short.by_window < Some(cap), "{short:?}");
        assert!(short.exact >= short.by_window && short.governed_by.is_some());
        assert!(short.approved <= short.by_window);
    }
}

#[test]
fn the_exact_cap_put_in_as_a_rung_needs_the_pressure_asked_about() {
    let haul = example::haul();
    let found = highest_cap(&haul, &asked(DRIVE, LADEN, psi(82.0).as_kpa())).unwrap();
    let mut with_cap = haul.clone();
    let rung = &mut with_cap.combination.rungs[HIGHWAY];
    rung.cap = found.exact.unwrap();
    assert!(rung.cap > haul.combination.rungs[GRAVEL].cap, "{found:?}");
    let (ladder, _) = Ladder::of(&with_cap).unwrap();
    let cell = ladder.cell(id(DRIVE, LADEN, 0, HIGHWAY)).unwrap();
    let lowest = cell.window.as_ref().unwrap().governing_minimum().pressure;
    assert!(lowest <= psi(82.0) + quantity::PressureDifference::from_kpa(0.01), "{lowest}");
}

#[test]
fn a_channel_that_is_not_there_is_refused() {
    let found = highest_cap(&example::haul(), &asked(9, LADEN, 500.0));
    assert!(matches!(found, Err(CallError::NoSuchPlace { .. })));
}

#[test]
fn the_supply_found_makes_the_change_fit_and_less_does_not() {
    let mut haul = level(1.8);
    // So little road that today's air does not do.
    haul.combination.supply.compressor.displacement =
        haul.combination.supply.compressor.displacement * 0.8;
    let detail = nominal();
    let plan = Plan::of(&haul, &detail).unwrap();
    let point = raise(plan.driven.as_ref().unwrap()).clone();
    assert!(!point.fits, "{point:?}");
    let number = number_of(&plan, &point);
    let found = enough_supply(&haul, &plan, number, &detail, &OneByOne).unwrap();
    assert!(!found.fits_today);
    let times = found.compressor.expect("some compressor is enough");
    let planned = |times: f64| {
        let mut more = haul.clone();
        let compressor = &mut more.combination.supply.compressor;
        compressor.displacement = compressor.displacement * times;
        let plan = Plan::of(&more, &detail).unwrap();
        let point = raise(plan.driven.as_ref().unwrap()).clone();
        point.fits && point.chosen.way == Way::Rolling
    };
    assert!(planned(times) && !planned(times - 0.1), "{times}");
    if let Some(more) = found.reserve {
        let mut with = haul.clone();
        let reserve = &mut with.combination.supply.reserve_volume;
        *reserve = Some(reserve.unwrap_or(quantity::Volume::ZERO) + more);
        let plan = Plan::of(&with, &detail).unwrap();
        assert!(raise(plan.driven.as_ref().unwrap()).fits);
    }
}

#[test]
fn nine_of_ten_ask_for_more_air_than_the_nominal_change() {
    let mut haul = level(1.8);
    haul.combination.supply.compressor.displacement =
        haul.combination.supply.compressor.displacement * 0.8;
    let times = |samples| {
        let detail = Detail { samples, ..Detail::default() };
        let plan = Plan::of(&haul, &detail).unwrap();
        let point = raise(plan.driven.as_ref().unwrap()).clone();
        let number = number_of(&plan, &point);
        enough_supply(&haul, &plan, number, &detail, &OneByOne).unwrap().compressor.unwrap()
    };
    assert!(times(16) > times(0));
}

#[test]
fn a_change_that_fits_needs_nothing_and_a_lowering_is_not_asked_about() {
    let haul = two_legs(30.0, &[(0.0, 0.0), (100.0, 0.0)]);
    let (plan, driven) = sampled(&haul, 0);
    let number = number_of(&plan, raise(&driven));
    let found = enough_supply(&haul, &plan, number, &nominal(), &OneByOne).unwrap();
    assert!(found.fits_today && found.compressor == Some(1.0));
    let lowers = driven.points.iter().find(|point| point.action == Action::Lower).unwrap();
    let number = number_of(&plan, lowers);
    let refused = enough_supply(&haul, &plan, number, &nominal(), &OneByOne);
    assert!(matches!(refused, Err(InverseError::Lowers { .. })));
    let refused = enough_supply(&haul, &plan, 99, &nominal(), &OneByOne);
    assert!(matches!(refused, Err(InverseError::NoSuchChange { number: 99, .. })));
}

#[test]
fn the_latest_call_is_complete_by_the_place_and_each_later_one_costs() {
    let haul = two_legs(30.0, &[(0.0, 0.0), (100.0, 0.0)]);
    let (plan, driven) = sampled(&haul, 32);
    let point = raise(&driven);
    let found = too_late(&haul, &plan, number_of(&plan, point), &Detail::default()).unwrap();
    let latest = found.latest.unwrap();
    assert!(found.in_hand.unwrap() > Length::ZERO, "nine of ten start earlier");
    assert!(latest >= point.at && latest < point.reach_by);
    let (first, later) = found.calls.split_first().unwrap();
    assert!(first.reached.unwrap() <= point.reach_by + Length::from_m(20.0), "{first:?}");
    assert!(first.wrong_road < Length::from_m(20.0));
    assert!(!later.is_empty());
    let mut before = first;
    for call in later {
        assert!(call.wrong_road > before.wrong_road, "{:?}", found.calls);
        assert!(call.time_lost >= before.time_lost, "{:?}", found.calls);
        before = call;
    }
    // A kilometer later, driven whole, loses what the plan says of the same driver.
    let (nominal_plan, nominal_driven) = sampled(&haul, 0);
    let own = raise(&nominal_driven).late_1_km.unwrap();
    assert!((later[0].wrong_road - own.wrong_road).abs() < Length::from_m(60.0), "{own:?}");
    assert!(nominal_plan.driven.is_ok());
}

#[test]
fn a_lowering_has_a_latest_call_too() {
    let haul = two_legs(30.0, &[(0.0, 0.0), (100.0, 0.0)]);
    let (plan, driven) = sampled(&haul, 0);
    let lowers =
        driven.points.iter().find(|one| one.action == Action::Lower && one.load_state == EMPTY);
    let lowers = lowers.unwrap();
    let found = too_late(&haul, &plan, number_of(&plan, lowers), &nominal()).unwrap();
    assert_eq!(found.latest, Some(lowers.at));
    let calls = &found.calls;
    assert!(calls.len() > 1 && calls[1].wrong_road > calls[0].wrong_road, "{calls:?}");
}
