//! Every rule of the audit over rows of one second: four channels, three rungs, a unit that goes to and fro.
#![allow(missing_docs, reason = "criterion's macros make undocumented items")]

use std::hint::black_box;

use audit::{
    CellLimit, ChangeLimit, ChangeTo, ChannelColumns, ClosedStretch, Column, Columns, Limits,
    LimitsGiven, LoadColumn, LoadLimit, RungLimit, Site, State, Tolerance,
};
use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use quantity::{AbsolutePressure, ColdPressure, GaugePressure, Length, Speed, Temperature};
use series::Quality;

const ROWS: usize = 1_000_000;
const CHANNELS: usize = 4;
const LOWEST: [[f64; 3]; 2] = [[150.0, 180.0, 240.0], [350.0, 450.0, 600.0]];
const CAPS: [f64; 3] = [25.0, 40.0, 80.0];

fn limits() -> Limits {
    let km = Length::from_km;
    let cell = |kpa| CellLimit { minimum: Some(ColdPressure::from_kpa(kpa)) };
    let load = |load: usize| LoadLimit {
        cells: LOWEST[load].iter().map(|&kpa| vec![cell(kpa); CHANNELS]).collect(),
        holds: vec![None; 3],
        start_rung: (load == 1).then_some(0),
    };
    let change = |load_state, rung, reach_by, until, to| ChangeLimit {
        load_state,
        rung,
        reach_by: km(reach_by),
        until: km(until),
        to: vec![to; CHANNELS],
    };
    let raised = |kpa| ChangeTo::Raised(ColdPressure::from_kpa(kpa));
    let lowered = |kpa| ChangeTo::Lowered(GaugePressure::from_kpa(kpa));
    Limits::new(LimitsGiven {
        site: Site {
            reference: Temperature::from_celsius(20.0),
            ambient: AbsolutePressure::from_kpa(100.0),
            coldest_tire: Temperature::from_celsius(0.0),
            warmest_tire: Temperature::from_celsius(60.0),
        },
        tolerance: Tolerance::default(),
        route: km(60.0),
        rungs: CAPS.map(|cap| RungLimit { cap: Speed::from_kmh(cap) }).to_vec(),
        load_states: vec![load(0), load(1)],
        changes: vec![
            change(1, 1, 10.0, 25.0, raised(450.0)),
            change(1, 2, 25.0, 60.0, raised(600.0)),
            change(0, 1, 25.0, 10.0, lowered(220.0)),
            change(0, 0, 10.0, 0.0, lowered(190.0)),
        ],
        closed: vec![ClosedStretch { load_state: 1, from: km(30.0), to: km(34.0) }],
    })
    .expect("the tables fit each other")
}

/// A unit to and fro, with pressures of the section it is on and ripples that no reading repeats.
struct Made {
    km: Vec<f64>,
    kmh: Vec<f64>,
    load: Vec<u8>,
    kpa: Vec<Vec<f64>>,
    celsius: Vec<f64>,
    quality: Vec<Quality>,
}

fn made() -> Made {
    let mut made = Made {
        km: Vec::with_capacity(ROWS),
        kmh: Vec::with_capacity(ROWS),
        load: Vec::with_capacity(ROWS),
        kpa: vec![Vec::new(); CHANNELS],
        celsius: Vec::with_capacity(ROWS),
        quality: vec![Quality::Value; ROWS],
    };
    let (mut km, mut load) = (60.0_f64, 0_u8);
    for row in 0..ROWS {
        let section = usize::from(km > 10.0) + usize::from(km > 25.0);
        let kmh = CAPS[section] - 2.0;
        km += if load == 1 { kmh } else { -kmh } / 3600.0;
        if km <= 0.0 {
            load = 1;
        } else if km >= 60.0 {
            load = 0;
        }
        made.km.push(km);
        made.kmh.push(kmh);
        made.load.push(load);
        made.celsius.push(30.0 + (row as f64 * 0.001).sin());
        for (channel, kpa) in made.kpa.iter_mut().enumerate() {
            let ripple = (row as f64 * 0.01 + channel as f64).sin();
            kpa.push(LOWEST[usize::from(load)][section] * 1.1 + ripple);
        }
    }
    made
}

fn rows(c: &mut Criterion) {
    let (made, limits) = (made(), limits());
    let column = |values| Column { values, quality: &made.quality };
    let channels: Vec<ChannelColumns<'_>> = made
        .kpa
        .iter()
        .map(|kpa| ChannelColumns {
            pressure_kpa: column(kpa),
            temperature_c: Some(column(&made.celsius)),
        })
        .collect();
    let columns = Columns {
        chainage_km: column(&made.km),
        speed_kmh: column(&made.kmh),
        load_state: LoadColumn { values: &made.load, quality: &made.quality },
        channels: &channels,
    };
    let mut group = c.benchmark_group("audit, every rule, 4 channels with temperatures");
    group.throughput(Throughput::Elements(ROWS as u64));
    group.sample_size(20);
    group.bench_function("1 M rows, one core", |b| {
        b.iter(|| {
            let (mut state, mut found) = (State::default(), Vec::new());
            audit::feed(&mut state, &columns, &limits, &mut found).expect("the columns are even");
            audit::finish(&mut state, &limits, &mut found);
            black_box((state, found))
        });
    });
    group.finish();
}

criterion_group!(benches, rows);
criterion_main!(benches);
