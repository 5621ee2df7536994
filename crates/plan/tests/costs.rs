//! Cost by payer: the worked example, and laws.

mod common;

use common::*;
use model::money::{Money, PaidBy, Payer, RoadCost, SeasonGain};
use plan::cost::{Costs, Figure, Figures, Item, Trip};
use plan::effect::{Band, Effects, Input, NotAssessed};
use plan::{Detail, OneByOne, Plan};
use proptest::prelude::*;
use quantity::{Length, Time, Volume};

fn money() -> Money {
    Money {
        currency: "CAD".into(),
        capex: 30_000.0,
        salvage: 0.0,
        life_years: 8.0,
        interest: 0.08,
        service_per_year: 1500.0,
        trips_per_year: 600.0,
        truck_hour: 150.0,
        fuel_price_per_l: Some(1.5),
        tire_saving_per_year: Some(825.0),
        repair_saving_per_year: Some(1200.0),
        season: Some(SeasonGain { days: 25.0, margin_per_trip: 350.0 }),
        payload: None,
        road: Some(RoadCost { per_pass_km: 0.30, saving: Some([1.0; 3]), passed_on: 0.0 }),
        paid_by: PaidBy::default(),
    }
}

fn trip() -> Trip {
    Trip {
        lost: Ok(Time::from_min(6.0)),
        fuel_added: Ok(Band::exact(Volume::ZERO)),
        unpaved: Length::from_km(20.0),
        trips_per_day: 2.0,
    }
}

fn costs(money: &Money) -> Costs {
    Costs::from_figures("CAD", &Figures::new(money, &trip()))
}

// Worked by hand from assumed inputs: capital recovery 0.1740, 5 220 a year; 600 trips that lose
// 6 min at 150 an hour cost 9 000; 25 days of 2 trips at 350 bring 17 500; in all 9 025, back in 3.3 years.
#[test]
fn worked_haulier() {
    let found = costs(&money());
    let haulier = found.result(Some(Payer::Haulier)).unwrap();
    let line = |item| {
        let line = found.lines.iter().find(|line| line.item == item).unwrap();
        line.per_year.clone().unwrap().middle
    };
    assert!((line(Item::System) + 5220.0).abs() < 1.0);
    assert!((line(Item::Time) + 9000.0).abs() < 1e-6);
    assert!((line(Item::Season) - 17_500.0).abs() < 1e-6);
    assert!((haulier.net_per_year.middle - 9025.0).abs() < 1e-6);
    assert!((haulier.payback_years.unwrap() - 3.3).abs() < 0.05);
    assert_eq!(haulier.left_out, [Item::Payload]);
}

// The same with the whole road benefit, 600 trips over 20 km at 0.30, handed on: 12 625, 2.4 years.
// Without the season: 8 475 a year lost.
#[test]
fn worked_road_benefit_and_no_season() {
    let mut all = money();
    all.road.as_mut().unwrap().passed_on = 1.0;
    let haulier = costs(&all).result(Some(Payer::Haulier)).unwrap().clone();
    assert!((haulier.net_per_year.middle - 12_625.0).abs() < 1e-6);
    assert!((haulier.payback_years.unwrap() - 2.4).abs() < 0.05);
    let none = Money { season: Some(SeasonGain { days: 0.0, margin_per_trip: 350.0 }), ..money() };
    let haulier = costs(&none).result(Some(Payer::Haulier)).unwrap().clone();
    assert!((haulier.net_per_year.middle + 8475.0).abs() < 1e-6);
    assert_eq!(haulier.payback_years, None);
}

#[test]
fn lost_minutes_and_season_decide_the_worked_example() {
    let found = costs(&money());
    let first: Vec<Figure> = found.tornado.iter().take(4).map(|bar| bar.figure).collect();
    assert!(first.contains(&Figure::SeasonDays) && first.contains(&Figure::LostTime), "{first:?}");
    assert!(found.tornado.windows(2).all(|pair| pair[0].swing() >= pair[1].swing()));
    assert!(found.tornado.iter().all(|bar| bar.figure != Figure::Payload));
}

