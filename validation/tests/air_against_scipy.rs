//! The air network against `SciPy`: same equations, written anew, solved by Radau at 1e-10.

use quantity::Time;
use validation::air_cases::cases;

// SciPy 1.17.1, Radau, rtol 1e-10.
#[test]
fn worked_event_times_agree_with_scipy() {
    for case in cases() {
        let worst = case.worst_difference(Time::from_s(1.0));
        assert!(worst < Time::from_s(0.01), "{worst} in {}", case.name());
    }
}

#[test]
fn shorter_steps_come_nearer_to_scipy() {
    for case in cases() {
        let worst = case.worst_difference(Time::from_s(0.1));
        assert!(worst < Time::from_s(0.003), "{worst} in {}", case.name());
    }
}

// Tank of 0.12 m³ charged at 0.008 kg/s into 1.6 m³: 711.17258088 s (Radau at 1e-10),
// 711.172580537 s (another eighth-order solver).
#[test]
fn worked_tank_into_tire() {
    let case = cases().into_iter().find(|case| case.name() == "tank into tire").unwrap();
    assert!((case.first_event() - Time::from_s(711.17258088)).abs() < Time::from_s(1e-5));
    assert!(case.worst_difference(Time::from_s(1.0)) < Time::from_s(1e-4));
}
