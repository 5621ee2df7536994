//! A haul of 100 km with four air channels, on one core: driven alone, prepared and driven, planned.
#![allow(missing_docs, reason = "criterion's macros make undocumented items")]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use haul::{Course, Cycle, DrivingStyle, NoRecord, Truck};
use plan::{Detail, Plan};

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
    group.bench_function("plan, ladder given", |b| {
        b.iter(|| black_box(Plan::of(&haul, &detail).expect("planned before")));
    });
    group.finish();
}

criterion_group!(benches, hundred_kilometers);
criterion_main!(benches);
