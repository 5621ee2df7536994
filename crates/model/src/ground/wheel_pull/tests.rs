use proptest::prelude::*;
use quantity::Force;

use super::*;

fn wheel(ci: f64, ratio: f64) -> SoilWheel {
    let m = Length::from_m;
    let load = Force::from_kn(20.0).as_mass();
    SoilWheel::new(load, Stress::from_kpa(ci), m(0.279), m(1.05), ratio)
        .unwrap()
        .with_section_height(m(0.24))
        .unwrap()
}

// Gee-Clough and others 1978, printed row: 9.5-24 under 7 kN, δ/h 0.2, CI 200 kPa ("bad").
#[test]
fn table_gee_clough_row() {
    let m = Length::from_m;
    let load = Force::from_kn(7.0).as_mass();
    let wheel = SoilWheel::new(load, Stress::from_kpa(200.0), m(0.24), m(1.04), 0.2).unwrap();
    let n = wheel.clay_numeric();
    assert!((n - 2.859).abs() < 0.001);
    let all = gee_clough(&wheel, 0.6).unwrap();
    assert!((all.net - 0.47).abs() < 0.005 && (all.resistance - 0.15).abs() < 0.005);
    assert!(!all.extrapolated);
    let best = (1..60)
        .map(|i| f64::from(i) * 0.01)
        .map(|s| {
            let at = gee_clough(&wheel, s).unwrap();
            at.net * (1.0 - s) / (at.net + at.resistance)
        })
        .fold(0.0, f64::max);
    assert!((best - 0.61).abs() < 0.005, "{best}");
}

// Grid computed apart from this code: cone index, deflection, Brixius net and ρ, Maclaurin net and
// resistance, Gee-Clough net and resistance, all at 20 % slip.
#[test]
fn worked_grid() {
    for (ci, ratio, b, rho, mac, mac_r, gee, gee_r) in [
        (300.0, 0.15, -0.0441, 0.322, 0.1796, 0.3218, 0.1827, 0.24),
        (450.0, 0.25, 0.2281, 0.196, 0.2937, 0.1827, 0.4205, 0.1477),
        (600.0, 0.10, 0.1821, 0.2132, 0.2751, 0.1962, 0.3816, 0.166),
        (600.0, 0.30, 0.3719, 0.1504, 0.3838, 0.1325, 0.4797, 0.1165),
    ] {
        let found = pulls(&wheel(ci, ratio), 0.2).unwrap();
        let near =
            |ours: f64, theirs: f64| assert!((ours - theirs).abs() < 2e-4, "{ours} {theirs}");
        near(found.brixius.net, b);
        near(found.brixius.resistance, rho);
        near(found.maclaurin.as_ref().unwrap().net, mac);
        near(found.maclaurin.as_ref().unwrap().resistance, mac_r);
        near(found.gee_clough.as_ref().unwrap().net, gee);
        near(found.gee_clough.as_ref().unwrap().resistance, gee_r);
    }
}

#[test]
fn a_model_that_has_no_answer_says_so() {
    let soft = pulls(&wheel(250.0, 0.08), 0.2).unwrap();
    assert!(matches!(soft.gee_clough, Err(WheelPullError::TooSoft { .. })));
    assert!(matches!(soft.maclaurin, Err(WheelPullError::TooSoft { .. })));
    assert!(soft.brixius.net < 0.0);
    assert_eq!(soft.net_span(), (soft.brixius.net, soft.brixius.net));
}

#[test]
fn a_truck_tire_is_marked_and_nonsense_refused() {
    assert!(pulls(&wheel(600.0, 0.2), 0.2).unwrap().brixius.extrapolated);
    assert!(pulls(&wheel(600.0, 0.2), 0.0).is_err());
    assert!(pulls(&wheel(600.0, 0.2), f64::NAN).is_err());
    let m = Length::from_m;
    let kg = Mass::from_kg(2000.0);
    let of = |load, ci, ratio| SoilWheel::new(load, Stress::from_kpa(ci), m(0.3), m(1.0), ratio);
    assert!(of(Mass::ZERO, 600.0, 0.2).is_err());
    assert!(of(kg, 0.0, 0.2).is_err());
    assert!(of(kg, 600.0, 0.5).is_err());
    assert!(of(kg, 600.0, 0.2).unwrap().with_section_height(m(0.6)).is_err());
    assert!(
        of(Mass::from_kg(1200.0), 600.0, 0.2)
            .is_ok_and(|w| !brixius(&w, 0.2, Construction::Bias).unwrap().extrapolated)
    );
}

#[test]
fn radial_constants_pull_more() {
    let at = |construction| brixius(&wheel(600.0, 0.2), 0.2, construction).unwrap();
    assert!(at(Construction::Radial).net > at(Construction::Bias).net);
}

proptest! {
    #[test]
    fn more_deflection_pulls_more_and_resists_less(ci in 450.0..3000.0f64, ratio in 0.08..0.40f64) {
        let (less, more) = (pulls(&wheel(ci, ratio), 0.2).unwrap(), pulls(&wheel(ci, ratio + 0.03), 0.2).unwrap());
        prop_assert!(more.brixius.net > less.brixius.net);
        prop_assert!(more.brixius.resistance < less.brixius.resistance);
        prop_assert!(more.maclaurin.clone().unwrap().net > less.maclaurin.clone().unwrap().net);
        prop_assert!(more.gee_clough.unwrap().net > less.gee_clough.unwrap().net);
    }

    #[test]
    fn harder_ground_resists_less(ci in 200.0..3000.0f64, more in 1.0..500.0f64) {
        let at = |ci| brixius(&wheel(ci, 0.15), 0.2, Construction::Bias).unwrap();
        prop_assert!(at(ci + more).towed_resistance < at(ci).towed_resistance);
        prop_assert!(at(ci + more).net > at(ci).net);
    }

    #[test]
    fn slip_costs_driven_wheels_only(ci in 200.0..3000.0f64, slip in 0.02..0.5f64) {
        let at = |slip| brixius(&wheel(ci, 0.15), slip, Construction::Bias).unwrap();
        prop_assert!(at(slip + 0.05).resistance > at(slip).resistance);
        prop_assert_eq!(at(slip + 0.05).towed_resistance.to_bits(), at(slip).towed_resistance.to_bits());
    }
}
