use model::air::AirFault;
use model::haul_cycle::HaulCycle;
use quantity::{GaugePressure, Length, PressureDifference, Speed, TemperatureDifference, Time};

use super::*;
use crate::{
    Course, CyclePlan, DayWeather, Driver, DriverHabit, DrivingStyle, LadenChange, PlannedChange,
    SetPressures, TrueTruck, Variation,
};

struct Fleet {
    haul: HaulCycle,
    truck: TrueTruck,
    plan: CyclePlan,
    empty: Course,
    laden: Course,
    weather: DayWeather,
}

impl Fleet {
    fn new() -> Self {
        let haul = example::haul();
        let psi = [[20.0, 25.0, 35.0], [60.0, 68.0, 88.0]];
        let set = SetPressures::new(2, 2, 3, |_, load_state, rung| {
            GaugePressure::from_psi(psi[load_state][rung])
        });
        let truck = TrueTruck::new(&haul, &set, &Variation::NONE).unwrap();
        let change = |km, rung, load_state| PlannedChange {
            at: Length::from_km(km),
            to: Target { rung, load_state },
            standing: false,
        };
        let plan = CyclePlan {
            empty_start: Target { rung: 2, load_state: 0 },
            empty: vec![change(21.0, 1, 0), change(36.5, 0, 0)],
            empty_caps: Vec::new(),
            laden_change: LadenChange::AfterLoading,
            laden_start: Target { rung: 0, load_state: 1 },
            laden: vec![change(2.9, 1, 1), change(15.0, 2, 1)],
            laden_caps: Vec::new(),
        };
        let (empty, laden) =
            Course::of_haul(&haul, Length::from_m(50.0), &DrivingStyle::default()).unwrap();
        let begins = Time::from_s(5.0 * 3600.0);
        let off = TemperatureDifference::ZERO;
        let weather = DayWeather::of_day(&haul.weather, &haul.route, begins, off, 1);
        Self { haul, truck, plan, empty, laden, weather }
    }

    fn drive(&self, habit: DriverHabit, faults: &[TimedFault]) -> Heard {
        let driver = Driver {
            habit,
            reaction: Length::from_m(30.0),
            speed_spread: 0.02,
            held: PressureDifference::ZERO,
            seed: 5,
        };
        let mut heard = Heard::default();
        Day {
            haul: &self.haul,
            truck: &self.truck,
            courses: (&self.empty, &self.laden),
            plan: &self.plan,
            driver: &driver,
            weather: &self.weather,
            faults,
            cycles: 1,
        }
        .drive(&mut heard)
        .unwrap();
        heard
    }
}

#[derive(Default)]
struct Heard {
    events: Vec<(f64, DayEvent)>,
    /// Clock, speed, changing, and every tire in kPa.
    moments: Vec<(f64, f64, bool, Vec<f64>)>,
    loaded_s: f64,
}

impl Witness for Heard {
    fn moment(&mut self, moment: &Moment<'_>) {
        let tires = (0..18).map(|tire| moment.air.tire(tire).as_kpa()).collect();
        self.loaded_s = moment.air.duty().loaded().as_s();
        self.moments.push((moment.clock.as_s(), moment.speed.as_kmh(), moment.changing, tires));
    }

    fn event(&mut self, clock: Time, _: Length, event: DayEvent) {
        self.events.push((clock.as_s(), event));
    }
}

impl Heard {
    fn count(&self, is: impl Fn(&DayEvent) -> bool) -> usize {
        self.events.iter().filter(|(_, event)| is(event)).count()
    }

    fn end(&self) -> &(f64, f64, bool, Vec<f64>) {
        self.moments.last().unwrap()
    }
}

fn from(fault: AirFault, minutes: f64) -> TimedFault {
    let from = Time::from_min(minutes);
    TimedFault { fault: TrueFault::Air(fault), from, until: None, only_below: None }
}

