//! The call from the road, case by case: what is read, what is coupled, what must be said.

mod common;

use std::sync::Arc;

use common::{DRIVE, EMPTY, GRAVEL, HIGHWAY, LADEN, SPUR, TRAILER, id, maker, quiet, tire_loads};
use model::haul_cycle::HaulCycle;
use model::vehicle::{HoldLimit, WheelValve};
use plan::Ladder;
use plan::now::{
    Answer, Call, CallError, Check, Gauged, HowFar, Load, Reading, Reason, Stance, Trailer,
    Verdict, WALKING_PACE, Warmth, Whose, answer, card,
};
use quantity::{ColdPressure, GaugePressure, Length, Mass, PressureDifference, Speed, Time};

const STEER_GROUP: usize = 0;
const DRIVE_GROUP: usize = 1;
const TRAILER_GROUP: usize = 2;

fn psi(value: f64) -> GaugePressure {
    GaugePressure::from_psi(value)
}

fn reading(channel: usize, gauge: GaugePressure, warmth: Warmth) -> Reading {
    Reading { whose: Whose::Channel(channel), gauged: Gauged::One(gauge), warmth, typed_in: None }
}

fn call(load_state: usize, readings: Vec<Reading>) -> Call {
    Call {
        load: Load::State(load_state),
        chains: None,
        readings,
        ran_last_hour: false,
        ambient: None,
        trailer: Trailer::AsPlanned,
        with_unapproved: true,
        cap_step: Speed::from_mph(5.0),
    }
}

fn both(load_state: usize, drive: f64, trailer: f64, warmth: Warmth) -> Call {
    let readings = vec![reading(DRIVE, psi(drive), warmth), reading(TRAILER, psi(trailer), warmth)];
    call(load_state, readings)
}

fn ask(haul: &HaulCycle, call: &Call) -> Answer {
    answer(haul, call).unwrap_or_else(|why| panic!("{why}"))
}

fn says(answer: &Answer, reason: impl Fn(&Reason) -> bool) -> bool {
    answer.all_reasons().any(reason)
}

/// Axles that bear what the worked loads put on them.
fn bears_more(haul: &mut HaulCycle) {
    for group in &mut haul.combination.groups {
        group.axle_rating = group.axle_rating * 1.2;
    }
}

fn mph(answer: &Answer) -> f64 {
    answer.speed.map_or(0.0, Speed::as_mph)
}

#[test]
fn a_truck_set_as_the_ladder_says_holds_its_rung_cold_or_warm() {
    let haul = example::haul();
    let (ladder, _) = Ladder::of(&haul).unwrap();
    for load_state in [EMPTY, LADEN] {
        for rung in [SPUR, GRAVEL, HIGHWAY] {
            let set = |channel| {
                let cell = ladder.cell(id(channel, load_state, 0, rung)).unwrap();
                cell.set.as_ref().unwrap().vented
            };
            for warmth in [Warmth::Cold, Warmth::Warm, Warmth::NotKnown] {
                let readings = [DRIVE, TRAILER].map(|one| reading(one, set(one), warmth)).to_vec();
                let found = ask(&haul, &call(load_state, readings));
                assert_eq!(found.verdict, Verdict::Go, "{load_state} {rung} {warmth:?} {found:?}");
                assert!(found.rung >= Some(rung), "{load_state} {rung} {warmth:?} {found:?}");
            }
        }
    }
}

