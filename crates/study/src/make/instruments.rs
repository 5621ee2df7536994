//! What sensors on the truck make of the truth: lag, an error of their own, and faults.

use haul::chance::normal;
use quantity::{GaugePressure, PressureDifference, Temperature, TemperatureDifference, Time};

/// Lag of a pressure sensor in a tire: common practice, no source.
const PRESSURE_LAG: Time = Time::from_s(1.5);
/// Lag of its thermometer, which sits in a housing on the rim: common practice, no source.
const TEMPERATURE_LAG: Time = Time::from_s(90.0);
/// Share of the controller's gauge error that a healthy sensor has, one standard deviation.
const ERROR_SHARE: f64 = 0.35; // common practice, no source
/// Error of its thermometer, K, one standard deviation: common practice, no source.
const TEMPERATURE_ERROR: f64 = 0.8;

/// What is wrong with a sensor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum SensorFaultKind {
    /// It reads off by this much.
    Off(PressureDifference),
    /// It reads off by this much more every hour.
    DriftEachHour(PressureDifference),
    /// It says what it said when the fault began.
    Stuck,
    /// It says nothing.
    Dead,
    /// It sits in the other tire, and that one's here.
    SwappedWith(usize),
}

/// A fault of a sensor with its time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct SensorFault {
    pub tire: usize,
    pub kind: SensorFaultKind,
    pub from: Time,
    pub until: Option<Time>,
}

impl SensorFault {
    pub fn is_there(&self, clock: Time) -> bool {
        clock >= self.from && self.until.is_none_or(|until| clock < until)
    }
}

/// What a tire's sensor says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Said {
    pub pressure: GaugePressure,
    pub temperature: Temperature,
}

/// A pressure sensor in a tire.
#[derive(Debug, Clone)]
pub(super) struct TireSensor {
    /// Error of its own.
    pub off: PressureDifference,
    warmer: TemperatureDifference,
    lagged: Option<Said>,
    stuck: Option<Said>,
}

impl TireSensor {
    /// A healthy sensor with an error drawn for it.
    pub fn drawn(seed: u64, tire: usize, gauge_error: PressureDifference) -> Self {
        let z = normal(seed, tire, "sensor: pressure").clamp(-2.5, 2.5);
        let warmer = TEMPERATURE_ERROR * normal(seed, tire, "sensor: temperature");
        Self {
            off: gauge_error * (ERROR_SHARE * z),
            warmer: TemperatureDifference::from_kelvin(warmer),
            lagged: None,
            stuck: None,
        }
    }

    /// Takes in the truth of a short time.
    pub fn follow(&mut self, truth: Said, elapsed: Time) {
        let Some(before) = self.lagged else {
            self.lagged = Some(truth);
            return;
        };
        let share = |lag: Time| 1.0 - (-(elapsed / lag)).exp();
        let pressure = before.pressure + (truth.pressure - before.pressure) * share(PRESSURE_LAG);
        let temperature =
            before.temperature + (truth.temperature - before.temperature) * share(TEMPERATURE_LAG);
        self.lagged = Some(Said { pressure, temperature });
    }

    /// What it would say without any fault.
    pub fn healthy(&self) -> Option<Said> {
        let said = self.lagged?;
        Some(Said {
            pressure: said.pressure + self.off,
            temperature: said.temperature + self.warmer,
        })
    }

    /// What it says at a clock with its faults; `None` where it says nothing.
    pub fn says(&mut self, clock: Time, faults: &[SensorFault], own: Option<Said>) -> Option<Said> {
        let mut said = own?;
        let mut stuck_now = false;
        for fault in faults.iter().filter(|fault| fault.is_there(clock)) {
            match fault.kind {
                SensorFaultKind::Off(by) => said.pressure = said.pressure + by,
                SensorFaultKind::DriftEachHour(by) => {
                    let hours = (clock - fault.from).as_s() / 3600.0;
                    said.pressure = said.pressure + by * hours;
                }
                SensorFaultKind::Stuck => stuck_now = true,
                SensorFaultKind::Dead => return None,
                SensorFaultKind::SwappedWith(_) => {}
            }
        }
        if stuck_now {
            said = *self.stuck.get_or_insert(said);
        } else {
            self.stuck = None;
        }
        Some(said)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(kpa: f64) -> Said {
        Said {
            pressure: GaugePressure::from_kpa(kpa),
            temperature: Temperature::from_celsius(20.0),
        }
    }

    fn sensor() -> TireSensor {
        let mut sensor = TireSensor::drawn(1, 0, PressureDifference::ZERO);
        sensor.follow(said(500.0), Time::from_s(0.5));
        sensor
    }

    fn fault(kind: SensorFaultKind) -> [SensorFault; 1] {
        [SensorFault { tire: 0, kind, from: Time::from_s(10.0), until: Some(Time::from_s(7210.0)) }]
    }

    #[test]
    fn a_sensor_follows_a_step_with_its_lag() {
        let mut sensor = sensor();
        for _ in 0..15 {
            sensor.follow(said(400.0), Time::from_s(0.1));
        }
        // One time constant after the step, 1/e of it is left.
        let left = (sensor.healthy().unwrap().pressure.as_kpa() - 400.0) / 100.0;
        assert!((left - (-1.0f64).exp()).abs() < 1e-9, "{left}");
    }

    #[test]
    fn faults_act_in_their_time_only() {
        let mut sensor = sensor();
        let own = sensor.healthy();
        let at = |sensor: &mut TireSensor, s: f64, kind| {
            let said = sensor.says(Time::from_s(s), &fault(kind), own);
            said.map(|said| said.pressure.as_kpa())
        };
        let by = PressureDifference::from_kpa(20.0);
        assert_eq!(at(&mut sensor, 5.0, SensorFaultKind::Off(by)), Some(500.0));
        assert_eq!(at(&mut sensor, 20.0, SensorFaultKind::Off(by)), Some(520.0));
        assert_eq!(at(&mut sensor, 3610.0, SensorFaultKind::DriftEachHour(by)), Some(520.0));
        assert_eq!(at(&mut sensor, 20.0, SensorFaultKind::Dead), None);
        assert_eq!(at(&mut sensor, 7300.0, SensorFaultKind::Dead), Some(500.0));
        let stuck = fault(SensorFaultKind::Stuck);
        let mut now = |s, kpa| {
            let said = sensor.says(Time::from_s(s), &stuck, Some(said(kpa)));
            said.unwrap().pressure.as_kpa()
        };
        assert!((now(5.0, 500.0) - 500.0).abs() < 1e-12);
        assert!((now(20.0, 490.0) - 490.0).abs() < 1e-12);
        assert!((now(90.0, 300.0) - 490.0).abs() < 1e-12);
        assert!((now(7300.0, 300.0) - 300.0).abs() < 1e-12);
    }
}
