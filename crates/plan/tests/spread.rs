//! Truck-to-truck and run-to-run spread: what it must and must not do.

use model::haul_cycle::Spread;
use plan::{Action, Detail, OneByOne, Plan, Workers};
use quantity::Length;

fn plan(spread: Spread) -> Plan {
    let mut haul = example::haul();
    haul.spread = spread;
    Plan::of(&haul, &Detail::default()).unwrap()
}

fn wider(spread: &Spread, factor: f64) -> Spread {
    let (mut truck, mut run) = (spread.truck, spread.run);
    truck.delivery *= factor;
    truck.conductance *= factor;
    truck.tire_volume *= factor;
    run.ambient = run.ambient * factor;
    run.engine_speed *= factor;
    run.road_speed *= factor;
    run.reaction = run.reaction * factor;
    run.held_pressure = run.held_pressure * factor;
    Spread { truck, run, seed: spread.seed }
}

#[test]
fn without_spread_nine_of_ten_is_the_middle() {
    let plan = plan(Spread::NONE);
    for point in &plan.driven.unwrap().points {
        let Some(spread) = point.spread else { continue };
        assert_eq!(spread.time_p50.as_s().to_bits(), spread.time_p90.as_s().to_bits());
        assert_eq!(spread.lead_p50.as_m().to_bits(), spread.lead_p90.as_m().to_bits());
    }
}

#[test]
fn more_spread_never_shortens_a_lead() {
    let base = Spread::default();
    let leads: Vec<Vec<Length>> = [0.0, 0.5, 1.0, 2.0]
        .iter()
        .map(|&factor| {
            let driven = plan(wider(&base, factor)).driven.unwrap();
            driven.points.iter().filter(|point| point.fits).map(|point| point.lead).collect()
        })
        .collect();
    for pair in leads.windows(2) {
        for (narrow, wide) in pair[0].iter().zip(&pair[1]) {
            assert!(*wide >= *narrow - Length::from_m(1.5), "{narrow} then {wide}");
        }
    }
}

#[test]
fn nine_of_ten_trucks_are_complete_in_time_from_the_planned_place() {
    let haul = example::haul();
    let plan = plan(Spread::default());
    let driven = plan.driven.unwrap();
    let raise = driven.points.iter().rfind(|point| point.action == Action::Raise).unwrap();
    assert_eq!(raise.fits_p90, Some(true));
    let spread = raise.spread.unwrap();
    assert!(spread.lead_p90 > spread.lead_p50 && spread.time_p90 > spread.time_p50);
    // The nominal truck, called there, has road to spare.
    let spare = (raise.reached - raise.reach_by).abs();
    assert!(spare > Length::from_m(10.0), "{spare}");
    assert!(haul.spread.truck.delivery > 0.0);
}

/// Does the jobs backward on eight threads.
struct Backward;

impl Workers for Backward {
    fn each(&self, count: usize, job: &(dyn Fn(usize) + Sync)) {
        std::thread::scope(|scope| {
            for thread in 0..8 {
                scope.spawn(move || {
                    (0..count).rev().filter(|index| index % 8 == thread).for_each(job);
                });
            }
        });
    }
}

#[test]
fn one_thread_and_eight_give_the_same_digits() {
    let haul = example::haul();
    let detail = Detail::default();
    let one = Plan::with_workers(&haul, &detail, &OneByOne).unwrap();
    let eight = Plan::with_workers(&haul, &detail, &Backward).unwrap();
    assert_eq!(format!("{one:?}"), format!("{eight:?}"));
}

#[test]
fn sampled_cycles_spread_around_the_nominal_one() {
    let haul = example::haul();
    let detail = Detail::default();
    let plan = Plan::of(&haul, &detail).unwrap();
    let driven = plan.driven.as_ref().unwrap();
    let sample = |workers: &dyn Workers| {
        plan::cycles::sample_cycles(&haul, &plan.ladder, driven, &detail, 64, workers).unwrap()
    };
    let cycles = sample(&OneByOne);
    assert_eq!(cycles.not_driven, 0);
    assert!(cycles.time.p10 < driven.cycle.time() && driven.cycle.time() < cycles.time.p90);
    assert!(cycles.fuel.p10 < cycles.fuel.p90);
    assert_eq!(cycles, sample(&Backward));
}