// TRA year book, truck-bus, conventional sizes at restricted speed (recalled): 11R24.5 G dual,
// 5500 lb a tire, n = 0.7, needs 92.6 psi over 50 mph, 81.9 at 41 to 50 and 74.9 at 31 to 40.
#[test]
fn worked_restricted_speeds_turned_round() {
    let mut haul = quiet();
    tire_loads(&mut haul, 5500.0);
    bears_more(&mut haul);
    common::tires(&mut haul, |tire| {
        tire.size = "11R24.5".into();
        tire.single.load = Mass::from_lb(6610.0);
        tire.dual = tire.dual.map(|mut point| {
            point.load = Mass::from_lb(6005.0);
            point
        });
    });
    common::jurisdiction(&mut haul, model::route::Jurisdiction::Private);
    haul.weather.warmest = haul.weather.reference;
    let speed = |psi| {
        let mut call = both(LADEN, psi, psi, Warmth::Cold);
        call.ambient = Some(haul.weather.reference);
        ask(&haul, &call).groups[DRIVE_GROUP].speed.map_or(0.0, Speed::as_mph)
    };
    assert!((speed(93.0) - 60.0).abs() < 1e-6, "{}", speed(93.0));
    assert!((speed(92.0) - 50.0).abs() < 1e-6, "{}", speed(92.0));
    assert!((speed(82.2) - 50.0).abs() < 1e-6, "{}", speed(82.2));
    assert!((speed(81.5) - 40.0).abs() < 1e-6, "{}", speed(81.5));
    assert!((speed(75.2) - 40.0).abs() < 1e-6, "{}", speed(75.2));
    assert!(speed(74.5) < 40.0, "{}", speed(74.5));
}

#[test]
fn a_warm_reading_is_not_its_number() {
    let haul = example::haul();
    let found = ask(&haul, &both(EMPTY, 60.0, 60.0, Warmth::Warm));
    let cold = found.groups[DRIVE_GROUP].cold.unwrap();
    assert!(cold < ColdPressure::from_psi(55.0), "{cold}");
    let said_cold = Call { ran_last_hour: true, ..both(EMPTY, 60.0, 60.0, Warmth::Cold) };
    let found = ask(&haul, &said_cold);
    assert!(says(&found, |reason| *reason == Reason::RanLastHour));
    assert_eq!(found.groups[DRIVE_GROUP].cold, Some(cold));
}

#[test]
fn at_or_under_80_percent_nobody_fills() {
    let haul = example::haul();
    let found = ask(&haul, &both(LADEN, 104.0, 15.0, Warmth::Cold));
    assert_eq!((found.verdict, found.speed, found.how_far), (Verdict::Stop, None, HowFar::Nowhere));
    let of_trailer =
        |reason: &Reason| matches!(reason, Reason::UnderServiceShare { group: TRAILER_GROUP, .. });
    assert!(says(&found, of_trailer));
    let checks = found.all_checks();
    assert!(checks.contains(&Check::LeaveToTrainedPeople { group: TRAILER_GROUP }));
    assert!(!checks.iter().any(|check| matches!(check, Check::Raise { channel: TRAILER, .. })));
}

#[test]
fn the_share_of_80_percent_is_where_it_is_said_to_be() {
    let haul = example::haul();
    let at = |psi| ask(&haul, &both(LADEN, 104.0, psi, Warmth::Cold));
    let needed = at(10.0)
        .all_reasons()
        .find_map(|reason| match reason {
            Reason::UnderServiceShare { needed, .. } => Some(*needed),
            _ => None,
        })
        .unwrap();
    // Cold on the warmest day: carried back to the day of the need.
    let site = plan::window::Site::new(&haul.weather).unwrap();
    let reads = |cold| site.read_at(cold, site.warmest).as_psi();
    let limit = reads(needed.scaled(0.8));
    let told = |psi| says(&at(psi), |r| matches!(r, Reason::UnderServiceShare { .. }));
    assert!(told(limit - 0.01) && !told(limit + 0.01), "{limit}");
}

#[test]
fn the_slowest_group_sets_the_speed() {
    let haul = example::haul();
    let hard = ask(&haul, &both(LADEN, 104.0, 104.0, Warmth::Cold));
    let one_soft = ask(&haul, &both(LADEN, 104.0, 75.0, Warmth::Cold));
    assert!(mph(&one_soft) < mph(&hard) && mph(&one_soft) > 0.0, "{one_soft:?}");
    let sets = |reason: &Reason| matches!(reason, Reason::SetsTheSpeed { group, .. } if *group == TRAILER_GROUP);
    assert!(says(&one_soft, sets));
    assert!(one_soft.exact >= one_soft.speed);
}

#[test]
fn a_group_nobody_gauged_walks_off_the_road() {
    let haul = example::haul();
    let found = ask(&haul, &call(LADEN, vec![reading(DRIVE, psi(104.0), Warmth::Cold)]));
    assert_eq!(found.speed, Some(WALKING_PACE));
    assert_eq!((found.verdict, found.how_far), (Verdict::GoSlow, HowFar::OffTheRoad));
    assert!(found.all_checks().contains(&Check::Gauge { group: TRAILER_GROUP }));
}

