use proptest::prelude::*;

use super::*;
use crate::tire::{Construction, StandardsBody, fixture};

fn dual_11r24_5() -> RatedPoint {
    RatedPoint { load: Mass::from_lb(6005.0), pressure: ColdPressure::from_psi(105.0) }
}

fn ask(lb: f64, class: SizeClass, mph: f64) -> Result<RestrictedSpeed, LowSpeedError> {
    let n = Exponent::of(StandardsBody::Tra, Construction::Radial);
    restricted_speed_pressure(dual_11r24_5(), Mass::from_lb(lb), &n, class, Speed::from_mph(mph))
}

// Trade article (Fleet Equipment / Tire Review, "The real effect of speed, load, inflation and
// age on truck tires"): an 11R24.5 with 5500 lb at no more than 35 mph may run 74 psi, for logging.
#[test]
fn table_logging_example_at_35_mph() {
    let found = ask(5500.0, SizeClass::Conventional, 35.0).unwrap();
    assert!((74.0..=75.0).contains(&found.pressure.as_psi()), "{}", found.pressure.as_psi());
    assert_eq!(found.row.band, "31-40");
    assert_eq!(found.citation.standing, Standing::FromMemory);
}

// 11R24.5 load range G dual, 5500 lb, worked by hand for each band as printed.
#[test]
fn worked_bands_one_by_one() {
    let n = Exponent::of(StandardsBody::Tra, Construction::Radial);
    let expected = [92.6, 81.9, 74.9, 78.1, 77.3, 77.3, 68.5];
    for (row, psi) in TRA_BANDS[2..9].iter().zip(expected) {
        let grant = row.allowance(SizeClass::Conventional);
        let load = Mass::from_lb(5500.0) / (1.0 + grant.load_pct / 100.0);
        let pressure =
            required_pressure(dual_11r24_5(), load, &n).unwrap().pressure + grant.pressure_addition;
        assert!((pressure.as_psi() - psi).abs() < 0.06, "{}: {}", row.band, pressure.as_psi());
    }
}

#[test]
fn a_lower_cap_falls_back_on_the_row_with_less_pressure() {
    let at_25 = ask(5500.0, SizeClass::Conventional, 25.0).unwrap();
    assert_eq!(at_25.row.band, "31-40");
    assert_eq!(at_25.pressure_addition, PressureDifference::ZERO);
    let at_4 = ask(5500.0, SizeClass::Conventional, 4.0).unwrap();
    assert_eq!(at_4.row.band, "2.6-5");
    assert!((at_4.pressure.as_psi() - 68.5).abs() < 0.1);
}

#[test]
fn metric_sizes_get_the_smaller_allowance() {
    let found = ask(5500.0, SizeClass::MetricOrWide, 35.0).unwrap();
    assert!((found.pressure.as_psi() - 81.9).abs() < 0.1);
}

#[test]
fn an_ordinary_row_cites_the_exponent() {
    let found = ask(5500.0, SizeClass::Conventional, 60.0).unwrap();
    assert_eq!(found.row.band, "51-65");
    assert_eq!(found.citation.standing, Standing::Read);
    assert!((found.pressure.as_psi() - 92.6).abs() < 0.1);
}

#[test]
fn outside_the_table_is_refused() {
    assert!(matches!(
        ask(5500.0, SizeClass::Conventional, 76.0),
        Err(LowSpeedError::AboveTable { .. })
    ));
    assert!(matches!(
        ask(7000.0, SizeClass::Conventional, 35.0),
        Err(LowSpeedError::TooHeavy { .. })
    ));
    assert!(ask(6966.0, SizeClass::Conventional, 35.0).is_err());
    assert!(ask(6965.7, SizeClass::Conventional, 35.0).is_ok());
    assert!(ask(5500.0, SizeClass::Conventional, -1.0).is_err());
    assert!(
        tra_allowance(SizeClass::Conventional, Speed::from_mph(0.0))
            .all(|(row, _)| !row.band.starts_with("creep ("))
    );
}

