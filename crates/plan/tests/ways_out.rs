//! A raise that does not fit, and everything that could be done about it.

mod common;

use common::{GRAVEL, HIGHWAY, LADEN, SPUR, complete, level, planned, raise, trace, two_legs};
use model::haul_cycle::{HaulCycle, LadenDirection};
use model::route::{LayBy, Surface};
use plan::{Caution, ChangePoint, Way};
use quantity::{Length, Speed, Time};

fn way<T>(point: &ChangePoint, pick: impl Fn(&Way) -> Option<T>) -> Option<T> {
    std::iter::once(&point.chosen).chain(&point.others).find_map(|taken| pick(&taken.way))
}

#[test]
fn a_lead_that_does_not_fit_comes_with_ways_out_that_add_up() {
    let haul = level(1.0);
    let (plan, driven) = planned(&haul);
    let point = raise(&driven);
    assert!(!point.fits);
    let Way::GoOnSlowly { past } = point.chosen.way else { panic!("{:?}", point.chosen) };
    assert!(point.travelled < Length::from_m(1.0), "all the road there is is used");
    assert!((point.reached - Length::from_km(1.0) - past).abs().as_m() < 1e-6);
    assert!(point.chosen.time_lost.unwrap() > Time::ZERO);
    let index = driven.points.iter().position(|other| other == point).unwrap();
    assert!(plan.cautions.contains(&Caution::LeadDoesNotFit { point: index }));

    let missing = way(point, |way| match way {
        Way::MoreRoad { missing } => Some(*missing),
        _ => None,
    });
    assert_eq!(missing, Some(past));
    // Slower: the kilometer in the time the change takes.
    let mean = way(point, |way| match way {
        Way::Slower { mean } => Some(*mean),
        _ => None,
    })
    .unwrap();
    assert!((mean * point.time - Length::from_km(1.0)).abs().as_m() < 1e-6, "{mean}");
    assert!(mean < Speed::from_kmh(40.0) && mean > Speed::from_kmh(2.0), "{mean}");

    // With the multiple of air the change fits; with a tenth less it does not.
    let times = way(point, |way| match way {
        Way::MoreAir { times } => Some(*times),
        _ => None,
    })
    .expect("a larger compressor does it");
    assert!((1.0..8.0).contains(&times), "{times}");
    let with = |times: f64| {
        let mut haul = haul.clone();
        let displacement = &mut haul.combination.supply.compressor.displacement;
        *displacement = *displacement * times;
        raise(&planned(&haul).1).fits
    };
    assert!(with(times * 1.02), "{times} times the air");
    assert!(!with(times * 0.9), "{} times the air", times * 0.9);

    // More road by as much as is missing, and a little for the speed it is driven at.
    let longer = level(1.0 + past.as_km() * 1.05);
    assert!(raise(&planned(&longer).1).fits);
}

#[test]
fn a_rung_between_that_is_reached_in_time_is_offered() {
    // From the spur's rung straight to the highway, with gravel's rung between them.
    let mut haul = level(1.0);
    haul.route.legs[0].rung = Some(SPUR);
    let driven = planned(&haul).1;
    let point = raise(&driven);
    assert_eq!((point.from.rung, point.to.rung, point.fits), (SPUR, HIGHWAY, false));
    let rung = way(point, |way| match way {
        Way::OtherRung { rung } => Some(*rung),
        _ => None,
    });
    assert_eq!(rung, Some(GRAVEL));
}

#[test]
fn a_raise_that_fits_nowhere_still_keeps_off_the_descents() {
    // Two descents with too little road before and between them; the highway begins on the second.
    let profile =
        [(0.0, 400.0), (0.8, 400.0), (1.6, 340.0), (2.6, 340.0), (3.6, 270.0), (100.0, 270.0)];
    let mut haul = two_legs(3.0, &profile);
    let displacement = &mut haul.combination.supply.compressor.displacement;
    *displacement = *displacement / 2.0;
    let (plan, driven) = planned(&haul);
    let point = raise(&driven);
    assert!(!point.fits && matches!(point.chosen.way, Way::GoOnSlowly { .. }), "{point:?}");
    assert!(point.travelled >= Length::from_m(3600.0), "{}", point.travelled);
    assert!(point.chosen.time_lost.unwrap() > Time::ZERO);
    for sample in trace(&haul, &plan, &driven.plan) {
        if sample.changing && sample.load_state == LADEN && sample.speed.as_kmh() > 0.0 {
            let at = sample.travelled.as_m();
            assert!(at >= 3600.0 - 1e-6, "raising at {at} m");
        }
    }
    assert!(plan.cautions.iter().any(|c| matches!(c, Caution::LeadDoesNotFit { .. })));
    assert!(plan.breaks_a_limit());
}

fn lay_by(km: f64, forward_only: Option<bool>) -> LayBy {
    LayBy { name: "pull-out".into(), at: Length::from_km(km), forward_only }
}

#[test]
fn a_lay_by_is_offered_in_its_own_direction_only() {
    let mut haul = level(1.0);
    let stop = |haul: &HaulCycle| {
        way(raise(&planned(haul).1), |way| match way {
            Way::LayBy(stop) => Some(stop.clone()),
            _ => None,
        })
    };
    assert_eq!(stop(&haul), None);
    haul.route.lay_bys = vec![lay_by(0.9, Some(false))];
    assert_eq!(stop(&haul), None, "on the other side of the road");
    haul.route.lay_bys = vec![lay_by(0.5, Some(true)), lay_by(0.9, None), lay_by(1.4, None)];
    let found = stop(&haul).expect("the last before the place");
    assert_eq!(found.at, Length::from_km(0.9));
    assert!(found.wait > Time::from_s(20.0), "{}", found.wait);
    // Laden the other way round the same lay-by serves the other direction.
    haul.laden_direction = LadenDirection::Backward;
    haul.route.legs[0].surface = Surface::Paved;
    haul.route.legs[1].surface = Surface::Gravel;
    haul.route.legs[1].to = Length::from_km(2.0);
    haul.route.lay_bys = vec![lay_by(1.1, Some(true))];
    assert_eq!(stop(&haul), None);
    haul.route.lay_bys = vec![lay_by(1.1, Some(false))];
    assert_eq!(stop(&haul).map(|stop| stop.at), Some(Length::from_km(1.1)));
}

#[test]
fn standing_in_a_lay_by_is_chosen_when_it_loses_less_time_and_is_then_driven_so() {
    // A slow rung: going on at 8 km/h costs more than standing at high idle.
    let mut haul = level(0.6);
    haul.combination.rungs[GRAVEL].cap = Speed::from_kmh(8.0);
    haul.combination.rungs[SPUR].cap = Speed::from_kmh(6.0);
    haul.combination.powertrain.working_speed = haul.combination.powertrain.idle_speed;
    haul.combination.powertrain.descent_speed = haul.combination.powertrain.idle_speed;
    haul.route.lay_bys = vec![lay_by(0.55, None)];
    let (plan, driven) = planned(&haul);
    let point = raise(&driven);
    let Way::LayBy(stop) = &point.chosen.way else {
        panic!("{:?} {:?}", point.chosen, point.others)
    };
    assert!(point.fits);
    let samples = trace(&haul, &plan, &driven.plan);
    let stood = samples.iter().filter(|sample| {
        sample.load_state == LADEN
            && (sample.travelled - stop.at).abs().as_m() < 0.5
            && sample.changing
            && sample.speed.as_kmh() < 1e-9
    });
    assert!(stood.count() > 1);
    assert!((complete(&samples, HIGHWAY) - stop.at).abs().as_m() < 0.5);
}