#[test]
fn fixed_groups_are_judged_and_asked_for() {
    let haul = example::haul();
    let kept = ask(&haul, &both(LADEN, 104.0, 104.0, Warmth::Cold));
    assert_eq!(kept.groups[STEER_GROUP].stance, Stance::Kept);
    assert!(kept.all_checks().contains(&Check::Gauge { group: STEER_GROUP }));
    let mut soft = both(LADEN, 104.0, 104.0, Warmth::Cold);
    soft.readings
        .push(Reading { whose: Whose::Group(STEER_GROUP), ..reading(0, psi(30.0), Warmth::Cold) });
    let found = ask(&haul, &soft);
    assert_eq!(found.groups[STEER_GROUP].stance, Stance::Gauged);
    assert_eq!(found.verdict, Verdict::Stop);
}

#[test]
fn mates_more_than_5_psi_apart_are_told_and_the_softer_counts() {
    let haul = example::haul();
    let with = |a, b| {
        let mut call = both(LADEN, 104.0, 104.0, Warmth::Cold);
        call.readings[0].gauged = Gauged::Mates(psi(a), psi(b));
        ask(&haul, &call)
    };
    let differ = |reason: &Reason| matches!(reason, Reason::MatesDiffer { group: DRIVE_GROUP, .. });
    let (near, far) = (with(104.0, 99.5), with(104.0, 98.5));
    assert!(!says(&near, differ) && says(&far, differ));
    assert_eq!(far.verdict, Verdict::GoSlow);
    assert_eq!(far.groups[DRIVE_GROUP].reading, Some(psi(98.5)));
    assert!(far.all_checks().contains(&Check::FindWhySofter { group: DRIVE_GROUP }));
}

#[test]
fn a_tire_under_its_closing_pressure_cannot_be_reached() {
    let mut haul = example::haul();
    let closes_below = psi(60.0);
    haul.combination.groups[DRIVE_GROUP].wheel_valve =
        Some(WheelValve::SelfClosing { closes_below });
    let found = ask(&haul, &both(EMPTY, 60.0, 90.0, Warmth::Cold));
    assert!(says(&found, |reason| matches!(reason, Reason::CannotBeReached { .. })));
    assert_ne!(found.verdict, Verdict::Go);
    assert!(
        !found
            .all_checks()
            .iter()
            .any(|check| matches!(check, Check::Raise { channel: DRIVE, .. }))
    );
    let above = ask(&haul, &both(EMPTY, 62.0, 90.0, Warmth::Cold));
    assert!(!says(&above, |reason| matches!(reason, Reason::CannotBeReached { .. })));
    assert!(above.all_checks().contains(&Check::RaiseBeforeParking { group: DRIVE_GROUP }));
}

#[test]
fn a_tire_above_its_highest_is_lowered_first() {
    let haul = example::haul();
    let found = ask(&haul, &both(LADEN, 130.0, 104.0, Warmth::Cold));
    assert_eq!(found.verdict, Verdict::Stop);
    assert!(says(&found, |r| matches!(r, Reason::AboveHighest { group: DRIVE_GROUP, .. })));
    assert!(
        found.all_checks().iter().any(|c| matches!(c, Check::Lower { group: DRIVE_GROUP, .. }))
    );
    // What a tire filled to its highest gains on the road is not too much.
    let warm = ask(&haul, &both(LADEN, 112.0, 112.0, Warmth::Warm));
    assert!(!says(&warm, |reason| matches!(reason, Reason::AboveHighest { .. })), "{warm:?}");
}

#[test]
fn overload_stops_at_any_pressure() {
    let mut haul = example::haul();
    haul.combination.load_states[LADEN].groups[DRIVE_GROUP].mass = Mass::from_lb(60_000.0);
    let found = ask(&haul, &both(LADEN, 104.0, 104.0, Warmth::Cold));
    assert_eq!(found.verdict, Verdict::Stop);
    assert!(says(&found, |r| matches!(r, Reason::Overloaded { group: DRIVE_GROUP, .. })));
    assert!(found.all_checks().contains(&Check::TakeLoadOff { group: DRIVE_GROUP }));
}

