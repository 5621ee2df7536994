#![allow(missing_docs)]
fn main() {
    let haul = example::hundred_km_cycle();
    let d = plan::Detail::default();
    let p = plan::Plan::of(&haul, &d).unwrap();
    let dr = p.driven.as_ref().unwrap();
    let n: usize = std::env::args().nth(1).unwrap().parse().unwrap();
    for _ in 0..n {
        std::hint::black_box(
            plan::simulate(&haul, &p.ladder, &dr.plan, &d, &mut haul::NoRecord).unwrap(),
        );
    }
    for ph in &dr.cycle.phases {
        eprintln!(
            "{:?} {:.0} s changing {:.0} waited {:.0}",
            ph.kind,
            ph.time.as_s(),
            ph.changing.as_s(),
            ph.waited.as_s()
        );
    }
}
