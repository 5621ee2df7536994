#![allow(missing_docs, clippy::print_stdout)]
use plan::search::*;
use quantity::*;
fn main() {
    let haul = if std::env::args().nth(1).is_some() {
        example::hundred_km_cycle()
    } else {
        example::haul()
    };
    let mut haul = haul;
    haul.route.legs[0].ground_maximum = Some(ColdPressure::from_kpa(300.0));
    haul.route.legs[1].ground_maximum = Some(ColdPressure::from_kpa(400.0));
    let d = plan::Detail::default();
    for rungs in 1..5 {
        let w = Wanted {
            rungs,
            candidates: Candidates::of(&haul, Speed::from_kmh(5.0), Speed::from_kmh(20.0), &[]),
            weights: Weights {
                truck_hour: 150.0,
                hard_kpa_km: 0.01,
                change: 1.0,
                compressor_hour: 4.0,
            },
        };
        let t = std::time::Instant::now();
        let pr = discretise(&haul, &w.candidates, &d).unwrap();
        println!("discretise {:?} caps {}", t.elapsed(), pr.problem.caps);
        let t = std::time::Instant::now();
        let _ = solve(&pr.problem, &w.weights, rungs);
        println!("solve {:?}", t.elapsed());
        let t = std::time::Instant::now();
        let b = best_ladder(&haul, &w, &d, &|c| format!("{} km/h", c.as_kmh())).unwrap();
        println!(
            "{:?} rounds {} {:?} cost {:.1} gap {} | fewer {:?} more {:?}",
            t.elapsed(),
            b.rounds,
            b.haul.combination.rungs.iter().map(|r| r.name.clone()).collect::<Vec<_>>(),
            b.ladders.best.cost,
            b.ladders.best.gap,
            b.ladders.one_fewer.map(|s| s.cost),
            b.ladders.one_more.map(|s| s.cost)
        );
        println!("{:?} {:?}", b.ladders.best.terms, b.haul.leg_rungs);
    }
}
