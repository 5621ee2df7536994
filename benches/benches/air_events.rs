//! The air of whole trucks to the last event of each stored case; `peers.py` times `SciPy` on the same.
#![allow(missing_docs, reason = "criterion's macros make undocumented items")]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use quantity::Time;
use validation::air_cases::cases;

fn air_events(c: &mut Criterion) {
    let mut group = c.benchmark_group("air to the last event");
    group.sample_size(20);
    for case in cases() {
        group.bench_function(case.name(), |b| {
            b.iter(|| black_box(case.worst_difference(Time::from_s(1.0))));
        });
    }
    group.finish();
}

criterion_group!(benches, air_events);
criterion_main!(benches);