#[test]
fn a_hold_limit_says_how_far() {
    let mut haul = example::haul();
    let hold = HoldLimit { time: Time::from_min(20.0), distance: Length::from_km(4.0) };
    haul.combination.rungs[SPUR].hold = Some(hold);
    // Between what the spur and what the gravel asks for, on the day cold pressures are named at.
    let ambient = Some(haul.weather.reference);
    let found = ask(&haul, &Call { ambient, ..both(LADEN, 64.0, 64.0, Warmth::Cold) });
    assert_eq!(found.rung, Some(SPUR), "{found:?}");
    assert!(matches!(found.how_far, HowFar::Hold { distance: Some(d), time: Some(t) }
        if d == hold.distance && t == hold.time));
    let road = ask(&haul, &both(LADEN, 104.0, 104.0, Warmth::Cold));
    assert_eq!(road.how_far, HowFar::NextStop);
}

#[test]
fn chains_ask_for_road_pressure_at_every_speed() {
    let haul = example::haul();
    let bare = both(LADEN, 75.0, 75.0, Warmth::Cold);
    let chained = Call { chains: Some("chains on drive".into()), ..bare.clone() };
    assert!(mph(&ask(&haul, &bare)) > 0.0);
    assert_eq!(ask(&haul, &chained).verdict, Verdict::Stop);
    let unknown = Call { chains: Some("studs".into()), ..bare };
    let error = answer(&haul, &unknown).unwrap_err();
    assert!(error.to_string().contains("chains on drive"), "{error}");
}

#[test]
fn a_slip_of_unit_is_told() {
    let haul = example::haul();
    let mut slipped = both(LADEN, 104.0, 104.0, Warmth::Cold);
    slipped.readings[0].gauged = Gauged::One(GaugePressure::from_kpa(85.0));
    slipped.readings[0].typed_in = Some("kPa");
    let found = ask(&haul, &slipped);
    assert_eq!(found.verdict, Verdict::Stop);
    let meant = found.all_reasons().find_map(|reason| match reason {
        Reason::UnitSlip { slip, .. } => Some((slip.typed, slip.meant)),
        _ => None,
    });
    assert_eq!(meant, Some(("kPa", "psi")));
}

#[test]
fn a_driver_gets_the_speed_of_what_somebody_stands_behind() {
    let mut haul = quiet();
    tire_loads(&mut haul, 5500.0);
    bears_more(&mut haul);
    haul.weather.warmest = haul.weather.reference;
    let asked = |haul: &HaulCycle, with_unapproved| {
        let call = both(LADEN, 84.0, 84.0, Warmth::Cold);
        ask(haul, &Call { with_unapproved, ambient: Some(haul.weather.reference), ..call })
    };
    let (specialist, driver) = (asked(&haul, true), asked(&haul, false));
    assert!(mph(&specialist) > 0.0, "{specialist:?}");
    assert_eq!(driver.verdict, Verdict::Stop);
    assert!(says(&driver, |r| matches!(r, Reason::TooSoft { unapproved: true, .. })));
    // With the maker's rows the driver goes as fast as they say.
    common::tires(&mut haul, maker(true, &[(6000.0, 35.0, 80.0), (6000.0, 65.0, 100.0)]));
    let approved = asked(&haul, false);
    assert!((mph(&approved) - 35.0).abs() < 1e-6, "{approved:?}");
}

#[test]
fn no_trailer_leaves_its_groups_out() {
    let haul = example::haul();
    let mut alone = call(EMPTY, vec![reading(DRIVE, psi(100.0), Warmth::Cold)]);
    alone.trailer = Trailer::None;
    let found = ask(&haul, &alone);
    assert!(found.groups.iter().all(|group| group.group != TRAILER_GROUP));
    assert_eq!(found.verdict, Verdict::Go);
    alone.readings.push(reading(TRAILER, psi(100.0), Warmth::Cold));
    assert!(matches!(answer(&haul, &alone), Err(CallError::NotCoupled { .. })));
}