#[test]
fn what_is_not_told_is_left_out_and_said() {
    let untold = Money {
        season: None,
        fuel_price_per_l: None,
        road: None,
        tire_saving_per_year: None,
        repair_saving_per_year: None,
        ..money()
    };
    let found = costs(&untold);
    let haulier = found.result(Some(Payer::Haulier)).unwrap();
    for item in [Item::Fuel, Item::Tires, Item::Repairs, Item::Season, Item::Payload] {
        assert!(haulier.left_out.contains(&item), "{item:?}");
    }
    let road = found.result(Some(Payer::RoadOwner)).unwrap();
    assert_eq!(road.left_out, [Item::Road]);
    let haul = example::haul();
    let plan = Plan::of(&haul, &nominal()).unwrap();
    let effects = Effects::of(&haul, &plan, &nominal(), &OneByOne);
    assert_eq!(Costs::of(&haul, &effects), Err(NotAssessed::Give(Input::Money)));
}

#[test]
fn payers_add_up_to_all_together() {
    let found = costs(&money());
    let each: f64 =
        found.results.iter().filter(|one| one.payer.is_some()).map(|one| one.npv.middle).sum();
    assert!((each - found.result(None).unwrap().npv.middle).abs() < 1e-6);
}

#[test]
fn rivals_stand_beside_a_driven_plan() {
    let haul = model::haul_cycle::HaulCycle { money: Some(money()), ..example::haul() };
    let detail = Detail { samples: 0, ..Detail::default() };
    let plan = Plan::of(&haul, &detail).unwrap();
    let effects = Effects::of(&haul, &plan, &detail, &OneByOne);
    let found = Costs::of(&haul, &effects).unwrap();
    assert_eq!(found.rivals.len(), 2);
    let less = &found.rivals[1];
    let more = less.lines.iter().find(|line| line.item == Item::MoreTrips).unwrap();
    assert!(more.per_year.clone().unwrap().middle < 0.0);
    // The spur's strength is not told, so neither is its fuel.
    let fuel = found.lines.iter().find(|line| line.item == Item::Fuel).unwrap();
    assert_eq!(fuel.per_year, Err(NotAssessed::Give(Input::Strength)));
}

proptest! {
    #[test]
    fn at_the_break_even_time_the_present_value_is_nothing(
        capex in 5e3..2e5f64, days in 0.0..60.0f64, interest in 0.0..0.2f64, lost in -5.0..20.0f64
    ) {
        let season = Some(SeasonGain { days, margin_per_trip: 350.0 });
        let money = Money { capex, interest, season, ..money() };
        let at = |lost: Time| {
            let trip = Trip { lost: Ok(lost), ..trip() };
            let found = Costs::from_figures("CAD", &Figures::new(&money, &trip));
            found.result(Some(Payer::Haulier)).unwrap().clone()
        };
        let even = at(Time::from_min(lost)).break_even.unwrap();
        prop_assert!(at(even).npv.middle.abs() < 1e-6 * capex);
    }

    #[test]
    fn passing_on_changes_who_gains_and_not_how_much(passed_on in 0.0..1.0f64) {
        let mut shared = money();
        shared.road.as_mut().unwrap().passed_on = passed_on;
        let whole = |money| costs(money).result(None).unwrap().npv.middle;
        prop_assert!((whole(&shared) - whole(&money())).abs() < 1e-6);
    }

    #[test]
    fn more_lost_time_is_never_better(a in 0.0..30.0f64, more in 0.0..30.0f64) {
        let npv = |minutes| {
            let trip = Trip { lost: Ok(Time::from_min(minutes)), ..trip() };
            let found = Costs::from_figures("CAD", &Figures::new(&money(), &trip));
            found.result(None).unwrap().npv.middle
        };
        prop_assert!(npv(a + more) <= npv(a) + 1e-9);
    }
}
