#![allow(missing_docs, clippy::print_stdout)]
use std::time::Instant;
fn main() {
    let haul = example::hundred_km_cycle();
    let d = plan::Detail::default();
    let p = plan::Plan::of(&haul, &d).unwrap();
    let dr = p.driven.as_ref().unwrap();
    for _ in 0..3 {
        let t = Instant::now();
        for _ in 0..20 {
            std::hint::black_box(plan::Plan::of(&haul, &d).unwrap());
        }
        println!("plan {:?}", t.elapsed() / 20);
        let t = Instant::now();
        for _ in 0..50 {
            std::hint::black_box(
                plan::simulate(&haul, &p.ladder, &dr.plan, &d, &mut haul::NoRecord).unwrap(),
            );
        }
        println!("cycle 100 km, 4 channels {:?}", t.elapsed() / 50);
    }
}
