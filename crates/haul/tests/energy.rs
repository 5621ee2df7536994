//! Fuel and time are positive and grow with the load.

mod common;

use common::{GRAVEL, HIGHWAY, Run, SPUR, forward, laden, with_gross};
use proptest::prelude::*;

fn fuel_and_time(gross_t: f64) -> (f64, f64) {
    let haul = with_gross(gross_t);
    let truck = common::truck(&haul);
    let course = forward(&haul.route, 20.0);
    let end = Run::new(&truck, &course, laden(SPUR))
        .change(2.9, laden(GRAVEL))
        .change(15.0, laden(HIGHWAY))
        .end();
    (end.totals().fuel().as_l(), end.clock().as_s())
}

fn unchanged(gross_t: f64) -> (f64, f64) {
    let haul = with_gross(gross_t);
    let truck = common::truck(&haul);
    let course = forward(&haul.route, 20.0);
    let end = Run::new(&truck, &course, laden(HIGHWAY)).end();
    (end.totals().fuel().as_l(), end.clock().as_s())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 32, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn more_load_never_takes_less_fuel_or_less_time(a in 12.0..75.0f64, more in 0.5..30.0f64) {
        // Without a change: a heavier truck brakes less where a lighter one is held back, so its
        // reservoirs may be fuller and its changes a second quicker.
        let (light, heavy) = (unchanged(a), unchanged(a + more));
        prop_assert!(light.0 > 0.0 && light.1 > 0.0);
        prop_assert!(heavy.0 > light.0, "{heavy:?} {light:?}");
        prop_assert!(heavy.1 > light.1 - 1e-6, "{heavy:?} {light:?}");
    }
}

// Our own level for the invented haul; it moves only if the physics does.
#[test]
fn regress_fuel_and_time_of_the_invented_laden_run() {
    let (fuel, time) = fuel_and_time(36.06);
    assert!((fuel / 21.84 - 1.0).abs() < 0.01, "{fuel} l");
    assert!((time / 2593.4 - 1.0).abs() < 0.005, "{time} s");
}
