//! Strain of one side of an axle group: under the tire and mid-gap, at the bottom of the asphalt
//! and the top of the subgrade, on a thin thaw-weakened road; one core.
#![allow(missing_docs, reason = "criterion's macros make undocumented items")]

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use model::road::layered::{Accuracy, Layer, Pavement};
use model::road::pavement_strain::{TireGroup, group_strain};
use quantity::{Force, GaugePressure, Length, Stress};

fn road() -> Pavement {
    let layer = |mpa, poisson, mm: Option<f64>| Layer {
        modulus: Stress::from_mpa(mpa),
        poisson,
        thickness: mm.map(Length::from_mm),
    };
    Pavement::new(vec![
        layer(6000.0, 0.35, Some(50.0)),
        layer(80.0, 0.35, Some(250.0)),
        layer(15.0, 0.40, None),
    ])
    .expect("the layers are in range")
}

fn group(axles: u8) -> TireGroup {
    TireGroup {
        wheel_load: Force::from_kn(20.0),
        pressure: GaugePressure::from_kpa(690.0),
        dual_spacing: Some(Length::from_mm(340.0)),
        axles,
        axle_spacing: Length::from_m(1.3),
    }
}

fn strains(criterion: &mut Criterion) {
    let road = road();
    for accuracy in [Accuracy::Screen, Accuracy::Fine] {
        for (axles, name) in [(1, "dual axle"), (2, "dual tandem"), (3, "dual tridem")] {
            criterion.bench_function(&format!("{name}, {accuracy:?}"), |bencher| {
                bencher.iter(|| group_strain(black_box(&group(axles)), &road, accuracy));
            });
        }
    }
}

criterion_group!(benches, strains);
criterion_main!(benches);
