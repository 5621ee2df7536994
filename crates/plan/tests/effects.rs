//! Effects of a plan: laws, published checks, and what is said where an input is missing.

mod common;

use common::*;
use model::ground::soil_class::{Season, SoilClass};
use model::ground::strength::{Cbr, Reading, SoilType};
use model::haul_cycle::HaulCycle;
use model::road::layered::{Layer, Pavement};
use model::road::trials::Found;
use model::route::{Aggregate, LegGround, SoilGiven};
use plan::effect::on_tire;
use plan::effect::{Effects, GroupEffect, Input, LegWay, NotAssessed, OnTire, Run};
use plan::effect::{Tenths, Uncertain, Verdict, Way};
use plan::{Detail, OneByOne, Plan};
use proptest::prelude::*;
use quantity::{ColdPressure, Force, Length, Mass, Stress};

fn soil(cbr: f64) -> SoilGiven {
    let reading = Reading::Cbr(Cbr::from_pct(cbr).unwrap());
    SoilGiven::Measured { reading, soil: SoilType::FineGrained }
}

fn thin_asphalt() -> Pavement {
    let layer = |mpa, poisson, mm: Option<f64>| Layer {
        modulus: Stress::from_mpa(mpa),
        poisson,
        thickness: mm.map(Length::from_mm),
    };
    Pavement::new(vec![
        layer(3000.0, 0.35, Some(75.0)),
        layer(200.0, 0.35, Some(250.0)),
        layer(50.0, 0.40, None),
    ])
    .unwrap()
}

/// The invented haul with everything told about its ground.
fn told(cbr: f64) -> HaulCycle {
    let mut haul = example::haul();
    let ground = |ground| Some(ground);
    haul.route.legs[SPUR].ground =
        ground(LegGround { soil: Some(soil(cbr)), grip: Some(0.4), ..LegGround::default() });
    let aggregate = Some(Aggregate { thickness: Length::from_m(0.25), top: None });
    haul.route.legs[GRAVEL].ground = ground(LegGround { aggregate, ..LegGround::default() });
    haul.route.legs[HIGHWAY].ground =
        ground(LegGround { pavement: Some(thin_asphalt()), ..LegGround::default() });
    haul
}

fn effects(haul: &HaulCycle) -> Effects {
    let plan = Plan::of(haul, &nominal()).unwrap();
    Effects::of(haul, &plan, &nominal(), &OneByOne)
}

fn way(effects: &Effects, leg: usize, run: Run, way: Way) -> &LegWay {
    let leg = effects.legs.iter().find(|one| (one.leg, one.run) == (leg, run)).unwrap();
    leg.ways.iter().find(|one| one.way == way).unwrap()
}

fn drive_group(way: &LegWay) -> &GroupEffect {
    way.groups.iter().find(|group| group.group == 1).unwrap()
}

fn tire(kpa: f64, kn: f64) -> OnTire {
    let group = example::combination().groups[1].clone();
    on_tire(&group, Force::from_kn(kn).as_mass(), ColdPressure::from_kpa(kpa))
}

#[test]
fn every_leg_is_told_in_both_runs_and_every_way() {
    let found = effects(&told(6.0));
    assert_eq!(found.legs.len(), 6);
    for leg in &found.legs {
        let ways: Vec<Way> = leg.ways.iter().map(|way| way.way).collect();
        assert_eq!(ways, Way::ALL);
    }
    assert!(found.totals.iter().all(|total| total.legs_not_assessed == 0), "{:?}", found.totals);
}

#[test]
fn what_is_missing_is_asked_for_and_never_passed() {
    let found = effects(&example::haul());
    let spur = way(&found, SPUR, Run::Laden, Way::Plan);
    assert_eq!(spur.grades.climb, Err(NotAssessed::Give(Input::Strength)));
    assert_eq!(spur.grades.descent, Err(NotAssessed::Give(Input::Grip)));
    assert_eq!(spur.resistance, Err(NotAssessed::Give(Input::Strength)));
    let highway = drive_group(way(&found, HIGHWAY, Run::Laden, Way::Plan));
    assert_eq!(highway.pavement, Some(Err(NotAssessed::Give(Input::Layers))));
    let plan = found.total(Way::Plan).unwrap();
    assert_eq!(plan.fuel, Err(NotAssessed::Give(Input::Strength)));
    assert!(plan.legs_not_assessed > 0);
}

