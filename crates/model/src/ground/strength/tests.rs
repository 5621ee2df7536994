use proptest::prelude::*;

use super::*;

fn dcp(mm: f64, soil: SoilType) -> Strength {
    strength(Reading::Dcp(Length::from_mm(mm)), soil).unwrap()
}

fn cbr(pct: f64) -> Strength {
    strength(Reading::Cbr(Cbr::from_pct(pct).unwrap()), SoilType::FineGrained).unwrap()
}

// US Army lesson EN5341, p. 3-36: 49 × 0.87 is printed as 43, 56 × 0.85 as 48.
#[test]
fn worked_rating_cone_index() {
    for (ci, ri, rci) in [(49.0, 0.87, 43.0), (56.0, 0.85, 48.0)] {
        let ours = rating_cone_index(Stress::from_psi(ci), ri).unwrap().as_psi();
        assert!((ours - rci).abs() < 0.5, "{ours}");
    }
}

// TM 5-818-8, example: 4.20 psi of cohesion at CBR 1.
#[test]
fn worked_cohesion_of_cbr_one() {
    let ours = cbr(1.0).cohesion;
    assert!((ours.value / Stress::from_psi(4.20) - 1.0).abs() < 0.04);
    assert!(ours.low <= Stress::from_psi(4.20));
}

// ASTM D6951 lines as recalled: millimeters a blow, all other soils, lean clay, fat clay, other line.
#[test]
fn table_penetration_to_cbr() {
    for (mm, any, fat, line) in
        [(10.0, 22.15, 34.83, 26.49), (20.0, 10.19, 17.42, 12.73), (40.0, 4.69, 8.71, 6.12)]
    {
        let found = dcp(mm, SoilType::FineGrained).cbr;
        assert!((found.value.as_pct() - any).abs() < 0.01);
        assert!((found.high.as_pct() - line).abs() < 0.01);
        assert!((dcp(mm, SoilType::FatClay).cbr.value.as_pct() - fat).abs() < 0.01);
    }
    assert!((dcp(20.0, SoilType::LeanClay).cbr.value.as_pct() - 8.63).abs() < 0.01);
    assert!((dcp(10.0, SoilType::LeanClay).cbr.value.as_pct() - 22.15).abs() < 0.01);
}

#[test]
fn worked_cone_index_two_hundred_psi() {
    let found =
        strength(Reading::ConeIndex(Stress::from_psi(200.0)), SoilType::FineGrained).unwrap();
    assert!((found.cbr.value.as_pct() - 4.0).abs() < 1e-9);
    assert!((found.cbr.low.as_pct() - 3.68).abs() < 0.01);
    assert_eq!(found.cone_index.value, Stress::from_psi(200.0));
}

#[test]
fn worked_modulus() {
    let found = cbr(5.0).modulus;
    assert!((found.value.as_mpa() - 49.3).abs() < 0.1 && (found.high.as_mpa() - 50.0).abs() < 0.1);
    assert!(found.low == found.value && !found.extrapolated);
}

#[test]
fn what_cannot_be_measured_is_refused_and_soft_or_coarse_marked() {
    let of = |reading| strength(reading, SoilType::FineGrained);
    assert!(Cbr::from_pct(0.0).is_err() && Cbr::from_pct(f64::NAN).is_err());
    assert!(of(Reading::Dcp(Length::from_mm(0.2))).is_err());
    assert!(of(Reading::ConeIndex(Stress::from_kpa(1.0))).is_err());
    assert!(rating_cone_index(Stress::from_psi(50.0), 3.0).is_err());
    assert!(rating_cone_index(Stress::ZERO, 0.8).is_err());
    assert!(dcp(100.0, SoilType::FineGrained).cbr.extrapolated);
    assert!(cbr(0.5).cbr.extrapolated);
    let coarse = dcp(10.0, SoilType::CoarseGrained);
    assert!(coarse.cone_index.extrapolated && !coarse.cbr.extrapolated);
}

proptest! {
    #[test]
    fn deeper_penetration_is_weaker_soil(mm in 1.0..140.0f64, more in 0.01..10.0f64) {
        for soil in [SoilType::FatClay, SoilType::LeanClay, SoilType::FineGrained] {
            prop_assert!(dcp(mm + more, soil).cbr.value <= dcp(mm, soil).cbr.value);
            prop_assert!(dcp(mm + more, soil).modulus.value <= dcp(mm, soil).modulus.value);
        }
    }

    #[test]
    fn every_number_lies_in_its_span(pct in 0.5..100.0f64) {
        let found = cbr(pct);
        prop_assert!(found.cone_index.low <= found.cone_index.value);
        prop_assert!(found.cone_index.value <= found.cone_index.high);
        prop_assert!(found.dcp.low <= found.dcp.value && found.dcp.value <= found.dcp.high);
        prop_assert!(found.modulus.low <= found.modulus.value);
        prop_assert!(found.modulus.value <= found.modulus.high);
    }

    #[test]
    fn penetration_and_cbr_turn_round(pct in 3.0..100.0f64) {
        for soil in [SoilType::FatClay, SoilType::FineGrained] {
            let there = strength(Reading::Cbr(Cbr::from_pct(pct).unwrap()), soil).unwrap();
            let penetration = there.dcp.value;
            prop_assume!((1.0..150.0).contains(&penetration.as_mm()));
            let back = strength(Reading::Dcp(penetration), soil).unwrap();
            prop_assert!((back.cbr.value.as_pct() / pct - 1.0).abs() < 1e-9);
        }
    }
}
