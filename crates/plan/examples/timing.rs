#![allow(missing_docs, clippy::print_stdout)]
use std::time::Instant;
fn main() {
    let haul = example::hundred_km_cycle();
    for samples in [0, 128] {
        let d = plan::Detail { samples, ..plan::Detail::default() };
        let p = plan::Plan::of(&haul, &d).unwrap();
        let dr = p.driven.as_ref().unwrap();
        for pt in &dr.points {
            println!(
                "{:?} at {:.2} reach {:.2} reached {:.2} lead {:.0} t {:.0} fits {} p90 {:?} {:?}",
                pt.action,
                pt.at.as_km(),
                pt.reach_by.as_km(),
                pt.reached.as_km(),
                pt.lead.as_m(),
                pt.time.as_s(),
                pt.fits,
                pt.fits_p90,
                pt.spread.map(|s| (
                    s.time_p50.as_s(),
                    s.time_p90.as_s(),
                    s.lead_p50.as_m(),
                    s.lead_p90.as_m()
                ))
            );
        }
        for _ in 0..3 {
            let t = Instant::now();
            for _ in 0..5 {
                std::hint::black_box(plan::Plan::of(&haul, &d).unwrap());
            }
            println!("plan {samples} {:?}", t.elapsed() / 5);
        }
    }
}