#[test]
fn only_what_a_surface_has_use_for_is_told() {
    let found = effects(&told(6.0));
    let gravel = drive_group(way(&found, GRAVEL, Run::Empty, Way::Plan)).clone();
    assert!(gravel.gravel.is_some() && gravel.washboard.is_some() && gravel.pavement.is_none());
    let laden = drive_group(way(&found, GRAVEL, Run::Laden, Way::Plan)).clone();
    assert!(laden.washboard.is_none());
    let highway = drive_group(way(&found, HIGHWAY, Run::Laden, Way::Plan)).clone();
    assert!(highway.gravel.is_none() && highway.stress_ratio.is_none());
    assert!(highway.pavement.is_some());
}

#[test]
fn full_pressure_is_the_measure_of_all() {
    let found = effects(&told(6.0));
    for leg in &found.legs {
        let full = leg.ways.iter().find(|way| way.way == Way::FullPressure).unwrap();
        let one = full.resistance.clone().unwrap();
        assert!((one.low - 1.0).abs() < 1e-12 && (one.high - 1.0).abs() < 1e-12);
        for group in &full.groups {
            let growth = group.contact_growth.clone().unwrap();
            assert!((growth.low - 1.0).abs() < 1e-12 && (growth.high - 1.0).abs() < 1e-12);
        }
    }
}

#[test]
fn the_plan_spares_the_gravel_within_what_was_measured_and_may_spare_nothing() {
    let found = effects(&told(6.0));
    for run in Run::BOTH {
        let group = drive_group(way(&found, GRAVEL, run, Way::Plan));
        let gravel = group.gravel.clone().unwrap().unwrap();
        assert!(gravel.rut.low <= gravel.rut.middle && gravel.rut.middle < 1.0);
        // Trials that found no difference are the upper end; twice the passes the cap.
        assert!((gravel.rut.high - 1.0).abs() < 1e-12);
        assert!(gravel.passes.middle <= 2.0 + 1e-12);
    }
    assert!(found.trials.iter().any(|trial| trial.found == Found::NoDifference));
}

#[test]
fn less_load_spares_the_deep_ground_and_lower_pressure_hardly_does() {
    let found = effects(&told(6.0));
    let ratio = |one| {
        drive_group(way(&found, SPUR, Run::Laden, one)).stress_ratio.clone().unwrap().unwrap()
    };
    let (plan, less) = (ratio(Way::Plan), ratio(Way::LessLoad));
    assert!(plan.middle < 1.0 && plan.high >= 1.0 - 1e-12);
    assert!(less.high < 0.9, "{less:?}");
    assert!(less.high < plan.middle);
}

#[test]
fn soft_soil_stops_first_by_the_least_model_and_the_empty_truck_is_its_own_case() {
    let verdict = |cbr, run| {
        let found = effects(&told(cbr));
        way(&found, SPUR, run, Way::Plan).grades.climb.clone()
    };
    for run in Run::BOTH {
        assert_eq!(verdict(12.0, run).unwrap().verdict, Verdict::Go);
    }
    let (soft, firm) = (verdict(2.0, Run::Laden).unwrap(), verdict(6.0, Run::Laden).unwrap());
    assert!(soft.possible.low < firm.possible.low);
    let empty = verdict(6.0, Run::Empty).unwrap();
    assert!((empty.possible.low - firm.possible.low).abs() > 1e-6);
}

#[test]
fn lower_pressure_climbs_more_on_soft_soil() {
    let mut haul = told(2.5);
    // Grip measured there would bound both alike.
    haul.route.legs[SPUR].ground =
        Some(LegGround { soil: Some(soil(2.5)), ..LegGround::default() });
    let found = effects(&haul);
    for run in Run::BOTH {
        let climb = |one| way(&found, SPUR, run, one).grades.climb.clone().unwrap().possible;
        assert!(climb(Way::Plan).low > climb(Way::FullPressure).low);
    }
}

#[test]
fn a_pavement_is_judged_for_asphalt_by_pressure_and_for_the_ground_by_load() {
    let found = effects(&told(6.0));
    let of = |one| {
        let group = drive_group(way(&found, HIGHWAY, Run::Laden, one));
        group.pavement.clone().unwrap().unwrap()
    };
    let (reduced, less) = (of(Way::ConstantReduced), of(Way::LessLoad));
    assert!(reduced.asphalt_life.low > 1.0);
    assert!((reduced.subgrade_life.middle - 1.0).abs() < 1e-12);
    assert!(less.subgrade_life.middle > 1.5);
}

