//! A haul of 100 km with four air channels, on one core: driven alone, prepared and driven, planned.
#![allow(missing_docs, reason = "criterion's macros make undocumented items")]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use haul::{Course, Cycle, DrivingStyle, NoRecord, Truck};
use plan::cost::Costs;
use plan::cycles::sample_cycles;
use plan::effect::Effects;
use plan::search::{Candidates, Wanted, Weights, best_ladder};
use plan::{Detail, Plan};
use quantity::Speed;
use study::Threads;

fn hundred_kilometers(c: &mut Criterion) {
    let haul = example::hundred_km_cycle();
    let detail = Detail::default();
    let planned = Plan::of(&haul, &detail).expect("the example's weather is mild");
    let driven = planned.driven.as_ref().expect("the example can be driven");
    let style = DrivingStyle::default();
    let truck =
        Truck::new(&haul, planned.ladder.set_pressures(&haul)).expect("the example is sound");
    let (empty, laden) =
        Course::of_haul(&haul, detail.cell, &style).expect("the example's legs join");

    let mut group = c.benchmark_group("haul 100 km, 4 channels, 10 m");
    group.sample_size(30);
    group.bench_function("cycle driven", |b| {
        b.iter(|| {
            let courses = (&empty, &laden);
            Cycle::drive(&haul, &truck, courses, &driven.plan, style, &mut NoRecord)
                .map(|cycle| black_box(cycle.time()))
        });
    });
    group.bench_function("cycle prepared and driven", |b| {
        b.iter(|| {
            plan::simulate(&haul, &planned.ladder, &driven.plan, &detail, &mut NoRecord)
                .map(|cycle| black_box(cycle.time()))
        });
    });
    let nominal = Detail { samples: 0, ..detail };
    group.bench_function("plan, ladder given, nominal, one thread", |b| {
        b.iter(|| black_box(Plan::of(&haul, &nominal).expect("planned before")));
    });
    group.bench_function("plan, ladder given, 128 samples, all threads", |b| {
        b.iter(|| black_box(Plan::with_workers(&haul, &detail, &Threads).expect("planned before")));
    });
    group.bench_function("effects and cost, all threads", |b| {
        b.iter(|| {
            let effects = Effects::of(&haul, &planned, &detail, &Threads);
            black_box(Costs::of(&haul, &effects).is_ok())
        });
    });
    group.bench_function("plan, 128 samples, with effects and cost, all threads", |b| {
        b.iter(|| {
            let planned = Plan::with_workers(&haul, &detail, &Threads).expect("planned before");
            let effects = Effects::of(&haul, &planned, &detail, &Threads);
            black_box(Costs::of(&haul, &effects).is_ok())
        });
    });
    let wanted = Wanted {
        rungs: 3,
        candidates: Candidates::of(&haul, Speed::from_kmh(5.0), Speed::from_kmh(20.0), &[]),
        weights: Weights {
            truck_hour: 150.0,
            hard_kpa_km: 0.01,
            change: 1.0,
            compressor_hour: 4.0,
        },
    };
    group.bench_function("plan, ladder searched, nominal, one thread", |b| {
        b.iter(|| black_box(best_ladder(&haul, &wanted, &nominal, &|cap| cap.to_string())));
    });
    group.sample_size(10);
    group.bench_function("1000 sampled cycles, all threads", |b| {
        b.iter(|| {
            let ladder = &planned.ladder;
            black_box(sample_cycles(&haul, ladder, driven, &detail, 1000, &Threads))
        });
    });
    group.finish();
}

criterion_group!(benches, hundred_kilometers);
criterion_main!(benches);
