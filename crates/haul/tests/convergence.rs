//! Smaller cells change the answer less and less.

mod common;

use common::{GRAVEL, HIGHWAY, Run, SPUR, completions, forward, laden};

/// Time, fuel and the two event times at a cell length.
fn at(cell_m: f64) -> [f64; 4] {
    let haul = example::haul();
    let truck = common::truck(&haul);
    let course = forward(&haul.route, cell_m);
    let run = Run::new(&truck, &course, laden(SPUR))
        .change(2.8, laden(GRAVEL))
        .change(15.0, laden(HIGHWAY));
    let trace = run.trace();
    let events = completions(&trace);
    assert_eq!(events.len(), 2);
    let end = run.end();
    [end.clock().as_s(), end.totals().fuel().as_l(), events[0].0.as_s(), events[1].0.as_s()]
}

/// Seen: time falls by 1.5, 0.17 and 0.01 s from cell to cell, better than second order, because
/// the pieces that matter (pulling away, braking) are exact in v². Under 10 m what is left moves by
/// less than 0.1 s either way: the reservoirs of a resting truck are told of brakes every 10 s.
#[test]
fn halving_the_cell_converges_with_at_least_first_order() {
    let found = [40.0, 20.0, 10.0, 5.0, 2.5].map(at);
    let names = ["time, s", "fuel, l", "first change complete, s", "second change complete, s"];
    for (quantity, name) in names.iter().enumerate() {
        let of = found.map(|run| run[quantity]);
        let order = ((of[0] - of[1]) / (of[1] - of[2])).abs().log2();
        assert!(order > 1.0, "{name}: {of:?}");
        let left = (of[2] - of[4]).abs();
        assert!(left < if quantity == 1 { 0.002 } else { 0.1 }, "{name}: {of:?}");
    }
}