#[test]
fn driven_axles_at_one_pressure_have_no_wind_up_to_tell() {
    let mut haul = told(6.0);
    let found = effects(&haul);
    assert!(way(&found, SPUR, Run::Laden, Way::Plan).wind_up.is_none());
    haul.combination.groups[0].driven = true;
    let found = effects(&haul);
    let wind_up = way(&found, SPUR, Run::Empty, Way::Plan).wind_up.clone().unwrap().unwrap();
    assert!(wind_up.slip.low > 0.0 && wind_up.slip.low < wind_up.slip.high);
}

#[test]
fn tires_roll_easiest_within_their_window_and_softer_on_weaker_soil() {
    let easiest = |cbr| {
        let found = effects(&told(cbr));
        let on = |leg| drive_group(way(&found, leg, Run::Laden, Way::Plan)).clone();
        assert!(on(GRAVEL).least_resistance.is_none());
        let rival = way(&found, SPUR, Run::Laden, Way::ConstantReduced);
        assert!(drive_group(rival).least_resistance.is_none());
        on(SPUR).least_resistance.unwrap().unwrap()
    };
    let (weak, strong) = (easiest(3.0), easiest(12.0));
    for found in [&weak, &strong] {
        let of = found.pressure;
        assert!(of.low <= of.middle && of.middle <= of.high, "{of:?}");
        // The pressure held need not lie on the grid that was searched.
        assert!(found.held_over_least > 0.999, "{found:?}");
    }
    assert!(weak.pressure.middle < strong.pressure.middle, "{weak:?} {strong:?}");
}

#[test]
fn without_strength_of_the_soil_nothing_is_said_of_easy_rolling() {
    let mut haul = told(4.0);
    haul.route.legs[SPUR].ground = None;
    let found = effects(&haul);
    let drive = drive_group(way(&found, SPUR, Run::Laden, Way::Plan)).clone();
    assert_eq!(drive.least_resistance, Some(Err(NotAssessed::Give(Input::Strength))));
}

#[test]
fn locks_are_to_stay_open_from_half_a_percent() {
    let mut haul = told(6.0);
    haul.combination.groups[0].driven = true;
    let found = effects(&haul);
    let slip = way(&found, SPUR, Run::Empty, Way::Plan).wind_up.clone().unwrap().unwrap();
    let mut small = slip.clone();
    small.slip.middle = 0.0049;
    assert!(!small.leave_locks_open());
    small.slip.middle = 0.0051;
    assert!(small.leave_locks_open());
}

#[test]
fn twice_worked_is_the_same_to_the_last_digit() {
    let haul = told(4.0);
    assert_eq!(effects(&haul), effects(&haul));
}

#[test]
fn soil_ruts_are_spared_by_pressure_and_may_be_by_nothing() {
    let found = effects(&told(4.0));
    for run in Run::BOTH {
        let soil = drive_group(way(&found, SPUR, run, Way::Plan)).soil.clone().unwrap().unwrap();
        assert!(soil.rut.middle < 1.0 && (soil.rut.high - 1.0).abs() < 1e-9, "{soil:?}");
        assert!(soil.passes.middle > 1.0 && (soil.passes.low - 1.0).abs() < 1e-9);
    }
    assert!(drive_group(way(&found, GRAVEL, Run::Laden, Way::Plan)).soil.is_none());
}

#[test]
fn duals_keep_less_gap_where_they_bend_more() {
    let found = effects(&told(6.0));
    let gap =
        |one| drive_group(way(&found, SPUR, Run::Laden, one)).tire.gap.clone().unwrap().unwrap();
    let (plan, full) = (gap(Way::Plan), gap(Way::FullPressure));
    assert!(plan.middle < full.middle && plan.low < plan.middle && plan.middle < plan.high);
    let steer = &way(&found, SPUR, Run::Laden, Way::Plan).groups[0];
    assert_eq!(steer.tire.gap, None);
}

