//! The weather of one day along a route.

use model::haul_cycle::Weather;
use model::route::Route;
use model::tire::cold_warm::ambient_pressure;
use quantity::{AbsolutePressure, Length, Temperature, TemperatureDifference, Time};

use crate::chance::{normal, uniform};

/// Warmest and coldest differ this much from the day's mean: common practice, no source.
const SWING: TemperatureDifference = TemperatureDifference::from_kelvin(5.0);
/// Hour of the day at which it is warmest.
const WARMEST_HOUR: f64 = 15.0;
/// Drift of the air pressure over a day, kPa, one standard deviation; from memory.
const PRESSURE_DRIFT: f64 = 0.5;
/// Fall of temperature with height, K a meter, standard atmosphere.
const LAPSE: f64 = 0.0065;

/// What the weather does at a moment and place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeatherNow {
    /// Temperature of the air.
    pub temperature: Temperature,
    /// Pressure of the air.
    pub pressure: AbsolutePressure,
    /// Whether the road is wet and cools the tires.
    pub wet: bool,
}

/// A day's weather: warm and cold by the hour, pressure that drifts and falls with height, a wet
/// spell on some days.
#[derive(Debug, Clone, PartialEq)]
pub struct DayWeather {
    mean: Temperature,
    site: AbsolutePressure,
    drift_kpa: f64,
    middle_height: Length,
    /// Hour of the day at clock zero.
    begins: f64,
    wet: Option<(Time, Time)>,
}

impl DayWeather {
    /// The weather of a day that differs from the haul's ambient by `off`; the clock of the day
    /// begins at an hour of the day.
    pub fn of_day(
        weather: &Weather,
        route: &Route,
        begins: Time,
        off: TemperatureDifference,
        seed: u64,
    ) -> Self {
        let points = route.profile.points();
        let heights = points.iter().map(|(_, height)| height.as_m());
        let middle = heights.sum::<f64>() / points.len().max(1) as f64;
        let wet_day = uniform(seed, 0, "weather: wet") < 0.35;
        let wet = wet_day.then(|| {
            let from = Time::from_s(uniform(seed, 0, "weather: wet from") * 8.0 * 3600.0);
            (from, from + Time::from_s((0.5 + 2.0 * uniform(seed, 0, "weather: wet for")) * 3600.0))
        });
        Self {
            mean: weather.ambient + off,
            site: weather.ambient_pressure,
            drift_kpa: PRESSURE_DRIFT * normal(seed, 0, "weather: pressure"),
            middle_height: Length::from_m(middle),
            begins: begins.as_s() / 3600.0,
            wet,
        }
    }

    /// The weather at a clock and a height.
    pub fn at(&self, clock: Time, height: Length) -> WeatherNow {
        let hour = self.begins + clock.as_s() / 3600.0;
        let turn = (hour - WARMEST_HOUR) / 24.0 * std::f64::consts::TAU;
        let above = (height - self.middle_height).as_m();
        let cooler = TemperatureDifference::from_kelvin(LAPSE * above);
        let temperature = self.mean + (SWING * turn.cos() - cooler);
        // Heights of the route may lie outside the standard atmosphere's range; the site's own then holds.
        let pressure_at = |height| ambient_pressure(height).ok();
        let fall = match (pressure_at(height), pressure_at(self.middle_height)) {
            (Some(here), Some(middle)) => here.ratio_to(middle),
            _ => 1.0,
        };
        let pressure = AbsolutePressure::from_kpa(
            (self.site.as_kpa() + self.drift_kpa * clock.as_s() / 86_400.0) * fall,
        );
        let wet = self.wet.is_some_and(|(from, to)| clock >= from && clock < to);
        WeatherNow { temperature, pressure, wet }
    }

    /// When the road is wet, on days that have such a spell.
    pub fn wet_spell(&self) -> Option<(Time, Time)> {
        self.wet
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn afternoons_are_warmer_and_heights_have_less_air() {
        let haul = example::haul();
        let day = DayWeather::of_day(
            &haul.weather,
            &haul.route,
            Time::from_s(5.0 * 3600.0),
            TemperatureDifference::ZERO,
            1,
        );
        let height = day.middle_height;
        let dawn = day.at(Time::ZERO, height);
        let noon = day.at(Time::from_s(10.0 * 3600.0), height);
        let warmer = (noon.temperature - dawn.temperature).as_kelvin();
        assert!((warmer - 9.33).abs() < 0.01, "{warmer}");
        assert!((dawn.pressure.as_kpa() - haul.weather.ambient_pressure.as_kpa()).abs() < 1e-9);
        // Standard atmosphere: a kilometer up from near sea level takes about 11.5 kPa.
        let up = day.at(Time::ZERO, height + Length::from_m(1000.0));
        let fall = dawn.pressure.as_kpa() - up.pressure.as_kpa();
        assert!((10.0..12.0).contains(&fall), "{fall}");
    }
}
