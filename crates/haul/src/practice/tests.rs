use model::haul_cycle::HaulCycle;
use quantity::{GaugePressure, Length, Speed, Time};

use super::*;
use crate::{DrivingStyle, SetPressures, Target};

const EMPTY: usize = example::EMPTY;
const LADEN: usize = example::LADEN;

fn start(haul: &HaulCycle, surprises: Vec<Surprise>) -> Practice {
    let psi = [[20.0, 25.0, 35.0], [60.0, 68.0, 88.0]];
    let set = SetPressures::new(2, 2, 3, |_, load_state, rung| {
        GaugePressure::from_psi(psi[load_state][rung])
    });
    let style = DrivingStyle::default();
    Practice::new(haul, set, surprises, Length::from_m(10.0), style).unwrap()
}

fn order(practice: &mut Practice, rung: usize, load_state: usize) {
    practice.act(Action::Order(Target { rung, load_state })).unwrap();
}

/// Drives by what the plan of the invented haul would say.
fn drive(practice: &mut Practice) {
    practice.act(Action::Go).unwrap();
    let mut called = 0;
    for _ in 0..100_000 {
        match practice.stage() {
            Stage::Empty => {
                let km = practice.state().travelled().as_km();
                if called == 0 && km >= 21.0 {
                    order(practice, 1, EMPTY);
                    called = 1;
                } else if called == 1 && km >= 36.5 {
                    order(practice, 0, EMPTY);
                    called = 2;
                }
            }
            Stage::Loaded if called == 2 => {
                order(practice, 0, LADEN);
                called = 3;
            }
            Stage::Loaded if !practice.state().is_changing() => {
                if practice.state().ordered().load_state == EMPTY {
                    order(practice, 0, LADEN);
                } else {
                    practice.act(Action::Go).unwrap();
                }
            }
            Stage::Laden => {
                let km = practice.state().travelled().as_km();
                if called == 3 && km >= 2.9 {
                    order(practice, 1, LADEN);
                    called = 4;
                } else if called == 4 && km >= 15.0 {
                    order(practice, 2, LADEN);
                    called = 5;
                }
            }
            _ => {}
        }
        if practice.is_over() {
            return;
        }
        practice.advance(1);
    }
}

#[test]
fn a_drive_by_the_plan_arrives_with_a_sample_for_each_second() {
    let haul = example::haul();
    let mut practice = start(&haul, Vec::new());
    drive(&mut practice);
    assert_eq!(practice.stage(), Stage::Arrived);
    assert_eq!(practice.samples().len(), practice.second() as usize);
    for (second, sample) in (1..).zip(practice.samples()) {
        assert!((sample.time.as_s() - f64::from(second)).abs() < 0.7, "{second}: {}", sample.time);
    }
    let stages: Vec<Stage> = practice
        .happened()
        .iter()
        .filter_map(|one| match one.event {
            Event::Stage(stage) => Some(stage),
            _ => None,
        })
        .collect();
    let all = [Stage::Empty, Stage::Loading, Stage::Loaded, Stage::Laden, Stage::Arrived];
    assert_eq!(stages, all);
}

#[test]
fn the_same_actions_give_the_same_drive_to_the_last_digit_whatever_the_steps() {
    let haul = example::haul();
    let surprises = vec![
        Surprise::SlowCompressor { share: 0.7 },
        Surprise::UnexpectedStop {
            run: Stage::Laden,
            at: Length::from_km(8.0),
            time: Time::from_min(3.0),
        },
        Surprise::WrongLoadState,
    ];
    let mut first = start(&haul, surprises.clone());
    drive(&mut first);
    let mut again = start(&haul, surprises);
    for acted in first.acted() {
        // In one large step from action to action.
        again.advance(acted.second - again.second());
        again.act(acted.action).unwrap();
    }
    again.advance(first.second() - again.second());
    assert_eq!(first.samples(), again.samples());
    assert_eq!(first.happened(), again.happened());
    assert_eq!(again.stage(), Stage::Arrived);
}