#[test]
fn a_day_tells_every_second_and_every_change_once() {
    let fleet = Fleet::new();
    let heard = fleet.drive(DriverHabit::Good, &[]);
    for pair in heard.moments.windows(2) {
        let apart = pair[1].0 - pair[0].0;
        assert!((0.0..=1.5).contains(&apart), "{apart} s");
    }
    // Start of shift, two on the empty run, laden, two on the laden run, back to empty.
    assert_eq!(heard.count(|event| matches!(event, DayEvent::Asked { .. })), 7);
    let done = heard.count(|event| matches!(event, DayEvent::Complete { .. }));
    let given_up = heard.count(|event| matches!(event, DayEvent::GivenUp { .. }));
    assert!(done + given_up >= 6, "{done} complete, {given_up} given up");
    assert_eq!(heard.count(|event| matches!(event, DayEvent::Phase(_))), 5);
    let fastest = heard.moments.iter().map(|moment| moment.1).fold(0.0, f64::max);
    assert!(fastest <= Speed::from_mph(60.0).as_kmh() * 1.01);
}

#[test]
fn the_same_day_again_is_the_same_to_the_last_digit() {
    let fleet = Fleet::new();
    let habit = DriverHabit::Forgetful { share: 0.4 };
    let (one, two) = (fleet.drive(habit, &[]), fleet.drive(habit, &[]));
    assert_eq!(one.events, two.events);
    assert_eq!(one.moments, two.moments);
}

#[test]
fn a_leak_takes_its_own_tires_down_and_leaves_the_start_of_the_day_as_it_was() {
    let fleet = Fleet::new();
    let good = fleet.drive(DriverHabit::Good, &[]);
    let tire = fleet.truck.tires_at("trailer.1.left.outer")[0];
    let hole = Length::from_mm(2.5);
    let leaking = fleet.drive(DriverHabit::Good, &[from(AirFault::TireLeak { tire, hole }, 60.0)]);
    let before = |heard: &Heard| {
        let early = heard.moments.iter().take_while(|moment| moment.0 < 3600.0).cloned();
        early.collect::<Vec<_>>()
    };
    assert_eq!(before(&good), before(&leaking));
    let after = |heard: &Heard| {
        let at = heard.moments.iter().find(|moment| moment.0 > 5400.0).unwrap();
        at.3[tire]
    };
    assert!(after(&leaking) < after(&good) - 5.0, "{} {}", after(&leaking), after(&good));
    assert!(leaking.loaded_s > good.loaded_s);
    assert_eq!(leaking.count(|event| *event == DayEvent::FaultBegins(0)), 1);
}

#[test]
fn a_hot_wheel_warms_its_own_tires_alone() {
    let fleet = Fleet::new();
    let tires = fleet.truck.tires_at("steer.1.left");
    let hot = TimedFault {
        fault: TrueFault::HotWheel {
            tires: tires.clone(),
            rise: TemperatureDifference::from_kelvin(40.0),
        },
        from: Time::ZERO,
        until: None,
        only_below: None,
    };
    let good = fleet.drive(DriverHabit::Good, &[]);
    let with = fleet.drive(DriverHabit::Good, &[hot]);
    let half = good.moments.len() / 2;
    let clock = good.moments[half].0;
    let at = |heard: &Heard| heard.moments.iter().find(|one| one.0 >= clock).unwrap().3.clone();
    let (cool, warm) = (at(&good), at(&with));
    for tire in 0..18 {
        let more = warm[tire] - cool[tire];
        assert_eq!(more > 5.0, tires.contains(&tire), "tire {tire}: {more} kPa more");
    }
}

#[test]
fn a_late_driver_is_longer_on_the_wrong_pressure() {
    let fleet = Fleet::new();
    let of = |habit| {
        let heard = fleet.drive(habit, &[]);
        let asked = heard.events.iter().filter_map(|(clock, event)| match event {
            DayEvent::Asked { planned_at: Some(_), .. } => Some(*clock),
            _ => None,
        });
        asked.collect::<Vec<f64>>()
    };
    let good = of(DriverHabit::Good);
    let late = of(DriverHabit::Late { by: Length::from_km(2.0) });
    assert_eq!(good.len(), late.len());
    assert!(late[0] > good[0] + 30.0);
}

#[test]
fn a_weak_compressor_leaves_the_end_of_the_day_later() {
    let fleet = Fleet::new();
    let good = fleet.drive(DriverHabit::Good, &[]);
    let weak =
        fleet.drive(DriverHabit::Good, &[from(AirFault::WeakCompressor { left: 0.35 }, 0.0)]);
    assert!(weak.end().0 > good.end().0 + 60.0, "{} {}", weak.end().0, good.end().0);
}
