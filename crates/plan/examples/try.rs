#![allow(missing_docs, clippy::print_stdout)]
fn main() {
    let haul =
        if std::env::args().nth(1).is_some() { example::long_haul() } else { example::haul() };
    let t = std::time::Instant::now();
    let p = plan::Plan::of(&haul, &plan::Detail::default()).unwrap();
    println!("{:?}", t.elapsed());
    for c in p.ladder.cells() {
        println!(
            "{:?} {:?} set {:?} {:?}",
            c.id,
            c.approval,
            c.set.as_ref().map(|s| (s.cold.as_psi(), s.as_controller_reads.as_psi())),
            c.impossible
        );
        if let Some(w) = &c.window {
            println!(
                "   {:?} {:.1} then {:?}; max {:?} {:.1} defl {:?}",
                w.minimum[0].kind,
                w.minimum[0].pressure.as_psi(),
                w.minimum_runner_up().map(|l| (l.kind, l.pressure.as_psi())),
                w.governing_maximum().kind,
                w.governing_maximum().pressure.as_psi(),
                c.deflection_share
            );
        }
    }
    for f in &p.fixed {
        println!(
            "{} {} {:?} enough {}",
            f.group,
            f.load_state,
            f.needed.as_ref().map(|l| (l.kind, l.pressure.as_psi())),
            f.is_enough()
        );
    }
    println!("{:#?}", p.morning);
    match &p.driven {
        Ok(d) => {
            for pt in &d.points {
                println!("{pt:?}");
            }
            println!("{:#?}", d.laden_change);
            println!("{:#?}", d.cycle.phases);
            println!("cycle {} full {}", d.cycle.time(), d.full_pressure_time);
        }
        Err(e) => println!("NOT {e}"),
    }
    for c in &p.cautions {
        println!("{c:?}");
    }
}
