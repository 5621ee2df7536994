use proptest::prelude::*;

use super::*;

fn truck() -> SoilVehicle {
    SoilVehicle {
        gross: Mass::from_lb(39_000.0),
        axles: 3,
        driven_axles: 3,
        tires: 6,
        tire_width: Length::from_in(14.0),
        tire_diameter: Length::from_in(49.0),
        clearance: Length::from_in(13.0),
        // 250 hp on 39 000 lb.
        power_to_weight: SpecificPower::from_hp_per_short_ton(250.0 / 19.5),
        automatic: true,
        chains: false,
    }
}

// 6×6 of 39 000 lb on 14.00R20, by hand.
#[test]
fn worked_six_by_six() {
    let mi = mobility_index(&truck()).unwrap();
    assert!((mi - 121.98).abs() < 0.02, "{mi}");
    for (ratio, vci_1, vci_50) in
        [(0.15, 34.94, 79.94), (0.20, 32.51, 74.40), (0.30, 29.38, 67.23), (0.35, 28.27, 64.68)]
    {
        let needed = vehicle_cone_index(mi, ratio).unwrap();
        assert!((needed.one_pass.as_psi() - vci_1).abs() < 0.02, "{needed:?}");
        assert!((needed.fifty_passes.as_psi() - vci_50).abs() < 0.02, "{needed:?}");
    }
}

// Priddy & Willoughby 2004, formula of the one-pass index and its correction.
#[test]
fn worked_one_pass_formula() {
    assert!((vehicle_cone_index(100.0, 0.15).unwrap().one_pass.as_psi() - 31.10).abs() < 0.005);
    assert!((deflection_correction(0.15).unwrap() - 1.0).abs() < 1e-12);
    assert!((deflection_correction(0.30).unwrap() - 0.8409).abs() < 1e-4);
}

#[test]
fn worked_limiting_cone_index() {
    for (ratio, kpa) in [(0.15, 327.0), (0.30, 247.8)] {
        let delta = Length::from_in(14.5) * ratio;
        let found = limiting_cone_index(&truck(), delta).unwrap();
        assert!((found.as_kpa() / kpa - 1.0).abs() < 0.002, "{found}");
    }
}

// US Army lesson EN5341 p. 3-36: RCI 43 and 48 against VCI1 21 and VCI50 49: go once, not fifty times.
#[test]
fn table_decision_of_the_army_lesson() {
    let psi = Stress::from_psi;
    assert!(matches!(Passage::of(psi(43.0), psi(21.0)), Passage::Go { .. }));
    assert!(matches!(Passage::of(psi(48.0), psi(49.0)), Passage::NoGo { .. }));
}

#[test]
fn power_counts_from_ten_horsepower_a_ton() {
    let at = |hp| {
        let power_to_weight = SpecificPower::from_hp_per_short_ton(hp);
        mobility_index(&SoilVehicle { power_to_weight, ..truck() }).unwrap()
    };
    assert!((at(10.0) / at(30.0) - 1.0).abs() < 1e-12);
    assert!((at(9.9) / at(10.0) - 1.05).abs() < 1e-12);
}

#[test]
fn more_deflection_turns_no_go_into_go() {
    let soil = Stress::from_psi(31.0);
    let at = |ratio| trafficability(&truck(), ratio, soil).unwrap().one_pass;
    assert!(matches!(at(0.15), Passage::NoGo { .. }));
    assert!(matches!(at(0.30), Passage::Go { excess } if excess > Stress::ZERO));
}

#[test]
fn part_drive_and_nonsense_are_refused() {
    let of = |vehicle: SoilVehicle| mobility_index(&vehicle);
    let part = SoilVehicle { driven_axles: 2, ..truck() };
    assert!(matches!(of(part), Err(ConeIndexError::FreeRolling { driven: 2, axles: 3 })));
    assert!(of(SoilVehicle { tires: 4, ..truck() }).is_err());
    assert!(of(SoilVehicle { gross: Mass::ZERO, ..truck() }).is_err());
    assert!(of(SoilVehicle { axles: 0, driven_axles: 0, ..truck() }).is_err());
    let heavy = SoilVehicle { gross: Mass::from_t(80.0), ..truck() };
    assert!(matches!(of(heavy), Err(ConeIndexError::Index { .. })));
    assert!(vehicle_cone_index(100.0, 0.6).is_err());
    assert!(vehicle_cone_index(f64::NAN, 0.2).is_err());
    assert!(limiting_cone_index(&truck(), Length::ZERO).is_err());
    assert!(vehicle_cone_index(100.0, 0.08).unwrap().extrapolated);
}

#[test]
fn the_layer_goes_down_with_load() {
    assert_eq!(critical_layers(Mass::from_lb(1500.0)).len(), 1);
    assert!((critical_layers(Mass::from_lb(4000.0))[0].to.as_in() - 12.0).abs() < 1e-9);
    assert_eq!(critical_layers(Mass::from_lb(20_000.0)).len(), 2);
}

#[test]
fn the_weight_factor_has_no_steps() {
    for kip in [2.0, 13.5, 20.0] {
        let at = |kip: f64| {
            let gross = Mass::from_lb(3000.0 * kip);
            mobility_index(&SoilVehicle { gross, ..truck() })
        };
        if let (Ok(below), Ok(above)) = (at(kip - 1e-6), at(kip + 1e-6)) {
            assert!((below / above - 1.0).abs() < 0.03, "{kip}");
        }
    }
}

proptest! {
    #[test]
    fn heavier_needs_stronger_soil(t in 8.0..20.0f64, more in 0.1..3.0f64) {
        let at = |t| mobility_index(&SoilVehicle { gross: Mass::from_t(t), ..truck() }).unwrap();
        prop_assert!(at(t + more) > at(t));
    }

    #[test]
    fn fifty_passes_need_more_than_one(mi in 6.0..300.0f64, ratio in 0.05..0.45f64) {
        let needed = vehicle_cone_index(mi, ratio).unwrap();
        prop_assert!(needed.fifty_passes > needed.one_pass);
    }

    #[test]
    fn the_index_rises_and_deflection_lowers_it(mi in 6.0..290.0f64, ratio in 0.06..0.40f64) {
        let at = |mi, ratio| vehicle_cone_index(mi, ratio).unwrap().one_pass.as_psi();
        prop_assert!(at(mi + 5.0, ratio) > at(mi, ratio) - 0.3);
        prop_assert!(at(mi, ratio + 0.02) < at(mi, ratio));
    }
}