#[test]
fn a_worn_compressor_and_a_leak_make_the_laden_change_longer() {
    let haul = example::haul();
    let taken = |surprises: Vec<Surprise>| {
        let mut practice = start(&haul, surprises);
        drive(&mut practice);
        practice.second()
    };
    let sound = taken(Vec::new());
    let leak = Surprise::Leak { lost: quantity::VolumeFlow::from_m3_per_s(0.002) };
    assert!(taken(vec![Surprise::SlowCompressor { share: 0.6 }]) > sound + 60);
    assert!(taken(vec![leak]) > sound + 10);
}

#[test]
fn an_order_after_loading_goes_to_the_empty_pressures_once_when_the_wrong_load_is_selected() {
    let haul = example::haul();
    let mut practice = start(&haul, vec![Surprise::WrongLoadState]);
    practice.act(Action::Go).unwrap();
    while practice.stage() != Stage::Loaded {
        practice.advance(1);
    }
    order(&mut practice, 0, LADEN);
    assert_eq!(practice.state().ordered().load_state, EMPTY);
    order(&mut practice, 0, LADEN);
    assert_eq!(practice.state().ordered().load_state, LADEN);
}

#[test]
fn the_truck_stops_where_it_is_told_and_not_in_a_closed_lay_by() {
    let haul = example::haul();
    let mut practice = start(&haul, Vec::new());
    practice.act(Action::Go).unwrap();
    practice.advance(120);
    practice.act(Action::Stop).unwrap();
    practice.advance(60);
    assert!(practice.state().speed().as_kmh() < 1e-9);
    let here = practice.chainage();
    practice.act(Action::Go).unwrap();
    practice.advance(30);
    assert!(practice.state().speed().as_kmh() > 10.0);

    let mut closed = start(&haul, vec![Surprise::ClosedLayBy { at: here }]);
    closed.act(Action::Go).unwrap();
    closed.advance(120);
    closed.act(Action::Stop).unwrap();
    assert_eq!(closed.happened().last().map(|one| one.event), Some(Event::LayByClosed));
    closed.advance(60);
    assert!(closed.state().speed().as_kmh() > 10.0);
}

#[test]
fn a_chosen_speed_is_driven_where_the_road_allows_it_and_the_cap_is_passed_if_so_chosen() {
    let haul = example::haul();
    let at = |choice| {
        let mut practice = start(&haul, Vec::new());
        practice.act(Action::Order(Target { rung: 0, load_state: EMPTY })).unwrap();
        practice.advance(1200);
        practice.act(Action::Speed(choice)).unwrap();
        practice.act(Action::Go).unwrap();
        practice.advance(300);
        (practice.state().speed(), practice.cap())
    };
    let (kept, cap) = at(SpeedChoice::KeepToCap);
    assert!((kept - cap).abs() < Speed::from_kmh(0.5), "{kept} {cap}");
    let (slow, _) = at(SpeedChoice::At(Speed::from_kmh(12.0)));
    assert!((slow.as_kmh() - 12.0).abs() < 0.5, "{slow}");
    let (fast, cap) = at(SpeedChoice::Road);
    assert!(fast > cap * 1.5, "{fast} {cap}");
}

#[test]
fn what_cannot_be_done_is_refused() {
    let haul = example::haul();
    let mut practice = start(&haul, Vec::new());
    let nowhere = Action::Order(Target { rung: 9, load_state: EMPTY });
    assert!(matches!(practice.act(nowhere), Err(ActionError::NoSuchCell { rung: 9, .. })));
    let stand = Action::Speed(SpeedChoice::At(Speed::ZERO));
    assert!(matches!(practice.act(stand), Err(ActionError::NoSpeed { .. })));
    practice.act(Action::Go).unwrap();
    while practice.stage() != Stage::Loading {
        practice.advance(1);
    }
    assert!(matches!(practice.act(Action::Go), Err(ActionError::Loading { .. })));
    assert_eq!(practice.acted().len(), 1);
}