#[test]
fn thawing_ground_under_a_pavement_is_taken_weak() {
    let mut haul = told(6.0);
    let season = |season| Some(SoilGiven::Judged { class: SoilClass::Cl, season });
    let mut strains = Vec::new();
    for one in [Season::Drained, Season::Thaw] {
        let ground = haul.route.legs[HIGHWAY].ground.as_mut().unwrap();
        ground.soil = season(one);
        let found = effects(&haul);
        let group = drive_group(way(&found, HIGHWAY, Run::Laden, Way::Plan)).clone();
        let pavement = group.pavement.unwrap().unwrap();
        assert_eq!(pavement.thawed, one == Season::Thaw);
        strains.push(pavement.strain.subgrade.strain.as_microstrain());
    }
    assert!(strains[1] > strains[0], "{strains:?}");
}

#[test]
fn spread_comes_from_what_is_not_known() {
    let sampled = Detail { samples: 128, ..nominal() };
    let mut haul = told(3.0);
    let plan = Plan::of(&haul, &nominal()).unwrap();
    let of = |haul: &HaulCycle| {
        let found = Effects::of(haul, &plan, &sampled, &OneByOne);
        way(&found, SPUR, Run::Laden, Way::Plan).spread.clone().unwrap()
    };
    let found = of(&haul);
    for spread in [found.climb.clone().unwrap(), found.resistance.unwrap()] {
        let Tenths { p10, p50, p90 } = spread.tenths;
        assert!(p10 < p90 && p10 <= p50 && p50 <= p90, "{spread:?}");
        assert!(spread.narrows.windows(2).all(|pair| pair[0].1 >= pair[1].1));
        assert!(spread.narrows.iter().all(|(_, share)| *share <= 1.0));
    }
    // Grip measured there has no spread of its own; the choice of model has.
    let inputs: Vec<Uncertain> = found.climb.unwrap().narrows.iter().map(|one| one.0).collect();
    assert!(inputs.contains(&Uncertain::Model) && !inputs.contains(&Uncertain::Grip), "{inputs:?}");
    haul.route.legs[SPUR].ground = None;
    let untold = of(&haul);
    assert_eq!(untold.climb, Err(NotAssessed::Give(Input::Strength)));
}

#[test]
fn heat_load_is_told_where_its_corrections_reach() {
    let mut haul = told(6.0);
    let length = haul.route.length();
    assert!(length * 2.0 > Length::from_km(40.0));
    let found = effects(&haul);
    let all = &found.total(Way::Plan).unwrap().tkph;
    assert!(all.iter().all(|(_, found)| matches!(found, Err(NotAssessed::OutOfRange(_)))));
    let short = 30.0 / length.as_km() / 2.0;
    for leg in &mut haul.route.legs {
        (leg.from, leg.to) = (leg.from * short, leg.to * short);
    }
    let found = effects(&haul);
    let of = |one| {
        let all = &found.total(one).unwrap().tkph;
        all.iter().find(|(group, _)| *group == 1).unwrap().1.clone().unwrap().corrected.as_tkph()
    };
    assert!(of(Way::LessLoad) < of(Way::FullPressure));
}

proptest! {
    #[test]
    fn lower_pressure_never_raises_stress_below(
        kn in 6.0..26.0f64, kpa in 250.0..750.0f64, less in 0.6..0.99f64
    ) {
        let (high, low) = (tire(kpa, kn), tire(kpa * less, kn));
        if let (Ok(high), Ok(low)) = (high.stress_below, low.stress_below) {
            prop_assert!(low.low <= high.low + Stress::from_kpa(1e-9));
            prop_assert!(low.middle <= high.middle + Stress::from_kpa(1e-9));
            prop_assert!(low.high <= high.high + Stress::from_kpa(1e-9));
        }
    }

    #[test]
    fn more_load_never_lowers_stress_below(kn in 6.0..20.0f64, more in 1.01..1.3f64) {
        let (light, heavy) = (tire(500.0, kn), tire(500.0, kn * more));
        if let (Ok(light), Ok(heavy)) = (light.stress_below, heavy.stress_below) {
            prop_assert!(light.middle < heavy.middle);
        }
    }

    #[test]
    fn bands_keep_their_order(kn in 4.0..30.0f64, kpa in 120.0..900.0f64) {
        let found = tire(kpa, kn);
        if let Ok(contact) = found.contact {
            prop_assert!(contact.area.low < contact.area.high);
            prop_assert!(contact.pressure.low < contact.pressure.high);
        }
        if let Ok(stress) = found.stress_below {
            prop_assert!(stress.low <= stress.middle && stress.middle <= stress.high);
        }
        prop_assert!(found.load > Mass::ZERO);
    }
}