#[test]
fn a_trailer_nobody_knows_needs_road_pressure() {
    let haul = example::haul();
    let planned = both(LADEN, 104.0, 75.0, Warmth::Cold);
    assert!(mph(&ask(&haul, &planned)) > 0.0);
    let unknown = Call { trailer: Trailer::Unknown, ..planned };
    let found = ask(&haul, &unknown);
    assert_eq!(found.groups[TRAILER_GROUP].speed, None);
    assert_eq!(found.verdict, Verdict::Stop);
    assert!(found.all_checks().contains(&Check::ReadSidewalls));
    let road = Call { trailer: Trailer::Unknown, ..both(LADEN, 104.0, 104.0, Warmth::Cold) };
    assert_eq!(ask(&haul, &road).verdict, Verdict::Go);
}

#[test]
fn other_tires_are_judged_by_their_own_ratings() {
    let haul = example::haul();
    let mut weak = example::us_dual();
    weak.name = "weak".into();
    for point in [Some(&mut weak.single), weak.dual.as_mut()].into_iter().flatten() {
        point.load = point.load * 0.75;
    }
    let planned = both(LADEN, 104.0, 95.0, Warmth::Cold);
    let other = Call { trailer: Trailer::OtherTires(Arc::new(weak)), ..planned.clone() };
    assert!(mph(&ask(&haul, &other)) < mph(&ask(&haul, &planned)));
    // A tire that may not be fitted dual holds nothing there.
    let single =
        Call { trailer: Trailer::OtherTires(Arc::new(example::metric_single())), ..planned };
    assert_eq!(ask(&haul, &single).verdict, Verdict::Stop);
}

#[test]
fn a_trailer_left_low_or_shut_is_seen_to_before_it_moves() {
    let haul = example::haul();
    for (trailer, opens) in [(Trailer::LeftLow, false), (Trailer::LeftShut, true)] {
        let found = ask(&haul, &Call { trailer, ..both(LADEN, 104.0, 104.0, Warmth::Cold) });
        let checks = found.all_checks();
        assert_eq!(found.verdict, Verdict::Stop);
        assert_eq!(checks.contains(&Check::OpenWheelEnds), opens);
        assert!(checks.iter().any(|check| matches!(check, Check::Raise { channel: TRAILER, .. })));
        assert!(checks.contains(&Check::AskAgain));
    }
}

#[test]
fn another_load_state_selected_is_set_against_what_is_needed() {
    let haul = example::haul();
    let trailer = Trailer::OtherLoadStateSelected(EMPTY);
    let found = ask(&haul, &Call { trailer, ..both(LADEN, 104.0, 104.0, Warmth::Cold) });
    assert_eq!(found.verdict, Verdict::GoSlow);
    assert!(found.set_for.iter().all(|cell| cell.was_set < cell.needed), "{:?}", found.set_for);
    assert!(found.all_checks().contains(&Check::SelectLoadState { state: LADEN }));
}

#[test]
fn the_card_says_what_a_call_says() {
    let haul = example::haul();
    let asked = call(LADEN, vec![]);
    let rows = card(&haul, &asked, Warmth::NotKnown, PressureDifference::from_psi(5.0)).unwrap();
    assert!(rows.iter().any(|row| row.channel == DRIVE && row.speeds[LADEN].is_some()));
    for row in rows.iter().filter(|row| row.channel == TRAILER) {
        for (state, speed) in row.speeds.iter().enumerate() {
            let hard = reading(DRIVE, psi(104.0), Warmth::Cold);
            let this = reading(TRAILER, row.reading, Warmth::NotKnown);
            let found = ask(&haul, &call(state, vec![hard, this]));
            let group = &found.groups[TRAILER_GROUP];
            let told = group.speed.filter(|_| group.verdict != Verdict::Stop);
            assert_eq!(told, *speed, "{} in state {state}", row.reading);
        }
    }
    for channel in [DRIVE, TRAILER] {
        let of: Vec<_> = rows.iter().filter(|row| row.channel == channel).collect();
        for pair in of.windows(2) {
            let (soft, hard) = (pair[0].speeds[LADEN], pair[1].speeds[LADEN]);
            assert!(hard >= soft || hard.is_none() && pair[1].reading > psi(105.0), "{pair:?}");
        }
    }
}