fn carried(psi: f64, class: SizeClass, mph: f64) -> Result<RestrictedSpeedLoad, LowSpeedError> {
    let n = Exponent::of(StandardsBody::Tra, Construction::Radial);
    restricted_speed_load(
        dual_11r24_5(),
        ColdPressure::from_psi(psi),
        &n,
        class,
        Speed::from_mph(mph),
    )
}

// The same trade article the other way round: 74 to 75 psi carry the 5500 lb.
#[test]
fn table_logging_example_as_a_load() {
    let found = carried(74.5, SizeClass::Conventional, 35.0).unwrap();
    assert!((found.load.as_lb() / 5500.0 - 1.0).abs() < 0.01, "{}", found.load.as_lb());
    assert_eq!(found.row.band, "31-40");
    assert_eq!(found.citation.standing, Standing::FromMemory);
}

#[test]
fn what_carries_nothing_is_refused() {
    let ask = |psi, mph| carried(psi, SizeClass::Conventional, mph);
    assert!(matches!(ask(80.0, 76.0), Err(LowSpeedError::AboveTable { .. })));
    assert!(matches!(ask(80.0, -1.0), Err(LowSpeedError::NegativeSpeed { .. })));
    assert!(matches!(ask(0.0, 35.0), Err(LowSpeedError::Law(_))));
    // Between 66 and 70 mph every row takes 5 psi off first.
    assert!(matches!(ask(4.0, 68.0), Err(LowSpeedError::Law(_))));
    assert!(ask(4.0, 60.0).is_ok());
}

#[test]
fn a_tire_rated_faster_keeps_the_ordinary_table() {
    let tire = fixture::tire_11r22_5();
    let load = Mass::from_kg(2000.0);
    let at = |kmh| restricted_speed_pressure_for(&tire, Fitment::Dual, load, Speed::from_kmh(kmh));
    assert_eq!(at(115.0).unwrap().row.band, "51-65");
    assert!(matches!(at(125.0), Err(LowSpeedError::AboveRatedSpeed { .. })));
}

#[test]
fn a_tire_rated_for_low_speed_gets_no_allowance() {
    let slow = Tire { rated_speed: Speed::from_kmh(40.0), ..fixture::tire_11r22_5() };
    let load = Mass::from_kg(2000.0);
    let at = Speed::from_kmh(30.0);
    let found = restricted_speed_pressure_for(&slow, Fitment::Dual, load, at).unwrap();
    assert_eq!(found.row.band, "51-65");
    let usual = fixture::tire_11r22_5();
    let less = restricted_speed_pressure_for(&usual, Fitment::Dual, load, at).unwrap();
    assert!(less.pressure < found.pressure);
}

proptest! {
    #[test]
    fn more_speed_never_needs_less_pressure(a in 0.0..75.0f64, b in 0.0..75.0f64, lb in 500.0..5200.0f64) {
        let at = |mph| ask(lb, SizeClass::Conventional, mph).unwrap().pressure;
        prop_assert!(at(a.min(b)) <= at(a.max(b)));
    }

    #[test]
    fn more_load_never_needs_less_pressure(a in 1.0..6500.0f64, b in 1.0..6500.0f64, mph in 0.0..50.0f64) {
        let at = |lb| ask(lb, SizeClass::Conventional, mph).unwrap().pressure;
        prop_assert!(at(a.min(b)) <= at(a.max(b)));
    }

    #[test]
    fn load_and_pressure_turn_round(lb in 500.0..5700.0f64, mph in 0.0..70.0f64) {
        for class in [SizeClass::Conventional, SizeClass::MetricOrWide] {
            let pressure = ask(lb, class, mph).unwrap().pressure;
            let back = carried(pressure.as_psi(), class, mph).unwrap();
            prop_assert!((back.load.as_lb() / lb - 1.0).abs() < 1e-9);
        }
    }
}
